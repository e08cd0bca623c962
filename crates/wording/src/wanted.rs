//! What should stand at a place of a file or an event, and what is wrong there.

use crate::locale::Locale;
use crate::message::{Message, Worded, Words};
use crate::{say, words};
use sayso_store::{Diary, FaultKind, NotRead, RowProblem, Wanted};

impl Worded for Wanted {
    fn words(&self, l: &Locale) -> Words {
        let listed = |names: &[String]| names.join(", ");
        match self {
            Self::Text => words!(wanted::text),
            Self::Number => words!(wanted::number),
            Self::Point => words!(wanted::point),
            Self::Whole { low, high } => words!(wanted::whole, low = low.to_string(), high = high.to_string()),
            Self::Flag => words!(wanted::flag),
            Self::List => words!(wanted::list),
            Self::JsonList => words!(wanted::json_list),
            Self::Object(names) => words!(wanted::object, names = listed(names)),
            Self::Tagged { tag, names } => words!(wanted::tagged, tag = tag.clone(), names = listed(names)),
            Self::ObjectNotList => words!(wanted::object_not_list),
            Self::OneOf(names) => words!(wanted::one_of, names = listed(names)),
            Self::Needed => words!(wanted::needed),
            Self::NeededOneOf(names) => words!(wanted::needed_one_of, names = listed(names)),
            Self::NoSuchField(names) => words!(wanted::no_such_field, names = listed(names)),
            Self::EmptyCell(kind) => words!(wanted::empty_cell, kind = kind.clone()),
            Self::Parts(part) => words!(wanted::parts, part = part.clone()),
            Self::BodyColumns => words!(wanted::body_columns),
            Self::Fitting => words!(wanted::fitting),
            Self::Id => words!(wanted::id),
            Self::HomeId => words!(wanted::home_id),
            Self::FirstHomeId => words!(wanted::first_home_id),
            Self::NoNameYet => words!(wanted::no_name_yet),
            Self::Name { known, more: 0 } => words!(wanted::known_name, names = listed(known)),
            Self::Name { known, more } => words!(wanted::known_name_of_many, names = listed(known), more = *more),
            Self::OneOfIds { count, ids } => words!(wanted::one_of_ids, count = *count, ids = listed(ids)),
            Self::Time => words!(wanted::time),
            Self::Offset(local) => words!(wanted::offset, local = local.clone()),
            Self::Twice { first, second, zone } => {
                words!(wanted::twice, first = first.clone(), second = second.clone(), zone = zone.clone())
            }
            Self::Skipped { first, second, zone } => {
                words!(wanted::skipped, first = first.clone(), second = second.clone(), zone = zone.clone())
            }
            Self::Event => words!(wanted::event),
            Self::Json { column } => words!(wanted::json, column = column.to_string()),
            Self::OwnId => words!(wanted::own_id),
            Self::ByHand => words!(wanted::by_hand),
            Self::SmallerFile { most } => words!(wanted::smaller_file, most = most.to_string()),
            Self::ShorterLine { most } => words!(wanted::shorter_line, most = most.to_string()),
            Self::Utf8 => words!(wanted::utf8),
            Self::ClosedQuotes => words!(wanted::closed_quotes),
            Self::Table => words!(wanted::table),
            Self::Cells(count) => words!(wanted::cells, count = *count),
            Self::Header => words!(wanted::header),
            Self::ColumnOnce => words!(wanted::column_once),
            Self::Column(names) => words!(wanted::column, names = listed(names)),
            Self::ThisColumn(name) => words!(wanted::this_column, name = name.clone()),
            Self::Other(fault) => fault.words(l),
            // One of a later version of the store, in English.
            other => other.to_string().into(),
        }
    }
}

/// The place of a fault: a field or column as it is written, or what the whole of it is about.
fn place(l: &Locale, field: &str) -> String {
    match field {
        "" | "file" | "line" | "row" | "column" => say!(l, wanted::place, place = field),
        field => field.to_owned(),
    }
}

/// What is wrong at a place, without its name: what was found there and what would be right.
#[must_use]
pub fn wrong(l: &Locale, problem: &RowProblem) -> String {
    match &*problem.wanted {
        Wanted::Other(fault) => fault.say(l),
        wanted if problem.found.is_empty() => say!(l, wanted::missing, wanted = wanted.say(l)),
        wanted => say!(l, wanted::found, found = &problem.found, wanted = wanted.say(l)),
    }
}

impl Message for RowProblem {
    fn say(&self, l: &Locale) -> String {
        say!(l, wanted::at, line = self.line, field = place(l, &self.field), what = wrong(l, self))
    }

    fn kind(&self) -> Option<&'static str> {
        self.wanted.kind()
    }
}

impl Message for NotRead {
    fn say(&self, l: &Locale) -> String {
        l.apart(&self.0.iter().map(|p| p.say(l)).collect::<Vec<_>>())
    }
}

/// The place of a kind of fault.
#[must_use]
pub fn place_of(l: &Locale, kind: &FaultKind) -> String {
    place(l, &kind.example.field)
}

/// How often a kind of fault stands in a file, and in which lines; what is wrong there, by an example.
#[must_use]
pub fn told(l: &Locale, kind: &FaultKind) -> String {
    let lines: Vec<String> = kind.lines.iter().map(u64::to_string).collect();
    let (count, lines) = (lines.len(), lines.join(", "));
    let at = match count {
        0 => String::new(),
        _ if kind.in_more_lines() => format!(" {}", say!(l, exchange::in_more_lines, lines = lines)),
        _ => format!(" {}", say!(l, exchange::in_lines, count = count, lines = lines)),
    };
    let times = say!(l, exchange::times, count = kind.count);
    let (found, wanted) = (&kind.example.found, &kind.example.wanted);
    if let Wanted::Other(fault) = &**wanted {
        return say!(l, exchange::fault_said, times = times, place = at, what = fault.say(l));
    }
    let wanted = wanted.say(l);
    match (found.is_empty(), kind.count > 1) {
        (true, _) => say!(l, exchange::fault, times = times, place = at, wanted = wanted),
        (false, false) => say!(l, exchange::fault_found, times = times, place = at, found = found, wanted = wanted),
        (false, true) => {
            say!(l, exchange::fault_found_one_of, times = times, place = at, found = found, wanted = wanted)
        }
    }
}

/// How a diary is read: a line a column, then what holds of each row.
#[must_use]
pub fn read_as(l: &Locale, diary: &Diary) -> Vec<String> {
    let columns = diary.columns().iter();
    let told = columns.map(|(column, part)| say!(l, exchange::diary_column, part = part.name(), column = column));
    told.chain([say!(l, exchange::diary_rules)]).collect()
}
