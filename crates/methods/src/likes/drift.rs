//! Likes change: older trials count for less.
//!
//! Source: exponential forgetting of likelihoods (M. West & J. Harrison 1997, Bayesian Forecasting and Dynamic Models, ch. 6).

use super::LikesError;
use crate::stats::StatsError;

/// How much a trial still counts: a half for each half-life of age.
///
/// # Errors
/// [`LikesError::Stats`] for a negative age or a half-life that is not positive (an infinite one is fine: no forgetting).
///
/// ```
/// use sayso_methods::likes::forgetting_weight;
/// assert_eq!(forgetting_weight(28.0, 14.0)?, 0.25);
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn forgetting_weight(days: f64, half_life_days: f64) -> Result<f64, LikesError> {
    if !(days >= 0.0 && days.is_finite()) {
        return Err(StatsError::OutOfRange { what: "age in days", value: days }.into());
    }
    if half_life_days.is_nan() || half_life_days <= 0.0 {
        return Err(StatsError::OutOfRange { what: "half-life in days", value: half_life_days }.into());
    }
    Ok((-days / half_life_days).exp2())
}
