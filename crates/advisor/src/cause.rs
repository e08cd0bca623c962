//! What may hold a word up, and how the records bear on it.

use crate::advice::Reason;

/// What may be behind it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
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

impl Cause {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::HardToMakeOut => "the recorded word may be hard to make out",
            Self::NotWanted => "the reward is not wanted just now",
            Self::TooLittle => "too little showing",
            Self::TooLate => "the delivery comes too late",
            Self::Avoided => "the button itself is avoided",
            Self::TimeOrPlace => "the time, place or noise",
            Self::Health => "it may not be well",
            Self::SoundsAlike => "the word sounds like another",
            Self::PeopleDiffer => "people answer it differently",
        }
    }

    /// What to try.
    #[must_use]
    pub const fn act(self) -> &'static str {
        match self {
            Self::HardToMakeOut => {
                "play its button from another room, and record it again, clear and soft, unless you know the word at once"
            }
            Self::NotWanted => {
                "test likes again and change what the word delivers, or show it when the thing is wanted"
            }
            Self::TooLittle => "show it more often, a little every day",
            Self::TooLate => "keep the thing at the board so that it comes within two seconds",
            Self::Avoided => "go back a stage; move the button or try a quieter, softer one; let the animal come to it",
            Self::TimeOrPlace => "hold sessions at the times it joins, in a quieter place",
            Self::Health => "see a veterinarian before training on",
            Self::SoundsAlike => "record a word that sounds different",
            Self::PeopleDiffer => "agree on one answer and one delay, and put the house rules where all see them",
        }
    }
}

/// How the records bear on a cause.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
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

impl Bearing {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::For => "the records speak for it",
            Self::Perhaps => "possible",
            Self::Unknown => "too few records to say",
            Self::Against => "the records speak against it",
        }
    }
}

/// One cause and its evidence.
#[derive(Clone, PartialEq, Debug)]
pub struct Weighed {
    /// The cause.
    pub cause: Cause,
    /// How the records bear on it.
    pub bearing: Bearing,
    /// The evidence.
    pub evidence: Reason,
}
