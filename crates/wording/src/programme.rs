//! Programmes in words: aims, and what was done of them, each against itself.

use crate::{Locale, lessons, say};
use sayso_advisor::programme::Doing;
use sayso_model::Aim;

/// An aim.
#[must_use]
pub fn aim(l: &Locale, aim: &Aim) -> String {
    match aim {
        Aim::Showings { times } => say!(l, programme::showings, times = *times),
        Aim::Invitations { times } => say!(l, programme::invitations, times = *times),
        Aim::Sessions { a_day, days } => {
            say!(l, programme::sessions, a_day = usize::from(*a_day), days = usize::from(*days))
        }
        Aim::Lesson { lesson } => say!(l, programme::lesson, lesson = lessons::named(l, lesson.as_str())),
        Aim::Own { text } => text.to_string(),
    }
}

/// An aim with what was done of it.
#[must_use]
pub fn doing(l: &Locale, doing: &Doing<'_>) -> String {
    say!(l, programme::doing, aim = aim(l, doing.aim), done = stood(l, doing.done, doing.of))
}

/// What was done, of how much: counts, and of what can be done once whether it was.
#[must_use]
pub fn stood(l: &Locale, done: usize, of: usize) -> String {
    match (done, of) {
        (0, 1) => say!(l, programme::not_yet),
        (_, 1) => say!(l, programme::done),
        (done, of) => say!(l, programme::so_many, done = done, of = of),
    }
}
