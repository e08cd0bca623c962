//! From evidence to a decision: a calibrated confidence, and which of rivals for one stretch of sound stands.

use crate::coherence::Match;

/// Least first-look score that is examined further.
pub(crate) const FIRST_LOOK: f32 = 2.6;
/// Speeds around the first look's best that the second look searches.
pub(crate) const REACH: f64 = 0.02;

/// Names of the figures, in the order [`figures`] gives them.
pub(crate) const FIGURES: usize = 10;

/// The evidence in figures.
pub(crate) fn figures(z: f32, m: &Match) -> [f64; FIGURES] {
    let ln = |v: f32| f64::from(v.max(1e-3)).ln();
    [
        ln(m.ratio),
        ln(z.max(1.0)),
        ln(m.quick),
        ln(m.quick_mean),
        ln(m.quick_high),
        ln(m.fine_mean),
        m.share as f64,
        (m.windows as f64).ln(),
        ln(m.by_share[0]),
        ln(m.by_share[3]),
    ]
}

/// Probability that a candidate is a press.
pub(crate) fn confidence(f: &[f64; FIGURES]) -> f64 {
    let x = -6.0 + 4.0 * f[0] + 3.0 * (f[2] - f[4]) + 0.5 * f[1];
    1.0 / (1.0 + (-x).exp())
}

/// A candidate that may be a press, waiting for rivals. Times in engine-rate samples.
#[derive(Debug, Clone)]
pub(crate) struct Verdict {
    pub(crate) word: usize,
    pub(crate) onset: f64,
    pub(crate) end: f64,
    pub(crate) ready: u64,
    pub(crate) confidence: f64,
    pub(crate) speed: f64,
    pub(crate) level_db: f64,
    pub(crate) share: f64,
    pub(crate) strength: f32,
}

/// Whether a verdict holds against its rivals.
pub(crate) fn stands<'a>(v: &Verdict, mut rivals: impl Iterator<Item = &'a Verdict>) -> bool {
    !rivals.any(|r| {
        let overlap = (v.end.min(r.end) - v.onset.max(r.onset)).max(0.0) / (v.end - v.onset).max(1.0);
        let stronger = (r.confidence, r.strength) > (v.confidence, v.strength);
        r.word == v.word && overlap > 0.5 && (r.onset - v.onset).abs() < 0.25 * 8000.0 && stronger
    })
}
