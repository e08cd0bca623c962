//! A line a word: those of the session first, what needs something next; what does not fit is folded.

use super::advice::{button, caution, cautions, helps_only, of_cards, reason, reasons};
use super::coach;
use crate::chart::spark;
use crate::page::AnimalPage;
use crate::pages::learn::for_word;
use crate::pages::words::too_alike;
use maud::{Markup, html};
use sayso_advisor::Caution;
use sayso_advisor::advice::{Act, Because, Reason};
use sayso_advisor::steps::WordStep;
use sayso_advisor::stuck::Cause;
use sayso_advisor::today::{Next, Today};
use sayso_model::{PlanLine, Stage, WordId};
use sayso_people::Capability;
use sayso_wording::advice as words_of;
use sayso_wording::say;
use std::collections::BTreeMap;

/// Words with a line of their own; what does not fit a screen and a half is folded, and named. Those that need something come
/// first, and have a line whatever else there is as long as there are lines.
const LINES: usize = 5;
/// Lines that make room for what concerns its wellbeing, for the lesson below it, and for each further thing in the card.
const LINES_FOR_WELFARE: usize = 6;
const LINES_FOR_FURTHER: usize = 2;
/// Lines that find room where no session is planned, and where it is a pause before the next one.
const LINES_FOR_PLAN: usize = 3;
const LINES_FOR_PAUSE: usize = 1;
/// Words that keep a line whatever else there is.
const FEWEST_LINES: usize = 1;
/// Folded words that are named; of more, their number is told.
const NAMED: usize = 6;

/// Whether the session that is planned shows it.
fn planned(today: &Today, w: &WordStep) -> bool {
    today.plan().is_some_and(|plan| plan.words.iter().any(|of| of.word.word == w.word.word))
}

/// A line a word: its trend, stage and one step; why, and what also holds, behind the tap. Other things on the page take lines of theirs.
pub fn words(page: &AnimalPage, today: &Today, taken: usize, agreed: &BTreeMap<WordId, PlanLine>) -> Markup {
    let (l, steps) = (&page.locale, &today.steps);
    let free = match today.next {
        Next::Session { .. } => 0,
        Next::Pause { .. } => LINES_FOR_PAUSE,
        _ => LINES_FOR_PLAN,
    };
    // While several things concern its wellbeing, no word is urgent.
    let most = if today.welfare.len() > 1 { FEWEST_LINES } else { LINES };
    let needy = steps.iter().filter(|w| w.needs_something()).count();
    let welfare = match today.welfare.len() {
        0 => 0,
        all => LINES_FOR_WELFARE + LINES_FOR_FURTHER * (all - 1),
    };
    let lines = (LINES + free).saturating_sub(welfare + taken).max(FEWEST_LINES).max(needy.min(most));
    // A fold is as tall as a line: for one word alone it would win nothing.
    let lines = if steps.len() <= lines + 1 { steps.len() } else { lines };
    // Words of the session first, where those that need something have lines beside them, or are too many for them anyway; a word that
    // waits for its button comes after one that is taught; else as they come.
    let both = steps.iter().filter(|w| w.needs_something() || planned(today, w)).count();
    let plan_first = both <= lines || needy > most;
    let mut sorted: Vec<&WordStep> = steps.iter().collect();
    sorted.sort_by_key(|w| {
        (!(plan_first && planned(today, w)), !w.needs_something(), plan_first && w.stage == Stage::Prepare)
    });
    let (open, folded) = sorted.split_at(sorted.len().min(lines));
    html! {
        @if !steps.is_empty() {
            section data-test="words" {
                h2 { (say!(l, today::words)) }
                @for w in open { (line(page, w, agreed.get(&w.word.word))) }
                @if !folded.is_empty() {
                    details.more-words data-test="more-words" {
                        summary { @if folded.len() > NAMED { (say!(l, today::many_more_words, count = folded.len())) } @else {
                            @let named = l.names(&folded.iter().map(|w| w.word.says.as_str()).collect::<Vec<_>>());
                            (say!(l, today::more_words, count = folded.len(), words = named))
                        } }
                        @for w in folded { (line(page, w, agreed.get(&w.word.word))) }
                    }
                }
            }
        }
    }
}

fn line(page: &AnimalPage, w: &WordStep, agreed: Option<&PlanLine>) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let counts: Vec<String> = w.trend.iter().map(ToString::to_string).collect();
    let trend = say!(l, today::trend, counts = counts.join(", "));
    let not_theirs = helps_only(page) && of_cards(&w.advice.act);
    let (step, without) = coach::step(l, name, w, agreed);
    let brief = if not_theirs { say!(l, today::ask_card) } else { step };
    html! {
        details.word data-test="word" {
            summary {
                span.head {
                    strong { (w.word.says) }
                    span.quiet { (words_of::stage_name(l, w.stage)) }
                }
                (spark(&w.trend, &trend))
                span.step data-test="step" { (brief) }
                @match &without {
                    Some(without) => span.why data-test="without-agreed" { (without) },
                    None => @if let Some(why) = words_of::back_because(l, &w.advice) { span.why data-test="back-because" { (why) } },
                }
                @if let Some(agreed) = agreed { (coach::beside(l, w, agreed)) }
            }
            @if without.is_none() && !not_theirs { p { strong { (words_of::act(l, name, &w.advice.act)) } } }
            @if let Some(hint) = &w.hint { p { (words_of::hint(l, name, hint)) } }
            (cautions(page, &w.advice))
            @if let Some(others) = alike(page, w) {
                p data-test="alike" {
                    @if another_first(page, w) { (say!(l, today::alike_first, word = &w.word.says, others = others)) } @else { (say!(l, today::alike, word = &w.word.says, others = others)) }
                }
            }
            (button(page, &w.advice.act, false))
            (for_word(page, &w.advice.act))
            p.quiet { (say!(l, today::why, sure = words_of::sure(l, w.advice.sure))) }
            (reasons(page, &w.advice))
            (also(page, w))
            p.quiet { (trend) }
            @if page.may(Capability::SeeFigures) { p { a.link href=(format!("/a/{}/evidence/{}", page.id, w.word.word)) { (say!(l, today::evidence, word = &w.word.says)) } } }
        }
    }
}

/// What else was found, as facts with their figures: never a second thing to do beside the one step.
fn also(page: &AnimalPage, w: &WordStep) -> Markup {
    let mut told: Vec<&Because> = w.advice.because.iter().map(|why| &why.fact).collect();
    let mut facts: Vec<&Reason> = Vec::new();
    for why in w.also.iter().flat_map(|other| &other.because) {
        if !told.contains(&&why.fact) {
            told.push(&why.fact);
            facts.push(why);
        }
    }
    html! {
        @if !facts.is_empty() {
            p.quiet { (say!(&page.locale, today::also)) }
            ul data-test="also" { @for why in facts { li { (reason(page, why)) } } }
            // Who reads of a tired battery may open the button at once.
            @if w.also.iter().any(|other| other.cautions.contains(&Caution::Battery)) && !w.advice.cautions.contains(&Caution::Battery) {
                (caution(page, &words_of::caution(&page.locale, page.card.name.as_str(), Caution::Battery)))
            }
        }
    }
}

/// Whether its step is another word, which costs nothing until it is shown.
fn another_first(page: &AnimalPage, w: &WordStep) -> bool {
    matches!(w.advice.act, Act::Mend { cause: Cause::SoundsAlike, .. })
        && page.case().totals().of(w.word.word).shown.is_empty()
}

/// The animal's other words that sound like this one: they stand where the next step is chosen.
fn alike(page: &AnimalPage, w: &WordStep) -> Option<String> {
    let (l, own) = (&page.locale, page.story.words_of(page.id));
    let others: Vec<String> = too_alike(&page.story, &w.word.says, Some(w.word.word))
        .into_iter()
        .filter(|(other, _)| own.iter().any(|o| o.word == other.word))
        .map(|(other, _)| say!(l, words::quoted, says = &other.says))
        .collect();
    (!others.is_empty()).then(|| l.and(&others))
}
