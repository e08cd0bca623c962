//! Marks of what a story tells, week by week: where they are the same, it tells the same, so that what was
//! worked out from it still holds. And what was first recorded of the kinds that are read as they were recorded.

use crate::event::{Event, Kind};
use crate::id::EventId;
use crate::time::Moment;
use imbl::OrdSet;
use std::collections::BTreeMap;
use std::ops::RangeInclusive;

const WEEK_MS: i64 = 7 * 86_400_000;

/// Seven days in UTC, counted from the first of 1970: the same stretch in every zone.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Week(i32);

impl Week {
    /// The week a moment lies in.
    #[must_use]
    pub fn of(at: Moment) -> Self {
        Self(i32::try_from(at.millis().div_euclid(WEEK_MS)).unwrap_or(i32::MAX))
    }

    /// So many weeks later.
    #[must_use]
    pub const fn plus(self, weeks: i32) -> Self {
        Self(self.0.saturating_add(weeks))
    }

    /// Its first moment.
    #[must_use]
    pub fn begins(self) -> Moment {
        Moment::clamped(i64::from(self.0).saturating_mul(WEEK_MS))
    }
}

/// The marks of a story. Sums of stamps, so that they follow from the set of events, never from the order of arrival.
#[derive(Clone, Default, Debug)]
pub(crate) struct Marks {
    weeks: BTreeMap<Week, u64>,
    first: BTreeMap<Kind, OrdSet<EventId>>,
}

impl Marks {
    /// Remembers an event as first recorded.
    pub(crate) fn record(&mut self, event: &Event) {
        if event.body.about().as_recorded {
            self.first.entry(event.body.kind()).or_default().insert(event.id);
        }
    }

    /// Adds the stamp of an event as it stands by its last amendment.
    pub(crate) fn put(&mut self, event: &Event, last: Option<EventId>) {
        self.turn(event, last, u64::wrapping_add);
    }

    /// Takes the stamp away that [`Marks::put`] added.
    pub(crate) fn take(&mut self, event: &Event, last: Option<EventId>) {
        self.turn(event, last, u64::wrapping_sub);
    }

    fn turn(&mut self, event: &Event, last: Option<EventId>, by: fn(u64, u64) -> u64) {
        let stamp = stamp(event.id).wrapping_add(last.map_or(0, |a| stamp(a).rotate_left(17)));
        let week = self.weeks.entry(Week::of(event.happened_at)).or_insert(0);
        *week = by(*week, stamp);
    }

    pub(crate) fn weeks(&self, weeks: RangeInclusive<Week>) -> u64 {
        let fold = |sum: u64, (week, mark): (&Week, &u64)| {
            mixed(sum ^ mixed(*mark).wrapping_add(u64::from(week.0.unsigned_abs())))
        };
        // A week of which everything was taken back is as one that never had an event.
        self.weeks.range(weeks).filter(|(_, mark)| **mark != 0).fold(0, fold)
    }

    pub(crate) fn first(&self, kind: Kind) -> impl DoubleEndedIterator<Item = EventId> {
        self.first.get(&kind).into_iter().flat_map(|all| all.iter().copied())
    }

    pub(crate) fn span(&self) -> Option<(Week, Week)> {
        Some((*self.weeks.first_key_value()?.0, *self.weeks.last_key_value()?.0))
    }
}

fn stamp(id: EventId) -> u64 {
    let (high, low) = id.0.as_u64_pair();
    mixed(mixed(high) ^ low)
}

/// Spreads every bit over all (the finalizer of SplitMix64: Steele, Lea & Flood 2014).
const fn mixed(x: u64) -> u64 {
    let x = x.wrapping_add(0x9E37_79B9_7F4A_7C15);
    let x = (x ^ (x >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    let x = (x ^ (x >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    x ^ (x >> 31)
}
