//! From evidence to log odds: a logistic model of a few figures from all looks, fitted to synthetic homes (see
//! `docs/methods/hearing.md`).

use crate::verify::coherence::Match;
use crate::verify::coherent_sum::SHARES;
use crate::verify::multi_resolution::{Coherence, WINDOWS};

/// Figures of one candidate, rivals apart.
pub(crate) const FIGURES: usize = 19;

const WEIGHTS: [f64; FIGURES] = [
    5.812, 0.199, -3.956, -14.209, 5.323, -10.068, -4.314, 3.183, -3.876, 9.150, -6.335, 2.745, -5.821, 30.006,
    -10.899, 14.742, 21.251, 0.400, -3.125,
];
const RIVAL: [f64; 2] = [-11.465, 12.047];
const CONSTANT: f64 = -34.939;

/// The evidence in figures.
pub(crate) fn figures(z: f32, m: &Match, views: &[Coherence; WINDOWS.len()]) -> [f64; FIGURES] {
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
