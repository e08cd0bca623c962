//! How far a trial has got, and what to do now.

use super::measure::points;
use super::trial::Trial;
use crate::case::Case;
use crate::welfare::rest_today;
use sayso_model::{
    CaseCondition, CaseDesign, CaseStop, CaseUnit, Day, DesignStop, Fact, Moment, Sign, SignLevel, Story,
};

/// How far a trial has got.
#[derive(Clone, PartialEq, Debug)]
pub enum Standing {
    /// Begins on this day.
    NotYet(Day),
    /// Going on.
    Running,
    /// Every point is over.
    Finished,
    /// A person stopped it.
    Stopped(Day, CaseStop),
    /// A strong sign of stress under the changed condition ended it.
    StrongSign(Day),
}

/// What to do in one series now.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Today {
    /// The condition of this point, with the phase's criterion in seconds where there is one.
    Condition {
        /// The point, from 1.
        point: u16,
        /// Usual or changed.
        condition: CaseCondition,
        /// Which criterion, counted from 0.
        criterion: Option<usize>,
    },
    /// Strong signs of stress: rest, and everything as usual.
    Rest,
    /// Nothing: not begun, or over. Everything as usual.
    Nothing,
}

impl Trial<'_> {
    /// How far it has got.
    #[must_use]
    pub fn standing(&self, story: &Story, now: Moment) -> Standing {
        let (zone, stop) = (story.zone(), self.stop(story, now));
        let signs = (0..self.lanes.len()).filter_map(|lane| self.strong_sign(story, lane, now)).min();
        match (stop, signs) {
            (Some(stop), sign) if sign.is_none_or(|at| stop.at() <= at) => {
                return Standing::Stopped(stop.at().day(&zone), stop.part.reason);
            }
            (_, Some(at)) => return Standing::StrongSign(at.day(&zone)),
            _ => {}
        }
        if now.day(&zone) < self.plan.part.first {
            return Standing::NotYet(self.plan.part.first);
        }
        let open = (0..self.lanes.len()).any(|lane| self.point_now(story, lane, now).is_some());
        if open { Standing::Running } else { Standing::Finished }
    }

    /// When a person stopped it.
    fn stop<'s>(&self, story: &'s Story, now: Moment) -> Option<Fact<'s, DesignStop>> {
        let of = story.everyones::<DesignStop>().filter(|s| s.part.trial == self.plan.part.trial && s.at() <= now);
        of.min_by_key(Fact::at)
    }

    /// Whether it is over by what is quickly told: a person stopped it, or its points are days and all have passed.
    #[must_use]
    pub fn is_surely_over(&self, story: &Story, now: Moment) -> bool {
        let plan = self.plan.part;
        let days = now.day(&story.zone()).days_since(plan.first);
        self.stop(story, now).is_some() || (plan.unit == CaseUnit::Day && days >= i32::from(plan.points))
    }

    /// The first strong sign of stress seen while the change was in force.
    fn strong_sign(&self, story: &Story, lane: usize, now: Moment) -> Option<Moment> {
        let all = points(story, self, lane, now);
        let zone = story.zone();
        let animal = self.lanes.get(lane)?.animal;
        let under = |sign: &Fact<'_, Sign>| {
            let day = sign.at().day(&zone);
            all.iter().any(|m| {
                let here = match (sign.part.session, m.session) {
                    (Some(of), Some(point)) => of == point,
                    _ => m.day == Some(day),
                };
                here && m.in_force.unwrap_or(m.drawn) == CaseCondition::Changed
            })
        };
        let strong = |s: &Fact<'_, Sign>| s.part.level == SignLevel::Strong && s.at() <= now;
        story.of::<Sign>(animal).filter(strong).find(under).map(|s| s.at())
    }

    /// What to do now in each series.
    #[must_use]
    pub fn today(&self, story: &Story, now: Moment) -> Vec<Today> {
        let running = self.standing(story, now) == Standing::Running;
        (0..self.lanes.len())
            .map(|lane| {
                if rest_today(&Case::new(story, self.lanes[lane].animal, now)) {
                    return Today::Rest;
                }
                let point = self.point_now(story, lane, now).filter(|_| running);
                let Some((point, condition)) = point.and_then(|p| Some((p, self.drawn(lane, p)?))) else {
                    return Today::Nothing;
                };
                let phase = self.order[lane][usize::from(point) - 1];
                let steps = self.plan.part.design == CaseDesign::ChangingCriterion;
                Today::Condition { point, condition, criterion: usize::from(phase).checked_sub(1).filter(|_| steps) }
            })
            .collect()
    }
}
