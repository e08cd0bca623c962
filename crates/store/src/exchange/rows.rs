//! The rows of a file, as raw objects that are not yet events.

use super::Format;
use super::cells::{self, ENVELOPE, WHOLE};
use super::earlier;
use super::fields::{find, sheet};
use super::problem::RowProblem;
use super::wanted::Wanted;
use sayso_model::{Event, HomeId};
use serde_json::{Map, Value};
use std::borrow::Cow;

/// The most bytes a file may have.
pub const MOST_FILE_BYTES: usize = 1024 * 1024 * 1024;

/// The most bytes a line may have.
pub const MOST_LINE_BYTES: usize = 256 * 1024;

/// One row: an event as the file gives it, with names for ids and gaps not yet filled.
#[derive(Debug)]
pub(super) struct Raw<'a> {
    pub line: u64,
    pub given: Given<'a>,
}

/// An event as a file gives it.
#[derive(Debug)]
pub(super) enum Given<'a> {
    /// Letter for letter as an export writes it: nothing is to be filled in or put right.
    Whole(Box<Event>),
    /// An object, and the text it was read from where the file holds it as JSON.
    Object(Value, Option<Cow<'a, str>>),
}

/// What the first look takes from a row: its household and, where it is a card, its body.
pub(super) struct Glance {
    pub home: Option<HomeId>,
    pub card: Option<Value>,
}

impl Raw<'_> {
    /// The same as a row of another home. Its own id stays, and so does what a later version wrote in it.
    pub fn moved_to(self, home: HomeId) -> Self {
        let given = match self.given {
            Given::Whole(mut event) => {
                event.home = home;
                Given::Whole(event)
            }
            Given::Object(mut value, written) => {
                if let Some(of) = value.get_mut("home").filter(|of| of.is_string()) {
                    *of = Value::String(home.to_string());
                }
                let written = written.map(|_| Cow::Owned(value.to_string()));
                Given::Object(value, written)
            }
        };
        Self { given, ..self }
    }

    pub fn glance(&self) -> Glance {
        match &self.given {
            Given::Whole(event) => {
                let card = event.body.kind().name().ends_with("_card");
                let body = if card { serde_json::to_value(&event.body).ok() } else { None };
                Glance { home: Some(event.home), card: body }
            }
            Given::Object(value, _) => {
                let home = value.get("home").and_then(Value::as_str).and_then(|h| h.parse().ok());
                let body = value.get("body");
                let kind = body.and_then(|b| b.get("kind")).and_then(Value::as_str);
                let card = kind.is_some_and(|k| k.ends_with("_card"));
                Glance { home, card: body.filter(|_| card).cloned() }
            }
        }
    }
}

pub(super) fn problem(line: u64, field: &str, found: &str, wanted: impl Into<Wanted>) -> RowProblem {
    let mut short: String = found.chars().take(80).collect();
    if short.len() < found.len() {
        short.push('…');
    }
    RowProblem { line, field: field.to_owned(), found: short, wanted: Box::new(wanted.into()) }
}

/// The text of a file, or why it is none.
pub(super) fn text(bytes: &[u8]) -> Result<&str, RowProblem> {
    if bytes.len() > MOST_FILE_BYTES {
        let wanted = Wanted::SmallerFile { most: MOST_FILE_BYTES };
        return Err(problem(0, "file", &bytes.len().to_string(), wanted));
    }
    let head = bytes.get(..bytes.len().min(512)).unwrap_or_default();
    if bytes.starts_with(&[0xff, 0xfe]) || bytes.starts_with(&[0xfe, 0xff]) || head.contains(&0) {
        return Err(problem(1, "file", "", Wanted::Utf8));
    }
    let bytes = bytes.strip_prefix(&[0xef, 0xbb, 0xbf]).unwrap_or(bytes);
    let text = std::str::from_utf8(bytes).map_err(|e| {
        let before = bytes.get(..e.valid_up_to()).unwrap_or_default();
        let line = 1 + before.iter().filter(|b| **b == b'\n').count() as u64;
        let byte = bytes.get(e.valid_up_to()).copied().unwrap_or_default();
        problem(line, "file", &format!("0x{byte:02x}"), Wanted::Utf8)
    })?;
    for (i, line) in text.split('\n').enumerate() {
        if line.len() > MOST_LINE_BYTES {
            let wanted = Wanted::ShorterLine { most: MOST_LINE_BYTES };
            return Err(problem(i as u64 + 1, "line", &line.len().to_string(), wanted));
        }
    }
    Ok(text)
}

/// A row, or what is wrong with it.
pub(super) type Row<'a> = Result<Raw<'a>, Vec<RowProblem>>;

/// Calls `each` for every row; an error is about the file as a whole.
pub(super) fn read<'a>(text: &'a str, format: Format, each: &mut dyn FnMut(Row<'a>)) -> Result<(), RowProblem> {
    match format {
        Format::JsonLines => {
            json_lines(text, each);
            Ok(())
        }
        Format::Csv => csv(text, each),
    }
}

fn json_lines<'a>(text: &'a str, each: &mut dyn FnMut(Row<'a>)) {
    for (i, json) in text.lines().enumerate().filter(|(_, json)| !json.trim().is_empty()) {
        each(whole(i as u64 + 1, "line", Cow::Borrowed(json)));
    }
}

/// A whole event as JSON.
fn whole<'a>(line: u64, field: &str, json: Cow<'a, str>) -> Row<'a> {
    if let Ok(event) = serde_json::from_str::<Event>(&json)
        && serde_json::to_string(&event).is_ok_and(|again| again == json)
    {
        return Ok(Raw { line, given: Given::Whole(Box::new(event)) });
    }
    match serde_json::from_str::<Value>(&json) {
        Ok(mut value) if value.is_object() => {
            earlier::event(&mut value);
            Ok(Raw { line, given: Given::Object(value, Some(json)) })
        }
        Ok(_) => Err(vec![problem(line, field, &json, Wanted::Event)]),
        Err(e) => Err(vec![problem(line, field, &json, Wanted::Json { column: e.column() })]),
    }
}

/// What a column is for.
#[derive(Debug)]
enum Column {
    Envelope(&'static str),
    /// A whole event as JSON.
    Whole,
    /// A field of the body; only for rows of a kind where it has that kind's name before it.
    Body {
        path: String,
        only: Option<String>,
    },
}

fn csv<'a>(text: &'a str, each: &mut dyn FnMut(Row<'a>)) -> Result<(), RowProblem> {
    let mut columns: Option<Vec<(String, Column)>> = None;
    records(text, &mut |record, line| {
        match &columns {
            None => columns = Some(header(record, line)?),
            Some(columns) => match filled(record, columns.len(), line) {
                Ok(true) => each(row(columns, record, line)),
                Ok(false) => {}
                Err(problems) => each(Err(problems)),
            },
        }
        Ok(())
    })?;
    match columns {
        Some(_) => Ok(()),
        None => Err(problem(1, "file", "", Wanted::Header)),
    }
}

/// Whether a line of a table has something in it; else what is wrong, where it is not as wide as its header.
pub(super) fn filled(record: &csv::StringRecord, columns: usize, line: u64) -> Result<bool, Vec<RowProblem>> {
    if record.iter().all(|cell| cell.trim().is_empty()) {
        return Ok(false);
    }
    if record.len() != columns {
        return Err(vec![problem(line, "row", &record.len().to_string(), Wanted::Cells(columns))]);
    }
    Ok(true)
}

/// Calls `each` for every line of a table, its header among them, with the number of the line.
pub(super) fn records(
    text: &str,
    each: &mut dyn FnMut(&csv::StringRecord, u64) -> Result<(), RowProblem>,
) -> Result<(), RowProblem> {
    // A quotation mark that is never closed would swallow the rest of the file in one cell.
    if text.bytes().filter(|b| *b == b'"').count() % 2 == 1 {
        return Err(problem(0, "file", "", Wanted::ClosedQuotes));
    }
    let head = text.lines().next().unwrap_or_default();
    let delimiter = [b',', b';', b'\t'].into_iter().max_by_key(|d| head.bytes().filter(|b| b == d).count());
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter.unwrap_or(b','))
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut record = csv::StringRecord::new();
    while reader.read_record(&mut record).map_err(|_| problem(0, "file", "", Wanted::Table))? {
        each(&record, record.position().map_or(0, csv::Position::line))?;
    }
    Ok(())
}

/// The names of a table's columns as they stand in its first line; none where it cannot be read.
pub(super) fn header_of(text: &str) -> Vec<String> {
    let mut names = Vec::new();
    let head = text.lines().next().unwrap_or_default();
    let read = records(head, &mut |record, _| {
        names = record.iter().map(|name| name.trim().to_owned()).collect();
        Ok(())
    });
    read.map(|()| names).unwrap_or_default()
}

fn header(record: &csv::StringRecord, line: u64) -> Result<Vec<(String, Column)>, RowProblem> {
    let mut columns: Vec<(String, Column)> = Vec::new();
    for name in record {
        let name = earlier::column(&name.trim().to_lowercase());
        if columns.iter().any(|(known, _)| *known == name) {
            return Err(problem(line, "column", &name, Wanted::ColumnOnce));
        }
        let known = || Wanted::Column(ENVELOPE.map(str::to_owned).to_vec());
        let column = named(&name).ok_or_else(|| problem(line, "column", &name, known()))?;
        columns.push((name, column));
    }
    for needed in ["kind", "happened_at"] {
        if !columns.iter().any(|(name, _)| name == needed) {
            return Err(problem(
                line,
                "column",
                &record.iter().collect::<Vec<_>>().join(","),
                Wanted::ThisColumn(needed.to_owned()),
            ));
        }
    }
    Ok(columns)
}

fn named(name: &str) -> Option<Column> {
    if let Some(envelope) = ENVELOPE.into_iter().find(|e| *e == name) {
        return Some(Column::Envelope(envelope));
    }
    if name == WHOLE {
        return Some(Column::Whole);
    }
    if let Some((kind, path)) = name.split_once('.')
        && ENVELOPE.contains(&path)
        && find(kind, None, path).is_some()
    {
        return Some(Column::Body { path: path.to_owned(), only: Some(kind.to_owned()) });
    }
    let kinds = || sheet().bodies.keys();
    let known =
        kinds().any(|k| find(k, None, name).is_some() || kinds().any(|inner| find(k, Some(inner), name).is_some()));
    known.then(|| Column::Body { path: name.to_owned(), only: None })
}

fn row<'a>(columns: &[(String, Column)], record: &csv::StringRecord, line: u64) -> Row<'a> {
    let cell = |wanted: &str| {
        columns.iter().zip(record).find(|((name, _), _)| name == wanted).map_or("", |(_, cell)| cell.trim())
    };
    let json = columns.iter().zip(record).find(|((_, c), _)| matches!(c, Column::Whole)).map(|(_, cell)| cell.trim());
    if let Some(json) = json.filter(|json| !json.is_empty()) {
        return whole(line, WHOLE, Cow::Owned(cells::unguard(json).to_owned()));
    }
    let kind = earlier::kind(cell("kind"));
    let inner = Some(earlier::kind(cell("body.kind"))).filter(|k| !k.is_empty());
    if !sheet().bodies.contains_key(kind) {
        return Err(vec![problem(line, "kind", kind, Wanted::OneOf(listed(sheet().bodies.keys())))]);
    }
    let (mut event, mut body, mut problems) = (Map::new(), Value::Object(Map::new()), Vec::new());
    put(&mut body, "kind", Value::String(kind.to_owned()));
    for ((name, column), cell) in columns.iter().zip(record) {
        let cell = cell.trim();
        match column {
            _ if cell.is_empty() => {}
            Column::Envelope("kind") | Column::Whole => {}
            Column::Envelope(field) => {
                event.insert((*field).to_owned(), Value::String(cells::unguard(cell).to_owned()));
            }
            Column::Body { path, only } => {
                let shape = if only.as_deref().is_none_or(|k| k == kind) { find(kind, inner, path) } else { None };
                match shape.map(|shape| cells::read(&shape, cell)) {
                    Some(Ok(value)) => put(&mut body, path, value),
                    Some(Err(wanted)) => problems.push(problem(line, name, cell, wanted)),
                    None => problems.push(problem(line, name, cell, Wanted::EmptyCell(kind.to_owned()))),
                }
            }
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    event.insert("body".to_owned(), body);
    let mut value = Value::Object(event);
    earlier::event(&mut value);
    Ok(Raw { line, given: Given::Object(value, None) })
}

/// Puts a value at a dotted path.
fn put(object: &mut Value, path: &str, value: Value) {
    let mut at = object;
    for name in path.split('.') {
        if !at.is_object() {
            *at = Value::Object(Map::new());
        }
        at = &mut at[name];
    }
    *at = value;
}

pub(super) fn listed<'a>(names: impl Iterator<Item = &'a String>) -> Vec<String> {
    names.cloned().collect()
}
