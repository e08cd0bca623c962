//! What columns a table may have, for people who write one.

use super::cells::column;
use super::fields::{Field, Fields, Leaf, Shape, sheet};
use super::names::NAMED;
use sayso_model::Kind;

/// A column for rows of one kind.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ColumnHelp {
    /// Its name.
    pub name: String,
    /// Whether a row of the kind must fill it.
    pub needed: bool,
    /// What it holds, in a few words.
    pub holds: String,
}

/// The columns of a kind of event beside those every row has, in the order of the alphabet.
#[must_use]
pub fn columns_of(kind: Kind) -> Vec<ColumnHelp> {
    let mut found = Vec::new();
    if let Some(fields) = sheet().bodies.get(kind.name()) {
        list(kind, "body.", fields, true, &mut found);
    }
    // A card's own id can be made from its name.
    let own = NAMED.into_iter().find(|n| n.1 == kind.name()).map(|n| column(n.1, &format!("body.{}", n.2)));
    for help in &mut found {
        help.needed &= own.as_ref() != Some(&help.name);
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    // Kinds of one thing may have fields of one name that hold other words: all of them are said.
    found.dedup_by(|next, kept| {
        let same = next.name == kept.name;
        if same && !kept.holds.split("; or ").any(|holds| holds == next.holds) {
            kept.holds = format!("{}; or {}", kept.holds, next.holds);
        }
        same
    });
    found
}

fn list(kind: Kind, path: &str, fields: &Fields, needed: bool, found: &mut Vec<ColumnHelp>) {
    for (name, Field { shape, required }) in fields {
        let path = format!("{path}{name}");
        let needed = needed && *required;
        let name = column(kind.name(), &path);
        let mut add = |name: String, needed, holds: String| found.push(ColumnHelp { name, needed, holds });
        match shape {
            Shape::Leaf(leaf) => add(name, needed, holds(leaf)),
            Shape::List(inner) => match inner.as_ref() {
                Shape::Leaf(leaf) => add(name, needed, format!("list: {}", holds(leaf))),
                _ => add(name, needed, "JSON list".to_owned()),
            },
            Shape::Object(fields) => list(kind, &format!("{path}."), fields, needed, found),
            Shape::Choice { tag, variants } => {
                let values: Vec<&str> = variants.keys().map(String::as_str).collect();
                add(format!("{name}.{tag}"), needed, values.join(", "));
                for fields in variants.values() {
                    list(kind, &format!("{path}."), fields, false, found);
                }
            }
            Shape::Body => add(format!("{name}.kind"), needed, "a kind; its fields follow as body.…".to_owned()),
        }
    }
}

fn holds(leaf: &Leaf) -> String {
    match leaf {
        Leaf::OneOf(words) => words.join(", "),
        Leaf::Flag => "true or false".to_owned(),
        Leaf::Whole { low, high } => format!("whole number, {low} to {high}"),
        Leaf::Moment => "time".to_owned(),
        Leaf::Number(name) if name.is_empty() => "number".to_owned(),
        Leaf::Number(name) => name.to_lowercase(),
        Leaf::Text(name) if name == "Label" => "short text".to_owned(),
        Leaf::Text(name) if name == "Day" => "day such as 2026-03-01".to_owned(),
        Leaf::Text(name) if name == "Zone" => "time zone such as Europe/Berlin".to_owned(),
        Leaf::Text(_) => "text".to_owned(),
        Leaf::Id(name) => match name.as_str() {
            "AnimalId" | "PersonId" | "WordId" | "RewardId" => {
                format!("{} by name or id", name.trim_end_matches("Id").to_lowercase())
            }
            "SessionId" | "AssessmentId" | "ProbeId" | "DesignId" | "StreamId" => "label or id".to_owned(),
            _ => "id".to_owned(),
        },
    }
}
