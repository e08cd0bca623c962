//! What came out of a trial: means, nonoverlap, level and trend, the test against the draw, the verdict on the design.

use super::measure::{Measured, measured};
use super::report::{
    Compared, Departure, Judgement, LaneResult, NoTest, PhaseMean, PhaseName, Report, Tested, unit_of,
};
use super::standing::Standing;
use super::trial::Trial;
use crate::estimate::{Estimate, mean};
use sayso_methods::learning::phases::Better;
use sayso_methods::single_case::CaseError;
use sayso_methods::single_case::effects::{Point, Scale, contrast, phase_celeration};
use sayso_methods::single_case::randomisation::{
    Expected, RandomisationTest, Statistic, randomisation_test, shift_interval,
};
use sayso_methods::single_case::schedule::Design;
use sayso_methods::single_case::standards::{Standards, standards};
use sayso_model::{CaseDesign, CaseExpected, CaseMeasure, DesignPlan, Moment, Story};
use serde::{Deserialize, Serialize};

/// Orders drawn where there are too many to count.
const DRAWN: u64 = 9_999;
/// Points from which a factor a week is shown; with fewer its interval says nothing (our choice).
const CELERATION_FROM: usize = 5;

/// What a trial shows at `now`.
#[must_use]
pub fn report(story: &Story, trial: &Trial<'_>, now: Moment) -> Report {
    let plan = trial.plan.part;
    let standing = trial.standing(story, now);
    let stopped = match standing {
        Standing::Stopped(day, _) | Standing::StrongSign(day) => Some(day),
        _ => None,
    };
    let lanes: Vec<LaneResult> = (0..trial.lanes.len())
        .map(|i| {
            let mut points = measured(story, trial, i, now);
            points.retain(|m| stopped.is_none_or(|stop| m.day.is_some_and(|d| d < stop)));
            lane_result(trial, i, points)
        })
        .collect();
    let over = lanes.iter().flat_map(|l| &l.points).filter(|m| m.over);
    let (done, missing) = over.fold((0, 0), |(d, m), p| (d + 1, m + usize::from(p.value.is_none())));
    let departures = departures(story, trial, &lanes);
    let drawn_before = trial.drawn_before(story);
    let tested = match standing {
        Standing::Finished if drawn_before => tested(trial, &lanes).map_err(NoTest::Refused),
        Standing::Finished => Err(NoTest::NotDrawnBefore),
        Standing::Stopped(..) | Standing::StrongSign(_) => Err(NoTest::Stopped),
        Standing::NotYet(_) | Standing::Running => Err(NoTest::NotFinished),
    };
    let going = matches!(standing, Standing::NotYet(_) | Standing::Running);
    let standards = judged(trial, &lanes, going);
    Report {
        done: (done, usize::from(plan.points) * trial.lanes.len()),
        orders: trial.design.count().unwrap_or(0),
        standing,
        lanes,
        tested,
        standards,
        missing,
        departures,
    }
}

fn phase_name(plan: &DesignPlan, phase: u8) -> PhaseName {
    let turn = (plan.design == CaseDesign::Reversal && plan.phases > 2).then_some(phase / 2 + 1);
    match (plan.design, phase) {
        (CaseDesign::ChangingCriterion, 1..) => {
            PhaseName::Goal(plan.criteria.get(usize::from(phase) - 1).map_or(0.0, |c| c.get()))
        }
        (CaseDesign::Reversal, _) if phase.is_multiple_of(2) => PhaseName::Usual(turn),
        (CaseDesign::Reversal, _) => PhaseName::Changed(turn),
        (_, 0) => PhaseName::Usual(None),
        _ => PhaseName::Changed(None),
    }
}

fn lane_result(trial: &Trial<'_>, lane: usize, points: Vec<Measured>) -> LaneResult {
    let plan = trial.plan.part;
    let of = |wanted: &dyn Fn(&Measured) -> bool| -> Vec<Point> {
        let there = points.iter().filter(|m| wanted(m));
        there.filter_map(|m| Some(Point { day: f64::from(m.day?.days_since(plan.first)), value: m.value? })).collect()
    };
    let last = trial.order[lane].iter().copied().max().unwrap_or(0);
    let phases = (0..=last)
        .map(|phase| {
            let here = of(&|m| m.phase == phase);
            let values: Vec<f64> = here.iter().map(|p| p.value).collect();
            let scale = match plan.measure {
                CaseMeasure::OwnPresses | CaseMeasure::StressSigns => Some(Scale::Counts),
                CaseMeasure::TimeToPress | CaseMeasure::DeliveryDelay => Some(Scale::Amounts),
                CaseMeasure::JoinedShare | CaseMeasure::PressedShare => None,
            };
            PhaseMean {
                name: phase_name(plan, phase),
                mean: mean(&values, unit_of(plan.measure)),
                celeration: scale.and_then(|s| phase_celeration(&here, s).ok()).filter(|c| c.n >= CELERATION_FROM),
            }
        })
        .collect();
    let better = if plan.expected == CaseExpected::Less { Better::Smaller } else { Better::Larger };
    let pairs: Vec<(Compared, Vec<Point>, Vec<Point>)> = match trial.design {
        Design::Reversal { phases, .. } => (1..phases as u8)
            .step_by(2)
            .map(|b| {
                let name = Compared::After(phase_name(plan, b), phase_name(plan, b - 1));
                (name, of(&|m| m.phase == b - 1), of(&|m| m.phase == b))
            })
            .collect(),
        _ => {
            let changed = |m: &Measured| trial.design.changed(m.phase);
            vec![(Compared::ChangedAgainstUsual, of(&|m| !changed(m)), of(&|m| changed(m)))]
        }
    };
    let contrasts = pairs.into_iter().filter_map(|(name, a, b)| Some((name, contrast(&a, &b, better).ok()?))).collect();
    LaneResult { lane: trial.lanes[lane].clone(), points, phases, contrasts }
}

/// What was measured in a series, as long as planned.
fn values(trial: &Trial<'_>, points: &[Measured]) -> Vec<Option<f64>> {
    let mut all: Vec<Option<f64>> = points.iter().map(|m| m.value).collect();
    all.resize(trial.design.points(), None);
    all
}

/// Another stream than that of the draw, or the draw would be one of those compared more often than by chance.
fn seed_of_test(plan: &DesignPlan) -> u64 {
    u64::from(plan.seed) ^ 0x7465_7374_0000_0000
}

/// The test alone, against the draw.
fn test(trial: &Trial<'_>, series: &[Vec<Option<f64>>]) -> Result<RandomisationTest, CaseError> {
    let plan = trial.plan.part;
    let criteria: Vec<f64> = plan.criteria.iter().map(|c| c.get()).collect();
    let statistic = if let Design::ChangingCriterion { .. } = trial.design {
        Statistic::CriterionFit(&criteria)
    } else {
        Statistic::MeanDifference(match plan.expected {
            CaseExpected::More => Expected::More,
            CaseExpected::Less => Expected::Less,
            CaseExpected::Either => Expected::Either,
        })
    };
    randomisation_test(trial.design, series, &trial.order, statistic, DRAWN, seed_of_test(plan))
}

fn tested(trial: &Trial<'_>, lanes: &[LaneResult]) -> Result<Tested, CaseError> {
    let plan = trial.plan.part;
    let series: Vec<_> = lanes.iter().map(|lane| values(trial, &lane.points)).collect();
    let test = test(trial, &series)?;
    let difference = if let Design::ChangingCriterion { .. } = trial.design {
        None
    } else {
        let [low, high] = shift_interval(trial.design, &series, &trial.order, DRAWN, seed_of_test(plan))?;
        let n = series.iter().flatten().flatten().count();
        Some(Estimate { value: Some(test.observed), low, high, n, unit: unit_of(plan.measure) })
    };
    Ok(Tested { test, difference })
}

/// How a trial came out, in a word.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// It has not begun, or goes on.
    Going,
    /// A person or a strong sign stopped it.
    Stopped,
    /// It ended, and cannot be tested.
    Untested,
    /// It ended; so few orders are possible that no effect could be told from chance.
    TooFewOrders,
    /// It ended, and its difference, in the direction said before, would be rare if the change did nothing.
    Rare,
    /// It ended, and may well be chance.
    MayBeChance,
}

/// How a trial came out at `now`: the same test as in its [`report`], without figures and intervals.
#[must_use]
pub fn outcome(story: &Story, trial: &Trial<'_>, now: Moment) -> Outcome {
    match trial.standing(story, now) {
        Standing::NotYet(_) | Standing::Running => Outcome::Going,
        Standing::Stopped(..) | Standing::StrongSign(_) => Outcome::Stopped,
        Standing::Finished if !trial.drawn_before(story) => Outcome::Untested,
        Standing::Finished => {
            let lanes = 0..trial.lanes.len();
            let series: Vec<_> = lanes.map(|lane| values(trial, &measured(story, trial, lane, now))).collect();
            match test(trial, &series).map(|test| Judgement::of(&test)) {
                Ok(Judgement::TooFewOrders) => Outcome::TooFewOrders,
                Ok(Judgement::Rare) => Outcome::Rare,
                Ok(Judgement::MayBeChance) => Outcome::MayBeChance,
                Err(_) => Outcome::Untested,
            }
        }
    }
}

/// The design judged by the points there are; while it goes on those to come count as if they would be there.
fn judged(trial: &Trial<'_>, lanes: &[LaneResult], going: bool) -> Option<Standards> {
    let points = trial.design.points();
    let seen = |lane: &LaneResult| {
        let mut seen: Vec<bool> = lane.points.iter().map(|m| !m.over || m.value.is_some()).collect();
        seen.resize(points, going);
        seen
    };
    let observed: Vec<Vec<bool>> = lanes.iter().map(seen).collect();
    standards(trial.design, &trial.order, &observed).ok()
}

fn departures(story: &Story, trial: &Trial<'_>, lanes: &[LaneResult]) -> Vec<Departure> {
    let mut out = Vec::new();
    let other = lanes.iter().flat_map(|l| &l.points).filter(|m| m.in_force.is_some_and(|c| c != m.drawn)).count();
    out.extend((other > 0).then_some(Departure::OtherCondition(other)));
    out.extend((!trial.drawn_before(story)).then_some(Departure::NotDrawnBefore));
    out
}
