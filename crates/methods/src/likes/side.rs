//! A pull towards a side, tested on its own.
//!
//! Source: exact binomial test of left against right. It assumes that sides were counterbalanced: if the favourite always lay
//! on the left, liking looks like a side. The side term of [`super::fit_sittings`] tells the two apart.

use super::LikesError;
use crate::stats::{Interval, Level, Proportion, StatsError, Tail};

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
