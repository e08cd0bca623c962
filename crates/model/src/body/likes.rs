//! Likes tests (preference assessments).

use super::enums::LikesFormat;
use crate::id::*;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A likes test is set up; orders and sides follow from the seed.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LikesTest {
    /// Which test.
    pub assessment: AssessmentId,
    /// Its format.
    pub format: LikesFormat,
    /// What is compared.
    pub rewards: Vec<RewardId>,
    /// Rounds planned.
    pub rounds: u16,
    /// Seed for orders and sides.
    pub seed: u32,
}

/// Seconds spent with one item.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Engaged {
    /// The item.
    pub reward: RewardId,
    /// Seconds with it.
    pub seconds: Seconds,
}

/// What the animal did in a trial of a likes test.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "outcome", rename_all = "snake_case", deny_unknown_fields)]
pub enum LikeOutcome {
    /// Chose (or, shown one item, approached) this.
    Chose {
        /// What.
        reward: RewardId,
    },
    /// Stayed and chose none.
    ChoseNone,
    /// Walked away.
    WalkedAway,
    /// Free access: how long with each.
    Observed {
        /// How long the items were there.
        observed_s: Seconds,
        /// Time with each.
        engaged: Vec<Engaged>,
    },
}

/// One trial of a likes test.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct LikeTrial {
    /// Which test.
    pub assessment: AssessmentId,
    /// Its format.
    pub format: LikesFormat,
    /// Round, from 1.
    pub round: u16,
    /// What was offered, from the animal's left to its right.
    pub offered: Vec<RewardId>,
    /// What it did.
    pub result: LikeOutcome,
}
