//! Hand-made homes: everything that is written is written by the test.

use sayso_advisor::Case;
use sayso_advisor::desk::{Bar, Line, Need, Seen, needs};
use sayso_model::{AnimalId, Event, EventId, HomeId, Moment, PersonId, Source, Story, WordId, Zone};
use sayso_norms::Release;
use serde_json::{Value, json};
use uuid::Uuid;

pub const DAY_S: f64 = 86_400.0;

pub fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

pub fn ago(days: f64) -> Moment {
    now().plus_seconds(-days * DAY_S)
}

pub fn animal() -> AnimalId {
    AnimalId(Uuid::from_u128(7))
}

pub fn word(n: usize) -> WordId {
    WordId(Uuid::from_u128(100 + n as u128))
}

fn reward(n: usize) -> Uuid {
    Uuid::from_u128(200 + n as u128)
}

fn person(n: usize) -> PersonId {
    PersonId(Uuid::from_u128(300 + n as u128))
}

#[derive(Clone)]
pub struct Home {
    pub events: Vec<Event>,
    next: u128,
}

impl Home {
    /// Two people, one animal, three words; the cards are ninety days old.
    pub fn new() -> Self {
        let mut home = Self { events: Vec::new(), next: 1_000 };
        home.cards(ago(90.0), ["ball", "outside", "tug"]);
        home
    }

    fn cards(&mut self, at: Moment, says: [&str; 3]) {
        self.card(at, json!({ "kind": "home_card", "name": "Quiet Street", "zone": "UTC" }));
        for n in 0..2 {
            let name = ["Ilse", "Jonas"][n];
            self.card(at, json!({ "kind": "person_card", "person": person(n), "name": name, "role": "home" }));
        }
        let card =
            json!({ "kind": "animal_card", "animal": animal(), "name": "Milo", "species": "dog", "day_kcal": 500.0 });
        self.card(at, card);
        for (n, says) in says.into_iter().enumerate() {
            self.card(at, json!({ "kind": "reward_card", "reward": reward(n), "name": says, "reward_kind": "play" }));
            self.card(
                at,
                json!({ "kind": "word_card", "word": word(n), "says": says, "answer": "Give it.",
                "not_now": "Later.", "reward": reward(n) }),
            );
        }
    }

    pub fn card(&mut self, at: Moment, body: Value) -> EventId {
        self.event(None, at, Source::Tap, body)
    }

    pub fn tell(&mut self, at: Moment, body: Value) -> EventId {
        self.event(Some(animal()), at, Source::Tap, body)
    }

    pub fn event(&mut self, animal: Option<AnimalId>, at: Moment, source: Source, body: Value) -> EventId {
        self.next += 1;
        let id = EventId(Uuid::from_u128(self.next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835)));
        self.events.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal,
            person: Some(person(0)),
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source,
            body: serde_json::from_value(body).unwrap(),
        });
        id
    }

    /// A session, joined or not, with showings of these words whose things come after so many seconds. Its start.
    pub fn session(&mut self, at: Moment, joined: bool, shows: &[usize], delay_s: f64) -> EventId {
        let session = Uuid::from_u128(at.millis().unsigned_abs().into());
        let start =
            self.tell(at, json!({ "kind": "session_start", "session": session, "purpose": "showing", "words": [] }));
        if joined {
            self.tell(at.plus_seconds(5.0), json!({ "kind": "joining", "session": session, "after_s": 5.0 }));
            for (i, w) in shows.iter().enumerate() {
                self.show(at.plus_seconds(20.0 + 30.0 * i as f64), *w, delay_s, "took");
            }
        }
        let end = at.plus_seconds(30.0 + 30.0 * shows.len() as f64);
        self.tell(end, json!({ "kind": "session_end", "session": session, "reason": "done" }));
        start
    }

    pub fn show(&mut self, at: Moment, w: usize, delay_s: f64, then: &str) {
        let press = self.tell(at, json!({ "kind": "press", "word": word(w), "by": "person" }));
        self.answer(at.plus_seconds(delay_s), press, w, "given", Some(then), delay_s);
    }

    fn answer(&mut self, at: Moment, press: EventId, w: usize, answer: &str, then: Option<&str>, delay_s: f64) {
        self.tell(
            at,
            json!({ "kind": "delivery", "answers": press, "word": word(w), "answer": answer,
            "delay_s": delay_s, "then": then }),
        );
    }

    /// An own press, answered with the thing.
    pub fn press(&mut self, at: Moment, w: usize) -> EventId {
        let press = self.tell(at, json!({ "kind": "press", "word": word(w), "by": "animal" }));
        self.answer(at.plus_seconds(2.0), press, w, "given", Some("took"), 2.0);
        press
    }

    /// An invitation in which it wanted the thing: what it pressed, after how long.
    pub fn invite(&mut self, at: Moment, w: usize, pressed: Option<(usize, f64)>) {
        let result = pressed.map_or(
            json!({ "outcome": "nothing_by_wait" }),
            |(p, s)| json!({ "outcome": "pressed", "word": word(p), "after_s": s }),
        );
        self.tell(
            at,
            json!({ "kind": "invitation", "word": word(w), "way": "offer_in_view", "wait_s": 10.0, "result": result,
            "shown": pressed.is_none(), "took": true }),
        );
    }

    pub fn sign(&mut self, at: Moment, text: &str) -> EventId {
        self.tell(at, json!({ "kind": "sign", "sign": text, "level": "strong", "when": "during" }))
    }

    pub fn feed(&mut self, at: Moment, kcal: f64) {
        self.tell(at, json!({ "kind": "feed", "food": "scraps", "kcal": kcal }));
    }

    /// Ordinary days, the first so many days ago, the last `to`: a session a day with two showings a word, joined five times in
    /// six, and three own presses.
    pub fn lives(&mut self, from: i32, to: i32) {
        for d in (to..=from).rev() {
            self.day(d, d % 6 != 0, &[0, 1, 2], 2.0, 3);
        }
    }

    pub fn day(&mut self, d: i32, joined: bool, words: &[usize], delay_s: f64, presses: usize) {
        let begin = ago(f64::from(d)).plus_seconds(-3.0 * 3600.0);
        let twice: Vec<usize> = words.iter().chain(words).copied().collect();
        self.session(begin, joined, &twice, delay_s);
        for k in 0..presses {
            self.press(begin.plus_seconds(-3600.0 * (1.0 + k as f64)), words[k % words.len()]);
        }
    }

    pub fn story(&self) -> Story {
        Story::from_events(self.events.iter().cloned())
    }

    pub fn line_at(&self, at: Moment) -> Line {
        Line::of(&Case::new(&self.story(), animal(), at))
    }

    pub fn line(&self) -> Line {
        self.line_at(now())
    }

    pub fn needs(&self) -> Vec<Need> {
        read(&self.line(), now())
    }
}

/// The same beside what other homes did.
pub fn read_beside(line: &Line, at: Moment, release: &Release) -> Vec<Need> {
    needs(line, at, &Bar::over([line]), &Seen::default(), Some(release))
}

/// The needs of one line by itself.
pub fn read(line: &Line, at: Moment) -> Vec<Need> {
    needs(line, at, &Bar::over([line]), &Seen::default(), None)
}
