//! Looks at sudden changes: joining, presses a day, time to press, lately against the weeks before.
//!
//! Only what is worse can be a need, so tests are one-sided. Each look tries the latest 4, 7 and 14 days, keeps the stretch that stands out most and multiplies its p-value by the
//! stretches tried (Bonferroni); across looks and animals the false discovery rate is held ([`super::bar`]). Counts that
//! hang together, by bursts or by good and bad days, weigh less: [`sayso_methods::stats::Clumping`] for presses; for joining
//! the variance of runs of three days over that of single sessions (quasi-binomial: Wedderburn 1974, from memory).

use super::line::{Logging, Look, Measure, SoFar, tidied, tidy};
use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::latency::waiting;
use crate::observe::{Usable, meant};
use crate::rate::rate;
use sayso_methods::learning::rank_sum::rank_sum;
use sayso_methods::stats::{Clumping, Count, Tail, TwoByTwo, clumped_p};
use sayso_model::{Body, Day, Event, Moment, PressedBy, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Lengths of the latest stretches tried, in days.
const STRETCHES: [i32; 3] = [4, 7, 14];
/// Days that the latest stretch is held against, before it.
const BEFORE: i32 = 42;
/// Days whose sessions hang together.
const RUN: i32 = 3;
/// Fewest lately, and before: sessions, watched days, invitations.
const SESSIONS: (usize, usize) = (4, 10);
const WATCHED: (usize, usize) = (3, 10);
const INVITED: (usize, usize) = (6, 12);
/// Fewest own presses in all.
const PRESSES: usize = 15;
/// Most invitations before that are ranked: the latest.
const RANKED: usize = 60;

/// Every look that the records allow.
pub(crate) fn looks(case: &Case<'_>, logging: &Logging) -> Vec<Look> {
    let joining = logging.whole().then(|| joining(case)).flatten();
    [joining, presses(case), latency(case)].into_iter().flatten().collect()
}

/// The stretches, from the first day of each.
fn stretches(case: &Case<'_>) -> impl Iterator<Item = Day> + use<> {
    let today = case.now().day(case.zone());
    STRETCHES.into_iter().map(move |days| today.plus(1 - days))
}

/// The stretch that stands out most, allowing for all that were tried.
fn most(measure: Measure, tried: Vec<(Day, Estimate, Estimate, f64)>) -> Option<Look> {
    let many = tried.len() as f64;
    let (since, lately, before, p) = tried.into_iter().min_by(|a, b| a.3.total_cmp(&b.3).then(a.0.cmp(&b.0)))?;
    let p = tidy((p * many).min(1.0));
    Some(Look { measure, since, lately: tidied(lately), before: tidied(before), p })
}

/// The one-sided half of a two-sided p-value: towards the worse, or away from it.
fn towards(worse: bool, two_sided: f64) -> f64 {
    if worse { 0.5 * two_sided } else { 1.0 - 0.5 * two_sided }
}

/// Sessions of which it is known whether it joined, by day. One without joining or end may have been put away with the phone.
pub(crate) fn sessions(case: &Case<'_>) -> impl Iterator<Item = (Day, bool)> {
    let told = case.sessions().iter().filter(|s| s.joined() || s.end.is_some());
    told.map(|s| (s.start.at().day(case.zone()), s.joined()))
}

fn tally(all: &[(Day, bool)], from: Day, upto: Day) -> (usize, usize) {
    let inside = all.iter().filter(|(day, _)| *day >= from && *day < upto);
    inside.fold((0, 0), |(joined, n), (_, j)| (joined + usize::from(*j), n + 1))
}

/// Times as much as single sessions would that joining varies between runs of days, at least 1.
pub(crate) fn joining_varies(all: &[(Day, bool)], from: Day, upto: Day) -> f64 {
    let (joined, n) = tally(all, from, upto);
    let share = (joined as f64 + 0.5) / (n as f64 + 1.0);
    let (mut runs, mut squares, mut at) = (0.0, 0.0, from);
    while at < upto {
        let (k, m) = tally(all, at, at.plus(RUN).min(upto));
        if m > 0 {
            runs += 1.0;
            squares += (k as f64 - m as f64 * share).powi(2) / (m as f64 * share * (1.0 - share));
        }
        at = at.plus(RUN);
    }
    if runs < 4.0 { 1.5 } else { (squares / (runs - 1.0)).max(1.0) }
}

/// p-value that two shares are the same, each session standing for less the more they hang together.
pub(crate) fn shares_differ(lately: (usize, usize), before: (usize, usize), varies: f64, tail: Tail) -> f64 {
    let less = |k: usize| (k as f64 / varies).round() as u64;
    let row = |(k, n): (usize, usize)| [less(k), less(n - k)];
    TwoByTwo([row(lately), row(before)]).fisher(tail).map_or(1.0, |t| t.p)
}

fn joining(case: &Case<'_>) -> Option<Look> {
    let all: Vec<(Day, bool)> = sessions(case).collect();
    let tomorrow = case.now().day(case.zone()).plus(1);
    let tried = stretches(case).filter_map(|since| {
        let (lately, before) = (tally(&all, since, tomorrow), tally(&all, since.plus(-BEFORE), since));
        if lately.1 < SESSIONS.0 || before.1 < SESSIONS.1 {
            return None;
        }
        let p = shares_differ(lately, before, joining_varies(&all, since.plus(-BEFORE), since), Tail::Less);
        Some((since, Estimate::share_any_time(lately.0, lately.1), Estimate::share_any_time(before.0, before.1), p))
    });
    most(Measure::Joining, tried.collect())
}

/// Whether a record shows that somebody watched, whatever the animal pressed: not its own presses, nor what follows them.
fn shows_watching(event: &Event) -> bool {
    match &event.body {
        Body::Press(p) => p.by == PressedBy::Person,
        Body::SessionStart(_)
        | Body::Invitation(_)
        | Body::Catch(_)
        | Body::Look(_)
        | Body::Brush(_)
        | Body::Sign(_)
        | Body::LikeTrial(_)
        | Body::ProbeTrial(_) => true,
        _ => false,
    }
}

/// Days on which somebody watched, and when the animal pressed on them.
pub(crate) struct Watched {
    /// The days, today left out: it is not over.
    pub(crate) days: BTreeSet<Day>,
    /// Own presses on them that were not likely accidents, by time.
    pub(crate) presses: Vec<Moment>,
}

pub(crate) fn watched(case: &Case<'_>, from: Moment) -> Watched {
    watched_of(case, (from, case.now()), |_| true)
}

/// The same up to a moment, which is included, with presses of some words only.
pub(crate) fn watched_of(case: &Case<'_>, (from, to): (Moment, Moment), of: impl Fn(WordId) -> bool) -> Watched {
    let (zone, today) = (case.zone(), case.now().day(case.zone()));
    let seen = super::logging::records_between(case, from, to).filter(|e| shows_watching(e));
    let days: BTreeSet<Day> = seen.map(|e| e.happened_at.day(zone)).filter(|day| *day < today).collect();
    let own = case
        .presses_between(from, to)
        .filter(|p| meant(p.part) && of(p.part.word))
        .map(|p| p.at())
        .filter(|at| days.contains(&at.day(zone)));
    Watched { presses: own.collect(), days }
}

/// How much presses come in bursts, over watched days put side by side.
pub(crate) fn bursts(case: &Case<'_>, watched: &Watched) -> Clumping {
    let zone = case.zone();
    let place: BTreeMap<Day, usize> = watched.days.iter().enumerate().map(|(i, day)| (*day, i)).collect();
    let times = watched.presses.iter().filter_map(|at| {
        let day = at.day(zone);
        let inside = (at.seconds_since(day.start(zone)) / 86_400.0).clamp(0.0, 0.999);
        place.get(&day).map(|i| *i as f64 + inside)
    });
    Clumping::of_times(&times.collect::<Vec<_>>(), watched.days.len() as f64).unwrap_or(Clumping::NONE)
}

fn presses(case: &Case<'_>) -> Option<Look> {
    let zone = case.zone();
    let all = watched(case, case.since(BEFORE + STRETCHES[STRETCHES.len() - 1]));
    if all.presses.len() < PRESSES {
        return None;
    }
    let clumping = bursts(case, &all);
    let pressed: Vec<Day> = all.presses.iter().map(|at| at.day(zone)).collect();
    let tried = stretches(case).filter_map(|since| {
        let (days, days_before) = (all.days.range(since..).count(), all.days.range(..since).count());
        if days < WATCHED.0 || days_before < WATCHED.1 {
            return None;
        }
        let recent = pressed.iter().filter(|day| **day >= since).count();
        let lately = Count::new(recent as u64, days as f64).ok()?;
        let before = Count::new((pressed.len() - recent) as u64, days_before as f64).ok()?;
        let p = towards(lately.rate() < before.rate(), clumped_p(lately, before, clumping).ok()?);
        Some((since, rate(lately, clumping, Unit::PerDay), rate(before, clumping, Unit::PerDay), p))
    });
    most(Measure::Presses, tried.collect())
}

/// Each word's waits are ranked among themselves, so that a new word among the invited is no change.
fn latency(case: &Case<'_>) -> Option<Look> {
    let zone = case.zone();
    let tried = stretches(case).filter_map(|since| {
        let (mut lately, mut before): (Vec<f64>, Vec<f64>) = (Vec::new(), Vec::new());
        let (mut late, mut earlier): (Vec<Usable<'_>>, Vec<Usable<'_>>) = (Vec::new(), Vec::new());
        for (_, asked) in case.all_invitations() {
            let day = |u: &&Usable<'_>| u.invitation.at().day(zone);
            let recent: Vec<&Usable<'_>> = asked.usable.iter().filter(|u| day(u) >= since).collect();
            let old = asked.usable.iter().filter(|u| day(u) < since && day(u) >= since.plus(-BEFORE));
            let old: Vec<&Usable<'_>> = old.rev().take(RANKED).collect();
            if recent.is_empty() || old.len() < INVITED.1 / 4 {
                continue;
            }
            let all: Vec<f64> = recent.iter().chain(&old).map(|u| waited(u)).collect();
            let place = |u: &&Usable<'_>| {
                let own = waited(u);
                let (less, same) = all.iter().fold((0.0, 0.0), |(less, same), x| {
                    (less + f64::from(u8::from(*x < own)), same + f64::from(u8::from((*x - own).abs() < 1e-9)))
                });
                (less + 0.5 * same) / all.len() as f64
            };
            lately.extend(recent.iter().map(place));
            before.extend(old.iter().map(place));
            late.extend(recent.iter().map(|u| **u));
            earlier.extend(old.iter().map(|u| **u));
        }
        if lately.len() < INVITED.0 || before.len() < INVITED.1 {
            return None;
        }
        before.truncate(2 * RANKED);
        let p = rank_sum(&before, &lately).map_or(1.0, |t| towards(t.larger > t.smaller, t.p_two_sided));
        let middle = |all: &[Usable<'_>]| waiting(all).unwrap_or(Estimate::unknown(Unit::Seconds));
        Some((since, middle(&late), middle(&earlier), p))
    });
    most(Measure::Latency, tried.collect())
}

/// Seconds to the press; beyond every wait where there was none.
fn waited(u: &Usable<'_>) -> f64 {
    if u.pressed { u.seconds } else { 1e6 }
}

/// Counts from the first record on.
pub(crate) fn so_far(case: &Case<'_>) -> SoFar {
    let all: Vec<(Day, bool)> = sessions(case).collect();
    let tomorrow = case.now().day(case.zone()).plus(1);
    let watched = watched(case, Moment::clamped(i64::MIN));
    SoFar {
        watched: watched.days.len(),
        presses: watched.presses.len(),
        sessions: all.len(),
        joined: all.iter().filter(|s| s.1).count(),
        presses_vary: tidy(bursts(case, &watched).factor()),
        joining_varies: tidy(joining_varies(&all, tomorrow.plus(-BEFORE), tomorrow)),
    }
}

/// The words whose invitations were pressed at with another word's button, beyond how often that is pressed elsewhere:
/// p-value for a pair, of presses at invitations.
pub(crate) fn taken_for(case: &Case<'_>, word: WordId, other: WordId) -> (usize, usize, f64) {
    let mut table = [[0u64; 2]; 2];
    for press in case.invited_presses() {
        let invited = press.invitation.part.word;
        if invited == other {
            continue;
        }
        table[usize::from(invited != word)][usize::from(press.word != other)] += 1;
    }
    let [[taken, not], _] = table;
    let p = TwoByTwo(table).fisher(Tail::Greater).map_or(1.0, |t| t.p);
    (usize::try_from(taken).unwrap_or(0), usize::try_from(taken + not).unwrap_or(0), p)
}
