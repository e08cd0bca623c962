//! An animal's words beside those of other homes, from a release of norms. It says what is usual; it ranks nobody.

use crate::summary::Summary;
use sayso_model::WordId;
use sayso_norms::{
    Answer, Curve, HourShare, Like, Nearest, NotEnough, Outside, Part, Quantile, Question, Release, Spread, SummaryRow,
    TimedStage, WeekShare,
};
use serde::{Deserialize, Serialize};

/// Fewest showings before anything is said on Today: before that nobody waits.
const WAITED: u32 = 5;

/// How long one word has waited for its first press, and beside whom it is to be laid.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Wait {
    /// The learner and what the word brings.
    pub like: Like,
    /// Showings before the first press, or so far.
    pub showings: u32,
    /// Whole days from the first showing to the first press, or to the last record.
    pub days: u32,
    /// Whether it was pressed. If not, it was not yet.
    pub pressed: bool,
}

impl Wait {
    /// The wait of a row.
    #[must_use]
    pub const fn of(row: &SummaryRow) -> Self {
        Self { like: Like::of(row), showings: row.exposures, days: row.days, pressed: row.pressed }
    }

    /// As far as a question asks.
    const fn by(&self, question: Question) -> u32 {
        match question {
            Question::DaysToFirstPress => self.days,
            _ => self.showings,
        }
    }
}

/// Questions by which a word is laid beside others, the one that says more of it first: days depend on how often people show.
const WAITS: [Question; 2] = [Question::ShowingsToFirstPress, Question::DaysToFirstPress];

/// A word outside the middle nine tenths of comparable homes.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Lies<'a> {
    /// On which side.
    pub side: Outside,
    /// By which question.
    pub by: Question,
    /// Its own wait by that.
    pub wait: u32,
    /// The place beyond which a twentieth of the others lies.
    pub place: Quantile,
    /// The cell of those others.
    pub nearest: Nearest<'a>,
}

/// Whether there are homes beside which a word can be laid at all.
#[must_use]
pub fn is_laid(release: &Release, wait: &Wait) -> bool {
    WAITS.into_iter().any(|question| release.cell_for(question, wait.like).is_ok())
}

/// Where a word lies outside the middle nine tenths of comparable homes, beyond the whole interval of the place where that ends; none
/// where it does not, where that is in doubt, where its wait is not long enough to tell, or where too few are like it.
#[must_use]
pub fn outside<'a>(release: &'a Release, wait: &Wait) -> Option<Lies<'a>> {
    WAITS.into_iter().find_map(|by| {
        let nearest = release.cell_for(by, wait.like).ok()?;
        let (own, quantiles) = (wait.by(by), nearest.curve()?.quantiles);
        let side = quantiles.outside(f64::from(own), wait.pressed)?;
        let place = match side {
            Outside::Above => quantiles.p95,
            Outside::Below => quantiles.p05,
        };
        Some(Lies { side, by, wait: own, place, nearest })
    })
}

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

impl Beside<'_> {
    /// Whether a wait in showings lies beyond three quarters of the others, beyond the whole interval of that place: whoever sees it
    /// drawn there may take it for more than it is.
    #[must_use]
    pub fn looks_late(&self, row: &SummaryRow) -> bool {
        self.curve.quantiles.p75.high.is_some_and(|high| f64::from(row.exposures) > high)
    }
}

/// What a release tells of animals like that of a row, whatever a word brings.
fn of_learner<'a, T>(
    release: &'a Release,
    question: Question,
    row: &SummaryRow,
    told: impl FnOnce(&'a Answer) -> Option<T>,
) -> Result<(Nearest<'a>, T), NotEnough> {
    let nearest = release.cell_for(question, Like { word_kind: None, ..Like::of(row) })?;
    told(&nearest.cell.answer).map(|told| (nearest, told)).ok_or(NotEnough)
}

/// How a share lies across homes whose animal is like that of a row.
///
/// # Errors
/// [`NotEnough`].
pub fn taking_part<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a Spread), NotEnough> {
    of_learner(release, Question::Joined, row, |answer| match answer {
        Answer::Spread(spread) => Some(spread),
        _ => None,
    })
}

/// In which hours of the day animals like that of a row press.
///
/// # Errors
/// [`NotEnough`].
pub fn hours<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a [HourShare]), NotEnough> {
    of_learner(release, Question::Hours, row, |answer| match answer {
        Answer::Hours(hours) => Some(hours.hours.as_slice()),
        _ => None,
    })
}

/// How long words of animals like that of a row stood in a stage.
///
/// # Errors
/// [`NotEnough`].
pub fn in_stage<'a>(release: &'a Release, stage: TimedStage, row: &SummaryRow) -> Result<Beside<'a>, NotEnough> {
    let of_curve = |answer: &'a Answer| match answer {
        Answer::Curve(curve) => Some(curve),
        _ => None,
    };
    of_learner(release, Question::in_stage(stage), row, of_curve).map(|(nearest, curve)| Beside { nearest, curve })
}

/// How often words of animals like that of a row are pressed in a week, by weeks since their first showing.
///
/// # Errors
/// [`NotEnough`].
pub fn by_week<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a [WeekShare]), NotEnough> {
    of_learner(release, Question::PressesByWeek, row, |answer| match answer {
        Answer::Weeks(weeks) => Some(weeks.weeks.as_slice()),
        _ => None,
    })
}

/// What the first words of animals like that of a row brought.
///
/// # Errors
/// [`NotEnough`].
pub fn first_words<'a>(release: &'a Release, row: &SummaryRow) -> Result<(Nearest<'a>, &'a [Part]), NotEnough> {
    of_learner(release, Question::Words, row, |answer| match answer {
        Answer::Parts(parts) => Some(parts.parts.as_slice()),
        _ => None,
    })
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
