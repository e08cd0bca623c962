//! Probes: planned checks of understanding. How many trials, in which order, who may know what; and what came out.
//!
//! Sources: exact power by enumeration (see [`crate::stats::trials_needed`]); the person with the learner must not know the answer: Pfungst 1911, Clever
//! Hans; Bayes factor: Jeffreys 1961. Page: `docs/methods/understanding.md`.

use super::UnderstandingError;
use crate::learning::rank_sum::{RankSum, rank_sum};
use crate::stats::{
    BayesFactor, BetaPrior, Direction, Interval, Level, Proportion, Tail, TrialsNeeded, TrialsPlan,
    binomial_bayes_factor, trials_needed,
};
use sayso_model::order::{DrawnTrial, draw};
use std::collections::BTreeMap;

/// What a probe should be able to show.
#[derive(Debug, Clone, PartialEq)]
pub struct ProbeDesign {
    /// Words to be checked; their things also serve as the other choices.
    pub words: Vec<usize>,
    /// Things (or buttons) to choose from on each trial, 2 or more, at most as many as there are words.
    pub choices: usize,
    /// Share right worth finding, above chance (`1 / choices`).
    pub rate: f64,
    /// False alarm rate for the whole probe; it is divided by the number of words.
    pub alpha: f64,
    /// Power wanted for each word.
    pub power: f64,
    /// Most trials in one sitting; stop earlier at any sign of stress.
    pub per_sitting: usize,
}

impl ProbeDesign {
    /// Two choices, 90 % right worth finding, false alarms 1 %, power 80 %, ten trials a sitting (the last: common
    /// practice, no source).
    #[must_use]
    pub fn of(words: Vec<usize>) -> Self {
        Self { words, choices: 2, rate: 0.9, alpha: 0.01, power: 0.8, per_sitting: 10 }
    }
}

/// Who does what, so that nobody can give the answer away.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// Lays things out by the list and leaves the room, or stands where the learner cannot see them.
    Setter,
    /// Is with the learner. Does not know the list, looks away or wears dark glasses until the choice is made.
    Presenter,
    /// Scores which place was chosen, from a recording that does not show which word was asked.
    Scorer,
}

impl Role {
    /// All roles, with whether the person may know the answer.
    pub const ALL: [(Self, bool); 3] = [(Self::Setter, true), (Self::Presenter, false), (Self::Scorer, false)];
}

/// A plan ready to be carried out.
#[derive(Debug, Clone, PartialEq)]
pub struct ProbePlan {
    /// Trials, by sitting.
    pub sittings: Vec<Vec<DrawnTrial>>,
    /// Trials for each word.
    pub per_word: u64,
    /// How that number came about.
    pub needed: TrialsNeeded,
    /// Share right by chance.
    pub chance: f64,
    /// Seed that gives this order again.
    pub seed: u64,
}

/// Plans a probe: what is laid out in random order, and which of it is asked for drawn anew for each trial, so that no way of
/// guessing beats the chance of the binomial test, whatever the learner has seen so far ([`sayso_model::order::draw`]).
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] for fewer words than choices, a word listed twice or a sitting of 0 trials;
/// [`UnderstandingError::Stats`] when the design is out of range or needs more than 1000 trials a word.
///
/// ```
/// use sayso_methods::understanding::probe::{ProbeDesign, plan_probe};
/// let plan = plan_probe(&ProbeDesign::of(vec![4, 7, 9]), 42)?;
/// let trials: Vec<_> = plan.sittings.iter().flatten().collect();
/// assert_eq!(trials.len() as u64, 3 * plan.per_word);
/// assert!(trials.iter().all(|trial| trial.laid_out[trial.right_place] == trial.word));
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn plan_probe(design: &ProbeDesign, seed: u64) -> Result<ProbePlan, UnderstandingError> {
    let ProbeDesign { words, choices, rate, alpha, power, per_sitting } = design;
    let kinds = words.len();
    check_choices(words, *choices)?;
    if *per_sitting == 0 {
        return Err(UnderstandingError::OutOfRange { what: "trials a sitting", value: 0.0 });
    }
    let chance = 1.0 / *choices as f64;
    let needed =
        trials_needed(&TrialsPlan { chance, rate: *rate, alpha: alpha / kinds as f64, power: *power, max_n: 1000 })?;
    // A few trials may be declined, so plan the number from which power stays.
    let per_word = needed.stable_n;
    let mut trials = draw(kinds, *choices, kinds * per_word as usize, seed)?;
    for trial in &mut trials {
        trial.word = words[trial.word];
        trial.laid_out.iter_mut().for_each(|at| *at = words[*at]);
    }
    let sittings = trials.chunks(*per_sitting).map(<[DrawnTrial]>::to_vec).collect();
    Ok(ProbePlan { sittings, per_word, needed, chance, seed })
}

fn check_choices(words: &[usize], choices: usize) -> Result<(), UnderstandingError> {
    if choices < 2 || words.len() < choices {
        return Err(UnderstandingError::OutOfRange { what: "choices a trial", value: choices as f64 });
    }
    match words.iter().enumerate().find(|(at, word)| words[..*at].contains(word)) {
        Some((_, twice)) => Err(UnderstandingError::OutOfRange { what: "a word listed twice", value: *twice as f64 }),
        None => Ok(()),
    }
}

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
