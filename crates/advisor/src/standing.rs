//! Where a word stands.

use crate::advice::{Because, Change, NamedWord};
use crate::estimate::Estimate;
use sayso_model::{Moment, Stage, WordId};
use serde::Serialize;

/// Where a word stands.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Standing {
    /// The word.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// The stage people work at: what they chose last, else what the figures point to.
    pub stage: Stage,
    /// What the figures point to.
    pub figures_say: Stage,
    /// Why.
    pub because: Vec<Because>,
    /// What would lead on, or back. Nothing that holds already.
    pub would_change: Vec<Change>,
    /// Showings so far.
    pub showings: usize,
    /// Showings in the last seven days.
    pub showings_week: usize,
    /// Middle delay from press to delivery of the last 21 days, seconds.
    pub delay: Estimate,
    /// Pressed, of wanted: share of the invitations in which it wanted the thing at which it pressed, whichever word.
    pub response: Estimate,
    /// Right, of presses: share of presses at its invitations that were of this word.
    pub right: Estimate,
    /// What chance is for that.
    pub chance: Chance,
    /// Whether right presses are more than chance, by everything so far, at whatever moment that is asked.
    pub above_chance: bool,
    /// Own presses of the last 28 days that count for understanding.
    pub own_presses: usize,
    /// Own presses of the last 28 days that are left out of it: they looked like a stumble.
    pub stumbles: usize,
    /// When it was last shown.
    pub last_shown: Option<Moment>,
    /// Whether it ends a session.
    pub closing: bool,
}

impl Standing {
    /// The word by its name.
    #[must_use]
    pub fn named(&self) -> NamedWord {
        NamedWord { word: self.word, says: self.says.clone() }
    }
}

/// What share of presses would be right by chance.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Chance {
    /// Words on the board.
    pub words: usize,
    /// Share of presses of this word when others are invited: what habit alone brings.
    pub elsewhere: Estimate,
}

impl Chance {
    /// One in so many words.
    #[must_use]
    pub fn even(&self) -> f64 {
        1.0 / self.words.max(2) as f64
    }

    /// The higher of one in so many words and what habit alone brings, the latter from five presses on.
    #[must_use]
    pub fn level(&self) -> f64 {
        let habit = self.elsewhere.value.filter(|_| !self.elsewhere.too_early());
        habit.map_or(self.even(), |habit| habit.max(self.even()))
    }
}
