//! Time to a press under a fixed wait, or to any event that may not come while one looks (right-censored data).
//!
//! No press by the end of the wait is "not yet", never "does not know". Assumes that what ends the watching has nothing to do
//! with when the event would have come; a learner that left is such a case only if it did not leave because of the wait.

mod kaplan_meier;

pub use kaplan_meier::{MedianInterval, SurvivalCurve, SurvivalPoint, kaplan_meier};

use crate::stats::StatsError;
use thiserror::Error;

/// One wait: how long, and whether the event came at its end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wait {
    /// Time from the start, in the caller's unit (seconds for latency); 0 or more.
    pub time: f64,
    /// `true` if the event came at `time`; `false` if watching ended then without it.
    pub event: bool,
}

impl Wait {
    /// The event came at `time`.
    pub fn ended(time: f64) -> Self {
        Self { time, event: true }
    }

    /// Nothing by `time`, when watching ended.
    pub fn open(time: f64) -> Self {
        Self { time, event: false }
    }
}

/// Why a latency could not be analysed.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[non_exhaustive]
pub enum LatencyError {
    /// A value or a count is wrong.
    #[error(transparent)]
    Stats(#[from] StatsError),
}

/// Checks the times and returns the waits in order of time.
fn in_order(waits: &[Wait]) -> Result<Vec<Wait>, LatencyError> {
    if waits.is_empty() {
        return Err(StatsError::TooFew { what: "waits", needed: 1, got: 0 }.into());
    }
    if let Some(bad) = waits.iter().find(|w| !(w.time >= 0.0 && w.time.is_finite())) {
        return Err(StatsError::OutOfRange { what: "time", value: bad.time }.into());
    }
    // Adding zero turns -0 into 0.
    let mut sorted: Vec<Wait> = waits.iter().map(|w| Wait { time: w.time + 0.0, event: w.event }).collect();
    sorted.sort_unstable_by(|a, b| a.time.total_cmp(&b.time));
    Ok(sorted)
}
