//! Learning curves of several words that lend each other strength: partial pooling of the step variance.
//!
//! Source: state-space curve of Smith et al. 2004 (J Neurosci 24:447); pooling as a hierarchical model after
//! Gelman & Hill 2007, chapter 12 (from memory), computed on a grid rather than by EM. Page: `docs/methods/learning.md`.
//!
//! `log10 sigma2_w ~ N(m, t^2)` over words, with a weak hyperprior on `m` and `t`. Everything is summed on a fixed
//! grid, so the answer is deterministic, has no convergence to fail, and its band carries the doubt about `sigma2`
//! too, which the single-word curve leaves out.

use super::LearningError;
use super::curve::{CurvePoint, LearningCurve, finish, intercept, observed_end};
use super::state_space::{Forward, States, forward, logistic, smooth};
use crate::stats::Level;

/// Trials of one word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WordTrials<'a> {
    /// Yes/no a trial; `None` where it must not count (not offered, item not wanted).
    pub trials: &'a [Option<bool>],
    /// Chance level, strictly between 0 and 1.
    pub chance: f64,
}

/// Curves fitted together, and what the words have in common.
#[derive(Debug, Clone, PartialEq)]
pub struct PooledCurves {
    /// One curve a word in the order given; `None` for a word without an observed trial (nothing can be said yet).
    /// The curve's `sigma2` is the posterior geometric mean for that word, and `p` the posterior median.
    pub curves: Vec<Option<LearningCurve>>,
    /// Geometric mean of the step variance over words (posterior mean of `m`, as a variance).
    pub typical_sigma2: f64,
    /// Spread between words in powers of ten (posterior mean of `t`): near 0 the words share one learning rate.
    pub spread_log10: f64,
    /// Words with at least one observed trial.
    pub words: usize,
    /// Observed trials over all words.
    pub n: usize,
}

const GRID: usize = 25;
/// log10 of the step variance at grid point `g`: -4 to 1.
fn log10_sigma2(g: usize) -> f64 {
    -4.0 + 5.0 * g as f64 / (GRID - 1) as f64
}
const SPREADS: [f64; 6] = [0.05, 0.15, 0.3, 0.6, 1.0, 1.5];
/// Hyperprior of `m`: centred on a variance of 0.1 a trial, two standard deviations span 0.001 to 10. A choice of
/// ours, weak beside a few dozen trials.
const HYPER_MEAN: f64 = -1.0;
const HYPER_SD: f64 = 1.0;
/// Standard deviation, in logits about chance, of where a word starts if that is not held at chance: two of them reach from
/// hardly ever to nearly always. A choice of ours.
const START_SD: f64 = 2.0;

/// Weights over the grid given `m` (grid point) and `t`, normalised.
fn prior_row(m: usize, spread: f64) -> [f64; GRID] {
    let mut row = [0.0; GRID];
    for (g, weight) in row.iter_mut().enumerate() {
        *weight = (-0.5 * ((log10_sigma2(g) - log10_sigma2(m)) / spread).powi(2)).exp();
    }
    let total: f64 = row.iter().sum();
    row.map(|weight| weight / total)
}

/// Fits the words together. With one word it is that word's curve under a weak prior on its step variance.
///
/// # Errors
/// [`LearningError::NoObservations`] when no word has an observed trial; [`LearningError::ChanceOutOfRange`].
///
/// ```
/// use sayso_methods::learning::pooled::{WordTrials, pooled_learning_curves};
/// let long: Vec<_> = (0..40).map(|k| Some(k % 3 == 0 || k > 15)).collect();
/// let short = [Some(false), Some(true), Some(true)];
/// let both = pooled_learning_curves(&[
///     WordTrials { trials: &long, chance: 0.25 },
///     WordTrials { trials: &short, chance: 0.25 },
/// ])?;
/// assert_eq!(both.n, 43);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn pooled_learning_curves(words: &[WordTrials<'_>]) -> Result<PooledCurves, LearningError> {
    pooled(words, 0.0)
}

/// As [`pooled_learning_curves`], but where each word starts is not held at chance: a learner that has hardly pressed yet
/// starts far below the chance of hitting the right button, one that knew the word before starts above it.
///
/// # Errors
/// As [`pooled_learning_curves`].
///
/// ```
/// use sayso_methods::learning::pooled::{WordTrials, pooled_learning_curves, pooled_learning_curves_from_anywhere};
/// let never = [Some(false); 12];
/// let words = [WordTrials { trials: &never, chance: 0.5 }];
/// let first = |curves: &[Option<sayso_methods::learning::curve::LearningCurve>]| curves[0].as_ref().map(|c| c.points[0].p);
/// let (free, held) = (pooled_learning_curves_from_anywhere(&words)?, pooled_learning_curves(&words)?);
/// assert!(first(&free.curves) < first(&held.curves));
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn pooled_learning_curves_from_anywhere(words: &[WordTrials<'_>]) -> Result<PooledCurves, LearningError> {
    pooled(words, START_SD * START_SD)
}

fn pooled(words: &[WordTrials<'_>], start_variance: f64) -> Result<PooledCurves, LearningError> {
    let mut scored = Vec::with_capacity(words.len());
    let mut pass = Forward::default();
    for word in words {
        let mu = intercept(word.chance)?;
        let Ok(end) = observed_end(word.trials) else {
            scored.push(None);
            continue;
        };
        let mut log_likelihood = [0.0; GRID];
        for (g, slot) in log_likelihood.iter_mut().enumerate() {
            forward(&word.trials[..end], mu, |_| 10f64.powf(log10_sigma2(g)), start_variance, &mut pass);
            *slot = pass.log_likelihood;
        }
        // Relative to the best grid point, so that the exponentials below neither over- nor underflow together.
        let best = log_likelihood.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        scored.push(Some(log_likelihood.map(|value| (value - best).exp())));
    }
    let known: Vec<&[f64; GRID]> = scored.iter().flatten().collect();
    if known.is_empty() {
        return Err(LearningError::NoObservations);
    }

    // Posterior of (m, t), then of each word's own variance given all words.
    let mut hyper = Vec::with_capacity(GRID * SPREADS.len());
    for m in 0..GRID {
        for spread in SPREADS {
            let row = prior_row(m, spread);
            let evidence: f64 = known.iter().map(|likelihood| dot(&row, likelihood).max(f64::MIN_POSITIVE).ln()).sum();
            let log_prior = -0.5 * ((log10_sigma2(m) - HYPER_MEAN) / HYPER_SD).powi(2);
            hyper.push((log10_sigma2(m), spread, row, evidence + log_prior));
        }
    }
    let best = hyper.iter().map(|h| h.3).fold(f64::NEG_INFINITY, f64::max);
    let total: f64 = hyper.iter().map(|h| (h.3 - best).exp()).sum();
    for h in &mut hyper {
        h.3 = (h.3 - best).exp() / total;
    }

    let curves = words
        .iter()
        .zip(&scored)
        .map(|(word, likelihood)| {
            let likelihood = likelihood.as_ref()?;
            let mut posterior = [0.0; GRID];
            for (_, _, row, weight) in &hyper {
                let evidence = dot(row, likelihood).max(f64::MIN_POSITIVE);
                for g in 0..GRID {
                    posterior[g] += weight * row[g] * likelihood[g] / evidence;
                }
            }
            mixture_curve(word, &posterior, start_variance).ok()
        })
        .collect::<Vec<_>>();
    Ok(PooledCurves {
        typical_sigma2: 10f64.powf(hyper.iter().map(|h| h.0 * h.3).sum()),
        spread_log10: hyper.iter().map(|h| h.1 * h.3).sum(),
        words: known.len(),
        n: curves.iter().flatten().map(|curve| curve.n).sum(),
        curves,
    })
}

/// The curve to show people when one word is at hand: under the same weak prior, its band carries the doubt about the step
/// variance, which that of [`super::curve::learning_curve`] leaves out and is therefore too narrow.
///
/// # Errors
/// As [`pooled_learning_curves`].
///
/// ```
/// use sayso_methods::learning::pooled::curve_of_one_word;
/// let curve = curve_of_one_word(&[Some(false), None, Some(true), Some(true)], 0.5)?;
/// assert_eq!((curve.n, curve.points.len()), (3, 4));
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn curve_of_one_word(trials: &[Option<bool>], chance: f64) -> Result<LearningCurve, LearningError> {
    let pooled = pooled_learning_curves(&[WordTrials { trials, chance }])?;
    pooled.curves.into_iter().flatten().next().ok_or(LearningError::NoObservations)
}

fn dot(a: &[f64; GRID], b: &[f64; GRID]) -> f64 {
    a.iter().zip(b).map(|(x, y)| x * y).sum()
}

/// The curve averaged over the word's posterior of its step variance: a mixture of Gaussians at each trial.
fn mixture_curve(
    word: &WordTrials<'_>,
    posterior: &[f64; GRID],
    start_variance: f64,
) -> Result<LearningCurve, LearningError> {
    let mu = intercept(word.chance)?;
    let mut pass = Forward::default();
    let mut parts = Vec::new();
    for (g, &weight) in posterior.iter().enumerate().filter(|(_, weight)| **weight > 1e-6) {
        let mut states = States::default();
        forward(word.trials, mu, |_| 10f64.powf(log10_sigma2(g)), start_variance, &mut pass);
        smooth(&pass, &mut states);
        parts.push((weight, states));
    }
    let points = mixture_points(word.trials, mu, &parts);
    let sigma2 = 10f64.powf(posterior.iter().enumerate().map(|(g, weight)| weight * log10_sigma2(g)).sum());
    Ok(finish(points, sigma2, word.chance, true))
}

/// Median and 90 % band at each trial of a mixture of smoothed states, each with its weight.
pub(super) fn mixture_points(trials: &[Option<bool>], mu: f64, parts: &[(f64, States)]) -> Vec<CurvePoint> {
    let point = |(k, trial): (usize, &Option<bool>)| {
        let at: Vec<(f64, f64, f64)> = parts
            .iter()
            .map(|(weight, states)| (*weight, states.mean[k], states.variance[k].max(0.0).sqrt()))
            .collect();
        CurvePoint {
            p: logistic(mu + mixture_quantile(&at, 0.5)),
            lower: logistic(mu + mixture_quantile(&at, 0.05)),
            upper: logistic(mu + mixture_quantile(&at, 0.95)),
            observed: trial.is_some(),
        }
    };
    trials.iter().enumerate().map(point).collect()
}

/// Normal distribution function to seven digits, which a band needs no more of: Abramowitz & Stegun 1964, 7.1.26.
fn quick_normal_cdf(z: f64) -> f64 {
    let x = z.abs() / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.327_591_1 * x);
    let series = [1.061_405_429, -1.453_152_027, 1.421_413_741, -0.284_496_736, 0.254_829_592];
    let outside = 0.5 * series.iter().fold(0.0, |sum, a| (sum + a) * t) * (-x * x).exp();
    if z < 0.0 { outside } else { 1.0 - outside }
}

/// Quantile of a mixture of normals (weight, mean, sd), by bisection between the parts' own quantiles.
fn mixture_quantile(parts: &[(f64, f64, f64)], level: f64) -> f64 {
    let z = if level == 0.5 { 0.0 } else { Level::P90.z().copysign(level - 0.5) };
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for (_, mean, sd) in parts {
        low = low.min(mean + z * sd);
        high = high.max(mean + z * sd);
    }
    let total: f64 = parts.iter().map(|part| part.0).sum();
    for _ in 0..30 {
        let middle = 0.5 * (low + high);
        let below: f64 = parts.iter().map(|(weight, mean, sd)| weight * quick_normal_cdf((middle - mean) / sd)).sum();
        if below < level * total {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
