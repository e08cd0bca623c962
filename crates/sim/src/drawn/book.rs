//! The book of a drawn life: cards and events as devices write them.

use crate::chance::Chance;
use crate::fixed::label;
use crate::pen::uuid_at;
use sayso_model::*;

/// Seconds from knowing to writing.
const LAG_S: f64 = 0.5;

#[derive(Debug)]
pub(super) struct Book {
    home: HomeId,
    pub(super) animal: AnimalId,
    pub(super) words: Vec<WordId>,
    pub(super) things: Vec<RewardId>,
    zone: Zone,
    chance: Chance,
    events: Vec<Event>,
}

impl Book {
    /// A book with its cards.
    pub(super) fn new(words: usize, seed: u64, begun: Moment) -> Self {
        let mut c = Chance::new(seed, 61);
        let mut book = Self {
            home: HomeId(uuid_at(begun, &mut c)),
            animal: AnimalId(uuid_at(begun, &mut c)),
            words: (0..words).map(|_| WordId(uuid_at(begun, &mut c))).collect(),
            things: (0..words).map(|_| RewardId(uuid_at(begun, &mut c))).collect(),
            zone: Zone::utc(),
            chance: c,
            events: Vec::new(),
        };
        let name = label("Drawn lives");
        book.writes(begun, HomeCard { name, zone: Zone::utc() });
        let card = animal_card(book.animal);
        book.writes(begun, card);
        for i in 0..words {
            let (word, thing) = (book.words[i], book.things[i]);
            book.writes(begun, reward_card(thing, i));
            book.writes(begun, word_card(word, thing, i));
        }
        book
    }

    /// Writes what happened just now.
    pub(super) fn writes(&mut self, at: Moment, body: impl Into<Body>) -> EventId {
        self.writes_dated(at, at, body)
    }

    /// Writes at `at` what is said to have happened at another moment.
    pub(super) fn writes_dated(&mut self, at: Moment, happened_at: Moment, body: impl Into<Body>) -> EventId {
        let recorded_at = at.plus_seconds(LAG_S);
        let id = EventId(uuid_at(recorded_at, &mut self.chance));
        let event = Event {
            id,
            home: self.home,
            animal: Some(self.animal),
            person: None,
            happened_at,
            zone: self.zone.clone(),
            recorded_at,
            source: Source::Tap,
            body: body.into(),
        };
        debug_assert!(event.check().is_ok(), "{:?}: {event:?}", event.check());
        self.events.push(event);
        id
    }

    /// Takes an event back.
    pub(super) fn takes_back(&mut self, at: Moment, of: EventId) {
        self.writes(at, Withdrawal { of, because: None });
    }

    /// Says that it was otherwise, or at another moment.
    pub(super) fn corrects(&mut self, at: Moment, of: EventId, happened_at: Option<Moment>, body: impl Into<Body>) {
        self.writes(at, Correction { of, happened_at, animal: None, body: Box::new(body.into()) });
    }

    pub(super) fn fresh(&mut self, at: Moment) -> uuid::Uuid {
        uuid_at(at, &mut self.chance)
    }

    pub(super) fn word(&self, id: WordId) -> usize {
        self.words.iter().position(|w| *w == id).unwrap_or(0)
    }

    /// All events written up to `end`, in the order of writing.
    pub(super) fn closes(self, end: Moment) -> Vec<Event> {
        let mut events = self.events;
        events.retain(|e| e.recorded_at <= end);
        events.sort_by_key(|e| (e.recorded_at, e.id));
        events
    }
}

fn animal_card(animal: AnimalId) -> AnimalCard {
    AnimalCard::new(animal, label("Ash"), Species::Dog)
}

fn reward_card(reward: RewardId, number: usize) -> RewardCard {
    RewardCard::new(reward, label(&format!("thing {number}")), RewardKind::Play)
}

fn word_card(word: WordId, reward: RewardId, number: usize) -> WordCard {
    WordCard {
        word,
        says: label(&format!("word {number}")),
        means: None,
        answer: None,
        not_now: None,
        reward: Some(reward),
        closing: false,
        animals: Vec::new(),
        active: true,
    }
}
