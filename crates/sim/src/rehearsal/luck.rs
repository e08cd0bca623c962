//! Chance of a rehearsal: each draw follows from the seed, what it decides, and the moment. So the same animal meets the same
//! luck at the same moment, whatever the person does, and two ways of teaching can be held against each other.

use crate::chance::Chance;

/// What a draw decides.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
#[repr(u8)]
pub(super) enum Of {
    Likes,
    Wants,
    Moves,
    Touches,
    Brushes,
    Looks,
    Presses,
    Takes,
    Signs,
    Offers,
    Pairs,
    Chooses,
    Goes,
    Hides,
    Noises,
    First,
}

/// The luck of one rehearsal.
#[derive(Clone, Copy, Debug)]
pub(super) struct Luck(pub u64);

impl Luck {
    /// The draws about something at a moment.
    pub fn of(self, what: Of, ms: u32) -> Chance {
        Chance::new(self.0, ((what as u64 + 1) << 32) | u64::from(ms))
    }
}
