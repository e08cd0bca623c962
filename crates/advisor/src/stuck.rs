//! Stuck? A word that does not get on, and what may be behind it: each cause with its evidence for or against.
//! Thresholds are our own (common practice, no source) and stand beside every figure. It never says the animal cannot learn.

use crate::advice::Because;
use crate::case::Case;
pub use crate::cause::{Bearing, Cause, Weighed};
use crate::causes::{
    alike, avoided, hard_to_make_out, health, not_wanted, people_differ, time_or_place, too_late, too_little,
};
use crate::estimate::Estimate;
use crate::standing::Standing;
use sayso_model::{Stage, WordId};
use serde::{Deserialize, Serialize};

/// A word is not called stuck before this many days since it was first shown.
const ENOUGH_DAYS: f64 = 21.0;
/// Own presses in four weeks that say nothing: once a week comes by stumbling over it.
const HARDLY: usize = 4;

/// Whether a word does not get on: shown long enough, still not conversed with, and beyond chance the invitations say so;
/// or, with few of them, it hardly presses it, or does not take what the word delivers. Few showings in all this time
/// are no reason to keep silent: they may be why.
#[must_use]
pub fn is_stuck(case: &Case<'_>, standing: &Standing) -> bool {
    stuck_for(case, standing).is_some()
}

/// Because of what a word counts as stuck.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(tag = "for", rename_all = "snake_case")]
pub enum StuckFor {
    /// Right in clearly less than half of the invitations in which the thing was wanted.
    SeldomRight,
    /// Few invitations, and hardly pressed unasked.
    HardlyPressed {
        /// Own presses of the last 28 days.
        presses: usize,
    },
    /// Few invitations, and what it brings is seldom taken.
    SeldomTaken,
}

/// The same, with because of what; none where it is not stuck.
#[must_use]
pub fn stuck_for(case: &Case<'_>, standing: &Standing) -> Option<StuckFor> {
    let conversing = standing.stage == Stage::Converse || standing.figures_say == Stage::Converse;
    // What ends a session is no wish: nobody waits for a press of it.
    if conversing || standing.closing {
        return None;
    }
    let first = case.totals().of(standing.word).shown.first().map(|s| s.at);
    if first.is_none_or(|at| case.now().seconds_since(at) < ENOUGH_DAYS * 86_400.0) {
        return None;
    }
    let asked = case.invitations(standing.word);
    let right = Estimate::share(asked.usable.iter().filter(|u| u.right).count(), asked.usable.len());
    if right.surely_below(0.5) || right.n >= 12 {
        return right.surely_below(0.5).then_some(StuckFor::SeldomRight);
    }
    if standing.own_presses <= HARDLY {
        return Some(StuckFor::HardlyPressed { presses: standing.own_presses });
    }
    (not_wanted(case, standing.word).bearing == Bearing::For).then_some(StuckFor::SeldomTaken)
}

/// What came when the word was invited and its thing wanted. Every page tells this one fact in these counts.
#[must_use]
pub fn when_wanted(case: &Case<'_>, word: WordId) -> Because {
    let asked = &case.invitations(word).usable;
    let this = asked.iter().filter(|u| u.right).count();
    let none = asked.iter().filter(|u| !u.pressed).count();
    Because::WhenWanted { this, other: asked.len() - this - none, none }
}

/// Causes that hold for the whole board, worked out once for all words.
#[must_use]
pub fn shared_causes(case: &Case<'_>) -> [Weighed; 2] {
    [time_or_place(case), health(case)]
}

/// Every cause with its evidence, those the records speak for first.
#[must_use]
pub fn differential(case: &Case<'_>, word: WordId) -> Vec<Weighed> {
    differential_with(case, word, &shared_causes(case))
}

/// [`differential`], with the shared causes as they were worked out before.
#[must_use]
pub fn differential_with(case: &Case<'_>, word: WordId, [place, health]: &[Weighed; 2]) -> Vec<Weighed> {
    let mut weighed = vec![
        hard_to_make_out(case.story(), word),
        not_wanted(case, word),
        too_little(case, word),
        too_late(case, word),
        avoided(case, word),
        place.clone(),
        health.clone(),
        alike(case, word),
        people_differ(case, word),
    ];
    weighed.sort_by_key(|w| w.bearing);
    weighed
}
