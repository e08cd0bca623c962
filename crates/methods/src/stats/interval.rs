//! The interval, its level, and what can go wrong: shared by every estimate.

use thiserror::Error;

/// Why a statistic could not be computed.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[non_exhaustive]
pub enum StatsError {
    /// Fewer observations than the method needs.
    #[error("{what}: needs at least {needed}, got {got}")]
    TooFew {
        /// What there is too little of.
        what: &'static str,
        /// The least the method can work with.
        needed: usize,
        /// How many there were.
        got: usize,
    },
    /// A value outside the range in which it means anything.
    #[error("{what} is {value}, which is out of range")]
    OutOfRange {
        /// Which value.
        what: &'static str,
        /// What it was.
        value: f64,
    },
    /// More successes than trials.
    #[error("{k} of {n}: more than there were")]
    MoreThanAll {
        /// Counted successes.
        k: u64,
        /// Trials.
        n: u64,
    },
    /// Two series that must pair up do not.
    #[error("{left} values on one side, {right} on the other")]
    Unpaired {
        /// Length of the first.
        left: usize,
        /// Length of the second.
        right: usize,
    },
    /// All values are the same, so the statistic has no meaning.
    #[error("{0} does not vary")]
    NoVariation(&'static str),
}

/// The share of intervals that should hold the truth, strictly between 0 and 1.
///
/// ```
/// use sayso_methods::stats::Level;
/// assert_eq!(Level::P90.get(), 0.9);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Level(f64);

impl Level {
    /// 95 %.
    pub const P95: Self = Self(0.95);
    /// 90 %.
    pub const P90: Self = Self(0.90);

    /// The share.
    pub fn get(self) -> f64 {
        self.0
    }

    /// Half of what is left outside: the probability in each tail.
    pub fn tail(self) -> f64 {
        (1.0 - self.0) / 2.0
    }

    /// Standard normal quantile that leaves [`Level::tail`] above it.
    pub fn z(self) -> f64 {
        super::special::normal_quantile_raw(1.0 - self.tail())
    }
}

/// An interval with the level it was made for. Both ends are numbers; an end may be infinite where the method says so.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
    /// Share of such intervals that should hold the truth.
    pub level: Level,
}

impl Interval {
    pub(crate) fn new(low: f64, high: f64, level: Level) -> Self {
        Self { low, high, level }
    }

    /// Whether `value` lies inside, ends included.
    pub fn contains(&self, value: f64) -> bool {
        self.low <= value && value <= self.high
    }
}
