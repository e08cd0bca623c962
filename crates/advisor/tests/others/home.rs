//! A home by hand: one animal, one word.

use sayso_advisor::summary::summaries;
use sayso_model::{AnimalId, Event, EventId, HomeId, Moment, Source, Story, WordId, Zone};
use sayso_norms::{SummaryRow, write_rows};
use serde_json::{Value, json};
use uuid::Uuid;

pub struct Home {
    pub animal: AnimalId,
    pub word: WordId,
    events: Vec<Event>,
}

/// So many days after the record began.
pub fn day(days: f64) -> Moment {
    let begin: Moment = "2026-03-01T12:00:00Z".parse().unwrap();
    begin.plus_seconds(days * 86_400.0)
}

impl Home {
    /// Its word is taught to every animal.
    pub fn new(word: u128) -> Self {
        let mut home =
            Self { animal: AnimalId(Uuid::from_u128(7)), word: WordId(Uuid::from_u128(word)), events: Vec::new() };
        home.card(0.0, json!({ "kind": "animal_card", "animal": home.animal, "name": "Milo", "species": "dog" }));
        home.word(0.0, true, &[]);
        home
    }

    fn event(&mut self, days: f64, animal: Option<AnimalId>, body: Value) -> EventId {
        let id = (1 + self.events.len() as u128).wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835);
        let id = EventId(Uuid::from_u128(id ^ self.word.0.as_u128()));
        self.events.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal,
            person: None,
            happened_at: day(days),
            zone: Zone::utc(),
            recorded_at: day(days),
            source: Source::Tap,
            body: serde_json::from_value(body).unwrap(),
        });
        id
    }

    fn card(&mut self, days: f64, body: Value) {
        self.event(days, None, body);
    }

    /// The word's card from a day on: whether it is on the board, and for whom.
    pub fn word(&mut self, days: f64, active: bool, animals: &[AnimalId]) {
        let card =
            json!({ "kind": "word_card", "word": self.word, "says": "ball", "active": active, "animals": animals });
        self.card(days, card);
    }

    pub fn tell(&mut self, days: f64, body: Value) -> EventId {
        self.event(days, Some(self.animal), body)
    }

    /// A person shows the word.
    pub fn show(&mut self, days: f64) {
        let press = self.tell(days, json!({ "kind": "press", "word": self.word, "by": "person" }));
        self.tell(days, json!({ "kind": "delivery", "answers": press, "word": self.word, "answer": "given" }));
    }

    /// A press of the animal's own accord.
    pub fn press(&mut self, days: f64) -> EventId {
        self.tell(days, json!({ "kind": "press", "word": self.word, "by": "animal" }))
    }

    /// It is seen to yawn.
    pub fn yawns(&mut self, days: f64) {
        self.tell(days, json!({ "kind": "sign", "sign": "yawns", "level": "mild", "when": "during" }));
    }

    /// The row of its word from the record up to a day; one that can be written.
    pub fn row(&self, upto: f64) -> SummaryRow {
        let row = summaries(&self.story(), self.animal, day(upto)).remove(0).row;
        write_rows([&row]).unwrap();
        row
    }

    pub fn story(&self) -> Story {
        Story::from_events(self.events.iter().cloned())
    }
}
