//! The two tables: events, and the animals they are of. What they leave out is a decision (`docs/decisions/study.md`).

use datafusion::arrow::datatypes::{DataType, Field, Schema, SchemaRef};
use std::sync::Arc;

/// Columns by which events lie sorted.
pub const ORDER: [&str; 2] = ["household", "at_s"];

/// A column: its name, its type, whether it may be empty, and what it holds.
pub(crate) struct Column(pub &'static str, pub DataType, pub bool, pub &'static str);

/// The type of a column of words ([`crate::vocabulary::column`]).
pub(crate) fn words() -> DataType {
    DataType::Dictionary(Box::new(DataType::UInt8), Box::new(DataType::Utf8))
}

fn whose() -> [Column; 3] {
    [
        Column("bucket", DataType::UInt16, false, "in which file of households"),
        Column("household", DataType::UInt32, false, "number of the household in this study"),
        Column("animal", DataType::UInt8, false, "number of the animal in its household"),
    ]
}

/// One row an event.
pub(crate) fn event_columns() -> Vec<Column> {
    let mut columns = Vec::from(whose());
    columns.extend([
        Column("at_s", DataType::Int32, false, "seconds since the animal's first showing, negative before it"),
        Column("hour", DataType::UInt8, false, "local hour, 0 to 23"),
        Column("kind", words(), false, "what the row tells"),
        Column("word", DataType::UInt16, true, "the how-manieth word the animal was shown, from 0"),
        Column("word_kind", words(), true, "what the word brings"),
        Column("pressed_by", words(), true, "who pressed"),
        Column("outcome", words(), true, "what came of it, or to which stage the word came"),
        Column(
            "joined",
            DataType::Boolean,
            true,
            "of a session: the animal joined; of an invitation: it was there and took the thing",
        ),
        Column(
            "tenths",
            DataType::UInt32,
            true,
            "tenths of a second: a session's length, the delay of an answer, the wait at an invitation",
        ),
    ]);
    columns
}

/// One row an animal.
pub(crate) fn animal_columns() -> Vec<Column> {
    let mut columns = Vec::from(whose());
    columns.extend([
        Column("species", DataType::Utf8, false, "dog, cat, parrot, rabbit or other"),
        Column("age_band", DataType::Utf8, false, "years at the first showing"),
        Column("until_s", DataType::Int32, false, "seconds from its first showing to its last record"),
    ]);
    columns
}

fn schema(columns: Vec<Column>) -> SchemaRef {
    let fields: Vec<Field> =
        columns.into_iter().map(|Column(name, kind, empty, _)| Field::new(name, kind, empty)).collect();
    Arc::new(Schema::new(fields))
}

/// Columns of the table of events; the codebook says what each holds ([`crate::codebook()`]).
#[must_use]
pub fn events_schema() -> SchemaRef {
    schema(event_columns())
}

/// Columns of the table of animals.
#[must_use]
pub fn animals_schema() -> SchemaRef {
    schema(animal_columns())
}
