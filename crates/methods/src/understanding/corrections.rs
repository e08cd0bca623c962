//! Correction presses: after a wrong delivery, does the learner press the same word again, more than after a right one?
//!
//! Source: exact stratified comparison of two shares (Gart 1970), see [`super::exact`]; that a speaker repairs a message
//! that was misunderstood is evidence of intent: Leavens, Russell & Hopkins 2005, Child Dev 76:291 (from memory).
//! Page: `docs/methods/understanding.md`.

use super::UnderstandingError;
use super::exact::{StratifiedTest, stratified_exact};
use crate::stats::{Interval, Level, Proportion, Tail, TwoByTwo};
use std::collections::BTreeMap;

/// What the learner did next, within the time the household allows for a correction.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Next {
    /// Pressed the same word again.
    SameWord,
    /// Pressed another word.
    OtherWord,
    /// Pressed nothing.
    Nothing,
}

/// One answered press and what came next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AfterDelivery {
    /// Word pressed.
    pub word: usize,
    /// Whether the thing asked for came.
    pub right: bool,
    /// What followed.
    pub next: Next,
}

/// Whether wrong deliveries are corrected.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Corrections {
    /// Same word again, of wrong deliveries.
    pub after_wrong: Proportion,
    /// 95 % interval.
    pub after_wrong_interval: Interval,
    /// Same word again, of right deliveries.
    pub after_right: Proportion,
    /// 95 % interval.
    pub after_right_interval: Interval,
    /// Same word again, wrong against right, word by word, one-sided. A learner still hungry presses more of anything, so
    /// this alone is not enough.
    pub again: StratifiedTest,
    /// Of those that pressed anything: the same word rather than another, wrong against right, one-sided. Frequency and
    /// a general urge to press are taken out.
    pub same_of_pressed: StratifiedTest,
}

/// Compares what follows wrong and right deliveries, for all words together (pass one word's for that word alone).
///
/// # Errors
/// [`UnderstandingError::NoObservations`].
///
/// ```
/// use sayso_methods::understanding::corrections::{AfterDelivery, Next, corrections};
/// let wrong = AfterDelivery { word: 0, right: false, next: Next::SameWord };
/// let right = AfterDelivery { word: 0, right: true, next: Next::OtherWord };
/// let found = corrections(&[wrong, wrong, wrong, wrong, right, right, right, right])?;
/// assert!((found.same_of_pressed.p - 1.0 / 70.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn corrections(deliveries: &[AfterDelivery]) -> Result<Corrections, UnderstandingError> {
    if deliveries.is_empty() {
        return Err(UnderstandingError::NoObservations);
    }
    // Per word, rows wrong and right: same, other, nothing.
    let mut by_word: BTreeMap<usize, [[u64; 3]; 2]> = BTreeMap::new();
    for delivery in deliveries {
        let column = match delivery.next {
            Next::SameWord => 0,
            Next::OtherWord => 1,
            Next::Nothing => 2,
        };
        by_word.entry(delivery.word).or_default()[usize::from(delivery.right)][column] += 1;
    }
    let table = |rest: fn(&[u64; 3]) -> u64| {
        by_word.values().map(|rows| TwoByTwo([[rows[0][0], rest(&rows[0])], [rows[1][0], rest(&rows[1])]])).collect()
    };
    let all: Vec<TwoByTwo> = table(|row| row[1] + row[2]);
    let pressed: Vec<TwoByTwo> = table(|row| row[1]);
    let share = |row: usize| {
        let same = by_word.values().map(|rows| rows[row][0]).sum();
        Proportion::new(same, by_word.values().map(|rows| rows[row].iter().sum::<u64>()).sum())
    };
    let (after_wrong, after_right) = (share(0)?, share(1)?);
    Ok(Corrections {
        after_wrong,
        after_wrong_interval: after_wrong.clopper_pearson(Level::P95),
        after_right,
        after_right_interval: after_right.clopper_pearson(Level::P95),
        again: stratified_exact(&all, Tail::Greater)?,
        same_of_pressed: stratified_exact(&pressed, Tail::Greater)?,
    })
}
