//! An event that comes in fresh, as JSON: held to what this version knows, and every mistake named by its field.

use crate::exchange::{RowProblem, Wanted, is_note, misfits, unfit};
use sayso_model::text::{TextError, hidden_in_line, turning_in_text};
use sayso_model::{Event, Fault, Problem};
use serde_json::Value;

/// Why a text is no event that this version can take.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
#[error("{}", .0.iter().map(ToString::to_string).collect::<Vec<_>>().join("; "))]
pub struct NotRead(pub Vec<RowProblem>);

impl NotRead {
    fn one(field: &str, wanted: Wanted) -> Self {
        Self(vec![RowProblem { line: 0, field: field.to_owned(), found: String::new(), wanted: Box::new(wanted) }])
    }
}

/// Reads one event from JSON.
///
/// # Errors
/// [`NotRead`], each with the path of its field: JSON that is none, a field or kind that is not known, a value that
/// does not fit, or a list where an object belongs.
pub fn read_event(json: &str) -> Result<Event, NotRead> {
    let raw: Value = serde_json::from_str(json).map_err(|e| NotRead::one("", Wanted::Json { column: e.column() }))?;
    let Some(object) = raw.as_object() else { return Err(NotRead::one("", Wanted::Event)) };
    let mut reader = serde_json::Deserializer::from_str(json);
    let event: Event = serde_path_to_error::deserialize(&mut reader).map_err(|e| {
        let found = misfits(object);
        NotRead(if found.is_empty() { unfit(0, &e) } else { found })
    })?;
    // The reader takes a list of values in the order of the fields as well, which says nothing about what is what.
    let written = serde_json::to_value(&event).map_err(|_| NotRead::one("", Fault::NotWritten.into()))?;
    match list_for_object(&raw, &written, String::new()) {
        Some(field) => Err(NotRead::one(&field, Wanted::ObjectNotList)),
        None => Ok(event),
    }
}

/// The path of a list in `raw` where the event has an object.
fn list_for_object(raw: &Value, written: &Value, path: String) -> Option<String> {
    match (raw, written) {
        (Value::Array(_), Value::Object(_)) => Some(path),
        (Value::Object(raw), Value::Object(written)) => raw.iter().find_map(|(name, value)| {
            let below = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
            list_for_object(value, written.get(name)?, below)
        }),
        (Value::Array(raw), Value::Array(written)) => raw
            .iter()
            .zip(written)
            .enumerate()
            .find_map(|(i, (raw, written))| list_for_object(raw, written, format!("{path}[{i}]"))),
        _ => None,
    }
}

/// Hidden characters in the texts of an event that is to be new in the log, by field. Names are held to more than
/// remarks.
pub(crate) fn hidden_characters(json: &str) -> Vec<Problem> {
    // Nearly always there is nothing to look for.
    if json.is_ascii() || hidden_in_line(json).is_none() {
        return Vec::new();
    }
    let mut found = Vec::new();
    // What was just written as JSON can be read as such.
    if let Ok(event) = serde_json::from_str::<Value>(json) {
        let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        let body = event.get("body").unwrap_or(&Value::Null);
        let kinds = (text(&body["kind"]), text(&body["body"]["kind"]));
        look(&event, &kinds, String::new(), &mut found);
    }
    found
}

fn look(value: &Value, kinds: &(String, String), path: String, found: &mut Vec<Problem>) {
    match value {
        Value::String(text) => {
            let note = path.strip_prefix("body.").is_some_and(|below| is_note(&kinds.0, &kinds.1, below));
            if let Some(c) = if note { turning_in_text(text) } else { hidden_in_line(text) } {
                found.push(Problem { field: path, fault: TextError::Hidden(c).into() });
            }
        }
        Value::Object(fields) => {
            for (name, value) in fields {
                let below = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
                look(value, kinds, below, found);
            }
        }
        Value::Array(items) => {
            for (i, item) in items.iter().enumerate() {
                look(item, kinds, format!("{path}[{i}]"), found);
            }
        }
        _ => {}
    }
}
