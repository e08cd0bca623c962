//! Reading the tallies.

use crate::error::StoreError;
use crate::store::Store;
use sayso_model::{Answer, Day, HouseholdId, Kind, LearnerId, PressedBy, WordId};
use uuid::Uuid;

/// How many standing events of one sort a day had.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct DayCount {
    /// The household's day.
    pub day: Day,
    /// The animal, if named.
    pub learner: Option<LearnerId>,
    /// The kind of event.
    pub kind: Kind,
    /// The word, if named.
    pub word: Option<WordId>,
    /// Who pressed; of presses.
    pub pressed_by: Option<PressedBy>,
    /// How it was answered; of deliveries.
    pub answer: Option<Answer>,
    /// How many.
    pub n: u64,
}

type Row = (String, Uuid, String, Uuid, String, String, i64);

impl Store {
    /// Counts of a household by day, from the first day to the last, both included. Days without events are left out.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] where a row cannot be understood.
    pub async fn day_counts(&self, household: HouseholdId, first: Day, last: Day) -> Result<Vec<DayCount>, StoreError> {
        let path = &self.inner.path;
        let rows: Vec<Row> = sqlx::query_as(
            "SELECT day, learner, kind, word, pressed_by, answer, n FROM day_tally \
             WHERE household = $1 AND day BETWEEN $2 AND $3 \
             ORDER BY day, learner, kind, word, pressed_by, answer",
        )
        .bind(household.0)
        .bind(first.to_string())
        .bind(last.to_string())
        .fetch_all(&self.inner.readers)
        .await
        .map_err(StoreError::sql(path))?;
        rows.into_iter()
            .map(|row| {
                let what = format!("a tally of {} cannot be understood; build the projections anew", row.0);
                read(row).ok_or(StoreError::Corrupt { path: path.clone(), what })
            })
            .collect()
    }
}

fn read((day, learner, kind, word, pressed_by, answer, n): Row) -> Option<DayCount> {
    let named = |id: Uuid| (!id.is_nil()).then_some(id);
    let one_of = |text: &str, found: bool| text.is_empty() || found;
    let by = PressedBy::ALL.iter().copied().find(|b| b.name() == pressed_by);
    let answered = Answer::ALL.iter().copied().find(|a| a.name() == answer);
    if !one_of(&pressed_by, by.is_some()) || !one_of(&answer, answered.is_some()) {
        return None;
    }
    Some(DayCount {
        day: day.parse().ok()?,
        learner: named(learner).map(LearnerId),
        kind: Kind::named(&kind)?,
        word: named(word).map(WordId),
        pressed_by: by,
        answer: answered,
        n: u64::try_from(n).ok()?,
    })
}
