//! Do two groups of numbers differ in level? The rank-sum test with ties, exact by counting.
//!
//! Source: Mann & Whitney 1947, Ann Math Stat 18:50; exact distribution with ties by counting subsets of mid-ranks
//! (Streitberg & Roehmel 1986, from memory). Page: `docs/methods/learning.md`.

use super::LearningError;
use crate::stats::{PMethod, normal_cdf};

/// Result of the rank-sum test of group `b` against group `a`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RankSum {
    /// Pairs (one of `a`, one of `b`) in which `b` is larger.
    pub larger: u64,
    /// Pairs in which both are equal.
    pub tied: u64,
    /// Pairs in which `b` is smaller.
    pub smaller: u64,
    /// Two-sided p against "the order of the values is chance".
    pub p_two_sided: f64,
    /// How p was made: exact for all but large groups.
    pub p_method: PMethod,
}

/// Above this much work the exact count gives way to the normal approximation.
const EXACT_WORK: u64 = 40_000_000;

/// Compares all pairs and tests the difference in level. Values must be finite.
///
/// # Errors
/// [`LearningError::NoObservations`] if a group is empty, [`LearningError::BadNumber`] for a value that is not finite.
///
/// ```
/// use sayso_methods::learning::rank_sum::rank_sum;
/// let result = rank_sum(&[1.0, 2.0, 3.0], &[4.0, 5.0, 6.0])?;
/// assert!((result.p_two_sided - 0.1).abs() < 1e-12); // 2 of the 20 arrangements are as extreme
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn rank_sum(a: &[f64], b: &[f64]) -> Result<RankSum, LearningError> {
    if a.is_empty() || b.is_empty() {
        return Err(LearningError::NoObservations);
    }
    if let Some(&value) = a.iter().chain(b).find(|value| !value.is_finite()) {
        return Err(LearningError::BadNumber { what: "a value to rank", value });
    }
    let mut all: Vec<(f64, bool)> = a.iter().map(|&v| (v, false)).chain(b.iter().map(|&v| (v, true))).collect();
    all.sort_by(|x, y| x.0.total_cmp(&y.0));

    // Walk over groups of equal values: doubled mid-ranks are whole numbers, and pairs are counted on the way.
    let (mut larger, mut tied) = (0u64, 0u64);
    let (mut seen_a, mut start) = (0u64, 0usize);
    let mut doubled_ranks = Vec::with_capacity(all.len());
    let mut tie_term = 0.0;
    while start < all.len() {
        // `==` rather than total order, so that 0.0 and -0.0 tie.
        let end = start + all[start..].iter().take_while(|x| x.0 == all[start].0).count();
        let size = (end - start) as u64;
        let in_b = all[start..end].iter().filter(|x| x.1).count() as u64;
        let in_a = size - in_b;
        larger += in_b * seen_a;
        tied += in_a * in_b;
        seen_a += in_a;
        doubled_ranks.extend(std::iter::repeat_n((start + end + 1) as u64, end - start));
        tie_term += (size as f64).powi(3) - size as f64;
        start = end;
    }
    let (n_a, n_b) = (a.len() as u64, b.len() as u64);
    let smaller = n_a * n_b - larger - tied;
    let score = larger.abs_diff(smaller);

    let few = n_a.min(n_b);
    let n = n_a + n_b;
    let exact = n.saturating_mul(few).saturating_mul(few * (n + 1)) <= EXACT_WORK;
    let p_two_sided = if exact {
        exact_p(&doubled_ranks, few as usize, score)
    } else {
        let (nf, product) = (n as f64, n_a as f64 * n_b as f64);
        let variance = product / 3.0 * (nf + 1.0 - tie_term / (nf * (nf - 1.0)));
        // The score moves in steps of 2 without ties, hence the continuity correction of 1.
        two_sided_normal((score as f64 - 1.0).max(0.0), variance)
    };
    let p_method = if exact { PMethod::Exact } else { PMethod::Approximate };
    Ok(RankSum { larger, tied, smaller, p_two_sided, p_method })
}

/// Share of all choices of `few` ranks whose sum lies at least `score` from its mean.
///
/// `larger - smaller` equals the doubled rank sum of a group minus its mean, so the two distances compare directly.
fn exact_p(doubled_ranks: &[u64], few: usize, score: u64) -> f64 {
    let n = doubled_ranks.len();
    let mean = (few * (n + 1)) as u64;
    let top: usize = doubled_ranks.iter().rev().take(few).sum::<u64>() as usize;
    let width = top + 1;
    // ways[k][s]: choices of k ranks with doubled sum s. Counts up to C(n, n/2) fit a double without overflow here.
    let mut ways = vec![0.0f64; (few + 1) * width];
    ways[0] = 1.0;
    for (seen, &rank) in doubled_ranks.iter().enumerate() {
        let rank = rank as usize;
        for k in (1..=few.min(seen + 1)).rev() {
            let (before, here) = ways.split_at_mut(k * width);
            let before = &before[(k - 1) * width..];
            for sum in rank..width {
                here[sum] += before[sum - rank];
            }
        }
    }
    let last = &ways[few * width..];
    let total: f64 = last.iter().sum();
    let extreme: f64 =
        last.iter().enumerate().filter(|(sum, _)| (*sum as u64).abs_diff(mean) >= score).map(|(_, count)| count).sum();
    (extreme / total).min(1.0)
}

/// Two-sided normal p of a distance from the mean; 1 where nothing can vary.
pub(super) fn two_sided_normal(distance: f64, variance: f64) -> f64 {
    if variance > 0.0 { (2.0 * normal_cdf(-distance.abs() / variance.sqrt())).min(1.0) } else { 1.0 }
}
