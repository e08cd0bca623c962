//! The plan for the next session: which words, how many showings, how long, when. From this animal's own sessions
//! where there are enough of them, else from common practice, and it says which.

use crate::advice::{Caution, NamedWord};
use crate::case::Case;
use crate::estimate::{Estimate, LEVEL, TOO_EARLY, Unit, median};
use crate::hint::Hint;
use crate::observe::{Answered, showings};
use crate::stages::standings;
use crate::steps::WordStep;
use sayso_methods::learning::latency::{Wait, kaplan_meier};
use sayso_methods::learning::stage::StageRule;
use sayso_methods::stats::{Tail, TwoByTwo};
use sayso_model::{Moment, Session, SessionId, Stage, WordId};
use serde::Serialize;
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
/// Sessions a day without figures, and at most (common practice, no source: short ones, spread over the day).
const USUAL_A_DAY: usize = 2;
const MOST_A_DAY: usize = 3;

/// One word of the plan.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Planned {
    /// Which.
    pub word: NamedWord,
    /// Its stage.
    pub stage: Stage,
    /// Times to deliver it in the session, invitations included: each of them ends with showing it.
    pub showings: usize,
    /// Of those, times to offer it first and wait; none for a word that is only shown.
    pub invitations: usize,
    /// The one hint that matters now.
    pub hint: Option<Hint>,
    /// Showings today so far.
    pub today: usize,
    /// Showings so far, and how many come before inviting; none for a word that is past that.
    pub so_far: Option<SoFar>,
}

/// How far the showing of a word is.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
pub struct SoFar {
    /// Showings so far.
    pub shown: usize,
    /// Showings before it is invited.
    pub of: usize,
}

/// A time of day and how often the animal joined in it.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct TimeOfDay {
    /// First local hour.
    pub from: u8,
    /// Hour after the last.
    pub to: u8,
    /// Share of sessions joined.
    pub joining: Estimate,
    /// Whether it joined clearly more often than at all other times: only then is a session kept for it.
    pub clearly: bool,
}

/// Where a session's length comes from.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(tag = "from", rename_all = "snake_case")]
pub enum LengthFrom {
    /// Common practice: too few timed sessions in four weeks.
    FewSessions {
        /// How many.
        timed: usize,
    },
    /// Common practice: few of the timed sessions were left early.
    FewLeft {
        /// Timed sessions.
        timed: usize,
    },
    /// By this time a quarter of the timed sessions had been left (Kaplan & Meier 1958); end before that.
    QuarterLeft {
        /// Timed sessions.
        timed: usize,
        /// By so many minutes.
        minutes: f64,
    },
}

/// The next session.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Plan {
    /// What to show, least shown first.
    pub words: Vec<Planned>,
    /// How long, in minutes.
    pub minutes: f64,
    /// Where the length comes from.
    pub minutes_from: LengthFrom,
    /// The word to end with, if the board has one that is taught.
    pub closing: Option<NamedWord>,
    /// Showings a minute.
    pub pace: Estimate,
    /// What to watch out for.
    pub cautions: Vec<Caution>,
    /// Times of day with at least some sessions, best joining first.
    pub times: Vec<TimeOfDay>,
    /// Sessions of a usual day.
    pub a_day: usize,
}

/// The most invitations of a word among its showings (common practice: once or twice; no source).
const MOST_INVITATIONS: usize = 2;

/// The next session's plan, as the steps have it; none where no word is to be shown.
#[must_use]
pub fn plan(case: &Case<'_>, steps: &[WordStep]) -> Option<Plan> {
    let (zone, now, from) = (case.zone(), case.now(), case.since(RECENT_DAYS));
    let shown: Vec<Answered<'_>> = showings(case.recent(from), None);
    let mut today: BTreeMap<WordId, usize> = BTreeMap::new();
    for a in shown.iter().rev().take_while(|a| a.press.at().day(zone) == now.day(zone)) {
        *today.entry(a.press.part.word).or_insert(0) += 1;
    }
    let so_far: BTreeMap<WordId, (usize, usize)> =
        standings(case).iter().map(|s| (s.word, (s.showings_week, s.showings))).collect();
    let mut words: Vec<&WordStep> = steps.iter().filter(|s| s.shown()).collect();
    words.sort_by_key(|s| (today.get(&s.word.word).copied().unwrap_or(0), so_far.get(&s.word.word).copied()));
    words.truncate(MOST_WORDS);
    if words.is_empty() {
        return None;
    }
    let begun = case.sessions_since(from);
    let recent: Vec<&Session<'_>> = begun.iter().filter(|s| s.joined()).collect();
    let (minutes, minutes_from) = length(&recent);
    let pace = pace(&recent, &shown);
    let aim = (minutes * pace.value.unwrap_or(USUAL_PACE)).round().max(1.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, clippy::cast_precision_loss)]
    let each = ((aim / words.len() as f64).round() as usize).max(1);
    Some(Plan {
        words: words
            .into_iter()
            .map(|s| Planned {
                word: s.word.clone(),
                stage: s.stage,
                showings: each,
                // The last is always a plain showing, where there is more than one.
                invitations: if s.advice.act.invites() { (each - 1).clamp(1, MOST_INVITATIONS) } else { 0 },
                hint: s.hint.clone(),
                today: today.get(&s.word.word).copied().unwrap_or(0),
                so_far: shown_so_far(case, s),
            })
            .collect(),
        closing: steps.iter().find(|s| s.closing && s.stage != Stage::Prepare).map(|s| s.word.clone()),
        minutes,
        minutes_from,
        pace,
        cautions: vec![Caution::ComesAndGoes, Caution::Battery],
        times: times(case, from),
        a_day: usual_a_day(case),
    })
}

/// Sessions of a usual day: the middle of the days with any over four weeks, between one and three; two without enough
/// of them.
fn usual_a_day(case: &Case<'_>) -> usize {
    let today = case.now().day(case.zone());
    let mut days: BTreeMap<_, usize> = BTreeMap::new();
    for session in case.sessions_since(case.since(RECENT_DAYS)) {
        // Today is not over yet.
        let day = session.start.at().day(case.zone());
        *days.entry(day).or_default() += usize::from(day != today);
    }
    let mut counts: Vec<usize> = days.into_values().filter(|n| *n > 0).collect();
    counts.sort_unstable();
    match counts.get(counts.len() / 2) {
        Some(middle) if counts.iter().sum::<usize>() >= ENOUGH => (*middle).clamp(1, MOST_A_DAY),
        _ => USUAL_A_DAY,
    }
}

/// Ends before the animal usually wants to go: the time by which a quarter of sessions had been left, by
/// Kaplan-Meier with sessions that ended otherwise as censored.
fn length(sessions: &[&Session<'_>]) -> (f64, LengthFrom) {
    let waits: Vec<Wait> = sessions
        .iter()
        .filter_map(|s| {
            let left = s.leavings.first().map(|l| l.at().seconds_since(s.start.at()).max(0.0));
            left.map(Wait::ended).or_else(|| s.seconds().map(Wait::open))
        })
        .collect();
    let timed = waits.len();
    let curve = kaplan_meier(&waits, LEVEL).ok().filter(|_| timed >= ENOUGH);
    let Some(curve) = curve else { return (USUAL_MINUTES, LengthFrom::FewSessions { timed }) };
    match curve.points.iter().find(|p| p.survival <= 0.75) {
        Some(point) => {
            let minutes = point.time / 60.0;
            let length = ((minutes * 2.0).floor() / 2.0).clamp(SHORTEST, LONGEST);
            (length, LengthFrom::QuarterLeft { timed, minutes })
        }
        None => (USUAL_MINUTES, LengthFrom::FewLeft { timed }),
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
fn times(case: &Case<'_>, from: Moment) -> Vec<TimeOfDay> {
    let mut stretches: BTreeMap<u8, (usize, usize)> = BTreeMap::new();
    for s in case.sessions_over_since(from) {
        let stretch = stretches.entry(s.start.at().hour(case.zone()) / 3 * 3).or_insert((0, 0));
        stretch.0 += usize::from(s.joined());
        stretch.1 += 1;
    }
    ranked(&stretches)
}

/// How sure it must be that a stretch is better than the rest before a session is kept for it, over all stretches.
const SURE_BETTER: f64 = 0.05;

/// Stretches of the day, of each the sessions joined and begun, best first.
fn ranked(stretches: &BTreeMap<u8, (usize, usize)>) -> Vec<TimeOfDay> {
    let enough = || stretches.iter().filter(|(_, (_, n))| *n >= TOO_EARLY);
    let all = stretches.values().fold((0, 0), |(k, n), (joined, begun)| (k + joined, n + begun));
    #[allow(clippy::cast_precision_loss)]
    let each = SURE_BETTER / enough().count().max(1) as f64; // the best of many looks good by luck alone (Bonferroni)
    let clearly = |k: usize, n: usize| {
        let (other, begun) = (all.0 - k, all.1 - n);
        let table = TwoByTwo([[k, n - k], [other, begun - other]].map(|row| row.map(|count| count as u64)));
        table.fisher(Tail::Greater).is_ok_and(|test| test.p <= each)
    };
    let mut times: Vec<TimeOfDay> = enough()
        .map(|(&from, &(k, n))| TimeOfDay {
            from,
            to: from + 3,
            joining: Estimate::share(k, n),
            clearly: clearly(k, n),
        })
        .collect();
    // Rank by the lower end: a lucky few sessions should not win.
    times.sort_by(|a, b| b.joining.low.unwrap_or(0.0).total_cmp(&a.joining.low.unwrap_or(0.0)));
    times
}

/// How far showing is on the way to the first invitation.
fn shown_so_far(case: &Case<'_>, step: &WordStep) -> Option<SoFar> {
    let (shown, of) = (case.totals().of(step.word.word).shown.len(), StageRule::default().min_showings as usize);
    (step.stage == Stage::Show && shown < of && !step.closing).then_some(SoFar { shown, of })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_sim::Chance;

    /// Sessions over four weeks at five times of day, joined with the chance that `of` gives for the hour.
    fn month(chance: &mut Chance, of: impl Fn(u8) -> f64) -> BTreeMap<u8, (usize, usize)> {
        let mut all = BTreeMap::new();
        for session in 0..56_u8 {
            let hour = 6 + 3 * (session % 5);
            let joined = chance.coin(of(hour));
            let stretch = all.entry(hour).or_insert((0, 0));
            *stretch = (stretch.0 + usize::from(joined), stretch.1 + 1);
        }
        all
    }

    fn kept(of: impl Fn(u8) -> f64 + Copy) -> usize {
        let mut chance = Chance::new(6, 0);
        (0..2_000).filter(|_| ranked(&month(&mut chance, of)).iter().any(|t| t.clearly)).count()
    }

    #[test]
    fn who_joins_at_any_hour_alike_is_seldom_kept_waiting_for_one() {
        for share in [0.3, 0.5, 0.77, 0.95] {
            let kept = kept(|_| share);
            assert!(kept <= 100, "{kept} of 2,000 who join {share} of sessions at every hour");
        }
    }

    #[test]
    fn who_joins_in_the_evening_alone_is_kept_waiting_for_it() {
        let kept = kept(|hour| if hour == 18 { 0.95 } else { 0.3 });
        assert!(kept > 1_800, "{kept} of 2,000");
    }

    #[test]
    fn no_hour_is_clearly_better_than_none() {
        let only = BTreeMap::from([(18, (20, 20))]);
        assert!(!ranked(&only)[0].clearly);
        let few = BTreeMap::from([(9, (0, 20)), (18, (4, 4))]);
        assert_eq!(ranked(&few).len(), 1, "four sessions are too few");
        assert!(!ranked(&few)[0].clearly);
    }
}
