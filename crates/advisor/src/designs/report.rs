//! The form of what came out of a trial.

use super::measure::Measured;
use super::standing::Standing;
use super::trial::Lane;
use crate::estimate::{Estimate, Unit};
use sayso_methods::learning::celeration::Celeration;
use sayso_methods::single_case::effects::Contrast;
use sayso_methods::single_case::randomisation::RandomisationTest;
use sayso_methods::single_case::standards::Standards;
use sayso_model::{CaseCondition, CaseMeasure};

/// One phase of a series (alternating: one condition).
#[derive(Clone, PartialEq, Debug)]
pub struct PhaseMean {
    /// What it is called.
    pub name: String,
    /// Mean over its points; its interval takes points as independent.
    pub mean: Estimate,
    /// Factor a week within the phase, where the measure has one.
    pub celeration: Option<Celeration>,
}

/// One series and what it shows.
#[derive(Clone, Debug)]
pub struct LaneResult {
    /// The series.
    pub lane: Lane,
    /// Every point that has begun.
    pub points: Vec<Measured>,
    /// Its phases.
    pub phases: Vec<PhaseMean>,
    /// Changed against the usual before it, with a name each.
    pub contrasts: Vec<(String, Contrast)>,
}

/// The test against the draw.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Tested {
    /// The test.
    pub test: RandomisationTest,
    /// The difference of means with the 95 % interval of a lasting shift; an open end where the design has too few orders.
    /// None for a changing criterion.
    pub difference: Option<Estimate>,
}

/// A trial so far.
#[derive(Clone, Debug)]
pub struct Report {
    /// How far it has got.
    pub standing: Standing,
    /// Points over and points planned, in all series.
    pub done: (usize, usize),
    /// Orders the design allows.
    pub orders: u128,
    /// Series by series.
    pub lanes: Vec<LaneResult>,
    /// The test; only of a finished trial whose order was drawn before. Else why there is none.
    pub tested: Result<Tested, String>,
    /// The verdict on the design by the points there are.
    pub standards: Option<Standards>,
    /// Points over without a value.
    pub missing: usize,
    /// Where the conduct was not as planned.
    pub departures: Vec<String>,
    /// What may be said, in a sentence or two.
    pub sentence: String,
    /// What would change it.
    pub would_change: String,
}

/// Unit of the measure in figures.
#[must_use]
pub const fn unit_of(measure: CaseMeasure) -> Unit {
    match measure {
        CaseMeasure::OwnPresses | CaseMeasure::StressSigns => Unit::Number,
        CaseMeasure::JoinedShare | CaseMeasure::PressedShare => Unit::Share,
        CaseMeasure::TimeToPress | CaseMeasure::DeliveryDelay => Unit::Seconds,
    }
}

impl Report {
    /// Observed points with the usual and with the change.
    #[must_use]
    pub fn counts(&self) -> (usize, usize) {
        let there = self.lanes.iter().flat_map(|l| &l.points).filter(|m| m.value.is_some());
        there.fold((0, 0), |(usual, changed), m| match m.drawn {
            CaseCondition::Usual => (usual + 1, changed),
            CaseCondition::Changed => (usual, changed + 1),
        })
    }
}
