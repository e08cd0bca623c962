//! What comes out: presses heard, and for study the candidates behind them.

use serde::{Deserialize, Serialize};

/// Confidence below which a candidate is usually not called a press.
pub(crate) const LEAST_CONFIDENCE: f64 = 0.55;

/// Confidence from which a press is heard surely; below it a person is asked whether it sounded at all.
pub const SURE: f64 = 0.9;

/// A press that was heard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Detection {
    /// What the button says, as enrolled.
    pub word: String,
    /// Which of the enrolled clips was heard, as an index in the order given: a word may have several.
    #[serde(default)]
    pub clip: usize,
    /// Seconds from the start of the sound to the clip's first sample.
    pub onset_s: f64,
    /// Probability that this is a press of this word, 0 to 1.
    pub confidence: f64,
    /// Playback speed against the enrolled clip; 0.97 is 3 % slow.
    pub speed: f64,
    /// Level of the sound while the clip played, dB under full scale (root mean square, 8 kHz band).
    pub level_db: f64,
    /// Share of the clip that was heard before something cut it off, 0 to 1.
    pub share: f64,
}

/// Puts presses in the order in which they began: some are told late.
pub(crate) fn by_onset(heard: &mut [Detection]) {
    heard.sort_by(|a, b| a.onset_s.total_cmp(&b.onset_s));
}

/// A candidate of the first look and its evidence, heard or not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Candidate {
    /// Index of the clip.
    pub clip: usize,
    /// Seconds from the start of the sound.
    pub onset_s: f64,
    /// Seconds at which what fitted of the clip ends.
    pub end_s: f64,
    /// Speed of the best match.
    pub speed: f64,
    /// Whether the cascade lets it pass.
    pub passed: bool,
    /// Log odds from its own sound alone.
    pub log_odds: f64,
    /// The figures the confidence is made of, named by [`crate::FIGURE_NAMES`].
    pub figures: Vec<f64>,
    /// The cascade's figures each time it was asked: stage (0 to 2) and figures.
    pub stages: Vec<(usize, Vec<f64>)>,
}
