//! Do own presses grow or fade? By what factor they multiply a week.

use super::says;
use crate::estimate::{Estimate, Unit};
use crate::observe::{Answered, by_day};
use sayso_methods::learning::celeration::celeration_from_counts;
use sayso_model::{Day, Moment, Story, WordId};
use std::collections::BTreeSet;

/// Weeks looked back on.
const WEEKS: i32 = 8;
/// Below so many days, or presses, a factor a week says nothing (common practice, no source).
pub const LEAST_DAYS: i32 = 21;
/// The same of presses.
pub const LEAST_PRESSES: usize = 10;

/// How fast own presses of one word, or of all, multiply.
#[derive(Clone, PartialEq, Debug)]
pub struct Pace {
    /// The word; none for all together.
    pub word: Option<WordId>,
    /// What it says; empty for all together.
    pub says: String,
    /// Days watched, today included.
    pub days: i32,
    /// Own presses in them.
    pub presses: usize,
    /// Factor a week with its 90 % interval; nothing where there are too few days or presses.
    pub factor: Estimate,
    /// Own presses by week, oldest first, the last one ending today; the first may be cut short.
    pub by_week: Vec<usize>,
}

/// All words together, then each word of this animal that it pressed.
pub(super) fn pace(story: &Story, all: &[Answered<'_>], own: &[Answered<'_>], now: Moment) -> Vec<Pace> {
    let words: BTreeSet<WordId> = own.iter().map(|a| a.press.part.word).collect();
    let mut named: Vec<(Option<WordId>, String)> = words.into_iter().map(|w| (Some(w), says(story, w))).collect();
    named.sort_by(|a, b| a.1.cmp(&b.1));
    named.insert(0, (None, String::new()));
    named.into_iter().filter_map(|(word, says)| of_one(story, (all, own), word, says, now)).collect()
}

fn of_one(
    story: &Story,
    (all, own): (&[Answered<'_>], &[Answered<'_>]),
    word: Option<WordId>,
    says: String,
    now: Moment,
) -> Option<Pace> {
    let zone = story.zone();
    let today = now.day(&zone);
    let of_word = |a: &&Answered<'_>| word.is_none_or(|w| a.press.part.word == w);
    // Watched from the first press of the word by anyone: before it the button may not have been there.
    let known = all.iter().find(of_word)?.press.at().day(&zone);
    let first: Day = known.max(today.plus(1 - 7 * WEEKS));
    let days = today.days_since(first) + 1;
    let begins = first.start(&zone);
    let counts = by_day(own.iter().filter(of_word).map(|a| a.press.at()).filter(|at| *at >= begins), &zone);
    let (mut day, mut count, mut minutes) = (Vec::new(), Vec::new(), Vec::new());
    for i in 0..days {
        let at = first.plus(i);
        day.push(f64::from(i));
        count.push(counts.get(&at).copied().unwrap_or(0).try_into().unwrap_or(u32::MAX));
        minutes.push(at.plus(1).start(&zone).min(now).seconds_since(at.start(&zone)).max(1.0) / 60.0);
    }
    let presses: usize = count.iter().map(|n| *n as usize).sum();
    let mut by_week = vec![0; usize::try_from((days + 6) / 7).unwrap_or(0)];
    for (i, n) in count.iter().rev().enumerate() {
        if let Some(week) = by_week.iter_mut().rev().nth(i / 7) {
            *week += *n as usize;
        }
    }
    let enough = days >= LEAST_DAYS && presses >= LEAST_PRESSES;
    let fit = enough.then(|| celeration_from_counts(&day, &count, &minutes).ok()).flatten();
    let factor = match fit {
        Some(fit) => Estimate {
            value: Some(fit.times_per_week),
            low: fit.interval.map(|i| i.low),
            high: fit.interval.map(|i| i.high),
            n: presses,
            unit: Unit::Number,
        },
        None => Estimate { n: presses, ..Estimate::unknown(Unit::Number) },
    };
    Some(Pace { word, says, days, presses, factor, by_week })
}
