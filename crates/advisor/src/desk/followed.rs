//! Over many homes: which kinds of change were followed by more presses, and how trials drawn by lot came out. Never as proof: the
//! page says why not.

use super::line::{Line, WEEKS};
use super::tried::{ChangeKind, ChangeLine, DAYS, Pressed};
use crate::designs::Outcome;
use crate::estimate::Estimate;
use sayso_model::{CaseQuestion, Day};
use std::collections::{BTreeMap, BTreeSet};

/// Fewest watched days before a change and after it (ours, no source): fewer days tell of those days alone.
pub const LEAST_DAYS: usize = 5;

/// What followed a kind of change. Each home counts once, by its first such change of which enough is known.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Followed {
    /// What kind of change.
    pub kind: ChangeKind,
    /// Share of homes with more own presses a watched day after it than before.
    pub more: Estimate,
    /// Homes of which too little is known, or in which too little time has passed.
    pub early: usize,
}

/// How trials of a kind of change came out, each counted by itself. Those beside another trial that measures the same stand apart: what
/// came of one change may be of the other.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Drawn {
    /// What was changed.
    pub question: CaseQuestion,
    /// In so many homes.
    pub homes: usize,
    /// Trials that ran alone, by how they came out.
    pub outcomes: BTreeMap<Outcome, usize>,
    /// Trials beside another one, by how they came out.
    pub beside: BTreeMap<Outcome, usize>,
}

/// What followed over all homes.
#[derive(Clone, PartialEq, Debug)]
pub struct Overall {
    /// By kind of change, those of most homes first; without the changes that were drawn.
    pub followed: Vec<Followed>,
    /// The same share where nothing was agreed in eight weeks: the latest four against the four before.
    pub nothing: Estimate,
    /// Trials by what was changed.
    pub drawn: Vec<Drawn>,
}

/// The day of a change, and whether presses a day went up after it, where that is known.
type Told = (Day, Option<bool>);

/// Whether presses a day went up; none where too few days are known.
fn went_up(before: Pressed, after: Pressed) -> Option<bool> {
    let enough = before.days >= LEAST_DAYS && after.days >= LEAST_DAYS;
    enough.then(|| after.presses * before.days > before.presses * after.days)
}

/// How often trials came out how: those alone, and those beside another.
type AloneOrBeside = [BTreeMap<Outcome, usize>; 2];

/// What followed in homes, each with the lines of its animals. Of changes only those count that `mine` says are the reader's own.
#[must_use]
pub fn overall<'a, H: Ord + Copy>(
    lines: impl IntoIterator<Item = (H, &'a Line)>,
    mine: impl Fn(&ChangeLine) -> bool,
) -> Overall {
    let mut changes: BTreeMap<ChangeKind, BTreeMap<H, Vec<Told>>> = BTreeMap::new();
    let mut nothing: BTreeMap<H, bool> = BTreeMap::new();
    let mut drawn: BTreeMap<CaseQuestion, (BTreeSet<H>, AloneOrBeside)> = BTreeMap::new();
    let mut counted = BTreeSet::new();
    for (home, line) in lines {
        for change in line.changes.iter().filter(|c| !c.drawn && mine(c)) {
            let told = (change.agreed, went_up(change.before, change.after));
            changes.entry(change.kind).or_default().entry(home).or_default().push(told);
        }
        // A trial over several animals stands in the line of each.
        for trial in line.trials.iter().filter(|t| counted.insert(t.trial)) {
            let (homes, outcomes) = drawn.entry(trial.question).or_default();
            homes.insert(home);
            *outcomes[usize::from(trial.beside)].entry(trial.outcome).or_insert(0) += 1;
        }
        if let Some(up) = weeks_went_up(line) {
            nothing.entry(home).or_insert(up);
        }
    }
    let mut followed: Vec<Followed> =
        changes.into_iter().map(|(kind, homes)| of_kind(kind, homes.into_values())).collect();
    followed.sort_by_key(|f| (std::cmp::Reverse(f.more.n), f.kind));
    let still: Vec<bool> = nothing.into_values().collect();
    let drawn = drawn.into_iter().map(|(question, (homes, [outcomes, beside]))| Drawn {
        question,
        homes: homes.len(),
        outcomes,
        beside,
    });
    Overall { followed, nothing: share(&still), drawn: drawn.collect() }
}

fn share(all: &[bool]) -> Estimate {
    Estimate::share(all.iter().filter(|up| **up).count(), all.len())
}

fn of_kind(kind: ChangeKind, homes: impl Iterator<Item = Vec<Told>>) -> Followed {
    let (mut known, mut early) = (Vec::new(), 0);
    for mut changes in homes {
        changes.sort_by_key(|(day, _)| *day);
        match changes.into_iter().find_map(|(_, up)| up) {
            Some(up) => known.push(up),
            None => early += 1,
        }
    }
    Followed { kind, more: share(&known), early }
}

/// Of an animal with which nothing was agreed in the weeks of its line: whether the second half has more presses a day with
/// records than the first. None where something was agreed or too little is known.
fn weeks_went_up(line: &Line) -> Option<bool> {
    let today = line.at.day(&line.zone);
    let agreed = line.changes.iter().any(|c| today.days_since(c.agreed) <= 2 * DAYS);
    let sum = |from: usize, upto: usize| {
        let weeks = line.weeks.get(from..upto).unwrap_or_default();
        weeks.iter().fold(Pressed::default(), |sum, week| Pressed {
            presses: sum.presses + week.presses,
            days: sum.days + week.days,
        })
    };
    went_up(sum(0, WEEKS / 2), sum(WEEKS / 2, WEEKS)).filter(|_| !agreed)
}
