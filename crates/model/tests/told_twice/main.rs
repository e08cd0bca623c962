//! One press told by several: a person and microphones. It counts once, in whatever order the tellings arrive.
#![allow(clippy::unwrap_used, clippy::cast_possible_truncation, clippy::cast_precision_loss)]

mod ears;
mod taps;

use sayso_model::{
    Accident, AnimalId, Event, EventId, HomeId, Moment, Press, PressedBy, Probability, Source, Story, WordId, Zone,
};
use uuid::Uuid;

/// A press at a second: heard, of nobody known; or told by a person, as the animal's.
fn press(n: u128, source: Source, word: u128, at_s: f64) -> Event {
    let by = if source == Source::Heard { PressedBy::Unknown } else { PressedBy::Animal };
    Event {
        id: EventId(Uuid::from_u128(n)),
        home: HomeId(Uuid::from_u128(1)),
        animal: Some(AnimalId(Uuid::from_u128(7))),
        person: None,
        happened_at: Moment::clamped(1_800_000_000_000).plus_seconds(at_s),
        zone: Zone::utc(),
        recorded_at: Moment::clamped(1_800_000_000_000),
        source,
        body: Press {
            word: WordId(Uuid::from_u128(word)),
            by,
            certainty: Probability::clamped(1.0),
            accident: Accident::Unsure,
            place: None,
            speed: None,
            stream: None,
            session: None,
        }
        .into(),
    }
}

fn counted(story: &Story) -> Vec<u128> {
    let mut ids: Vec<u128> = story.everyones::<Press>().map(|f| f.id().0.as_u128()).collect();
    ids.sort_unstable();
    ids
}

/// What counts of events; the same when they arrive one by one, in each of these orders.
fn in_orders(events: &[Event], orders: impl Iterator<Item = Vec<Event>>) -> Vec<u128> {
    let whole = counted(&Story::from_events(events.iter().cloned()));
    for (i, order) in orders.enumerate() {
        let mut story = Story::default();
        order.into_iter().for_each(|event| _ = story.add(event));
        assert_eq!(counted(&story), whole, "in order {i}");
    }
    whole
}
