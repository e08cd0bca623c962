//! A press that a person tapped and a microphone heard counts once, as it was tapped.

use crate::{in_orders, press};
use sayso_model::{AnimalId, Body, Correction, Event, EventId, PressedBy, Source, Story, Withdrawal};
use uuid::Uuid;

/// What counts; the same in every order of arrival that is a turn of this one, either way round.
fn told(events: &[Event]) -> Vec<u128> {
    let turned = (0..events.len()).flat_map(|turn| {
        let mut order = events.to_vec();
        order.rotate_left(turn);
        let backwards = order.iter().rev().cloned().collect();
        [order, backwards]
    });
    in_orders(events, turned)
}

#[test]
fn a_press_tapped_and_heard_counts_once_as_it_was_tapped() {
    let events = [press(1, Source::Heard, 5, 10.0), press(2, Source::Tap, 5, 10.9)];
    assert_eq!(told(&events), [2]);
    let story = Story::from_events(events);
    assert_eq!(story.same_press(EventId(Uuid::from_u128(1))), Some(EventId(Uuid::from_u128(2))));
    assert_eq!(story.heard_presses().count(), 1, "its sound still tells of the button");
}

#[test]
fn other_words_other_moments_and_what_people_say_otherwise_stay_apart() {
    assert_eq!(told(&[press(1, Source::Heard, 5, 10.0), press(2, Source::Tap, 6, 10.0)]), [1, 2]);
    assert_eq!(told(&[press(1, Source::Heard, 5, 10.0), press(2, Source::Tap, 5, 11.6)]), [1, 2]);
    let mut another = press(2, Source::Tap, 5, 10.0);
    another.animal = Some(AnimalId(Uuid::from_u128(8)));
    assert_eq!(told(&[press(1, Source::Heard, 5, 10.0), another]), [1, 2]);
    let mut mine = press(3, Source::Heard, 5, 10.2);
    if let Body::Press(p) = &mut mine.body {
        p.by = PressedBy::Person;
    }
    assert_eq!(
        told(&[mine, press(4, Source::Tap, 5, 10.0)]),
        [3, 4],
        "judged to be a person's, tapped as the animal's"
    );
    assert_eq!(told(&[press(1, Source::Heard, 5, 1.0), press(2, Source::Heard, 5, 2.0)]), [1, 2]);
}

#[test]
fn a_tap_takes_one_heard_press_and_quick_presses_pair_in_order() {
    let heard = |n, s| press(n, Source::Heard, 5, s);
    let tap = |n, s| press(n, Source::Tap, 5, s);
    assert_eq!(told(&[heard(1, 10.0), heard(2, 10.8), tap(3, 10.9)]), [2, 3]);
    assert_eq!(told(&[heard(1, 0.0), heard(2, 1.2), tap(3, 1.0), tap(4, 2.2)]), [3, 4]);
}

#[test]
fn taking_back_or_moving_the_tap_brings_the_heard_press_back() {
    let (h, t) = (press(1, Source::Heard, 5, 10.0), press(2, Source::Tap, 5, 10.5));
    let amend = |n, body: Body| Event { id: EventId(Uuid::from_u128(n)), body, ..t.clone() };
    let gone = amend(3, Withdrawal { of: t.id, because: None }.into());
    assert_eq!(told(&[h.clone(), t.clone(), gone]), [1]);
    let later = Some(t.happened_at.plus_seconds(60.0));
    let moved =
        amend(4, Correction { of: t.id, happened_at: later, animal: None, body: Box::new(t.body.clone()) }.into());
    assert_eq!(told(&[h, t, moved]), [1, 2]);
}
