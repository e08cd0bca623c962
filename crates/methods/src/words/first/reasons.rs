//! What kept a candidate out, in figures.

use super::given::{Candidate, FirstWordRules};
use super::score::{Score, Scored, deliveries};
use crate::words::alike::Likeness;

/// A part of the score.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Part {
    /// How much it is liked.
    Liking,
    /// How sure the liking is.
    Uncertainty,
    /// How often it can be delivered.
    Deliveries,
    /// Kinds of reward.
    Spread,
    /// Sounding different.
    Apart,
    /// Whether it is already said.
    Said,
}

/// Why a candidate is not among the first words.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// It must not be given.
    Barred,
    /// A figure that cannot be right.
    BadFigure(&'static str),
    /// It cannot be given at the board.
    NotAtBoard,
    /// The ration leaves no piece.
    NoRation,
    /// One delivery takes too long at the board.
    TooSlow {
        /// Seconds it takes.
        seconds: f64,
        /// Slowest allowed.
        slowest: f64,
    },
    /// It cannot be delivered often enough, even as the only word.
    TooSeldom {
        /// Deliveries a day.
        per_day: f64,
        /// Fewest allowed.
        fewest: f64,
    },
    /// Its best set holds a word that sounds too much like it.
    SoundsLike {
        /// The other candidate.
        other: usize,
        /// How alike.
        how: Likeness,
    },
    /// Too few other candidates can be used with it.
    NoCompany {
        /// Words a set needs.
        needed: usize,
        /// Candidates that can be used.
        usable: usize,
    },
    /// No figure keeps it out: the best set with it scores as much, as far as scores are told.
    AsGood {
        /// Whether the best set was taken because it holds less that is to be given only a little.
        cautioned: bool,
    },
    /// The best set scores more than the best set with it.
    Outscored {
        /// Score of the best set less that of the best set with it.
        behind: f64,
        /// The part that costs it most.
        by: Part,
        /// That part's cost.
        cost: f64,
    },
}

/// A candidate that is not among the first words.
#[derive(Debug, Clone, PartialEq)]
pub struct LeftOut {
    /// Index of the candidate.
    pub candidate: usize,
    /// Its word.
    pub says: String,
    /// What kept it out.
    pub reason: Reason,
    /// Share of draws in which it is in the best set all the same.
    pub in_best: f64,
}

impl LeftOut {
    pub(super) fn new(candidate: usize, candidates: &[Candidate], reason: Reason, in_best: f64) -> Self {
        Self { candidate, says: candidates[candidate].says.clone(), reason, in_best }
    }
}

/// How many of a set are to be given only a little.
pub(super) fn cautioned(words: &[usize], candidates: &[Candidate]) -> usize {
    words.iter().filter(|i| candidates[**i].cautioned).count()
}

/// What bars a candidate whatever the others are.
pub(super) fn unfit(candidate: &Candidate, rules: &FirstWordRules) -> Option<Reason> {
    // Safety before all else, also before a figure that cannot be right.
    if candidate.barred {
        return Some(Reason::Barred);
    }
    if !candidate.liking.is_usable() {
        return Some(Reason::BadFigure("liking"));
    }
    if candidate.seconds.is_some_and(|s| !(s >= 0.0 && s.is_finite())) {
        return Some(Reason::BadFigure("seconds to deliver"));
    }
    if candidate.says.trim().is_empty() {
        return Some(Reason::BadFigure("word"));
    }
    if !candidate.at_board {
        return Some(Reason::NotAtBoard);
    }
    if candidate.ration_pieces == Some(0) {
        return Some(Reason::NoRation);
    }
    let delivery = deliveries(&[candidate], rules).into_iter().next()?;
    if delivery.seconds > rules.slowest {
        return Some(Reason::TooSlow { seconds: delivery.seconds, slowest: rules.slowest });
    }
    (delivery.per_day < rules.fewest_per_day)
        .then_some(Reason::TooSeldom { per_day: delivery.per_day, fewest: rules.fewest_per_day })
}

/// Scores nearer to each other than this are told as the same: they are told to two decimals.
pub(super) const TOLD_APART: f64 = 0.005;

/// Compares the best set with the best one that holds the candidate, part by part.
pub(super) fn outscored(best: &Scored, rival: &Scored, candidates: &[Candidate]) -> Reason {
    let behind = best.score.total - rival.score.total;
    if behind < TOLD_APART {
        return Reason::AsGood { cautioned: cautioned(&rival.words, candidates) > cautioned(&best.words, candidates) };
    }
    let parts = |s: &Score| {
        [
            (Part::Liking, s.liking),
            (Part::Uncertainty, s.uncertainty),
            (Part::Deliveries, s.deliveries),
            (Part::Spread, s.spread),
            (Part::Apart, s.apart),
            (Part::Said, s.said),
        ]
    };
    let costs = parts(&best.score).into_iter().zip(parts(&rival.score)).map(|((part, a), (_, b))| (part, a - b));
    let (by, cost) = costs.max_by(|a, b| a.1.total_cmp(&b.1)).unwrap_or((Part::Liking, 0.0));
    Reason::Outscored { behind, by, cost }
}
