//! Likes and plans in words.

use crate::{Locale, say};
use sayso_advisor::likes::{Known, Lean, Settled};
use sayso_advisor::plan::LengthFrom;

/// Where a session's length comes from.
#[must_use]
pub fn length(l: &Locale, from: &LengthFrom) -> String {
    match from {
        LengthFrom::FewSessions { timed } => say!(l, advice::length_few_sessions, timed = *timed),
        LengthFrom::FewLeft { timed } => say!(l, advice::length_few_left, timed = *timed),
        LengthFrom::QuarterLeft { timed, minutes } => {
            say!(l, advice::length_quarter_left, timed = *timed, minutes = l.number(*minutes, 1))
        }
    }
}

/// Whether choices lean to one side.
#[must_use]
pub fn lean(l: &Locale, name: &str, lean: Lean) -> String {
    match lean {
        Lean::Left => say!(l, advice::lean_left, name = name),
        Lean::Right => say!(l, advice::lean_right, name = name),
        Lean::TooFew => say!(l, advice::lean_too_few),
        Lean::None => say!(l, advice::lean_none),
    }
}

/// How settled the best few are.
#[must_use]
pub fn known(l: &Locale, known: &Known) -> String {
    let (best, sure, n) = (l.names(&known.names), l.percent(known.probability), known.n);
    match known.verdict {
        Settled::WellEnough => say!(l, advice::known_well_enough, best = best, sure = sure, n = n),
        Settled::EnoughForNow => say!(l, advice::known_enough_for_now, best = best, sure = sure, n = n),
        Settled::NotYet => say!(l, advice::known_not_yet, best = best, sure = sure, n = n),
    }
}
