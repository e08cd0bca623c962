//! Cautions about food, shown wherever a person chooses or gives it.

use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::ration::{food_cautions, forbidden};
use sayso_model::{AnimalCard, RewardCard, RewardKind, facts};

/// Cautions about one reward for one animal; nothing where the list says nothing.
#[must_use]
pub fn for_animal(animal: &AnimalCard, reward: &RewardCard) -> Markup {
    if reward.kind != RewardKind::Food {
        return html! {};
    }
    let found = food_cautions(animal.species, reward.name.as_str());
    html! {
        @if let Some(why) = forbidden(animal.species, reward) {
            p.stop { strong { "Never give this to " (animal.name.as_str()) ". " } (why) ". Eaten already? Call a veterinarian now." }
        } @else if !found.is_empty() {
            div.caution { strong { "Care, for " (animal.name.as_str()) ": " }
                @if found.len() == 1 { (found[0]) "." } @else { ul { @for f in &found { li { (f) "." } } } }
            }
        }
    }
}

/// The same for every animal the reward is for.
#[must_use]
pub fn for_each_animal(page: &Page, reward: &RewardCard) -> Markup {
    html! { @for l in page.animals().iter().filter(|l| reward.is_for(l.animal)) { (for_animal(l, reward)) } }
}

/// How far the list can be trusted.
#[must_use]
pub fn food_note() -> Markup {
    html! { p.quiet { "The name is checked against a list of dangerous foods as you keep it. " (facts::hazards_note()) } }
}
