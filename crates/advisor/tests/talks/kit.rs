//! A home of one animal and two words, and a coach who proposes.

use sayso_model::*;
use uuid::Uuid;

pub const DOG: AnimalId = AnimalId(Uuid::from_u128(30));
pub const BALL: WordId = WordId(Uuid::from_u128(40));
pub const WALK: WordId = WordId(Uuid::from_u128(41));

pub fn now() -> Moment {
    "2026-03-20T20:00:00Z".parse().unwrap()
}

pub fn today() -> Day {
    now().day(&Zone::utc())
}

pub struct Log(Vec<Event>);

impl Log {
    /// Animal and ball are sixty days old, the walk so many.
    pub fn with_walk(days: f64) -> Self {
        let mut log = Self(Vec::new());
        let label = |text: &str| Label::new(text).unwrap();
        log.put(60.0, AnimalCard::new(DOG, label("Tarn"), Species::Dog));
        log.put(60.0, card(BALL, "ball"));
        log.put(days, card(WALK, "walk"));
        log
    }

    /// So many days before now.
    pub fn put(&mut self, days: f64, body: impl Into<Body>) -> EventId {
        let (id, at) = (EventId(Uuid::from_u128(1_000 + self.0.len() as u128)), now().plus_seconds(-86_400.0 * days));
        self.0.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(DOG),
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body: body.into(),
        });
        id
    }

    pub fn proposes(&mut self, days: f64, proposes: Proposed) -> EventId {
        let from = Author { account: AccountId(Uuid::from_u128(7)), name: Label::new("Brook").unwrap() };
        self.put(days, Proposal { from, proposes, text: None, takes_up: None, club: None })
    }

    pub fn replies(&mut self, days: f64, to: EventId, reply: Reply) {
        self.put(days, ProposalAnswer { to, reply, text: None, by: None, rehearsed: None });
    }

    /// How many records there are.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    pub fn story(&self) -> Story {
        Story::from_events(self.0.clone())
    }
}

/// A card that lacks nothing, so that its word is taught.
pub fn card(word: WordId, says: &str) -> WordCard {
    let (reward, note) = (RewardId(Uuid::from_u128(50)), |text: &str| Note::new(text).ok());
    let card = WordCard::new(word, Label::new(says).unwrap());
    WordCard { reward: Some(reward), answer: note("Give it."), not_now: note("Later."), ..card }
}

pub fn lines(words: &[WordId]) -> Vec<PlanLine> {
    words.iter().map(|word| PlanLine { word: *word, way: None, minutes: 3, times: 3 }).collect()
}
