//! Other trials on the same days. Where two changes come and go at once and the same is measured for both, a difference may be of
//! either, and what one does may hang on the other: neither can be told apart. Our caution; the trade's rule is one change at a time.

use super::standing::Standing;
use super::trial::{plans, trial_among};
use sayso_model::{AnimalId, CaseUnit, Day, DesignPlan, Fact, Moment, Story, WordId};
use std::collections::BTreeSet;

/// Another trial with days in common.
#[derive(Clone, Copy, Debug)]
pub struct Beside<'a> {
    /// Its plan.
    pub plan: Fact<'a, DesignPlan>,
    /// An animal that both concern, under which its page stands.
    pub animal: AnimalId,
    /// Its last day; none where nobody knows yet, as its points are sessions.
    pub last: Option<Day>,
    /// Whether it is over.
    pub over: bool,
}

/// Trials with days in common with a plan for an animal, kept or not, that measure the same of an animal of its own; oldest first.
#[must_use]
pub fn beside<'a>(story: &'a Story, animal: AnimalId, plan: &DesignPlan, now: Moment) -> Vec<Beside<'a>> {
    let own = if plan.animals.is_empty() { vec![animal] } else { plan.animals.clone() };
    let all = own.iter().flat_map(|of| plans(story, *of).into_iter().map(move |kept| (*of, kept)));
    // The animal under whose name a trial over several is planned need not be one of them.
    let all = all.filter(|(of, kept)| kept.part.animals.is_empty() || kept.part.animals.contains(of));
    let mut seen = BTreeSet::from([plan.trial]);
    let all: Vec<_> =
        all.filter(|(_, kept)| measures_the_same(plan, kept.part) && seen.insert(kept.part.trial)).collect();
    if all.is_empty() {
        return Vec::new();
    }
    // A plan that is kept may have been stopped since.
    let last = match plans(story, animal).iter().find(|kept| kept.part.trial == plan.trial) {
        Some(kept) => end(story, animal, kept, now).0,
        None => planned_end(plan),
    };
    all.into_iter()
        .filter_map(|(of, kept)| {
            let (its_last, over) = end(story, of, &kept, now);
            let apart = |first: Day, last: Option<Day>| last.is_some_and(|last| last < first);
            let share = !apart(plan.first, its_last) && !apart(kept.part.first, last);
            // What ended before a day of it had passed took none.
            let lasted = !apart(kept.part.first, its_last) && !apart(plan.first, last);
            (share && lasted).then_some(Beside { plan: kept, animal: of, last: its_last, over })
        })
        .collect()
}

/// Trials of an animal that go on, or are to come, on some of these days; oldest first. A plan of what to do on the same days changes
/// what they measure.
#[must_use]
pub fn during<'a>(
    story: &'a Story,
    animal: AnimalId,
    (first, last): (Day, Option<Day>),
    now: Moment,
) -> Vec<Beside<'a>> {
    let one = |kept: Fact<'a, DesignPlan>| {
        let (its_last, over) = end(story, animal, &kept, now);
        let after = its_last.is_some_and(|its| its < first);
        let before = last.is_some_and(|last| last < kept.part.first);
        (!over && !after && !before).then_some(Beside { plan: kept, animal, last: its_last, over })
    };
    let own = plans(story, animal).into_iter();
    own.filter(|kept| kept.part.animals.is_empty() || kept.part.animals.contains(&animal)).filter_map(one).collect()
}

/// Whether a point of one says something of a point of the other.
fn measures_the_same(one: &DesignPlan, other: &DesignPlan) -> bool {
    let all = |words: &[WordId]| words.is_empty() || !one.measure.by_word();
    let common = one.words.iter().any(|word| other.words.contains(word));
    one.measure == other.measure && (all(&one.words) || all(&other.words) || common)
}

/// The last day that counts, where it is known, and whether the trial is over.
fn end(story: &Story, animal: AnimalId, plan: &Fact<'_, DesignPlan>, now: Moment) -> (Option<Day>, bool) {
    let Some(Ok(trial)) = trial_among(story, &[*plan], animal, plan.part.trial) else {
        return (planned_end(plan.part), false);
    };
    match trial.standing(story, now) {
        // The day on which it was stopped is left out of its figures.
        Standing::Stopped(day, _) | Standing::StrongSign(day) => (Some(day.plus(-1)), true),
        Standing::Finished => {
            let last = |lane| trial.sessions(story, lane, now).last().map(|s| s.start.at().day(&story.zone()));
            let by_session = trial.lanes.iter().filter_map(last).max();
            (planned_end(plan.part).or(by_session), true)
        }
        Standing::NotYet(_) | Standing::Running => (planned_end(plan.part), false),
    }
}

/// The last day of a plan, where its points are days.
#[must_use]
pub fn planned_end(plan: &DesignPlan) -> Option<Day> {
    (plan.unit == CaseUnit::Day).then(|| plan.first.plus(i32::from(plan.points) - 1))
}
