//! How long a kind of reward takes at the board and how often a day it can be given, until a home has its own figures.

use super::parsed;
use crate::cards::{RewardCard, RewardKind};
use serde::Deserialize;
use std::sync::OnceLock;

/// How one kind of reward is usually given.
#[derive(Clone, PartialEq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Giving {
    /// The kind.
    pub kind: RewardKind,
    /// Seconds from the press until it is given, with the thing at hand.
    pub given_in_s: f64,
    /// Seconds it then lasts: eaten, played, stroked.
    pub lasts_s: f64,
    /// Times a day before people or the animal have had enough.
    pub most_per_day: u16,
    /// Whether it can be given at the board, again and again.
    pub at_board: bool,
    /// Whether, given there, the thing itself can be held up or laid out beside another one. A stroke or an exercise cannot.
    pub held_up: bool,
    /// Where the fact comes from.
    pub source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct GivingFile {
    giving: Vec<Giving>,
}

/// How a kind is usually given.
///
/// # Panics
/// Where the file this program was built with leaves a kind out; a test holds that it does not.
#[must_use]
#[allow(clippy::panic)]
pub fn giving(kind: RewardKind) -> &'static Giving {
    static FILE: OnceLock<GivingFile> = OnceLock::new();
    let file = FILE.get_or_init(|| parsed("giving.json", include_str!("../../facts/giving.json")));
    match file.giving.iter().find(|g| g.kind == kind) {
        Some(found) => found,
        None => panic!("the facts file giving.json this program was built with has no {}", kind.name()),
    }
}

/// Whether something can be given at the board, many times a day: as its card says, else as is usual for its kind.
#[must_use]
pub fn given_at_board(reward: &RewardCard) -> bool {
    reward.at_board.unwrap_or_else(|| giving(reward.kind).at_board)
}

/// Whether a thing itself can be held up or laid out beside another one; else it is offered by what stands for it.
#[must_use]
pub fn held_up(reward: &RewardCard) -> bool {
    given_at_board(reward) && giving(reward.kind).held_up
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_is_there_and_going_out_is_not_given_at_the_board() {
        for kind in RewardKind::ALL {
            let g = giving(kind);
            assert!(g.given_in_s > 0.0 && g.lasts_s > 0.0 && g.most_per_day > 0, "{kind:?}");
            assert!(g.source.contains("no source"), "{kind:?}");
        }
        let at_board: Vec<_> = RewardKind::ALL.into_iter().filter(|k| giving(*k).at_board).collect();
        assert_eq!(at_board, [RewardKind::Food, RewardKind::Play, RewardKind::Touch, RewardKind::Training]);
        let never: Vec<_> = RewardKind::ALL.into_iter().filter(|k| !giving(*k).held_up).collect();
        assert_eq!(never, [RewardKind::Touch, RewardKind::Training], "a stroke cannot be held up");
    }
}
