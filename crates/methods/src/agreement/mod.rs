//! Agreement between people who score the same thing.
//!
//! Percent agreement is easy to read and flattered by chance; kappa (two people) and alpha (any number, gaps allowed) correct for it.

mod alpha;
mod kappa;

pub use alpha::{Alpha, AlphaInterval, Scale, alpha_interval, krippendorff_alpha};
pub use kappa::{Kappa, RatingTable, Weighting};

use crate::stats::StatsError;
use thiserror::Error;

/// Why an agreement could not be computed.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[non_exhaustive]
pub enum AgreementError {
    /// A value or a count is wrong.
    #[error(transparent)]
    Stats(#[from] StatsError),
    /// Everyone used one and the same category throughout, so chance alone would agree as well.
    #[error("all {n} scores are the same; agreement beyond chance cannot be judged")]
    OneCategory {
        /// Scores that could be paired.
        n: usize,
    },
    /// Nothing was scored by two people.
    #[error("nothing was scored by at least two people")]
    NothingShared,
    /// A category index beyond the table.
    #[error("category {category} in a table of {categories}")]
    UnknownCategory {
        /// The index.
        category: usize,
        /// Categories there are.
        categories: usize,
    },
}
