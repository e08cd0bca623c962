//! Tables that follow from the log: facts as they stand, the zone of each household, and tallies by day.
//!
//! `apply` keeps them up to date with each transaction; `rebuild` makes them anew from the log by another road,
//! the model's own ledger, and compares. What the two disagree on is a fault of one of them, and is told.

mod apply;
mod read;
mod rebuild;
mod row;

pub(crate) use apply::apply;
pub use read::DayCount;
pub(crate) use rebuild::rebuild;
pub use rebuild::{Difference, Rebuilt};
