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
