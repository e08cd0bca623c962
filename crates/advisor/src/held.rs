//! Sessions held today, and when another one fits: with a rest between them, and no more of them than this home usually
//! holds. See `docs/decisions/sessions-of-a-day.md`.

use crate::case::Case;
use crate::observe::{Answered, showings};
use crate::plan::Plan;
use sayso_model::{Moment, PressedBy, Session, SessionId};
use serde::Serialize;
use std::collections::BTreeSet;

/// Rest after a session before another one, in seconds (common practice, no source).
const REST_S: f64 = 2.0 * 3600.0;
/// Local hour from which no other session is proposed (our own choice: the evening is for rest).
const LATEST_HOUR: u8 = 21;

/// Sessions of today that are over.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Held {
    /// How many.
    pub sessions: usize,
    /// Showings in them.
    pub showings: usize,
    /// Presses of people in them that brought nothing: the log has them, and they showed nothing.
    pub bare: usize,
    /// When the last one ended.
    pub ended: Moment,
}

/// Whether another session fits today.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Another {
    /// Now.
    Now,
    /// From this moment on.
    From(Moment),
    /// Not today.
    Tomorrow,
}

fn ended(session: &Session<'_>) -> Moment {
    let last = session.leavings.last().map(|l| l.at()).or_else(|| session.joinings.last().map(|j| j.at()));
    session.end.map(|e| e.at()).or(last).unwrap_or_else(|| session.start.at())
}

/// The sessions of today that are over; none where there were none.
#[must_use]
pub fn held(case: &Case<'_>) -> Option<Held> {
    let from = case.since(1);
    let over: Vec<&Session<'_>> = case.sessions_since(from).iter().filter(|s| !s.open(case.now())).collect();
    let ids: BTreeSet<SessionId> = over.iter().map(|s| s.id()).collect();
    let there = |a: &&Answered<'_>| a.press.part.session.is_some_and(|s| ids.contains(&s));
    let shown = showings(case.recent(from), None).iter().filter(there).count();
    let by_person = case.recent(from).iter().filter(there).filter(|a| a.press.part.by == PressedBy::Person).count();
    Some(Held {
        sessions: over.len(),
        showings: shown,
        bare: by_person.saturating_sub(shown),
        ended: over.iter().map(|s| ended(s)).max()?,
    })
}

/// Whether another session fits after these: after a rest, and where it clearly joins better at a time of day that is still
/// to come, then.
#[must_use]
pub fn another(case: &Case<'_>, plan: &Plan, held: &Held) -> Another {
    if held.sessions >= plan.a_day {
        return Another::Tomorrow;
    }
    let (now, zone) = (case.now(), case.zone());
    let (day, rested) = (now.day(zone), held.ended.plus_seconds(REST_S));
    let at = |hour: u8| day.start(zone).plus_seconds(f64::from(hour) * 3600.0);
    let left = plan.times.iter().find(|t| t.clearly && at(t.to) > rested.plus_seconds(plan.minutes * 60.0));
    let from = left.map_or(rested, |t| at(t.from).max(rested));
    if from <= now {
        Another::Now
    } else if from.day(zone) == day && from.hour(zone) < LATEST_HOUR {
        Another::From(from)
    } else {
        Another::Tomorrow
    }
}
