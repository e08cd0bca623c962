//! A press that several devices heard counts once, whatever their clocks say.

use crate::{in_orders, press};
use sayso_model::{Body, Correction, Event, EventId, PressedBy, Probability, Source, Story, StreamId};
use uuid::Uuid;

/// Numbers from 0 to 1 that follow from a seed.
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as f64 / (1u64 << 31) as f64
    }

    fn shuffled<T>(&mut self, mut all: Vec<T>) -> Vec<T> {
        (1..all.len()).rev().for_each(|i| all.swap(i, (self.next() * (i + 1) as f64) as usize));
        all
    }
}

fn heard(n: u128, stream: u128, word: u128, at_s: f64) -> Event {
    let mut event = press(n, Source::Heard, word, at_s);
    if let Body::Press(p) = &mut event.body {
        (p.stream, p.certainty) = (Some(StreamId(Uuid::from_u128(stream))), Probability::clamped(0.9));
    }
    event
}

fn tapped(n: u128, word: u128, at_s: f64) -> Event {
    press(n, Source::Tap, word, at_s)
}

/// What counts; the same in four orders of arrival drawn by chance.
fn told(events: &[Event]) -> Vec<u128> {
    in_orders(events, (0..4).map(|seed| Chance(seed).shuffled(events.to_vec())))
}

/// Presses of a learner that means nothing: any word, at any moment of `minutes`.
fn pressed(chance: &mut Chance, n: usize, words: f64, minutes: f64) -> Vec<(f64, u128)> {
    let mut all: Vec<(f64, u128)> =
        (0..n).map(|_| (chance.next() * minutes * 60.0, 100 + (chance.next() * words) as u128)).collect();
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    all
}

/// What a device notes of them: it misses some, its clock is ahead, its onsets are a few hundredths off.
fn noted(chance: &mut Chance, presses: &[(f64, u128)], stream: u128, ahead_s: f64, misses: f64) -> Vec<(usize, Event)> {
    let mut found = Vec::new();
    for (i, (at, word)) in presses.iter().enumerate() {
        let off = (chance.next() - 0.5) * 0.06;
        if chance.next() >= misses {
            found.push((i, heard(1000 * stream + i as u128, stream, *word, at + ahead_s + off)));
        }
    }
    found
}

#[test]
fn two_devices_with_clocks_apart_count_each_press_once() {
    let (mut all, mut wrong) = (0, 0);
    for seed in 0..60 {
        let mut chance = Chance(seed);
        let presses = pressed(&mut chance, 30, 4.0, 40.0);
        let ahead = (chance.next() - 0.5) * 50.0;
        let one = noted(&mut chance, &presses, 1, 0.0, 0.15);
        let other = noted(&mut chance, &presses, 2, ahead, 0.15);
        let mut truly: Vec<usize> = one.iter().chain(&other).map(|(i, _)| *i).collect();
        truly.sort_unstable();
        truly.dedup();
        let events: Vec<Event> = one.into_iter().chain(other).map(|(_, e)| e).collect();
        all += truly.len();
        wrong += told(&events).len().abs_diff(truly.len());
    }
    // Presses of one word within half a second of which each device missed another cannot be told from one.
    assert!(1000 * wrong <= 2 * all, "{wrong} of {all} miscounted");
}

#[test]
fn three_devices_count_each_press_once() {
    for seed in 0..20 {
        let mut chance = Chance(seed);
        let presses = pressed(&mut chance, 25, 3.0, 30.0);
        let all: Vec<(usize, Event)> = [(1, 0.0), (2, 11.0), (3, -4.0)]
            .into_iter()
            .flat_map(|(stream, ahead)| noted(&mut chance, &presses, stream, ahead, 0.1))
            .collect();
        let truly: std::collections::BTreeSet<usize> = all.iter().map(|(i, _)| *i).collect();
        let events: Vec<Event> = all.into_iter().map(|(_, e)| e).collect();
        assert_eq!(told(&events).len(), truly.len(), "seed {seed}");
    }
}

#[test]
fn devices_in_two_rooms_at_two_boards_lose_few_presses_to_chance() {
    let (mut true_count, mut count) = (0, 0);
    for seed in 0..40 {
        let mut chance = Chance(1000 + seed);
        let (here, there) = (pressed(&mut chance, 20, 4.0, 60.0), pressed(&mut chance, 20, 4.0, 60.0));
        let one = noted(&mut chance, &here, 1, 0.0, 0.0);
        let other = noted(&mut chance, &there, 2, 0.0, 0.0);
        true_count += one.len() + other.len();
        count += told(&one.into_iter().chain(other).map(|(_, e)| e).collect::<Vec<_>>()).len();
    }
    let lost = (true_count - count) as f64 / true_count as f64;
    // Presses of one word within 1.5 s of one another by chance: 20 x 20 / 4 x 3 s / 3600 s of 40 = 0.2 %.
    assert!(lost < 0.01, "{lost:.4} of {true_count} presses taken for others");
}

#[test]
fn the_surer_counts_and_what_a_person_said_of_one_counts_for_all() {
    let (mut faint, clear) = (heard(1, 1, 100, 10.0), heard(2, 2, 100, 10.3));
    if let Body::Press(p) = &mut faint.body {
        p.certainty = Probability::clamped(0.6);
    }
    assert_eq!(told(&[faint.clone(), clear.clone()]), [2]);
    let mut said = faint.body.clone();
    if let Body::Press(p) = &mut said {
        p.by = PressedBy::Animal;
    }
    let judged = Event {
        id: EventId(Uuid::from_u128(3)),
        source: Source::Tap,
        body: Correction { of: faint.id, happened_at: None, animal: None, body: Box::new(said) }.into(),
        ..faint.clone()
    };
    assert_eq!(told(&[faint, clear, judged]), [1]);
}

#[test]
fn a_tap_stands_for_what_both_devices_heard() {
    let events = [heard(1, 1, 100, 10.0), heard(2, 2, 100, 10.2), tapped(3, 100, 10.9)];
    assert_eq!(told(&events), [3]);
    let story = Story::from_events(events);
    assert_eq!(story.heard_presses().count(), 2, "both sounds still tell of the button");
    // The clock of one device is 8 s ahead: it stands for the tap by way of the other.
    let mut apart: Vec<Event> = Vec::new();
    for (i, at) in [0.0, 40.0, 95.0].into_iter().enumerate() {
        let n = 10 * (i as u128 + 1);
        apart.extend([heard(n, 1, 100, at), heard(n + 1, 2, 100, at + 8.0), tapped(n + 2, 100, at + 0.8)]);
    }
    assert_eq!(told(&apart), [12, 22, 32]);
}

#[test]
fn one_device_hears_quick_presses_apart_and_notes_without_a_stream_stay_as_they_were() {
    assert_eq!(told(&[heard(1, 1, 100, 10.0), heard(2, 1, 100, 10.6)]), [1, 2]);
    assert_eq!(told(&[heard(1, 1, 100, 10.0), heard(2, 2, 101, 10.0)]), [1, 2], "another word");
    let mut earlier = heard(2, 2, 100, 10.1);
    if let Body::Press(p) = &mut earlier.body {
        p.stream = None;
    }
    assert_eq!(told(&[heard(1, 1, 100, 10.0), earlier]), [1, 2]);
}
