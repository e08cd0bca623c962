//! Likes change: older trials count for less, and how fast is read from the trials themselves.
//!
//! Sources: exponential forgetting of likelihoods (M. West & J. Harrison 1997, Bayesian Forecasting and Dynamic Models, ch. 6);
//! the half-life is chosen by how well the past foretold each next day (A. P. Dawid 1984, J R Stat Soc A 147:278, prequential).

use super::{
    ChoiceFit, Intervals, LikesError, PairModel, PairOutcome, PairTrial, Prior, bradley_terry::fit_sittings,
    check_items, fit::logistic,
};
use crate::stats::StatsError;

/// Something that happened so many days ago.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aged<T> {
    /// What happened.
    pub what: T,
    /// Days before now, 0 or more.
    pub days: f64,
}

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

/// Strengths now, older trials counting for less. The intervals widen as the trials age.
///
/// # Errors
/// As [`super::fit_pairs`] and [`forgetting_weight`].
///
/// ```
/// use sayso_methods::likes::{Aged, PairModel, PairOutcome::*, PairTrial, fit_pairs_now};
/// let trial = |outcome, days| Aged { what: PairTrial { left: 0, right: 1, outcome }, days };
/// let trials = [trial(Left, 60.0), trial(Left, 59.0), trial(Right, 1.0), trial(Right, 0.0)];
/// let now = fit_pairs_now(2, &trials, 14.0, &PairModel::default())?;
/// assert_eq!(now.ranking(), vec![1, 0], "what it took lately counts");
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn fit_pairs_now(
    items: usize,
    trials: &[Aged<PairTrial>],
    half_life_days: f64,
    model: &PairModel,
) -> Result<ChoiceFit, LikesError> {
    let mut weights = Vec::with_capacity(trials.len());
    for trial in trials {
        weights.push(forgetting_weight(trial.days, half_life_days)?);
    }
    let bare: Vec<PairTrial> = trials.iter().map(|t| t.what).collect();
    // Days stand for sittings.
    let sittings: Vec<i64> = trials.iter().map(|t| t.days.floor() as i64).collect();
    fit_sittings(items, &bare, &weights, &sittings, model)
}

/// How well one half-life foretold the next day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HalfLifeScore {
    /// Days; infinite for no forgetting.
    pub half_life_days: f64,
    /// Mean log probability given to what was then chosen; ln(1/2) = -0.693 is guessing.
    pub log_score: f64,
}

/// The half-life that foretold best.
#[derive(Debug, Clone, PartialEq)]
pub struct HalfLife {
    /// The best candidate.
    pub best: HalfLifeScore,
    /// Standard error of its advantage over no forgetting, over days; 0 if no forgetting is best.
    pub advantage_error: f64,
    /// Mean advantage over no forgetting a choice.
    pub advantage: f64,
    /// Every candidate, in the order given.
    pub scores: Vec<HalfLifeScore>,
    /// Choices foretold.
    pub n: usize,
}

/// Prior while foretelling: mild, fixed, quick.
const FORETELLING: Prior = Prior::Weak { alpha: 0.25 };

/// Tries half-lives: each day's choices are foretold from the days before it. An infinite candidate is always added.
///
/// # Errors
/// [`LikesError::Stats`] below two days with choices, or for a bad candidate; as [`super::fit_pairs`] otherwise.
pub fn choose_half_life(
    items: usize,
    trials: &[Aged<PairTrial>],
    candidates_days: &[f64],
) -> Result<HalfLife, LikesError> {
    check_items(items)?;
    let mut candidates = candidates_days.to_vec();
    candidates.push(f64::INFINITY);
    for trial in trials {
        forgetting_weight(trial.days, 1.0)?;
        trial.what.check(items)?;
    }
    let mut days: Vec<i64> = trials.iter().map(|t| t.days.floor() as i64).collect();
    days.sort_unstable();
    days.dedup();
    // Oldest first; the oldest day itself cannot be foretold.
    days.reverse();
    let foretold: Vec<i64> = days.iter().skip(1).copied().collect();
    let mut by_day: Vec<Vec<f64>> = Vec::with_capacity(candidates.len());
    let mut n = 0;
    for half_life in &candidates {
        let mut sums = Vec::with_capacity(foretold.len());
        n = 0;
        for day in &foretold {
            let before: Vec<Aged<PairTrial>> = trials
                .iter()
                .filter(|t| t.days.floor() as i64 > *day)
                .map(|t| Aged { what: t.what, days: t.days - *day as f64 })
                .collect();
            let model = PairModel {
                prior: FORETELLING,
                nothing: false,
                tires: false,
                intervals: Intervals::Quick,
                ..PairModel::default()
            };
            let fit = fit_pairs_now(items, &before, *half_life, &model)?;
            let side = fit.side.map_or(0.0, |s| s.value);
            let mut sum = 0.0;
            for trial in trials.iter().filter(|t| t.days.floor() as i64 == *day).map(|t| t.what) {
                let lean = fit.strengths[trial.left].value - fit.strengths[trial.right].value + side;
                match trial.outcome {
                    PairOutcome::Left => sum += logistic(lean).max(1e-12).ln(),
                    PairOutcome::Right => sum += logistic(-lean).max(1e-12).ln(),
                    PairOutcome::Neither | PairOutcome::Both => continue,
                }
                n += 1;
            }
            sums.push(sum);
        }
        by_day.push(sums);
    }
    if n == 0 {
        return Err(StatsError::TooFew { what: "days with choices", needed: 2, got: days.len().min(1) }.into());
    }
    let scores: Vec<HalfLifeScore> = candidates
        .iter()
        .zip(&by_day)
        .map(|(half_life, sums)| HalfLifeScore {
            half_life_days: *half_life,
            log_score: sums.iter().sum::<f64>() / n as f64,
        })
        .collect();
    let none = candidates.len() - 1;
    let best = (0..candidates.len())
        .rev()
        .fold(none, |best, at| if scores[at].log_score > scores[best].log_score { at } else { best });
    let gains: Vec<f64> = by_day[best].iter().zip(&by_day[none]).map(|(a, b)| a - b).collect();
    let total: f64 = gains.iter().sum();
    let count = gains.len() as f64;
    let spread: f64 = gains.iter().map(|g| (g - total / count).powi(2)).sum();
    let error = if count > 1.0 { (spread * count / (count - 1.0)).sqrt() / n as f64 } else { f64::INFINITY };
    Ok(HalfLife {
        best: scores[best],
        advantage: total / n as f64,
        advantage_error: if best == none { 0.0 } else { error },
        scores,
        n,
    })
}
