//! Trials of a change on one animal (single-case designs): planned before, drawn by chance, stopped at any time.

use super::enums::{CaseCondition, CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseStop, CaseUnit};
use crate::id::*;
use crate::text::{Label, Note};
use crate::time::Day;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

/// A trial of a change is planned. The order of conditions follows from its numbers and its seed.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DesignPlan {
    /// Which trial.
    pub trial: DesignId,
    /// Its design.
    pub design: CaseDesign,
    /// What is changed.
    pub question: CaseQuestion,
    /// What is changed, in words; only where the question is "other".
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub label: Option<Label>,
    /// What is measured.
    pub measure: CaseMeasure,
    /// Which way it is expected to go.
    pub expected: CaseExpected,
    /// Words measured, all where empty; in a multiple baseline without `animals` each a series.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub words: Vec<WordId>,
    /// Animals of a multiple baseline over animals, each a series.
    #[serde(default, skip_serializing_if = "Vec::is_empty", alias = "learners")]
    pub animals: Vec<AnimalId>,
    /// What a point is.
    pub unit: CaseUnit,
    /// First day.
    pub first: Day,
    /// Points in all.
    pub points: u16,
    /// Phases; only of a reversal and a changing criterion.
    #[serde(default)]
    pub phases: u16,
    /// Least points a phase.
    #[serde(default)]
    pub least: u16,
    /// Least points between the changes of two series; only of a multiple baseline.
    #[serde(default)]
    pub apart: u16,
    /// Criterion of each phase after the first, for people; only of a changing criterion.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub criteria: Vec<Seconds>,
    /// Seed of the order.
    pub seed: u32,
}

impl DesignPlan {
    /// Number of series.
    #[must_use]
    pub const fn lanes(&self) -> usize {
        match self.design {
            CaseDesign::MultipleBaseline if self.animals.is_empty() => self.words.len(),
            CaseDesign::MultipleBaseline => self.animals.len(),
            _ => 1,
        }
    }

    /// Fewest points the design can be drawn in.
    #[must_use]
    pub fn needed(&self) -> u64 {
        let least = u64::from(self.least);
        match self.design {
            CaseDesign::Reversal | CaseDesign::ChangingCriterion => u64::from(self.phases) * least,
            CaseDesign::MultipleBaseline => 2 * least + (self.lanes() as u64).saturating_sub(1) * u64::from(self.apart),
            CaseDesign::AlternatingTreatments => 4,
        }
    }
}

impl CaseMeasure {
    /// Whether it can be taken of one word alone.
    #[must_use]
    pub const fn by_word(self) -> bool {
        !matches!(self, Self::JoinedShare | Self::StressSigns)
    }
}

/// Which condition was in fact in force at a point, where that was not the one drawn.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DesignNote {
    /// Which trial.
    pub trial: DesignId,
    /// Point, from 1.
    pub point: u16,
    /// Word of the series, in a multiple baseline over words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub word: Option<WordId>,
    /// What was in force.
    pub in_force: CaseCondition,
    /// Why.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub because: Option<Note>,
}

/// A trial of a change is stopped before its end: back to the usual.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct DesignStop {
    /// Which trial.
    pub trial: DesignId,
    /// Why.
    pub reason: CaseStop,
    /// In words.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub because: Option<Note>,
}
