//! Phase lines: what own presses did before and after something changed.

use super::board::layouts;
use crate::estimate::{Estimate, Unit, mean};
use crate::observe::{Answered, by_day};
use sayso_methods::learning::phases::Better;
use sayso_methods::single_case::effects::{Contrast, Point, contrast};
use sayso_model::{AnimalId, Day, HouseRule, Moment, Story, WordCard};
use std::collections::{BTreeMap, BTreeSet};

/// Days looked at on each side, and the fewest that say anything (common practice, no source).
const DAYS: i32 = 14;
const LEAST_DAYS: usize = 5;
/// Changes told, newest first.
const LINES: usize = 4;

/// What changed.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Change {
    /// Buttons were moved.
    Moved,
    /// A word came that says this.
    Word(String),
    /// A rule of the house came.
    Rule,
}

/// Own presses before and after one change.
#[derive(Clone, PartialEq, Debug)]
pub struct PhaseLine {
    /// The day of the change, which counts on neither side.
    pub day: Day,
    /// What changed.
    pub what: Vec<Change>,
    /// Own presses a day before.
    pub before: Estimate,
    /// Own presses a day after.
    pub after: Estimate,
    /// Each day: days from the change (before it negative) and own presses.
    pub points: Vec<(i32, usize)>,
    /// Share of pairs of a day before and a day after in which the day after had more presses (nonoverlap of all pairs),
    /// with its 90 % interval, and p of the rank-sum test.
    pub more_after: (Estimate, f64),
}

/// The newest changes with enough days on both sides.
pub(super) fn lines(
    story: &Story,
    animal: AnimalId,
    first: Option<&Answered<'_>>,
    own: &[Answered<'_>],
    now: Moment,
) -> Vec<PhaseLine> {
    let zone = story.zone();
    let today = now.day(&zone);
    let Some(known) = first.map(|a| a.press.at().day(&zone)) else { return Vec::new() };
    let counts = by_day(own.iter().map(|a| a.press.at()), &zone);
    let changes = changes(story, animal, now);
    let days: Vec<Day> = changes.keys().copied().collect();
    let mut found = Vec::new();
    for (i, (day, what)) in changes.iter().enumerate().rev() {
        // A phase ends where the next change comes.
        let from = if i > 0 { days[i - 1].plus(1).max(known) } else { known }.max(day.plus(-DAYS));
        let until = days.get(i + 1).map_or(today, |next| (*next).min(today)).min(day.plus(DAYS + 1));
        let side = |from: Day, until: Day| -> Vec<(i32, usize)> {
            (0..until.days_since(from).max(0))
                .map(|k| from.plus(k))
                .map(|at| (at.days_since(*day), counts.get(&at).copied().unwrap_or(0)))
                .collect()
        };
        let (before, after) = (side(from, *day), side(day.plus(1), until));
        if before.len() >= LEAST_DAYS && after.len() >= LEAST_DAYS {
            found.extend(line(*day, what, &before, &after));
        }
        if found.len() == LINES {
            break;
        }
    }
    found
}

#[allow(clippy::cast_precision_loss)]
fn line(day: Day, what: &BTreeSet<Change>, before: &[(i32, usize)], after: &[(i32, usize)]) -> Option<PhaseLine> {
    let points = |side: &[(i32, usize)]| -> Vec<Point> {
        side.iter().map(|(day, n)| Point { day: f64::from(*day), value: *n as f64 }).collect()
    };
    let Contrast { nonoverlap, .. } = contrast(&points(before), &points(after), Better::Larger).ok()?;
    let a_day = |side: &[(i32, usize)]| mean(&side.iter().map(|(_, n)| *n as f64).collect::<Vec<_>>(), Unit::PerDay);
    let (was, is) = (a_day(before), a_day(after));
    let n = nonoverlap.n_a + nonoverlap.n_b;
    let more = Estimate::with(nonoverlap.nap, nonoverlap.nap_interval, n, Unit::Share);
    let points = before.iter().chain(after).copied().collect();
    Some(PhaseLine {
        day,
        what: what.iter().cloned().collect(),
        before: was,
        after: is,
        points,
        more_after: (more, nonoverlap.p),
    })
}

/// What changed on which day.
fn changes(story: &Story, animal: AnimalId, now: Moment) -> BTreeMap<Day, BTreeSet<Change>> {
    let zone = story.zone();
    let mut changes: BTreeMap<Day, BTreeSet<Change>> = BTreeMap::new();
    let mut note = |at: Moment, what: Change| {
        changes.entry(at.day(&zone)).or_default().insert(what);
    };
    for pair in layouts(story, now).windows(2) {
        let (old, new) = (pair[0].part.places(), pair[1].part.places());
        if new.iter().any(|(word, place)| old.get(word).is_some_and(|before| before != place)) {
            note(pair[1].at(), Change::Moved);
        }
    }
    let mut cards: Vec<_> = story.everyones::<WordCard>().filter(|c| c.at() <= now).collect();
    cards.sort_by_key(|c| (c.at(), c.id()));
    let mut seen = BTreeSet::new();
    for card in cards.iter().filter(|c| c.part.is_for(animal)) {
        if seen.insert(card.part.word) {
            note(card.at(), Change::Word(card.part.says.to_string()));
        }
    }
    let mut rules = BTreeSet::new();
    for rule in story.everyones::<HouseRule>().filter(|r| r.at() <= now) {
        if rules.insert(rule.part.rule) {
            note(rule.at(), Change::Rule);
        }
    }
    changes
}
