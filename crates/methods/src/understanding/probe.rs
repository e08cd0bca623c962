//! Probes: what a planned check of understanding showed, word by word.
//!
//! Sources: exact binomial test; the person with the learner must not know the answer: Pfungst 1911, Clever Hans; Bayes factor:
//! Jeffreys 1961. Page: `docs/methods/understanding.md`.

use super::UnderstandingError;
use crate::learning::rank_sum::{RankSum, rank_sum};
use crate::stats::{BayesFactor, BetaPrior, Direction, Interval, Level, Proportion, Tail, binomial_bayes_factor};
use std::collections::BTreeMap;

/// One trial carried out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProbeTrial {
    /// Word asked.
    pub word: usize,
    /// Whether the choice was right; `None` if the learner did not choose or left, which is no wrong answer.
    pub right: Option<bool>,
    /// Seconds to the choice, if timed.
    pub seconds: Option<f64>,
}

/// What a probe showed for one word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProbeResult {
    /// Word.
    pub word: usize,
    /// Right, of choices made.
    pub seen: Proportion,
    /// 95 % interval of the share right.
    pub interval: Interval,
    /// Exact one-sided p against chance.
    pub p: f64,
    /// How much likelier the choices are if the share right is anything above chance (all equally likely) than by chance.
    pub bayes_factor: BayesFactor,
    /// Trials in which it did not choose.
    pub declined: u64,
    /// Median seconds to a right choice.
    pub median_right: Option<f64>,
    /// Median seconds to a wrong choice.
    pub median_wrong: Option<f64>,
    /// Right against wrong choices in seconds, where both were timed.
    pub latency: Option<RankSum>,
}

/// Analyses a probe word by word, in order of the words' numbers. p-values are not adjusted here: the ladder does that over
/// the household.
///
/// # Errors
/// [`UnderstandingError::NoObservations`], [`UnderstandingError::OutOfRange`] for a chance outside 0 to 1 or a time that
/// is negative or not finite.
///
/// ```
/// use sayso_methods::understanding::probe::{ProbeTrial, analyse_probe};
/// let trials: Vec<ProbeTrial> =
///     (0..12).map(|k| ProbeTrial { word: 3, right: Some(k != 5), seconds: None }).collect();
/// let result = analyse_probe(&trials, 0.5)?[0];
/// assert!((result.p - 13.0 / 4096.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn analyse_probe(trials: &[ProbeTrial], chance: f64) -> Result<Vec<ProbeResult>, UnderstandingError> {
    if trials.is_empty() {
        return Err(UnderstandingError::NoObservations);
    }
    if let Some(value) = trials.iter().filter_map(|t| t.seconds).find(|s| !(s.is_finite() && *s >= 0.0)) {
        return Err(UnderstandingError::OutOfRange { what: "seconds to a choice", value });
    }
    let mut by_word: BTreeMap<usize, Vec<&ProbeTrial>> = BTreeMap::new();
    for trial in trials {
        by_word.entry(trial.word).or_default().push(trial);
    }
    by_word
        .into_iter()
        .map(|(word, trials)| {
            let count = |right| trials.iter().filter(|trial| trial.right == right).count() as u64;
            let (right, wrong, declined) = (count(Some(true)), count(Some(false)), count(None));
            let seen = Proportion::new(right, right + wrong)?;
            let times = |right| {
                let mut times: Vec<f64> =
                    trials.iter().filter(|t| t.right == Some(right)).filter_map(|t| t.seconds).collect();
                times.sort_by(f64::total_cmp);
                times
            };
            let (right_times, wrong_times) = (times(true), times(false));
            Ok(ProbeResult {
                word,
                seen,
                interval: seen.clopper_pearson(Level::P95),
                p: seen.test(chance, Tail::Greater)?,
                bayes_factor: binomial_bayes_factor(seen, chance, BetaPrior::EVEN, Direction::Above)?,
                declined,
                median_right: median(&right_times),
                median_wrong: median(&wrong_times),
                latency: rank_sum(&right_times, &wrong_times).ok(),
            })
        })
        .collect()
}

fn median(sorted: &[f64]) -> Option<f64> {
    let middle = sorted.len() / 2;
    match sorted.len() {
        0 => None,
        n if n % 2 == 1 => Some(sorted[middle]),
        _ => Some(0.5 * (sorted[middle - 1] + sorted[middle])),
    }
}
