//! What kept a candidate out, in figures.

use super::given::{Candidate, FirstWordRules};
use super::score::{Score, Scored, deliveries};
use std::fmt;

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
    Hazard(String),
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
        /// How alike, in words.
        how: String,
    },
    /// Too few other candidates can be used with it.
    NoCompany {
        /// Words a set needs.
        needed: usize,
        /// Candidates that can be used.
        usable: usize,
    },
    /// The best set scores more than the best set with it.
    Outscored {
        /// Score of the best set less that of the best set with it.
        behind: f64,
        /// The part that costs it most.
        by: Part,
        /// That part's cost.
        cost: f64,
        /// The same figures in words.
        figures: String,
    },
}

impl Reason {
    pub(super) fn sounds_like(other: usize, how: &str) -> Self {
        Self::SoundsLike { other, how: how.to_owned() }
    }
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Hazard(why) => write!(f, "must not be given: {why}"),
            Self::BadFigure(what) => write!(f, "its {what} cannot be right"),
            Self::NotAtBoard => {
                write!(f, "cannot be given at the board again and again, and a first word needs many quick repetitions")
            }
            Self::NoRation => write!(f, "the day's food allowance leaves no piece of it"),
            Self::TooSlow { seconds, slowest } => {
                write!(f, "takes {seconds:.0} s at the board, more than {slowest:.0} s: too few repetitions")
            }
            Self::TooSeldom { per_day, fewest } => {
                write!(f, "can be delivered {per_day:.1} times a day, fewer than {fewest:.1}")
            }
            Self::SoundsLike { how, .. } => write!(f, "sounds like another: {how}"),
            Self::NoCompany { needed, usable } => write!(f, "{usable} usable candidates make no set of {needed}"),
            Self::Outscored { figures, .. } => write!(f, "{figures}"),
        }
    }
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

impl fmt::Display for LeftOut {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.says, self.reason)
    }
}

/// What bars a candidate whatever the others are.
pub(super) fn unfit(candidate: &Candidate, rules: &FirstWordRules) -> Option<Reason> {
    // Safety before all else, also before a figure that cannot be right.
    if let Some(why) = &candidate.hazard {
        return Some(Reason::Hazard(why.clone()));
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

/// Compares the best set with the best one that holds the candidate, part by part.
pub(super) fn outscored(
    i: usize,
    candidates: &[Candidate],
    best: &Scored,
    rival: &Scored,
    rules: &FirstWordRules,
) -> Reason {
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
    let behind = best.score.total - rival.score.total;
    let own = &candidates[i];
    let names = |set: &Scored| set.words.iter().map(|w| candidates[*w].says.as_str()).collect::<Vec<_>>().join(", ");
    let least = best.words.iter().map(|w| candidates[*w].liking.mean).fold(f64::INFINITY, f64::min);
    let surest = best.words.iter().map(|w| candidates[*w].liking.sd).fold(0.0, f64::max);
    let why = match by {
        Part::Liking => format!("liked {:.2}, the chosen ones {least:.2} or more", own.liking.mean),
        Part::Uncertainty => format!(
            "its liking is known to ±{:.2} (standard error), the chosen ones' to ±{surest:.2} or better: test it more",
            own.liking.sd
        ),
        Part::Deliveries => {
            let at = rival.words.iter().position(|w| *w == i);
            let per_day = at.and_then(|a| rival.deliveries.get(a)).map_or(0.0, |d| d.per_day);
            format!("{per_day:.1} deliveries a day in its best set, where {:.0} would be enough", rules.enough_per_day)
        }
        Part::Spread => format!("adds no new kind of reward ({} again)", own.kind.name()),
        Part::Apart => "sounds closer to the others than the chosen ones do to each other".to_owned(),
        Part::Said => "the household does not say it yet".to_owned(),
    };
    let figures = format!(
        "{why}; its best set ({}) scores {:.3}, {behind:.3} less than the chosen {:.3} (standard deviation {:.3})",
        names(rival),
        rival.score.total,
        best.score.total,
        best.score.sd
    );
    Reason::Outscored { behind, by, cost, figures }
}
