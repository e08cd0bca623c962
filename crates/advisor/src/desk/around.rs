//! Changes and trials of an animal, taken out of its story with what was pressed before and after.

use super::looks::watched_of;
use super::tried::{AgreedLine, ChangeKind, ChangeLine, DAYS, PracticeLine, Pressed, ProgrammeLine, TrialLine};
use crate::agreed;
use crate::case::Case;
use crate::designs::{Outcome, Try, beside, outcome, trial_among};
use crate::programme::{Marks, course, doing, is_read};
use sayso_model::talks::{Standing, Talk, in_force};
use sayso_model::{CaseQuestion, Day, DesignPlan, EventId, Fact, PlanLine, Press, Proposed, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Changes and trials that began longer ago are not kept.
const KEPT_DAYS: i32 = 400;

/// Changes agreed about an animal, out of the talk and the plans of its trials, oldest first: a line for each kind in it.
pub(super) fn changes(case: &Case<'_>, talks: &[Talk<'_>], plans: &[Fact<'_, DesignPlan>]) -> Vec<ChangeLine> {
    let today = case.now().day(case.zone());
    let recent = |day: Day| today.days_since(day) <= KEPT_DAYS;
    let drawn: BTreeSet<EventId> = plans.iter().filter_map(|p| p.part.proposal).collect();
    let mut all: Vec<ChangeLine> = Vec::new();
    for talk in talks {
        let of_the_animal = talk.event.animal == Some(case.animal());
        let agreed = talk.agreed_at.map(|at| at.day(case.zone())).filter(|day| of_the_animal && recent(*day));
        let Some(agreed) = agreed else { continue };
        for (kind, words) in kinds(talk) {
            let (before, after) = around(case, agreed, &words);
            let (proposal, by) = (talk.id(), talk.part.from.account);
            all.push(ChangeLine { proposal, by, kind, agreed, before, after, drawn: drawn.contains(&proposal) });
        }
    }
    all.sort_by_key(|line| (line.agreed, line.proposal, line.kind));
    all
}

/// Kinds of change in what was proposed, each with its words; none of them for all words.
fn kinds(talk: &Talk<'_>) -> BTreeMap<ChangeKind, BTreeSet<WordId>> {
    let mut all: BTreeMap<ChangeKind, BTreeSet<WordId>> = BTreeMap::new();
    if let Some(tries) = Try::of(&talk.part.proposes) {
        all.insert(ChangeKind::Change { question: tries.question }, tries.words.into_iter().collect());
    }
    match &talk.part.proposes {
        Proposed::Plan { lines, .. } => {
            for line in lines {
                all.entry(ChangeKind::Plan { way: line.way }).or_default().insert(line.word);
            }
        }
        Proposed::Stage { word, stage } => {
            all.insert(ChangeKind::Stage { stage: *stage }, BTreeSet::from([*word]));
        }
        Proposed::Word { .. } => {
            all.insert(ChangeKind::Change { question: CaseQuestion::AnotherWord }, BTreeSet::new());
        }
        Proposed::Change { .. }
        | Proposed::Likes
        | Proposed::Check { .. }
        | Proposed::Note { .. }
        | Proposed::Question { .. }
        | Proposed::Meeting { .. }
        | Proposed::Programme { .. }
        | Proposed::HandOver { .. }
        | Proposed::Cover { .. }
        | Proposed::Practice { .. } => {}
    }
    all
}

/// Presses before a day and after it.
fn around(case: &Case<'_>, agreed: Day, words: &BTreeSet<WordId>) -> (Pressed, Pressed) {
    let zone = case.zone();
    let (from, end) = (agreed.plus(-DAYS), agreed.plus(1 + DAYS));
    let meant = |word: WordId| words.is_empty() || words.contains(&word);
    // Days on which nobody could press it are no days without presses.
    let there = case.story().of::<Press>(case.animal()).find(|p| meant(p.part.word)).map(|p| p.at().day(zone));
    let watched = watched_of(case, (from.start(zone), end.start(zone).plus_seconds(-0.001)), meant);
    let pressed = |first: Day, upto: Day| Pressed {
        days: watched.days.range(first..upto).count(),
        presses: watched.presses.iter().filter(|at| (first..upto).contains(&at.day(zone))).count(),
    };
    let begun = there.map_or(agreed, |day| day.max(from).min(agreed));
    (pressed(begun, agreed), pressed(agreed.plus(1), end))
}

/// Trials that concern an animal, out of their plans, oldest first.
pub(super) fn trials(case: &Case<'_>, plans: &[Fact<'_, DesignPlan>]) -> Vec<TrialLine> {
    let (story, today) = (case.story(), case.now().day(case.zone()));
    let known = plans.iter().filter(|p| p.at() <= case.now());
    let recent = known.filter(|p| today.days_since(p.part.first) <= KEPT_DAYS);
    let one = |p: &Fact<'_, DesignPlan>| {
        let found = trial_among(story, plans, case.animal(), p.part.trial)?;
        let outcome = found.map_or(Outcome::Untested, |t| outcome(story, &t, case.now()));
        let all = beside(story, case.animal(), p.part, case.now());
        let beside = all.iter().any(|other| other.plan.at() <= case.now());
        Some(TrialLine { trial: p.part.trial, question: p.part.question, first: p.part.first, outcome, beside })
    };
    recent.filter_map(one).collect()
}

/// Plans for some days that hold, out of the talk, oldest first, with what the log has of them: of each the words for which no later
/// plan is in force.
pub(super) fn agreed(case: &Case<'_>, talks: &[Talk<'_>]) -> Vec<AgreedLine> {
    let in_force = in_force(case.story(), talks, case.animal(), case.now());
    let one = |talk: &Talk<'_>| {
        let (Proposed::Plan { lines, last_day }, Some(at)) = (&talk.part.proposes, talk.agreed_at) else { return None };
        let holds = |line: &&PlanLine| in_force.get(&line.word).is_some_and(|(plan, _)| *plan == talk.id());
        let lines: Vec<PlanLine> = lines.iter().filter(holds).copied().collect();
        if lines.is_empty() {
            return None;
        }
        Some(AgreedLine {
            proposal: talk.id(),
            by: talk.part.from.account,
            written: talk.event.happened_at,
            lines: lines.len(),
            days: agreed::PlanDays::of(case, &lines, at, *last_day),
        })
    };
    let of_the_animal = talks.iter().rev().filter(|t| t.event.animal == Some(case.animal()));
    of_the_animal.filter(|t| t.standing == Standing::Accepted).filter_map(one).collect()
}

/// What was handed to the home to practise, out of the talk, oldest first: lessons that somebody of the home shows as read, and rehearsals
/// that it shared.
pub(super) fn practices(case: &Case<'_>, talks: &[Talk<'_>]) -> Vec<PracticeLine> {
    let about = talks.iter().filter(|t| t.concerns(case.animal()));
    let one = |talk: &Talk<'_>| {
        let practice = talk.practice()?;
        let read = practice
            .lessons
            .iter()
            .filter(|lesson| is_read(case.story(), lesson.as_str(), case.now(), Marks::Shown))
            .count();
        let shared = talk.answers.iter().filter(|a| a.part.rehearsed.is_some()).count();
        let (proposal, by, written) = (talk.id(), talk.part.from.account, talk.event.happened_at);
        Some(PracticeLine { proposal, by, written, read: (read, practice.lessons.len()), shared })
    };
    let mut found: Vec<PracticeLine> = about.filter_map(one).collect();
    found.reverse();
    found
}

/// Programmes joined with an animal, out of the talk, oldest first.
pub(super) fn programmes(case: &Case<'_>, talks: &[Talk<'_>]) -> Vec<ProgrammeLine> {
    let today = case.now().day(case.zone());
    let joined = talks.iter().filter(|t| t.event.animal == Some(case.animal()) && t.standing.is_agreed());
    let one = |talk: &Talk<'_>| {
        let (course, first) = course(talk).filter(|(_, first)| today.days_since(*first) <= KEPT_DAYS)?;
        let week = |week| doing(case, talk, week, Marks::Shown).iter().map(|d| (d.done, d.of)).collect();
        Some(ProgrammeLine {
            proposal: talk.id(),
            by: talk.part.from.account,
            written: talk.event.happened_at,
            programme: course.programme,
            first,
            weeks: (0..course.weeks.len()).map(week).collect(),
        })
    };
    let mut found: Vec<ProgrammeLine> = joined.filter_map(one).collect();
    found.sort_by_key(|line| (line.first, line.proposal));
    found
}
