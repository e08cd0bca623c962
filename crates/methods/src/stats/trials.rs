//! How many trials a one-sided exact binomial test needs.
//!
//! Source: enumeration of the exact test; the power saw-tooths with n (A. Agresti 2002, Categorical Data Analysis, 1.4).

use super::{StatsError, counting};

/// What the trials must be able to show.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrialsPlan {
    /// Chance of a success without understanding.
    pub chance: f64,
    /// Success rate worth detecting; above chance.
    pub rate: f64,
    /// Largest false alarm rate.
    pub alpha: f64,
    /// Power wanted at `rate`.
    pub power: f64,
    /// Give up beyond this many trials.
    pub max_n: u64,
}

/// The design found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrialsNeeded {
    /// Smallest number of trials with the power wanted.
    pub first_n: u64,
    /// Successes needed at `first_n`.
    pub critical: u64,
    /// Power there.
    pub power: f64,
    /// Actual false alarm rate there (at most alpha).
    pub size: f64,
    /// Number of trials from which the power stays enough over the next 60: use this if a few trials may be lost or added.
    pub stable_n: u64,
}

/// How far on the power must hold for a number of trials to be called stable.
const STABLE_OVER: u64 = 60;

/// Critical count, power and size of the test with `n` trials; `None` if no count is significant.
fn design(plan: &TrialsPlan, n: u64) -> Option<(u64, f64, f64)> {
    let (mut low, mut high) = (0, n + 1);
    while low < high {
        let mid = low + (high - low) / 2;
        if counting::binomial_upper(mid, n, plan.chance) <= plan.alpha {
            high = mid;
        } else {
            low = mid + 1;
        }
    }
    (low <= n)
        .then(|| (low, counting::binomial_upper(low, n, plan.rate), counting::binomial_upper(low, n, plan.chance)))
}

/// Finds the number of trials.
///
/// # Errors
/// [`StatsError::OutOfRange`] unless `0 < chance < rate <= 1` and `alpha`, `power` lie in 0..1;
/// [`StatsError::Unreachable`] if `max_n` trials are not enough.
///
/// ```
/// use sayso_methods::stats::{TrialsPlan, trials_needed};
/// let plan = TrialsPlan { chance: 0.5, rate: 0.8, alpha: 0.05, power: 0.8, max_n: 1000 };
/// let needed = trials_needed(&plan)?;
/// assert_eq!((needed.first_n, needed.critical), (18, 13));
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn trials_needed(plan: &TrialsPlan) -> Result<TrialsNeeded, StatsError> {
    for (what, value) in [("chance", plan.chance), ("alpha", plan.alpha), ("power", plan.power)] {
        if !(value > 0.0 && value < 1.0) {
            return Err(StatsError::OutOfRange { what, value });
        }
    }
    if !(plan.rate > plan.chance && plan.rate <= 1.0) {
        return Err(StatsError::OutOfRange { what: "rate worth detecting", value: plan.rate });
    }
    let unreachable = StatsError::Unreachable { max_n: plan.max_n };
    let enough = |n: u64| design(plan, n).filter(|(_, power, _)| *power >= plan.power);
    let (first_n, (critical, power, size)) =
        (1..=plan.max_n).find_map(|n| enough(n).map(|found| (n, found))).ok_or(unreachable)?;
    let (mut stable_n, mut at) = (first_n, first_n);
    while at < stable_n + STABLE_OVER {
        at += 1;
        if enough(at).is_none() {
            stable_n = at + 1;
        }
        if stable_n > plan.max_n {
            return Err(unreachable);
        }
    }
    Ok(TrialsNeeded { first_n, critical, power, size, stable_n })
}
