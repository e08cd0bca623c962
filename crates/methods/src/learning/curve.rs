//! Learning curve of one word: the probability of a yes on each trial, with a band, and the learning trial.
//!
//! Source: Smith et al. 2004, J Neurosci 24:447 (state-space model fitted by EM: forward filter with the
//! posterior mode, fixed-interval smoother, initial state fixed at 0, intercept from the chance level).
//! Page: `docs/methods/learning.md`.

use super::LearningError;
use super::state_space::{Forward, States, forward, logistic, smooth};
use crate::stats::Level;

/// How EM starts and stops. The defaults are those of the reference values in `tests/reference/learning_curve.json`.
///
/// Where a learner shows no change EM walks towards zero variance only like 1/iterations, so the cap is part of
/// the estimate there; [`LearningCurve::converged`] says so.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CurveSettings {
    /// Variance of a step at the start of EM (logit units squared per trial).
    pub start_sigma2: f64,
    /// EM stops when `sigma2` changes by less than this share of itself.
    pub relative_tolerance: f64,
    /// EM stops after this many rounds in any case.
    pub max_iterations: usize,
}

impl Default for CurveSettings {
    fn default() -> Self {
        Self { start_sigma2: 0.25, relative_tolerance: 1e-10, max_iterations: 5000 }
    }
}

/// The curve at one trial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CurvePoint {
    /// Most likely probability of a yes, 0 to 1.
    pub p: f64,
    /// Lower end of the band.
    pub lower: f64,
    /// Upper end of the band.
    pub upper: f64,
    /// False where the trial was missing (not offered, not wanted): the band there is carried over from its neighbours.
    pub observed: bool,
}

/// A fitted learning curve.
#[derive(Debug, Clone, PartialEq)]
pub struct LearningCurve {
    /// One point a trial, missing ones included, in the order given.
    pub points: Vec<CurvePoint>,
    /// Trials that were observed.
    pub n: usize,
    /// Variance of the state's step from trial to trial (logit units squared).
    pub sigma2: f64,
    /// Chance level the curve is held against.
    pub chance: f64,
    /// First observed trial, counted from 1 over all trials given, from which the lower bound stays above chance
    /// on every observed trial; `None` where that has not happened (yet), which does not mean nothing was learnt.
    pub learning_trial: Option<usize>,
    /// Whether EM met its tolerance before its cap (always true for the curve shown, which has no EM).
    pub converged: bool,
}

/// Fits the curve to yes/no trials; `None` is a trial that must not count (not offered, or the item was not wanted).
///
/// A missing trial lets the state drift one step and adds nothing else. Missing trials after the last observed one
/// do not touch the fit: the curve is carried forward with a widening band.
///
/// # Errors
/// [`LearningError::NoObservations`] without an observed trial, [`LearningError::ChanceOutOfRange`],
/// [`LearningError::BadSetting`].
///
/// ```
/// use sayso_methods::learning::curve::{CurveSettings, learning_curve};
/// let trials = [0, 0, 1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1].map(|t| Some(t == 1));
/// let curve = learning_curve(&trials, 1.0 / 3.0, &CurveSettings::default())?;
/// assert_eq!(curve.n, 14);
/// assert!(curve.points[13].p > curve.points[0].p);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn learning_curve(
    trials: &[Option<bool>],
    chance: f64,
    settings: &CurveSettings,
) -> Result<LearningCurve, LearningError> {
    let mu = intercept(chance)?;
    if !(settings.start_sigma2.is_finite() && settings.start_sigma2 > 0.0) {
        return Err(LearningError::BadSetting("start_sigma2"));
    }
    if !(settings.relative_tolerance.is_finite() && settings.relative_tolerance >= 0.0) {
        return Err(LearningError::BadSetting("relative_tolerance"));
    }
    let fitted = &trials[..observed_end(trials)?];
    let mut sigma2 = settings.start_sigma2;
    let mut pass = Forward::default();
    let mut states = States::default();
    let mut converged = false;
    for _ in 0..settings.max_iterations {
        forward(fitted, mu, |_| sigma2, 0.0, &mut pass);
        let next = smooth(&pass, &mut states) / fitted.len() as f64;
        let change = (next - sigma2).abs();
        sigma2 = next;
        if change < settings.relative_tolerance * next {
            converged = true;
            break;
        }
    }
    // One pass over everything: trailing missing trials only widen the band.
    forward(trials, mu, |_| sigma2, 0.0, &mut pass);
    smooth(&pass, &mut states);
    // The band runs from the 5 % to the 95 % point of the state.
    let z = Level::P90.z();
    let points = trials
        .iter()
        .zip(states.mean.iter().zip(&states.variance))
        .map(|(trial, (mean, variance))| {
            let half = z * variance.max(0.0).sqrt();
            CurvePoint {
                p: logistic(mu + mean),
                lower: logistic(mu + mean - half),
                upper: logistic(mu + mean + half),
                observed: trial.is_some(),
            }
        })
        .collect();
    Ok(finish(points, sigma2, chance, converged))
}

/// `ln(chance / (1 - chance))`, the state's zero.
pub(super) fn intercept(chance: f64) -> Result<f64, LearningError> {
    if chance > 0.0 && chance < 1.0 {
        Ok((chance / (1.0 - chance)).ln())
    } else {
        Err(LearningError::ChanceOutOfRange(chance))
    }
}

/// One past the last observed trial.
pub(super) fn observed_end(trials: &[Option<bool>]) -> Result<usize, LearningError> {
    trials.iter().rposition(Option::is_some).map(|last| last + 1).ok_or(LearningError::NoObservations)
}

/// Counts, finds the learning trial and wraps up.
pub(super) fn finish(points: Vec<CurvePoint>, sigma2: f64, chance: f64, converged: bool) -> LearningCurve {
    let n = points.iter().filter(|point| point.observed).count();
    let mut learning_trial = None;
    for (k, point) in points.iter().enumerate().rev().filter(|(_, point)| point.observed) {
        if point.lower <= chance {
            break;
        }
        learning_trial = Some(k + 1);
    }
    LearningCurve { points, n, sigma2, chance, learning_trial, converged }
}
