//! Rows as values, and the batches made of them.

use crate::schema::{animals_schema, events_schema};
use crate::vocabulary::{By, Kind, Outcome, column};
use datafusion::arrow::array::{ArrayRef, BooleanArray, Int32Array, RecordBatch, StringArray};
use datafusion::arrow::array::{UInt8Array, UInt16Array, UInt32Array};
use datafusion::arrow::error::ArrowError;
use sayso_norms::{AgeBand, WordKind};
use std::sync::Arc;

/// One event. Sorts as the table does: by household, then by time.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Row {
    /// Number of the household.
    pub household: u32,
    /// Seconds since the animal's first showing.
    pub at_s: i32,
    /// Number of the animal in its household.
    pub animal: u8,
    /// What it tells.
    pub kind: Kind,
    /// Local hour.
    pub hour: u8,
    /// The how-manieth word, and what it brings.
    pub word: Option<(u16, WordKind)>,
    /// Who pressed.
    pub by: Option<By>,
    /// What came of it.
    pub outcome: Option<Outcome>,
    /// Whether the animal took part.
    pub joined: Option<bool>,
    /// How long, in tenths of a second.
    pub tenths: Option<u32>,
}

impl Row {
    /// A row that tells no more than what, when and of whom.
    #[must_use]
    pub const fn new(household: u32, animal: u8, at_s: i32, hour: u8, kind: Kind) -> Self {
        Self { household, at_s, animal, kind, hour, word: None, by: None, outcome: None, joined: None, tenths: None }
    }
}

/// One animal.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Animal {
    /// Number of the household.
    pub household: u32,
    /// Number in it.
    pub animal: u8,
    /// Its species, by the name in the facts.
    pub species: &'static str,
    /// Its age at the first showing.
    pub age_band: AgeBand,
    /// Seconds from its first showing to its last record.
    pub until_s: i32,
}

/// Rows as a batch of [`events_schema`].
///
/// # Errors
/// Where the batch does not fit the schema.
pub fn events_batch(bucket: u16, rows: &[Row]) -> Result<RecordBatch, ArrowError> {
    let columns: Vec<ArrayRef> = vec![
        Arc::new(UInt16Array::from_iter_values(rows.iter().map(|_| bucket))),
        Arc::new(UInt32Array::from_iter_values(rows.iter().map(|r| r.household))),
        Arc::new(UInt8Array::from_iter_values(rows.iter().map(|r| r.animal))),
        Arc::new(Int32Array::from_iter_values(rows.iter().map(|r| r.at_s))),
        Arc::new(UInt8Array::from_iter_values(rows.iter().map(|r| r.hour))),
        Arc::new(column(rows.iter().map(|r| Some(r.kind)))),
        Arc::new(rows.iter().map(|r| r.word.map(|w| w.0)).collect::<UInt16Array>()),
        Arc::new(column(rows.iter().map(|r| r.word.map(|w| w.1)))),
        Arc::new(column(rows.iter().map(|r| r.by))),
        Arc::new(column(rows.iter().map(|r| r.outcome))),
        Arc::new(rows.iter().map(|r| r.joined).collect::<BooleanArray>()),
        Arc::new(rows.iter().map(|r| r.tenths).collect::<UInt32Array>()),
    ];
    RecordBatch::try_new(events_schema(), columns)
}

/// Animals as a batch of [`animals_schema`].
///
/// # Errors
/// Where the batch does not fit the schema.
pub fn animals_batch(bucket: u16, animals: &[Animal]) -> Result<RecordBatch, ArrowError> {
    let columns: Vec<ArrayRef> = vec![
        Arc::new(UInt16Array::from_iter_values(animals.iter().map(|_| bucket))),
        Arc::new(UInt32Array::from_iter_values(animals.iter().map(|a| a.household))),
        Arc::new(UInt8Array::from_iter_values(animals.iter().map(|a| a.animal))),
        Arc::new(StringArray::from_iter_values(animals.iter().map(|a| a.species))),
        Arc::new(StringArray::from_iter_values(animals.iter().map(|a| a.age_band.name()))),
        Arc::new(Int32Array::from_iter_values(animals.iter().map(|a| a.until_s))),
    ];
    RecordBatch::try_new(animals_schema(), columns)
}
