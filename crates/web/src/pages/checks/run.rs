//! A check in progress: what the setter lays out, and what the presenter sees, which is never the answer.

use super::{address, design_words, known, place_word, says, thing};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{number, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use maud::{Markup, html};
use sayso_advisor::checks::{Next, PER_SITTING, PlannedTrial, next_trial, order, trials};
use sayso_advisor::welfare::rest_today;
use sayso_model::{ProbeDesign, ProbePlan, ProbeResponse, WordId};
use serde::Deserialize;

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    twice: String,
}

/// What stops a check for today, whatever is planned.
fn stops(page: &AnimalPage) -> Markup {
    html! {
        @if rest_today(&page.case()) {
            p.stop role="alert" { "Stop here: strong signs of stress were noted. Give space and do not lure back. The check can go on another day." }
        }
    }
}

/// The trials of today, for short sittings.
fn enough(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    let today = page.now.day(&page.zone);
    let n = trials(&page.story, page.id, plan.probe).iter().filter(|t| t.at().day(&page.zone) == today).count();
    html! {
        @if n > 0 && n % PER_SITTING == 0 { p.caution { (n) " trials today: that is a sitting. Rest now; go on in some hours or another day." } }
    }
}

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    let next = next_trial(&page.story, page.id, plan.probe).unwrap_or(Ok(Next::Done));
    Ok(layout(
        &page,
        Tab::Evidence,
        "Setter",
        html! {
            p.quiet { "Only for the one who sets up. The presenter must not see this page or the Log." }
            (stops(&page))
            (enough(&page, plan))
            @match next {
                Err(why) => p { "This check cannot be run from here: " (why) "." },
                Ok(Next::Done) => p { strong { "All " (plan.trials) " trials are done." } },
                Ok(Next::Trial(_)) if plan.design == ProbeDesign::WrongDelivery => p { "This design is noted at the board, as any answer is." },
                Ok(Next::Trial(trial)) => (lay(&page, plan, &trial)),
            }
            p { a href=(address(&page, plan.probe)) { "Back to the check" } }
        },
    ))
}

fn lay(page: &AnimalPage, plan: &ProbePlan, trial: &PlannedTrial) -> Markup {
    let picks = plan.design == ProbeDesign::PickForWord;
    let covered = plan.design == ProbeDesign::PressUnderCovers;
    let rewards = page.story.rewards();
    let words = page.story.words();
    let card = |w: &WordId| words.get(w).and_then(|c| c.reward).and_then(|r| rewards.get(&r).copied());
    html! {
        p.num { strong { "Trial " (trial.number) " of " (plan.trials) } }
        @if let Some(text) = &page.card.cautions { p.caution { strong { "Health: " } (text.as_str()) } }
        @if picks {
            h2 { "Lay out, from " (page.card.name.as_str()) "\u{2019}s left" }
            p.quiet { (super::whose_left(page.card.name.as_str())) }
            ol.lay { @for (at, w) in trial.laid_out.iter().enumerate() {
                li { strong { (thing(page, *w)) } @if at == trial.right_place { span.quiet { " \u{2013} the one asked for" } } @if let Some(r) = card(w) { (for_animal(&page.card, r)) } }
            } }
            p { "Then go out of sight and play " strong { "\u{201c}" (says(page, trial.word)) "\u{201d}" } ", once." }
        } @else if covered {
            h2 { "Under the covers, from " (page.card.name.as_str()) "\u{2019}s left" }
            p.quiet { (super::whose_left(page.card.name.as_str())) }
            ol.lay { @for w in &trial.laid_out { li { strong { "\u{201c}" (says(page, *w)) "\u{201d}" } } } }
            h2 { "Show it, then shut it away: " (thing(page, trial.word)) }
            @if let Some(r) = card(&trial.word) { (for_animal(&page.card, r)) }
            p { "Its button lies in place " (trial.right_place + 1) ". Call the presenter when you are out of sight. Put aside any button not in the list." }
        } @else {
            h2 { "Show it, then shut it away: " (thing(page, trial.word)) }
            @if let Some(r) = card(&trial.word) { (for_animal(&page.card, r)) }
            p { "Call the presenter when you are out of sight. Its button is number " (trial.right_place + 1) "." }
            details { summary { "Numbers of the buttons" }
                p.quiet { "Put a small number beside each button, so that the presenter can tell which was pressed:" }
                ol { @for w in &trial.laid_out { li { (says(page, *w)) } } } }
        }
        a.button.primary.wide href=(format!("{}/setter?after={}", address(page, plan.probe), trial.number)) { "Noted? Show the next" }
        p.quiet { "It changes once the presenter has tapped what came. Laid something wrongly? Do not play the word; lay it out again." }
    }
}

pub async fn presenter(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    Ok(presenter_view(&page, plan, &Typed::default(), !asked.twice.is_empty()))
}

/// The presenter's page. No word, no thing and no word's id may stand here.
pub fn presenter_view(page: &AnimalPage, plan: &ProbePlan, typed: &Typed, twice: bool) -> Markup {
    let next = next_trial(&page.story, page.id, plan.probe).unwrap_or(Ok(Next::Done));
    layout(
        page,
        Tab::Evidence,
        "Presenter",
        html! {
            (summary(typed))
            @if twice { p.caution role="status" { "That was noted already; nothing was changed. Undo takes the last answer back; it then counts as wrong." } }
            (stops(page))
            (last(page, plan))
            (enough(page, plan))
            @match next {
                Err(why) => p { "This check cannot be run from here: " (why) "." },
                Ok(Next::Done) => {
                    p { strong { "All " (plan.trials) " trials are done." } " Thank you, " (page.card.name.as_str()) "." }
                    a.button.primary.wide href=(address(page, plan.probe)) { "See what came out" }
                }
                Ok(Next::Trial(_)) if plan.design == ProbeDesign::WrongDelivery => p { "This design is noted at the board, as any answer is." },
                Ok(Next::Trial(trial)) => (taps(page, plan, trial.number, trial.laid_out.len(), typed)),
            }
            p { a href=(address(page, plan.probe)) { "Stop for now" } span.quiet { " \u{2013} what was noted is kept; go on later." } }
        },
    )
}

fn taps(page: &AnimalPage, plan: &ProbePlan, trial: u16, places: usize, typed: &Typed) -> Markup {
    let name = page.card.name.as_str();
    let place = place_word(plan.design);
    let picks = plan.design == ProbeDesign::PickForWord;
    let drawn = plan.design.places_drawn();
    html! {
        p.num { strong { "Trial " (trial) " of " (plan.trials) } span.quiet { " · " (design_words(plan.design)) } }
        form method="post" action={ (address(page, plan.probe)) "/trial" } {
            input type="hidden" name="number" value=(trial);
            h2 #what { @if picks { "Which place did " (name) " go to first?" } @else if drawn { "In which place did " (name) " press first?" } @else { "Which button did " (name) " press first?" } }
            div .offer .two[places == 2 || places == 4] role="group" aria-labelledby="what" {
                @for at in 1..=places {
                    button.pick name="answer" value=(at) {
                        strong { (place) " " (at) }
                        @if drawn && at == 1 { span.quiet { (name) "\u{2019}s left" } }
                        @if drawn && at == places { span.quiet { (name) "\u{2019}s right" } }
                    }
                }
            }
            @if drawn { p.quiet { (super::whose_left(name)) } }
            div.row.even {
                button name="answer" value="nothing" { "Nothing" }
                button name="answer" value="left" { "Went away" }
            }
            details open[typed.problem("after_s").is_some()] {
                summary { "Before you tap: timed it, or knew it?" }
                (number(typed, "after_s", "Seconds to the choice", "only if somebody timed it"))
                @if plan.blind { (tick(typed, "knew", "I knew the answer this time (saw or heard it)")) }
            }
        }
        p.quiet { "Look away until the choice is made. No choice within about half a minute is \u{201c}nothing\u{201d}; going away is \u{201c}went away\u{201d}. Neither is wrong. It gets what it chose; a piece of food is counted." }
        p.quiet { "Stop at any sign of stress. Health and food cautions stand on the setter\u{2019}s page: let the setter read them first." }
    }
}

/// The last answer as it was tapped, with undo.
fn last(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    let run = trials(&page.story, page.id, plan.probe);
    let place = |trial: u16, word: WordId| {
        let all = order(plan).ok()?;
        let laid_out = &all.iter().find(|t| t.number == trial)?.laid_out;
        laid_out
            .iter()
            .position(|w| *w == word)
            .map(|at| format!("{} {}", place_word(plan.design).to_lowercase(), at + 1))
    };
    html! {
        @if let Some(t) = run.last() {
            form.last method="post" action={ (address(page, plan.probe)) "/undo" } {
                input type="hidden" name="trial" value=(t.id());
                span { span.quiet { "Trial " (t.part.trial) ": " } @match t.part.response {
                    ProbeResponse::Chose { word, .. } => (place(t.part.trial, word).unwrap_or_else(|| "a choice".to_owned())),
                    ProbeResponse::Nothing => "nothing",
                    ProbeResponse::Left => "went away",
                } }
                button { "Undo" }
            }
            @if matches!(t.part.response, ProbeResponse::Chose { .. }) {
                p.quiet { "Undo: the answer stays in the record and counts as wrong; the trial does not come again." }
            }
            @if t.part.response == ProbeResponse::Left {
                p.caution { "It went away, and that is an answer. Let it go; go on when it comes back of its own accord, or another day." }
            }
        }
    }
}
