//! Counts over time: exact interval of a mean, comparison of two rates.
//!
//! Sources: F. Garwood (1936), Biometrika 28:437. J. Przyborowski & H. Wilenski (1940), Biometrika 31:313.

use super::{Interval, Level, Proportion, StatsError, Tail, counting, special::falling_root};

/// Events counted over an exposure (hours, days, sessions: the unit is the caller's).
///
/// ```
/// use sayso_methods::stats::{Count, Level};
/// let none = Count::new(0, 1.0)?.interval(Level::P95);
/// assert!((none.high - 3.688_879_454).abs() < 1e-8);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Count {
    events: u64,
    exposure: f64,
}

impl Count {
    /// `events` over a positive `exposure`.
    ///
    /// # Errors
    /// [`StatsError::OutOfRange`] unless the exposure is positive and finite.
    pub fn new(events: u64, exposure: f64) -> Result<Self, StatsError> {
        if exposure > 0.0 && exposure.is_finite() {
            Ok(Self { events, exposure })
        } else {
            Err(StatsError::OutOfRange { what: "exposure", value: exposure })
        }
    }

    /// Events counted.
    pub fn events(self) -> u64 {
        self.events
    }

    /// Exposure, in the caller's unit.
    pub fn exposure(self) -> f64 {
        self.exposure
    }

    /// Events a unit of exposure.
    pub fn rate(self) -> f64 {
        self.events as f64 / self.exposure
    }

    /// Exact (Garwood) interval of the rate.
    pub fn interval(self, level: Level) -> Interval {
        let (k, tail) = (self.events, level.tail());
        let seen = k as f64;
        let low = if k == 0 { 0.0 } else { falling_root(0.0, seen, |mean| tail - counting::poisson_upper(k, mean)) };
        let mut top = seen + 10.0 + 10.0 * seen.sqrt();
        while counting::poisson_lower(k, top) > tail {
            top *= 2.0;
        }
        let high = falling_root(seen, top, |mean| counting::poisson_lower(k, mean) - tail);
        Interval::new(low / self.exposure, high / self.exposure, level)
    }
}

/// Two rates compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RateComparison {
    /// Exact conditional p-value that the rates are the same, for the tail asked for.
    pub p: f64,
    /// First rate over the second; `None` if nothing was counted at all, infinite if only the second is 0.
    pub ratio: Option<f64>,
    /// Exact interval of the ratio (an end may be 0 or infinite).
    pub ratio_interval: Interval,
    /// Events on both sides.
    pub n: u64,
}

/// Compares two rates: given the total, the first count is binomial. `Greater` asks whether the first rate is the higher.
///
/// # Errors
/// [`StatsError::OutOfRange`] if the counts or exposures are too large to add or to compare.
///
/// ```
/// use sayso_methods::stats::{Count, Level, Tail, compare_rates};
/// let found = compare_rates(Count::new(30, 10.0)?, Count::new(15, 10.0)?, Tail::TwoSided, Level::P95)?;
/// assert!((found.p - 0.035_697_8).abs() < 1e-6);
/// assert_eq!(found.ratio, Some(2.0));
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn compare_rates(first: Count, second: Count, tail: Tail, level: Level) -> Result<RateComparison, StatsError> {
    let n = first
        .events
        .checked_add(second.events)
        .ok_or(StatsError::OutOfRange { what: "events", value: first.events as f64 + second.events as f64 })?;
    let exposure = first.exposure + second.exposure;
    if !exposure.is_finite() {
        return Err(StatsError::OutOfRange { what: "exposure", value: exposure });
    }
    let chance = first.exposure / exposure;
    let share = Proportion::new(first.events, n)?;
    let odds = second.exposure / first.exposure;
    let as_ratio = |p: f64| if p >= 1.0 { f64::INFINITY } else { p / (1.0 - p) * odds };
    let inner = share.clopper_pearson(level);
    Ok(RateComparison {
        p: share.test(chance, tail)?,
        ratio: (n > 0).then(|| first.rate() / second.rate()),
        ratio_interval: Interval::new(as_ratio(inner.low), as_ratio(inner.high), level),
        n,
    })
}
