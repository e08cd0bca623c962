//! Cells of a spreadsheet: what column holds which field, and how a value is written in a cell.

use super::fields::{Leaf, Shape};
use super::wanted::Wanted;
use serde_json::{Number, Value};

/// Columns of the event itself, in the order they are written. A field of the body that has one of these names is
/// written with its kind before it (`reward_card` and the like): `animal_card.animal`, `correction.happened_at`.
pub(super) const ENVELOPE: [&str; 9] =
    ["id", "happened_at", "zone", "animal", "person", "kind", "source", "recorded_at", "home"];

/// The column that holds a whole event as JSON, where this version does not understand it; all other cells of the row
/// but `kind` are empty.
pub(super) const WHOLE: &str = "json";

/// The column of a path within an event, such as `body.result.outcome`.
pub(super) fn column(kind: &str, path: &str) -> String {
    match path.strip_prefix("body.") {
        None => path.to_owned(),
        Some("kind") => "kind".to_owned(),
        Some(below) if ENVELOPE.contains(&below) => format!("{kind}.{below}"),
        Some(below) => below.to_owned(),
    }
}

/// Signs that make a spreadsheet take a cell for a formula, also in their full-width forms.
const FORMULA: [char; 10] = ['=', '+', '-', '@', '\t', '\r', '＝', '＋', '－', '＠'];

/// Puts an apostrophe before a text that a spreadsheet would run as a formula. A text that already looks guarded
/// gets one more, so that [`unguard`] always gives back exactly what was there.
pub(super) fn guard(text: &str) -> String {
    if text.trim_start_matches('\'').starts_with(FORMULA) { format!("'{text}") } else { text.to_owned() }
}

/// Takes off one apostrophe that [`guard`] put there.
pub(super) fn unguard(text: &str) -> &str {
    match text.strip_prefix('\'') {
        Some(rest) if rest.trim_start_matches('\'').starts_with(FORMULA) => rest,
        _ => text,
    }
}

/// A value as a cell.
pub(super) fn write(value: &Value) -> String {
    match value {
        Value::String(text) => guard(text),
        // Numbers need no guard: a minus sign before digits is no formula.
        other => other.to_string(),
    }
}

/// A cell as a value of the type its column has, or what should stand there instead.
pub(super) fn read(shape: &Shape, cell: &str) -> Result<Value, Wanted> {
    match shape {
        Shape::Leaf(Leaf::Number(_)) => match number(cell) {
            Some(number) => Ok(Value::Number(number)),
            None if cell.contains(',') => Err(Wanted::Point),
            None => Err(Wanted::Number),
        },
        Shape::Leaf(Leaf::Whole { low, high }) => {
            cell.parse::<i64>().map(Value::from).map_err(|_| Wanted::Whole { low: *low, high: *high })
        }
        Shape::Leaf(Leaf::Flag) => match cell.to_lowercase().as_str() {
            "true" | "yes" | "1" => Ok(Value::Bool(true)),
            "false" | "no" | "0" => Ok(Value::Bool(false)),
            _ => Err(Wanted::Flag),
        },
        Shape::Leaf(_) => Ok(Value::String(unguard(cell).to_owned())),
        Shape::List(_) if cell.starts_with('[') => serde_json::from_str(cell).map_err(|_| Wanted::JsonList),
        Shape::List(_) => Ok(unguard(cell).split('|').map(|part| Value::String(part.trim().to_owned())).collect()),
        Shape::Object(fields) => Err(Wanted::Parts(first(fields.keys()).to_owned())),
        Shape::Choice { tag, .. } => Err(Wanted::Parts(tag.clone())),
        Shape::Body => Err(Wanted::BodyColumns),
    }
}

fn number(cell: &str) -> Option<Number> {
    // A whole number stays one, so that a message shows it as it was written.
    cell.parse::<i64>().map(Number::from).ok().or_else(|| cell.parse().ok().and_then(Number::from_f64))
}

fn first<'a>(mut names: impl Iterator<Item = &'a String>) -> &'a str {
    names.next().map_or("", String::as_str)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn formulas_are_guarded() {
        for text in ["=1+1", "+49", "-", "@x", "'=1", "''=1", "＝1"] {
            assert!(guard(text).starts_with('\''), "{text}");
        }
        assert_eq!(guard("'tis"), "'tis");
        assert_eq!(guard("walk"), "walk");
    }

    proptest! {
        #[test]
        fn a_guard_comes_off_exactly(text in "['=+@\t a-]{0,6}|.{0,8}") {
            let guarded = guard(&text);
            prop_assert_eq!(unguard(&guarded), text.as_str());
            prop_assert!(!guarded.starts_with(FORMULA));
        }
    }
}
