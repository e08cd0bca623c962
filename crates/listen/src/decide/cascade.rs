//! A rejection cascade: after each stage of the second look most candidates are given up.

use crate::decide::weights::Cascade;
use crate::verify::coherence::{Match, Stage};

/// What is known of a candidate after a stage: first look, quick search and its mean, scan, and other speeds' mean and
/// nearly highest; logarithms. Those not known yet are low.
pub(crate) fn figures(z: f32, m: &Match) -> [f64; 6] {
    let ln = |v: f32| f64::from(v.max(1e-3).ln());
    [ln(z.max(1.0)), ln(m.quick), ln(m.quick_mean), ln(m.scan), ln(m.other_mean), ln(m.other_high)]
}

/// Whether a candidate of these [`figures`] deserves more work after a stage.
///
/// Logistic models fitted to all candidates of the first look; each bound gives up one press in two hundred of those that
/// would be called presses in the end, most of them at 0 dB, and most of the false candidates.
pub(crate) fn promising(cascade: &Cascade, stage: Stage, figures: &[f64; 6]) -> bool {
    match stage {
        Stage::Quick => cascade.quick.passes(figures),
        Stage::Liked => cascade.liked.passes(figures),
        Stage::Scanned => cascade.scanned.passes(figures),
    }
}
