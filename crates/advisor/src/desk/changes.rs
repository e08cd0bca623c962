//! What changed between two lines of one animal: since a coach and a home last spoke, or in a week.
//!
//! Facts (a new word, a new stage, a first press, a strong sign) and figures beyond chance only. A figure that moved within
//! what chance brings is not told: it would be read as news.

use super::line::{Line, SignKind, SoFar};
use super::looks::shares_differ;
use crate::estimate::{Estimate, Unit};
use sayso_methods::stats::{Count, Level, Tail, benjamini_hochberg, compare_rates};
use sayso_model::{Day, Stage, WordId};
use serde::Serialize;
use std::collections::BTreeMap;

/// Share of what is told that may be chance.
const FALSE_SHARE: f64 = 0.05;

/// Something that changed.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "changed", rename_all = "snake_case")]
pub enum Changed {
    /// Strong signs, or signs of a kind that lasts, on days since.
    Signs {
        /// Which.
        kind: SignKind,
        /// How many.
        count: usize,
        /// The last of those days.
        last: Day,
    },
    /// Joining differs from before, beyond chance.
    Joining {
        /// Since.
        lately: Estimate,
        /// Before.
        before: Estimate,
        /// Two-sided p-value.
        p: f64,
    },
    /// Own presses on days with other records differ from before, beyond chance.
    Presses {
        /// A day, since.
        lately: Estimate,
        /// A day, before.
        before: Estimate,
        /// Two-sided p-value.
        p: f64,
    },
    /// A word is new on the board.
    NewWord {
        /// The word.
        word: WordId,
    },
    /// A word is no longer in use.
    WordGone {
        /// The word.
        word: WordId,
    },
    /// The first own press of a word that was no likely accident.
    FirstPress {
        /// The word.
        word: WordId,
        /// Its day.
        day: Day,
    },
    /// People work at another stage of a word.
    NewStage {
        /// The word.
        word: WordId,
        /// Before.
        from: Stage,
        /// Now.
        to: Stage,
    },
    /// Right presses of a word are now more than chance, at whatever moment that is asked.
    AboveChance {
        /// The word.
        word: WordId,
        /// Right, of invitations in which the thing was wanted.
        right: Estimate,
    },
}

/// What changed from one line to a later one of the same animal; nothing for lines in the wrong order or of two animals.
#[must_use]
pub fn changes(before: &Line, after: &Line) -> Vec<Changed> {
    if before.animal != after.animal || after.at < before.at {
        return Vec::new();
    }
    let mut found = signs(before, after);
    found.extend(figures(&before.so_far, &after.so_far));
    found.extend(words(before, after));
    found
}

fn signs(before: &Line, after: &Line) -> Vec<Changed> {
    let tally = |line: &Line| {
        let mut all: BTreeMap<(SignKind, Day), usize> = BTreeMap::new();
        line.signs.iter().filter(|s| !s.taken_back).for_each(|s| *all.entry((s.kind, s.day)).or_insert(0) += s.count);
        all
    };
    let (known, now) = (tally(before), tally(after));
    let mut kinds: BTreeMap<SignKind, (usize, Day)> = BTreeMap::new();
    for ((kind, day), count) in now {
        let more = count.saturating_sub(known.get(&(kind, day)).copied().unwrap_or(0));
        if more > 0 {
            let sum = kinds.entry(kind).or_insert((0, day));
            *sum = (sum.0 + more, sum.1.max(day));
        }
    }
    kinds.into_iter().map(|(kind, (count, last))| Changed::Signs { kind, count, last }).collect()
}

/// What was counted since against everything counted before.
fn figures(before: &SoFar, after: &SoFar) -> Vec<Changed> {
    let mut found = Vec::new();
    let (n, joined) = (after.sessions.saturating_sub(before.sessions), after.joined.saturating_sub(before.joined));
    if n > 0 && before.sessions > 0 && joined <= n {
        let p =
            shares_differ((joined, n), (before.joined, before.sessions), after.joining_varies.max(1.0), Tail::TwoSided);
        let (lately, before) =
            (Estimate::share_any_time(joined, n), Estimate::share_any_time(before.joined, before.sessions));
        found.push((p, Changed::Joining { lately, before, p }));
    }
    let (days, presses) = (after.watched.saturating_sub(before.watched), after.presses.saturating_sub(before.presses));
    if let Some((p, lately, earlier)) = rates((presses, days), (before.presses, before.watched), after.presses_vary) {
        found.push((p, Changed::Presses { lately, before: earlier, p }));
    }
    let all: Vec<f64> = found.iter().map(|f| f.0).collect();
    let kept = benjamini_hochberg(&all, FALSE_SHARE).map(|d| d.is_rejected).unwrap_or_default();
    found.into_iter().zip(kept).filter(|(_, kept)| *kept).map(|((_, changed), _)| changed).collect()
}

/// Two rates, as if so many presses were one (quasi-likelihood).
fn rates(lately: (usize, usize), before: (usize, usize), vary: f64) -> Option<(f64, Estimate, Estimate)> {
    let less = |(k, days): (usize, usize)| Count::new((k as f64 / vary.max(1.0)).round() as u64, days as f64).ok();
    let (a, b) = (less(lately)?, less(before)?);
    let p = compare_rates(a, b, Tail::TwoSided, Level::P95).ok()?.p;
    let told = |(k, days): (usize, usize), count: Count| {
        let (i, vary) = (count.interval(Level::P95), vary.max(1.0));
        Estimate {
            value: Some(k as f64 / days as f64),
            low: Some(i.low * vary),
            high: Some(i.high * vary),
            n: k,
            unit: Unit::PerDay,
        }
    };
    Some((p, told(lately, a), told(before, b)))
}

fn words(before: &Line, after: &Line) -> Vec<Changed> {
    let mut found = Vec::new();
    for word in &after.words {
        let Some(known) = before.words.iter().find(|w| w.word == word.word) else {
            found.push(Changed::NewWord { word: word.word });
            continue;
        };
        if word.stage != known.stage {
            found.push(Changed::NewStage { word: word.word, from: known.stage, to: word.stage });
        }
        if word.above_chance && !known.above_chance {
            found.push(Changed::AboveChance { word: word.word, right: word.right });
        }
    }
    // Also of a word that is new: it may have been pressed already.
    let first = after.words.iter().filter_map(|w| {
        let known = before.words.iter().find(|k| k.word == w.word).and_then(|k| k.first_press);
        w.first_press.filter(|_| known.is_none()).map(|day| Changed::FirstPress { word: w.word, day })
    });
    found.extend(first);
    let gone = before.words.iter().filter(|k| after.words.iter().all(|w| w.word != k.word));
    found.extend(gone.map(|k| Changed::WordGone { word: k.word }));
    found
}
