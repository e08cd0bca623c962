//! Does what happens after a press differ by word more than chance allows?
//!
//! Every test here keeps the structure of the sessions: presses are compared with other presses of the same sitting, so
//! that a good day or a fixed routine is not taken for understanding. Nothing here can show that an animal does not
//! understand; the results run from "nothing can be said yet" to "stands up to a blind check" ([`ladder`]).

pub mod accidents;
pub mod association;
mod draw;
pub mod ladder;
mod null;
pub mod pooled_probes;
pub mod probe;
pub mod rivals;
pub mod rounds;
pub mod sequences;
pub mod swap;

use crate::stats::{Interval, StatsError};

/// Why a figure about understanding cannot be given.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum UnderstandingError {
    /// Nothing was observed.
    #[error("nothing can be said yet: no observation (n = 0)")]
    NoObservations,
    /// A number outside the range in which it means anything.
    #[error("{what} is {value}, which is out of range")]
    OutOfRange {
        /// Which figure.
        what: &'static str,
        /// What it was.
        value: f64,
    },
    /// Sessions must come in order, each in one piece.
    #[error("session {session} comes back after another one: put presses in order of time")]
    SessionsMixed {
        /// The session that came back.
        session: usize,
    },
    /// Times must not go back within a session.
    #[error("the time at position {at} is earlier than the one before it")]
    TimeGoesBack {
        /// Index of the earlier time.
        at: usize,
    },
    /// A statistic underneath refused.
    #[error(transparent)]
    Stats(#[from] StatsError),
    /// No order of trials.
    #[error(transparent)]
    Order(#[from] sayso_model::order::OrderError),
}

/// A p-value from random rearrangements, with its Monte Carlo error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MonteCarloP {
    /// The p-value. Valid as it stands: never too small on average, whatever the number of rearrangements.
    pub p: f64,
    /// Rearrangements at least as extreme as what was seen.
    pub exceeded: u64,
    /// Rearrangements drawn before the answer was clear (or the cap reached).
    pub drawn: u64,
    /// 95 % interval of the p-value that endless rearranging would give.
    pub error: Interval,
}

/// How many rearrangements to draw, and from which seed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MonteCarlo {
    /// Seed: the same seed gives the same answer on any machine.
    pub seed: u64,
    /// Cap on rearrangements.
    pub most: u64,
    /// A p-value is clear, and its drawing stops, once this many rearrangements were at least as extreme
    /// (Besag & Clifford 1991, Biometrika 78:301). Large values never stop early.
    pub enough: u64,
}

impl MonteCarlo {
    /// Up to 9 999 rearrangements, stopping at 20 as extreme ones.
    #[must_use]
    pub fn seeded(seed: u64) -> Self {
        Self { seed, most: 9_999, enough: 20 }
    }

    fn check(self) -> Result<Self, UnderstandingError> {
        if self.most == 0 || self.enough == 0 {
            let value = self.most.min(self.enough) as f64;
            return Err(UnderstandingError::OutOfRange { what: "rearrangements", value });
        }
        Ok(self)
    }
}

/// Splits a list with a session number each into runs of one session; a session must not come back later.
fn sessions(numbers: impl Iterator<Item = usize>) -> Result<Vec<std::ops::Range<usize>>, UnderstandingError> {
    let mut seen = std::collections::HashSet::new();
    let mut ranges: Vec<std::ops::Range<usize>> = Vec::new();
    let mut last = None;
    for (at, session) in numbers.enumerate() {
        if last == Some(session) {
            if let Some(range) = ranges.last_mut() {
                range.end = at + 1;
            }
        } else {
            if !seen.insert(session) {
                return Err(UnderstandingError::SessionsMixed { session });
            }
            ranges.push(at..at + 1);
            last = Some(session);
        }
    }
    Ok(ranges)
}
