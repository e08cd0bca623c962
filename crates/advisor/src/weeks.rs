//! A week as it is told everywhere: seven household days, the last one ending today. No week of the calendar, which would hold
//! one day on a Monday and seven on a Sunday. See `docs/decisions/seven-days.md`.

use crate::case::Case;
use sayso_model::{Day, WordId};

/// Days of a week.
pub const WEEK: i32 = 7;
/// Weeks of a trend.
pub const TREND_WEEKS: usize = 8;

/// How many weeks ago a day lies: 0 for the last seven days, today included. None for a day after today.
#[must_use]
pub fn weeks_ago(day: Day, today: Day) -> Option<usize> {
    let days = today.days_since(day);
    usize::try_from(days).ok().map(|days| days / 7)
}

/// The first day of the week so many weeks ago.
#[must_use]
pub fn week_begins(ago: usize, today: Day) -> Day {
    let ago = i32::try_from(ago).unwrap_or(i32::MAX / WEEK - 1);
    today.plus(1 - WEEK * (ago + 1))
}

/// Own presses of a word in each of the last weeks, oldest first; none for weeks before it was first shown or pressed.
#[must_use]
pub fn own_by_week(case: &Case<'_>, word: WordId) -> [Option<usize>; TREND_WEEKS] {
    let today = case.now().day(case.zone());
    let sums = case.totals().of(word);
    let first = sums.shown_by_day.iter().chain(&sums.own_by_day).map(|(day, _)| *day).min();
    by_week(&sums.own_by_day, first, today)
}

/// Counts by day as weeks that end `today`; none before the day it was `first` used.
fn by_week(counts: &[(Day, usize)], first: Option<Day>, today: Day) -> [Option<usize>; TREND_WEEKS] {
    let mut weeks = [None; TREND_WEEKS];
    let Some(known) = first.and_then(|day| weeks_ago(day, today)) else { return weeks };
    for week in weeks.iter_mut().rev().take(known + 1) {
        *week = Some(0);
    }
    for (day, n) in counts {
        if let Some(Some(week)) = weeks_ago(*day, today).and_then(|ago| weeks.iter_mut().rev().nth(ago)) {
            *week += n;
        }
    }
    weeks
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn weeks_end_today_and_begin_with_the_word() {
        let day = |n: i32| Day::EPOCH.plus(n);
        let counts = [(day(80), 2), (day(93), 1), (day(94), 4), (day(100), 3), (day(101), 9)];
        let weeks = by_week(&counts, Some(day(80)), day(100));
        assert_eq!(weeks, [None, None, None, None, None, Some(2), Some(1), Some(7)]);
        assert_eq!(by_week(&[], None, day(100)), [None; TREND_WEEKS]);
        assert_eq!(by_week(&[(day(1), 5)], Some(day(1)), day(100)), [Some(0); TREND_WEEKS]);
    }

    #[test]
    fn a_week_begins_where_it_is_counted_from() {
        let today = Day::EPOCH.plus(100);
        for ago in 0..5 {
            let begins = week_begins(ago, today);
            assert_eq!(weeks_ago(begins, today), Some(ago));
            assert_eq!(weeks_ago(begins.plus(WEEK - 1), today), Some(ago), "seven days");
            assert_eq!(weeks_ago(begins.plus(-1), today), Some(ago + 1));
        }
        assert_eq!(weeks_ago(today.plus(1), today), None);
    }
}
