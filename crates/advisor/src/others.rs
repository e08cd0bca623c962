//! An animal's words beside those of other homes, from a release of norms. It says what is usual; it ranks nobody.

use crate::summary::Summary;
use sayso_model::WordId;
use sayso_norms::{Curve, Like, Nearest, NotEnough, Part, Quantile, Question, Release, Spread, SummaryRow};

/// Fewest showings before anything is said on Today: before that nobody waits.
const WAITED: u32 = 5;

/// A wait beside those of the closest cell.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Beside<'a> {
    /// The cell.
    pub nearest: Nearest<'a>,
    /// Its curve.
    pub curve: &'a Curve,
}

/// The closest waits to those of a word.
///
/// # Errors
/// [`NotEnough`].
pub fn beside<'a>(release: &'a Release, question: Question, row: &SummaryRow) -> Result<Beside<'a>, NotEnough> {
    let nearest = release.cell_for(question, Like::of(row))?;
    nearest.curve().map(|curve| Beside { nearest, curve }).ok_or(NotEnough)
}

/// How a share lies across homes whose animal is like that of a row.
///
/// # Errors
/// [`NotEnough`].
pub fn taking_part<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a Spread), NotEnough> {
    let nearest = release.cell_for(Question::Joined, Like { word_kind: None, ..Like::of(row) })?;
    match &nearest.cell.answer {
        sayso_norms::Answer::Spread(spread) => Ok((nearest, spread)),
        _ => Err(NotEnough),
    }
}

/// What the first words of animals like that of a row brought.
///
/// # Errors
/// [`NotEnough`].
pub fn first_words<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a [Part]), NotEnough> {
    let nearest = release.cell_for(Question::Words, Like { word_kind: None, ..Like::of(row) })?;
    match &nearest.cell.answer {
        sayso_norms::Answer::Parts(parts) => Ok((nearest, &parts.parts)),
        _ => Err(NotEnough),
    }
}

/// Which part of others took longer.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TookMore {
    /// Half.
    Half,
    /// A quarter.
    Quarter,
}

/// A word that is not pressed yet, and others that took longer still.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Usual<'a> {
    /// The word.
    pub word: WordId,
    /// Its row.
    pub row: &'a SummaryRow,
    /// The closest cell.
    pub nearest: Nearest<'a>,
    /// Which part of others took more showings than this.
    pub part: TookMore,
    /// How many showings that part took more than; reached.
    pub more: Quantile,
}

/// The word for which it helps to know how long others took: not pressed yet, shown some times, and a good part of others took longer
/// still. The one shown most; none where nothing of the kind can be said.
#[must_use]
pub fn usual<'a>(release: &'a Release, summaries: &'a [Summary]) -> Option<Usual<'a>> {
    let told = |summary: &'a Summary| {
        let row = &summary.row;
        if row.pressed || row.exposures < WAITED {
            return None;
        }
        let Beside { nearest, curve } = beside(release, Question::ShowingsToFirstPress, row).ok()?;
        let still = |quantile: &Quantile| quantile.low.is_some_and(|low| f64::from(row.exposures) < low);
        let of = |part, more: Quantile| more.value.map(|_| Usual { word: summary.word, row, nearest, part, more });
        let quantiles = &curve.quantiles;
        // The larger part says more; either only where the whole interval lies beyond this wait.
        let half = still(&quantiles.p50).then(|| of(TookMore::Half, quantiles.p50)).flatten();
        half.or_else(|| still(&quantiles.p75).then(|| of(TookMore::Quarter, quantiles.p75)).flatten())
    };
    summaries.iter().filter_map(told).max_by_key(|usual| usual.row.exposures)
}
