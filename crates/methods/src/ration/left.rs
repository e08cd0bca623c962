//! What is left of the day's rewards: a running total over everyone who feeds.
//!
//! Source: plain addition. A feed of unknown energy is counted and named, so that "left" is then an upper bound.

use super::pieces::{PieceRefusal, whole_pieces};
use sayso_model::Kcal;

/// One reward given today.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feed<T> {
    /// Who gave it, if known.
    pub person: Option<T>,
    /// Its energy, if known.
    pub kcal: Option<Kcal>,
}

/// What one person gave today.
#[derive(Debug, Clone, PartialEq)]
pub struct PersonShare<T> {
    /// Who; none for feeds nobody is named for.
    pub person: Option<T>,
    /// Energy given, kcal.
    pub kcal: f64,
    /// Feeds given.
    pub n: usize,
}

/// What is left of the day's rewards.
#[derive(Debug, Clone, PartialEq)]
pub struct Left<T> {
    /// Energy given, kcal; at least this much where `unknown` is above 0.
    pub given_kcal: f64,
    /// Energy left, kcal; 0 once it is used up.
    pub left_kcal: f64,
    /// Energy given beyond the budget, kcal.
    pub over_by_kcal: f64,
    /// Feeds counted.
    pub n: usize,
    /// Feeds whose energy is not known: `left_kcal` is then an upper bound.
    pub unknown: usize,
    /// What each person gave, in the order given.
    pub by_person: Vec<PersonShare<T>>,
}

impl<T> Left<T> {
    /// Whole pieces left of a reward of this energy.
    ///
    /// # Errors
    /// [`PieceRefusal::NoEnergy`] for a piece of 0 kcal.
    pub fn pieces(&self, piece: Kcal) -> Result<u32, PieceRefusal> {
        whole_pieces(self.left_kcal, piece)
    }
}

/// The running total of a day's feeds, in any order, against the day's reward budget.
///
/// ```
/// use sayso_methods::ration::{Feed, left_today};
/// use sayso_model::Kcal;
/// let kcal = Kcal::new(3.5)?;
/// let feeds = ["ann", "bo", "ann"].map(|who| Feed { person: Some(who), kcal: Some(kcal) });
/// let left = left_today(Kcal::new(14.0)?, &feeds);
/// assert_eq!((left.n, left.pieces(kcal)?), (3, 1));
/// assert_eq!(left.by_person[0].n, 2);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn left_today<T: Ord + Clone>(budget: Kcal, feeds: &[Feed<T>]) -> Left<T> {
    let mut by_person = std::collections::BTreeMap::<Option<T>, (f64, usize)>::new();
    let (mut given, mut unknown) = (0.0, 0);
    for feed in feeds {
        let kcal = feed.kcal.map_or(0.0, Kcal::get);
        given += kcal;
        unknown += usize::from(feed.kcal.is_none());
        let share = by_person.entry(feed.person.clone()).or_default();
        share.0 += kcal;
        share.1 += 1;
    }
    let left = budget.get() - given;
    Left {
        given_kcal: given,
        left_kcal: left.max(0.0),
        over_by_kcal: (-left).max(0.0),
        n: feeds.len(),
        unknown,
        by_person: by_person.into_iter().map(|(person, (kcal, n))| PersonShare { person, kcal, n }).collect(),
    }
}
