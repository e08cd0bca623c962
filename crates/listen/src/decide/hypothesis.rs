//! What may be a press.

use crate::dsp::resampler::RATE;
use serde::{Deserialize, Serialize};

/// A candidate that may be a press, waiting to be decided. Times in engine-rate samples.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Hypothesis {
    /// Index of the clip.
    #[serde(alias = "word")]
    pub(crate) clip: usize,
    /// Where the first look saw it start.
    pub(crate) at: u64,
    pub(crate) onset: f64,
    pub(crate) end: f64,
    /// When all sound needed to examine it was there; the order of deciding.
    pub(crate) ready: u64,
    /// Log odds from its own sound.
    pub(crate) log_odds: f64,
    /// Logarithm of its coherence ratio.
    pub(crate) ratio: f64,
    pub(crate) speed: f64,
    pub(crate) level_db: f64,
    pub(crate) share: f64,
}

impl Hypothesis {
    /// Seconds from the start of the sound.
    pub(crate) fn onset_s(&self) -> f64 {
        self.onset / RATE as f64
    }

    /// Where it lies.
    pub(crate) const fn place(&self) -> (f64, f64) {
        (self.onset, self.end)
    }
}
