//! What a home gives for the norms: one row per learner and word. JSON lines, form 4; form 3 has no weeks, form 2
//! no stages either, form 1 no hours.

use crate::hours::DayPart;
use crate::kinds::{AgeBand, WordKind};
use crate::stage::{StageWait, TimedStage};
use crate::week::{Often, WeekPresses};
use sayso_model::Species;
use serde::{Deserialize, Serialize};

/// What a household is called in the rows: an opaque text of whoever gathers them. Letters, digits, `-` and `_`, up to 64.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct StudyName(String);

/// A text that is no study name.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("a household's study name has 1 to 64 letters a to z, digits, - or _")]
pub struct NoStudyName;

impl StudyName {
    /// A name.
    ///
    /// # Errors
    /// [`NoStudyName`].
    pub fn new(name: &str) -> Result<Self, NoStudyName> {
        let plain = name.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_');
        if plain && (1..=64).contains(&name.len()) { Ok(Self(name.to_owned())) } else { Err(NoStudyName) }
    }

    /// Its text.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl std::str::FromStr for StudyName {
    type Err = NoStudyName;
    fn from_str(name: &str) -> Result<Self, NoStudyName> {
        Self::new(name)
    }
}

impl TryFrom<String> for StudyName {
    type Error = NoStudyName;
    fn try_from(name: String) -> Result<Self, NoStudyName> {
        Self::new(&name)
    }
}

impl From<StudyName> for String {
    fn from(name: StudyName) -> Self {
        name.0
    }
}

/// One learner and one word that was shown to it. Holds no name, note, date, place or free word.
///
/// A press is the learner's own: of its own accord, or of the invited word at an invitation; one that looked like a stumble is
/// none. It says that a button was pressed, nothing of why.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SummaryRow {
    /// The form of this row: [`SummaryRow::FORM`], or an earlier one of a home that agreed to less.
    pub form: u32,
    /// The household.
    pub household: StudyName,
    /// Which learner of the household, from 0.
    pub learner: u8,
    /// The place in the order of this learner's words, by first showing, from 1.
    pub word: u16,
    /// The learner's species.
    pub species: Species,
    /// Its age on the day of its first showing of any word.
    pub age_band: AgeBand,
    /// What the word brings.
    pub word_kind: WordKind,
    /// Showings before the first press, or so far where there was none.
    pub exposures: u32,
    /// Whether it was pressed. If not, it was not yet: the wait is censored.
    pub pressed: bool,
    /// Whole days from the word's first showing to the first press, or to the end of the record where there was none. 0 where it was
    /// pressed before it was first shown.
    pub days: u32,
    /// Whole days from the word's first showing to the learner's last record.
    pub watched: u32,
    /// Invitations of this word.
    pub invited: u32,
    /// Those in which the learner took part: it was there and took the thing.
    pub joined: u32,
    /// In which hours of the day one press of this word lay that the learner made of its own accord, drawn by lot among all of them.
    /// None where there was none yet, and in form 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hours: Option<DayPart>,
    /// How long this word stood in one stage: which of the two is asked of a word is drawn by lot beforehand, whether or not it comes to it.
    /// None where it did not come to that stage, of a word that ends a session (it has no stages), and before form 3.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stage: Option<StageWait>,
    /// How often this word was pressed, of the learner's own accord, in one week since its first showing: which week is drawn by lot
    /// beforehand, whether or not it is watched. None where it was not watched so long or nothing else was noted in that week, of a word
    /// that ends a session, and before form 4.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub week: Option<WeekPresses>,
}

/// Why a row cannot be used.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub enum RowFault {
    /// Not JSON, or not of this form.
    #[error("line {line}, {field}: {why}")]
    Form {
        /// The line, from 1.
        line: usize,
        /// The field; `.` where it is the whole.
        field: String,
        /// Why.
        why: String,
    },
    /// A value that cannot be.
    #[error("line {line}, {field} is {found}: it must be {wanted}")]
    Value {
        /// The line, from 1.
        line: usize,
        /// The field.
        field: &'static str,
        /// What stands there.
        found: String,
        /// What would be right.
        wanted: String,
    },
}

impl SummaryRow {
    /// The form of what a home gives that agreed to all of it.
    pub const FORM: u32 = 4;
    /// The form without weeks.
    pub const WITHOUT_WEEK: u32 = 3;
    /// The form without stages, too.
    pub const WITHOUT_STAGE: u32 = 2;
    /// The form without hours, too.
    pub const WITHOUT_HOURS: u32 = 1;
    /// Most showings or invitations of one word: a hundred a day for years.
    pub const MOST_COUNTED: u32 = 100_000;
    /// Most days: longer than any of these animals lives.
    pub const MOST_DAYS: u32 = 36_525;
    /// Most words of a learner.
    pub const MOST_WORDS: u16 = 1_000;
    /// Longest line, in bytes.
    const MOST_BYTES: usize = 1_000;

    /// The same in an earlier form: without what that form does not have.
    #[must_use]
    pub fn in_form(self, form: u32) -> Self {
        let hours = self.hours.filter(|_| form > Self::WITHOUT_HOURS);
        let stage = self.stage.filter(|_| form > Self::WITHOUT_STAGE);
        let week = self.week.filter(|_| form > Self::WITHOUT_WEEK);
        Self { form, hours, stage, week, ..self }
    }

    /// Reads one row.
    ///
    /// # Errors
    /// [`RowFault`], with this line and the field.
    pub fn read(text: &str, line: usize) -> Result<Self, RowFault> {
        let form = |field: String, why: String| RowFault::Form { line, field, why };
        if text.len() > Self::MOST_BYTES {
            let why = format!("it has {} bytes; a row has {} at most", text.len(), Self::MOST_BYTES);
            return Err(form(".".to_owned(), why));
        }
        let mut reader = serde_json::Deserializer::from_str(text);
        let row: Self = serde_path_to_error::deserialize(&mut reader)
            .map_err(|e| form(e.path().to_string(), e.inner().to_string()))?;
        reader.end().map_err(|why| form(".".to_owned(), why.to_string()))?;
        row.check(line)?;
        Ok(row)
    }

    /// Checks everything that the types do not.
    ///
    /// # Errors
    /// [`RowFault::Value`], with this line.
    pub fn check(&self, line: usize) -> Result<(), RowFault> {
        let refused = |field: &'static str, found: &dyn std::fmt::Display, wanted: String| {
            Err(RowFault::Value { line, field, found: found.to_string(), wanted })
        };
        let within = |field: &'static str, found: u32, least: u32, most: u32| {
            let wanted = || if least == most { least.to_string() } else { format!("from {least} to {most}") };
            if (least..=most).contains(&found) { Ok(()) } else { refused(field, &found, wanted()) }
        };
        within("form", self.form, Self::WITHOUT_HOURS, Self::FORM)?;
        within("word", u32::from(self.word), 1, u32::from(Self::MOST_WORDS))?;
        // What was not pressed yet is here because it was shown.
        within("exposures", self.exposures, u32::from(!self.pressed), Self::MOST_COUNTED)?;
        within("watched", self.watched, 0, Self::MOST_DAYS)?;
        let least = if self.pressed { 0 } else { self.watched };
        within("days", self.days, least, self.watched)?;
        within("invited", self.invited, 0, Self::MOST_COUNTED)?;
        within("joined", self.joined, 0, self.invited)?;
        let left_out = |field: &'static str, found: &dyn std::fmt::Display, wanted: &str| {
            refused(field, found, format!("left out {wanted}"))
        };
        if let Some(part) = self.hours {
            if self.form <= Self::WITHOUT_HOURS {
                return left_out("hours", &part.number(), "in form 1");
            }
            if !self.pressed {
                return left_out("hours", &part.number(), "where nothing was pressed yet");
            }
        }
        if let Some(stay) = self.stage {
            if self.form <= Self::WITHOUT_STAGE {
                return left_out("stage", &stay.stage.name(), "before form 3");
            }
            if self.word_kind == WordKind::Closing {
                return left_out("stage", &stay.stage.name(), "of a word that ends a session");
            }
            // What is shown still has been since the first showing.
            let open = stay.stage == TimedStage::Show && !stay.moved_on;
            within("stage.days", stay.days, if open { self.watched } else { 0 }, self.watched)?;
        }
        if let Some(week) = self.week {
            if self.form <= Self::WITHOUT_WEEK {
                return left_out("week", &week.from.from(), "before form 4");
            }
            if self.word_kind == WordKind::Closing {
                return left_out("week", &week.from.from(), "of a word that ends a session");
            }
            if !self.pressed && week.pressed != Often::Not {
                return refused("week.pressed", &week.pressed.name(), "not, where it was not pressed yet".to_owned());
            }
            // The first of its weeks is over.
            if self.watched < 7 * u32::from(week.from.from()) {
                let wanted = format!("a week that is over within {} days", self.watched);
                return refused("week.from", &week.from.from(), wanted);
            }
        }
        Ok(())
    }
}

/// Reads rows, a line each; blank lines are passed over.
///
/// # Errors
/// [`RowFault`], of the first line that is wrong.
pub fn read_rows(text: &str) -> Result<Vec<SummaryRow>, RowFault> {
    let lines = text.lines().zip(1..).filter(|(line, _)| !line.trim().is_empty());
    lines.map(|(line, number)| SummaryRow::read(line, number)).collect()
}

/// Rows as lines.
///
/// # Errors
/// [`RowFault`], where a row is none that [`read_rows`] would take.
pub fn write_rows<'a>(rows: impl IntoIterator<Item = &'a SummaryRow>) -> Result<String, RowFault> {
    let mut text = String::new();
    for (row, line) in rows.into_iter().zip(1..) {
        row.check(line)?;
        let written = serde_json::to_string(row).map_err(|why| RowFault::Form {
            line,
            field: ".".to_owned(),
            why: why.to_string(),
        })?;
        text.push_str(&written);
        text.push('\n');
    }
    Ok(text)
}
