//! What many households' records say together: the anonymous table, five questions as plans, and the aggregates behind them.
//!
//! Knows no place: no files, no clock, no network. Tables come in as data frames; their answers go out as data frames.

mod aggregates;
mod codebook;
mod questions;
mod rows;
mod schema;
mod vocabulary;

pub use aggregates::aggregates;
pub use codebook::codebook;
pub use questions::{Question, ask, config};
pub use rows::{Animal, Row, animals_batch, events_batch};
pub use sayso_norms::{AgeBand, WordKind};
pub use schema::{ORDER, animals_schema, events_schema};
pub use vocabulary::{By, Kind, Outcome, Vocabulary};
