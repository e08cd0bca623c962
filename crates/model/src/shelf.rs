//! Events in one order, kept in runs that later and earlier copies of a shelf share. A copy costs a pointer or two, and
//! adding an event copies the pointers of one run, however many events there are.

use crate::event::Event;
use crate::id::EventId;
use crate::time::Moment;
use imbl::Vector;
use std::sync::Arc;
use uuid::Uuid;

/// Most events in a run.
const MOST: usize = 128;

/// What a shelf is ordered by. No two events of a shelf have the same key.
pub(crate) trait Order: Clone + Default {
    /// The key.
    type Key: Ord + Copy + std::fmt::Debug;
    /// The key of an event.
    fn key(event: &Event) -> Self::Key;
}

/// A place in time: when an event happened, and its id.
pub type Key = (Moment, EventId);

/// The place before all that happened at a moment.
pub(crate) const fn before(at: Moment) -> Key {
    (at, EventId(Uuid::nil()))
}

/// The place after all that happened at a moment.
pub(crate) const fn after(at: Moment) -> Key {
    (at, EventId(Uuid::max()))
}

/// By id.
#[derive(Clone, Default, Debug)]
pub(crate) struct ById;

impl Order for ById {
    type Key = EventId;
    fn key(event: &Event) -> EventId {
        event.id
    }
}

/// By the time it happened, then by id.
#[derive(Clone, Default, Debug)]
pub(crate) struct ByTime;

impl Order for ByTime {
    type Key = (Moment, EventId);
    fn key(event: &Event) -> Self::Key {
        (event.happened_at, event.id)
    }
}

/// A run and the key of its first event, so that a search reads no event but in the last run.
type Run<O> = (<O as Order>::Key, Arc<Vec<Arc<Event>>>);

/// Events in order.
#[derive(Clone, Debug)]
pub(crate) struct Shelf<O: Order> {
    runs: Vector<Run<O>>,
    len: usize,
}

impl<O: Order> Default for Shelf<O> {
    fn default() -> Self {
        Self { runs: Vector::new(), len: 0 }
    }
}

impl<O: Order> Shelf<O> {
    /// Of events in any order; of several with one key the first stays.
    pub fn of(mut events: Vec<Arc<Event>>) -> Self {
        // Mostly they come in order, which costs one look at each.
        events.sort_by_key(|e| O::key(e));
        events.dedup_by_key(|e| O::key(e));
        let len = events.len();
        let mut runs = Vector::new();
        let mut rest = events.into_iter();
        loop {
            let run: Vec<_> = rest.by_ref().take(MOST).collect();
            let Some(first) = run.first() else { return Self { runs, len } };
            runs.push_back((O::key(first), Arc::new(run)));
        }
    }

    /// How many events.
    pub const fn len(&self) -> usize {
        self.len
    }

    fn run(&self, number: usize) -> &[Arc<Event>] {
        self.runs.get(number).map_or(&[], |(_, run)| run.as_slice())
    }

    /// The run in which a key is or would be; 0 where it comes before all.
    fn run_of(&self, key: O::Key) -> usize {
        let (mut low, mut high) = (0, self.runs.len());
        while low < high {
            let middle = low.midpoint(high);
            match self.runs.get(middle) {
                Some((first, _)) if *first <= key => low = middle + 1,
                _ => high = middle,
            }
        }
        low.saturating_sub(1)
    }

    /// The place of the first event that does not come before a key.
    fn place(&self, key: O::Key) -> (usize, usize) {
        let number = self.run_of(key);
        (number, self.run(number).partition_point(|e| O::key(e) < key))
    }

    /// The event of that key.
    pub fn get(&self, key: O::Key) -> Option<&Arc<Event>> {
        let (number, place) = self.place(key);
        self.run(number).get(place).filter(|e| O::key(e) == key)
    }

    /// Puts an event in; one of the same key stays.
    pub fn insert(&mut self, event: Arc<Event>) {
        let key = O::key(&event);
        let (number, place) = self.place(key);
        let last = number + 1 >= self.runs.len();
        let Some((first, run)) = self.runs.get_mut(number) else {
            self.runs.push_back((key, Arc::new(vec![event])));
            self.len = 1;
            return;
        };
        if run.get(place).is_some_and(|e| O::key(e) == key) {
            return;
        }
        self.len += 1;
        if run.len() < MOST {
            *first = key.min(*first);
            Arc::make_mut(run).insert(place, event);
        } else if last && place == run.len() {
            // Most events come in order: runs of the past are full.
            self.runs.push_back((key, Arc::new(vec![event])));
        } else {
            let mut left = run.to_vec();
            left.insert(place, event);
            let right = left.split_off(MOST / 2);
            (*first, *run) = (key.min(*first), Arc::new(left));
            if let Some(begin) = right.first() {
                self.runs.insert(number + 1, (O::key(begin), Arc::new(right)));
            }
        }
    }

    /// Takes an event out.
    pub fn remove(&mut self, key: O::Key) {
        let (number, place) = self.place(key);
        let Some((first, run)) = self.runs.get_mut(number) else { return };
        if run.get(place).is_none_or(|e| O::key(e) != key) {
            return;
        }
        self.len -= 1;
        let run = Arc::make_mut(run);
        run.remove(place);
        match run.first() {
            Some(begin) => *first = O::key(begin),
            None => drop(self.runs.remove(number)),
        }
    }

    /// All events in order.
    pub fn iter(&self) -> impl DoubleEndedIterator<Item = &Arc<Event>> + use<'_, O> {
        self.between(None, None)
    }

    /// Events from a key on, up to another key, that one left out.
    pub fn between(
        &self,
        from: Option<O::Key>,
        to: Option<O::Key>,
    ) -> impl DoubleEndedIterator<Item = &Arc<Event>> + use<'_, O> {
        let (first, begin) = from.map_or((0, 0), |key| self.place(key));
        let (last, end) = to.map_or((self.runs.len(), 0), |key| self.place(key));
        (first..(last + 1).min(self.runs.len())).flat_map(move |number| {
            let run = self.run(number);
            let low = if number == first { begin } else { 0 };
            let high = if number == last { end } else { run.len() };
            run.get(low..high).unwrap_or_default().iter()
        })
    }

    /// How many runs are not one with the runs of another shelf.
    #[cfg(test)]
    pub fn runs_apart(&self, other: &Self) -> usize {
        self.runs.iter().filter(|(_, run)| !other.runs.iter().any(|(_, o)| Arc::ptr_eq(run, o))).count()
    }
}
