//! What the last seven days hold, in facts with their counts. Changes only beyond chance, the rest without judgement: see
//! `docs/decisions/seven-days.md`.

use crate::advice::NamedWord;
use crate::case::Case;
use crate::checks::report;
use crate::estimate::TOO_EARLY;
use crate::observe::meant;
use crate::rate::clumping;
use crate::weeks::WEEK;
use sayso_methods::stats::{Count, clumped_p};
use sayso_model::{Day, Moment, ProbeId, Then, WordId};
use serde::Serialize;
use std::collections::BTreeSet;

/// Days a week is held against.
const BEFORE: i32 = 28;
/// p below which more presses are more than chance, shared among the words.
const BEYOND_CHANCE: f64 = 0.05;

/// A fact of the last seven days.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "lately", rename_all = "snake_case")]
pub enum Lately {
    /// The first press of its own accord of a word.
    FirstPress {
        /// The word.
        word: NamedWord,
        /// The day.
        day: Day,
    },
    /// More own presses of a word than in the four weeks before, beyond chance.
    MorePresses {
        /// The word.
        word: NamedWord,
        /// Own presses this week.
        now: usize,
        /// Own presses in the four weeks before.
        before: usize,
        /// Exact test of the two rates, bursts allowed for.
        p: f64,
    },
    /// A planned check carried out, in which these words were right beyond chance.
    CheckPassed {
        /// The words.
        words: Vec<NamedWord>,
        /// Right choices of them.
        right: usize,
        /// Of so many.
        of: usize,
    },
    /// Sessions it joined, many or few.
    Joined {
        /// How many.
        joined: usize,
        /// Of so many.
        of: usize,
    },
    /// What was given and taken, much or little.
    Taken {
        /// How many.
        taken: usize,
        /// Of so many, where that was noted.
        of: usize,
    },
}

/// Facts of the last seven household days, today included; what is new or has changed first.
#[must_use]
pub fn lately(case: &Case<'_>) -> Vec<Lately> {
    let first: Vec<Lately> = first_presses(case).collect();
    let is_new = |word: &NamedWord| first.iter().any(|g| matches!(g, Lately::FirstPress { word: w, .. } if w == word));
    let more = more_presses(case).filter(|(word, _)| !is_new(word)).map(|(_, fact)| fact);
    let mut found: Vec<Lately> = more.collect();
    found.splice(0..0, first);
    found.extend(checks_passed(case));
    found.extend(joined(case));
    found.extend(taken(case));
    found
}

fn first_presses<'a>(case: &'a Case<'_>) -> impl Iterator<Item = Lately> + 'a {
    let from = case.now().day(case.zone()).plus(1 - WEEK);
    case.words().iter().filter_map(move |card| {
        let day = case.totals().of(card.word).own_by_day.first()?.0;
        (day >= from).then(|| Lately::FirstPress { word: NamedWord::from(*card), day })
    })
}

fn more_presses<'a>(case: &'a Case<'_>) -> impl Iterator<Item = (NamedWord, Lately)> + 'a {
    case.words().iter().filter_map(move |card| {
        let More { now, before, p } = more(case, card.word)?;
        let word = NamedWord::from(*card);
        Some((word.clone(), Lately::MorePresses { word, now, before, p }))
    })
}

/// Own presses of a word this week and in the four weeks before, where this week's are more beyond chance.
pub(crate) struct More {
    pub(crate) now: usize,
    pub(crate) before: usize,
    p: f64,
}

pub(crate) fn more(case: &Case<'_>, word: WordId) -> Option<More> {
    let (week, from, now) = (case.since(WEEK), case.since(WEEK + BEFORE), case.now());
    let days = |a: Moment, b: Moment| b.seconds_since(a) / 86_400.0;
    let own: Vec<Moment> =
        case.presses_between(from, now).filter(|p| meant(p.part) && p.part.word == word).map(|p| p.at()).collect();
    // Nothing was watched for it before it was first shown.
    let since = case.totals().of(word).shown.first().map_or(from, |s| s.at).max(from);
    if since >= week {
        return None;
    }
    let now_n = own.iter().filter(|at| **at >= week).count();
    let before_n = own.iter().filter(|at| **at < week && **at >= since).count();
    let recent = Count::new(now_n as u64, days(week, now)).ok()?;
    let earlier = Count::new(before_n as u64, days(since, week)).ok()?;
    let p = clumped_p(recent, earlier, clumping(own, since, now, case.zone())).ok()?;
    let beyond = p < BEYOND_CHANCE / case.words().len() as f64 && recent.rate() > earlier.rate();
    beyond.then_some(More { now: now_n, before: before_n, p })
}

fn checks_passed(case: &Case<'_>) -> Vec<Lately> {
    let week = case.since(WEEK);
    let (story, animal) = (case.story(), case.animal());
    let lately: BTreeSet<ProbeId> =
        story.between::<sayso_model::ProbeTrial>(animal, week, case.now()).map(|t| t.part.probe).collect();
    let passed = |probe: ProbeId| {
        let found = report(case, probe)?.ok().filter(crate::checks::Report::finished)?;
        let tested = found.words.len() as f64;
        let (mut words, mut right, mut of) = (Vec::new(), 0, 0);
        for result in found.words.iter().filter(|w| w.p.is_some_and(|p| p < crate::checks::ALPHA / tested)) {
            let card = case.words().iter().find(|c| c.word == result.word)?;
            words.push(NamedWord::from(*card));
            right += usize::try_from(result.k).unwrap_or(0);
            of += result.right.n;
        }
        (!words.is_empty()).then_some(Lately::CheckPassed { words, right, of })
    };
    lately.into_iter().filter_map(passed).collect()
}

fn joined(case: &Case<'_>) -> Option<Lately> {
    let over = case.sessions_over_since(case.since(WEEK));
    let (joined, of) = over.fold((0, 0), |(joined, of), s| (joined + usize::from(s.joined()), of + 1));
    told(of).then_some(Lately::Joined { joined, of })
}

fn taken(case: &Case<'_>) -> Option<Lately> {
    let given = case.recent(case.since(WEEK)).iter().filter(|a| a.given());
    let then: Vec<Then> = given.filter_map(|a| a.delivery.and_then(|d| d.part.then)).collect();
    let taken = then.iter().filter(|t| **t == Then::Took).count();
    told(then.len()).then_some(Lately::Taken { taken, of: then.len() })
}

/// Whether there are as many as say something; how many of them is no reason to leave it out.
const fn told(n: usize) -> bool {
    n >= TOO_EARLY
}
