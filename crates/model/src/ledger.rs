//! The set of events, and what stands after corrections and withdrawals.
//!
//! The result depends on the set alone, never on the order of arrival: of all amendments of one event the
//! last by (`recorded_at`, id) wins. A withdrawn event can be brought back by a later correction.

// A new kind of event must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::event::{Does, Event};
use crate::id::EventId;
use crate::shelf::{ById, ByTime, Shelf};
use crate::time::Moment;
use imbl::OrdSet;
use std::sync::Arc;
use uuid::Uuid;

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

/// A set of events by id, with amendments by what they amend. A copy shares what it holds with the original.
#[derive(Clone, Default, Debug)]
pub struct Ledger {
    events: Shelf<ById>,
    /// What is amended, when that was written down, by which event.
    amendments: OrdSet<(EventId, Moment, EventId)>,
    /// First records that have amendments.
    amended: Shelf<ByTime>,
}

impl Ledger {
    /// The set of these events, in any order; of several of one id the first is kept.
    pub(crate) fn of(events: Vec<Arc<Event>>) -> Self {
        let mut ledger = Self { events: Shelf::of(events), ..Self::default() };
        for event in ledger.events.iter() {
            if let Some(of) = event.body.amends() {
                ledger.amendments.insert((of, event.recorded_at, event.id));
            }
        }
        let of = ledger.amendments.iter().filter_map(|(of, ..)| ledger.events.get(*of));
        ledger.amended = Shelf::of(of.filter(|e| e.body.amends().is_none()).cloned().collect());
        ledger
    }

    /// Puts an event in.
    pub fn insert(&mut self, event: impl Into<Arc<Event>>) -> Inserted {
        let event = event.into();
        if let Some(known) = self.events.get(event.id) {
            return if *known == event { Inserted::Duplicate } else { Inserted::Conflict };
        }
        if let Some(of) = event.body.amends() {
            self.amendments.insert((of, event.recorded_at, event.id));
            if let Some(first) = self.events.get(of).filter(|e| e.body.amends().is_none()) {
                self.amended.insert(Arc::clone(first));
            }
        } else if self.is_amended(event.id) {
            self.amended.insert(Arc::clone(&event));
        }
        self.events.insert(event);
        Inserted::New
    }

    /// The event as first recorded.
    #[must_use]
    pub fn first(&self, id: EventId) -> Option<&Event> {
        self.events.get(id).map(Arc::as_ref)
    }

    /// All events as first recorded, amendments among them, by id.
    pub fn all(&self) -> impl DoubleEndedIterator<Item = &Event> {
        self.all_shared().map(Arc::as_ref)
    }

    /// [`Ledger::all`], to be kept beside the ledger without a copy.
    pub fn all_shared(&self) -> impl DoubleEndedIterator<Item = &Arc<Event>> {
        self.events.iter()
    }

    /// First records that were corrected or taken back, by (`happened_at`, id).
    pub(crate) const fn amended(&self) -> &Shelf<ByTime> {
        &self.amended
    }

    /// How many runs of events are not shared with another set.
    #[cfg(test)]
    pub(crate) fn runs_apart(&self, other: &Self) -> usize {
        self.events.runs_apart(&other.events)
    }

    /// How many events there are, amendments among them.
    #[must_use]
    pub const fn len(&self) -> usize {
        self.events.len()
    }

    /// Whether there is none.
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.events.len() == 0
    }

    /// The event as it stands after its amendments; none if unknown, withdrawn, or itself an amendment.
    #[must_use]
    pub fn standing(&self, id: EventId) -> Option<Arc<Event>> {
        self.standing_by(id).map(|(event, _)| event)
    }

    /// [`Ledger::standing`], and the amendment that made it what it is, if one did.
    pub(crate) fn standing_by(&self, id: EventId) -> Option<(Arc<Event>, Option<EventId>)> {
        self.stands(self.events.get(id)?)
    }

    fn stands(&self, first: &Arc<Event>) -> Option<(Arc<Event>, Option<EventId>)> {
        if first.body.amends().is_some() {
            return None;
        }
        let last = self.last_amendment(first.id);
        amended(first, last).map(|event| (event, last.map(|a| a.id)))
    }

    fn amendments_of(&self, of: EventId) -> impl DoubleEndedIterator<Item = EventId> {
        let (begin, end) = (Moment::clamped(i64::MIN), Moment::clamped(i64::MAX));
        let all = (of, begin, EventId(Uuid::nil()))..=(of, end, EventId(Uuid::max()));
        self.amendments.range(all).map(|(_, _, id)| *id)
    }

    /// Whether an event has amendments, of whomever.
    #[must_use]
    pub fn is_amended(&self, id: EventId) -> bool {
        !self.amendments.is_empty() && self.amendments_of(id).next().is_some()
    }

    /// The amendment of an event that counts, if there is any.
    #[must_use]
    pub fn last_amendment(&self, of: EventId) -> Option<&Event> {
        if self.amendments.is_empty() {
            return None;
        }
        let mut last_first = self.amendments_of(of).rev().filter_map(|id| self.first(id)).peekable();
        last_first.peek()?;
        let first = self.first(of)?;
        // An amendment written in another household's name has no say here.
        last_first.find(|a| a.home == first.home)
    }

    /// Every event as it stands, by id, each with the amendment that made it so, if one did.
    pub(crate) fn all_standing(&self) -> impl Iterator<Item = (Arc<Event>, Option<EventId>)> {
        self.events.iter().filter_map(|first| self.stands(first))
    }
}

/// An event after the last word said on it.
fn amended(first: &Arc<Event>, last_amendment: Option<&Event>) -> Option<Arc<Event>> {
    let Some(last) = last_amendment else { return Some(Arc::clone(first)) };
    match last.body.about().does {
        Does::Corrects(c) => Some(Arc::new(Event {
            happened_at: c.happened_at.unwrap_or(first.happened_at),
            animal: c.animal.or(first.animal),
            body: (*c.body).clone(),
            ..first.as_ref().clone()
        })),
        Does::Withdraws(_) => None,
        Does::Tells | Does::Sets(_) => Some(Arc::clone(first)),
    }
}
