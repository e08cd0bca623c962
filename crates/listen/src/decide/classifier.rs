//! From evidence to log odds: a logistic model of a few figures from all looks, fitted to synthetic homes (see
//! `docs/methods/hearing.md`).

use crate::decide::rivals::BEYOND;
use crate::decide::weights::{Classifier, FIGURE_NAMES, shortness};
use crate::verify::coherence::Match;
use crate::verify::coherent_sum::SHARES;
use crate::verify::multi_resolution::{Coherence, WINDOWS};

/// Figures of one candidate, rivals apart; [`crate::FIGURE_NAMES`] names them.
pub(crate) const FIGURES: usize = FIGURE_NAMES.len();

/// The evidence in figures; `sounding_s` is the effective sound, in seconds, of what fitted of the clip.
pub(crate) fn figures(z: f32, m: &Match, views: &[Coherence; WINDOWS.len()], sounding_s: f64) -> [f64; FIGURES] {
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
        ln(views[1].trimmed),
        ln(views[2].trimmed),
        ln(views[1].before),
        // Part of a word is more easily taken for another.
        f64::from(u8::from(m.share + 1 < SHARES.len())),
        shortness(sounding_s),
    ]
}

impl Classifier {
    /// Log odds that a candidate is a press, before rivals and history.
    pub fn log_odds(&self, f: &[f64]) -> f64 {
        self.constant + f.iter().zip(self.figures).map(|(x, w)| x * w).sum::<f64>()
    }

    /// What a rival for the same stretch takes away, `lead` being how far its log coherence is ahead.
    pub fn rivalry(&self, lead: f64) -> f64 {
        let lead = lead.max(0.0);
        self.rival_lead * lead + self.rival_lead_beyond * (lead - BEYOND).max(0.0)
    }
}

/// Probability from log odds.
pub(crate) fn probability(log_odds: f64) -> f64 {
    1.0 / (1.0 + (-log_odds.clamp(-40.0, 40.0)).exp())
}
