//! Change from one phase to the next: nonoverlap of all pairs, Tau, Tau-U and percentage of nonoverlapping data.
//!
//! Sources: NAP: Parker & Vannest 2009, Behav Ther 40:357; its interval: Newcombe 2006, Stat Med 25:559, method 5
//! (from memory); Tau and Tau-U: Parker, Vannest, Davis & Sauber 2011, Behav Ther 42:284; PND: Scruggs, Mastropieri
//! & Casto 1987 (from memory). Page: `docs/methods/learning.md`.
//!
//! No interval has been published for Tau-U or PND that we could check, so none is given.

use super::LearningError;
use super::rank_sum::{RankSum, rank_sum, two_sided_normal};
use crate::stats::{Interval, Level, PMethod};

/// Which way a change for the better goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Better {
    /// Larger is better (presses, joining rate).
    Larger,
    /// Smaller is better (seconds to approach, requests while unavailable).
    Smaller,
}

/// Comparison of an earlier phase with a later one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PhaseComparison {
    /// Observations in the first phase.
    pub n_a: usize,
    /// Observations in the second phase.
    pub n_b: usize,
    /// Nonoverlap of all pairs, 0 to 1; 0.5 is no difference.
    pub nap: f64,
    /// 90 % interval of NAP (Newcombe's method 5); takes the observations as independent.
    pub nap_interval: Interval,
    /// Tau of phase A against B, -1 to 1: `2 NAP - 1`.
    pub tau_ab: f64,
    /// 90 % interval of Tau, from that of NAP.
    pub tau_interval: Interval,
    /// Two-sided p of NAP and Tau (rank-sum test).
    pub p: f64,
    /// How `p` was made.
    pub p_method: PMethod,
    /// Tau of the trend within phase A; `None` with one observation.
    pub trend_a: Option<f64>,
    /// Tau-U: Tau corrected for the trend in phase A, `(S_AB - S_A) / (n_A n_B)`. It can leave -1 to 1.
    pub tau_u: f64,
    /// Two-sided p of Tau-U by the normal approximation, under "the order of the values is chance".
    pub tau_u_p: f64,
    /// Share of phase B beyond the best value of phase A.
    pub pnd: f64,
}

/// Compares two phases; values in the order observed, finite.
///
/// # Errors
/// [`LearningError::NoObservations`] if a phase is empty, [`LearningError::BadNumber`].
///
/// ```
/// use sayso_methods::learning::phases::{Better, compare_phases};
/// let change = compare_phases(&[2.0, 3.0, 5.0, 3.0], &[4.0, 5.0, 5.0, 7.0, 6.0], Better::Larger)?;
/// assert!((change.nap - 0.9).abs() < 1e-12);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn compare_phases(a: &[f64], b: &[f64], better: Better) -> Result<PhaseComparison, LearningError> {
    let sign = match better {
        Better::Larger => 1.0,
        Better::Smaller => -1.0,
    };
    let turned = |values: &[f64]| values.iter().map(|value| sign * value).collect::<Vec<f64>>();
    let (a, b) = (turned(a), turned(b));
    let RankSum { larger, tied, smaller, p_two_sided, p_method } = rank_sum(&a, &b)?;
    let pairs = a.len() as f64 * b.len() as f64;
    let nap = (larger as f64 + 0.5 * tied as f64) / pairs;
    let interval = nap_interval(nap, a.len() as f64, b.len() as f64);
    let score_ab = larger as f64 - smaller as f64;
    let (score_a, variance_a) = trend(&a);
    let pairs_a = a.len() as f64 * (a.len() as f64 - 1.0) / 2.0;
    let best_a = a.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    Ok(PhaseComparison {
        n_a: a.len(),
        n_b: b.len(),
        nap,
        nap_interval: interval,
        tau_ab: score_ab / pairs,
        tau_interval: Interval {
            low: 2.0 * interval.low - 1.0,
            high: 2.0 * interval.high - 1.0,
            level: interval.level,
        },
        p: p_two_sided,
        p_method,
        trend_a: (pairs_a > 0.0).then(|| score_a / pairs_a),
        tau_u: (score_ab - score_a) / pairs,
        // Given which values fall in phase A, their order within it is chance of its own, so the variances add.
        tau_u_p: two_sided_normal(score_ab - score_a, between_variance(&a, &b) + variance_a),
        pnd: b.iter().filter(|value| **value > best_a).count() as f64 / b.len() as f64,
    })
}

/// Kendall's score of a series against its order and its variance under chance, both with ties.
fn trend(series: &[f64]) -> (f64, f64) {
    let n = series.len() as f64;
    let mut score = 0.0;
    for (later, value) in series.iter().enumerate() {
        for earlier in &series[..later] {
            score += f64::from(i8::from(value > earlier) - i8::from(value < earlier));
        }
    }
    let term = |t: f64| t * (t - 1.0) * (2.0 * t + 5.0);
    let ties: f64 = tie_sizes(series.to_vec()).into_iter().map(term).sum();
    (score, ((term(n) - ties) / 18.0).max(0.0))
}

/// Variance of `S_AB` under chance, with ties.
fn between_variance(a: &[f64], b: &[f64]) -> f64 {
    let (n_a, n_b) = (a.len() as f64, b.len() as f64);
    let n = n_a + n_b;
    let ties: f64 = tie_sizes([a, b].concat()).into_iter().map(|t| t.powi(3) - t).sum();
    (n_a * n_b / 3.0 * (n + 1.0 - ties / (n * (n - 1.0)))).max(0.0)
}

fn tie_sizes(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_by(f64::total_cmp);
    values.chunk_by(|x, y| x == y).map(|group| group.len() as f64).collect()
}

/// Newcombe's method 5: the values `A` with `|A - nap| <= z sqrt(V(A))`, found by bisection on either side.
fn nap_interval(nap: f64, m: f64, n: f64) -> Interval {
    let level = Level::P90;
    let z = level.z();
    let half = (m + n) / 2.0 - 1.0;
    let spread =
        |a: f64| z * (a * (1.0 - a) * (1.0 + half * (1.0 - a) / (2.0 - a) + half * a / (1.0 + a)) / (m * n)).sqrt();
    let edge = |outside: f64| {
        let (mut inside, mut outside) = (nap, outside);
        for _ in 0..60 {
            let middle = 0.5 * (inside + outside);
            if (middle - nap).abs() <= spread(middle) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        outside
    };
    Interval { low: edge(0.0), high: edge(1.0), level }
}
