//! What holds a word up in the exercise about that: drawn from the seed, felt at the board, told only afterwards.

use super::character::Traits;
use super::exercise::Exercise;
use super::luck::{Luck, Of};
use super::thing::Thing;
use crate::held_up::Cause;

/// A word that does not get on, and why.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Hidden {
    /// The word.
    pub word: Thing,
    /// Why.
    pub cause: Cause,
}

impl Hidden {
    /// Causes that can be found out at the board in a few minutes. Words that sound alike and people who answer differently take
    /// other words or other people than a rehearsal has.
    pub const CAUSES: [Cause; 6] = [
        Cause::RewardNotWanted,
        Cause::TooLittleShowing,
        Cause::DelayTooLong,
        Cause::DeviceAvoided,
        Cause::PlaceOrNoise,
        Cause::Unwell,
    ];

    /// What an exercise hides; nothing in the others.
    pub(super) fn drawn(exercise: Exercise, luck: Luck) -> Option<Self> {
        let mut c = luck.of(Of::Hides, 0);
        (exercise == Exercise::Stuck)
            .then(|| Self { cause: Self::CAUSES[c.below(Self::CAUSES.len())], word: Thing::ALL[c.below(4)] })
    }

    /// Logits of understanding at the beginning: the others get on.
    pub(super) fn known(self) -> [f64; 4] {
        let mut known = [1.6; 4];
        known[self.word.place()] = match self.cause {
            Cause::DeviceAvoided | Cause::Unwell => 1.2,
            Cause::PlaceOrNoise => -1.0,
            _ => -2.2,
        };
        known
    }

    /// What the animal is like by it.
    pub(super) fn makes(self, mut traits: Traits) -> Traits {
        match self.cause {
            Cause::RewardNotWanted => traits.likes[self.word.place()] = -3.0,
            Cause::Unwell => {
                traits.likes = traits.likes.map(|like| like - 2.4);
                traits.speed *= 0.55;
                traits.comes *= 0.4;
                traits.stays_s *= 0.5;
                traits.latency_s *= 1.6;
                traits.rate *= 0.6;
                traits.asks *= 0.3;
                traits.plays *= 0.3;
            }
            _ => {}
        }
        traits
    }
}

/// What is hidden, and what the person has done about it so far.
#[derive(Clone, Copy, Debug)]
pub(super) struct HeldUp {
    pub hidden: Hidden,
    /// Things are at hand.
    pub ready: bool,
    /// The buttons are softer.
    pub soft: bool,
    /// Windows and doors are closed.
    pub quiet: bool,
    /// When something banged last.
    pub noise_ms: u32,
}

impl HeldUp {
    /// The button that it keeps away from, whose sound is too loud for it, until it is softer.
    pub fn shuts(self) -> Option<Thing> {
        (self.hidden.cause == Cause::DeviceAvoided && !self.soft).then_some(self.hidden.word)
    }
}

impl From<Hidden> for HeldUp {
    fn from(hidden: Hidden) -> Self {
        Self { hidden, ready: false, soft: false, quiet: false, noise_ms: 0 }
    }
}
