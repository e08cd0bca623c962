//! The form of every advice: what to do, because of what, how sure, what would change it, and what to watch out for. Typed,
//! with figures and without prose: `sayso-wording` turns it into words.

mod act;
mod because;
mod below;
mod caution;
mod change;

pub use act::{Act, Lack};
pub use because::{Because, Feed, Lasting};
pub use below::Below;
pub use caution::Caution;
pub use change::Change;

use sayso_model::{EventId, Story, WordCard, WordId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Stands for what a word says or a thing is called where it has no card, in every language.
pub(crate) const NAMELESS: &str = "?";

/// A word, with what its button says.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
pub struct NamedWord {
    /// Which.
    pub word: WordId,
    /// What it says.
    pub says: String,
}

impl NamedWord {
    /// A word by what its card says, also one no longer in use.
    #[must_use]
    pub fn of(story: &Story, word: WordId) -> Self {
        Self::among(&story.words(), word)
    }

    /// The same where all cards of words are at hand.
    #[must_use]
    pub fn among(cards: &BTreeMap<WordId, &WordCard>, word: WordId) -> Self {
        let card = cards.get(&word);
        Self { word, says: card.map_or_else(|| NAMELESS.to_owned(), |card| card.says.to_string()) }
    }
}

impl From<&WordCard> for NamedWord {
    fn from(card: &WordCard) -> Self {
        Self { word: card.word, says: card.says.to_string() }
    }
}

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
    /// A word that does not get on, and what may be behind it.
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
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Sure {
    /// Little to go by; common practice rather than this animal's own figures.
    Little,
    /// The figures point this way, their intervals still allow otherwise.
    Fairly,
    /// The intervals leave little room.
    Very,
}

/// One reason, and the events behind it.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Reason {
    /// The fact, with its figures.
    pub fact: Because,
    /// Some of the events behind it, newest first.
    pub events: Vec<EventId>,
}

/// The most events a reason links to.
pub const MOST_LINKED: usize = 8;

impl From<Because> for Reason {
    fn from(fact: Because) -> Self {
        Self { fact, events: Vec::new() }
    }
}

impl Reason {
    /// With the newest of the events behind it.
    #[must_use]
    pub fn from_events(fact: Because, oldest_first: impl DoubleEndedIterator<Item = EventId>) -> Self {
        Self { fact, events: oldest_first.rev().take(MOST_LINKED).collect() }
    }
}

/// One advice.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct Advice {
    /// What it is about.
    pub topic: Topic,
    /// What to do.
    pub act: Act,
    /// Because of what.
    pub because: Vec<Reason>,
    /// How sure.
    pub sure: Sure,
    /// What would change it.
    pub would_change: Vec<Change>,
    /// What to watch out for.
    pub cautions: Vec<Caution>,
    /// The word it is about, if one.
    pub word: Option<WordId>,
    /// For how long, in minutes.
    pub minutes: Option<f64>,
}

impl Advice {
    /// An advice without caution, word or length.
    #[must_use]
    pub fn new(topic: Topic, act: Act, because: Vec<Reason>, sure: Sure, would_change: Change) -> Self {
        Self {
            topic,
            act,
            because,
            sure,
            would_change: vec![would_change],
            cautions: Vec::new(),
            word: None,
            minutes: None,
        }
    }

    /// With a caution.
    #[must_use]
    pub fn caution(mut self, caution: Caution) -> Self {
        self.cautions.push(caution);
        self
    }

    /// About one word.
    #[must_use]
    pub const fn about(mut self, word: WordId) -> Self {
        self.word = Some(word);
        self
    }
}
