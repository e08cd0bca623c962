//! Log-rank test of two or more groups.
//!
//! Source: N. Mantel (1966), Cancer Chemother Rep 50:163; R. Peto & J. Peto (1972), J R Stat Soc A 135:185 (several groups).

use super::{LatencyError, Wait, in_order};
use crate::stats::{StatsError, chi_square_upper, dense::Cholesky};

/// What one group showed and what it would have shown without a difference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GroupCount {
    /// Waits.
    pub n: usize,
    /// Events seen.
    pub observed: usize,
    /// Events expected if the groups were alike.
    pub expected: f64,
}

/// Result of the test.
#[derive(Debug, Clone, PartialEq)]
pub struct LogRank {
    /// Test statistic.
    pub chi2: f64,
    /// Degrees of freedom: groups that could be compared, less one.
    pub df: u64,
    /// p-value that groups without a difference differ so much.
    pub p: f64,
    /// Per group, in the order given.
    pub groups: Vec<GroupCount>,
}

/// Compares the waiting times of groups. A group never watched while an event came somewhere is left out of the degrees of freedom.
///
/// # Errors
/// [`LatencyError::Stats`] for fewer than two groups, an empty group or a bad time; [`LatencyError::NoEvents`];
/// [`LatencyError::NotComparable`] if the groups were never watched at the same time as an event.
///
/// ```
/// use sayso_methods::learning::latency::{Wait, log_rank};
/// let fast: Vec<Wait> = [1.0, 1.5, 2.0, 2.5].map(Wait::ended).into();
/// let slow: Vec<Wait> = [4.0, 4.5, 5.0].map(Wait::open).into();
/// let found = log_rank(&[&fast, &slow])?;
/// assert!(found.p < 0.05 && found.df == 1);
/// # Ok::<(), sayso_methods::learning::latency::LatencyError>(())
/// ```
pub fn log_rank(groups: &[&[Wait]]) -> Result<LogRank, LatencyError> {
    let k = groups.len();
    if k < 2 {
        return Err(StatsError::TooFew { what: "groups", needed: 2, got: k }.into());
    }
    let mut sorted = Vec::new();
    for (group, waits) in groups.iter().enumerate() {
        sorted.extend(in_order(waits)?.into_iter().map(|w| (w, group)));
    }
    sorted.sort_by(|a, b| a.0.time.total_cmp(&b.0.time));
    let mut counts: Vec<GroupCount> =
        groups.iter().map(|g| GroupCount { n: g.len(), observed: 0, expected: 0.0 }).collect();
    let mut at_risk: Vec<usize> = groups.iter().map(|g| g.len()).collect();
    let mut variance = vec![0.0; k * k];
    for tied in sorted.chunk_by(|a, b| a.0.time == b.0.time) {
        let events = tied.iter().filter(|(w, _)| w.event).count();
        if events > 0 {
            let total: usize = at_risk.iter().sum();
            let (d, r) = (events as f64, total as f64);
            let spread = if total > 1 { d * (r - d) / (r - 1.0) } else { 0.0 };
            for a in 0..k {
                let share = at_risk[a] as f64 / r;
                counts[a].expected += d * share;
                for b in 0..k {
                    let same = if a == b { 1.0 } else { 0.0 };
                    variance[a * k + b] += spread * share * (same - at_risk[b] as f64 / r);
                }
            }
        }
        for (wait, group) in tied {
            counts[*group].observed += usize::from(wait.event);
            at_risk[*group] -= 1;
        }
    }
    if counts.iter().all(|c| c.observed == 0) {
        return Err(LatencyError::NoEvents { n: sorted.len() });
    }
    let comparable: Vec<usize> = (0..k).filter(|g| variance[g * k + g] > 1e-12).collect();
    // One group is the others' complement, so it carries no news of its own.
    let Some((_, kept)) = comparable.split_last().filter(|(_, kept)| !kept.is_empty()) else {
        return Err(LatencyError::NotComparable);
    };
    let difference: Vec<f64> = kept.iter().map(|g| counts[*g].observed as f64 - counts[*g].expected).collect();
    let mut inner = Vec::with_capacity(kept.len() * kept.len());
    for a in kept {
        inner.extend(kept.iter().map(|b| variance[a * k + b]));
    }
    let factor = Cholesky::new(&inner, kept.len()).ok_or(LatencyError::NotComparable)?;
    let chi2 = factor.quadratic(&difference);
    let df = kept.len() as u64;
    Ok(LogRank { chi2, df, p: chi_square_upper(chi2, df)?, groups: counts })
}
