//! Every word of an animal in a row: how far up its claim stands, what is behind it, and its own presses week by week.

use crate::case::Case;
use crate::claims::claims;
use sayso_methods::understanding::UnderstandingError;
use sayso_methods::understanding::ladder::Rung;
use sayso_model::{Day, WordId};

/// Weeks looked back on.
pub const WEEKS: usize = 8;

/// One word.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct WordRow {
    /// The word.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// The highest rung of either ladder.
    pub rung: Rung,
    /// Observations behind the rung.
    pub n: u64,
    /// Showings so far.
    pub showings: usize,
    /// Own presses by seven days, oldest first, the last ending today; none for weeks before the word was first used.
    pub weeks: [Option<usize>; WEEKS],
}

/// All active words, those of which most may be said first.
///
/// # Errors
/// [`UnderstandingError`] where the records contradict themselves.
pub fn overview(case: &Case<'_>) -> Result<Vec<WordRow>, UnderstandingError> {
    let today = case.now().day(case.zone());
    let mut rows: Vec<WordRow> = claims(case)?
        .words
        .into_iter()
        .map(|claim| {
            let (_, verdict) = claim.best();
            let sums = case.totals().of(claim.word);
            let first = sums.shown_by_day.iter().chain(&sums.own_by_day).map(|(day, _)| *day).min();
            WordRow {
                word: claim.word,
                rung: verdict.rung,
                n: verdict.n,
                showings: sums.shown.len(),
                weeks: by_week(&sums.own_by_day, first, today),
                says: claim.says,
            }
        })
        .collect();
    // Stable: words of one rung stay by what they say.
    rows.sort_by_key(|row| std::cmp::Reverse(row.rung));
    Ok(rows)
}

/// Counts by day as weeks that end `today`; none before the day it was `first` used.
fn by_week(counts: &[(Day, usize)], first: Option<Day>, today: Day) -> [Option<usize>; WEEKS] {
    let mut weeks = [None; WEEKS];
    let ago = |day: Day| usize::try_from(today.days_since(day) / 7).ok().filter(|_| day <= today);
    let Some(known) = first.and_then(ago) else { return weeks };
    for week in weeks.iter_mut().rev().take(known + 1) {
        *week = Some(0);
    }
    for (day, n) in counts {
        if let Some(Some(week)) = ago(*day).and_then(|ago| weeks.iter_mut().rev().nth(ago)) {
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
        assert_eq!(by_week(&[], None, day(100)), [None; WEEKS]);
        assert_eq!(by_week(&[(day(1), 5)], Some(day(1)), day(100)), [Some(0); WEEKS]);
    }
}
