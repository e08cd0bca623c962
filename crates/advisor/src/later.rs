//! What can wait: food, a likes test that is due, checks. What needs the animal waits while it rests.

use crate::advice::{Act, Advice, Because, Caution, Change, Feed, NamedWord, Reason, Sure, Topic};
use crate::case::Case;
use crate::likes::LikesReport;
use crate::ration::Ration;
use crate::stages::standings;
use crate::welfare::rest_today;
use sayso_model::{ProbeId, Sign, SignLevel, Stage};
use std::collections::BTreeSet;

/// A check begun longer ago than this, in days, is not asked for any more.
const OPEN_DAYS: f64 = 28.0;

/// What can wait, most pressing first.
#[must_use]
pub fn later(case: &Case<'_>, ration: &Ration, likes: &LikesReport) -> Vec<Advice> {
    let mut found = Vec::new();
    found.extend(food(ration));
    found.extend(allowance(ration));
    if !tests_rest(case) {
        found.extend(likes_test(case, likes));
        found.extend(checks(case));
    }
    found
}

/// Whether tests and checks rest: as long as sessions do, and on the day after a strong sign. They are never pressing, so a day
/// more costs nothing.
#[must_use]
pub fn tests_rest(case: &Case<'_>) -> bool {
    let mut lately = case.story().between::<Sign>(case.animal(), case.since(2), case.now());
    rest_today(case) || lately.any(|s| s.part.level == SignLevel::Strong)
}

fn food(ration: &Ration) -> Option<Advice> {
    let over = ration.over_kcal > 0.0;
    let spent = ration.left_kcal.is_some_and(|left| left <= 0.0);
    let fact = Because::FoodGiven(Feed {
        given_kcal: ration.given_kcal,
        feeds: ration.feeds,
        budget_kcal: ration.budget_kcal?,
    });
    let advice = Advice::new(Topic::Ration, Act::StopFood, vec![fact.into()], Sure::Fairly, Change::NextDay);
    (over || spent).then(|| advice.caution(Caution::IndividualsDiffer))
}

/// Asks for the day's food where it cannot be worked out.
pub(crate) fn allowance(ration: &Ration) -> Option<Advice> {
    ration.refusal.as_ref()?;
    let because = vec![Because::NoAllowance.into()];
    Some(Advice::new(Topic::SetUp, Act::SetAllowance, because, Sure::Very, Change::AllowanceSet))
}

fn likes_test(case: &Case<'_>, likes: &LikesReport) -> Option<Advice> {
    if likes.trials == 0 {
        let rewards = case.story().rewards_of(case.animal()).len();
        return (rewards >= 2).then(|| first_test(rewards));
    }
    let because = vec![likes.retest.clone()?.into()];
    Some(Advice::new(Topic::Likes, Act::RetestLikes, because, Sure::Little, Change::TestAgrees))
}

/// A first likes test of so many rewards.
pub(crate) fn first_test(rewards: usize) -> Advice {
    let because = vec![Because::NoLikesTest { rewards }.into()];
    Advice::new(Topic::SetUp, Act::TestLikes, because, Sure::Very, Change::TestRecorded)
}

/// The check that was begun lately and not finished: trials done, and of so many.
pub(crate) fn open_check(case: &Case<'_>) -> Option<(ProbeId, usize, usize)> {
    case.checks().iter().rev().find_map(|check| {
        let last = case.story().of::<sayso_model::ProbeTrial>(case.animal());
        let last = last.filter(|t| t.part.probe == check.plan.probe && t.at() <= case.now()).last()?;
        let (done, of) = (check.first.len(), usize::from(check.plan.trials));
        let days = case.now().seconds_since(last.at()) / 86_400.0;
        (done < of && days < OPEN_DAYS).then_some((check.plan.probe, done, of))
    })
}

pub(crate) fn checks(case: &Case<'_>) -> Option<Advice> {
    let advice = |act, because: Reason| Advice::new(Topic::Probe, act, vec![because], Sure::Fairly, Change::Checked);
    if let Some((_, done, of)) = open_check(case) {
        return Some(advice(Act::GoOnWithCheck { done, of }, Because::CheckOpen { done, of }.into()));
    }
    let checked: BTreeSet<_> = case.checks().iter().flat_map(|c| c.plan.words.iter().copied()).collect();
    let in_use = standings(case).iter().filter(|s| s.stage == Stage::Converse && !s.closing);
    let words: Vec<NamedWord> = in_use.filter(|s| !checked.contains(&s.word)).map(|s| s.named()).collect();
    let because = Because::NeverChecked { words: words.len() }.into();
    (words.len() >= 2).then(|| advice(Act::PlanCheck { words }, because))
}
