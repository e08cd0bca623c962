//! The form of every advice: what to do, because of what, how sure, what would change it, and the caution.

use crate::estimate::Estimate;
use sayso_model::{EventId, WordId};
use serde::Serialize;

/// What an advice is about, in the order in which advice is given: welfare outranks everything.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Topic {
    /// Stress, leaving, possible illness.
    Welfare,
    /// The day's food.
    Ration,
    /// Something to set up first.
    SetUp,
    /// What the animal likes.
    Likes,
    /// A word that does not get on.
    Stuck,
    /// Showing words.
    Show,
    /// Inviting.
    Invite,
    /// Answering an animal that presses.
    Converse,
    /// A planned check of understanding.
    Probe,
}

/// How sure an advice is.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Sure {
    /// Little to go by; common practice rather than this animal's own figures.
    Little,
    /// The figures point this way, their intervals still allow otherwise.
    Fairly,
    /// The intervals leave little room.
    Very,
}

impl Sure {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Little => "little to go by yet",
            Self::Fairly => "fairly sure",
            Self::Very => "sure",
        }
    }
}

/// One reason: a sentence, its figure if it has one, and the events behind it.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Reason {
    /// The sentence.
    pub text: String,
    /// The figure.
    pub figure: Option<Estimate>,
    /// Some of the events behind it, newest first.
    pub events: Vec<EventId>,
}

/// The most events a reason links to.
pub const MOST_LINKED: usize = 8;

impl Reason {
    /// A reason in words alone.
    #[must_use]
    pub fn said(text: impl Into<String>) -> Self {
        Self { text: text.into(), figure: None, events: Vec::new() }
    }

    /// A reason with its figure.
    #[must_use]
    pub fn figure(text: impl Into<String>, figure: Estimate) -> Self {
        Self { text: text.into(), figure: Some(figure), events: Vec::new() }
    }

    /// With the newest of the events behind it.
    #[must_use]
    pub fn from_events(mut self, oldest_first: impl DoubleEndedIterator<Item = EventId>) -> Self {
        self.events = oldest_first.rev().take(MOST_LINKED).collect();
        self
    }
}

/// One advice.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Advice {
    /// What it is about.
    pub topic: Topic,
    /// What to do.
    pub act: String,
    /// Because of what.
    pub because: Vec<Reason>,
    /// How sure.
    pub sure: Sure,
    /// What would change it.
    pub would_change: String,
    /// What to watch out for.
    pub caution: Option<String>,
    /// The word it is about, if one.
    pub word: Option<WordId>,
    /// For how long, in minutes.
    pub minutes: Option<f64>,
}

impl Advice {
    /// An advice without caution, word or length.
    #[must_use]
    pub fn new(
        topic: Topic,
        act: impl Into<String>,
        because: Vec<Reason>,
        sure: Sure,
        would_change: impl Into<String>,
    ) -> Self {
        Self {
            topic,
            act: act.into(),
            because,
            sure,
            would_change: would_change.into(),
            caution: None,
            word: None,
            minutes: None,
        }
    }

    /// With a caution.
    #[must_use]
    pub fn caution(mut self, caution: impl Into<String>) -> Self {
        self.caution = Some(caution.into());
        self
    }

    /// About one word.
    #[must_use]
    pub const fn about(mut self, word: WordId) -> Self {
        self.word = Some(word);
        self
    }

    /// For so many minutes.
    #[must_use]
    pub const fn minutes(mut self, minutes: f64) -> Self {
        self.minutes = Some(minutes);
        self
    }
}
