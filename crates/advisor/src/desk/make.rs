//! A line from a story.

use super::around;
use super::line::{CheckLine, Line, Over, SignDay, SignKind, Version, WEEKS, WeekLine, tidy};
use super::logging::{logging, written_days};
use super::looks::{looks, sessions, so_far};
use super::words::words;
use crate::advice::Act;
use crate::case::Case;
use crate::designs::plans;
use crate::observe::{meant_presses, showings};
use crate::ration::ration;
use sayso_model::event::Part;
use sayso_model::facts::{Tells, tells};
use sayso_model::talks::talks;
use sayso_model::{Day, EventId, Feed, Kind, Sign, SignLevel};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Days of signs that are kept: six weeks, for what comes back.
const SIGN_DAYS: i32 = 42;
/// Days of food that are kept.
const FOOD_DAYS: i32 = 14;
/// Share beyond the day's rewards from which a day counts: pieces are weighed by eye.
const CLEARLY: f64 = 1.1;
/// Sessions looked back on for leaving.
const SESSIONS: usize = 8;

impl Line {
    /// The line of an animal at a moment: a function of the set of events, whatever the order they arrived in.
    #[must_use]
    pub fn of(case: &Case<'_>) -> Self {
        let logging = logging(case);
        let joined: Vec<_> = case.sessions().iter().rev().filter(|s| s.joined()).take(SESSIONS).collect();
        let (budget_kcal, over) = food(case);
        let (talks, plans) = (talks(case.story(), case.now()), plans(case.story(), case.animal()));
        Self {
            version: Version,
            animal: case.animal(),
            zone: case.zone().clone(),
            at: case.now(),
            signs: signs(case),
            left: (joined.iter().filter(|s| s.left()).count(), joined.len()),
            left_since: joined.iter().filter(|s| s.left()).map(|s| s.start.at().day(case.zone())).min(),
            last_joined: joined.first().map(|s| s.start.at().day(case.zone())),
            looks: looks(case, &logging),
            words: words(case, &logging),
            check: check(case),
            budget_kcal,
            over,
            weeks: weeks(case),
            so_far: so_far(case),
            changes: around::changes(case, &talks, &plans),
            trials: around::trials(case, &plans),
            programmes: around::programmes(case, &talks),
            agreed: around::agreed(case, &talks),
            practices: around::practices(case, &talks),
            logging,
        }
    }
}

fn kind(sign: &Sign) -> SignKind {
    match tells(sign.sign.as_str()) {
        Some(Tells::Threat) => SignKind::Threat,
        Some(Tells::Guarding) => SignKind::Guarding,
        Some(Tells::Swallowing) => SignKind::Swallowing,
        None => SignKind::Other,
    }
}

/// Whether a coach is told of it: strong, or of a kind that is not over with the day.
fn told(sign: &Sign) -> bool {
    sign.level == SignLevel::Strong || (sign.level != SignLevel::Joining && kind(sign) != SignKind::Other)
}

/// Signs as they stand, and those taken back or made milder since: a record about safety is not gone because it was withdrawn.
fn signs(case: &Case<'_>) -> Vec<SignDay> {
    let (story, from) = (case.story(), case.since(SIGN_DAYS));
    let mut days: BTreeMap<(Day, SignKind, bool, bool), usize> = BTreeMap::new();
    let mut note = |sign: &Sign, day: Day, taken_back: bool| {
        *days.entry((day, kind(sign), sign.level == SignLevel::Strong, taken_back)).or_insert(0) += 1;
    };
    for sign in story.between::<Sign>(case.animal(), from, case.now()).filter(|s| told(s.part)) {
        note(sign.part, sign.at().day(case.zone()), false);
    }
    let first = story.records_from(case.animal(), (from, EventId(Uuid::nil())));
    for event in first.take_while(|e| e.happened_at <= case.now()).filter(|e| e.body.kind() == Kind::Sign) {
        let Some(sign) = Sign::of(&event.body).filter(|s| told(s)) else { continue };
        let stands = story.ledger().standing(event.id);
        let still = stands.as_ref().and_then(|e| Sign::of(&e.body)).is_some_and(told);
        if !still {
            note(sign, event.happened_at.day(case.zone()), true);
        }
    }
    let day = |((day, kind, strong, taken_back), count)| SignDay { day, kind, strong, taken_back, count };
    days.into_iter().map(day).collect()
}

fn check(case: &Case<'_>) -> CheckLine {
    let found = crate::later::checks(case);
    match found.as_ref().map(|advice| &advice.act) {
        Some(Act::GoOnWithCheck { done, of }) => CheckLine { open: Some((*done, *of)), never: 0 },
        Some(Act::PlanCheck { words }) => CheckLine { open: None, never: words.len() },
        _ => CheckLine { open: None, never: 0 },
    }
}

/// The day's energy for rewards by the card as it is now, and days on which clearly more was given.
fn food(case: &Case<'_>) -> (Option<f64>, Vec<Over>) {
    let story = case.story();
    let Some(card) = story.animals().get(&case.animal()).copied() else { return (None, Vec::new()) };
    let Some(budget) = ration(story, card, case.now()).budget_kcal else { return (None, Vec::new()) };
    let mut given: BTreeMap<Day, f64> = BTreeMap::new();
    for feed in story.between::<Feed>(case.animal(), case.since(FOOD_DAYS), case.now()) {
        *given.entry(feed.at().day(case.zone())).or_insert(0.0) += feed.part.kcal.get();
    }
    let over = given.into_iter().filter(|(_, kcal)| *kcal > CLEARLY * budget);
    (Some(tidy(budget)), over.map(|(day, kcal)| Over { day, given_kcal: tidy(kcal) }).collect())
}

fn weeks(case: &Case<'_>) -> [WeekLine; WEEKS] {
    let (zone, today) = (case.zone(), case.now().day(case.zone()));
    let from = case.since(7 * i32::try_from(WEEKS).unwrap_or(8));
    let mut weeks = [WeekLine::default(); WEEKS];
    let place = |day: Day| {
        let ago = usize::try_from(today.days_since(day)).ok()? / 7;
        (ago < WEEKS).then(|| WEEKS - 1 - ago)
    };
    let all = case.answered_since(from);
    for day in meant_presses(&all, None).iter().map(|a| a.press.at().day(zone)) {
        place(day).into_iter().for_each(|w| weeks[w].presses += 1);
    }
    for day in showings(&all, None).iter().map(|a| a.press.at().day(zone)) {
        place(day).into_iter().for_each(|w| weeks[w].showings += 1);
    }
    for (day, joined) in sessions(case) {
        if let Some(week) = place(day).and_then(|w| weeks.get_mut(w)) {
            week.sessions += 1;
            week.joined += usize::from(joined);
        }
    }
    for day in written_days(case, from) {
        place(day).into_iter().for_each(|w| weeks[w].days += 1);
    }
    weeks
}
