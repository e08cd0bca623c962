//! Where a word's step comes before what is planned for it: said where it is planned, and where it is accepted.

use super::case;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::steps::WordStep;
use sayso_model::{AnimalId, PlanLine, PlanWay};
use sayso_wording::say;
use sayso_wording::talk::{first, firsts};

/// The steps of an animal's words, as Today has them.
fn steps(page: &Page, animal: AnimalId) -> Vec<WordStep> {
    let today = page.state.kept.today(page.home, &case(page, animal));
    today.as_ref().as_ref().map(|today| today.steps.clone()).unwrap_or_default()
}

/// What an animal is called.
fn name(page: &Page, animal: AnimalId) -> &str {
    page.story.animals().get(&animal).map_or("", |card| card.name.as_str())
}

/// Beside the fields of a plan: for which words inviting would have to wait, and which are never invited.
pub fn of_words(page: &Page, animal: AnimalId) -> Markup {
    let inviting = |step: &WordStep| PlanLine {
        word: step.word.word,
        way: Some(PlanWay::OfferInView),
        minutes: PlanLine::MOST_MINUTES,
        times: PlanLine::MOST_TIMES,
    };
    let (all, name) = (steps(page, animal), name(page, animal));
    let told: Vec<String> = all.iter().filter_map(|step| first(&page.locale, name, step, &inviting(step))).collect();
    html! {
        @if !told.is_empty() {
            div.note data-test="first" { p { (say!(&page.locale, talk::first_head)) } ul.short { @for one in &told { li { (one) } } } }
        }
    }
}

/// Below the lines of a plan that waits for an answer or holds: which of them the word's step comes before.
pub fn of_lines(page: &Page, animal: AnimalId, lines: &[PlanLine]) -> Markup {
    let (all, name) = (steps(page, animal), name(page, animal));
    html! { @for one in firsts(&page.locale, name, &all, lines.iter()) { p.note data-test="first" { (one) } } }
}
