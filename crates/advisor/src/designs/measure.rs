//! The measured series of a trial: a value for each point, with the observations behind it.

use super::trial::{Lane, Trial};
use crate::case::Case;
use crate::estimate::{Unit, mean};
use crate::observe::{answered_between, own_presses, showings};
use sayso_model::{
    CaseCondition, CaseMeasure, CaseUnit, Day, Delivery, Invitation, Moment, Press, SessionId, SessionStart, Sign,
    SignLevel, Story, WordId,
};

/// Days before the first point and after the last in which events of its sessions are looked for.
const BESIDE_DAYS: i32 = 1;

/// One point of a series.
#[derive(Clone, PartialEq, Debug)]
pub struct Measured {
    /// Point, from 1.
    pub point: u16,
    /// Its phase, from 0.
    pub phase: u8,
    /// The day it fell on; none while it has not come.
    pub day: Option<Day>,
    /// The session, where points are sessions.
    pub session: Option<SessionId>,
    /// The condition that was drawn.
    pub drawn: CaseCondition,
    /// The condition noted to have been in force, where somebody noted one.
    pub in_force: Option<CaseCondition>,
    /// Whether it is over.
    pub over: bool,
    /// The value; none where nothing was noted that could be measured, or the point is not over.
    pub value: Option<f64>,
    /// Observations behind the value.
    pub n: usize,
}

/// Where an event must fall to count for a point.
#[derive(Clone, Copy)]
enum Span {
    Day(Moment, Moment),
    Session(SessionId),
}

impl Span {
    fn holds(self, at: Moment, session: Option<SessionId>) -> bool {
        match self {
            Self::Day(from, to) => from <= at && at < to,
            Self::Session(id) => session == Some(id),
        }
    }
}

/// Every planned point of a series that has begun by `now`.
#[must_use]
pub fn measured(story: &Story, trial: &Trial<'_>, lane: usize, now: Moment) -> Vec<Measured> {
    let mut all = points(story, trial, lane, now);
    let (Some(of), Some(first), Some(last)) = (trial.lanes.get(lane), all.first(), all.last()) else { return all };
    let zone = story.zone();
    let span = |m: &Measured| match (m.session, m.day) {
        (Some(session), _) => Some(Span::Session(session)),
        (None, Some(day)) => Some(Span::Day(day.start(&zone), day.plus(1).start(&zone))),
        (None, None) => None,
    };
    let Some((from, to)) = first.day.zip(last.day) else { return all };
    let around = (from.plus(-BESIDE_DAYS).start(&zone), to.plus(1 + BESIDE_DAYS).start(&zone));
    let series = Series::of(story, of, trial.plan.part.measure, around, now);
    for m in all.iter_mut().filter(|m| m.over) {
        if let Some((value, n)) = span(m).and_then(|span| series.at(span)) {
            (m.value, m.n) = (Some(value), n);
        }
    }
    all
}

/// The points that have begun by `now`, without their values.
pub(super) fn points(story: &Story, trial: &Trial<'_>, lane: usize, now: Moment) -> Vec<Measured> {
    let (plan, zone) = (trial.plan.part, story.zone());
    let (Some(of), Some(phases)) = (trial.lanes.get(lane), trial.order.get(lane)) else { return Vec::new() };
    let spans: Vec<(Option<SessionId>, Day, bool)> = match plan.unit {
        CaseUnit::Day => (0..i32::from(plan.points))
            .map(|i| plan.first.plus(i))
            .take_while(|day| *day <= now.day(&zone))
            .map(|day| (None, day, day.plus(1).start(&zone) <= now))
            .collect(),
        CaseUnit::Session => trial
            .sessions(story, of, now)
            .iter()
            .map(|s| (Some(s.id()), s.start.at().day(&zone), !s.open(now)))
            .collect(),
    };
    (1_u16..)
        .zip(spans)
        .zip(phases)
        .map(|((point, (session, day, over)), phase)| Measured {
            point,
            phase: *phase,
            day: Some(day),
            session,
            drawn: trial.drawn(lane, point).unwrap_or(CaseCondition::Usual),
            in_force: trial.noted(story, lane, point),
            over,
            value: None,
            n: 0,
        })
        .collect()
}

/// Everything one measure needs, taken out of the story once.
struct Series {
    measure: CaseMeasure,
    /// When and where each observation fell, and what it was.
    seen: Vec<(Moment, Option<SessionId>, f64)>,
    /// Anything noted of this animal: a day without is a day on which nobody kept the notebook, not a day without presses.
    kept: Vec<(Moment, Option<SessionId>)>,
}

impl Series {
    /// What was noted from the first of two moments to the other, as far as `now`.
    fn of(story: &Story, lane: &Lane, measure: CaseMeasure, (from, to): (Moment, Moment), now: Moment) -> Self {
        let ours = |word: WordId| lane.words.is_empty() || lane.words.contains(&word);
        let (animal, to) = (lane.animal, to.min(now));
        let answered = || answered_between(story, animal, (from, to), now);
        let mut seen: Vec<(Moment, Option<SessionId>, f64)> = match measure {
            CaseMeasure::OwnPresses => own_presses(&answered(), None)
                .iter()
                .filter(|a| ours(a.press.part.word))
                .map(|a| (a.press.at(), a.press.part.session, 1.0))
                .collect(),
            CaseMeasure::JoinedShare => Case::new(story, animal, now)
                .sessions_over_since(from)
                .map(|s| (s.start.at(), Some(s.id()), f64::from(u8::from(s.joined()))))
                .collect(),
            CaseMeasure::TimeToPress | CaseMeasure::PressedShare => {
                invited(&Case::new(story, animal, now), measure, ours)
            }
            CaseMeasure::StressSigns => story
                .between::<Sign>(animal, from, to)
                .filter(|s| s.part.level != SignLevel::Joining)
                .map(|s| (s.at(), s.part.session, 1.0))
                .collect(),
            CaseMeasure::DeliveryDelay => {
                let all = answered();
                let both = showings(&all, None).into_iter().chain(own_presses(&all, None));
                both.filter(|a| ours(a.press.part.word) && a.given())
                    .filter_map(|a| Some((a.press.at(), a.press.part.session, a.delay_s()?)))
                    .collect()
            }
        };
        seen.retain(|s| s.0 >= from && s.0 <= to);
        let mut kept: Vec<(Moment, Option<SessionId>)> = Vec::new();
        kept.extend(story.between::<Press>(animal, from, to).map(|f| (f.at(), f.part.session)));
        kept.extend(story.between::<Delivery>(animal, from, to).map(|f| (f.at(), f.part.session)));
        kept.extend(story.between::<Invitation>(animal, from, to).map(|f| (f.at(), f.part.session)));
        kept.extend(story.between::<SessionStart>(animal, from, to).map(|f| (f.at(), Some(f.part.session))));
        kept.extend(story.between::<Sign>(animal, from, to).map(|f| (f.at(), f.part.session)));
        Self { measure, seen, kept }
    }

    /// The value of a point with its count; none where it is missing.
    fn at(&self, span: Span) -> Option<(f64, usize)> {
        let here: Vec<f64> = self.seen.iter().filter(|s| span.holds(s.0, s.1)).map(|s| s.2).collect();
        match self.measure {
            CaseMeasure::OwnPresses | CaseMeasure::StressSigns => {
                let kept = self.kept.iter().any(|k| span.holds(k.0, k.1));
                #[allow(clippy::cast_precision_loss)]
                kept.then_some((here.len() as f64, here.len()))
            }
            _ => mean(&here, Unit::Number).value.map(|value| (value, here.len())),
        }
    }
}

fn invited(
    case: &Case<'_>,
    measure: CaseMeasure,
    ours: impl Fn(WordId) -> bool,
) -> Vec<(Moment, Option<SessionId>, f64)> {
    case.all_invitations()
        .filter(|(word, _)| ours(*word))
        .flat_map(|(_, all)| &all.usable)
        .map(|u| {
            let value = if measure == CaseMeasure::TimeToPress { u.seconds } else { f64::from(u8::from(u.pressed)) };
            (u.invitation.at(), u.invitation.part.session, value)
        })
        .collect()
}
