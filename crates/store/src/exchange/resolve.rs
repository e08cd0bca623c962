//! From a raw row to an event: fills gaps, puts ids for names, and says of every value that does not fit where it
//! stands, what was found and what would be right.

use super::Format;
use super::cells::column;
use super::derive::{Occurrences, labelled};
use super::earlier;
use super::fields::{Fields, Leaf, Shape, sheet};
use super::local_time;
use super::names::{NAMED, Names};
use super::problem::RowProblem;
use super::rows::{Given, Raw, listed, problem};
use super::wanted::Wanted;
use crate::written::Written;
use sayso_model::*;
use serde_json::{Map, Value};
use std::collections::HashMap;
use uuid::Uuid;

/// What rows are read against.
pub(super) struct Context<'a> {
    pub format: Format,
    /// For rows that name no home.
    pub home: Option<HomeId>,
    /// The zone of each home, for times without an offset.
    pub zones: &'a HashMap<HomeId, Zone>,
    pub names: &'a Names,
    /// Whether ids and times must stand in full, as in an event that was just made.
    pub fresh: bool,
}

/// What a row holds.
pub(super) enum Resolved {
    /// An event, and whether its id was given by the file.
    Event { event: Event, own_id: bool },
    /// An event of a later version, as it is written.
    Later(Written),
}

struct Walk<'a> {
    context: &'a Context<'a>,
    home: HomeId,
    zone: Option<Zone>,
    line: u64,
    kind: String,
    problems: Vec<RowProblem>,
    /// Whether a kind, a field or a word was met that this version does not know.
    unknown: bool,
}

pub(super) fn resolve(
    context: &Context<'_>,
    raw: Raw<'_>,
    occurrences: &mut Occurrences,
) -> Result<Resolved, Vec<RowProblem>> {
    let line = raw.line;
    let checked = |event: &Event, at: &dyn Fn(&str) -> String| {
        let told = |Problems(found): Problems| found.into_iter().map(|p| problem(line, &at(&p.field), "", p.fault));
        event.check().map_err(|problems| told(problems).collect::<Vec<_>>())
    };
    let (mut value, written) = match raw.given {
        Given::Whole(event) => {
            let field = |path: &str| path.to_owned();
            return checked(&event, &field).map(|()| Resolved::Event { event: *event, own_id: true });
        }
        Given::Object(value, written) => (value, written),
    };
    let one = |field: &str, found: &str, wanted: Wanted| vec![problem(line, field, found, wanted)];
    let Some(event) = value.as_object_mut() else { return Err(one("line", "", Wanted::Event)) };
    event.retain(|_, v| !v.is_null());

    let home = match text_of(event, "home") {
        Some(text) => text.parse().map_err(|_| one("home", &text, Wanted::HomeId))?,
        None => context.home.ok_or_else(|| one("home", "", Wanted::FirstHomeId))?,
    };
    let kind = event.get("body").and_then(|b| b.get("kind")).and_then(Value::as_str).unwrap_or_default().to_owned();
    let zone = match text_of(event, "zone") {
        Some(name) => Some(Zone::new(&name).map_err(|e| one("zone", &name, e.into()))?),
        None => context.zones.get(&home).cloned(),
    };
    let exported = written.filter(|_| is_exported(event));
    let own_id = event.contains_key("id");
    let own_recorded = event.contains_key("recorded_at");
    let mut walk = Walk { context, home, zone, line, kind, problems: Vec::new(), unknown: false };
    walk.fill(event);
    walk.event(event);
    if !own_recorded {
        // It is a copy of `happened_at`; one problem is enough.
        walk.problems.retain(|p| p.field != "recorded_at");
    }
    if !walk.problems.is_empty() {
        let later = exported.filter(|_| walk.unknown).and_then(|json| Written::unread(json.trim()));
        return later.map(Resolved::Later).ok_or(walk.problems);
    }
    let shown = walk.kind.clone();
    let at = |path: &str| if context.format == Format::Csv { column(&shown, path) } else { path.to_owned() };
    let mut event: Event = serde_path_to_error::deserialize(&value).map_err(|e| unfit(line, &e))?;
    checked(&event, &at)?;
    if !own_id {
        event.id = EventId(occurrences.id(&event).map_err(|_| one("line", "", Fault::NotWritten.into()))?);
    }
    Ok(Resolved::Event { event, own_id })
}

/// Whether an event has all that an export gives it. What a later version wrote in one is kept though it is not
/// understood; in a row written by hand an unknown field is a mistake.
fn is_exported(event: &Map<String, Value>) -> bool {
    let is = |field: &str, good: fn(&str) -> bool| event.get(field).and_then(Value::as_str).is_some_and(good);
    let moment = |text: &str| text.parse::<Moment>().is_ok();
    is("id", |text| text.parse::<Uuid>().is_ok_and(|id| !id.is_nil()))
        && is("home", |text| text.parse::<Uuid>().is_ok())
        && is("happened_at", moment)
        && is("recorded_at", moment)
        && is("zone", |text| !text.is_empty())
        && is("source", |text| !text.is_empty())
        && event.get("body").and_then(|b| b.get("kind")).is_some_and(Value::is_string)
}

fn text_of(object: &Map<String, Value>, field: &str) -> Option<String> {
    object.get(field).and_then(Value::as_str).map(str::to_owned)
}

impl Walk<'_> {
    /// Fills what a row may leave out.
    fn fill(&mut self, event: &mut Map<String, Value>) {
        let mut default = |field: &str, value: Option<String>| {
            if let (false, Some(value)) = (event.contains_key(field), value) {
                event.insert(field.to_owned(), Value::String(value));
            }
        };
        default("home", Some(self.home.to_string()));
        default("id", Some(Uuid::nil().to_string()));
        default("zone", Some(self.zone.as_ref().map_or("UTC", Zone::name).to_owned()));
        default("source", Some("import".to_owned()));
        // Not the time of the import: the same file read twice must mean the same events.
        if let (false, Some(at)) = (event.contains_key("recorded_at"), event.get("happened_at").cloned()) {
            event.insert("recorded_at".to_owned(), at);
        }
        // A new card may leave its own id to be made from its name.
        let card = NAMED.into_iter().find(|(_, kind, _, _)| *kind == self.kind);
        if let (Some((_, _, own, name)), Some(body)) = (card, event.get_mut("body").and_then(Value::as_object_mut))
            && body.get(own).is_none_or(Value::is_null)
            && let Some(name) = body.get(name).cloned()
        {
            body.insert(own.to_owned(), name);
        }
    }

    fn wrong(&mut self, path: &str, found: &Value, wanted: Wanted) {
        let field = if self.context.format == Format::Csv { column(&self.kind, path) } else { path.to_owned() };
        let found = match found {
            Value::String(text) => text.clone(),
            Value::Null => String::new(),
            other => other.to_string(),
        };
        self.problems.push(problem(self.line, &field, &found, wanted));
    }

    fn event(&mut self, event: &mut Map<String, Value>) {
        let mut body = event.remove("body").unwrap_or(Value::Null);
        self.object(&sheet().envelope, event, "", None);
        self.body(&mut body, "body");
        event.insert("body".to_owned(), body);
    }

    fn body(&mut self, body: &mut Value, path: &str) {
        self.choice("kind", &sheet().bodies, body, path);
    }

    fn choice(
        &mut self,
        tag: &str,
        variants: &std::collections::BTreeMap<String, Fields>,
        value: &mut Value,
        path: &str,
    ) {
        let below = format!("{path}.{tag}");
        let Some(object) = value.as_object_mut() else {
            let found = value.clone();
            let wanted = Wanted::Tagged { tag: tag.to_owned(), names: listed(variants.keys()) };
            return self.wrong(path, &found, wanted);
        };
        let given = object.get(tag).cloned().unwrap_or(Value::Null);
        match given.as_str().and_then(|v| variants.get(v)) {
            Some(fields) => self.object(fields, object, &format!("{path}."), Some(tag)),
            None => {
                self.unknown |= given.is_string();
                self.wrong(&below, &given, Wanted::OneOf(listed(variants.keys())));
            }
        }
    }

    fn object(&mut self, fields: &Fields, object: &mut Map<String, Value>, path: &str, tag: Option<&str>) {
        object.retain(|_, v| !v.is_null());
        for (name, field) in fields {
            if field.required && !object.contains_key(name) {
                self.wrong(&format!("{path}{name}"), &Value::Null, needed(&field.shape));
            }
        }
        for (name, value) in object.iter_mut().filter(|(name, _)| Some(name.as_str()) != tag) {
            let below = format!("{path}{name}");
            match fields.get(name) {
                Some(field) => self.value(&field.shape, value, &below),
                None => {
                    self.unknown = true;
                    let found = value.clone();
                    self.wrong(&below, &found, Wanted::NoSuchField(listed(fields.keys())));
                }
            }
        }
    }

    fn value(&mut self, shape: &Shape, value: &mut Value, path: &str) {
        match shape {
            Shape::Body => self.body(value, path),
            Shape::Choice { tag, variants } => self.choice(tag, variants, value, path),
            Shape::Object(fields) => match value.as_object_mut() {
                Some(object) => self.object(fields, object, &format!("{path}."), None),
                None => {
                    let found = value.clone();
                    self.wrong(path, &found, Wanted::Object(listed(fields.keys())));
                }
            },
            Shape::List(inner) => match value.as_array_mut() {
                Some(items) => {
                    for (i, item) in items.iter_mut().enumerate() {
                        self.value(inner, item, &format!("{path}[{i}]"));
                    }
                }
                None => {
                    let found = value.clone();
                    self.wrong(path, &found, Wanted::List);
                }
            },
            Shape::Leaf(leaf) => match self.leaf(leaf, value) {
                Ok(Some(better)) => *value = better,
                Ok(None) => {}
                Err(wanted) => {
                    self.unknown |= matches!(leaf, Leaf::OneOf(_)) && value.is_string();
                    let found = value.clone();
                    self.wrong(path, &found, wanted);
                }
            },
        }
    }

    /// Checks a value, and answers what to put in its place, if anything.
    fn leaf(&self, leaf: &Leaf, value: &Value) -> Result<Option<Value>, Wanted> {
        let text = || value.as_str().ok_or(Wanted::Text);
        match leaf {
            Leaf::Flag => value.as_bool().map(|_| None).ok_or(Wanted::Flag),
            Leaf::Whole { low, high } => match value.as_i64() {
                Some(n) if (*low..=*high).contains(&n) => Ok(None),
                _ => Err(Wanted::Whole { low: *low, high: *high }),
            },
            Leaf::OneOf(words) => match value.as_str() {
                Some(word) if words.iter().any(|w| w == word) => Ok(None),
                _ => Err(Wanted::OneOf(words.clone())),
            },
            Leaf::Moment if self.context.fresh => Ok(text()?.parse::<Moment>().map(|_| None)?),
            Leaf::Moment => local_time::read(text()?, self.zone.as_ref()).map(|m| Some(Value::String(m.to_string()))),
            Leaf::Id(type_name) => self.id(type_name, text()?).map(|id| Some(Value::String(id.to_string()))),
            Leaf::Number(type_name) => {
                let number = value.as_f64().ok_or(Wanted::Number)?;
                match type_name.as_str() {
                    "Seconds" => Ok(Seconds::new(number).map(|_| None)?),
                    "Kcal" => Ok(Kcal::new(number).map(|_| None)?),
                    "Grams" => Ok(Grams::new(number).map(|_| None)?),
                    "Kilograms" => Ok(Kilograms::new(number).map(|_| None)?),
                    "Probability" => Ok(Probability::new(number).map(|_| None)?),
                    "Ratio" => Ok(Ratio::new(number).map(|_| None)?),
                    _ => Ok(None),
                }
            }
            Leaf::Text(type_name) => {
                let text = text()?;
                match type_name.as_str() {
                    "Label" => Ok(Label::new(text).map(|_| None)?),
                    "Note" => Ok(Note::new(text).map(|_| None)?),
                    "Zone" => Ok(Zone::new(text).map(|_| None)?),
                    "Day" => Ok(text.parse::<Day>().map(|_| None)?),
                    _ => Ok(None),
                }
            }
        }
    }

    fn id(&self, type_name: &str, text: &str) -> Result<Uuid, Wanted> {
        if let Ok(id) = text.parse::<Uuid>() {
            return Ok(id);
        }
        match type_name {
            _ if self.context.fresh => Err(Wanted::Id),
            "AnimalId" | "PersonId" | "WordId" | "RewardId" => self.context.names.find(self.home, type_name, text),
            // These have no cards; a label that comes again means the same one. Not so for rounds and swaps: draws follow
            // from their ids, and a label could be chosen until it suits.
            "SessionId" | "AssessmentId" | "ProbeId" | "DesignId" | "StreamId" => {
                Label::new(text)?;
                Ok(labelled(self.home, type_name, text))
            }
            _ => Err(Wanted::Id),
        }
    }
}

/// What a missing field would hold, where it can be said briefly.
fn needed(shape: &Shape) -> Wanted {
    match shape {
        Shape::Leaf(Leaf::OneOf(words)) => Wanted::NeededOneOf(words.clone()),
        _ => Wanted::Needed,
    }
}

/// A value that the schema takes and the model does not.
pub(crate) fn unfit<E>(line: u64, why: &serde_path_to_error::Error<E>) -> Vec<RowProblem> {
    let path = why.path().to_string();
    vec![problem(line, if path == "." { "" } else { &path }, "", Wanted::Fitting)]
}

/// What in an event that was just made does not fit what this version knows, by field.
pub(crate) fn misfits(event: &Map<String, Value>) -> Vec<RowProblem> {
    let (zones, names) = (HashMap::new(), Names::default());
    let context = Context { format: Format::JsonLines, home: None, zones: &zones, names: &names, fresh: true };
    let kind = event.get("body").and_then(|b| b.get("kind")).and_then(Value::as_str).unwrap_or_default().to_owned();
    let home = HomeId(Uuid::nil());
    let mut walk = Walk { context: &context, home, zone: None, line: 0, kind, problems: Vec::new(), unknown: false };
    let mut value = Value::Object(event.clone());
    earlier::event(&mut value);
    if let Some(event) = value.as_object_mut() {
        walk.event(event);
    }
    walk.problems
}
