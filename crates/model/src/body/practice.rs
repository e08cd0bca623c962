//! What a coach hands a home to practise, and what a home shares of a rehearsal: its measures, and nothing else of it.

use super::enums::RehearsalMeasure;
use crate::fault::Fault;
use crate::findings::Findings;
use crate::text::Label;
use crate::units::Seconds;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// An exercise to rehearse, lessons to read, or both. Short names that this version does not have were written by another version,
/// and are left as they are.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Practice {
    /// The exercise, by its short name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exercise: Option<Label>,
    /// With which character, by its short name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub character: Option<Label>,
    /// Lessons, by their short names, in the order in which they are to be read.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lessons: Vec<Label>,
}

impl Practice {
    /// Most lessons.
    pub const MOST_LESSONS: usize = 16;

    pub(super) fn check(&self, found: &mut Findings) {
        let (low, high) = (usize::from(self.exercise.is_none()), Self::MOST_LESSONS);
        if !(low..=high).contains(&self.lessons.len()) {
            found.wrong("lessons", Fault::HowMany { low, high, found: self.lessons.len() });
        }
        if self.lessons.iter().collect::<BTreeSet<_>>().len() != self.lessons.len() {
            found.wrong("lessons", Fault::Twice);
        }
    }
}

/// What a home shares of a rehearsal: how it was taught, as the figures of real use.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Rehearsed {
    /// The exercise, by its short name.
    pub exercise: Label,
    /// With which character, by its short name.
    pub character: Label,
    /// Its figures.
    pub figures: Vec<RehearsedFigure>,
}

/// One figure of a rehearsal.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "as", rename_all = "snake_case", deny_unknown_fields)]
pub enum RehearsedFigure {
    /// So many times of so many.
    Times {
        /// Of what.
        of: RehearsalMeasure,
        /// So many.
        times: u16,
        /// Of so many.
        among: u16,
    },
    /// Middle seconds.
    Middle {
        /// Of what.
        of: RehearsalMeasure,
        /// The middle.
        seconds: Seconds,
        /// Its interval, where there is one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        between: Option<SecondsBetween>,
        /// Of so many.
        among: u16,
    },
}

/// An interval of seconds.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SecondsBetween {
    /// Its lower end.
    pub low: Seconds,
    /// Its upper end.
    pub high: Seconds,
}

impl RehearsedFigure {
    /// Of what.
    #[must_use]
    pub const fn of(&self) -> RehearsalMeasure {
        match self {
            Self::Times { of, .. } | Self::Middle { of, .. } => *of,
        }
    }
}

impl Rehearsed {
    pub(super) fn check(&self, found: &mut Findings) {
        let of: BTreeSet<_> = self.figures.iter().map(RehearsedFigure::of).collect();
        if of.len() != self.figures.len() {
            found.wrong("figures", Fault::Twice);
        }
        for (figure, place) in self.figures.iter().zip(1..) {
            found.within(&format!("figures.{place}"), |found| match figure {
                RehearsedFigure::Times { times, among, .. } if times > among => {
                    found.wrong("times", Fault::range(0_u16, *among, *times));
                }
                RehearsedFigure::Times { among: 0, .. } | RehearsedFigure::Middle { among: 0, .. } => {
                    found.wrong("among", Fault::range(1_u16, u16::MAX, 0_u16));
                }
                RehearsedFigure::Times { .. } | RehearsedFigure::Middle { .. } => {}
            });
        }
    }
}
