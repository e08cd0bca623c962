//! Reading a part of a story: what happened in a stretch of time costs as much as that stretch holds, however long the log.

use crate::body::Press;
use crate::event::{Event, Kind, Part, Source};
use crate::id::AnimalId;
use crate::marks::Week;
use crate::story::{Fact, Story};
use crate::time::Moment;
use std::ops::RangeInclusive;

impl Story {
    /// Facts of one kind about one animal that happened from `from` up to `to`, both included, by time.
    pub fn between<'a, P: Part + 'a>(
        &'a self,
        animal: AnimalId,
        from: Moment,
        to: Moment,
    ) -> impl DoubleEndedIterator<Item = Fact<'a, P>> {
        self.part_of(Some(animal), P::KIND, from, to).filter_map(|event| self.fact(event))
    }

    /// As [`Story::between`], of every animal and of none; by animal, then by time.
    pub fn everyones_between<'a, P: Part + 'a>(
        &'a self,
        from: Moment,
        to: Moment,
    ) -> impl Iterator<Item = Fact<'a, P>> {
        let all = self.with_shelves_of(P::KIND).flat_map(move |animal| self.part_of(animal, P::KIND, from, to));
        all.filter_map(|event| self.fact(event))
    }

    /// Heard presses of that stretch, of any animal or none, also where another event counts for one; by animal, then by
    /// time.
    pub fn heard_between(&self, from: Moment, to: Moment) -> impl Iterator<Item = Fact<'_, Press>> {
        let all = self.with_shelves_of(Kind::Press).flat_map(move |animal| self.part_of(animal, Kind::Press, from, to));
        all.filter(|e| e.source == Source::Heard)
            .filter_map(|event| Press::of(&event.body).map(|part| Fact { event, part }))
    }

    /// Every event of a kind as it was first recorded, also those taken back; by id. Remembered are those that say so of
    /// themselves ([`crate::event::About::as_recorded`]).
    pub fn as_recorded(&self, kind: Kind) -> impl Iterator<Item = &Event> {
        self.marks().first(kind).filter_map(|id| self.ledger().first(id))
    }

    /// Tells what the story holds of some weeks from what it held before: the same mark, the same standing events.
    #[must_use]
    pub fn mark_of_weeks(&self, weeks: RangeInclusive<Week>) -> u64 {
        self.marks().weeks(weeks)
    }

    /// The first week and the last in which anything was told.
    #[must_use]
    pub fn weeks(&self) -> Option<(Week, Week)> {
        self.marks().span()
    }
}
