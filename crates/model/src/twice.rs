//! One press told twice: a person tapped it and a microphone heard it. It is counted once, as the person told it. Each
//! microphone that heard it tells it once more; what two of them heard is in [`crate::ears`].

use crate::body::{Press, PressedBy};
use crate::event::{Event, Part, Source};
use crate::id::{EventId, StreamId};
use std::collections::BTreeSet;

/// A heard press and a tapped one of the same word this close are one press, in seconds: a person taps about when the
/// word sounds, or up to a second after (common practice, no source).
pub const SAME_PRESS_S: f64 = 1.5;

/// Which heard presses are told by another event too, as (heard, the other). `presses` are standing presses of one word,
/// by (time, id). A tap is paired with one press of each stream at most; in order of time, so that as many pairs are found
/// as there can be.
pub(crate) fn pairs(presses: &[&Event]) -> Vec<(EventId, EventId)> {
    let (heard, told): (Vec<&Event>, Vec<&Event>) = presses.iter().partition(|e| e.source == Source::Heard);
    let mut used = BTreeSet::new();
    let mut found = Vec::new();
    for h in heard {
        let from = told.partition_point(|t| h.happened_at.seconds_since(t.happened_at) > SAME_PRESS_S);
        let near = told[from..].iter().take_while(|t| t.happened_at.seconds_since(h.happened_at) <= SAME_PRESS_S);
        if let Some(t) = near.into_iter().find(|t| !used.contains(&(t.id, stream(h))) && may_be_one(h, t)) {
            used.insert((t.id, stream(h)));
            found.push((h.id, t.id));
        }
    }
    found
}

fn stream(heard: &Event) -> Option<StreamId> {
    Press::of(&heard.body).and_then(|p| p.stream)
}

/// Whether nothing that was told of a heard press speaks against its being the other one.
fn may_be_one(heard: &Event, told: &Event) -> bool {
    let animals = heard.animal.is_none() || told.animal.is_none() || heard.animal == told.animal;
    let by = |e: &Event| Press::of(&e.body).map_or(PressedBy::Unknown, |p| p.by);
    animals && (by(heard) == PressedBy::Unknown || by(told) == PressedBy::Unknown || by(heard) == by(told))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::body::{Accident, Correction, Withdrawal};
    use crate::event::Body;
    use crate::id::{AnimalId, HomeId, WordId};
    use crate::story::Story;
    use crate::time::{Moment, Zone};
    use crate::units::Probability;
    use uuid::Uuid;

    const DOG: AnimalId = AnimalId(Uuid::from_u128(7));

    fn press(n: u128, source: Source, word: u128, at_s: f64) -> Event {
        let by = if source == Source::Heard { PressedBy::Unknown } else { PressedBy::Animal };
        Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(1)),
            animal: Some(DOG),
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

    /// Every order of arrival tells the same.
    fn told(events: &[Event]) -> Vec<u128> {
        let whole = counted(&Story::from_events(events.iter().cloned()));
        for turn in 0..events.len() {
            for backwards in [false, true] {
                let mut order = events.to_vec();
                order.rotate_left(turn);
                if backwards {
                    order.reverse();
                }
                let mut story = Story::default();
                for event in order {
                    story.add(event);
                }
                assert_eq!(counted(&story), whole);
            }
        }
        whole
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
}
