//! What may hold a word up, and how the records bear on it.

use crate::advice::Because;
use serde::{Deserialize, Serialize};

/// What may be behind it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// The recorded word may be hard to make out: what to check first.
    HardToMakeOut,
    /// The reward is not wanted just now.
    NotWanted,
    /// There was too little showing.
    TooLittle,
    /// The delivery comes too late.
    TooLate,
    /// The button itself is avoided.
    Avoided,
    /// The time, place or noise is wrong.
    TimeOrPlace,
    /// It may not be well.
    Health,
    /// The word sounds like another.
    SoundsAlike,
    /// People answer it differently.
    PeopleDiffer,
}

/// How the records bear on a cause.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Bearing {
    /// They speak for it.
    For,
    /// They point to it, with room for chance.
    Perhaps,
    /// Too few to say.
    Unknown,
    /// They speak against it.
    Against,
}

/// One cause and its evidence.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Weighed {
    /// The cause.
    pub cause: Cause,
    /// How the records bear on it.
    pub bearing: Bearing,
    /// The evidence.
    pub evidence: Vec<Because>,
}

impl Weighed {
    /// Whether the records speak for it, or point to it with room for chance.
    #[must_use]
    pub const fn suspected(&self) -> bool {
        matches!(self.bearing, Bearing::For | Bearing::Perhaps)
    }
}
