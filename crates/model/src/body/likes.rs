//! Likes tests (preference assessments).

use super::enums::LikesFormat;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::*;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

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

impl Content for LikesTest {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        let distinct: BTreeSet<_> = self.rewards.iter().collect();
        let least = if self.format == LikesFormat::Single { 1 } else { 2 };
        if distinct.len() != self.rewards.len() {
            found.wrong("rewards", Fault::Twice);
        }
        if !(least..=12).contains(&self.rewards.len()) {
            found.wrong("rewards", Fault::HowMany { low: least, high: 12, found: self.rewards.len() });
        }
        if !(1..=20).contains(&self.rounds) {
            found.wrong("rounds", Fault::range(1_u16, 20_u16, self.rounds));
        }
    }
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

impl Content for LikeTrial {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        let n = self.offered.len();
        let distinct: BTreeSet<_> = self.offered.iter().collect();
        if distinct.len() != n {
            found.wrong("offered", Fault::Twice);
        }
        let wanted = match self.format {
            LikesFormat::Single => 1..=1,
            LikesFormat::Paired => 2..=2,
            LikesFormat::Multiple | LikesFormat::FreeAccess => 1..=12,
        };
        if !wanted.contains(&n) {
            found.wrong("offered", Fault::HowMany { low: *wanted.start(), high: *wanted.end(), found: n });
        }
        let free = self.format == LikesFormat::FreeAccess;
        match &self.result {
            LikeOutcome::Chose { reward } if !distinct.contains(reward) => {
                found.wrong("result.reward", Fault::NotOffered);
            }
            LikeOutcome::Chose { .. } if free => found.wrong("result", Fault::FreeByTime),
            LikeOutcome::Observed { .. } if !free => found.wrong("result", Fault::OnlyFree),
            LikeOutcome::Observed { observed_s, engaged } => {
                let mut seen = BTreeSet::new();
                for (k, e) in engaged.iter().enumerate() {
                    if !distinct.contains(&e.reward) || !seen.insert(e.reward) {
                        found.wrong(&format!("result.engaged[{k}]"), Fault::OfferedOnce);
                    }
                    if e.seconds.get() > observed_s.get() {
                        found.wrong(
                            &format!("result.engaged[{k}].seconds"),
                            Fault::LongerThanObserved { observed_s: observed_s.get() },
                        );
                    }
                }
            }
            _ => {}
        }
    }
}
