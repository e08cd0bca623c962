//! Consent of a home: what of it others may see or use. Off until given, for one purpose at a time, taken back at any time.

use super::enums::ConsentPurpose;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::{AccountId, ClubId, EventId};
use crate::time::Moment;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// Who helps a home.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "who", rename_all = "snake_case", deny_unknown_fields)]
pub enum Coach {
    /// One coach.
    Account {
        /// Whose account.
        account: AccountId,
    },
    /// Every coach of a club, as long as they are one.
    Club {
        /// Which.
        club: ClubId,
    },
}

/// One purpose, and for whom.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "purpose", rename_all = "snake_case", deny_unknown_fields)]
pub enum Consent {
    /// A coach sees figures.
    CoachFigures {
        /// Who.
        to: Coach,
    },
    /// A coach sees the log.
    CoachLog {
        /// Who.
        to: Coach,
    },
    /// A coach hears snippets.
    CoachSnippets {
        /// Who.
        to: Coach,
    },
    /// Figures count in the norms of many homes.
    Norms,
    /// Records may be given to studies.
    Research,
}

impl Consent {
    /// The newest version of the words in which consent is asked for. Each version keeps its words in the catalogues.
    pub const WORDS: u16 = 7;
    /// The first version whose words say that coaches of one club read what the others of it wrote.
    pub const CLUB_READS: u16 = 3;
    /// The first version whose words say that norms are told in which hours of the day a press lay.
    pub const NORMS_HOURS: u16 = 5;
    /// The first version whose words say that norms are told how long a word stood in one stage.
    pub const NORMS_STAGE: u16 = 6;
    /// The first version whose words say that norms are told how often a word was pressed in one week.
    pub const NORMS_WEEK: u16 = 7;

    /// What it is for.
    #[must_use]
    pub const fn purpose(self) -> ConsentPurpose {
        match self {
            Self::CoachFigures { .. } => ConsentPurpose::CoachFigures,
            Self::CoachLog { .. } => ConsentPurpose::CoachLog,
            Self::CoachSnippets { .. } => ConsentPurpose::CoachSnippets,
            Self::Norms => ConsentPurpose::Norms,
            Self::Research => ConsentPurpose::Research,
        }
    }

    /// Which coaches it is for, where it is for coaches.
    #[must_use]
    pub const fn coach(self) -> Option<Coach> {
        match self {
            Self::CoachFigures { to } | Self::CoachLog { to } | Self::CoachSnippets { to } => Some(to),
            Self::Norms | Self::Research => None,
        }
    }
}

/// A stretch of time in which alone a consent holds.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Stretch {
    /// From here on.
    pub from: Moment,
    /// Up to here, which is outside.
    pub until: Moment,
}

impl Stretch {
    /// Whether a moment is in it.
    #[must_use]
    pub fn holds(self, at: Moment) -> bool {
        self.from <= at && at < self.until
    }
}

/// A home gives consent. Whether whoever wrote this may give it is not for the log to say: see
/// [`crate::consents`].
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ConsentGiven {
    /// For what and whom.
    pub consent: Consent,
    /// In words of which version it was asked for.
    pub words_version: u16,
    /// When alone it holds, where that was said: for cover. Closed before and after.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub holds: Option<Stretch>,
}

/// Counts as first recorded: a change could otherwise turn it into consent to something else.
impl Content for ConsentGiven {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if !(1..=Consent::WORDS).contains(&self.words_version) {
            found.wrong("words_version", Fault::range(1_u16, Consent::WORDS, self.words_version));
        }
        if self.holds.is_some_and(|stretch| stretch.until <= stretch.from) {
            found.wrong("holds", Fault::EndsFirst);
        }
    }
}

/// A home takes consent back.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ConsentTakenBack {
    /// For what and whom it was given.
    pub consent: Consent,
    /// The event by which it was given.
    pub given: EventId,
}

/// Counts as first recorded: an Undo must not open again what was closed.
impl Content for ConsentTakenBack {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
