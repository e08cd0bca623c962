//! Median and band of a mixture of Gaussian states, through the logistic.
//!
//! Source of the normal distribution function: Abramowitz & Stegun 1964, 7.1.26.

use super::curve::CurvePoint;
use super::state_space::{States, logistic};
use crate::stats::Level;

/// Median and band of this level at each trial of a mixture of smoothed states, each with its weight.
pub(super) fn mixture_points(
    trials: &[Option<bool>],
    mu: f64,
    parts: &[(f64, States)],
    level: Level,
) -> Vec<CurvePoint> {
    let point = |(k, trial): (usize, &Option<bool>)| {
        let at: Vec<(f64, f64, f64)> = parts
            .iter()
            .map(|(weight, states)| (*weight, states.mean[k], states.variance[k].max(0.0).sqrt()))
            .collect();
        CurvePoint {
            p: logistic(mu + mixture_quantile(&at, 0.0)),
            lower: logistic(mu + mixture_quantile(&at, -level.z())),
            upper: logistic(mu + mixture_quantile(&at, level.z())),
            observed: trial.is_some(),
        }
    };
    trials.iter().enumerate().map(point).collect()
}

/// Normal distribution function to seven digits, which a band needs no more of.
fn quick_normal_cdf(z: f64) -> f64 {
    let x = z.abs() / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.327_591_1 * x);
    let series = [1.061_405_429, -1.453_152_027, 1.421_413_741, -0.284_496_736, 0.254_829_592];
    let outside = 0.5 * series.iter().fold(0.0, |sum, a| (sum + a) * t) * (-x * x).exp();
    if z < 0.0 { outside } else { 1.0 - outside }
}

/// Quantile of a mixture of normals (weight, mean, sd) that a standard normal has at `z`, by bisection between the parts'
/// own quantiles.
fn mixture_quantile(parts: &[(f64, f64, f64)], z: f64) -> f64 {
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for (_, mean, sd) in parts {
        low = low.min(mean + z * sd);
        high = high.max(mean + z * sd);
    }
    let total: f64 = parts.iter().map(|part| part.0).sum();
    let wanted = quick_normal_cdf(z) * total;
    for _ in 0..30 {
        let middle = 0.5 * (low + high);
        let below: f64 = parts.iter().map(|(weight, mean, sd)| weight * quick_normal_cdf((middle - mean) / sd)).sum();
        if below < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
