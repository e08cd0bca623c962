//! Events of all kinds together, by time: read from a place on, at a cost that does not grow with the story.

use crate::event::Event;
use crate::id::*;
use crate::shelf::{ByTime, Key, Shelf, before};
use crate::story::Story;
use crate::time::Moment;
use std::cmp::Reverse;
use std::collections::BinaryHeap;
use std::sync::Arc;

/// Several sequences, each from the largest key down, as one. An event that stands in several comes once for each.
fn merged<'a, K: Ord>(
    sequences: impl Iterator<Item = impl Iterator<Item = &'a Arc<Event>>>,
    key: impl Fn(&Event) -> K,
) -> impl Iterator<Item = &'a Event> {
    let mut sequences: Vec<_> = sequences.collect();
    let mut heads: BinaryHeap<(K, usize)> = BinaryHeap::new();
    let mut next: Vec<Option<&'a Event>> = Vec::with_capacity(sequences.len());
    for (i, sequence) in sequences.iter_mut().enumerate() {
        let head = sequence.next().map(Arc::as_ref);
        heads.extend(head.map(|e| (key(e), i)));
        next.push(head);
    }
    std::iter::from_fn(move || {
        let (_, i) = heads.pop()?;
        let following = sequences.get_mut(i)?.next().map(Arc::as_ref);
        heads.extend(following.map(|e| (key(e), i)));
        std::mem::replace(next.get_mut(i)?, following)
    })
}

impl Story {
    /// Standing events about one animal, or about none, of all kinds, newest first.
    #[must_use]
    pub fn newest(&self, animal: Option<AnimalId>, most: usize) -> Vec<&Event> {
        let shelves = self.shelves().filter(|(l, _)| *l == animal);
        merged(shelves.map(|(_, shelf)| shelf.iter().rev()), |e| (e.happened_at, e.id)).take(most).collect()
    }

    /// Standing events about one animal of all kinds from a moment on and before another, by time. Costs what it gives.
    pub fn all_between(&self, animal: AnimalId, from: Moment, to: Moment) -> impl Iterator<Item = &Event> {
        let shelves = self.shelves().filter(move |(l, _)| *l == Some(animal));
        let within = shelves.map(move |(_, shelf)| shelf.between(Some(before(from)), Some(before(to))));
        merged(within, |e| Reverse((e.happened_at, e.id)))
    }

    /// First records that are or were about one animal, or about none, before a place in time, newest first. Amendments
    /// stand with what they amend.
    pub fn records_before(&self, animal: AnimalId, to: Option<Key>) -> impl Iterator<Item = &Event> {
        let shelves = self.record_shelves(animal).map(move |(amended, shelf)| {
            shelf.between(None, to).rev().filter(move |e| self.is_record(animal, amended, e))
        });
        merged(shelves, |e| (e.happened_at, e.id))
    }

    /// The same from a place in time on, oldest first.
    pub fn records_from(&self, animal: AnimalId, from: Key) -> impl Iterator<Item = &Event> {
        let shelves = self.record_shelves(animal).map(move |(amended, shelf)| {
            shelf.between(Some(from), None).filter(move |e| self.is_record(animal, amended, e))
        });
        merged(shelves, |e| Reverse((e.happened_at, e.id)))
    }

    /// Where first records about an animal, or about none, stand: as they are, or among those that were amended.
    fn record_shelves(&self, animal: AnimalId) -> impl Iterator<Item = (bool, &Shelf<ByTime>)> {
        let standing = self.shelves().filter(move |(l, _)| l.is_none_or(|l| l == animal));
        standing.map(|(_, shelf)| (false, shelf)).chain([(true, self.ledger().amended())])
    }

    /// Whether an event counts as a first record where it stands. What stands of an amended one does not: its first
    /// record does.
    fn is_record(&self, animal: AnimalId, amended: bool, event: &Event) -> bool {
        let ours = |e: &Event| e.animal.is_none_or(|l| l == animal);
        if amended {
            ours(event) || self.ledger().standing(event.id).is_some_and(|e| ours(&e))
        } else {
            !self.ledger().is_amended(event.id)
        }
    }
}
