//! Every word of an animal in a row: how far up its claim stands, what is behind it, and its own presses week by week.

use crate::case::Case;
use crate::claims::claims;
use crate::weeks::{TREND_WEEKS, own_by_week};
use sayso_methods::understanding::UnderstandingError;
use sayso_methods::understanding::ladder::Rung;
use sayso_model::WordId;

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
    /// Own presses by week, oldest first, the last ending today; none for weeks before the word was first used.
    pub weeks: [Option<usize>; TREND_WEEKS],
}

/// All active words, those of which most may be said first.
///
/// # Errors
/// [`UnderstandingError`] where the records contradict themselves.
pub fn overview(case: &Case<'_>) -> Result<Vec<WordRow>, UnderstandingError> {
    let mut rows: Vec<WordRow> = claims(case)?
        .words
        .into_iter()
        .map(|claim| {
            let (_, verdict) = claim.best();
            WordRow {
                word: claim.word,
                rung: verdict.rung,
                n: verdict.n,
                showings: case.totals().of(claim.word).shown.len(),
                weeks: own_by_week(case, claim.word),
                says: claim.says,
            }
        })
        .collect();
    // Stable: words of one rung stay by what they say.
    rows.sort_by_key(|row| std::cmp::Reverse(row.rung));
    Ok(rows)
}
