//! The closed vocabularies: what cannot be said in them is not said.

use sayso_model::{Day, RewardKind};
use serde::{Deserialize, Serialize};

/// Days of a year, on average.
const YEAR: f64 = 365.25;

/// Age of a learner on the day of its first showing.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
pub enum AgeBand {
    /// Under two years.
    #[serde(rename = "under 2")]
    UnderTwo,
    /// Two to seven years.
    #[serde(rename = "2 to 7")]
    TwoToSeven,
    /// Eight years or more.
    #[serde(rename = "8 or more")]
    EightOrMore,
    /// Not known.
    #[serde(rename = "unknown")]
    Unknown,
}

impl AgeBand {
    /// Every band.
    pub const ALL: [Self; 4] = [Self::UnderTwo, Self::TwoToSeven, Self::EightOrMore, Self::Unknown];

    /// How it is written.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::UnderTwo => "under 2",
            Self::TwoToSeven => "2 to 7",
            Self::EightOrMore => "8 or more",
            Self::Unknown => "unknown",
        }
    }

    /// The band of an animal born then, on a day. A birth after that day is a slip, and the age not known.
    #[must_use]
    pub fn of(born: Option<Day>, on: Day) -> Self {
        match born.map(|born| f64::from(on.days_since(born)) / YEAR) {
            Some(years) if years < 0.0 => Self::Unknown,
            Some(years) if years < 2.0 => Self::UnderTwo,
            Some(years) if years < 8.0 => Self::TwoToSeven,
            Some(_) => Self::EightOrMore,
            None => Self::Unknown,
        }
    }
}

/// What a word brings.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum WordKind {
    /// Anything eaten or licked.
    Food,
    /// Play with a person or a toy.
    Play,
    /// Being stroked, brushed, held.
    Touch,
    /// A known exercise.
    Training,
    /// Going somewhere, sniffing, looking.
    Exploring,
    /// A place or time to rest.
    Rest,
    /// It ends a session.
    Closing,
    /// Nothing is said of what it brings.
    Other,
}

impl WordKind {
    /// Every kind.
    pub const ALL: [Self; 8] =
        [Self::Food, Self::Play, Self::Touch, Self::Training, Self::Exploring, Self::Rest, Self::Closing, Self::Other];

    /// How it is written.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Food => "food",
            Self::Play => "play",
            Self::Touch => "touch",
            Self::Training => "training",
            Self::Exploring => "exploring",
            Self::Rest => "rest",
            Self::Closing => "closing",
            Self::Other => "other",
        }
    }

    /// The kind of a word: whether it ends a session, and what it brings.
    #[must_use]
    pub const fn of(closing: bool, brings: Option<RewardKind>) -> Self {
        if closing {
            return Self::Closing;
        }
        match brings {
            Some(RewardKind::Food) => Self::Food,
            Some(RewardKind::Play) => Self::Play,
            Some(RewardKind::Touch) => Self::Touch,
            Some(RewardKind::Training) => Self::Training,
            Some(RewardKind::Exploring) => Self::Exploring,
            Some(RewardKind::Rest) => Self::Rest,
            None => Self::Other,
        }
    }
}
