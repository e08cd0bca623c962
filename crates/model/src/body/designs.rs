//! Trials of a change on one animal (single-case designs): planned before, drawn by chance, stopped at any time.

use super::enums::{CaseCondition, CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseStop, CaseUnit};
use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::{Findings, MOST_LISTED};
use crate::id::*;
use crate::text::{Label, Note};
use crate::time::Day;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// Most phases or series of a trial of a change, and most points.
const MOST_PARTS: u16 = 8;
const MOST_POINTS: u16 = 120;

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
    /// What is changed, in words: where the question is "other", and where it is another word, which.
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
    /// The coach's proposal that it tries.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub proposal: Option<EventId>,
}

impl CaseQuestion {
    /// Whether the question may say in words what is changed, and whether it has to.
    #[must_use]
    pub const fn label(self) -> (bool, bool) {
        match self {
            Self::Other => (true, true),
            Self::AnotherWord => (true, false),
            Self::QuieterButton | Self::NewPlace | Self::FasterDelivery => (false, false),
        }
    }

    /// Notes where it is said in words and has no need to be, or the other way round.
    pub(super) fn check_label(self, label: Option<&Label>, found: &mut Findings) {
        let (may, must) = self.label();
        if (label.is_some() && !may) || (label.is_none() && must) {
            found.wrong("label", Fault::LabelOfOther);
        }
    }
}

impl Content for DesignPlan {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        let design = self.design;
        self.question.check_label(self.label.as_ref(), found);
        for (field, n, distinct) in [
            ("words", self.words.len(), self.words.iter().collect::<BTreeSet<_>>().len()),
            ("animals", self.animals.len(), self.animals.iter().collect::<BTreeSet<_>>().len()),
        ] {
            if n != distinct {
                found.wrong(field, Fault::Twice);
            }
            if n > MOST_LISTED {
                found.wrong(field, Fault::HowMany { low: 0, high: MOST_LISTED, found: n });
            }
        }
        let lanes = self.lanes();
        if design == CaseDesign::MultipleBaseline {
            if !(2..=usize::from(MOST_PARTS)).contains(&lanes) {
                let field = if self.animals.is_empty() { "words" } else { "animals" };
                found.wrong(field, Fault::HowMany { low: 2, high: MOST_PARTS.into(), found: lanes });
            }
            if self.animals.is_empty() && !self.measure.by_word() {
                found.wrong("measure", Fault::NotByWord(self.measure));
            }
            if self.apart == 0 || self.apart > MOST_POINTS {
                found.wrong("apart", Fault::range(1_u16, MOST_POINTS, self.apart));
            }
        } else if !self.animals.is_empty() {
            found.wrong("animals", Fault::OnlyOverAnimals);
        }
        let phased = matches!(design, CaseDesign::Reversal | CaseDesign::ChangingCriterion);
        if phased && !(2..=MOST_PARTS).contains(&self.phases) {
            found.wrong("phases", Fault::range(2_u16, MOST_PARTS, self.phases));
        }
        // A criterion asks something of people. None is ever set for an animal.
        if design == CaseDesign::ChangingCriterion {
            if self.measure != CaseMeasure::DeliveryDelay {
                found.wrong("measure", Fault::CriterionForPeople);
            }
            if self.criteria.len() + 1 != usize::from(self.phases) {
                found.wrong("criteria", Fault::CriterionAPhase { found: self.criteria.len() });
            }
        } else if !self.criteria.is_empty() {
            found.wrong("criteria", Fault::OnlyWithCriterion);
        }
        if design != CaseDesign::AlternatingTreatments && !(1..=MOST_POINTS).contains(&self.least) {
            found.wrong("least", Fault::range(1_u16, MOST_POINTS, self.least));
        }
        if self.points > MOST_POINTS || u64::from(self.points) < self.needed() {
            found.wrong("points", Fault::range(self.needed(), MOST_POINTS, self.points));
        }
    }
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

impl Content for DesignNote {
    fn about(&self) -> About<'_> {
        About { session: None, word: self.word, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, found: &mut Findings) {
        if self.point == 0 || self.point > MOST_POINTS {
            found.wrong("point", Fault::range(1_u16, MOST_POINTS, self.point));
        }
    }
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

impl Content for DesignStop {
    fn about(&self) -> About<'_> {
        About { session: None, word: None, needs_animal: true, as_recorded: false, does: Does::Tells }
    }
    fn check(&self, _: &mut Findings) {}
}
