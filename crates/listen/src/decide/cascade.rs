//! A rejection cascade: after each stage of the second look most candidates are given up.

use crate::verify::coherence::{Match, Stage};

/// Speeds a button is believed to play at.
pub(crate) const PLAUSIBLE_SPEEDS: std::ops::RangeInclusive<f64> = 0.9385..=1.0415;

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
