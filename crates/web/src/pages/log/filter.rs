//! Which events of a log are shown: by day, kind, word and person.

use crate::error::Error;
use crate::form::optional;
use crate::page::AnimalPage;
use sayso_model::{Body, Day, Event, Key, PersonId, Proposed, WordId};
use sayso_wording::say;
use sayso_wording::words;
use serde::Deserialize;

/// No id comes before this one: before everything that happened at a moment, or from all of it on.
pub const FIRST_ID: sayso_model::EventId = sayso_model::EventId(uuid::Uuid::nil());

/// A kind of event a person would look for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Kind {
    Presses,
    Answers,
    Sessions,
    Invitations,
    Signs,
    Food,
    Likes,
    Checks,
    Cards,
    Other,
}

impl Kind {
    pub const ALL: [Self; 10] = [
        Self::Presses,
        Self::Answers,
        Self::Sessions,
        Self::Invitations,
        Self::Signs,
        Self::Food,
        Self::Likes,
        Self::Checks,
        Self::Cards,
        Self::Other,
    ];

    /// Its name in addresses, and in the message that names it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Presses => "presses",
            Self::Answers => "answers",
            Self::Sessions => "sessions",
            Self::Invitations => "invitations",
            Self::Signs => "signs",
            Self::Food => "food",
            Self::Likes => "likes",
            Self::Checks => "checks",
            Self::Cards => "cards",
            Self::Other => "other",
        }
    }

    // A new kind of event must be decided on here.
    #[deny(clippy::wildcard_enum_match_arm)]
    const fn of(body: &Body) -> Self {
        match body {
            Body::Press(_) => Self::Presses,
            Body::Delivery(_) => Self::Answers,
            Body::SessionStart(_) | Body::SessionEnd(_) | Body::Joining(_) | Body::Leaving(_) => Self::Sessions,
            Body::Invitation(_) | Body::Round(_) => Self::Invitations,
            Body::Sign(_) => Self::Signs,
            Body::Feed(_) => Self::Food,
            Body::LikesTest(_) | Body::LikeTrial(_) => Self::Likes,
            Body::ProbePlan(_)
            | Body::ProbeTrial(_)
            | Body::SwapPlan(_)
            | Body::SwapDraw(_)
            | Body::SwapStop(_)
            | Body::DesignPlan(_)
            | Body::DesignNote(_)
            | Body::DesignStop(_) => Self::Checks,
            Body::HomeCard(_)
            | Body::PersonCard(_)
            | Body::AnimalCard(_)
            | Body::RewardCard(_)
            | Body::WordCard(_)
            | Body::ClipCard(_)
            | Body::PictureCard(_)
            | Body::BoardLayout(_)
            | Body::HouseRule(_)
            | Body::StageChoice(_) => Self::Cards,
            Body::Catch(_)
            | Body::Look(_)
            | Body::Brush(_)
            | Body::Remark(_)
            | Body::LessonRead(_)
            | Body::ConsentGiven(_)
            | Body::ConsentTakenBack(_)
            | Body::Proposal(_)
            | Body::ProposalAnswer(_)
            | Body::OwnPlan(_)
            | Body::AimDone(_)
            | Body::Correction(_)
            | Body::Withdrawal(_) => Self::Other,
        }
    }
}

/// What was asked for, as it stands in the address.
#[derive(Deserialize, Clone, Debug, Default)]
#[serde(default)]
pub struct Asked {
    pub day: String,
    pub kind: String,
    pub word: String,
    pub person: String,
}

/// The same, read.
#[derive(Clone, Copy, Debug, Default)]
pub struct Filter {
    pub day: Option<Day>,
    pub kind: Option<Kind>,
    pub word: Option<WordId>,
    pub person: Option<PersonId>,
}

impl Asked {
    /// Reads it.
    ///
    /// # Errors
    /// [`Error::Refused`] naming the field that cannot be read.
    pub fn read(&self) -> Result<Filter, Error> {
        let kind = match self.kind.trim() {
            "" => None,
            text => Some(Kind::ALL.into_iter().find(|k| k.name() == text).ok_or_else(|| {
                let all = Kind::ALL.map(Kind::name).join(", ");
                Error::refused("kind", words!(faults::one_of, names = all))
            })?),
        };
        Ok(Filter {
            day: optional("day", &self.day)?,
            kind,
            word: optional("word", &self.word)?,
            person: optional("person", &self.person)?,
        })
    }
}

impl Filter {
    /// Whether anything is left out.
    pub const fn any(&self) -> bool {
        self.day.is_some() || self.kind.is_some() || self.word.is_some() || self.person.is_some()
    }

    /// As part of an address, each part beginning with `&`.
    pub fn query(&self) -> String {
        let part = |name: &str, value: Option<String>| value.map_or_else(String::new, |v| format!("&{name}={v}"));
        [
            part("day", self.day.map(|d| d.to_string())),
            part("kind", self.kind.map(|k| k.name().to_owned())),
            part("word", self.word.map(|w| w.to_string())),
            part("person", self.person.map(|p| p.to_string())),
        ]
        .concat()
    }

    /// Before which place the day's last event stands.
    pub fn end(&self, page: &AnimalPage) -> Option<Key> {
        self.day.map(|d| (d.plus(1).start(&page.zone), FIRST_ID))
    }

    /// From which place on events stand that are not too old.
    pub fn begin(&self, page: &AnimalPage) -> Option<Key> {
        self.day.map(|d| (d.start(&page.zone), FIRST_ID))
    }

    /// Whether an event is of the kind, word and person asked for, as first noted or as it stands. The day is a matter of its place.
    pub fn takes(&self, page: &AnimalPage, first: &Event) -> bool {
        if self.person.is_some_and(|p| first.person != Some(p)) || self.kind.is_some_and(|k| Kind::of(&first.body) != k)
        {
            return false;
        }
        self.word.is_none_or(|w| {
            about(&first.body, w) || page.story.ledger().standing(first.id).is_some_and(|now| about(&now.body, w))
        })
    }

    /// In words, for a heading.
    pub fn told(&self, page: &AnimalPage) -> String {
        let locale = &page.locale;
        let mut parts: Vec<String> = Vec::new();
        parts.extend(self.day.map(|d| locale.day_near(d, page.now.day(&page.zone))));
        parts.extend(self.kind.map(|k| say!(locale, log::kind_name, kind = k.name())));
        parts.extend(self.word.and_then(|w| page.story.words().get(&w).map(|c| c.says.to_string())));
        parts.extend(self.person.and_then(|p| page.story.people().get(&p).map(|c| c.name.to_string())));
        parts.join(" \u{b7} ")
    }
}

/// Whether an event speaks of a word.
fn about(body: &Body, word: WordId) -> bool {
    body.about().word == Some(word)
        || match body {
            Body::SessionStart(s) => s.words.contains(&word),
            Body::Round(r) => r.words.contains(&word),
            Body::SwapPlan(p) => p.words.contains(&word),
            Body::SwapDraw(d) => d.word == word || d.give == word,
            Body::ProbePlan(p) => p.words.contains(&word),
            Body::ProbeTrial(t) => t.target == word,
            Body::DesignPlan(p) => p.words.contains(&word),
            Body::WordCard(c) => c.word == word,
            Body::ClipCard(c) => c.word == word,
            Body::StageChoice(s) => s.word == word,
            Body::Proposal(p) => match &p.proposes {
                Proposed::Plan { lines, .. } => lines.iter().any(|l| l.word == word),
                Proposed::Change { words, .. } => words.contains(&word),
                _ => false,
            },
            Body::OwnPlan(p) => p.lines.iter().any(|l| l.word == word),
            _ => false,
        }
}
