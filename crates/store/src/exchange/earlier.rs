//! Names that earlier versions gave to fields, kinds and choices: read from a file as today's, and used where an id made
//! from content must stay what it was. The same names are aliases in the model, for what is stored or posted.

use sayso_model::Kind;
use serde_json::{Map, Value};

/// Fields of an event or a body: earlier name, today's name.
const FIELDS: [(&str, &str); 4] =
    [("household", "home"), ("learner", "animal"), ("teacher", "person"), ("learners", "animals")];

/// Choices by field: the field, earlier name, today's name.
const CHOICES: [(&str, &str, &str); 5] = [
    ("by", "learner", "animal"),
    ("by", "teacher", "person"),
    ("reason", "learner_left", "animal_left"),
    ("reason", "household", "home"),
    ("role", "household", "home"),
];

/// Types of id, as a label's id was always made from: today's name, earlier name.
const TYPES: [(&str, &str); 2] = [("AnimalId", "LearnerId"), ("PersonId", "TeacherId")];

/// Today's name of a kind.
pub(super) fn kind(name: &str) -> &str {
    Kind::named(name).map_or(name, |kind| kind.name())
}

/// Today's name of a column, such as `learner_card.learner`.
pub(super) fn column(name: &str) -> String {
    match name.split_once('.') {
        Some((of, path)) if Kind::named(of).is_some() => format!("{}.{}", kind(of), field(path)),
        _ => field(name).to_owned(),
    }
}

fn field(name: &str) -> &str {
    FIELDS.iter().find(|(earlier, _)| *earlier == name).map_or(name, |(_, today)| today)
}

/// Gives an event read from a file today's names. A field that stands there under both names is left as it is, to be
/// told as unknown.
pub(super) fn event(event: &mut Value) {
    let Some(event) = event.as_object_mut() else { return };
    rename(event);
    if let Some(inner) = event.get_mut("body") {
        body(inner);
    }
}

fn body(value: &mut Value) {
    let Some(object) = value.as_object_mut() else { return };
    rename(object);
    if let Some(Value::String(name)) = object.get_mut("kind") {
        *name = kind(name).to_owned();
    }
    for (field, earlier, today) in CHOICES {
        if let Some(Value::String(choice)) = object.get_mut(field)
            && choice == earlier
        {
            today.clone_into(choice);
        }
    }
    if let Some(inner) = object.get_mut("body") {
        body(inner);
    }
}

fn rename(object: &mut Map<String, Value>) {
    for (earlier, today) in FIELDS {
        if !object.contains_key(today)
            && let Some(value) = object.remove(earlier)
        {
            object.insert(today.to_owned(), value);
        }
    }
}

/// JSON as written by this version, with the names that earlier ones used. A quotation mark within a text is written
/// `\"`, so what is looked for is only ever a field or a choice.
pub(super) fn json(today: &str) -> String {
    let mut text = today.to_owned();
    for (earlier, today) in FIELDS {
        text = text.replace(&format!("\"{today}\":"), &format!("\"{earlier}\":"));
    }
    for (field, earlier, today) in CHOICES {
        text = text.replace(&format!("\"{field}\":\"{today}\""), &format!("\"{field}\":\"{earlier}\""));
    }
    for (kind, earlier) in Kind::ALL.iter().filter_map(|k| Some((k.name(), k.earlier_name()?))) {
        text = text.replace(&format!("\"kind\":\"{kind}\""), &format!("\"kind\":\"{earlier}\""));
    }
    text
}

/// The name of a type of id as earlier versions knew it.
pub(super) fn type_name(today: &str) -> &str {
    TYPES.iter().find(|(name, _)| *name == today).map_or(today, |(_, earlier)| earlier)
}
