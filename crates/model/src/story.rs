//! The story a log tells: events as they stand, on shelves by animal and kind, in order of time.

use crate::body::Press;
use crate::ears::Ears;
use crate::event::{Event, Kind, Part, Source};
use crate::id::*;
use crate::ledger::{Inserted, Ledger};
use crate::marks::Marks;
use crate::shelf::{ByTime, Shelf, after, before};
use crate::time::Moment;
use crate::twice::{SAME_PRESS_S, pairs};
use imbl::OrdMap;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// One standing event seen as its kind.
#[derive(Debug)]
pub struct Fact<'a, P> {
    /// The whole event.
    pub event: &'a Event,
    /// Its content.
    pub part: &'a P,
}

impl<P> Clone for Fact<'_, P> {
    fn clone(&self) -> Self {
        *self
    }
}
impl<P> Copy for Fact<'_, P> {}

impl<P> Fact<'_, P> {
    /// Its id.
    #[must_use]
    pub const fn id(&self) -> EventId {
        self.event.id
    }
    /// When it happened.
    #[must_use]
    pub const fn at(&self) -> Moment {
        self.event.happened_at
    }
    /// Who was there.
    #[must_use]
    pub const fn person(&self) -> Option<PersonId> {
        self.event.person
    }
    /// How it came in.
    #[must_use]
    pub const fn source(&self) -> Source {
        self.event.source
    }
}

/// All that is known of one household. A copy shares with the original what both hold, so that one may grow while the
/// other is read, at no cost.
#[derive(Clone, Default, Debug)]
pub struct Story {
    ledger: Ledger,
    shelves: BTreeMap<(Option<AnimalId>, Kind), Shelf<ByTime>>,
    /// Heard presses that a person or device told too, by what these told.
    twice: OrdMap<EventId, EventId>,
    /// Heard presses that several devices heard.
    ears: Ears,
    /// Which weeks were touched, and what is read as it was recorded.
    marks: Marks,
}

impl Story {
    /// The story of a set of events, in any order; of several of one id the first is kept.
    #[must_use]
    pub fn from_events<E: Into<Arc<Event>>>(events: impl IntoIterator<Item = E>) -> Self {
        let ledger = Ledger::of(events.into_iter().map(Into::into).collect());
        let mut shelves: BTreeMap<_, Vec<Arc<Event>>> = BTreeMap::new();
        let mut marks = Marks::default();
        for (event, last) in ledger.all_standing() {
            marks.put(&event, last);
            shelves.entry((event.animal, event.body.kind())).or_default().push(event);
        }
        ledger.all().for_each(|event| marks.record(event));
        let shelves = shelves.into_iter().map(|(key, events)| (key, Shelf::of(events))).collect();
        let mut story = Self { ledger, shelves, twice: OrdMap::new(), ears: Ears::default(), marks };
        story.ears = Ears::of(story.presses());
        let heard: BTreeSet<_> = story.presses().filter(|e| e.source == Source::Heard).map(|e| e.body.word()).collect();
        let mut by_word: BTreeMap<Option<WordId>, Vec<&Event>> = BTreeMap::new();
        for event in story.presses().filter(|e| heard.contains(&e.body.word())) {
            by_word.entry(event.body.word()).or_default().push(event);
        }
        let twice = by_word.into_values().flat_map(|mut presses| {
            presses.sort_by_key(|e| (e.happened_at, e.id));
            pairs(&presses)
        });
        story.twice = twice.collect();
        story
    }

    /// Standing events by time, each shelf of one kind and one animal or none.
    pub(crate) fn shelves(&self) -> impl Iterator<Item = (Option<AnimalId>, &Shelf<ByTime>)> {
        self.shelves.iter().map(|((animal, _), shelf)| (*animal, shelf))
    }

    pub(crate) const fn marks(&self) -> &Marks {
        &self.marks
    }

    /// Standing events of a kind, of any animal or none.
    pub(crate) fn standing_of(&self, kind: Kind) -> impl Iterator<Item = &Event> {
        let shelves = self.shelves.iter().filter(move |((_, of), _)| *of == kind);
        shelves.flat_map(|(_, shelf)| shelf.iter()).map(Arc::as_ref)
    }

    /// Whom anything of a kind was told of.
    pub(crate) fn with_shelves_of(&self, of: Kind) -> impl Iterator<Item = Option<AnimalId>> {
        self.shelves.keys().filter(move |(_, kind)| *kind == of).map(|(animal, _)| *animal)
    }

    /// The part of a shelf that happened from `from` up to `to`.
    pub(crate) fn part_of(
        &self,
        animal: Option<AnimalId>,
        kind: Kind,
        from: Moment,
        to: Moment,
    ) -> impl DoubleEndedIterator<Item = &Event> {
        let shelf = self.shelves.get(&(animal, kind)).into_iter();
        shelf.flat_map(move |shelf| shelf.between(Some(before(from)), Some(after(to)))).map(Arc::as_ref)
    }

    fn press_shelves(&self) -> impl Iterator<Item = &Shelf<ByTime>> {
        self.shelves.iter().filter(|((_, kind), _)| *kind == Kind::Press).map(|(_, shelf)| shelf)
    }

    fn presses(&self) -> impl Iterator<Item = &Event> {
        self.standing_of(Kind::Press)
    }

    /// Looks anew at which presses of a word around a moment were told twice.
    fn pair_around(&mut self, word: WordId, at: Moment) {
        let (mut from, mut to) = (at.plus_seconds(-SAME_PRESS_S), at.plus_seconds(SAME_PRESS_S));
        let (near, found) = loop {
            let mut near: Vec<&Event> = Vec::new();
            for shelf in self.press_shelves() {
                let inside = shelf.between(Some(before(from)), Some(after(to))).map(Arc::as_ref);
                near.extend(inside.filter(|e| e.body.word() == Some(word)));
            }
            near.sort_by_key(|e| (e.happened_at, e.id));
            let low = near.first().map_or(at, |e| e.happened_at).plus_seconds(-SAME_PRESS_S);
            let high = near.last().map_or(at, |e| e.happened_at).plus_seconds(SAME_PRESS_S);
            if low >= from && high <= to {
                break (near.iter().map(|e| e.id).collect::<Vec<_>>(), pairs(&near));
            }
            // Presses in quick succession hang together: wider, until none stands at the edge.
            (from, to) = (low.min(from), high.max(to));
        };
        for id in near {
            self.twice.remove(&id);
        }
        self.twice.extend(found);
    }

    /// Adds one event; the story is then as if it had been there from the start.
    pub fn add(&mut self, event: impl Into<Arc<Event>>) -> Inserted {
        let event = event.into();
        let id = event.body.amends().unwrap_or(event.id);
        let before = self.ledger.standing_by(id);
        let inserted = self.ledger.insert(Arc::clone(&event));
        if inserted == Inserted::New {
            self.marks.record(&event);
            let now = self.ledger.standing_by(id);
            if let Some((old, last)) = &before {
                self.marks.take(old, *last);
            }
            if let Some((new, last)) = &now {
                self.marks.put(new, *last);
            }
            let (before, now) = (before.map(|b| b.0), now.map(|n| n.0));
            let press = |e: &Event| e.body.word().filter(|_| e.body.kind() == Kind::Press).map(|w| (w, e.happened_at));
            let touched = [before.as_deref().and_then(press), now.as_deref().and_then(press)];
            self.ears.turn(before.as_deref(), now.as_deref());
            if let Some(old) = before
                && let Some(shelf) = self.shelves.get_mut(&(old.animal, old.body.kind()))
            {
                shelf.remove((old.happened_at, old.id));
                self.twice.remove(&id);
            }
            if let Some(new) = now {
                self.shelves.entry((new.animal, new.body.kind())).or_default().insert(new);
            }
            for (word, at) in touched.into_iter().flatten() {
                self.pair_around(word, at);
            }
        }
        inserted
    }

    /// The set of events behind the story.
    #[must_use]
    pub const fn ledger(&self) -> &Ledger {
        &self.ledger
    }

    /// The event that counts for a heard press which a person or another device told too (see [`crate::twice`] and
    /// [`crate::ears`]).
    #[must_use]
    pub fn same_press(&self, heard: EventId) -> Option<EventId> {
        let all = self.ears.with(heard);
        let told = [heard].iter().chain(all).find_map(|id| self.twice.get(id));
        told.or_else(|| all.first().filter(|first| **first != heard)).copied()
    }

    /// Every standing press that was heard, also where another event counts for it; by animal, then by time.
    pub fn heard_presses(&self) -> impl Iterator<Item = Fact<'_, Press>> {
        let heard = self.presses().filter(|e| e.source == Source::Heard);
        heard.filter_map(|event| Press::of(&event.body).map(|part| Fact { event, part }))
    }

    /// Whether an event is a fact of its own, not another telling of one.
    fn counts(&self, event: &Event) -> bool {
        event.source != Source::Heard || self.same_press(event.id).is_none()
    }

    pub(crate) fn fact<'a, P: Part>(&self, event: &'a Event) -> Option<Fact<'a, P>> {
        if self.counts(event) { P::of(&event.body).map(|part| Fact { event, part }) } else { None }
    }

    /// Facts of one kind about one animal, by time. Of a press told twice only the one that counts is among them, here
    /// and in what follows.
    pub fn of<'a, P: Part + 'a>(&'a self, animal: AnimalId) -> impl DoubleEndedIterator<Item = Fact<'a, P>> {
        self.shelf(Some(animal))
    }

    /// Facts of one kind that name no animal, by time.
    pub fn unassigned<'a, P: Part + 'a>(&'a self) -> impl DoubleEndedIterator<Item = Fact<'a, P>> {
        self.shelf(None)
    }

    /// Facts of one kind about anyone; by animal, then by time.
    pub fn everyones<'a, P: Part + 'a>(&'a self) -> impl Iterator<Item = Fact<'a, P>> {
        self.standing_of(P::KIND).filter_map(|event| self.fact(event))
    }

    fn shelf<'a, P: Part + 'a>(&'a self, animal: Option<AnimalId>) -> impl DoubleEndedIterator<Item = Fact<'a, P>> {
        let shelf = self.shelves.get(&(animal, P::KIND));
        shelf.into_iter().flat_map(Shelf::iter).filter_map(|event| self.fact(event))
    }

    pub(crate) fn cards<'a, P: Part + 'a, K: Ord>(&'a self, key: impl Fn(&P) -> K) -> BTreeMap<K, &'a P> {
        let mut all: Vec<Fact<'_, P>> = self.everyones().collect();
        all.sort_by_key(|f| (f.at(), f.id()));
        all.into_iter().map(|f| (key(f.part), f.part)).collect()
    }

    /// The newest card of those that are meant.
    pub(crate) fn newest_card<'a, P: Part + 'a>(&'a self, meant: impl Fn(&P) -> bool) -> Option<&'a P> {
        self.everyones().filter(|f: &Fact<'_, P>| meant(f.part)).max_by_key(|f| (f.at(), f.id())).map(|f| f.part)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::text::Note;
    use crate::{HomeId, Remark, Zone};
    use uuid::Uuid;

    fn remark(n: u128) -> Event {
        Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(1)),
            animal: None,
            person: None,
            happened_at: Moment::clamped(1_800_000_000_000).plus_seconds(n as f64),
            zone: Zone::utc(),
            recorded_at: Moment::clamped(1_800_000_000_000),
            source: Source::Tap,
            body: Remark { text: Note::new("so it was").unwrap() }.into(),
        }
    }

    /// What a story holds of its own, not shared with another: runs of events.
    fn apart(story: &Story, other: &Story) -> usize {
        let shelves = story.shelves.iter().map(|(key, shelf)| shelf.runs_apart(&other.shelves[key]));
        shelves.sum::<usize>() + story.ledger.runs_apart(&other.ledger)
    }

    #[test]
    fn a_story_that_is_read_stays_as_it_was_and_growing_copies_next_to_nothing() {
        // Even numbers first, so that odd ones come in between and not only at the end.
        for many in [1_000, 20_000] {
            let mut story = Story::from_events((0..many).map(|n| remark(2 * n)));
            for late in [2 * many, many + 1, 1] {
                let (read, before) = (story.clone(), story.ledger().len());
                assert_eq!(apart(&story, &read), 0, "a copy shares all");
                story.add(remark(late));
                assert_eq!((read.ledger().len(), read.everyones::<Remark>().count()), (before, before));
                assert!(read.ledger().first(remark(late).id).is_none());
                assert!(story.ledger().first(remark(late).id).is_some());
                // The run that grew, in the set and on its shelf; two each where it was full.
                assert!(apart(&story, &read) <= 4, "{} of {many}", apart(&story, &read));
            }
        }
    }

    #[test]
    fn an_event_stands_once_in_memory() {
        let story = Story::from_events((0..10).map(remark));
        let on_shelf: Vec<&Event> = story.everyones::<Remark>().map(|f| f.event).collect();
        assert!(story.ledger().all().zip(on_shelf).all(|(a, b)| std::ptr::eq(a, b)));
    }
}
