//! Does a change help this one learner? Single-case designs: drawn by chance, then tested against that very draw.
//!
//! The order of conditions is drawn from a seed among all admissible ones ([`schedule`]), and the test asks how many of
//! those would have shown as large a difference ([`randomisation`]). It holds whatever trend or day-to-day dependence the
//! series has, because the only chance it counts on is that of the draw. How large a change is stands in [`effects`];
//! how much a design can show at all in [`standards`]. Page: `docs/methods/single-case.md`.

mod alternate;
pub mod effects;
pub mod randomisation;
pub mod schedule;
pub mod standards;

/// Why a single-case figure cannot be given.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CaseError {
    /// The points do not hold the phases.
    #[error("{points} points cannot hold this design; it needs at least {needed}")]
    TooShort {
        /// Points there are.
        points: usize,
        /// Points needed.
        needed: usize,
    },
    /// A number outside the range in which it means anything.
    #[error("{what} must be {low} to {high}, not {found}")]
    OutOfRange {
        /// Which.
        what: &'static str,
        /// Smallest.
        low: usize,
        /// Largest.
        high: usize,
        /// What was given.
        found: usize,
    },
    /// The series are not those of the design.
    #[error("the design has {series} series of {points} points each; the data are otherwise")]
    NotTheDesign {
        /// Series of the design.
        series: usize,
        /// Points of each.
        points: usize,
    },
    /// The assignment is none the design allows.
    #[error("the order of conditions is not one that this design draws from")]
    NotAdmissible,
    /// A phase without any observation, or nothing at all.
    #[error("a condition has no observation yet, so there is nothing to compare")]
    EmptyCondition,
    /// A value that is no finite number.
    #[error("a value is not a finite number")]
    NotANumber,
    /// A figure of learning underneath refused.
    #[error("no figure for this phase: too few points, or all at one time")]
    NoFigure,
}
