//! How much a home writes down, and its habit: what may be said rests on records that exist.
//!
//! A record is somebody's where a person tapped it or it came from a file. What a microphone or a device sends goes on by
//! itself when nobody writes any more; it counts only where a home has nothing else. Thresholds are ours (common practice, no
//! source); how they do is measured in `docs/lab/desk.md`.

use super::line::{Logging, tidied};
use crate::case::Case;
use crate::estimate::{Estimate, Unit, median};
use sayso_model::{Body, Day, Event, Moment, PressedBy, Source};
use std::collections::BTreeSet;

/// Days looked back on for how much is written down.
const LATELY: i32 = 28;
/// Days looked back on for the habit.
const HABIT: i32 = 84;
/// Nobody is called silent before this many whole days.
pub const LEAST_SILENT: u32 = 4;
/// Silence this unlikely by the home's own habit is named.
const UNLIKELY: f64 = 0.01;
/// Silence this many times as long as the longest gap there was is named as well.
const TIMES_LONGEST: u32 = 2;
/// Gaps from which the longest of them says something.
const GAPS: usize = 4;
/// Whole days after which a home without a habit yet is called silent.
const NO_HABIT: u32 = 10;
/// Share of days with a record, and of what is closed, from which the log is taken to tell what was done.
const FULL: (f64, f64) = (0.5, 0.7);
/// Days before which nothing is said of how much is written down.
const SOME_DAYS: usize = 7;

/// Whether somebody wrote it, rather than something that goes on by itself.
fn by_people(event: &Event) -> bool {
    matches!(event.source, Source::Tap | Source::Import)
}

/// Records about the animal from a moment up to now. What a coach writes is none: it would end the silence of a home that
/// nobody writes in.
pub(crate) fn records<'a>(case: &Case<'a>, from: Moment) -> impl Iterator<Item = &'a Event> {
    records_between(case, from, case.now())
}

/// The same of a stretch, both ends included.
pub(crate) fn records_between<'a>(case: &Case<'a>, from: Moment, to: Moment) -> impl Iterator<Item = &'a Event> {
    let all = case.story().all_between(case.animal(), from, to.min(case.now()).plus_seconds(0.001));
    all.filter(|event| !matches!(event.body, Body::Proposal(_)))
}

/// Days with a record that somebody made since a moment; with any record, where nobody made one.
pub(crate) fn written_days(case: &Case<'_>, from: Moment) -> BTreeSet<Day> {
    let days = |of: fn(&Event) -> bool| -> BTreeSet<Day> {
        records(case, from).filter(|e| of(e)).map(|e| e.happened_at.day(case.zone())).collect()
    };
    let own = days(by_people);
    if own.is_empty() { days(|_| true) } else { own }
}

/// How much is written down.
pub(crate) fn logging(case: &Case<'_>) -> Logging {
    let (zone, now) = (case.zone(), case.now());
    let first = records(case, Moment::clamped(i64::MIN)).next().map(|e| e.happened_at.day(zone));
    let habit = written_days(case, case.since(HABIT));
    let any = |of: fn(&Event) -> bool| records(case, case.since(HABIT)).filter(|e| of(e)).map(|e| e.happened_at).last();
    // Of a home silent for longer than the habit looks back, the last record of all.
    let last = any(by_people).or_else(|| any(|_| true));
    let last = last.or_else(|| records(case, Moment::clamped(i64::MIN)).map(|e| e.happened_at).last());
    // Up to the last day with a record: silence is told as silence, not as little.
    let until = last.unwrap_or(now).day(zone);
    let from = first.map_or(until, |first| first.max(until.plus(1 - LATELY)));
    let gaps: Vec<u32> =
        habit.iter().zip(habit.iter().skip(1)).map(|(a, b)| u32::try_from(b.days_since(*a)).unwrap_or(1)).collect();
    let closed = closed(case, from.start(zone));
    Logging {
        first,
        last,
        days: habit.range(from..).count(),
        of: usize::try_from(until.days_since(from) + 1).unwrap_or(1),
        closed: tidied(closed),
        usual_gap: tidied(median(&gaps.iter().map(|g| f64::from(*g)).collect::<Vec<_>>(), Unit::Number)),
        longest_gap: gaps.iter().copied().max().unwrap_or(0),
        silent_after: silent_after(&gaps),
    }
}

/// Presses that people tapped and their answers; sessions and their joining or end.
fn closed(case: &Case<'_>, from: Moment) -> Estimate {
    let soon = case.now().plus_seconds(-3600.0);
    let presses = case
        .recent(from)
        .iter()
        .filter(|a| a.press.source() != Source::Heard && a.press.part.by != PressedBy::Unknown && a.press.at() < soon);
    let answered: Vec<bool> = presses.map(|a| a.delivery.is_some()).collect();
    let begun = case.sessions_since(from).iter().filter(|s| s.start.at() < soon);
    let told = begun.map(|s| s.end.is_some() || s.joined());
    let all: Vec<bool> = answered.into_iter().chain(told).collect();
    Estimate::share(all.iter().filter(|c| **c).count(), all.len())
}

/// Whole days without a record from which a home with these gaps is silent: a gap that its habit would bring once in a
/// hundred (days with a record at random, their share with an even prior), or twice the longest there was; longer than that
/// in any case, and never before four days.
fn silent_after(gaps: &[u32]) -> u32 {
    if gaps.len() < GAPS {
        return NO_HABIT.max(gaps.iter().copied().max().unwrap_or(0) + 1);
    }
    let longest = gaps.iter().copied().max().unwrap_or(1);
    let days: u32 = gaps.iter().sum();
    // Days with a record and without, among those that could have had one.
    let (with, without) = (gaps.len() as f64 + 1.0, f64::from(days) - gaps.len() as f64 + 1.0);
    let (mut empty, mut chance) = (0u32, 1.0);
    while chance > UNLIKELY && empty < 60 {
        // The next day is empty too: the share so far, with the empty ones before it.
        chance *= (without + f64::from(empty)) / (with + without + f64::from(empty));
        empty += 1;
    }
    empty.min(TIMES_LONGEST * longest).max(longest).max(LEAST_SILENT)
}

impl Logging {
    /// Whether the log tells what was done: records on most days, and most of them whole. Only then does a record that is
    /// not there say that something was not done.
    #[must_use]
    pub fn full(&self) -> bool {
        self.enough_days() && self.whole()
    }

    /// Whether there are records on most days.
    #[must_use]
    pub fn enough_days(&self) -> bool {
        self.known() && self.days as f64 >= FULL.0 * self.of as f64
    }

    /// Whether most of what has two halves is whole.
    #[must_use]
    pub fn whole(&self) -> bool {
        !self.closed.too_early() && self.closed.value.is_some_and(|share| share >= FULL.1)
    }

    /// Whether there was time to see how much is written down.
    #[must_use]
    pub fn known(&self) -> bool {
        self.of >= SOME_DAYS
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn silence_is_measured_by_the_homes_own_habit() {
        assert_eq!(silent_after(&[1; 50]), LEAST_SILENT, "who writes daily is missed after four days");
        let weekly = silent_after(&[7; 10]);
        assert!((8..=14).contains(&weekly), "{weekly}: two Sundays missed");
        let mixed = silent_after(&[1, 3, 2, 5, 1, 2, 6, 1, 4, 2, 3, 1]);
        assert!((7..=12).contains(&mixed), "{mixed}");
        assert_eq!(silent_after(&[]), NO_HABIT, "no habit yet");
        assert_eq!(silent_after(&[20, 1]), 21, "never within a gap there was");
    }
}
