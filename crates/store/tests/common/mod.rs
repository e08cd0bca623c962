//! Events for tests.
#![allow(dead_code, clippy::unwrap_used, clippy::expect_used, clippy::panic)]

pub mod disk;

use sayso_model::*;
use uuid::Uuid;

/// An id that is the same in every run.
pub fn id(n: u128) -> Uuid {
    Uuid::from_u128(n)
}

pub fn home() -> HomeId {
    HomeId(id(0xA0))
}

pub fn rex() -> AnimalId {
    AnimalId(id(0xB0))
}

pub fn at(s: &str) -> Moment {
    s.parse().unwrap()
}

/// An event about `rex`, the `n`th of the test.
pub fn event(n: u128, happened_at: &str, body: impl Into<Body>) -> Event {
    let happened_at = at(happened_at);
    Event {
        id: EventId(id(0x1_0000_0000 + n)),
        home: home(),
        animal: Some(rex()),
        person: None,
        happened_at,
        zone: Zone::new("Europe/Berlin").unwrap(),
        recorded_at: happened_at.plus_seconds(2.0),
        source: Source::Tap,
        body: body.into(),
    }
}

pub fn press(word: u128) -> Press {
    Press {
        word: WordId(id(word)),
        by: PressedBy::Animal,
        certainty: Probability::clamped(1.0),
        accident: Accident::Unsure,
        place: None,
        speed: None,
        stream: None,
        session: None,
    }
}

pub fn home_card(zone: &str) -> HomeCard {
    HomeCard { name: Label::new("Home").unwrap(), zone: Zone::new(zone).unwrap() }
}

pub fn withdrawal(of: &Event) -> Withdrawal {
    Withdrawal { of: of.id, because: None }
}

pub fn correction(of: &Event, body: impl Into<Body>) -> Correction {
    Correction { of: of.id, happened_at: None, animal: None, body: Box::new(body.into()) }
}

/// All that a story tells.
pub fn told(story: &Story) -> Vec<Event> {
    let mut told: Vec<Event> = story.ledger().all().cloned().collect();
    told.extend(story.ledger().all().filter_map(|e| story.ledger().standing(e.id)).map(|e| (*e).clone()));
    let animals: std::collections::BTreeSet<_> = story.ledger().all().filter_map(|e| e.animal).collect();
    for animal in animals {
        told.extend(story.newest(Some(animal), usize::MAX).into_iter().cloned());
        told.extend(story.records_before(animal, None).cloned());
    }
    told.extend(story.everyones::<Press>().map(|f| f.event.clone()));
    told
}
