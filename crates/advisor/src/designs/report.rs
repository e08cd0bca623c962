//! The form of what came out of a trial.

use super::measure::Measured;
use super::standing::Standing;
use super::trial::Lane;
use crate::estimate::{Estimate, Unit};
use sayso_methods::learning::celeration::Celeration;
use sayso_methods::single_case::CaseError;
use sayso_methods::single_case::effects::Contrast;
use sayso_methods::single_case::randomisation::RandomisationTest;
use sayso_methods::single_case::standards::Standards;
use sayso_model::{CaseCondition, CaseMeasure};

/// From here on a result would be rare if the change did nothing.
const RARE: f64 = 0.05;

/// What a phase is called; a turn is counted from 1, where there are several.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum PhaseName {
    /// As always.
    Usual(Option<u8>),
    /// With the change.
    Changed(Option<u8>),
    /// A goal for people, in seconds.
    Goal(f64),
}

/// What is compared within a series.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Compared {
    /// All points with the change against all usual ones.
    ChangedAgainstUsual,
    /// One phase against the one before it.
    After(PhaseName, PhaseName),
}

/// Why a trial is not tested.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum NoTest {
    /// The order was not drawn before the first point, or the plan was changed later.
    NotDrawnBefore,
    /// It was stopped before its end: one that may end at any time can end while ahead.
    Stopped,
    /// It is not finished.
    NotFinished,
    /// The method refuses.
    Refused(CaseError),
}

/// Where the conduct was not as planned.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Departure {
    /// So many points with another condition than the one drawn; the test goes by the draw.
    OtherCondition(usize),
    /// The order was not drawn before the first point, or the plan was changed later.
    NotDrawnBefore,
}

/// How a test is read.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Judgement {
    /// So few orders are possible that no effect could be told from chance.
    TooFewOrders,
    /// It would be rare if the change made no difference.
    Rare,
    /// It may well be chance, which does not show that the change does nothing.
    MayBeChance,
}

/// One phase of a series (alternating: one condition).
#[derive(Clone, PartialEq, Debug)]
pub struct PhaseMean {
    /// What it is called.
    pub name: PhaseName,
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
    /// Changed against the usual before it.
    pub contrasts: Vec<(Compared, Contrast)>,
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
    pub tested: Result<Tested, NoTest>,
    /// The verdict on the design by the points there are.
    pub standards: Option<Standards>,
    /// Points over without a value.
    pub missing: usize,
    /// Where the conduct was not as planned.
    pub departures: Vec<Departure>,
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

impl Judgement {
    /// How a test is read.
    #[must_use]
    pub fn of(test: &RandomisationTest) -> Self {
        #[allow(clippy::cast_precision_loss)]
        let least = 1.0 / test.orders.max(1) as f64;
        if least > RARE {
            Self::TooFewOrders
        } else if test.p <= RARE {
            Self::Rare
        } else {
            Self::MayBeChance
        }
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
