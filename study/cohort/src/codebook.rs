//! What stands in the tables, for whoever reads them.

use crate::schema::{Column, animal_columns, event_columns};
use crate::vocabulary::{By, Kind, Outcome, Vocabulary};
use datafusion::arrow::datatypes::DataType;
use sayso_norms::{AgeBand, WordKind};
use std::fmt::Write;

/// Columns of both tables with their types, and every word that can stand in them with its meaning, in Markdown.
#[must_use]
pub fn codebook() -> String {
    let mut text = String::new();
    columns("events", event_columns(), &mut text);
    columns("animals", animal_columns(), &mut text);
    words::<Kind>("kind", &mut text);
    words::<WordKind>("word_kind", &mut text);
    words::<By>("pressed_by", &mut text);
    words::<Outcome>("outcome", &mut text);
    words::<AgeBand>("age_band", &mut text);
    text
}

fn columns(table: &str, columns: Vec<Column>, to: &mut String) {
    // Writing into a string does not fail, here and below.
    let _ = write!(to, "# Table of {table}\n\n| column | type | may be empty | what |\n| --- | --- | --- | --- |\n");
    for Column(name, kind, empty, what) in columns {
        let kind = if matches!(kind, DataType::Dictionary(..)) { "words".to_owned() } else { kind.to_string() };
        let _ = writeln!(to, "| {name} | {kind} | {} | {what} |", if empty { "yes" } else { "no" });
    }
    to.push('\n');
}

fn words<V: Vocabulary>(column: &str, to: &mut String) {
    let _ = write!(to, "# Words of {column}\n\n| word | means |\n| --- | --- |\n");
    for word in V::ALL {
        let _ = writeln!(to, "| {} | {} |", word.name(), word.means());
    }
    to.push('\n');
}
