//! A session at the board: its start and end, and the animal joining and leaving.

use super::enums::{EndReason, Purpose};
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::{Findings, MOST_LISTED};
use crate::id::{SessionId, WordId};
use crate::text::Label;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A stretch at the board begins.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SessionStart {
    /// Which session.
    pub session: SessionId,
    /// What it is for.
    pub purpose: Purpose,
    /// Words planned for it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words: Vec<WordId>,
    /// The room, where it is noted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub room: Option<Label>,
}

impl Content for SessionStart {
    fn about(&self) -> About<'_> {
        About { session: Some(self.session), word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.words.len() > MOST_LISTED {
            found.wrong("words", Fault::HowMany { low: 0, high: MOST_LISTED, found: self.words.len() });
        }
    }
}

/// The animal opts in.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Joining {
    /// Which session.
    pub session: SessionId,
    /// Time from the start (or the offer) to joining, where measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub after_s: Option<Seconds>,
}

impl Content for Joining {
    fn about(&self) -> About<'_> {
        About { session: Some(self.session), word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// The animal opts out; it is let go.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Leaving {
    /// Which session.
    pub session: SessionId,
}

impl Content for Leaving {
    fn about(&self) -> About<'_> {
        About { session: Some(self.session), word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// A stretch at the board ends.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SessionEnd {
    /// Which session.
    pub session: SessionId,
    /// Why it ended.
    pub reason: EndReason,
}

impl Content for SessionEnd {
    fn about(&self) -> About<'_> {
        About { session: Some(self.session), word: None, needs_animal: false, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
