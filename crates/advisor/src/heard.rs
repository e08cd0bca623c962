//! Presses that were heard: what the pages about buttons and about who pressed need of them.

use crate::weekly::Weekly;
use sayso_model::{AnimalId, EventId, Moment, PressedBy, Story, Week, WordId};

/// A press that was heard.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Heard {
    /// Its event.
    pub id: EventId,
    /// Whose press it is said to be.
    pub animal: Option<AnimalId>,
    /// The word.
    pub word: WordId,
    /// When it sounded.
    pub at: Moment,
    /// When it was listened to.
    pub recorded_at: Moment,
    /// Chance that it sounded.
    pub certainty: f64,
    /// Whether nobody has said yet who pressed or that it sounded, and no person told the same press.
    pub waits: bool,
}

/// Every press heard so far, by week and animal, then by time.
pub(crate) fn heard(kept: &Weekly<(), Vec<Heard>>, story: &Story) -> Vec<Heard> {
    let of_week = |week: Week| -> Vec<Heard> {
        let all = story.heard_between(week.begins(), week.plus(1).begins().plus_seconds(-0.001));
        all.map(|f| Heard {
            id: f.id(),
            animal: f.event.animal,
            word: f.part.word,
            at: f.at(),
            recorded_at: f.event.recorded_at,
            certainty: f.part.certainty.get(),
            waits: f.part.by == PressedBy::Unknown
                && f.part.certainty.get() < 1.0
                && story.same_press(f.id()).is_none(),
        })
        .collect()
    };
    let weeks = kept.all((), story, Moment::clamped(i64::MAX), |_| true, of_week);
    weeks.iter().flat_map(|week| week.iter().copied()).collect()
}
