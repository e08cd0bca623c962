//! How learning goes: curves, latency, readiness, change across phases.
//!
//! Everything here takes plain numbers and gives typed results. A press that was not offered, or not wanted,
//! is missing (`None`), never a failure: not pressing is not evidence of not knowing.

pub mod celeration;
pub mod curve;
pub mod ground;
pub mod latency;
mod mixture;
pub mod phases;
pub mod rank_sum;
pub mod readiness;
pub mod shown;
pub mod stage;
mod state_space;

/// Why a figure about learning cannot be given.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum LearningError {
    /// No trial was observed (an empty list, or every trial missing).
    #[error("nothing can be said yet: no trial was observed (n = 0)")]
    NoObservations,
    /// A chance level must lie strictly between 0 and 1.
    #[error("the chance level must lie strictly between 0 and 1, not {0}")]
    ChanceOutOfRange(f64),
    /// A number that must be finite (and, for rates and times, not negative) was not.
    #[error("{what} must be a finite number in its range, not {value}")]
    BadNumber {
        /// Which figure.
        what: &'static str,
        /// The value given.
        value: f64,
    },
    /// Two lists that run in parallel have different lengths.
    #[error("{left} and {right} must have the same length, not {left_len} and {right_len}")]
    LengthMismatch {
        /// Name of the first list.
        left: &'static str,
        /// Name of the second list.
        right: &'static str,
        /// Length of the first list.
        left_len: usize,
        /// Length of the second list.
        right_len: usize,
    },
    /// A setting is outside what the method allows.
    #[error("setting {0} is out of range")]
    BadSetting(&'static str),
    /// All observations fall on one day, so there is no change over time to measure.
    #[error("all {n} observations fall at one time: no change over time can be measured")]
    NoSpan {
        /// How many observations there were.
        n: usize,
    },
}
