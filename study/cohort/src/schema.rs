//! The two tables: events, and the animals they are of. What they leave out is a decision (`docs/decisions/study.md`).

use datafusion::arrow::datatypes::{DataType, Field, Schema, SchemaRef};
use std::sync::Arc;

/// Columns by which events lie sorted.
pub const ORDER: [&str; 2] = ["household", "at_s"];

fn words() -> DataType {
    DataType::Dictionary(Box::new(DataType::UInt8), Box::new(DataType::Utf8))
}

/// One row an event:
///
/// | column | what |
/// | --- | --- |
/// | `bucket` | in which file of households |
/// | `household`, `animal` | numbers of this study; an animal's is within its household |
/// | `at_s` | seconds since the animal's first showing, negative before it |
/// | `hour` | local hour, 0 to 23 |
/// | `kind` | [`crate::Kind`] |
/// | `word`, `word_kind` | the how-manieth word the animal was shown, and [`crate::WordKind`] |
/// | `pressed_by` | [`crate::By`] |
/// | `outcome` | [`crate::Outcome`] |
/// | `joined` | of a session: the animal joined; of an invitation: it was there and took the thing |
/// | `tenths` | tenths of a second: a session's length, the delay of an answer, the wait at an invitation |
#[must_use]
pub fn events_schema() -> SchemaRef {
    Arc::new(Schema::new(vec![
        Field::new("bucket", DataType::UInt16, false),
        Field::new("household", DataType::UInt32, false),
        Field::new("animal", DataType::UInt8, false),
        Field::new("at_s", DataType::Int32, false),
        Field::new("hour", DataType::UInt8, false),
        Field::new("kind", words(), false),
        Field::new("word", DataType::UInt16, true),
        Field::new("word_kind", words(), true),
        Field::new("pressed_by", words(), true),
        Field::new("outcome", words(), true),
        Field::new("joined", DataType::Boolean, true),
        Field::new("tenths", DataType::UInt32, true),
    ]))
}

/// One row an animal: `bucket`, `household` and `animal` as in the events, `species`, `age_band` ([`crate::AgeBand`]), and
/// `until_s`, seconds from its first showing to its last record.
#[must_use]
pub fn animals_schema() -> SchemaRef {
    Arc::new(Schema::new(vec![
        Field::new("bucket", DataType::UInt16, false),
        Field::new("household", DataType::UInt32, false),
        Field::new("animal", DataType::UInt8, false),
        Field::new("species", DataType::Utf8, false),
        Field::new("age_band", DataType::Utf8, false),
        Field::new("until_s", DataType::Int32, false),
    ]))
}
