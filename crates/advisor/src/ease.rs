//! How much at ease the animal is with its sessions: by hour of the day, and lately against before.
//!
//! Points of unease a session, ours (common practice puts these signs together; no source for the numbers): not joined 2;
//! joined: left before the end 1, came later than twice its middle time 1; a mild sign 1, a strong one 2; at most 3.

use crate::case::Case;
use crate::estimate::{Unit, median};
use sayso_methods::stats::highest_stretch;
use sayso_model::{Day, Moment, PressedBy, Session, SessionId, Sign, SignLevel, Then};
use std::collections::BTreeMap;

/// Lengths of the stretches of the day looked at, in hours.
const HOURS: [u8; 5] = [1, 2, 3, 4, 6];
/// Fewest sessions inside a stretch of the day, and outside.
const SESSIONS: usize = 5;
/// Lengths of the latest days looked at.
const LATELY: std::ops::RangeInclusive<usize> = 4..=14;
/// Fewest days before those.
const BEFORE: usize = 10;
/// Moods last some days: days are rearranged in runs of this many.
const RUN: usize = 3;
/// Weight of presses and of taking beside unease: both also change for other reasons.
const OTHERS: f64 = 0.5;
/// Any number: the same story gives the same figures.
const SEED: u64 = 20_260;

/// The stretch of the day with the most unease.
pub(crate) struct WorstHours {
    /// From the first local hour to the last, the last excluded.
    pub(crate) hours: (u8, u8),
    /// Joined and not, in these hours.
    pub(crate) here: [u64; 2],
    /// Joined and not, at others.
    pub(crate) elsewhere: [u64; 2],
    /// Points of unease a session more than at others.
    pub(crate) higher_by: f64,
    /// Corrected for picking the hours.
    pub(crate) p: f64,
}

/// The latest days against those before.
pub(crate) struct LateFall {
    /// How many days.
    pub(crate) days: usize,
    /// Joined and not, in these days.
    pub(crate) lately: [u64; 2],
    /// Joined and not, before.
    pub(crate) before: [u64; 2],
    /// Corrected for picking the day.
    pub(crate) p: f64,
}

/// A session as seen here.
struct Seen {
    hour: u8,
    day: Day,
    joined: bool,
    unease: f64,
}

fn sessions(case: &Case<'_>, from: Moment) -> Vec<Seen> {
    let zone = case.zone();
    let all: Vec<&Session<'_>> = case.sessions_over_since(from).collect();
    let mut signs: BTreeMap<SessionId, f64> = BTreeMap::new();
    for sign in case.story().of::<Sign>(case.animal()).take_while(|s| s.at() <= case.now()) {
        let points = match sign.part.level {
            SignLevel::Joining => 0.0,
            SignLevel::Mild => 1.0,
            SignLevel::Strong => 2.0,
        };
        if let Some(session) = sign.part.session {
            let most = signs.entry(session).or_insert(0.0);
            *most = most.max(points);
        }
    }
    let came = |s: &Session<'_>| s.joinings.first().and_then(|j| j.part.after_s).map(|s| s.get());
    let usual = median(&all.iter().copied().filter_map(came).collect::<Vec<_>>(), Unit::Seconds).value;
    let unease = |s: &Session<'_>| {
        let late = came(s).zip(usual).is_some_and(|(came, usual)| came > 2.0 * usual);
        let own = if s.joined() { f64::from(u8::from(s.left())) + f64::from(u8::from(late)) } else { 2.0 };
        (own + signs.get(&s.id()).copied().unwrap_or(0.0)).min(3.0)
    };
    all.iter()
        .map(|s| Seen {
            hour: s.start.at().hour(zone),
            day: s.start.at().day(zone),
            joined: s.joined(),
            unease: unease(s),
        })
        .collect()
}

fn joined<'a>(sessions: impl Iterator<Item = &'a Seen>) -> [u64; 2] {
    sessions.fold([0, 0], |[yes, no], s| if s.joined { [yes + 1, no] } else { [yes, no + 1] })
}

/// The hours with the most unease in `from..=now`; none with too few sessions at different hours.
pub(crate) fn worst_hours(case: &Case<'_>, from: Moment) -> Option<WorstHours> {
    let all = sessions(case, from);
    let mut hours = Vec::new();
    let mut stretches: Vec<Vec<usize>> = Vec::new();
    for length in HOURS {
        for first in 0..=24 - length {
            let inside: Vec<usize> =
                (0..all.len()).filter(|i| (first..first + length).contains(&all[*i].hour)).collect();
            let enough = inside.len() >= SESSIONS && all.len() - inside.len() >= SESSIONS;
            // The shortest of those that hold the same sessions.
            if enough && !stretches.contains(&inside) {
                hours.push((first, first + length));
                stretches.push(inside);
            }
        }
    }
    let values: Vec<f64> = all.iter().map(|s| s.unease).collect();
    let found = case.sums().hours(case.animal(), (values, stretches), |(values, stretches)| {
        highest_stretch(values, stretches, 1, SEED).ok()
    })?;
    let hours = hours[found.at];
    let here = |s: &&Seen| (hours.0..hours.1).contains(&s.hour);
    Some(WorstHours {
        hours,
        here: joined(all.iter().filter(here)),
        elsewhere: joined(all.iter().filter(|s| !here(s))),
        higher_by: found.higher_by,
        p: found.p,
    })
}

/// How far each day's sum lies above what its number would give, in standard deviations of one; 0 for a day without any.
/// `cells`: sum, sum of squares and number a day.
fn above(cells: &[[f64; 3]]) -> Vec<f64> {
    let [sum, squares, n] = cells.iter().fold([0.0; 3], |all, c| [all[0] + c[0], all[1] + c[1], all[2] + c[2]]);
    let mean = sum / n.max(1.0);
    let spread = (squares / n.max(1.0) - mean * mean).max(0.0).sqrt();
    cells.iter().map(|[sum, _, n]| if spread > 0.0 { (sum - n * mean) / spread } else { 0.0 }).collect()
}

fn note(cell: &mut [f64; 3], value: f64) {
    *cell = [cell[0] + value, cell[1] + value * value, cell[2] + 1.0];
}

/// The latest days in which unease rose, and own presses and taking fell, most against the days before.
pub(crate) fn late_fall(case: &Case<'_>, from: Moment) -> Option<LateFall> {
    let (zone, now) = (case.zone(), case.now());
    let seen = sessions(case, from);
    let inside = case.recent(from);
    let first = inside
        .first()
        .map(|a| a.press.at())
        .into_iter()
        .map(|at| at.day(zone))
        .chain(seen.first().map(|s| s.day))
        .min()?;
    let length = usize::try_from(now.day(zone).days_since(first) + 1).ok()?;
    let of = |day: Day| usize::try_from(day.days_since(first)).ok().filter(|i| *i < length);
    let (mut unease, mut presses, mut left) = (vec![[0.0; 3]; length], vec![0.0_f64; length], vec![[0.0; 3]; length]);
    for s in &seen {
        if let Some(i) = of(s.day) {
            note(&mut unease[i], s.unease);
        }
    }
    for a in inside {
        let Some(i) = of(a.press.at().day(zone)) else { continue };
        presses[i] += f64::from(u8::from(a.press.part.by == PressedBy::Animal));
        if let Some(then) = a.delivery.filter(|_| a.given()).and_then(|d| d.part.then) {
            note(&mut left[i], f64::from(u8::from(then != Then::Took)));
        }
    }
    // Each session counts; the things of one day, taken or left, belong together and count as one. Roots even out counts.
    let fewer: Vec<[f64; 3]> = presses.iter().map(|n| [-n.sqrt(), *n, 1.0]).collect();
    let (uneasy, fewer) = (above(&unease), above(&fewer));
    let untaken: Vec<f64> = above(&left).iter().zip(&left).map(|(a, c)| a / c[2].max(1.0).sqrt()).collect();
    let values: Vec<f64> = (0..length).map(|i| uneasy[i] + OTHERS * (fewer[i] + untaken[i])).collect();
    let lengths: Vec<usize> = LATELY.filter(|days| length >= days + BEFORE).collect();
    let stretches: Vec<Vec<usize>> = lengths.iter().map(|days| (length - days..length).collect()).collect();
    let found = highest_stretch(&values, &stretches, RUN, SEED).ok()?;
    let days = lengths[found.at];
    let late = |s: &&Seen| of(s.day).is_some_and(|i| i >= length - days);
    Some(LateFall {
        days,
        lately: joined(seen.iter().filter(late)),
        before: joined(seen.iter().filter(|s| !late(s))),
        p: found.p,
    })
}
