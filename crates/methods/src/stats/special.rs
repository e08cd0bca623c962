//! Distribution functions and quantiles the tests rest on.
//!
//! Source: `statrs` for the incomplete gamma and beta functions; quantiles by bisection or a Newton step on them. The error
//! function goes through the incomplete gamma function, because the one in `statrs` 0.19 keeps only ten digits.

use super::StatsError;
use statrs::function::{beta::checked_beta_reg, erf::erfc_inv, gamma::checked_gamma_ur};
use std::f64::consts::{SQRT_2, TAU};

/// Probability that a standard normal variable lies further from 0 than `z` does.
fn normal_outside(z: f64) -> f64 {
    let square = z * z / 2.0;
    if square == 0.0 {
        1.0
    } else if square > 740.0 {
        0.0
    } else {
        checked_gamma_ur(0.5, square).unwrap_or(f64::NAN)
    }
}

/// Standard normal distribution function (not a number only where `z` is not).
pub fn normal_cdf(z: f64) -> f64 {
    let outside = normal_outside(z);
    if z < 0.0 { outside / 2.0 } else { 1.0 - outside / 2.0 }
}

/// Quantile for `p` strictly between 0 and 1, to ten digits.
pub(crate) fn normal_quantile_quick(p: f64) -> f64 {
    -SQRT_2 * erfc_inv(2.0 * p)
}

/// Quantile for `p` strictly between 0 and 1.
pub(crate) fn normal_quantile_raw(p: f64) -> f64 {
    let start = normal_quantile_quick(p);
    let density = (-start * start / 2.0).exp() / TAU.sqrt();
    let step = (normal_cdf(start) - p) / density;
    if step.is_finite() { start - step + 0.0 } else { start }
}

/// Standard normal quantile.
///
/// # Errors
/// [`StatsError::OutOfRange`] unless `0 < p < 1`.
///
/// ```
/// use sayso_methods::stats::normal_quantile;
/// assert!((normal_quantile(0.975)? - 1.959_963_984_540_054).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn normal_quantile(p: f64) -> Result<f64, StatsError> {
    if p > 0.0 && p < 1.0 {
        Ok(normal_quantile_raw(p))
    } else {
        Err(StatsError::OutOfRange { what: "probability", value: p })
    }
}

/// Probability that a chi-square variable with `df` degrees of freedom is above `x`.
///
/// # Errors
/// [`StatsError::OutOfRange`] for a negative or non-finite `x`, or `df` of 0.
///
/// ```
/// use sayso_methods::stats::chi_square_upper;
/// assert!((chi_square_upper(3.841_458_820_694_124, 1)? - 0.05).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn chi_square_upper(x: f64, df: u64) -> Result<f64, StatsError> {
    if df == 0 {
        return Err(StatsError::OutOfRange { what: "degrees of freedom", value: 0.0 });
    }
    if !(x >= 0.0 && x.is_finite()) {
        return Err(StatsError::OutOfRange { what: "chi-square", value: x });
    }
    if x == 0.0 {
        return Ok(1.0);
    }
    checked_gamma_ur(df as f64 / 2.0, x / 2.0).map_err(|_| StatsError::OutOfRange { what: "chi-square", value: x })
}

/// Quantile of Student's t with `df` degrees of freedom (bisection on the incomplete beta function).
///
/// # Errors
/// [`StatsError::OutOfRange`] unless `0 < p < 1` and `df > 0`.
pub fn student_t_quantile(p: f64, df: f64) -> Result<f64, StatsError> {
    if !(p > 0.0 && p < 1.0) {
        return Err(StatsError::OutOfRange { what: "probability", value: p });
    }
    if !(df > 0.0 && df.is_finite()) {
        return Err(StatsError::OutOfRange { what: "degrees of freedom", value: df });
    }
    if p == 0.5 {
        return Ok(0.0);
    }
    let tail = p.min(1.0 - p);
    let upper = |t: f64| 0.5 * checked_beta_reg(df / 2.0, 0.5, df / (df + t * t)).unwrap_or(0.0);
    let mut high = 1.0;
    while upper(high) > tail && high < 1e300 {
        high *= 2.0;
    }
    let t = falling_root(0.0, high, |t| upper(t) - tail);
    Ok(if p > 0.5 { t } else { -t })
}

/// Root of a falling function between `low` and `high` by bisection, to the last few bits.
pub(crate) fn falling_root(mut low: f64, mut high: f64, f: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..400 {
        let mid = low + (high - low) / 2.0;
        if mid <= low || mid >= high || (high - low) <= 1e-15 * high.abs() {
            break;
        }
        if f(mid) > 0.0 {
            low = mid;
        } else {
            high = mid;
        }
    }
    low + (high - low) / 2.0
}
