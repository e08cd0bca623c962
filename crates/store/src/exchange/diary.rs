//! A diary kept elsewhere: a table whose columns are not ours, but can be meant in one way only. How it is read is part of
//! the preview, for a person to see before anything is kept.

use super::names::Names;
use super::rows::{Given, Raw, Row, filled, header_of, problem, records};
use super::wanted::Wanted;
use csv::StringRecord;
use sayso_model::HomeId;
use serde_json::{Map, Value, json};

/// What a column of a diary is for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum DiaryPart {
    /// The day, with or without a time.
    Day,
    /// The time of day, or day and time.
    Time,
    /// The word that the animal pressed.
    Word,
    /// The animal; of a remark also a person.
    Who,
    /// A remark.
    Note,
}

impl DiaryPart {
    /// Its name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Day => "day",
            Self::Time => "time",
            Self::Word => "word",
            Self::Who => "who",
            Self::Note => "note",
        }
    }
}

/// Names of columns in English, Spanish, German, French and Portuguese, in small letters.
const NAMES: [(DiaryPart, &[&str]); 5] = [
    (DiaryPart::Day, &["date", "day", "fecha", "día", "datum", "tag", "jour", "data", "dia"]),
    (DiaryPart::Time, &["time", "happened_at", "hora", "uhrzeit", "zeit", "heure", "horário"]),
    (DiaryPart::Word, &["word", "palabra", "wort", "mot", "palavra"]),
    (DiaryPart::Who, &["who", "animal", "quién", "wer", "tier", "qui", "quem"]),
    (DiaryPart::Note, &["note", "text", "nota", "texto", "notiz", "texte"]),
];

/// Where a day has no time.
const NOON: &str = "12:00";

/// How a diary is read: its columns as they are called, and what each is for.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Diary {
    columns: Vec<(String, DiaryPart)>,
}

impl Diary {
    /// A text as a diary, where every column can be meant in one way only and there are all that are needed: when, and a word
    /// or a remark.
    pub(super) fn of(text: &str) -> Option<Self> {
        let mut columns: Vec<(String, DiaryPart)> = Vec::new();
        for name in header_of(text) {
            let low = name.to_lowercase();
            let (part, _) = NAMES.into_iter().find(|(_, names)| names.contains(&low.as_str()))?;
            if columns.iter().any(|(_, known)| *known == part) {
                return None;
            }
            columns.push((name, part));
        }
        let one_of = |parts: [DiaryPart; 2]| columns.iter().any(|(_, part)| parts.contains(part));
        let enough = one_of([DiaryPart::Day, DiaryPart::Time]) && one_of([DiaryPart::Word, DiaryPart::Note]);
        enough.then_some(Self { columns })
    }

    /// Its columns as they are called, and what each is for.
    #[must_use]
    pub fn columns(&self) -> &[(String, DiaryPart)] {
        &self.columns
    }

    /// Calls `each` for every event: a line with a word and a remark holds two.
    pub(super) fn read<'a>(&self, text: &str, each: &mut dyn FnMut(Row<'a>)) -> Result<(), super::RowProblem> {
        let mut head = true;
        records(text, &mut |record, line| {
            if !std::mem::take(&mut head) {
                self.line(record, line, each);
            }
            Ok(())
        })
    }

    fn line<'a>(&self, record: &StringRecord, line: u64, each: &mut dyn FnMut(Row<'a>)) {
        match filled(record, self.columns.len(), line) {
            Ok(true) => {}
            Ok(false) => return,
            Err(problems) => return each(Err(problems)),
        }
        let cell = |of: DiaryPart| {
            self.columns.iter().zip(record).find(|((_, part), _)| *part == of).map_or("", |(_, cell)| cell.trim())
        };
        let (word, note) = (cell(DiaryPart::Word), cell(DiaryPart::Note));
        let press = (!word.is_empty()).then(|| json!({ "kind": "press", "word": word, "by": "animal" }));
        let remark = (!note.is_empty()).then(|| json!({ "kind": "remark", "text": note }));
        if press.is_none() && remark.is_none() {
            let field = self.called(if self.has(DiaryPart::Word) { DiaryPart::Word } else { DiaryPart::Note });
            return each(Err(vec![problem(line, &field, "", Wanted::Needed)]));
        }
        let when = moment(cell(DiaryPart::Day), cell(DiaryPart::Time));
        for body in [press, remark].into_iter().flatten() {
            let mut event = Map::new();
            let mut put = |field: &str, text: &str| {
                if !text.is_empty() {
                    event.insert(field.to_owned(), Value::String(text.to_owned()));
                }
            };
            put("happened_at", &when);
            put("who", cell(DiaryPart::Who));
            event.insert("body".to_owned(), body);
            each(Ok(Raw { line, given: Given::Object(Value::Object(event), None) }));
        }
    }

    /// Puts for “who” whom it names: an animal, or of a remark a person; where the diary names nobody, the one animal there is.
    pub(super) fn settled<'a>(&self, mut raw: Raw<'a>, names: &Names, home: Option<HomeId>) -> Row<'a> {
        let (Given::Object(Value::Object(event), _), Some(home)) = (&mut raw.given, home) else { return Ok(raw) };
        let remark = event.get("body").and_then(|b| b.get("kind")).is_some_and(|k| k == "remark");
        let (field, whom) = match event.remove("who") {
            None => match names.only(home, "AnimalId") {
                Some(animal) => ("animal", animal.to_string()),
                None => return Ok(raw),
            },
            Some(who) => {
                let who = who.as_str().unwrap_or_default().to_owned();
                match names.find(home, "AnimalId", &who) {
                    Ok(animal) => ("animal", animal.to_string()),
                    Err(wanted) => match names.find(home, "PersonId", &who) {
                        Ok(person) if remark => ("person", person.to_string()),
                        _ => return Err(vec![problem(raw.line, &self.called(DiaryPart::Who), &who, wanted)]),
                    },
                }
            }
        };
        event.insert(field.to_owned(), Value::String(whom));
        Ok(raw)
    }

    /// The column that a field of ours stands in, as the diary calls it; the field itself where it stands in none.
    pub(super) fn column_of(&self, field: &str) -> String {
        match field {
            "happened_at" if self.has(DiaryPart::Day) => self.called(DiaryPart::Day),
            "happened_at" => self.called(DiaryPart::Time),
            "word" => self.called(DiaryPart::Word),
            "text" => self.called(DiaryPart::Note),
            "animal" | "person" if self.has(DiaryPart::Who) => self.called(DiaryPart::Who),
            other => other.to_owned(),
        }
    }

    fn has(&self, of: DiaryPart) -> bool {
        self.columns.iter().any(|(_, part)| *part == of)
    }

    fn called(&self, of: DiaryPart) -> String {
        self.columns.iter().find(|(_, part)| *part == of).map_or(of.name(), |(name, _)| name).to_owned()
    }
}

/// Day and time as one text: a day alone is put at noon, an hour of one digit gets its zero.
fn moment(day: &str, time: &str) -> String {
    let both = [day, time].into_iter().filter(|s| !s.is_empty()).collect::<Vec<_>>().join(" ");
    match both.split_once(' ') {
        None if is_day(&both) => format!("{both} {NOON}"),
        Some((day, time)) if is_day(day) && time.trim_start().find(':') == Some(1) => {
            format!("{day} 0{}", time.trim_start())
        }
        _ => both,
    }
}

fn is_day(text: &str) -> bool {
    text.len() == 10
        && text.bytes().enumerate().all(|(i, b)| if i == 4 || i == 7 { b == b'-' } else { b.is_ascii_digit() })
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_diary_is_known_by_its_columns_and_only_where_each_has_one_meaning() {
        for head in
            ["date,word,who", "Datum;Uhrzeit;Wort;Wer;Notiz", "hora\tpalabra", "jour,texte", "data,palavra,quem"]
        {
            let columns = Diary::of(&format!("{head}\n1,2,3\n")).map(|diary| diary.columns().len());
            assert_eq!(columns, Some(head.split([',', ';', '\t']).count()), "{head}");
        }
        for head in
            ["", "word,who", "date,who", "date,day,word", "date,word,mood", "kind,happened_at,word", "date,word,"]
        {
            assert_eq!(Diary::of(&format!("{head}\n1,2,3\n")), None, "{head}");
        }
    }

    #[test]
    fn days_without_a_time_are_put_at_noon_and_what_is_no_day_is_left_to_be_told() {
        assert_eq!(moment("2026-03-01", ""), "2026-03-01 12:00");
        assert_eq!(moment("2026-03-01", "18:30"), "2026-03-01 18:30");
        assert_eq!(moment("", "2026-03-01 8:05"), "2026-03-01 08:05");
        assert_eq!(moment("01/03/2026", ""), "01/03/2026");
        assert_eq!(moment("", "18:30"), "18:30");
        assert_eq!(moment("", ""), "");
    }
}
