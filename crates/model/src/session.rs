//! Sessions put together from their events.

use crate::body::*;
use crate::id::{AnimalId, SessionId};
use crate::story::{Fact, Story};
use crate::time::Moment;
use std::collections::BTreeMap;

/// A session without an end event is over after this long, in seconds: a phone was put away.
pub const OPEN_FOR_S: f64 = 3600.0;
/// Clocks of two devices differ by at most this where nothing is wrong, in seconds (common practice, no source).
const CLOCKS_APART_S: f64 = 60.0;

/// One stretch at the board.
#[derive(Clone, Debug)]
pub struct Session<'a> {
    /// Its start.
    pub start: Fact<'a, SessionStart>,
    /// Its end, if recorded.
    pub end: Option<Fact<'a, SessionEnd>>,
    /// Times the animal opted in.
    pub joinings: Vec<Fact<'a, Joining>>,
    /// Times it opted out.
    pub leavings: Vec<Fact<'a, Leaving>>,
}

impl Session<'_> {
    /// Its id.
    #[must_use]
    pub const fn id(&self) -> SessionId {
        self.start.part.session
    }

    /// Whether the animal took part at all.
    #[must_use]
    pub fn joined(&self) -> bool {
        !self.joinings.is_empty()
    }

    /// Whether the animal left before the end.
    #[must_use]
    pub fn left(&self) -> bool {
        !self.leavings.is_empty() || self.end.is_some_and(|e| e.part.reason == EndReason::AnimalLeft)
    }

    /// Whether it is still going on at `now`.
    #[must_use]
    pub fn open(&self, now: Moment) -> bool {
        // One that begins well after now was written by a clock that is ahead: nobody is at the board.
        self.end.is_none() && (-CLOCKS_APART_S..OPEN_FOR_S).contains(&now.seconds_since(self.start.at()))
    }

    /// Length in seconds, if its end is known.
    #[must_use]
    pub fn seconds(&self) -> Option<f64> {
        self.end.map(|e| e.at().seconds_since(self.start.at()).max(0.0))
    }
}

impl Story {
    /// The sessions of one animal, by time.
    #[must_use]
    pub fn sessions(&self, animal: AnimalId) -> Vec<Session<'_>> {
        let mut sessions: Vec<Session<'_>> = self
            .of::<SessionStart>(animal)
            .map(|start| Session { start, end: None, joinings: Vec::new(), leavings: Vec::new() })
            .collect();
        let index: BTreeMap<SessionId, usize> = sessions.iter().enumerate().map(|(i, s)| (s.id(), i)).collect();
        let find = |id| index.get(&id).copied();
        for fact in self.of::<Joining>(animal) {
            if let Some(i) = find(fact.part.session) {
                sessions[i].joinings.push(fact);
            }
        }
        for fact in self.of::<Leaving>(animal) {
            if let Some(i) = find(fact.part.session) {
                sessions[i].leavings.push(fact);
            }
        }
        for fact in self.of::<SessionEnd>(animal).chain(self.unassigned::<SessionEnd>()) {
            if let Some(i) = find(fact.part.session) {
                sessions[i].end = Some(fact);
            }
        }
        sessions
    }
}
