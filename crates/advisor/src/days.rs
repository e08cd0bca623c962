//! Days: what happened when. Counts by day and hour with intervals that admit bursts, joining over weeks, latency under a fixed wait.

use crate::case::Case;
use crate::estimate::{Estimate, Unit, median};
use crate::latency::{Waiting, waiting};
use crate::observe::{Answered, meant_presses, own_presses, showings};
use crate::rate::{clumping, rate};
use crate::rhythm::{Rhythm, rhythm};
pub use crate::sums::Answers;
use crate::weeks::{WEEK, week_begins};
use sayso_methods::stats::Count;
use sayso_model::{Day, Moment, Session, Sign, SignLevel, WordId};
use serde::Serialize;
use std::collections::BTreeMap;

/// One household day.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct DayRow {
    /// The day.
    pub day: Day,
    /// Showings by word.
    pub showings: BTreeMap<WordId, usize>,
    /// The animal's own presses by word.
    pub presses: BTreeMap<WordId, usize>,
    /// Sessions begun.
    pub sessions: usize,
    /// Sessions joined.
    pub joined: usize,
    /// Mild signs of stress.
    pub mild_signs: usize,
    /// Strong signs of stress.
    pub strong_signs: usize,
}

impl DayRow {
    /// All showings of the day.
    #[must_use]
    pub fn all_showings(&self) -> usize {
        self.showings.values().sum()
    }
    /// All own presses of the day.
    #[must_use]
    pub fn all_presses(&self) -> usize {
        self.presses.values().sum()
    }
}

/// One week, as [`crate::weeks`] counts them.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Week {
    /// Its first day.
    pub first: Day,
    /// Share of sessions the animal joined.
    pub joining: Estimate,
    /// Seconds from the person's press to the delivery: the middle value.
    pub delay: Estimate,
    /// Showings.
    pub showings: usize,
    /// Own presses a day.
    pub presses: Estimate,
}

/// Everything the Days page shows.
#[derive(Clone, PartialEq, Debug)]
pub struct Days {
    /// One row a day, oldest first, days without events included.
    pub days: Vec<DayRow>,
    /// Own presses by local hour and day of the week over those days.
    pub rhythm: Rhythm,
    /// Weeks, oldest first.
    pub weeks: Vec<Week>,
    /// Answers to own presses over those days.
    pub answers: Answers,
    /// Time to press when invited over those days, all words together.
    pub waiting: Waiting,
}

/// The last `length` household days up to `now`, today included.
#[must_use]
pub fn days(case: &Case<'_>, length: u16) -> Days {
    let (zone, now, length) = (case.zone(), case.now(), i32::from(length.max(1)));
    let from = case.since(length);
    let all = case.answered_since(from);
    let (own, shown) = (own_presses(&all, None), showings(&all, None));
    let sessions: Vec<&Session<'_>> = case.sessions_over_since(from).collect();

    let first = from.day(zone);
    let mut rows: Vec<DayRow> = (0..length)
        .map(|i| DayRow {
            day: first.plus(i),
            showings: BTreeMap::new(),
            presses: BTreeMap::new(),
            sessions: 0,
            joined: 0,
            mild_signs: 0,
            strong_signs: 0,
        })
        .collect();
    let row_of = |at: Moment| usize::try_from(at.day(zone).days_since(first)).ok();
    for a in &shown {
        if let Some(row) = row_of(a.press.at()).and_then(|i| rows.get_mut(i)) {
            *row.showings.entry(a.press.part.word).or_insert(0) += 1;
        }
    }
    for a in &meant_presses(&all, None) {
        if let Some(row) = row_of(a.press.at()).and_then(|i| rows.get_mut(i)) {
            *row.presses.entry(a.press.part.word).or_insert(0) += 1;
        }
    }
    for s in &sessions {
        if let Some(row) = row_of(s.start.at()).and_then(|i| rows.get_mut(i)) {
            row.sessions += 1;
            row.joined += usize::from(s.joined());
        }
    }
    for s in case.story().between::<Sign>(case.animal(), from, now) {
        if let Some(row) = row_of(s.at()).and_then(|i| rows.get_mut(i)) {
            row.mild_signs += usize::from(s.part.level == SignLevel::Mild);
            row.strong_signs += usize::from(s.part.level == SignLevel::Strong);
        }
    }
    let watched_from = all.first().map_or(from, |a| a.press.at().day(zone).start(zone).max(from));
    let invited: Vec<_> = case.words().iter().map(|w| case.invitations(w.word)).collect();
    let recorded = case.story().all_between(case.animal(), watched_from, now).map(|e| e.happened_at);
    Days {
        rhythm: rhythm(&own, recorded, (watched_from, now), zone),
        weeks: weeks(&all, &sessions, (from, watched_from), now, zone),
        answers: answers(&own),
        days: rows,
        waiting: waiting(invited.iter().flat_map(|i| &i.usable).filter(|u| u.invitation.at() >= from)),
    }
}

fn weeks(
    all: &[Answered<'_>],
    sessions: &[&Session<'_>],
    (from, watched_from): (Moment, Moment),
    now: Moment,
    zone: &sayso_model::Zone,
) -> Vec<Week> {
    // How much presses come in bursts is learned from all weeks together; one week alone hardly shows it.
    let bursts = clumping(meant_presses(all, None).iter().map(|a| a.press.at()), watched_from, now, zone);
    let mut weeks = Vec::new();
    for ago in 0.. {
        let first = week_begins(ago, now.day(zone));
        let (begin, end) = (first.start(zone), first.plus(WEEK).start(zone));
        if end <= from {
            break;
        }
        let inside = |at: Moment| at >= begin && at < end;
        let upto = |at: Moment| all.partition_point(|a| a.press.at() < at);
        let week = &all[upto(begin)..upto(end)];
        let shown = showings(week, None);
        let begun: Vec<_> = sessions.iter().filter(|s| inside(s.start.at())).collect();
        let delays: Vec<f64> = shown.iter().filter_map(Answered::delay_s).collect();
        let own = meant_presses(week, None).len();
        let length = now.min(end).seconds_since(begin) / 86_400.0;
        weeks.push(Week {
            first,
            joining: Estimate::share(begun.iter().filter(|s| s.joined()).count(), begun.len()),
            delay: median(&delays, Unit::Seconds),
            showings: shown.len(),
            presses: Count::new(own as u64, length)
                .map_or(Estimate::unknown(Unit::PerDay), |count| rate(count, bursts, Unit::PerDay)),
        });
    }
    weeks.reverse();
    weeks
}

/// Counts the answers to some presses.
#[must_use]
pub fn answers(own: &[Answered<'_>]) -> Answers {
    let mut counts = Answers::default();
    own.iter().for_each(|a| counts.note(a.delivery.map(|d| d.part.answer)));
    counts
}
