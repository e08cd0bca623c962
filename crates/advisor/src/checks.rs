//! Planned checks of understanding ("probes" in the trade): how long, in which order, what comes next, and what came out.
//!
//! Methods: [`sayso_methods::understanding::probe`]. Everything here follows from the events alone, so that a printed sheet,
//! the phone and the figures always speak of the same trials. A trial without a choice uses up its place in the plan and is
//! never counted as wrong. Which answers count, and how, is settled in [`crate::pool`]; a check may be read, stopped or gone
//! on with at any moment, since what is claimed rests on all checks begun.

use crate::advice::NamedWord;
use crate::case::Case;
use crate::estimate::Estimate;
use crate::pool::{Check, Conduct};
use sayso_methods::learning::rank_sum::RankSum;
use sayso_methods::stats::{BetaPrior, Direction, Proportion, binomial_bayes_factor};
use sayso_methods::understanding::association::{PressIn, Unit, association};
use sayso_methods::understanding::pooled_probes::trials_to_plan;
use sayso_methods::understanding::probe::{self, analyse_probe};
use sayso_methods::understanding::{MonteCarlo, UnderstandingError};
use sayso_model::event::Part;
use sayso_model::order::OrderError;
pub use sayso_model::order::{PlannedTrial, order};
use sayso_model::{AnimalId, Fact, Kind, ProbeId, ProbePlan, ProbeResponse, ProbeTrial, Story, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Trials in one sitting at most (common practice, no source); fewer at any sign of stress.
pub const PER_SITTING: usize = 10;
/// False alarm rate of a whole check, shared by its words.
pub const ALPHA: f64 = 0.01;
/// Share of checks in which an animal as good as the rate worth finding should be found.
pub const POWER: f64 = 0.8;
/// No more trials than this for one word.
const MOST_PER_WORD: u64 = 1000;

/// What is laid out, hidden or shown for a word: its thing by name, or the word itself.
#[must_use]
pub fn thing(story: &Story, word: WordId) -> String {
    let reward = story.words().get(&word).and_then(|card| card.reward);
    let name = reward.and_then(|reward| story.rewards().get(&reward).map(|card| card.name.to_string()));
    name.unwrap_or_else(|| NamedWord::of(story, word).says)
}

/// How long a check must be.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Size {
    /// Trials for each word.
    pub per_word: u64,
    /// Trials in all.
    pub trials: u64,
    /// Right choices, of `per_word` made, from which the top rung is reached; fewer are enough if they come early.
    pub critical: u64,
    /// Share right by chance.
    pub chance: f64,
    /// False alarm rate allowed for the whole, over all checks and readings.
    pub alpha: f64,
    /// Exact chance that an animal that guesses ever reaches the top rung by then, for one word.
    pub false_alarm: f64,
    /// Exact chance of reaching it at the rate asked for, for one word.
    pub power: f64,
}

/// Trials needed to find a share right of `rate` among `choices`, for each of `words`, by exact power of evidence that may
/// be read at any time ([`trials_to_plan`]).
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] without a word, below two choices, for a rate not above chance, or where more than
/// 1000 trials a word would be needed.
pub fn size(words: usize, choices: u16, rate: f64) -> Result<Size, UnderstandingError> {
    let plan = trials_to_plan(words, choices, rate, ALPHA, POWER, MOST_PER_WORD)?;
    let chance = 1.0 / f64::from(choices);
    #[allow(clippy::cast_precision_loss)]
    let bar = (words as f64 / ALPHA).ln();
    let reaches = |k: u64| {
        let seen = Proportion::new(k, plan.n)?;
        binomial_bayes_factor(seen, chance, BetaPrior::EVEN, Direction::Above).map(|b| b.ln >= bar)
    };
    let mut critical = plan.n;
    while critical > 0 && reaches(critical - 1)? {
        critical -= 1;
    }
    Ok(Size {
        per_word: plan.n,
        trials: plan.n * words as u64,
        critical,
        chance,
        alpha: ALPHA,
        false_alarm: plan.false_alarm,
        power: plan.power,
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

/// The next trial of a check, from its plan and what was written down; none for an unknown check. A trial that was taken
/// back does not come again: its first answer is used up.
///
/// # Errors
/// As [`order`].
#[must_use]
pub fn next_trial(story: &Story, animal: AnimalId, probe: ProbeId) -> Option<Result<Next, OrderError>> {
    let plan = story.of::<ProbePlan>(animal).find(|p| p.part.probe == probe)?.part;
    let recorded = story.as_recorded(Kind::ProbeTrial).filter(|e| e.animal == Some(animal));
    let of_this = recorded.filter_map(|e| ProbeTrial::of(&e.body)).filter(|t| t.probe == probe);
    let done: BTreeSet<u16> = of_this.map(|t| t.trial).collect();
    let next =
        |all: Vec<PlannedTrial>| all.into_iter().find(|t| !done.contains(&t.number)).map_or(Next::Done, Next::Trial);
    Some(order(plan).map(next))
}

/// Trials of a check that stand, oldest first.
#[must_use]
pub fn trials(story: &Story, animal: AnimalId, probe: ProbeId) -> Vec<Fact<'_, ProbeTrial>> {
    story.of::<ProbeTrial>(animal).filter(|t| t.part.probe == probe).collect()
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

/// One way in which a check was not carried out as planned, with the number of trials.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Departure {
    /// Taken back: counted as wrong.
    TakenBack(usize),
    /// Changed after the first answer: counted as wrong.
    Changed(usize),
    /// Answered again under a used number: the first answer counts.
    Again(usize),
    /// Left out between others: counted as wrong.
    LeftOut(usize),
    /// About another word or thing than drawn from the plan's seed: counted as wrong.
    NotAsDrawn(usize),
    /// With a number that the plan does not have: not counted.
    Beyond(usize),
    /// The person with the animal knew the answer: a right one is not counted as blind, a wrong one is.
    KnewAnswer(usize),
    /// Drawn by an earlier rule, in which what was asked for last gave something away: climbs nothing.
    EarlierRule,
    /// Another check was planned before it was finished: the answer that would have been next counts as wrong.
    GivenUp,
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
    /// Where the conduct was not as planned, and how that is used.
    pub departures: Vec<Departure>,
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

/// What a check showed so far, by its first answers; none for an unknown check. p-values are not corrected here: what may
/// be said is judged over all checks begun and all words together ([`crate::claims::claims`]).
///
/// # Errors
/// [`UnderstandingError`] for a plan with fewer than two choices, or whose order cannot be drawn again.
#[must_use]
pub fn report(case: &Case<'_>, probe: ProbeId) -> Option<Result<Report, UnderstandingError>> {
    case.checks().iter().find(|c| c.plan.probe == probe).map(reported)
}

fn reported(Check { plan, first, conduct }: &Check) -> Result<Report, UnderstandingError> {
    if plan.choices < 2 {
        return Err(UnderstandingError::OutOfRange { what: "choices a trial", value: f64::from(plan.choices) });
    }
    let chance = 1.0 / f64::from(plan.choices);
    let conduct = conduct.as_ref().map_err(|why| *why)?;
    Ok(Report {
        planned: usize::from(plan.trials),
        carried_out: first.len(),
        chance,
        finds: finds(plan),
        taken_back: conduct.taken_back,
        departures: departures(conduct),
        words: by_word(plan, conduct, first, chance)?,
    })
}

fn by_word(
    plan: &ProbePlan,
    conduct: &Conduct,
    first: &[ProbeTrial],
    chance: f64,
) -> Result<Vec<WordResult>, UnderstandingError> {
    let seconds = |number: u16| {
        first.iter().find(|t| t.trial == number).and_then(|t| match &t.response {
            ProbeResponse::Chose { after_s, .. } => after_s.map(|s| s.get()),
            ProbeResponse::Nothing | ProbeResponse::Left => None,
        })
    };
    let index: BTreeMap<WordId, usize> = plan.words.iter().enumerate().map(|(i, w)| (*w, i)).collect();
    let scored: Vec<probe::ProbeTrial> = conduct
        .counted
        .iter()
        .filter_map(|c| {
            Some(probe::ProbeTrial { word: *index.get(&c.word)?, right: Some(c.right), seconds: seconds(c.number) })
        })
        .collect();
    let results = if scored.is_empty() { Vec::new() } else { analyse_probe(&scored, chance)? };
    let rearranged = if plan.design.places_drawn() { None } else { Some(rearranged(plan, first)?) };
    let mut out = Vec::new();
    for (at, word) in plan.words.iter().copied().enumerate() {
        let of_word = |what: &ProbeResponse| first.iter().filter(|t| t.target == word && t.response == *what).count();
        let timed = |right: bool| {
            scored.iter().filter(|t| t.word == at && t.right == Some(right) && t.seconds.is_some()).count()
        };
        let found = results.iter().find(|r| r.word == at);
        let (k, n) = found.map_or((0, 0), |r| (r.seen.k(), r.seen.n()));
        let some = found.filter(|_| n > 0);
        let as_count = |x: u64| usize::try_from(x).unwrap_or(usize::MAX);
        out.push(WordResult {
            word,
            right: Estimate::share_any_time(as_count(k), as_count(n)),
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
fn rearranged(plan: &ProbePlan, run: &[ProbeTrial]) -> Result<BTreeMap<WordId, f64>, UnderstandingError> {
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
    let words = plan.words.len().max(1);
    let per_word = u64::from(plan.trials) / words as u64;
    let enough =
        |percent: u32| trials_to_plan(words, plan.choices, f64::from(percent) / 100.0, ALPHA, POWER, per_word).is_ok();
    // Power grows with the share, so the smallest found lies where it turns.
    let (mut short, mut found) = (0, 100);
    if !enough(99) {
        return None;
    }
    while found - short > 1 {
        let middle = (short + found) / 2;
        if enough(middle) { found = middle } else { short = middle }
    }
    Some(f64::from(found.min(99)) / 100.0)
}

fn departures(c: &Conduct) -> Vec<Departure> {
    type Counted = (usize, fn(usize) -> Departure);
    let counted: [Counted; 7] = [
        (c.taken_back, Departure::TakenBack),
        (c.changed, Departure::Changed),
        (c.again, Departure::Again),
        (c.left_out, Departure::LeftOut),
        (c.not_as_drawn, Departure::NotAsDrawn),
        (c.beyond, Departure::Beyond),
        (c.open, Departure::KnewAnswer),
    ];
    let mut out: Vec<Departure> = counted.into_iter().filter(|(n, _)| *n > 0).map(|(n, of)| of(n)).collect();
    out.extend(c.earlier.then_some(Departure::EarlierRule));
    out.extend(c.given_up.then_some(Departure::GivenUp));
    out
}
