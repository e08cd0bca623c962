//! The pen: writes events the way devices do, with ids made from the recorded time and the seed.

use crate::chance::Chance;
use sayso_model::{
    AnimalId, Body, Correction, Event, EventId, HomeId, Moment, Note, PersonId, Source, Withdrawal, Zone,
};
use uuid::{Builder, Uuid};

/// Who and when, for one event.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Seen {
    /// The animal, if known.
    pub(crate) animal: Option<AnimalId>,
    /// The person, if any.
    pub(crate) person: Option<PersonId>,
    /// When it happened.
    pub(crate) at: Moment,
    /// When all that the body tells was known.
    pub(crate) known: Moment,
    /// How it came in.
    pub(crate) source: Source,
    /// Seconds until the device wrote it down.
    pub(crate) lag_s: f64,
}

/// Writes events up to a moment.
#[derive(Debug)]
pub(crate) struct Pen {
    home: HomeId,
    zone: Zone,
    end: Moment,
    chance: Chance,
    events: Vec<Event>,
}

/// A UUID version 7 of that moment.
pub(crate) fn uuid_at(at: Moment, chance: &mut Chance) -> Uuid {
    let millis = u64::try_from(at.millis()).unwrap_or(0);
    Builder::from_unix_timestamp_millis(millis, &chance.bytes::<10>()).into_uuid()
}

impl Pen {
    pub(crate) fn new(zone: Zone, begin: Moment, end: Moment, mut chance: Chance) -> Self {
        let home = HomeId(uuid_at(begin, &mut chance));
        Self { home, zone, end, chance, events: Vec::new() }
    }

    pub(crate) const fn home(&self) -> HomeId {
        self.home
    }

    /// A fresh identity of that moment.
    pub(crate) fn fresh(&mut self, at: Moment) -> Uuid {
        uuid_at(at, &mut self.chance)
    }

    /// Writes one event, unless what it tells was not known by the end. The id is given in either case.
    pub(crate) fn write(&mut self, seen: Seen, body: impl Into<Body>) -> EventId {
        let recorded_at = seen.known.max(seen.at).plus_seconds(seen.lag_s.max(0.0));
        let in_time = seen.known.max(seen.at) <= self.end;
        let recorded_at = if in_time { recorded_at.min(self.end) } else { recorded_at };
        let id = EventId(uuid_at(recorded_at, &mut self.chance));
        let event = Event {
            id,
            home: self.home,
            animal: seen.animal,
            person: seen.person,
            happened_at: seen.at,
            zone: self.zone.clone(),
            recorded_at,
            source: seen.source,
            body: body.into(),
        };
        debug_assert!(event.check().is_ok(), "{:?}: {event:?}", event.check());
        if in_time {
            self.events.push(event);
        }
        id
    }

    /// Writes `wrong` first and then the correction to `right`.
    pub(crate) fn write_corrected(&mut self, seen: Seen, wrong: impl Into<Body>, right: impl Into<Body>) -> EventId {
        let of = self.write(seen, wrong);
        let correction = Correction { of, happened_at: None, animal: None, body: Box::new(right.into()) };
        let later = seen.known.max(seen.at).plus_seconds(seen.lag_s + self.chance.between(8.0, 90.0));
        self.write(Seen { at: later, known: later, lag_s: 0.3, source: Source::Tap, ..seen }, correction);
        of
    }

    /// Writes the same body again, as a second tap does, and takes it back.
    pub(crate) fn write_twice(&mut self, seen: Seen, body: impl Into<Body>, because: Option<Note>) {
        let twice = Seen { at: seen.at.plus_seconds(0.4), known: seen.known.plus_seconds(0.4), ..seen };
        let of = self.write(twice, body);
        let later = twice.known.plus_seconds(twice.lag_s + self.chance.between(5.0, 60.0));
        self.write(Seen { at: later, known: later, lag_s: 0.3, ..seen }, Withdrawal { of, because });
    }

    /// What was written since the last call, in the order of recording.
    pub(crate) fn take(&mut self) -> Vec<Event> {
        let mut events = std::mem::take(&mut self.events);
        events.sort_by_key(|e| (e.recorded_at, e.id));
        events
    }
}
