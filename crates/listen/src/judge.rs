//! From evidence to a calibrated confidence.
//!
//! A logistic model of a few figures from both looks, fitted to synthetic homes (see `docs/methods/hearing.md`), then
//! three things the sound of one candidate cannot tell: whether another word explains the same stretch better, whether
//! the speed is the one this button has had, and whether buttons are being pressed at all just now.

use crate::closer::{View, WINDOWS};
use crate::coherence::{self, Match, Stage};
use crate::phases::SHARES;

/// Least first-look score that is examined further.
pub(crate) const FIRST_LOOK: f32 = 2.7;
/// Speeds around the first look's best that the second look searches.
pub(crate) const REACH: f64 = 0.025;
/// Engine-rate samples that examining a clip of `samples` takes, when the first look thought it plays at speed `near`.
pub(crate) fn reach(samples: usize, near: f64) -> u64 {
    coherence::reach(samples, near, REACH)
}

/// Speeds a button is believed to play at.
pub(crate) const SPEEDS: std::ops::RangeInclusive<f64> = 0.9385..=1.0415;

/// Whether a candidate deserves more work after a stage.
///
/// Logistic models fitted to all candidates of the first look; each bound gives up one press in two hundred of those that
/// would be called presses in the end, most of them at 0 dB, and most of the false candidates.
pub(crate) fn promising(z: f32, stage: Stage, m: &Match) -> bool {
    let ln = |v: f32| v.max(1e-3).ln();
    let (z, quick, mean, scan) = (ln(z.max(1.0)), ln(m.quick), ln(m.quick_mean), ln(m.scan));
    match stage {
        Stage::Quick => 3.349 * z + 12.645 * quick > 10.0,
        Stage::Liked => 3.394 * z - 7.057 * quick - 1.646 * mean + 39.992 * scan > 15.4,
        Stage::Scanned => {
            let (other, high) = (ln(m.other_mean), ln(m.other_high));
            let away = -15.230 * other + 29.843 * (scan - high) + 5.156 * (high - other);
            3.815 * z - 5.315 * quick + 7.844 * mean + away + 19.734 * scan > 14.9
        }
    }
}

/// Figures of one candidate, rivals apart.
pub(crate) const FIGURES: usize = 19;

const WEIGHTS: [f64; FIGURES] = [
    5.812, 0.199, -3.956, -14.209, 5.323, -10.068, -4.314, 3.183, -3.876, 9.150, -6.335, 2.745, -5.821, 30.006,
    -10.899, 14.742, 21.251, 0.400, -3.125,
];
const RIVAL: [f64; 2] = [-11.465, 12.047];
const CONSTANT: f64 = -34.939;

/// The evidence in figures.
pub(crate) fn figures(z: f32, m: &Match, views: &[View; WINDOWS.len()]) -> [f64; FIGURES] {
    let ln = |v: f32| f64::from(v.max(1e-3)).ln();
    let front = ln(m.by_share[0]) - ln(m.by_share[SHARES.len() - 1]);
    [
        ln(m.ratio),
        ln(z.max(1.0)),
        ln(m.quick) - ln(m.quick_mean),
        ln(m.other_mean),
        ln(m.scan) - ln(m.other_high),
        ln(m.other_high) - ln(m.other_mean),
        (m.windows as f64).ln(),
        front.min(0.0),
        front.max(0.0),
        ln(views[0].ratio),
        ln(views[0].per_bin),
        f64::from(views[0].halves),
        ln(views[1].ratio),
        ln(views[1].per_bin),
        f64::from(views[1].halves),
        ln(views[2].ratio),
        ln(views[2].per_bin),
        f64::from(views[2].halves),
        // Part of a word is more easily taken for another.
        f64::from(u8::from(m.share + 1 < SHARES.len())),
    ]
}

/// Log odds that a candidate is a press, before rivals and history.
pub(crate) fn log_odds(f: &[f64; FIGURES]) -> f64 {
    CONSTANT + f.iter().zip(WEIGHTS).map(|(x, w)| x * w).sum::<f64>()
}

/// What a rival for the same stretch takes away, `lead` being how far its log ratio is ahead.
pub(crate) fn rivalry(lead: f64) -> f64 {
    let lead = lead.max(0.0);
    RIVAL[0] * lead + RIVAL[1] * (lead - 0.3).max(0.0)
}

/// Probability from log odds.
pub(crate) fn probability(log_odds: f64) -> f64 {
    1.0 / (1.0 + (-log_odds.clamp(-40.0, 40.0)).exp())
}
