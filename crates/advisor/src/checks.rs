//! Planned checks of understanding ("probes" in the trade): how long, in which order, what comes next, and what came out.
//!
//! Methods: [`sayso_methods::understanding::probe`]. Everything here follows from the events alone, so that a printed sheet,
//! the phone and the figures always speak of the same trials. A trial without a choice uses up its place in the plan and is
//! never counted as wrong; a check that was not finished is shown, but nothing is claimed from it.

use crate::estimate::Estimate;
use sayso_methods::learning::rank_sum::RankSum;
use sayso_methods::stats::{Proportion, Tail, TrialsPlan, trials_needed};
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::probe::{self, analyse_probe};
use sayso_methods::understanding::{MonteCarlo, UnderstandingError};
use sayso_model::order::OrderError;
pub use sayso_model::order::{PlannedTrial, order};
use sayso_model::{Body, Fact, LearnerId, ProbeDesign, ProbeId, ProbePlan, ProbeResponse, ProbeTrial, Story, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Trials in one sitting at most (common practice, no source); fewer at any sign of stress.
pub const PER_SITTING: usize = 10;
/// False alarm rate of a whole check, shared by its words.
pub const ALPHA: f64 = 0.01;
/// Share of checks in which a learner as good as the rate worth finding should be found.
pub const POWER: f64 = 0.8;
/// No more trials than this for one word.
const MOST_PER_WORD: u64 = 1000;

/// How long a check must be.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Size {
    /// Trials for each word.
    pub per_word: u64,
    /// Trials in all.
    pub trials: u64,
    /// Right choices, of `per_word`, from which the test of one word stands.
    pub critical: u64,
    /// Share right by chance.
    pub chance: f64,
    /// False alarm rate allowed for one word.
    pub alpha: f64,
    /// Exact false alarm rate for one word.
    pub false_alarm: f64,
    /// Exact chance of finding the rate asked for, for one word.
    pub power: f64,
}

/// Trials needed to find a share right of `rate` among `choices`, for each of `words`, by exact power ([`trials_needed`]).
/// The number is one from which the power stays, so that a few trials without a choice do no harm.
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] without a word or below two choices; [`UnderstandingError::Stats`] for a rate not
/// above chance, or where more than 1000 trials a word would be needed.
pub fn size(words: usize, choices: u16, rate: f64) -> Result<Size, UnderstandingError> {
    for (what, least, value) in [("words", 1, words), ("choices a trial", 2, usize::from(choices))] {
        if value < least {
            #[allow(clippy::cast_precision_loss)]
            return Err(UnderstandingError::OutOfRange { what, value: value as f64 });
        }
    }
    #[allow(clippy::cast_precision_loss)]
    let (chance, alpha) = (1.0 / f64::from(choices), ALPHA / words as f64);
    let needed = trials_needed(&TrialsPlan { chance, rate, alpha, power: POWER, max_n: MOST_PER_WORD })?;
    let n = needed.stable_n;
    let tail = |k: u64, share: f64| Proportion::new(k, n)?.test(share, Tail::Greater);
    let mut critical = n;
    while critical > 0 && tail(critical - 1, chance)? <= alpha {
        critical -= 1;
    }
    Ok(Size {
        per_word: n,
        trials: n * words as u64,
        critical,
        chance,
        alpha,
        false_alarm: tail(critical, chance)?,
        power: tail(critical, rate)?,
    })
}

/// What comes next.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Next {
    /// This trial.
    Trial(PlannedTrial),
    /// All trials were carried out.
    Done,
}

/// The next trial of a check, from its plan and the trials that stand; none for an unknown check. A trial taken back
/// comes up again.
///
/// # Errors
/// As [`order`].
#[must_use]
pub fn next_trial(story: &Story, learner: LearnerId, probe: ProbeId) -> Option<Result<Next, OrderError>> {
    let plan = story.of::<ProbePlan>(learner).find(|p| p.part.probe == probe)?.part;
    let done: BTreeSet<u16> = trials(story, learner, probe).iter().map(|t| t.part.trial).collect();
    let next =
        |all: Vec<PlannedTrial>| all.into_iter().find(|t| !done.contains(&t.number)).map_or(Next::Done, Next::Trial);
    Some(order(plan).map(next))
}

/// Trials of a check that stand, oldest first.
#[must_use]
pub fn trials(story: &Story, learner: LearnerId, probe: ProbeId) -> Vec<Fact<'_, ProbeTrial>> {
    story.of::<ProbeTrial>(learner).filter(|t| t.part.probe == probe).collect()
}

/// What a check showed for one word.
#[derive(Clone, PartialEq, Debug)]
pub struct WordResult {
    /// The word.
    pub word: WordId,
    /// Right, of choices made, with its exact interval.
    pub right: Estimate,
    /// Right choices.
    pub k: u64,
    /// Where places were drawn: exact one-sided p against chance. Where buttons stay in their places: whether pressing this
    /// one goes with what was called for, by rearranging. None where nothing was chosen or pressed.
    pub p: Option<f64>,
    /// How much likelier the choices are if the share is anywhere above chance than by chance; none where buttons stay in
    /// their places, for a favourite button would look like a sign.
    pub bayes_factor: Option<f64>,
    /// Chose nothing; never wrong.
    pub nothing: usize,
    /// Left; never wrong.
    pub left: usize,
    /// Median seconds to a right and to a wrong choice, with the number timed.
    pub seconds: [(Option<f64>, usize); 2],
    /// Right against wrong choices in seconds, where both were timed.
    pub latency: Option<RankSum>,
}

/// A check and what came out of it so far.
#[derive(Clone, PartialEq, Debug)]
pub struct Report {
    /// Trials planned.
    pub planned: usize,
    /// Planned trials carried out, with those without a choice.
    pub carried_out: usize,
    /// Share right by chance.
    pub chance: f64,
    /// The smallest share right, in whole percents, that a check of this length finds four times in five; none where none.
    pub finds: Option<f64>,
    /// Trials noted and taken back again.
    pub taken_back: usize,
    /// Where the conduct was not as planned.
    pub departures: Vec<String>,
    /// Word by word, as in the plan.
    pub words: Vec<WordResult>,
}

impl Report {
    /// Whether every planned trial was carried out.
    #[must_use]
    pub const fn finished(&self) -> bool {
        self.planned > 0 && self.carried_out >= self.planned
    }
}

/// What a check showed so far; none for an unknown check. p-values are not corrected here: what may be said is judged over
/// all words together ([`crate::claims::claims`]).
///
/// # Errors
/// [`UnderstandingError`] for a plan with fewer than two choices.
#[must_use]
pub fn report(story: &Story, learner: LearnerId, probe: ProbeId) -> Option<Result<Report, UnderstandingError>> {
    let plan = story.of::<ProbePlan>(learner).find(|p| p.part.probe == probe)?.part;
    let run: Vec<&ProbeTrial> = trials(story, learner, probe).into_iter().map(|t| t.part).collect();
    Some(reported(plan, &run, taken_back(story, learner, probe)))
}

fn taken_back(story: &Story, learner: LearnerId, probe: ProbeId) -> usize {
    let ledger = story.ledger();
    let ours = |e: &&sayso_model::Event| {
        e.learner == Some(learner) && matches!(&e.body, Body::ProbeTrial(t) if t.probe == probe)
    };
    ledger.all().filter(ours).filter(|e| ledger.standing(e.id).is_none()).count()
}

fn reported(plan: &ProbePlan, run: &[&ProbeTrial], taken_back: usize) -> Result<Report, UnderstandingError> {
    if plan.choices < 2 {
        return Err(UnderstandingError::OutOfRange { what: "choices a trial", value: f64::from(plan.choices) });
    }
    let chance = 1.0 / f64::from(plan.choices);
    let within: BTreeSet<u16> = run.iter().map(|t| t.trial).filter(|n| (1..=plan.trials).contains(n)).collect();
    Ok(Report {
        planned: usize::from(plan.trials),
        carried_out: within.len(),
        chance,
        finds: finds(plan),
        taken_back,
        departures: departures(plan, run, within.len()),
        words: by_word(plan, run, chance)?,
    })
}

fn by_word(plan: &ProbePlan, run: &[&ProbeTrial], chance: f64) -> Result<Vec<WordResult>, UnderstandingError> {
    let mut words = plan.words.clone();
    words.extend(run.iter().map(|t| t.target));
    let mut seen = BTreeSet::new();
    words.retain(|w| seen.insert(*w));
    let index: BTreeMap<WordId, usize> = words.iter().enumerate().map(|(i, w)| (*w, i)).collect();
    let as_scored = |t: &&&ProbeTrial| {
        let (right, seconds) = match t.response {
            ProbeResponse::Chose { word, after_s } => (Some(word == t.target), after_s.map(|s| s.get())),
            ProbeResponse::Nothing | ProbeResponse::Left => (None, None),
        };
        Some(probe::ProbeTrial { word: *index.get(&t.target)?, right, seconds })
    };
    let scored: Vec<probe::ProbeTrial> = run.iter().filter_map(|t| as_scored(&t)).collect();
    let results = if scored.is_empty() { Vec::new() } else { analyse_probe(&scored, chance)? };
    let rearranged = if plan.design == ProbeDesign::PickForWord { None } else { Some(rearranged(plan, run)?) };
    let mut out = Vec::new();
    for (at, word) in words.into_iter().enumerate() {
        let of_word = |what: &ProbeResponse| run.iter().filter(|t| t.target == word && t.response == *what).count();
        let timed = |right: bool| {
            scored.iter().filter(|t| t.word == at && t.right == Some(right) && t.seconds.is_some()).count()
        };
        let found = results.iter().find(|r| r.word == at);
        let (k, n) = found.map_or((0, 0), |r| (r.seen.k(), r.seen.n()));
        let some = found.filter(|_| n > 0);
        let as_count = |x: u64| usize::try_from(x).unwrap_or(usize::MAX);
        out.push(WordResult {
            word,
            right: Estimate::share(as_count(k), as_count(n)),
            k,
            p: match &rearranged {
                None => some.map(|r| r.p),
                Some(by_word) => by_word.get(&word).copied(),
            },
            bayes_factor: some.filter(|_| rearranged.is_none()).map(|r| r.bayes_factor.factor()),
            nothing: of_word(&ProbeResponse::Nothing),
            left: of_word(&ProbeResponse::Left),
            seconds: [
                (found.and_then(|r| r.median_right), timed(true)),
                (found.and_then(|r| r.median_wrong), timed(false)),
            ],
            latency: found.and_then(|r| r.latency),
        });
    }
    Ok(out)
}

/// Does the button pressed go with the thing called for? The things called for change places, presses stay as they were,
/// so that a favourite button or place is compared with itself.
fn rearranged(plan: &ProbePlan, run: &[&ProbeTrial]) -> Result<BTreeMap<WordId, f64>, UnderstandingError> {
    let words: BTreeSet<WordId> = run
        .iter()
        .flat_map(|t| match t.response {
            ProbeResponse::Chose { word, .. } => vec![t.target, word],
            _ => Vec::new(),
        })
        .collect();
    let index: BTreeMap<WordId, usize> = words.into_iter().enumerate().map(|(i, w)| (w, i)).collect();
    let pressed: Vec<PressIn> = run
        .iter()
        .filter_map(|t| match t.response {
            ProbeResponse::Chose { word, .. } => {
                Some(PressIn { session: 0, word: *index.get(&word)?, outcome: *index.get(&t.target)? })
            }
            _ => None,
        })
        .collect();
    if pressed.is_empty() {
        return Ok(BTreeMap::new());
    }
    let found = association(&pressed, Unit::Press, MonteCarlo::seeded(u64::from(plan.seed)))?;
    Ok(index
        .into_iter()
        .filter_map(|(word, at)| Some((word, found.by_word.iter().find(|w| w.word == at)?.p.p)))
        .collect())
}

fn finds(plan: &ProbePlan) -> Option<f64> {
    let words = plan.words.len();
    let per_word = u64::from(plan.trials) / (words.max(1) as u64);
    #[allow(clippy::cast_precision_loss)]
    let (chance, alpha) = (1.0 / f64::from(plan.choices), ALPHA / words.max(1) as f64);
    let enough = |percent: u32| {
        let design =
            TrialsPlan { chance, rate: f64::from(percent) / 100.0, alpha, power: POWER, max_n: per_word.max(1) + 60 };
        trials_needed(&design).is_ok_and(|needed| needed.stable_n <= per_word)
    };
    (1..=99).rev().take_while(|percent| enough(*percent)).last().map(|percent| f64::from(percent) / 100.0)
}

fn departures(plan: &ProbePlan, run: &[&ProbeTrial], distinct: usize) -> Vec<String> {
    let mut out = Vec::new();
    let trials = |n: usize| if n == 1 { "1 trial".to_owned() } else { format!("{n} trials") };
    let beyond = run.iter().filter(|t| !(1..=plan.trials).contains(&t.trial)).count();
    if beyond > 0 {
        out.push(format!("{} with a number that the plan does not have", trials(beyond)));
    }
    if run.len() - beyond > distinct {
        out.push(format!("{} noted twice", trials(run.len() - beyond - distinct)));
    }
    if plan.blind {
        let open = run.iter().filter(|t| !t.blind).count();
        if open > 0 {
            out.push(format!("{} in which the person with the learner knew the answer", trials(open)));
        }
    }
    match order(plan) {
        Err(why) => out.push(format!("the order cannot be drawn again from the plan ({why})")),
        Ok(all) => {
            let other =
                run.iter().filter(|t| all.iter().any(|planned| planned.number == t.trial && planned.word != t.target));
            let n = other.count();
            if n > 0 {
                out.push(format!("{} about another word than the order drawn from this plan\u{2019}s seed", trials(n)));
            }
        }
    }
    out
}
