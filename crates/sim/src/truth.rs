//! The truth behind a simulated log.

use sayso_model::{AnimalId, Day, EventId, HomeId, PersonId, RewardId, SessionId, WordId};
use std::collections::BTreeMap;

/// Why a learner pressed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Why {
    /// It meant this word.
    Meant,
    /// It meant a word next to it.
    Slip,
    /// It took this word for another.
    MixedUp,
    /// It pressed by habit or at random, whatever it wanted.
    Habit,
    /// It did not mean to press.
    Accident,
}

/// The truth about one press by a learner.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct PressTruth {
    /// Which learner (by index).
    pub animal: usize,
    /// Why.
    pub why: Why,
    /// The word of the thing that was wanted, if one was (by index).
    pub wanted: Option<usize>,
    /// The word pressed (by index).
    pub pressed: usize,
}

/// The truth about one session.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SessionTruth {
    /// Which session.
    pub session: SessionId,
    /// Which learner (by index).
    pub animal: usize,
    /// Probability of joining it.
    pub join: f64,
    /// The mood then.
    pub mood: f64,
}

/// The truth about one learner on one day, at the day's end.
#[derive(Clone, PartialEq, Debug)]
pub struct TrueDay {
    /// Which learner (by index).
    pub animal: usize,
    /// The day.
    pub day: Day,
    /// The day's mood.
    pub mood: f64,
    /// By word of the household: probability of a meant press, given wanting and opportunity; 0 for words not taught.
    pub understanding: Vec<f64>,
    /// By reward: probability of wanting it, unsated, averaged over the hours.
    pub wanting: Vec<f64>,
    /// By word: showings so far that the learner took part in.
    pub showings: Vec<u32>,
}

/// Identities, in the order of the configuration.
#[derive(Clone, PartialEq, Debug)]
pub struct Ids {
    /// The household.
    pub home: HomeId,
    /// People.
    pub people: Vec<PersonId>,
    /// Rewards.
    pub rewards: Vec<RewardId>,
    /// Words.
    pub words: Vec<WordId>,
    /// Learners.
    pub animals: Vec<AnimalId>,
}

/// The truth behind a simulated log.
#[derive(Clone, PartialEq, Debug)]
pub struct Truth {
    /// The configuration it came from.
    pub home: crate::home::Home,
    /// Identities, in the order of the configuration.
    pub ids: Ids,
    /// Presses by learners. Holds only presses that are in the log.
    pub presses: BTreeMap<EventId, PressTruth>,
    /// Sessions that are in the log.
    pub sessions: Vec<SessionTruth>,
    /// Day by day.
    pub days: Vec<TrueDay>,
    /// Presses by learners that nobody saw or heard.
    pub unlogged_presses: usize,
}

impl Truth {
    /// The last day of one learner.
    #[must_use]
    pub fn last_day(&self, animal: usize) -> Option<&TrueDay> {
        self.days.iter().rev().find(|d| d.animal == animal)
    }
}
