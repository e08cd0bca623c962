//! Planned checks put together: which answers count, and how.
//!
//! The first answer to each planned number counts, for the word that was chosen (see [`Counted::word`]). An answer taken back,
//! changed, left out or about another word than drawn counts as wrong. A check once planned stays in the pool: where another is planned
//! before it is finished, the answer that would have been next counts as wrong, for it may have come and not been written
//! down. No choice is never wrong.

use crate::originals::{Fate, Original, Originals};
use sayso_methods::understanding::UnderstandingError;
use sayso_methods::understanding::ladder::{Growth, Ladder};
use sayso_methods::understanding::pooled_probes::{Answered, probe_evidence};
use sayso_model::order::{OrderError, PlannedTrial, earlier_order, order};
use sayso_model::{Moment, ProbeDesign, ProbeId, ProbePlan, ProbeResponse, ProbeTrial, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// One answer that counts.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Counted {
    /// When.
    pub at: Moment,
    /// Planned number.
    pub number: u16,
    /// The word it speaks for or against: the one chosen, not the one asked for. An animal that always reaches for one thing
    /// is right each time that thing is asked for, whatever it hears; of the trials in which it took it, it is right by
    /// chance.
    pub word: WordId,
    /// Whether it counts as right.
    pub right: bool,
}

/// How a check was carried out.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Conduct {
    /// Answers that count.
    pub counted: Vec<Counted>,
    /// Taken back: counted as wrong.
    pub taken_back: usize,
    /// Changed after the first answer: counted as wrong.
    pub changed: usize,
    /// Answered again under a used number: the first counts.
    pub again: usize,
    /// Left out between others: counted as wrong.
    pub left_out: usize,
    /// About another word than drawn, or a thing that was not laid out: counted as wrong.
    pub not_as_drawn: usize,
    /// Under a number that the plan does not have: not counted.
    pub beyond: usize,
    /// Run open in a check planned as blind: a wrong one counts, a right one does not.
    pub open: usize,
    /// Given up for another check: one answer counts as wrong.
    pub given_up: bool,
    /// Carried out in the order that was drawn before: shown, and climbs nothing.
    pub earlier: bool,
}

/// The ladder a design can climb; none where buttons keep their places.
#[must_use]
pub fn ladder(design: ProbeDesign) -> Option<Ladder> {
    match design {
        ProbeDesign::PickForWord => Some(Ladder::Hearing),
        ProbeDesign::PressUnderCovers => Some(Ladder::Asking),
        ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => None,
    }
}

/// How one check was carried out. `next` is when another one was planned, if one was.
///
/// # Errors
/// [`OrderError`] where the order cannot be drawn again from the plan.
pub fn conduct(
    plan: &ProbePlan,
    trials: &[&Original<'_, ProbeTrial>],
    next: Option<Moment>,
) -> Result<Conduct, OrderError> {
    let (planned, earlier) = drawn(plan, trials)?;
    let mut found =
        Conduct { beyond: trials.iter().filter(|t| beyond(plan, t.part.trial)).count(), earlier, ..Conduct::default() };
    let highest = trials.iter().map(|t| t.part.trial).filter(|n| !beyond(plan, *n)).max().unwrap_or(0);
    for trial in &planned {
        let told: Vec<_> = trials.iter().filter(|t| t.part.trial == trial.number).collect();
        found.again += told.len().saturating_sub(1);
        match told.first() {
            Some(first) => answer(&mut found, plan, trial, first),
            None if trial.number < highest => {
                let later = trials.iter().filter(|t| t.part.trial > trial.number).map(|t| t.at()).min();
                found.left_out += 1;
                if let Some(at) = later {
                    found.missing(trial, at);
                }
            }
            None => {}
        }
    }
    let unanswered = planned.iter().find(|t| t.number == highest + 1);
    if let (Some(at), Some(trial)) = (next, unanswered) {
        found.given_up = true;
        found.missing(trial, at);
    }
    Ok(found)
}

/// The order a check was carried out in: the one drawn now, unless all answers fit only the one drawn before.
fn drawn(plan: &ProbePlan, trials: &[&Original<'_, ProbeTrial>]) -> Result<(Vec<PlannedTrial>, bool), OrderError> {
    let fitting = |order: &[PlannedTrial]| {
        let fits =
            |t: &&&Original<'_, ProbeTrial>| order.iter().any(|p| p.number == t.part.trial && p.word == t.part.target);
        trials.iter().filter(|t| !beyond(plan, t.part.trial)).filter(fits).count()
    };
    let now = order(plan)?;
    let within = trials.iter().filter(|t| !beyond(plan, t.part.trial)).count();
    if fitting(&now) == within {
        return Ok((now, false));
    }
    let before = earlier_order(plan)?;
    Ok(if fitting(&before) == within { (before, true) } else { (now, false) })
}

impl Conduct {
    /// An answer that is not there may have been any wrong one: it speaks against every word laid out and not asked for.
    fn missing(&mut self, trial: &PlannedTrial, at: Moment) {
        let others = trial.laid_out.iter().filter(|w| **w != trial.word);
        self.counted.extend(others.map(|word| Counted { at, number: trial.number, word: *word, right: false }));
    }
}

fn beyond(plan: &ProbePlan, number: u16) -> bool {
    !(1..=plan.trials).contains(&number)
}

/// The word chosen, where one was; `Err` where it was not among those laid out.
fn chose(trial: &PlannedTrial, response: &ProbeResponse) -> Option<Result<WordId, ()>> {
    match response {
        ProbeResponse::Chose { word, .. } if trial.laid_out.contains(word) => Some(Ok(*word)),
        ProbeResponse::Chose { .. } => Some(Err(())),
        ProbeResponse::Nothing | ProbeResponse::Left => None,
    }
}

fn answer(found: &mut Conduct, plan: &ProbePlan, trial: &PlannedTrial, first: &Original<'_, ProbeTrial>) {
    let (taken_back, changed) = (first.fate == Fate::TakenBack, first.fate == Fate::Changed);
    found.taken_back += usize::from(taken_back);
    found.changed += usize::from(changed);
    // No choice is no answer, whatever was made of it later.
    let Some(chosen) = chose(trial, &first.part.response) else { return };
    let off = first.part.target != trial.word || chosen.is_err();
    found.not_as_drawn += usize::from(off);
    let open = plan.blind && !first.part.blind;
    found.open += usize::from(open);
    // What was changed at all may have been wrong.
    let right = chosen == Ok(trial.word) && !taken_back && !changed && !off;
    if right && open {
        return;
    }
    match chosen {
        Ok(word) => found.counted.push(Counted { at: first.at(), number: trial.number, word, right }),
        Err(()) => found.missing(trial, first.at()),
    }
}

/// One check and how it was carried out.
#[derive(Clone, Debug)]
pub struct Check {
    /// Its plan.
    pub plan: ProbePlan,
    /// First answers to planned numbers, by when they were written down.
    pub first: Vec<ProbeTrial>,
    /// How it was carried out; or why its order cannot be drawn again.
    pub conduct: Result<Conduct, OrderError>,
}

/// Checks by their id, in the order they were planned.
pub(crate) fn checks(all: &Originals<'_>) -> Vec<Check> {
    let mut trials: BTreeMap<ProbeId, Vec<&Original<'_, ProbeTrial>>> = BTreeMap::new();
    for trial in &all.trials {
        trials.entry(trial.part.probe).or_default().push(trial);
    }
    let mut seen = BTreeSet::new();
    let plans: Vec<_> = all.plans.iter().filter(|p| seen.insert(p.part.probe)).collect();
    plans
        .iter()
        .map(|plan| {
            let mine = trials.remove(&plan.part.probe).unwrap_or_default();
            let last = mine.iter().map(|t| t.at()).max().unwrap_or(plan.at());
            // Another check of the same ladder, planned after the last answer of this one.
            let same = |p: &&&Original<'_, ProbePlan>| {
                p.part.probe != plan.part.probe && ladder(p.part.design) == ladder(plan.part.design)
            };
            let next = plans.iter().filter(same).map(|p| p.at()).filter(|at| *at > plan.at()).min();
            let conduct = conduct(plan.part, &mine, next.map(|next| next.max(last)));
            let mut told = BTreeSet::new();
            let first = mine.iter().map(|t| t.part).filter(|t| !beyond(plan.part, t.trial) && told.insert(t.trial));
            Check { plan: plan.part.clone(), first: first.cloned().collect(), conduct }
        })
        .collect()
}

/// How the evidence of one word grew over all checks begun, by ladder: open ones, then blind ones.
///
/// # Errors
/// [`UnderstandingError`] for a plan with fewer than two choices.
pub fn pooled(all: &[Check], word: WordId) -> Result<[[Option<Growth>; 2]; 2], UnderstandingError> {
    let mut answers: [[Vec<(Moment, u16, Answered)>; 2]; 2] = Default::default();
    for Check { plan, conduct, .. } in all {
        let Some(ladder) = ladder(plan.design) else { continue };
        // A plan whose order cannot be drawn again proves nothing, and its page says why.
        let Ok(found) = conduct else { continue };
        if found.earlier {
            continue;
        }
        let pool = &mut answers[usize::from(plan.blind)][ladder as usize];
        for c in found.counted.iter().filter(|c| c.word == word) {
            pool.push((c.at, c.number, Answered { choices: plan.choices, right: c.right }));
        }
    }
    let mut out: [[Option<Growth>; 2]; 2] = Default::default();
    for (side, pools) in answers.iter_mut().enumerate() {
        for (ladder, pool) in pools.iter_mut().enumerate().filter(|(_, p)| !p.is_empty()) {
            pool.sort_by_key(|(at, number, _)| (*at, *number));
            let ln = probe_evidence(&pool.iter().map(|p| p.2).collect::<Vec<_>>())?;
            let steps = pool.iter().map(|p| p.0).zip(ln).collect();
            out[side][ladder] = Some(Growth { steps, n: pool.len() as u64 });
        }
    }
    Ok(out)
}
