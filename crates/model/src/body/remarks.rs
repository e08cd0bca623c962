//! Remarks, and amendments of what was written before.

use crate::event::{About, Body, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::*;
use crate::text::Note;
use crate::time::Moment;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A remark.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Remark {
    /// The remark.
    pub text: Note,
}

impl Content for Remark {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}

/// Puts another event's content right. The first record stays in the log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Correction {
    /// Which event.
    pub of: EventId,
    /// When it really happened, if that was wrong.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub happened_at: Option<Moment>,
    /// Which animal it really was, if that was wrong.
    #[serde(default, skip_serializing_if = "Option::is_none", alias = "learner")]
    pub animal: Option<AnimalId>,
    /// The content as it should have been.
    pub body: Box<Body>,
}

impl Content for Correction {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Corrects(self) }
    }
    fn check(&self, found: &mut Findings) {
        if self.body.amends().is_some() {
            found.wrong("body", Fault::AmendsAmendment);
        } else {
            found.within("body", |found| self.body.check(found));
        }
    }
}

/// Takes another event back. The first record stays in the log.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Withdrawal {
    /// Which event.
    pub of: EventId,
    /// Why.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub because: Option<Note>,
}

impl Content for Withdrawal {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Withdraws(self.of) }
    }
    fn check(&self, _: &mut Findings) {}
}
