//! Where a word stands, as it is told to people.

use crate::estimate::Estimate;
use sayso_model::{Moment, Stage, WordId};

/// Where a word stands.
#[derive(Clone, PartialEq, Debug)]
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
    pub because: Vec<String>,
    /// What would change it.
    pub would_change: Vec<String>,
    /// Showings so far.
    pub showings: usize,
    /// Showings in the last seven days.
    pub showings_week: usize,
    /// Middle delay from press to delivery, seconds.
    pub delay: Estimate,
    /// Pressed, of wanted: share of the invitations in which it wanted the thing at which it pressed, whichever word.
    pub response: Estimate,
    /// Right, of presses: share of presses at its invitations that were of this word.
    pub right: Estimate,
    /// What chance is for that.
    pub chance: Chance,
    /// Whether right presses are more than chance, by everything so far, at whatever moment that is asked.
    pub above_chance: bool,
    /// Own presses of the last 28 days.
    pub own_presses: usize,
    /// When it was last shown.
    pub last_shown: Option<Moment>,
}

/// What share of presses would be right by chance.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Chance {
    /// Words on the board.
    pub words: usize,
    /// Share of presses of this word when others are invited: what habit alone brings.
    pub elsewhere: Estimate,
}

impl Chance {
    /// The higher of one in so many words and what habit alone brings, the latter from five presses on.
    #[must_use]
    pub fn level(&self) -> f64 {
        let even = 1.0 / self.words.max(2) as f64;
        self.elsewhere.value.filter(|_| self.elsewhere.n >= 5).map_or(even, |habit| habit.max(even))
    }
}

impl std::fmt::Display for Chance {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "one in {} words would be {:.0} %", self.words.max(2), 100.0 / self.words.max(2) as f64)?;
        if self.elsewhere.n > 0 {
            write!(f, "; when others are invited, this one is pressed in {}", self.elsewhere)?;
        }
        Ok(())
    }
}
