//! Where a word's step comes before what is planned for it: said where it is planned, and where it is accepted.

use super::case;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::steps::WordStep;
use sayso_model::{AnimalId, PlanLine, PlanWay};
use sayso_wording::say;
use sayso_wording::talk::first;

/// The steps of an animal's words, as Today has them.
fn steps(page: &Page, animal: AnimalId) -> Vec<WordStep> {
    let today = page.state.kept.today(page.home, &case(page, animal));
    today.as_ref().as_ref().map(|today| today.steps.clone()).unwrap_or_default()
}

/// That a step comes first; nothing where what is planned may be done.
fn told(page: &Page, animal: AnimalId, step: &WordStep, line: &PlanLine) -> Option<String> {
    let name = page.story.animals().get(&animal).map(|card| card.name.to_string()).unwrap_or_default();
    first(&page.locale, &name, step, line)
}

/// Beside the fields of a plan: for which words inviting would have to wait, and which are never invited.
pub fn of_words(page: &Page, animal: AnimalId) -> Markup {
    let inviting = |step: &WordStep| PlanLine {
        word: step.word.word,
        way: Some(PlanWay::OfferInView),
        minutes: PlanLine::MOST_MINUTES,
        times: PlanLine::MOST_TIMES,
    };
    let all = steps(page, animal);
    let told: Vec<String> = all.iter().filter_map(|step| told(page, animal, step, &inviting(step))).collect();
    html! {
        @if !told.is_empty() {
            div.note data-test="first" { p { (say!(&page.locale, talk::first_head)) } ul.short { @for one in &told { li { (one) } } } }
        }
    }
}

/// Below the lines of a plan that waits for an answer or holds: which of them the word's step comes before.
pub fn of_lines(page: &Page, animal: AnimalId, lines: &[PlanLine]) -> Markup {
    let all = steps(page, animal);
    let step = |line: &PlanLine| all.iter().find(|step| step.word.word == line.word);
    let told = lines.iter().filter_map(|line| told(page, animal, step(line)?, line));
    html! { @for one in told { p.note data-test="first" { (one) } } }
}
