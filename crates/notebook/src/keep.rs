//! Writing into the log: what a person notes now, and how events come to count.

use sayso_model::{
    AnimalId, Body, Event, EventId, HomeId, Moment, PersonId, Problem, Problems, Source, Story, TooLate, Zone,
};
use sayso_store::{Appended, Store, StoreError};
use uuid::Uuid;

/// Who writes, about whom, when.
#[derive(Clone, PartialEq, Debug)]
pub struct Pen {
    /// Whose notebook.
    pub home: HomeId,
    /// The animal it is about, where it is about one.
    pub animal: Option<AnimalId>,
    /// Who writes, where that is known.
    pub person: Option<PersonId>,
    /// The zone the home lives in.
    pub zone: Zone,
    /// Now.
    pub now: Moment,
}

impl Pen {
    /// An event of now. Change fields where that is wrong.
    #[must_use]
    pub fn event(&self, body: impl Into<Body>) -> Event {
        Event {
            id: EventId(Uuid::now_v7()),
            home: self.home,
            animal: self.animal,
            person: self.person,
            happened_at: self.now,
            zone: self.zone.clone(),
            recorded_at: self.now,
            source: Source::Tap,
            body: body.into(),
        }
    }
}

/// Why events were not kept.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NotKept {
    /// A card or an amendment that could not come to count: what it replaces is dated at the end of time.
    #[error("{} {_0}", _0.field())]
    Late(TooLate),
    /// Events the log does not take; the others are kept.
    #[error(transparent)]
    Refused(#[from] Problems),
    /// The notebook cannot be written.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// Puts events into the log, cards and amendments dated so that they count ([`Story::in_time`]). Events known already
/// count as kept.
///
/// # Errors
/// [`NotKept::Late`] and [`NotKept::Refused`] of an event that is unsound in itself, before anything is kept;
/// [`NotKept::Refused`] with every problem of every event the log refuses, the others are kept; [`NotKept::Store`].
pub async fn keep(store: &Store, story: &Story, events: Vec<Event>) -> Result<(), NotKept> {
    let events = events.into_iter().map(|e| story.in_time(e)).collect::<Result<Vec<_>, _>>().map_err(NotKept::Late)?;
    for event in &events {
        event.check()?;
    }
    let refused = store.append(events).await?.into_iter().filter_map(Appended::refusal);
    let problems: Vec<Problem> = refused.flat_map(|found| found.0).collect();
    if problems.is_empty() { Ok(()) } else { Err(Problems(problems).into()) }
}
