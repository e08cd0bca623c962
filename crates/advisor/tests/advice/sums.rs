//! What is kept week by week tells the same as reading everything from nothing, whatever happened and in whatever order:
//! presses, answers, corrections, withdrawals, phones that were away, clocks that are ahead, and time passing.

#![allow(clippy::cast_possible_truncation)]

use sayso_advisor::observe::{answered_between, meant_presses, own_presses, showings};
use sayso_advisor::sums::{Answers, Totals};
use sayso_advisor::{Case, Sums, buttons, days, evidence, stages, stuck, today};
use sayso_model::{AnimalId, Body, Day, Event, EventId, HomeId, Moment, Source, Story, WordId, Zone};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use uuid::Uuid;

const ANIMALS: [AnimalId; 2] = [AnimalId(Uuid::from_u128(7)), AnimalId(Uuid::from_u128(8))];
const DAY_S: f64 = 86_400.0;

fn word(n: usize) -> WordId {
    WordId(Uuid::from_u128(100 + n as u128))
}

/// A home in which things happen by the throw of a die.
struct Home {
    dice: u64,
    next: u128,
    now: Moment,
    zone: Zone,
    all: Vec<Event>,
    story: Story,
}

impl Home {
    fn new(seed: u64) -> Self {
        let (now, zone) = ("2026-03-20T12:00:00Z".parse().unwrap(), Zone::new("Europe/Berlin").unwrap());
        let mut home = Self { dice: seed, next: 1_000, now, zone, all: Vec::new(), story: Story::default() };
        home.tell(
            None,
            now.plus_seconds(-100.0 * DAY_S),
            Source::Tap,
            json!({ "kind": "home_card", "name": "us", "zone": home.zone }),
        );
        for animal in ANIMALS {
            let card = json!({ "kind": "animal_card", "animal": animal, "name": "Milo", "species": "dog" });
            home.tell(None, now.plus_seconds(-99.0 * DAY_S), Source::Tap, card);
        }
        for n in 0..3 {
            let says = ["ball", "outside", "tug"][n];
            let card = json!({ "kind": "word_card", "word": word(n), "says": says, "answer": "Give it." });
            home.tell(None, now.plus_seconds(-98.0 * DAY_S), Source::Tap, card);
            let clip = json!({ "kind": "clip_card", "clip": Uuid::from_u128(50 + n as u128), "word": word(n),
                "sha256": format!("{:064x}", n + 1), "seconds": 0.8, "active": true });
            home.tell(None, now.plus_seconds(-97.0 * DAY_S), Source::Tap, clip);
        }
        home
    }

    fn below(&mut self, n: u64) -> u64 {
        self.dice = self.dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.dice >> 33) % n
    }

    fn write(&mut self, event: Event) {
        self.story.add(event.clone());
        self.all.push(event);
    }

    fn tell(&mut self, animal: Option<AnimalId>, at: Moment, source: Source, body: Value) -> EventId {
        self.next += 1;
        let id = EventId(Uuid::from_u128(self.next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835)));
        let body: Body = serde_json::from_value(body).unwrap();
        let (home, zone) = (HomeId(Uuid::from_u128(1)), self.zone.clone());
        self.write(Event {
            id,
            home,
            animal,
            person: None,
            happened_at: at,
            zone,
            recorded_at: self.now,
            source,
            body,
        });
        id
    }

    /// Most often lately, now and then weeks ago, at a change of weeks, or after now.
    fn sometime(&mut self) -> Moment {
        let back = match self.below(8) {
            0 => -(self.below(7_200) as f64),
            1 | 2 => self.below(90 * 86_400) as f64,
            3 => {
                let week = self.now.millis().rem_euclid(7 * 86_400_000) as f64 / 1000.0;
                week + self.below(5) as f64 - 2.0 + 7.0 * DAY_S * self.below(6) as f64
            }
            _ => self.below(2 * 86_400) as f64,
        };
        self.now.plus_seconds(-back)
    }

    fn earlier(&mut self) -> Option<Event> {
        let found: Vec<&Event> =
            self.all.iter().filter(|e| matches!(e.body, Body::Press(_) | Body::Delivery(_))).collect();
        let n = found.len() as u64;
        (n > 0).then(|| found[self.below_of(n)].clone())
    }

    fn below_of(&self, n: u64) -> usize {
        (self.dice >> 20) as usize % n as usize
    }

    fn happens(&mut self) {
        let (at, w) = (self.sometime(), word(self.below(3) as usize));
        let who = if self.below(5) == 0 { ANIMALS[1] } else { ANIMALS[0] };
        match self.below(10) {
            0..=2 => {
                let by = ["animal", "person", "animal", "unknown"][self.below(4) as usize];
                let press = self.tell(Some(who), at, Source::Tap, json!({ "kind": "press", "word": w, "by": by }));
                if self.below(2) == 0 {
                    let apart = [3.0, 40.0, -2.0, 2.5 * DAY_S, 5.0 * DAY_S, 4_000.0][self.below(6) as usize];
                    let answer = ["given", "declined", "missed"][self.below(3) as usize];
                    let body =
                        json!({ "kind": "delivery", "answers": press, "word": w, "answer": answer, "then": "took" });
                    self.tell(Some(who), at.plus_seconds(apart), Source::Tap, body);
                }
                if self.below(3) == 0 {
                    let (of, near) = ([None, Some(who)][self.below(2) as usize], self.below(3) as f64 - 1.0);
                    let body = json!({ "kind": "press", "word": w, "by": "unknown", "certainty": 0.8 });
                    self.tell(of, at.plus_seconds(near), Source::Heard, body);
                }
            }
            3 => {
                let body = json!({ "kind": "press", "word": w, "by": "unknown", "certainty": 0.7 });
                let of = [None, Some(who)][self.below(2) as usize];
                self.tell(of, at, Source::Heard, body);
            }
            4 => {
                self.tell(Some(who), at, Source::Tap, json!({ "kind": "delivery", "word": w, "answer": "given" }));
            }
            5 => {
                let result = json!({ "outcome": "pressed", "word": w, "after_s": 2.0 });
                self.tell(
                    Some(who),
                    at,
                    Source::Tap,
                    json!({ "kind": "invitation", "word": word(0), "way": "offer_in_view",
                    "wait_s": 5.0, "result": result, "took": true }),
                );
            }
            6 => {
                let session = Uuid::from_u128(self.next + 5);
                self.tell(
                    Some(who),
                    at,
                    Source::Tap,
                    json!({ "kind": "session_start", "session": session, "purpose": "showing" }),
                );
                self.tell(
                    Some(who),
                    at.plus_seconds(30.0),
                    Source::Tap,
                    json!({ "kind": "joining", "session": session }),
                );
            }
            7 => {
                if let Some(of) = self.earlier() {
                    let moved = (self.below(2) == 0).then(|| self.sometime());
                    let mut body = serde_json::to_value(&of.body).unwrap();
                    body["word"] = json!(w);
                    self.tell(
                        of.animal,
                        self.now,
                        Source::Tap,
                        json!({ "kind": "correction", "of": of.id, "happened_at": moved, "body": body }),
                    );
                }
            }
            8 => {
                if let Some(of) = self.earlier() {
                    self.tell(of.animal, self.now, Source::Tap, json!({ "kind": "withdrawal", "of": of.id }));
                }
            }
            _ => self.now = self.now.plus_seconds(self.below(3 * 86_400) as f64),
        }
    }
}

/// All that pages tell of an animal.
fn told(case: &Case<'_>) -> Vec<String> {
    let mut all = vec![
        format!("{:?}", case.totals()),
        format!("{:?}", today::today(case)),
        format!("{:?}", days::days(case, 28)),
        format!("{:?}", case.sums().heard(case.story())),
        format!("{:?}", buttons::buttons(case.story(), case.now(), case.sums())),
    ];
    for s in stages::standings(case) {
        all.push(format!("{:?} {:?}", evidence::evidence(case, s.word), stuck::differential(case, s.word)));
    }
    all
}

#[test]
fn kept_sums_tell_what_reading_from_nothing_tells() {
    for seed in 0..3 {
        let (mut home, kept) = (Home::new(seed), Sums::default());
        for step in 0..240 {
            home.happens();
            if step % 6 != 0 && step < 225 {
                // Seen while it grows, so that there is something to be kept.
                Case::new(&home.story, ANIMALS[0], home.now).with(kept.clone()).totals();
                continue;
            }
            let mut turned = home.all.clone();
            turned.rotate_left(step % home.all.len());
            let whole = Story::from_events(turned);
            for animal in ANIMALS {
                let fresh = Case::new(&whole, animal, home.now);
                let again = Case::new(&home.story, animal, home.now).with(kept.clone());
                assert_eq!(told(&again), told(&fresh), "seed {seed}, step {step}");
                counted_alike(&fresh, animal);
            }
        }
    }
}

/// The sums against counting all answered presses at once.
fn counted_alike(case: &Case<'_>, animal: AnimalId) {
    let from = "2025-01-01T00:00:00Z".parse().unwrap();
    let all = answered_between(case.story(), animal, (from, case.now()), case.now());
    let totals: &Totals = case.totals();
    for w in (0..3).map(word) {
        let (own, meant) = (own_presses(&all, Some(w)), meant_presses(&all, Some(w)));
        let shown = showings(&all, Some(w));
        let mut by_day: BTreeMap<Day, usize> = BTreeMap::new();
        meant.iter().for_each(|a| *by_day.entry(a.press.at().day(case.zone())).or_default() += 1);
        let sums = totals.of(w);
        assert_eq!(sums.own_by_day, by_day.into_iter().collect::<Vec<_>>());
        assert_eq!(
            sums.shown.iter().map(|s| s.at).collect::<Vec<_>>(),
            shown.iter().map(|a| a.press.at()).collect::<Vec<_>>()
        );
        let answers: Answers = days::answers(&own);
        assert_eq!(sums.answers, answers);
        assert_eq!(sums.after_given.seen() + sums.after_given.unrecorded, answers.given + answers.partly);
    }
}

#[test]
fn a_week_nobody_touched_keeps_its_mark_and_a_change_moves_that_week_alone() {
    let mut home = Home::new(3);
    (0..200).for_each(|_| home.happens());
    let weeks = |story: &Story| {
        let (first, last) = story.weeks().unwrap();
        let mut all = vec![first];
        while all.last().is_some_and(|w| *w < last) {
            all.push(all[all.len() - 1].plus(1));
        }
        all.into_iter().map(|w| (w, story.mark_of_weeks(w..=w))).collect::<BTreeMap<_, _>>()
    };
    let before = weeks(&home.story);
    let press =
        home.all.iter().find(|e| matches!(e.body, Body::Press(_)) && home.story.ledger().standing(e.id).is_some());
    let of = press.unwrap().clone();
    let at = home.story.ledger().standing(of.id).unwrap().happened_at;
    home.tell(of.animal, home.now, Source::Tap, json!({ "kind": "withdrawal", "of": of.id }));
    let after = weeks(&home.story);
    let moved: Vec<_> =
        before.iter().filter(|(week, mark)| after.get(week) != Some(mark)).map(|(week, _)| *week).collect();
    assert_eq!(moved, [sayso_model::Week::of(at)]);
    assert_eq!(weeks(&Story::from_events(home.all.iter().rev().cloned())), after, "the same in any order of arrival");
}
