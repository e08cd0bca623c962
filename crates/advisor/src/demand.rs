//! Demand: how a household's answers and an animal's presses go together. Change points of pressing, bursts, what the
//! next press does after each kind of answer, what is asked for without a button, and the words that could close gaps.

use crate::advice::NamedWord;
use crate::case::Case;
use crate::estimate::{Estimate, Unit};
use crate::observe::{Answered, by_day, own_presses};
use crate::rate::{clumping, rate};
use crate::stages::{Standing, standings};
use sayso_methods::demand::answers::{AfterAnswer, Answer as Given, AnsweredPress, PIECES, after_answers};
use sayso_methods::demand::bursts::{BurstSettings, bursts};
use sayso_methods::demand::change::{change_points_with_exposure, clumped_penalty};
use sayso_methods::demand::gaps::gaps;
use sayso_methods::stats::{Clumping, Count, Proportion, StatsError};
use sayso_methods::words::{Gap, NextWordRules, NextWords, OnBoard, next_words};
use sayso_model::{Answer, Catch, Day, EndReason, Fact, Moment, Session, SessionId, Sign, SignLevel, Stage, WordId};
use std::collections::{BTreeMap, BTreeSet};

/// Longest time watched after an answer, in seconds: the end of the last piece of the hazard.
const WATCHED_S: f64 = PIECES[PIECES.len() - 1];
/// A month at which demand is looked.
const RECENT_DAYS: i32 = 28;

/// A stretch of days with one rate of pressing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Stretch {
    /// Its first day.
    pub first: Day,
    /// Its last day.
    pub last: Day,
    /// Own presses a day.
    pub rate: Estimate,
}

/// A burst: presses following each other faster than usual.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Burst {
    /// First press.
    pub from: Moment,
    /// Last press.
    pub to: Moment,
    /// Presses in it.
    pub presses: usize,
    /// How far above the usual pace: each level doubles it.
    pub level: u32,
}

/// What followed one kind of answer.
#[derive(Clone, PartialEq, Debug)]
pub struct After {
    /// The answer.
    pub answer: Given,
    /// Share pressed again within the time watched.
    pub again: Estimate,
    /// How many times as fast the next press comes as after "given" (below 1: later), if it can be said.
    pub against_given: Option<Estimate>,
}

/// A request made without a button.
#[derive(Clone, PartialEq, Debug)]
pub struct Unvoiced {
    /// The word it asked for.
    pub word: WordId,
    /// What it says.
    pub says: String,
    /// Requests a week without the button.
    pub per_week: Estimate,
}

/// Demand of one animal.
#[derive(Clone, PartialEq, Debug)]
pub struct Demand {
    /// Stretches of steady pressing, oldest first.
    pub stretches: Vec<Stretch>,
    /// Bursts of the last four weeks, newest first.
    pub bursts: Vec<Burst>,
    /// What followed each kind of answer.
    pub after: Vec<After>,
    /// Requests without a button, most first.
    pub unvoiced: Vec<Unvoiced>,
    /// Words worth adding, with their figures, and whether to wait; or why that cannot be worked out.
    pub next: Result<NextWords, StatsError>,
}

/// Demand over the last `days` household days up to `now`.
#[must_use]
pub fn demand(case: &Case<'_>, days: u16) -> Demand {
    let from = case.since(i32::from(days.max(1)));
    let all = case.answered_since(from);
    let own = own_presses(&all, None);
    Demand {
        stretches: stretches(case, &own),
        bursts: recent_bursts(case, &own),
        after: after(&own),
        unvoiced: unvoiced(case, from),
        next: next(case, &own),
    }
}

fn stretches(case: &Case<'_>, own: &[Answered<'_>]) -> Vec<Stretch> {
    let (zone, now) = (case.zone(), case.now());
    let counts = by_day(own.iter().map(|a| a.press.at()), zone);
    let (Some(first), today) = (counts.keys().next().copied(), now.day(zone)) else { return Vec::new() };
    let length = usize::try_from(today.days_since(first) + 1).unwrap_or(0);
    let day = |i: usize| first.plus(i32::try_from(i).unwrap_or(0));
    let by: Vec<u64> = (0..length).map(|i| counts.get(&day(i)).copied().unwrap_or(0) as u64).collect();
    // Today counts for the part of it that is over; days of 23 and 25 hours as what they are.
    let exposure: Vec<f64> = (0..length)
        .map(|i| (now.seconds_since(day(i).start(zone)) / 86_400.0).min(day(i).hours(zone) / 24.0).max(1e-3))
        .collect();
    let bursts = clumping(own.iter().map(|a| a.press.at()), first.start(zone), now, zone);
    let penalty = clumped_penalty(length, bursts);
    let Ok(found) = change_points_with_exposure(&by, &exposure, penalty) else { return Vec::new() };
    found
        .segments
        .iter()
        .filter_map(|s| {
            Some(Stretch {
                first: day(s.start),
                last: day(s.end.saturating_sub(1)),
                rate: rate(s.count?, bursts, Unit::PerDay),
            })
        })
        .collect()
}

fn recent_bursts(case: &Case<'_>, own: &[Answered<'_>]) -> Vec<Burst> {
    let from = case.since(RECENT_DAYS);
    let recent: Vec<Moment> = own.iter().map(|a| a.press.at()).filter(|at| *at >= from).collect();
    let Some(first) = recent.first().copied() else { return Vec::new() };
    let times: Vec<f64> = recent.iter().map(|at| at.seconds_since(first)).collect();
    let mut found: Vec<Burst> = bursts(&times, &BurstSettings::default())
        .unwrap_or_default()
        .iter()
        // Levels nest; the lowest that is clearly above the usual pace tells the story.
        .filter(|b| b.level >= 2 && b.presses() >= 4)
        .filter_map(|b| {
            Some(Burst { from: *recent.get(b.first)?, to: *recent.get(b.last)?, presses: b.presses(), level: b.level })
        })
        .collect();
    found.sort_by_key(|b| (std::cmp::Reverse(b.from), b.level));
    found.dedup_by_key(|b| b.from.millis() / 600_000);
    found
}

fn after(own: &[Answered<'_>]) -> Vec<After> {
    let presses: Vec<AnsweredPress> = own
        .iter()
        .enumerate()
        .map(|(i, a)| {
            let answer = match a.delivery.map(|d| d.part.answer) {
                Some(Answer::Given | Answer::Partly) => Given::Yes,
                Some(Answer::Declined) => Given::No,
                Some(Answer::Alternative) => Given::Alternative,
                Some(Answer::Missed) | None => Given::Missed,
            };
            let next = own.get(i + 1).map(|n| n.press.at().seconds_since(a.press.at()));
            let pressed_again = next.is_some_and(|s| s <= WATCHED_S);
            AnsweredPress { answer, seconds: next.unwrap_or(WATCHED_S).clamp(0.0, WATCHED_S), pressed_again }
        })
        .collect();
    after_answers(&presses, &PIECES)
        .unwrap_or_default()
        .into_iter()
        .filter(|a| a.n > 0)
        .map(|a: AfterAnswer| After {
            answer: a.answer,
            again: share(a.again),
            against_given: a
                .ratio_to_yes
                .map(|r| Estimate::with(r.ratio, r.interval, usize::try_from(r.n).unwrap_or(usize::MAX), Unit::Number)),
        })
        .collect()
}

fn share(p: Proportion) -> Estimate {
    Estimate::share(usize::try_from(p.k()).unwrap_or(0), usize::try_from(p.n()).unwrap_or(0))
}

fn unvoiced(case: &Case<'_>, from: Moment) -> Vec<Unvoiced> {
    let (zone, now) = (case.zone(), case.now());
    let catches: Vec<_> = case.story().between::<Catch>(case.animal(), from, now).collect();
    let Some(first) = catches.first().map(|c| c.at().day(zone)) else { return Vec::new() };
    let words: Vec<WordId> = catches.iter().map(|c| c.part.word).collect::<BTreeSet<_>>().into_iter().collect();
    let days = usize::try_from(now.day(zone).days_since(first) + 1).unwrap_or(0);
    let weeks = days.div_ceil(7).max(1);
    let mut counts = vec![vec![0_u64; weeks]; words.len()];
    for c in &catches {
        let week = usize::try_from(c.at().day(zone).days_since(first) / 7).unwrap_or(0).min(weeks - 1);
        if let Ok(word) = words.binary_search(&c.part.word) {
            counts[word][week] += 1;
        }
    }
    #[allow(clippy::cast_precision_loss)]
    let observed: Vec<f64> = (0..weeks).map(|w| (days - 7 * w).min(7) as f64).collect();
    let begin = first.start(zone);
    let bursts: Vec<Clumping> = words
        .iter()
        .map(|w| clumping(catches.iter().filter(|c| c.part.word == *w).map(Fact::at), begin, now, zone))
        .collect();
    let cards = case.story().words();
    gaps(&counts, &observed, &bursts)
        .unwrap_or_default()
        .into_iter()
        .filter_map(|g| {
            let word = *words.get(g.wish)?;
            let n = usize::try_from(g.count.events()).unwrap_or(usize::MAX);
            Some(Unvoiced {
                word,
                says: NamedWord::among(&cards, word).says,
                per_week: Estimate::with(g.count.rate(), g.interval, n, Unit::Number),
            })
        })
        .collect()
}

/// Words worth adding: rewards asked for without a button that have none yet, and a closing word once demand or arousal
/// is high.
fn next(case: &Case<'_>, own: &[Answered<'_>]) -> Result<NextWords, StatsError> {
    let (story, animal, zone, now) = (case.story(), case.animal(), case.zone(), case.now());
    let from = case.since(RECENT_DAYS);
    let (cards, all_words) = (case.words(), story.words());
    let days = f64::from(RECENT_DAYS);
    let mut asked: BTreeMap<String, Vec<Moment>> = BTreeMap::new();
    let known: BTreeMap<WordId, _> = cards.iter().map(|c| (c.word, *c)).collect();
    for c in story.between::<Catch>(animal, from, now) {
        let on_board = known.contains_key(&c.part.word);
        if let (false, Some(card)) = (on_board, all_words.get(&c.part.word)) {
            asked.entry(card.says.to_string()).or_default().push(c.at());
        }
    }
    let gaps: Vec<Gap> = asked
        .into_iter()
        .map(|(says, at)| Gap {
            says,
            asked: at.len() as u64,
            days,
            clumping: clumping(at.iter().copied(), from, now, zone),
        })
        .collect();
    let recent: Vec<&Session<'_>> = case.sessions_since(from).iter().filter(|s| s.joined()).collect();
    let stress = story.of::<Sign>(animal).filter(|s| s.at() <= now && s.part.level != SignLevel::Joining);
    let uneasy: BTreeSet<SessionId> = stress.filter_map(|s| s.part.session).collect();
    let strong = |s: &Session<'_>| s.end.is_some_and(|e| e.part.reason == EndReason::StrongSign);
    let stressed = recent.iter().filter(|s| strong(s) || uneasy.contains(&s.id())).count();
    // Hours in which somebody was there to note a press: a waking day of sixteen hours (from memory, no source).
    let presses: Vec<Moment> = own.iter().map(|a| a.press.at()).filter(|at| *at >= from).collect();
    let board = OnBoard {
        says: cards.iter().map(|c| c.says.to_string()).collect(),
        in_use: in_use(standings(case)),
        has_closing: cards.iter().any(|c| c.closing),
        presses: Count::new(presses.len() as u64, 16.0 * days)
            .ok()
            .map(|count| (count, clumping(presses, from, now, zone))),
        high_arousal: Proportion::new(stressed as u64, recent.len() as u64).ok(),
    };
    next_words(&gaps, &board, &NextWordRules { language: story.language_of_words(), ..NextWordRules::default() })
}

/// Words in conversation: those that count as in use.
fn in_use(standings: &[Standing]) -> usize {
    standings.iter().filter(|s| s.stage == Stage::Converse).count()
}
