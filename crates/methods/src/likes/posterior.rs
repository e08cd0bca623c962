//! Strengths when how far likes spread is itself learned from the choices.
//!
//! The prior of the strengths is normal with a spread that is not fixed but weighed: a grid of spreads, each with its share
//! (A. Gelman 2006, Bayesian Anal 1:515, half-t prior of a spread). The posterior is computed by importance sampling from the
//! normal approximations at each spread (deterministic mixture weights: A. Owen & Y. Zhou 2000, J Am Stat Assoc 95:135), at the
//! points of a regular sequence rather than at random ones (R. D. Richtmyer 1951), so the same choices always give the same
//! figures. Why not a fixed prior: see the page on coverage.

use super::logit::{Design, Optimum};
use crate::stats::normal_quantile_quick;

/// Spreads (standard deviations, log odds) tried: from "all alike" to "hardly ever the other one".
const SPREADS: [f64; 8] = [0.2, 0.3, 0.45, 0.675, 1.0125, 1.52, 2.28, 3.42];
/// Scale and degrees of freedom of the half-t prior of the spread.
const SPREAD_SCALE: f64 = 1.5;
const SPREAD_FREEDOM: f64 = 3.0;
/// Points of the sample.
const POINTS: usize = 2500;
/// How much wider than the normal approximation to sample, so that heavier tails are reached.
const WIDER: f64 = 1.2;
/// Below so many effective points the sample is not trusted.
const LEAST_EFFECTIVE: f64 = 200.0;

/// A weighted sample of the posterior.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Sample {
    parameters: usize,
    points: Vec<f64>,
    /// Sum to 1.
    pub(super) weights: Vec<f64>,
}

/// The normal approximation at one spread of the grid.
struct Component {
    top: Optimum,
    /// Share of the posterior that lies with this spread.
    share: f64,
}

fn prior_share(spread: f64) -> f64 {
    let tail = 1.0 + (spread / SPREAD_SCALE).powi(2) / SPREAD_FREEDOM;
    // The grid is even in the logarithm, hence the factor `spread`.
    spread * tail.powf(-(SPREAD_FREEDOM + 1.0) / 2.0)
}

/// Log density, up to a constant shared by all spreads, of the items' strengths under one spread.
fn log_spread(squares: f64, items: usize, spread: f64) -> f64 {
    -squares / (2.0 * spread * spread) - items as f64 * spread.ln()
}

fn components(design: &Design, items: usize) -> Option<Vec<Component>> {
    let all: Vec<usize> = (0..items).collect();
    let mut found = Vec::with_capacity(SPREADS.len());
    for spread in SPREADS {
        let (_, top, share) = at_spread(design, &all, spread)?;
        found.push(Component { top, share });
    }
    let most = found.iter().map(|c| c.share).fold(f64::NEG_INFINITY, f64::max);
    let sum: f64 = found.iter().map(|c| (c.share - most).exp()).sum();
    found.iter_mut().for_each(|c| c.share = (c.share - most).exp() / sum);
    Some(found)
}

/// The design at the likeliest spread of the items `pulled`, other penalties as they are, and its optimum. `None` if one fails.
pub(super) fn likeliest_spread(design: &Design, pulled: &[usize]) -> Option<(Design, Optimum)> {
    let mut best: Option<(f64, Design, Optimum)> = None;
    for spread in SPREADS {
        let (at, top, evidence) = at_spread(design, pulled, spread)?;
        if best.as_ref().is_none_or(|(most, ..)| evidence > *most) {
            best = Some((evidence, at, top));
        }
    }
    best.map(|(_, design, top)| (design, top))
}

/// The design at one spread of the items `pulled`, its optimum, and the logarithm of its posterior share up to a constant.
fn at_spread(design: &Design, pulled: &[usize], spread: f64) -> Option<(Design, Optimum, f64)> {
    let at = design.with_ridge(pulled, 0.5 / (spread * spread));
    let top = at.optimum()?;
    // The objective holds the exponent of the prior; its scale and the curvature complete Laplace's approximation.
    let curvature = top.factor.log_determinant() / 2.0;
    let evidence = top.objective - pulled.len() as f64 * spread.ln() - curvature + prior_share(spread).ln();
    Some((at, top, evidence))
}

/// Steps of a regular sequence in `dimensions` dimensions (generalised golden ratio).
fn golden_steps(dimensions: usize) -> Vec<f64> {
    let mut root = 2.0_f64;
    for _ in 0..60 {
        root = (1.0 + root).powf(1.0 / (dimensions as f64 + 1.0));
    }
    (1..=dimensions).map(|j| root.powi(-(j as i32)).fract()).collect()
}

/// The optimum at the likeliest spread, and a sample of the posterior unless there are more than `sample_up_to` items or too few
/// points carry the weight. `None` if an optimum fails.
pub(super) fn learn(design: &Design, items: usize, sample_up_to: usize) -> Option<(Optimum, Option<Sample>)> {
    let mut parts = components(design, items)?;
    let best = (0..parts.len()).max_by(|a, b| parts[*a].share.total_cmp(&parts[*b].share))?;
    let sample = if items <= sample_up_to { sample(design, items, &parts) } else { None };
    Some((parts.swap_remove(best).top, sample))
}

fn sample(design: &Design, items: usize, parts: &[Component]) -> Option<Sample> {
    let parts: Vec<&Component> = parts.iter().filter(|c| c.share > 0.004).collect();
    let kept: f64 = parts.iter().map(|c| c.share).sum();
    let parameters = parts.first()?.top.theta.len();
    let steps = golden_steps(parameters);
    let shares = SPREADS.map(|s| prior_share(s).ln());
    let log_prior_of = |theta: &[f64]| {
        let squares: f64 = theta[..items].iter().map(|t| t * t).sum();
        log_sum(|at| shares.get(at).zip(SPREADS.get(at)).map(|(share, s)| share + log_spread(squares, items, *s)))
    };
    let mut away = vec![0.0; parameters];
    let constants: Vec<f64> =
        parts.iter().map(|c| (c.share / kept).ln() + c.top.factor.log_determinant() / 2.0).collect();
    let mut points = Vec::with_capacity(POINTS * parameters);
    let mut logs = Vec::with_capacity(POINTS);
    let mut at = 0_u32;
    let bare = design.with_ridge(&(0..items).collect::<Vec<_>>(), 0.0);
    for part in &parts {
        let size = (part.share / kept * POINTS as f64).round() as usize;
        for _ in 0..size {
            at += 1;
            let mut z = Vec::with_capacity(parameters);
            for step in &steps {
                let place = (0.5 + f64::from(at) * step).fract().clamp(1e-9, 1.0 - 1e-9);
                z.push(WIDER * normal_quantile_quick(place));
            }
            let shift = part.top.factor.solve_upper(&z);
            let theta: Vec<f64> = part.top.theta.iter().zip(&shift).map(|(m, s)| m + s).collect();
            let target = bare.objective(&theta) + log_prior_of(&theta);
            let proposals: Vec<f64> = parts
                .iter()
                .zip(&constants)
                .map(|(part, constant)| {
                    away.iter_mut().zip(&theta).zip(&part.top.theta).for_each(|((a, t), m)| *a = t - m);
                    constant - part.top.factor.square_of_upper(&away) / (WIDER * WIDER) / 2.0
                })
                .collect();
            let proposal = log_sum(|at| proposals.get(at).copied());
            points.extend_from_slice(&theta);
            logs.push(target - proposal);
        }
    }
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut weights: Vec<f64> = logs.iter().map(|l| (l - most).exp()).collect();
    let sum: f64 = weights.iter().sum();
    weights.iter_mut().for_each(|w| *w /= sum);
    let effective = 1.0 / weights.iter().map(|w| w * w).sum::<f64>();
    (effective >= LEAST_EFFECTIVE).then_some(Sample { parameters, points, weights })
}

/// Logarithm of a sum of exponentials, without overflow.
fn log_sum(log: impl Fn(usize) -> Option<f64>) -> f64 {
    let logs = || (0..).map_while(&log);
    let most = logs().fold(f64::NEG_INFINITY, f64::max);
    most + logs().map(|l| (l - most).exp()).sum::<f64>().ln()
}

impl Sample {
    /// The points, one slice of parameters each.
    pub(super) fn points(&self) -> impl Iterator<Item = &[f64]> {
        self.points.chunks_exact(self.parameters)
    }

    /// Value of a figure at every point.
    pub(super) fn values(&self, figure: impl Fn(&[f64]) -> f64) -> Vec<f64> {
        self.points().map(figure).collect()
    }

    /// Mean and standard deviation of values at the points.
    pub(super) fn moments(&self, values: &[f64]) -> (f64, f64) {
        let mean: f64 = values.iter().zip(&self.weights).map(|(v, w)| v * w).sum();
        let variance: f64 = values.iter().zip(&self.weights).map(|(v, w)| w * (v - mean).powi(2)).sum();
        (mean, variance.sqrt())
    }

    /// Values below which the share `tail`, and above which the same share, of the posterior lies.
    pub(super) fn ends(&self, values: &[f64], tail: f64) -> (f64, f64) {
        let mut order: Vec<(f64, f64)> = values.iter().copied().zip(self.weights.iter().copied()).collect();
        order.sort_by(|a, b| a.0.total_cmp(&b.0));
        let end = |ordered: &mut dyn Iterator<Item = &(f64, f64)>| {
            let (mut sum, mut last) = (0.0, None);
            for (value, weight) in ordered {
                let middle = sum + weight / 2.0;
                if middle >= tail {
                    // Between the middles of two neighbours.
                    return match last {
                        Some((before, at)) => before + (value - before) * (tail - at) / (middle - at),
                        None => *value,
                    };
                }
                last = Some((*value, middle));
                sum += weight;
            }
            last.map_or(0.0, |(value, _)| value)
        };
        (end(&mut order.iter()), end(&mut order.iter().rev()))
    }
}
