//! A pull towards a side, tested on its own.
//!
//! Sources: exact binomial test of left against right; for arrays an exact permutation test of the mean place (by convolution,
//! own construction). Both assume that sides were counterbalanced: if the favourite always lay on the left, liking looks like a
//! side. The side term of [`super::fit_pairs`] tells the two apart.

use super::{LikesError, PairOutcome, PairTrial};
use crate::stats::{Interval, Level, Proportion, StatsError, Tail, normal_cdf};

/// Choices on the left against the right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideBias {
    /// Choices on the left, of all.
    pub left: Proportion,
    /// Exact interval of the share on the left.
    pub interval: Interval,
    /// Exact two-sided p-value against one half.
    pub p: f64,
}

/// Exact test of `left` against `right` choices.
///
/// # Errors
/// [`LikesError::Stats`] if the counts are too large to add.
///
/// ```
/// use sayso_methods::likes::side_bias;
/// use sayso_methods::stats::Level;
/// let bias = side_bias(19, 5, Level::P95)?;
/// assert!(bias.p < 0.01 && bias.interval.low > 0.5);
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn side_bias(left: u64, right: u64, level: Level) -> Result<SideBias, LikesError> {
    let n = left.checked_add(right).ok_or(StatsError::OutOfRange { what: "choices", value: f64::INFINITY })?;
    let left = Proportion::new(left, n)?;
    Ok(SideBias { left, interval: left.clopper_pearson(level), p: left.test(0.5, Tail::TwoSided)? })
}

/// The same from trials; those with neither or both taken say nothing about sides.
///
/// # Errors
/// As [`side_bias`].
pub fn side_bias_of_trials(trials: &[PairTrial], level: Level) -> Result<SideBias, LikesError> {
    let count = |outcome| trials.iter().filter(|t| t.outcome == outcome).count() as u64;
    side_bias(count(PairOutcome::Left), count(PairOutcome::Right), level)
}

/// A pull towards one end of an array.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PositionBias {
    /// Mean place chosen: -1 the left end, 0 the middle, 1 the right end.
    pub mean_place: f64,
    /// Two-sided p-value that places chosen at random lean so far.
    pub p: f64,
    /// Whether `p` is exact (up to a thousand choices) or normal.
    pub exact: bool,
    /// Choices among two items or more.
    pub n: usize,
}

/// Tests whether the places chosen lean to one end. Each choice is (place from the left, from 0; items in the array then).
/// Assumes that the first array of a session was in random order; moving items about by place alone keeps it so.
///
/// # Errors
/// [`LikesError::Stats`] for a place beyond its array, an array above 100 items, or no choice among at least two items.
///
/// ```
/// use sayso_methods::likes::position_bias;
/// let left_every_time = position_bias(&[(0, 5), (0, 4), (0, 3), (0, 2), (0, 5), (0, 4), (0, 3)])?;
/// assert!(left_every_time.mean_place == -1.0 && left_every_time.p < 0.01);
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn position_bias(choices: &[(usize, usize)]) -> Result<PositionBias, LikesError> {
    if let Some((place, _)) = choices.iter().find(|(place, size)| place >= size || *size > 100) {
        return Err(StatsError::OutOfRange { what: "place in the array", value: *place as f64 }.into());
    }
    let real: Vec<(usize, usize)> = choices.iter().copied().filter(|(_, size)| *size > 1).collect();
    let n = real.len();
    if n == 0 {
        return Err(StatsError::TooFew { what: "choices among several items", needed: 1, got: 0 }.into());
    }
    // Twice the distance from the middle of the array: a whole number, so the null distribution is a finite convolution.
    let lean: i64 = real.iter().map(|(place, size)| 2 * *place as i64 - (*size as i64 - 1)).sum();
    let mean_place = real.iter().map(|(p, s)| (2 * p) as f64 / (s - 1) as f64 - 1.0).sum::<f64>() / n as f64;
    let exact = n <= 1000;
    let p = if exact {
        let sizes = real.iter().map(|(_, size)| *size);
        exact_p(sizes, lean.unsigned_abs())
    } else {
        let variance: f64 = real.iter().map(|(_, size)| ((size * size - 1) as f64) / 3.0).sum();
        2.0 * normal_cdf(-(lean.abs() as f64) / variance.sqrt())
    };
    Ok(PositionBias { mean_place, p: p.min(1.0), exact, n })
}

/// Probability that the sum of uniform places, counted from the middle, lies at least `lean` away from 0.
fn exact_p(sizes: impl Iterator<Item = usize>, lean: u64) -> f64 {
    let mut distribution = vec![1.0];
    for size in sizes {
        // Places 0, 1, .. size - 1; a running window sums the last `size` entries.
        let length = distribution.len() + size - 1;
        let mut next = vec![0.0; length];
        for (at, share) in distribution.iter().enumerate() {
            next[at..at + size].iter_mut().for_each(|slot| *slot += share / size as f64);
        }
        distribution = next;
    }
    let top = distribution.len() as u64 - 1;
    // Entry `at` stands for a lean of 2 at - top.
    distribution
        .iter()
        .enumerate()
        .filter(|(at, _)| (2 * *at as u64).abs_diff(top) >= lean)
        .map(|(_, share)| share)
        .sum()
}
