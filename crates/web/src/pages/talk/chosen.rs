//! What a coach writes, as far as it is chosen: what, and with which animal.

use super::rests;
use crate::page::Page;
use crate::typed::Typed;
use sayso_model::AnimalCard;

/// What can be written.
pub const KINDS: [&str; 10] =
    ["plan", "change", "stage", "word", "likes", "check", "practice", "meeting", "note", "question"];

/// What is written, once it was chosen.
pub fn kind(typed: &Typed) -> Option<&'static str> {
    KINDS.into_iter().find(|kind| *kind == typed.text("what"))
}

/// The animal it is about: as chosen, else the first.
pub fn animal(page: &Page, typed: &Typed) -> Option<AnimalCard> {
    let all = page.animals();
    all.iter().find(|a| a.animal.to_string() == typed.text("animal")).or(all.first()).cloned()
}

/// Whether what was chosen takes sessions, while those of the animal rest.
pub fn is_resting(page: &Page, kind: &str, animal: Option<&AnimalCard>) -> bool {
    matches!(kind, "plan" | "change" | "likes" | "check") && animal.is_some_and(|a| rests(page, a.animal))
}
