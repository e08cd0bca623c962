//! Lessons that people have read.

use crate::event::{About, Content, Does};
use crate::findings::Findings;
use crate::text::Label;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A person has read a lesson: whoever the event names. Nothing depends on it but what is offered to them, and what a coach sees.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LessonRead {
    /// Its short name. One that this version does not have was written by another version, and is left as it is.
    pub lesson: Label,
    /// Whether coaches of the home who handed the lesson over may see that it was read. Where that is not said they may not.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub shown: bool,
}

impl Content for LessonRead {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: false, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
