//! Planned checks of understanding.

use super::enums::ProbeDesign;
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::{Findings, MOST_LISTED};
use crate::id::*;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A planned check of understanding.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProbePlan {
    /// Which check.
    pub probe: ProbeId,
    /// Its design.
    pub design: ProbeDesign,
    /// The words checked.
    pub words: Vec<WordId>,
    /// Choices open in each trial; chance is one over this.
    pub choices: u16,
    /// Trials planned.
    pub trials: u16,
    /// Seed of the order.
    pub seed: u32,
    /// True where the person with the animal does not know the answer.
    pub blind: bool,
}

impl Content for ProbePlan {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.words.is_empty() || self.words.len() > MOST_LISTED {
            found.wrong("words", Fault::HowMany { low: 1, high: MOST_LISTED, found: self.words.len() });
        }
        if self.choices < 2 {
            found.wrong("choices", Fault::TooFew { least: 2, found: self.choices.into() });
        }
    }
}

/// What came in a trial of a check.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "outcome", rename_all = "snake_case", deny_unknown_fields)]
pub enum ProbeResponse {
    /// Chose this word (or the thing for it).
    Chose {
        /// Which.
        word: WordId,
        /// Seconds, where measured.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        after_s: Option<Seconds>,
    },
    /// Chose nothing. Kept apart, never scored as wrong.
    Nothing,
    /// Left.
    Left,
}

/// One trial of a check.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ProbeTrial {
    /// Which check.
    pub probe: ProbeId,
    /// Trial, from 1.
    pub trial: u16,
    /// The word the trial was about.
    pub target: WordId,
    /// Whether it was in fact run blind.
    pub blind: bool,
    /// What came.
    pub response: ProbeResponse,
}

impl Content for ProbeTrial {
    fn about(&self) -> About<'_> {
        About { session: None, word: Some(self.target), needs_animal: true, as_recorded: true, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
