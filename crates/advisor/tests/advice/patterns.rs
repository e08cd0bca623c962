//! Patterns: which records count, and what is said where there is nothing to say.

use sayso_advisor::Case;
use sayso_advisor::patterns::{Patterns, patterns};
use sayso_model::{AnimalId, BoardLayout, Body, Event, EventId, HomeId, Moment, Placed, Source, Story, WordId, Zone};
use serde_json::{Value, json};
use uuid::Uuid;

const PIM: AnimalId = AnimalId(Uuid::from_u128(1));
const OTHER: AnimalId = AnimalId(Uuid::from_u128(2));
const DAY: f64 = 86_400.0;

fn begun() -> Moment {
    "2026-03-02T00:00:00Z".parse().unwrap()
}

fn word(n: usize) -> WordId {
    WordId(Uuid::from_u128(10 + n as u128))
}

#[derive(Clone)]
struct Log(Vec<Event>);

impl Log {
    /// Two animals, and six words in two rows where `board` says so.
    fn new(board: bool) -> Self {
        let mut log = Self(Vec::new());
        for (animal, name) in [(PIM, "Pim"), (OTHER, "Ida")] {
            log.write(0.0, None, json!({ "kind": "animal_card", "animal": animal, "name": name, "species": "cat" }));
        }
        if board {
            let placed = |n: usize| Placed { word: word(n), row: (n / 3) as u8, column: (n % 3) as u8 };
            let layout = BoardLayout { rows: 2, columns: 3, words: (0..6).map(placed).collect(), language: None };
            log.add(0.0, None, Source::Tap, layout.into());
        }
        log
    }

    fn add(&mut self, seconds: f64, animal: Option<AnimalId>, source: Source, body: Body) -> EventId {
        let id = EventId(Uuid::from_u128(100 + self.0.len() as u128));
        let at = begun().plus_seconds(seconds);
        self.0.push(Event {
            id,
            home: HomeId(Uuid::from_u128(3)),
            animal,
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source,
            body,
        });
        id
    }

    fn write(&mut self, seconds: f64, animal: Option<AnimalId>, body: Value) -> EventId {
        self.add(seconds, animal, Source::Tap, serde_json::from_value(body).unwrap())
    }

    fn press(&mut self, animal: AnimalId, seconds: f64, n: usize) -> EventId {
        self.write(seconds, Some(animal), json!({ "kind": "press", "word": word(n), "by": "animal" }))
    }

    fn read(&self, days: f64) -> Patterns {
        patterns(&Case::new(&Story::from_events(self.0.clone()), PIM, begun().plus_seconds(days * DAY))).unwrap()
    }
}

/// Twenty-eight days, three sittings of seven presses each: any word, but after the first often the last. With the number of
/// times the last came after the first.
fn pair_of_words() -> (Log, u64) {
    let mut log = Log::new(true);
    let mut dice = 12_345_u64;
    let mut below = |n: u64| {
        dice = dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (dice >> 33) % n
    };
    let mut times = 0;
    for sitting in 0..84_u32 {
        let at = DAY * f64::from(sitting / 3) + 3600.0 * f64::from(9 + 4 * (sitting % 3));
        let mut last = None;
        for k in 0..7_u32 {
            let n = if last == Some(0) && below(2) == 0 { 5 } else { below(6) };
            times += u64::from(last == Some(0) && n == 5);
            last = Some(n);
            log.press(PIM, at + 4.0 * f64::from(k), n as usize);
        }
    }
    (log, times)
}

#[test]
fn a_word_that_follows_another_is_told_with_its_count_and_what_it_does_not_show() {
    let (log, times) = pair_of_words();
    let found = log.read(28.0).order;
    let first = &found.pairs[0];
    assert!(first.stands_out() && first.times == times && !first.side_by_side, "{found:?}");
    assert_eq!((found.presses, found.n), (588, 504));
}

#[test]
fn only_standing_presses_of_this_animal_up_to_now_count_and_one_told_twice_counts_once() {
    let (plain, _) = pair_of_words();
    let as_it_is = plain.read(28.0);
    let mut log = plain.clone();
    // Another animal's, one after now, one taken back, and each of a day heard as well.
    log.press(OTHER, 3600.0, 2);
    log.press(PIM, 28.0 * DAY + 60.0, 2);
    let wrong = log.press(PIM, 7200.0, 2);
    log.write(7300.0, None, json!({ "kind": "withdrawal", "of": wrong }));
    for event in &plain.0 {
        if let Body::Press(press) = &event.body
            && event.happened_at < begun().plus_seconds(DAY)
        {
            let after = event.happened_at.seconds_since(begun()) + 0.3;
            let heard = json!({ "kind": "press", "word": press.word, "by": "unknown", "certainty": 0.9 });
            log.add(after, Some(PIM), Source::Heard, serde_json::from_value(heard).unwrap());
        }
    }
    assert_eq!(log.read(28.0), as_it_is);
}

#[test]
fn presses_that_double_a_week_are_said_to_by_the_animals_name() {
    let mut log = Log::new(false);
    for week in 0..4_u32 {
        for day in 0..7_u32 {
            for k in 0..2_u32.pow(week) {
                log.press(PIM, DAY * f64::from(7 * week + day) + 3600.0 * f64::from(9 + k), 0);
            }
        }
    }
    let found = log.read(28.0).pace;
    let all = &found[0];
    assert_eq!((all.word, all.presses, all.days), (None, 105, 29));
    let factor = all.factor;
    assert!(factor.low.unwrap() > 1.5 && (1.7..2.4).contains(&factor.value.unwrap()), "{factor:?}");
    assert_eq!(all.by_week.iter().sum::<usize>(), 105);
}

#[test]
fn a_phase_line_compares_days_on_both_sides_and_stops_at_the_next_change() {
    let mut log = Log::new(false);
    for day in 0..28_u32 {
        for k in 0..if day < 14 { 2 } else { 6 } {
            log.press(PIM, DAY * f64::from(day) + 3600.0 * f64::from(9 + k), 0);
        }
    }
    log.write(
        14.0 * DAY + 60.0,
        None,
        json!({ "kind": "house_rule", "rule": Uuid::from_u128(8), "text": "Answer at once." }),
    );
    let found = log.read(28.0).lines;
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].before.value, found[0].after.value), (Some(2.0), Some(6.0)));
    assert!(found[0].points.iter().all(|p| p.0 != 0), "the day itself counts on neither side");
    assert!(found[0].more_after.1 < 0.001 && found[0].more_after.0.value == Some(1.0));
}

#[test]
fn without_records_or_a_board_nothing_is_claimed() {
    let none = Log::new(false).read(3.0);
    assert!(none.pace.is_empty() && none.lines.is_empty() && none.order.pairs.is_empty());
    assert!(none.order.since.is_none() && none.slips.since.is_none(), "there is no board");
    assert!(none.hours.p.is_none() && none.hours.n == 0 && none.hours.lacking.is_some());
    let unpressed = Log::new(true).read(3.0);
    assert_eq!((unpressed.order.n, unpressed.slips.quick), (0, 0));
    assert!(unpressed.slips.share.value.is_none(), "no press is no share of none");
    assert!(patterns(&Case::new(&Story::default(), PIM, begun())).is_none());
}

#[test]
fn quick_presses_beside_the_last_look_like_slips_and_slow_ones_do_not() {
    let mut log = Log::new(true);
    for k in 0..40_u32 {
        let at = DAY / 2.0 * f64::from(k);
        log.press(PIM, at, 0);
        // The second word lies beside the first, the last does not.
        log.press(PIM, at + if k < 20 { 0.6 } else { 60.0 }, if k < 20 { 1 } else { 5 });
    }
    let found = log.read(28.0).slips;
    assert_eq!((found.quick, found.share.n), (20, 80));
    assert!((found.share.value.unwrap() - 0.25).abs() < 0.02, "{:?}", found.share);
    assert!(found.share.low.unwrap() > 0.05, "{:?}", found.share);
}
