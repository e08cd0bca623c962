//! How much a design can show, whatever comes out: points a phase and demonstrations of an effect.
//!
//! Source: Kratochwill, Hitchcock, Horner, Levin, Odom, Rindskopf & Shadish 2010, Single-case designs technical
//! documentation (What Works Clearinghouse), from memory: at least 5 points a phase meet the standard, 3 or 4 meet it with
//! reservations; at least 3 attempts to show an effect at three points in time; reversal 4 phases; multiple baseline 3
//! series; alternating treatments 5 (4 with reservations) points a condition with at most 2 in a row; changing criterion
//! 3 changes of the criterion. Page: `docs/methods/single-case.md`.

use super::CaseError;
use super::schedule::{Assignment, Design};

/// Demonstrations of an effect wanted.
pub const DEMONSTRATIONS: usize = 3;
const FULL: usize = 5;
const RESERVED: usize = 3;
const RESERVED_ALTERNATING: usize = 4;

/// The verdict on the design, not on the effect.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Does not meet the standards.
    DoesNot,
    /// Meets them with reservations.
    WithReservations,
    /// Meets them.
    Meets,
}

/// What the verdict rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Standards {
    /// The verdict.
    pub verdict: Verdict,
    /// Fewest observed points of any phase (alternating: of either condition).
    pub fewest: usize,
    /// Chances to show an effect, at different times.
    pub demonstrations: usize,
}

/// Judges a design by the points that were observed in each phase; `observed[series][point]` is true where there was one.
///
/// # Errors
/// [`CaseError::NotTheDesign`], [`CaseError::NotAdmissible`] and those of [`Design::check`].
pub fn standards(design: Design, order: &Assignment, observed: &[Vec<bool>]) -> Result<Standards, CaseError> {
    design.check()?;
    if !design.admits(order) {
        return Err(CaseError::NotAdmissible);
    }
    let (series, points) = (design.series(), design.points());
    if observed.len() != series || observed.iter().any(|s| s.len() != points) {
        return Err(CaseError::NotTheDesign { series, points });
    }
    let fewest = order
        .iter()
        .zip(observed)
        .flat_map(|(phases, observed)| {
            let most = phases.iter().copied().max().unwrap_or(0);
            (0..=most).map(move |phase| phases.iter().zip(observed).filter(|(p, seen)| **p == phase && **seen).count())
        })
        .min()
        .unwrap_or(0);
    let (demonstrations, full, reserved) = match design {
        Design::Reversal { phases, .. } | Design::ChangingCriterion { phases, .. } => (phases - 1, FULL, RESERVED),
        Design::MultipleBaseline { series, .. } => (series, FULL, RESERVED),
        // Each turn of the two conditions is a comparison of its own.
        Design::Alternating { .. } => (fewest, FULL, RESERVED_ALTERNATING),
    };
    let verdict = if demonstrations < DEMONSTRATIONS || fewest < reserved {
        Verdict::DoesNot
    } else if fewest < full {
        Verdict::WithReservations
    } else {
        Verdict::Meets
    };
    Ok(Standards { verdict, fewest, demonstrations })
}
