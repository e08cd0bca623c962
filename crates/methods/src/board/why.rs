//! Why a word moves, in figures.
//!
//! Source: the parts of the layout's cost that have to do with the word, before and after.

use super::setting::{Parts, Setting};
use sayso_model::Place;

/// What moving a word is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum MoveReason {
    /// Nearer to a related word.
    Related,
    /// Away from a word that sounds like it.
    Alike,
    /// Away from a word that is brushed by accident.
    Accident,
    /// Within easier reach.
    Reach,
    /// It gives way to another word.
    GivesWay,
}

/// A word that moves.
#[derive(Debug, Clone, PartialEq)]
pub struct Move {
    /// Which word.
    pub word: usize,
    /// What it says.
    pub says: String,
    /// From where.
    pub from: Place,
    /// To where.
    pub to: Place,
    /// What for, above all.
    pub reason: MoveReason,
    /// The other word it is about, if any.
    pub other: Option<usize>,
    /// What this word's part of the cost is before.
    pub before: Parts,
    /// And after, with the cost of moving it.
    pub after: Parts,
}

/// Explains the move of word `i`.
pub(super) fn why(setting: &Setting<'_>, i: usize, before: &[Place], after: &[Place]) -> Move {
    let (old, new) = (setting.of_word(i, before), setting.of_word(i, after));
    let saved = [
        (MoveReason::Alike, old.alike - new.alike),
        (MoveReason::Accident, old.accident - new.accident),
        (MoveReason::Related, old.related - new.related),
        (MoveReason::Reach, old.reach - new.reach),
    ];
    let most = saved.into_iter().max_by(|a, b| a.1.total_cmp(&b.1)).filter(|(_, saving)| *saving > 1e-12);
    let reason = most.map_or(MoveReason::GivesWay, |(reason, _)| reason);
    let part = |p: &Parts| match reason {
        MoveReason::Alike => p.alike,
        MoveReason::Accident => p.accident,
        MoveReason::Related => p.related,
        MoveReason::Reach | MoveReason::GivesWay => 0.0,
    };
    let saving =
        |j: usize| part(&setting.pair(i, j, before[i], before[j])) - part(&setting.pair(i, j, after[i], after[j]));
    let other = match reason {
        // Whoever takes its old place, if anyone does.
        MoveReason::GivesWay => (0..after.len()).find(|j| *j != i && after[*j] == before[i]),
        MoveReason::Reach => None,
        _ => (0..after.len()).filter(|j| *j != i).max_by(|a, b| saving(*a).total_cmp(&saving(*b))),
    };
    Move {
        word: i,
        says: setting.words[i].says.clone(),
        from: before[i],
        to: after[i],
        reason,
        other,
        before: old,
        after: new,
    }
}
