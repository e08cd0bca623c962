//! `today`, `evidence`, `patterns` and `agree`: what the pages say, as text.

use super::notebook;
use super::serve::now;
use crate::error::CliError;
use crate::out::tell;
use sayso_advisor::agreement::{ScoreScale, agreement, read};
use sayso_advisor::evidence::Evidence;
use sayso_advisor::patterns::patterns as found;
use sayso_advisor::steps::WordStep;
use sayso_advisor::today::{Next, Today};
use sayso_advisor::{Advice, Case, evidence, today};
use sayso_model::{Story, Zone};
use sayso_notebook::animal_named;
use sayso_wording::advice as words_of;
use sayso_wording::agreement as told;
use sayso_wording::claims::{by_ladder, of_animal, rivals_of};
use sayso_wording::evidence::{chance, middle_wait, sentence};
use sayso_wording::figures::{estimate, finding};
use sayso_wording::{Locale, Message, patterns, say};
use std::path::Path;
use std::sync::Arc;

pub(super) async fn story(l: &Locale, dir: &Path) -> Result<Arc<Story>, CliError> {
    Ok(notebook::open(l, dir).await?.story)
}

/// Prints what to do today, in the order of the page.
pub async fn today(l: &Locale, dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let story = story(l, dir).await?;
    for card in animal_named(&story, which)? {
        let Some(today) = today::today(&Case::new(&story, card.animal, now())) else { continue };
        let name = card.name.as_str();
        tell!("# {name}");
        for advice in &today.welfare {
            print_advice(l, name, advice);
        }
        tell!("## {}", say!(l, today::now));
        print_next(l, name, &story.zone(), &today);
        if !today.steps.is_empty() {
            tell!("## {}", say!(l, today::words));
        }
        // Those that need something first, else as they come.
        let mut steps: Vec<&WordStep> = today.steps.iter().collect();
        steps.sort_by_key(|w| !w.needs_something());
        for word in steps {
            tell!("{} ({})", word.word.says, words_of::stage_name(l, word.stage));
            print_step(l, name, word);
        }
        if !today.lately.is_empty() {
            tell!("## {}", say!(l, today::lately));
        }
        for fact in &today.lately {
            tell!("{}", words_of::lately(l, name, fact));
        }
        if !today.later.is_empty() {
            tell!("## {}", say!(l, today::later));
        }
        for advice in &today.later {
            print_advice(l, name, advice);
        }
        tell!();
    }
    Ok(())
}

/// The one next thing, with its words and the hint that matters for each.
fn print_next(l: &Locale, name: &str, zone: &Zone, today: &Today) {
    if let Some(held) = &today.held {
        tell!("{}", words_of::held(l, zone, held));
    }
    // What comes next waits for its end.
    if let Some(since) = today.running {
        tell!("{}", words_of::running(l, zone, since));
        return;
    }
    match &today.next {
        Next::SetUp { advice } | Next::TestLikes { advice } | Next::Mend { advice } => print_advice(l, name, advice),
        Next::Session { plan } => {
            tell!(l, today::session, minutes = plan.minutes);
            for w in &plan.words {
                let planned = words_of::planned(l, w);
                match &w.hint {
                    Some(hint) => {
                        let hint = words_of::hint(l, name, hint);
                        tell!("   {}", say!(l, today::planned, planned = planned, hint = hint));
                    }
                    None => tell!("   {planned}"),
                }
            }
        }
        next @ (Next::Rest | Next::Pause { .. } | Next::Answer { .. }) => {
            tell!("{}", words_of::next(l, name, zone, next));
        }
    }
}

fn print_step(l: &Locale, name: &str, word: &WordStep) {
    tell!("{}", words_of::act(l, name, &word.advice.act));
    if let Some(hint) = &word.hint {
        tell!("   {}", words_of::hint(l, name, hint));
    }
    print_reasons(l, name, &word.advice);
}

fn print_advice(l: &Locale, name: &str, advice: &Advice) {
    tell!("{}", words_of::act(l, name, &advice.act));
    print_reasons(l, name, advice);
}

fn print_reasons(l: &Locale, name: &str, advice: &Advice) {
    for line in reasons(l, name, advice) {
        tell!("   {line}");
    }
}

/// Because of what, how sure, what would change it, and what to take care of, a line each.
pub(super) fn reasons(l: &Locale, name: &str, advice: &Advice) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let because = |fact| say!(l, command_tell::because, why = words_of::because(l, name, fact));
    lines.extend(advice.because.iter().map(|reason| because(&reason.fact)));
    lines.push(say!(l, command_tell::sure, sure = words_of::sure(l, advice.sure)));
    let change = |change| say!(l, command_tell::would_change, what = words_of::change(l, name, change));
    lines.extend(advice.would_change.iter().map(change));
    let care = |caution| say!(l, command_tell::take_care, what = words_of::caution(l, name, caution));
    lines.extend(advice.cautions.iter().map(|caution| care(*caution)));
    lines
}

/// Prints the patterns in presses and choices.
pub async fn patterns(locale: &Locale, dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let story = story(locale, dir).await?;
    for card in animal_named(&story, which)? {
        let Some(p) = found(&Case::new(&story, card.animal, now())) else { continue };
        tell!("# {}", p.name);
        let told = |heading: String, sentences: Vec<String>, not_shown: String| {
            tell!("## {heading}");
            sentences.iter().for_each(|s| tell!("{s}"));
            tell!("   {not_shown}");
        };
        told(
            say!(locale, patterns::pace),
            p.pace.iter().map(|x| patterns::pace(locale, &p.name, x)).collect(),
            say!(locale, patterns::pace_does_not_show),
        );
        told(
            say!(locale, patterns::lines),
            p.lines.iter().map(|x| patterns::line(locale, &p.name, x)).collect(),
            say!(locale, patterns::lines_do_not_show),
        );
        told(
            say!(locale, patterns::order),
            vec![patterns::order(locale, &p.name, &p.order)],
            say!(locale, patterns::order_does_not_show),
        );
        told(
            say!(locale, patterns::slips),
            vec![patterns::slips(locale, &p.name, &p.slips)],
            say!(locale, patterns::slips_do_not_show),
        );
        told(
            say!(locale, patterns::hours),
            vec![patterns::hours(locale, &p.name, &p.hours)],
            say!(locale, patterns::hours_do_not_show),
        );
        tell!();
    }
    Ok(())
}

/// Prints how far people agree on what they scored.
pub fn agree(locale: &Locale, file: &Path, scale: ScoreScale, headed: bool) -> Result<(), CliError> {
    let wrong = |why| CliError::file(file, why);
    let text = if file == Path::new("-") {
        std::io::read_to_string(std::io::stdin()).map_err(wrong)?
    } else {
        std::fs::read_to_string(file).map_err(wrong)?
    };
    let scores = read(&text, headed, scale, |i| told::person(locale, i))
        .map_err(|e| CliError::file(file, told::wrong(locale, &e)))?;
    let found = agreement(&scores, scale);
    tell!("{}", told::sentence(locale, &found));
    if let Some(alike) = &found.alike {
        tell!("{}: {}", say!(locale, agreement::scored_alike), estimate(locale, alike));
    }
    if let Some(kappa) = &found.kappa {
        tell!("{}: {}", say!(locale, agreement::kappa), told::figure(locale, kappa));
    }
    tell!("{}: {}", say!(locale, agreement::alpha), told::figure(locale, &found.alpha));
    if !found.differing.is_empty() {
        tell!(locale, agreement::differing);
    }
    for d in &found.differing {
        let (one, two) = (&found.people[0], &found.people[1]);
        let differs =
            say!(locale, agreement::differs, one = one, first = &d.first, two = two, second = &d.second, n = d.n);
        tell!("   {differs}");
    }
    tell!("{}", say!(locale, agreement::would_change));
    Ok(())
}

/// Prints the evidence for every word.
pub async fn evidence(l: &Locale, dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let story = story(l, dir).await?;
    for card in animal_named(&story, which)? {
        tell!("# {}", card.name);
        let case = Case::new(&story, card.animal, now());
        for word in story.words_of(card.animal) {
            let Some(e) = evidence::evidence(&case, word.word) else { continue };
            tell!("{}: {}", word.says, sentence(l, card.name.as_str(), &e));
            for line in figures(l, &e) {
                tell!("   {line}");
            }
            match &e.claim {
                // What ends a session is not drawn in rounds.
                _ if word.closing => {}
                Ok((claim, animal)) => {
                    for (what, said) in by_ladder(l, claim, &story.zone()) {
                        tell!("   {}", say!(l, command_tell::may_be_said, what = what, said = said));
                    }
                    let said = of_animal(l, animal, &story.zone());
                    tell!("   {}", say!(l, command_tell::may_be_said_of, name = &card.name, said = said));
                    for rival in rivals_of(l, claim).iter().filter(|r| r.open) {
                        let (rival, standing) = (&rival.rival, &rival.standing);
                        tell!("   {}", say!(l, command_tell::not_ruled_out, rival = rival, standing = standing));
                    }
                }
                Err(why) => tell!("   {}", say!(l, command_tell::not_judged, why = why.say(l))),
            }
        }
        tell!();
    }
    Ok(())
}

fn figures(l: &Locale, e: &Evidence) -> [String; 6] {
    let told = |e| finding(l, e);
    let s = &e.standing;
    let within = l.set_seconds(evidence::GIVEN_WITHIN_S);
    [
        say!(l, command_tell::pressed, figure = told(&s.response)),
        say!(l, command_tell::right, figure = told(&s.right), chance = chance(l, &s.chance)),
        say!(l, command_tell::time_to_press, figure = middle_wait(l, &e.waiting)),
        say!(l, command_tell::fidelity, within = within, figure = told(&e.fidelity)),
        say!(l, command_tell::delay, figure = told(&s.delay)),
        say!(l, command_tell::taken, this = told(&e.uptake.this), others = told(&e.uptake.others)),
    ]
}
