//! Habits of the trade in words.

use crate::Locale;
use crate::hazards::{of_fact, source};
use sayso_model::facts::Practice;

/// What the habit is, how much of it, and where that is from.
#[must_use]
pub fn habit(l: &Locale, practice: &Practice) -> [String; 3] {
    [
        of_fact(l, "practice-what", &practice.id, &practice.practice),
        of_fact(l, "practice-value", &practice.id, &practice.value),
        source(l, "practice", &practice.id, &practice.source),
    ]
}
