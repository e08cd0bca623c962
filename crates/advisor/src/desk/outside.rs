//! Words outside the middle nine tenths of comparable homes, by a release of norms. Context for who coaches, and the lowest of needs:
//! one word in ten lies outside anywhere, and being outside is no trouble.
//!
//! Said only of a home whose log is full: showings that nobody wrote down make a first press look early, presses that nobody wrote
//! down make it look late.

use super::bar::Bar;
use super::line::{Line, WordLine};
use super::need::{About, Comparable, Need, Until, What};
use crate::advice::Sure;
use crate::others::{Wait, is_laid, outside as lies};
use sayso_model::Day;
use sayso_norms::{Outside, Release};

/// Days after a first press on which it is still told; later it is past, and stands on the animal's own page.
const FRESH_DAYS: i32 = 28;

pub(super) fn outside(line: &Line, today: Day, release: &Release, bar: &Bar) -> Vec<Need> {
    if !line.logging.full() {
        return Vec::new();
    }
    let waits: Vec<(&WordLine, Wait)> = line.words.iter().filter_map(|word| Some((word, word.wait?))).collect();
    let laid = waits.iter().filter(|(_, wait)| is_laid(release, wait)).count();
    let fresh = waits.into_iter().filter(|(word, wait)| !wait.pressed || pressed_lately(word, wait, today));
    fresh.filter_map(|(word, wait)| one(word, &wait, release, bar, laid)).collect()
}

fn pressed_lately(word: &WordLine, wait: &Wait, today: Day) -> bool {
    let days = i32::try_from(wait.days).unwrap_or(i32::MAX);
    word.first_shown.is_some_and(|shown| today.days_since(shown).saturating_sub(days) <= FRESH_DAYS)
}

fn one(word: &WordLine, wait: &Wait, release: &Release, bar: &Bar, laid: usize) -> Option<Need> {
    let found = lies(release, wait)?;
    let what = What::Outside {
        word: word.word,
        side: found.side,
        by: found.by,
        wait: found.wait,
        pressed: wait.pressed,
        place: found.place,
        level: release.level,
        beside: Comparable::of(found.nearest.cell),
        laid,
        held: bar.cause_of(word).filter(|_| found.side == Outside::Above),
    };
    let until = if wait.pressed { Until::DaysSincePress { days: FRESH_DAYS } } else { Until::FirstPress };
    let n = usize::try_from(wait.showings).unwrap_or(usize::MAX).max(1);
    Some(Need { about: About::Outside, what, since: None, n, sure: Sure::Fairly, until, put: None })
}
