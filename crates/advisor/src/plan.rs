//! The plan for the next session: which words, how many showings, how long, when. From this animal's own sessions
//! where there are enough of them, else from common practice, and it says which.

use crate::case::Case;
use crate::estimate::{Estimate, LEVEL, Unit, median};
use crate::observe::{Answered, showings};
use crate::stages::{Standing, standings};
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_model::{Session, SessionId, Stage, WordId};
use std::collections::BTreeMap;

/// Words in one session (common practice, no source: two or three to start with).
const MOST_WORDS: usize = 3;
/// Session length without figures (common practice, no source: five minutes a day already help).
const USUAL_MINUTES: f64 = 3.0;
/// Bounds of a session's length, in minutes (common practice, no source).
const SHORTEST: f64 = 1.0;
const LONGEST: f64 = 5.0;
/// Showings a minute without figures (from memory, no source).
const USUAL_PACE: f64 = 2.0;
/// Days looked back on.
const RECENT_DAYS: i32 = 28;
/// Sessions needed before the animal's own figures are used.
const ENOUGH: usize = 6;

/// One word of the plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Planned {
    /// Which.
    pub word: WordId,
    /// What it says.
    pub says: String,
    /// Its stage.
    pub stage: Stage,
    /// Showings to aim for in the session.
    pub showings: usize,
    /// Showings today so far.
    pub today: usize,
}

/// A time of day and how often the animal joined in it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TimeOfDay {
    /// First local hour.
    pub from: u8,
    /// Hour after the last.
    pub to: u8,
    /// Share of sessions joined.
    pub joining: Estimate,
}

/// The next session.
#[derive(Clone, PartialEq, Debug)]
pub struct Plan {
    /// What to show, least shown first.
    pub words: Vec<Planned>,
    /// How long, in minutes.
    pub minutes: f64,
    /// Where the length comes from.
    pub minutes_because: String,
    /// Showings a minute.
    pub pace: Estimate,
    /// Times of day with at least some sessions, best joining first.
    pub times: Vec<TimeOfDay>,
}

/// The next session's plan; none where no word is to be shown or invited.
#[must_use]
pub fn plan(case: &Case<'_>) -> Option<Plan> {
    let (zone, now, from) = (case.zone(), case.now(), case.since(RECENT_DAYS));
    let shown: Vec<Answered<'_>> = showings(case.recent(from), None);
    let mut today: BTreeMap<WordId, usize> = BTreeMap::new();
    for a in shown.iter().rev().take_while(|a| a.press.at().day(zone) == now.day(zone)) {
        *today.entry(a.press.part.word).or_insert(0) += 1;
    }
    let mut words: Vec<&Standing> =
        standings(case).iter().filter(|s| matches!(s.stage, Stage::Show | Stage::Invite)).collect();
    words.sort_by_key(|s| (today.get(&s.word).copied().unwrap_or(0), s.showings_week, s.showings));
    words.truncate(MOST_WORDS);
    if words.is_empty() {
        return None;
    }
    let begun = case.sessions_since(from);
    let recent: Vec<&Session<'_>> = begun.iter().filter(|s| s.joined()).collect();
    let (minutes, minutes_because) = length(&recent);
    let pace = pace(&recent, &shown);
    let aim = (minutes * pace.value.unwrap_or(USUAL_PACE)).round().max(1.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, clippy::cast_precision_loss)]
    let each = ((aim / words.len() as f64).round() as usize).max(1);
    Some(Plan {
        words: words
            .into_iter()
            .map(|s| Planned {
                word: s.word,
                says: s.says.clone(),
                stage: s.stage,
                showings: each,
                today: today.get(&s.word).copied().unwrap_or(0),
            })
            .collect(),
        minutes,
        minutes_because,
        pace,
        times: times(case, begun),
    })
}

/// Ends before the animal usually wants to go: the time by which a quarter of sessions had been left, by
/// Kaplan-Meier with sessions that ended otherwise as censored.
fn length(sessions: &[&Session<'_>]) -> (f64, String) {
    let waits: Vec<Wait> = sessions
        .iter()
        .filter_map(|s| {
            let left = s.leavings.first().map(|l| l.at().seconds_since(s.start.at()).max(0.0));
            left.map(Wait::ended).or_else(|| s.seconds().map(Wait::open))
        })
        .collect();
    let usual = |why: &str| (USUAL_MINUTES, format!("common practice ({why})"));
    if waits.len() < ENOUGH {
        return usual(&format!("only {} timed sessions in four weeks", waits.len()));
    }
    let Ok(curve) = kaplan_meier(&waits, LEVEL) else { return usual("the times of sessions contradict each other") };
    match curve.points.iter().find(|p| p.survival <= 0.75) {
        Some(point) => {
            let minutes = (point.time / 60.0 * 2.0).floor() / 2.0;
            let minutes = minutes.clamp(SHORTEST, LONGEST);
            let because = format!(
                "a quarter of {} timed sessions had been left by {:.1} minutes; end before that",
                curve.n,
                point.time / 60.0
            );
            (minutes, because)
        }
        None => usual(&format!("fewer than a quarter of {} timed sessions were left early", curve.n)),
    }
}

fn pace(sessions: &[&Session<'_>], shown: &[Answered<'_>]) -> Estimate {
    let mut by_session: BTreeMap<SessionId, usize> = BTreeMap::new();
    for session in shown.iter().filter_map(|a| a.press.part.session) {
        *by_session.entry(session).or_insert(0) += 1;
    }
    let rates: Vec<f64> = sessions
        .iter()
        .filter_map(|s| {
            let minutes = s.seconds().filter(|t| *t >= 20.0)? / 60.0;
            let n = by_session.get(&s.id()).copied().unwrap_or(0);
            #[allow(clippy::cast_precision_loss)]
            (n > 0).then(|| n as f64 / minutes)
        })
        .collect();
    median(&rates, Unit::PerMinute)
}

/// Joining by three-hour stretches of the local day.
fn times(case: &Case<'_>, begun: &[Session<'_>]) -> Vec<TimeOfDay> {
    let mut stretches: BTreeMap<u8, (usize, usize)> = BTreeMap::new();
    for s in begun {
        let stretch = stretches.entry(s.start.at().hour(case.zone()) / 3 * 3).or_insert((0, 0));
        stretch.0 += usize::from(s.joined());
        stretch.1 += 1;
    }
    let mut times: Vec<TimeOfDay> = stretches
        .into_iter()
        .filter(|(_, (_, n))| *n >= 4)
        .map(|(hour, (k, n))| TimeOfDay { from: hour, to: hour + 3, joining: Estimate::share(k, n) })
        .collect();
    // Rank by the lower end: a lucky few sessions should not win.
    times.sort_by(|a, b| b.joining.low.unwrap_or(0.0).total_cmp(&a.joining.low.unwrap_or(0.0)));
    times
}
