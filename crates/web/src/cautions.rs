//! Cautions about food, shown wherever a person chooses or gives it.

use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::ration::{cautions, forbidden};
use sayso_model::{AnimalCard, RewardCard};
use sayso_wording::hazards::{food, foods};
use sayso_wording::{Locale, say};

/// Cautions about one reward for one animal; nothing where the list says nothing.
#[must_use]
pub fn for_animal(l: &Locale, animal: &AnimalCard, reward: &RewardCard) -> Markup {
    let found = cautions(animal.species, reward);
    let name = &animal.name;
    html! {
        @if let Some(why) = forbidden(animal.species, reward) {
            p.stop { strong { (say!(l, cautions::never, name = name)) } " " (say!(l, cautions::eaten, why = foods(l, &why))) }
        } @else if !found.is_empty() {
            div.caution { strong { (say!(l, cautions::care, name = name)) } " "
                @if found.len() == 1 { (food(l, &found[0])) "." } @else { ul { @for f in &found { li { (food(l, f)) "." } } } }
            }
        }
    }
}

/// The same for every animal the reward is for.
#[must_use]
pub fn for_each_animal(page: &Page, reward: &RewardCard) -> Markup {
    html! { @for a in page.animals().iter().filter(|a| reward.is_for(a.animal)) { (for_animal(&page.locale, a, reward)) } }
}

/// How far the list can be trusted.
#[must_use]
pub fn food_note(l: &Locale) -> Markup {
    html! { p.quiet { (say!(l, cautions::checked, note = say!(l, hazards::note))) } }
}
