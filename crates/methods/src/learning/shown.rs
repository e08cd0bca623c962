//! The learning curve shown to people: the state-space curve, with good and bad days and a sudden change allowed for.
//!
//! Source: state and filter of Smith et al. 2004 (J Neurosci 24:447). Beyond the source, and ours: the start is open, the
//! state may move further from one day to the next than within a day, and once it may leap (a thing found out, an interest
//! lost). How much of each there is, is averaged over on a fixed grid. Page: `docs/methods/learning.md`.

use super::LearningError;
use super::curve::{LearningCurve, finish, intercept, observed_end};
use super::mixture::mixture_points;
use super::state_space::{Forward, States, forward, smooth};
use crate::stats::Level;

/// Variance of where it starts, in logits about chance, squared: two deviations reach from hardly ever to nearly always.
const START: f64 = 4.0;
/// Step variance from trial to trial, with its weight.
const TRIAL: [(f64, f64); 9] = [
    (1e-4, 0.08),
    (1e-3, 0.12),
    (4e-3, 0.16),
    (0.015, 0.18),
    (0.05, 0.18),
    (0.15, 0.14),
    (0.4, 0.08),
    (1.2, 0.04),
    (4.0, 0.02),
];
/// Variance added from one day to the next, with its weight.
const DAY: [(f64, f64); 4] = [(0.0, 0.2), (0.5, 0.2), (2.0, 0.35), (6.0, 0.25)];
/// Probability of a leap somewhere, and its variance.
const LEAP: (f64, f64) = (0.5, 6.0);
/// Places tried for the leap, at most.
const PLACES: usize = 40;
/// With a leap the steps are tried on a coarser grid.
const COARSE: [(f64, f64); 3] = [(1e-3, 0.3), (0.03, 0.4), (0.3, 0.3)];
const COARSE_DAY: [(f64, f64); 2] = [(0.0, 0.3), (1.5, 0.7)];
/// Parts of less weight than this are left out of the mixture.
const NEGLIGIBLE: f64 = 3e-4;

/// One way the state may have moved.
#[derive(Clone, Copy)]
struct Moves {
    trial: f64,
    day: f64,
    leap: Option<usize>,
    weight: f64,
}

/// The curve of one word with a band of this level; `days[k]` is the day (any number, the same for the trials of one day) of trial `k`.
///
/// `sigma2` of the result is the geometric mean of the step variance from trial to trial.
///
/// # Errors
/// [`LearningError::NoObservations`] without an observed trial, [`LearningError::ChanceOutOfRange`],
/// [`LearningError::LengthMismatch`] unless there is a day for each trial.
///
/// ```
/// use sayso_methods::learning::shown::curve_by_day;
/// use sayso_methods::stats::Level;
/// let pressed = [true, true, true, true, true, true, false, false, false, false].map(Some);
/// let curve = curve_by_day(&pressed, &[1, 1, 2, 2, 3, 3, 4, 4, 5, 5], 0.5, Level::P90)?;
/// assert!(curve.points[5].p > 0.5 && curve.points[9].p < 0.5);
/// # Ok::<(), sayso_methods::learning::LearningError>(())
/// ```
pub fn curve_by_day(
    trials: &[Option<bool>],
    days: &[i32],
    chance: f64,
    level: Level,
) -> Result<LearningCurve, LearningError> {
    if trials.len() != days.len() {
        return Err(LearningError::LengthMismatch {
            left: "trials",
            right: "days",
            left_len: trials.len(),
            right_len: days.len(),
        });
    }
    let mu = intercept(chance)?;
    let end = observed_end(trials)?;
    let new_day: Vec<bool> = (0..days.len()).map(|k| k > 0 && days[k] != days[k - 1]).collect();
    let step = |moves: &Moves, k: usize| {
        moves.trial + if new_day[k] { moves.day } else { 0.0 } + if moves.leap == Some(k) { LEAP.1 } else { 0.0 }
    };
    let mut pass = Forward::default();
    let mut ways = ways(end);
    let mut scores = Vec::with_capacity(ways.len());
    for moves in &ways {
        forward(&trials[..end], mu, |k| step(moves, k), START, &mut pass);
        scores.push(moves.weight.ln() + pass.log_likelihood);
    }
    let best = scores.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let total: f64 = scores.iter().map(|score| (score - best).exp()).sum();
    for (moves, score) in ways.iter_mut().zip(&scores) {
        moves.weight = (score - best).exp() / total;
    }
    let sigma2 = ways.iter().map(|moves| moves.weight * moves.trial.ln()).sum::<f64>().exp();
    let mut parts = Vec::new();
    for moves in ways.iter().filter(|moves| moves.weight > NEGLIGIBLE) {
        let mut states = States::default();
        forward(trials, mu, |k| step(moves, k), START, &mut pass);
        smooth(&pass, &mut states);
        parts.push((moves.weight, states));
    }
    Ok(finish(mixture_points(trials, mu, &parts, level), sigma2, chance, true))
}

/// Every way to move over so many trials, with its prior weight.
fn ways(trials: usize) -> Vec<Moves> {
    let apart = trials.div_ceil(PLACES).max(1);
    let places: Vec<usize> = (1..trials).step_by(apart).collect();
    let leaps = if places.is_empty() { 0.0 } else { LEAP.0 };
    let mut ways = Vec::new();
    for (trial, of_trial) in TRIAL {
        for (day, of_day) in DAY {
            ways.push(Moves { trial, day, leap: None, weight: (1.0 - leaps) * of_trial * of_day });
        }
    }
    for &place in &places {
        for (trial, of_trial) in COARSE {
            for (day, of_day) in COARSE_DAY {
                let weight = leaps * of_trial * of_day / places.len() as f64;
                ways.push(Moves { trial, day, leap: Some(place), weight });
            }
        }
    }
    ways
}
