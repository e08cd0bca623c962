//! A count out of trials: exact test and Clopper-Pearson interval.
//!
//! Sources: C. J. Clopper & E. S. Pearson (1934), Biometrika 26:404.
//! The two-sided test adds up every outcome no likelier than the one seen ("minimum likelihood", the rule of `binomtest` in SciPy).

use super::{Interval, Level, StatsError, counting, special::falling_root};

/// Which departures from chance count.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tail {
    /// More successes than chance.
    Greater,
    /// Fewer successes than chance.
    Less,
    /// Either.
    TwoSided,
}

/// Outcomes tie if their probabilities differ by less than this share: guards against rounding, as SciPy and R do.
pub(super) const TIE: f64 = 1.0 + 1e-7;

fn probability(p: f64) -> Result<f64, StatsError> {
    if (0.0..=1.0).contains(&p) { Ok(p) } else { Err(StatsError::OutOfRange { what: "probability", value: p }) }
}

/// P(X <= k) for X binomial.
///
/// # Errors
/// [`StatsError::OutOfRange`] unless `p` is in 0..=1.
pub fn binomial_at_most(k: u64, n: u64, p: f64) -> Result<f64, StatsError> {
    Ok(counting::binomial_lower(k, n, probability(p)?))
}

/// `k` successes out of `n` trials; never more successes than trials.
///
/// ```
/// use sayso_methods::stats::{Level, Proportion, Tail};
/// let left = Proportion::new(19, 24)?;
/// assert!((left.test(0.5, Tail::TwoSided)? - 0.006_610_751_152).abs() < 1e-10);
/// let interval = left.clopper_pearson(Level::P95);
/// assert!(interval.low > 0.57 && interval.high < 0.93);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Proportion {
    k: u64,
    n: u64,
}

impl Proportion {
    /// `k` of `n`.
    ///
    /// # Errors
    /// [`StatsError::MoreThanAll`] if `k > n`.
    pub fn new(k: u64, n: u64) -> Result<Self, StatsError> {
        if k > n { Err(StatsError::MoreThanAll { k, n }) } else { Ok(Self { k, n }) }
    }

    /// Successes.
    pub fn k(self) -> u64 {
        self.k
    }

    /// Trials.
    pub fn n(self) -> u64 {
        self.n
    }

    /// `k / n`, or `None` without trials.
    pub fn share(self) -> Option<f64> {
        (self.n > 0).then(|| self.k as f64 / self.n as f64)
    }

    /// Exact p-value against a chance of `p0` a trial. Without trials it is 1.
    ///
    /// # Errors
    /// [`StatsError::OutOfRange`] unless `p0` is in 0..=1.
    pub fn test(self, p0: f64, tail: Tail) -> Result<f64, StatsError> {
        let p0 = probability(p0)?;
        let Self { k, n } = self;
        Ok(match tail {
            Tail::Greater => counting::binomial_upper(k, n, p0),
            Tail::Less => counting::binomial_lower(k, n, p0),
            Tail::TwoSided => two_sided(k, n, p0),
        })
    }

    /// Exact interval: the chances that neither tail test would reject. Without trials it is 0 to 1.
    pub fn clopper_pearson(self, level: Level) -> Interval {
        let Self { k, n } = self;
        let Some(share) = self.share() else { return Interval::new(0.0, 1.0, level) };
        let tail = level.tail();
        let low = if k == 0 { 0.0 } else { falling_root(0.0, share, |p| tail - counting::binomial_upper(k, n, p)) };
        let high = if k == n { 1.0 } else { falling_root(share, 1.0, |p| counting::binomial_lower(k, n, p) - tail) };
        Interval::new(low, high, level)
    }
}

fn two_sided(k: u64, n: u64, p: f64) -> f64 {
    let mean = n as f64 * p;
    if k as f64 == mean {
        return 1.0;
    }
    let limit = counting::binomial(k, n, p) * TIE;
    let total = if (k as f64) < mean {
        // The probabilities fall from the mean up: find the first that is no likelier.
        let (mut low, mut high) = (mean.ceil() as u64, n + 1);
        while low < high {
            let mid = low + (high - low) / 2;
            if counting::binomial(mid, n, p) <= limit {
                high = mid;
            } else {
                low = mid + 1;
            }
        }
        counting::binomial_lower(k, n, p) + counting::binomial_upper(low, n, p)
    } else {
        // They rise up to the mean: count those at the bottom that are no likelier.
        let (mut low, mut high) = (0, mean.floor() as u64 + 1);
        while low < high {
            let mid = low + (high - low) / 2;
            if counting::binomial(mid, n, p) <= limit {
                low = mid + 1;
            } else {
                high = mid;
            }
        }
        let below = if low == 0 { 0.0 } else { counting::binomial_lower(low - 1, n, p) };
        below + counting::binomial_upper(k, n, p)
    };
    total.min(1.0)
}
