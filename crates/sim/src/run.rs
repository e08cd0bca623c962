//! Running a household: day by day, or from beginning to end.

use crate::clock::at_hour;
use crate::home::{ConfigError, Home};
use crate::truth::{TrueDay, Truth};
use crate::world::World;
use sayso_model::{Day, Event, Moment};
use std::collections::BTreeSet;

/// A simulated log and the truth behind it.
#[derive(Clone, PartialEq, Debug)]
pub struct Simulated {
    /// Events in the order in which they were recorded; every one passes [`Event::check`].
    pub events: Vec<Event>,
    /// The truth behind them.
    pub truth: Truth,
}

/// A household running day by day.
pub struct Simulation<'a> {
    world: World<'a>,
    first: Day,
    last: Day,
    begin: Moment,
    number: u32,
    days: Vec<TrueDay>,
    written: BTreeSet<sayso_model::EventId>,
}

impl<'a> Simulation<'a> {
    /// Sets a household up so that its last day is that of `end`, in its own zone.
    ///
    /// # Errors
    /// [`ConfigError`] where the configuration does not hold together.
    pub fn new(home: &'a Home, seed: u64, end: Moment) -> Result<Self, ConfigError> {
        home.check()?;
        Ok(Self::unchecked(home, seed, end))
    }

    /// As [`Self::new`], for configurations of our own that the tests check.
    pub(crate) fn unchecked(home: &'a Home, seed: u64, end: Moment) -> Self {
        let last = end.day(&home.zone);
        let back = i32::try_from(home.days.saturating_sub(1)).unwrap_or(0);
        let first = last.plus(-back);
        // Cards are written on the evening before a long run; on the very day, if it starts and ends today.
        let begin = at_hour(first, 5.0, &home.zone).min(end.plus_seconds(-7200.0));
        let world = World::new(home, seed, begin, end);
        Self { world, first, last, begin, number: 0, days: Vec::new(), written: BTreeSet::new() }
    }

    /// Runs the next day and gives its events in the order of recording; none when the end is reached.
    ///
    /// An event can be recorded on a later day than it happened: a phone without network.
    pub fn next_day(&mut self) -> Option<Vec<Event>> {
        let day = self.first.plus(i32::try_from(self.number).ok()?);
        if day > self.last {
            return None;
        }
        if self.number == 0 {
            self.world.write_cards(self.begin);
        }
        self.world.write_day_cards(self.number, day, self.begin);
        for animal in 0..self.world.cfg.animals.len() {
            let lived = self.world.live(animal, self.number, day, day == self.last);
            self.days.push(lived);
        }
        self.number += 1;
        let events = self.world.pen.take();
        self.written.extend(events.iter().map(|e| e.id));
        Some(events)
    }

    /// The truth behind the events given so far.
    #[must_use]
    pub fn into_truth(self) -> Truth {
        self.world.into_truth(self.days, &self.written)
    }

    pub(crate) fn run(mut self) -> Simulated {
        let mut events = Vec::new();
        while let Some(day) = self.next_day() {
            events.extend(day);
        }
        events.sort_by_key(|e| (e.recorded_at, e.id));
        Simulated { events, truth: self.into_truth() }
    }
}

/// Runs a household to `end`. The same household, seed and end give the same events to the byte.
///
/// # Errors
/// [`ConfigError`] where the configuration does not hold together.
///
/// # Example
/// ```
/// use sayso_sim::{Cause, simulate, stuck_home};
/// let end = "2026-06-01T19:00:00Z".parse()?;
/// let home = stuck_home(Cause::DelayTooLong, 7);
/// let run = simulate(&home, 7, end)?;
/// assert!(run.events.iter().all(|e| e.check().is_ok() && e.recorded_at <= end));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn simulate(home: &Home, seed: u64, end: Moment) -> Result<Simulated, ConfigError> {
    Ok(Simulation::new(home, seed, end)?.run())
}
