//! What may be wrong in a home, and how much of it is written down.

use crate::held_up::Cause;

/// What may be wrong in a home.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Trouble {
    /// Growls, week by week, or strong signs on several days of the last week.
    StrongSigns,
    /// Something is guarded.
    Guarding,
    /// Joining falls sharply in the last days: it is not well.
    SuddenDrop,
    /// Nobody writes any more.
    Silent,
    /// A button is kept away from.
    AvoidedButton,
    /// The thing comes too late.
    LateDelivery,
    /// The thing is not wanted.
    RewardNotWanted,
    /// It is shown too little.
    TooLittleShowing,
    /// People answer differently.
    PeopleDiffer,
    /// Two words sound alike.
    SoundsAlike,
    /// More food than the day's rewards.
    Overfed,
    /// A word is ready and is not invited.
    ReadyNotInvited,
}

impl Trouble {
    /// Every trouble, the most pressing first.
    pub const ALL: [Self; 12] = [
        Self::StrongSigns,
        Self::Guarding,
        Self::SuddenDrop,
        Self::Silent,
        Self::AvoidedButton,
        Self::LateDelivery,
        Self::RewardNotWanted,
        Self::TooLittleShowing,
        Self::PeopleDiffer,
        Self::SoundsAlike,
        Self::Overfed,
        Self::ReadyNotInvited,
    ];

    /// How pressing, 0 first: safety, perhaps illness, a home that is gone, a button that frightens, a word that is held up,
    /// food, a step that waits. Ours (common practice, no source).
    #[must_use]
    pub const fn severity(self) -> u8 {
        match self {
            Self::StrongSigns | Self::Guarding => 0,
            Self::SuddenDrop => 1,
            Self::Silent => 2,
            Self::AvoidedButton => 3,
            Self::LateDelivery
            | Self::RewardNotWanted
            | Self::TooLittleShowing
            | Self::PeopleDiffer
            | Self::SoundsAlike => 4,
            Self::Overfed => 5,
            Self::ReadyNotInvited => 6,
        }
    }

    /// What holds a word up, where it is that.
    #[must_use]
    pub const fn cause(self) -> Option<Cause> {
        match self {
            Self::AvoidedButton => Some(Cause::DeviceAvoided),
            Self::LateDelivery => Some(Cause::DelayTooLong),
            Self::RewardNotWanted => Some(Cause::RewardNotWanted),
            Self::TooLittleShowing => Some(Cause::TooLittleShowing),
            Self::PeopleDiffer => Some(Cause::AnsweredDifferently),
            Self::SoundsAlike => Some(Cause::SoundsAlike),
            _ => None,
        }
    }
}

/// How much a home writes down.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Keeps {
    /// Nearly everything.
    All,
    /// Everything, on few days.
    FewDays,
    /// A few records here and there.
    FewRecords,
    /// What the animal presses, and nothing that people do.
    OnlyPresses,
}

/// What is behind a home.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Troubled {
    /// Its troubles, each with the word it is about (by index) where it is about one.
    pub troubles: Vec<(Trouble, Option<usize>)>,
    /// How much is written down.
    pub keeps: Keeps,
    /// Whether presses mean nothing.
    pub meaningless: bool,
}
