//! The stages of one word with one animal. An animal may go back at any time.

use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// Where a word stands with an animal.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// Likes, word card, clip and place are being settled; no showing yet.
    Prepare,
    /// The person presses, says and delivers; nothing is asked of the animal.
    Show,
    /// Opportunities are offered, followed by a wait and, always, by the thing itself.
    Invite,
    /// The animal presses of its own accord and people answer.
    Converse,
}

impl Stage {
    /// Every stage, in order.
    pub const ALL: [Self; 4] = [Self::Prepare, Self::Show, Self::Invite, Self::Converse];

    /// The stage's name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Prepare => "prepare",
            Self::Show => "show",
            Self::Invite => "invite",
            Self::Converse => "converse",
        }
    }
}
