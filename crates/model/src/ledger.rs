//! The set of events, and what stands after corrections and withdrawals.
//!
//! The result depends on the set alone, never on the order of arrival: of all amendments of one event the
//! last by (`recorded_at`, id) wins. A withdrawn event can be brought back by a later correction.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::event::{Does, Event};
use crate::id::EventId;
use std::collections::BTreeMap;

/// What came of putting an event into the set.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Inserted {
    /// It is new.
    New,
    /// It was there already, the same.
    Duplicate,
    /// Another event has this id; the first one is kept.
    Conflict,
}

/// A set of events by id, with amendments by what they amend.
#[derive(Clone, Default, Debug)]
pub struct Ledger {
    events: BTreeMap<EventId, Event>,
    amendments: BTreeMap<EventId, Vec<EventId>>,
}

impl Ledger {
    /// Puts an event in.
    pub fn insert(&mut self, event: Event) -> Inserted {
        if let Some(known) = self.events.get(&event.id) {
            return if *known == event { Inserted::Duplicate } else { Inserted::Conflict };
        }
        if let Some(of) = event.body.amends() {
            self.amendments.entry(of).or_default().push(event.id);
        }
        self.events.insert(event.id, event);
        Inserted::New
    }

    /// The event as first recorded.
    #[must_use]
    pub fn first(&self, id: EventId) -> Option<&Event> {
        self.events.get(&id)
    }

    /// All events as first recorded, amendments among them, by id.
    pub fn all(&self) -> impl Iterator<Item = &Event> {
        self.events.values()
    }

    /// How many events there are, amendments among them.
    #[must_use]
    pub fn len(&self) -> usize {
        self.events.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.events.is_empty()
    }

    /// The event as it stands after its amendments; none if unknown, withdrawn, or itself an amendment.
    #[must_use]
    pub fn standing(&self, id: EventId) -> Option<Event> {
        let first = self.events.get(&id)?;
        if first.body.amends().is_some() {
            return None;
        }
        amended(first, self.last_amendment(id))
    }

    /// The amendment of an event that counts, if there is any.
    #[must_use]
    pub fn last_amendment(&self, of: EventId) -> Option<&Event> {
        let first = self.events.get(&of)?;
        let all = self.amendments.get(&of)?.iter().filter_map(|a| self.events.get(a));
        // An amendment written in another household's name has no say here.
        all.filter(|a| a.home == first.home).max_by_key(|a| (a.recorded_at, a.id))
    }

    /// Every event as it stands, by (`happened_at`, id).
    #[must_use]
    pub fn all_standing(&self) -> Vec<Event> {
        let mut standing: Vec<Event> = self.events.keys().filter_map(|id| self.standing(*id)).collect();
        standing.sort_by_key(|e| (e.happened_at, e.id));
        standing
    }
}

/// An event after the last word said on it.
#[must_use]
pub fn amended(first: &Event, last_amendment: Option<&Event>) -> Option<Event> {
    let Some(last) = last_amendment else { return Some(first.clone()) };
    match last.body.about().does {
        Does::Corrects(c) => Some(Event {
            happened_at: c.happened_at.unwrap_or(first.happened_at),
            animal: c.animal.or(first.animal),
            body: (*c.body).clone(),
            ..first.clone()
        }),
        Does::Withdraws(_) => None,
        Does::Tells | Does::Sets(_) => Some(first.clone()),
    }
}
