//! Words that are stuck, and why.

/// What may hold a word up.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Cause {
    /// The thing is not wanted.
    RewardNotWanted,
    /// It is shown too little.
    TooLittleShowing,
    /// The thing comes too late after the press.
    DelayTooLong,
    /// The device itself is avoided.
    DeviceAvoided,
    /// The place is noisy or frightening at the hours used.
    PlaceOrNoise,
    /// The word sounds like another.
    SoundsAlike,
    /// People answer it differently.
    AnsweredDifferently,
    /// The animal is unwell.
    Unwell,
}

impl Cause {
    /// Every cause.
    pub const ALL: [Self; 8] = [
        Self::RewardNotWanted,
        Self::TooLittleShowing,
        Self::DelayTooLong,
        Self::DeviceAvoided,
        Self::PlaceOrNoise,
        Self::SoundsAlike,
        Self::AnsweredDifferently,
        Self::Unwell,
    ];

    /// A short name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::RewardNotWanted => "reward_not_wanted",
            Self::TooLittleShowing => "too_little_showing",
            Self::DelayTooLong => "delay_too_long",
            Self::DeviceAvoided => "device_avoided",
            Self::PlaceOrNoise => "place_or_noise",
            Self::SoundsAlike => "sounds_alike",
            Self::AnsweredDifferently => "answered_differently",
            Self::Unwell => "unwell",
        }
    }
}

/// A word that is stuck with a learner, and why. A label: the behaviour comes from the other numbers.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Stuck {
    /// The learner (by index).
    pub animal: usize,
    /// The word (by index).
    pub word: usize,
    /// Why.
    pub cause: Cause,
}
