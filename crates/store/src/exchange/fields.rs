//! Which fields an event has and of what type, read once from the JSON Schema of the model.

use sayso_model::Kind;
use serde_json::Value;
use std::collections::BTreeMap;
use std::sync::OnceLock;

/// What stands at a place in an event.
#[derive(Clone, Debug)]
pub(super) enum Shape {
    /// A single value.
    Leaf(Leaf),
    /// Several of the same.
    List(Box<Shape>),
    /// Named fields.
    Object(Fields),
    /// Named fields that depend on the value of one of them.
    Choice { tag: String, variants: BTreeMap<String, Fields> },
    /// What happened: the shape of [`Sheet::bodies`] again.
    Body,
}

/// Fields by name.
pub(super) type Fields = BTreeMap<String, Field>;

/// One named field.
#[derive(Clone, Debug)]
pub(super) struct Field {
    pub shape: Shape,
    pub required: bool,
}

/// Types of single values.
#[derive(Clone, Debug)]
pub(super) enum Leaf {
    /// An id; the name is that of the model's type, such as `WordId`.
    Id(String),
    /// A number with a unit, or a text with rules: the name of the model's type.
    Number(String),
    Text(String),
    /// A whole number.
    Whole {
        low: i64,
        high: i64,
    },
    /// True or false.
    Flag,
    /// One of these.
    OneOf(Vec<String>),
    /// An instant.
    Moment,
}

/// The whole of it.
#[derive(Debug)]
pub(super) struct Sheet {
    /// Fields of the event itself, without its body.
    pub envelope: Fields,
    /// Fields of the body by kind.
    pub bodies: BTreeMap<String, Fields>,
}

/// The fields of every kind of event.
pub(super) fn sheet() -> &'static Sheet {
    static SHEET: OnceLock<Sheet> = OnceLock::new();
    SHEET.get_or_init(|| {
        let schema = schemars::schema_for!(sayso_model::Event).to_value();
        let defs = schema.get("$defs").cloned().unwrap_or_default();
        let mut envelope = fields(&schema, &defs, None);
        envelope.remove("body");
        let bodies = match choice(defs.get("Body").unwrap_or(&Value::Null), &defs) {
            Some(Shape::Choice { variants, .. }) => variants,
            _ => BTreeMap::new(),
        };
        Sheet { envelope, bodies }
    })
}

fn fields(object: &Value, defs: &Value, tag: Option<&str>) -> Fields {
    let required: Vec<&str> =
        object.get("required").and_then(Value::as_array).into_iter().flatten().filter_map(Value::as_str).collect();
    let properties = object.get("properties").and_then(Value::as_object).into_iter().flatten();
    properties
        .filter(|(name, _)| Some(name.as_str()) != tag)
        .map(|(name, schema)| {
            let field = Field { shape: shape(schema, defs, None), required: required.contains(&name.as_str()) };
            (name.clone(), field)
        })
        .collect()
}

fn choice(schema: &Value, defs: &Value) -> Option<Shape> {
    let variants = schema.get("oneOf")?.as_array()?;
    // The tag is the property whose value is fixed.
    let fixed = |v: &Value| {
        let properties = v.get("properties")?.as_object()?;
        properties.iter().find_map(|(name, p)| Some((name.clone(), p.get("const")?.as_str()?.to_owned())))
    };
    let tags: Option<Vec<(String, String)>> = variants.iter().map(fixed).collect();
    let tags = tags?;
    let tag = tags.first()?.0.clone();
    let variants =
        variants.iter().zip(&tags).map(|(v, (_, value))| (value.clone(), fields(v, defs, Some(&tag)))).collect();
    Some(Shape::Choice { tag, variants })
}

/// The shape of a schema; `name` is that of the definition it stands in.
fn shape(schema: &Value, defs: &Value, name: Option<&str>) -> Shape {
    let text = |key: &str| schema.get(key).and_then(Value::as_str);
    if let Some(reference) = text("$ref") {
        let name = reference.rsplit('/').next().unwrap_or_default();
        if name == "Body" {
            return Shape::Body;
        }
        return shape(defs.get(name).unwrap_or(&Value::Null), defs, Some(name));
    }
    // An optional field: the part that is not null.
    if let Some(options) = schema.get("anyOf").and_then(Value::as_array) {
        let some = options.iter().find(|o| o.get("type").and_then(Value::as_str) != Some("null"));
        return shape(some.unwrap_or(&Value::Null), defs, name);
    }
    if let Some(options) = schema.get("oneOf").and_then(Value::as_array) {
        let words: Option<Vec<String>> =
            options.iter().map(|o| o.get("const").and_then(Value::as_str).map(str::to_owned)).collect();
        if let Some(words) = words {
            return Shape::Leaf(Leaf::OneOf(words));
        }
        if let Some(choice) = choice(schema, defs) {
            return choice;
        }
    }
    if let Some(words) = schema.get("enum").and_then(Value::as_array) {
        return Shape::Leaf(Leaf::OneOf(words.iter().filter_map(Value::as_str).map(str::to_owned).collect()));
    }
    let own = name.unwrap_or_default().to_owned();
    let kind = match schema.get("type") {
        Some(Value::Array(several)) => several.iter().filter_map(Value::as_str).find(|t| *t != "null"),
        Some(Value::String(one)) => Some(one.as_str()),
        _ => None,
    };
    match kind {
        Some("object") => Shape::Object(fields(schema, defs, None)),
        Some("array") => Shape::List(Box::new(shape(schema.get("items").unwrap_or(&Value::Null), defs, None))),
        Some("boolean") => Shape::Leaf(Leaf::Flag),
        Some("integer") => Shape::Leaf(Leaf::Whole {
            low: schema.get("minimum").and_then(Value::as_i64).unwrap_or(0),
            high: schema.get("maximum").and_then(Value::as_i64).unwrap_or(i64::from(u32::MAX)),
        }),
        Some("number") => Shape::Leaf(Leaf::Number(own)),
        _ => match text("format") {
            Some("uuid") => Shape::Leaf(Leaf::Id(own)),
            Some("date-time") => Shape::Leaf(Leaf::Moment),
            _ => Shape::Leaf(Leaf::Text(own)),
        },
    }
}

/// The shape at a dotted path below a kind's body; `result.outcome` names the tag of a choice. What a correction
/// holds, below `body.`, is of the kind `inner`.
pub(super) fn find(kind: &str, inner: Option<&str>, path: &str) -> Option<Shape> {
    if kind == Kind::Correction.name()
        && let Some(below) = path.strip_prefix("body.")
    {
        return match below {
            "kind" => Some(Shape::Leaf(Leaf::OneOf(sheet().bodies.keys().cloned().collect()))),
            below => find(inner?, None, below),
        };
    }
    let mut names = path.split('.');
    let mut at = sheet().bodies.get(kind)?.get(names.next()?)?.shape.clone();
    for name in names {
        at = match at {
            Shape::Object(fields) => fields.get(name)?.shape.clone(),
            Shape::Choice { tag, variants } if name == tag => {
                Shape::Leaf(Leaf::OneOf(variants.keys().cloned().collect()))
            }
            // Within one choice, a name has the same type in every variant.
            Shape::Choice { variants, .. } => variants.values().find_map(|f| f.get(name))?.shape.clone(),
            Shape::Leaf(_) | Shape::List(_) | Shape::Body => return None,
        };
    }
    Some(at)
}

/// Whether a field holds a longer text, a remark rather than a name. `inner` is the kind within a correction.
pub(crate) fn is_note(kind: &str, inner: &str, path: &str) -> bool {
    matches!(find(kind, Some(inner), path), Some(Shape::Leaf(Leaf::Text(name))) if name == "Note")
}

#[cfg(test)]
#[allow(clippy::unwrap_used, clippy::panic)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_is_known_with_its_fields_and_types() {
        assert_eq!(sheet().bodies.len(), Kind::ALL.len());
        assert!(matches!(find("press", None, "word"), Some(Shape::Leaf(Leaf::Id(n))) if n == "WordId"));
        assert!(matches!(find("delivery", None, "delay_s"), Some(Shape::Leaf(Leaf::Number(n))) if n == "Seconds"));
        assert!(matches!(find("feed", None, "pieces"), Some(Shape::Leaf(Leaf::Whole { low: 0, high: 65_535 }))));
        assert!(
            matches!(find("invitation", None, "result.outcome"), Some(Shape::Leaf(Leaf::OneOf(w))) if w.len() == 4)
        );
        let inner = find("correction", Some("delivery"), "body.answer");
        assert!(matches!(inner, Some(Shape::Leaf(Leaf::OneOf(w))) if w.contains(&"declined".to_owned())));
        let inner = find("correction", Some("word_card"), "body.answer");
        assert!(matches!(inner, Some(Shape::Leaf(Leaf::Text(n))) if n == "Note"));
        assert!(matches!(find("correction", None, "happened_at"), Some(Shape::Leaf(Leaf::Moment))));
        assert!(matches!(find("board_layout", None, "words"), Some(Shape::List(_))));
        assert!(find("press", None, "nonsense").is_none());
        assert!(sheet().envelope.contains_key("recorded_at") && !sheet().envelope.contains_key("body"));
    }
}
