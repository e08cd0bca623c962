//! How often words are asked for, and what answers do to that.
//!
//! Counts come with the time in which they could have been made (exposure) as an argument, so that a 23-hour day, an
//! hour without the microphone or a week away is no rate of zero. Bins and days are the caller's: they follow the
//! household's own zone.

pub mod answers;
pub mod bursts;
pub mod change;
pub mod gaps;
pub mod rates;
pub mod thinning;

use crate::stats::StatsError;

/// Why a figure about demand cannot be given.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum DemandError {
    /// Nothing was observed at all.
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
    /// Two lists that run in parallel have different lengths.
    #[error("{left} values on one side, {right} on the other")]
    Unpaired {
        /// Length of the first.
        left: usize,
        /// Length of the second.
        right: usize,
    },
    /// Presses were counted in a stretch in which nobody was listening.
    #[error("presses were counted at position {at}, where no time was observed")]
    PressesWithoutExposure {
        /// Which bin or step.
        at: usize,
    },
    /// Times must not go back: put a jumped clock right before counting.
    #[error("the time at position {at} is earlier than the one before it")]
    TimeGoesBack {
        /// Index of the earlier time.
        at: usize,
    },
    /// A statistic underneath refused.
    #[error(transparent)]
    Stats(#[from] StatsError),
}

/// Exposure must be a finite number of at least 0, and above 0 where presses were counted.
fn check_exposure(counts: &[u64], exposure: &[f64]) -> Result<(), DemandError> {
    if counts.len() != exposure.len() {
        return Err(DemandError::Unpaired { left: counts.len(), right: exposure.len() });
    }
    for (at, (&count, &time)) in counts.iter().zip(exposure).enumerate() {
        if !(time.is_finite() && time >= 0.0) {
            return Err(DemandError::OutOfRange { what: "exposure", value: time });
        }
        if count > 0 && time == 0.0 {
            return Err(DemandError::PressesWithoutExposure { at });
        }
    }
    Ok(())
}
