//! A release: figures of many households, with the rule by which they were made. JSON, form 4; a file's name ends in
//! `.sayso-norms`.

use crate::cell::Cell;
use crate::fault::{At, ReleaseFault};
use sayso_model::Day;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// What kind of people these are.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum People {
    /// Households that chose to keep records and to give them: not a sample of all animals.
    SelfChosen,
    /// Nobody: simulated households, for trying things out.
    Invented,
}

/// The rule by which cells were published.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rule {
    /// Fewest households of a cell where noise is added.
    pub least_with_noise: u32,
    /// Fewest households of a cell where none is: inside a club that agreed to it.
    pub least_without_noise: u32,
    /// Most words of learners that one household contributes to a cell.
    pub words_per_household: u32,
}

/// The noise that was added to what was counted.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Noise {
    /// The privacy loss of the whole release, as differential privacy counts it.
    pub epsilon: f64,
}

/// How it was made.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct MadeBy {
    /// The command, as it was given.
    pub command: String,
    /// Program and version.
    pub program: String,
    /// SHA-256 of the program's file, in 64 hexadecimal digits. Never of the rows: whoever knew all rows but one could then
    /// try out the last.
    pub program_sha256: String,
}

/// A release.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Release {
    /// The form of this text: [`Release::FORM`], or an earlier one, which answers fewer questions.
    pub form: u32,
    /// What it is called.
    pub name: String,
    /// The day it was made.
    pub made: Day,
    /// Who they are of whom it tells.
    pub people: People,
    /// The club whose households these are, where it is one club's.
    pub club: Option<String>,
    /// The rule.
    pub rule: Rule,
    /// The noise, or `null` where none was added.
    pub noise: Option<Noise>,
    /// The level of every interval, such as 0.95.
    pub level: f64,
    /// How it was made.
    pub made_by: MadeBy,
    /// Its cells: each question of each group once.
    pub cells: Vec<Cell>,
}

impl Release {
    /// The form that is written. Earlier ones are read, too.
    pub const FORM: u32 = 4;
    /// How a file's name ends.
    pub const ENDING: &'static str = "sayso-norms";
    /// No rule may publish smaller cells with noise.
    pub const LEAST_WITH_NOISE: u32 = 100;
    /// No rule may publish smaller cells without.
    pub const LEAST_WITHOUT_NOISE: u32 = 20;
    /// Most bytes of its text.
    pub const MOST_BYTES: usize = 4 << 20;
    /// Most cells: every question of every group of every species, and room.
    pub const MOST_CELLS: usize = 2_000;

    /// Reads a release and checks everything in it.
    ///
    /// # Errors
    /// [`ReleaseFault`], which names the first field that is wrong.
    pub fn read(text: &str) -> Result<Self, ReleaseFault> {
        if text.len() > Self::MOST_BYTES {
            return Err(ReleaseFault::Large { bytes: text.len(), most: Self::MOST_BYTES });
        }
        let mut reader = serde_json::Deserializer::from_str(text);
        let read: Self = serde_path_to_error::deserialize(&mut reader)
            .map_err(|e| ReleaseFault::Form { field: e.path().to_string(), why: e.inner().to_string() })?;
        reader.end().map_err(|why| ReleaseFault::Form { field: ".".to_owned(), why: why.to_string() })?;
        read.check()?;
        Ok(read)
    }

    /// The text of this release, ending in a line break.
    ///
    /// # Errors
    /// Where it is none that [`Self::read`] would take.
    pub fn write(&self) -> Result<String, ReleaseFault> {
        self.check()?;
        let mut text = serde_json::to_string_pretty(self)
            .map_err(|why| ReleaseFault::Form { field: ".".to_owned(), why: why.to_string() })?;
        text.push('\n');
        if text.len() > Self::MOST_BYTES {
            return Err(ReleaseFault::Large { bytes: text.len(), most: Self::MOST_BYTES });
        }
        Ok(text)
    }

    /// Fewest households that a cell of this release may have.
    #[must_use]
    pub const fn least(&self) -> u32 {
        if self.noise.is_some() { self.rule.least_with_noise } else { self.rule.least_without_noise }
    }

    /// Checks everything that the types do not.
    ///
    /// # Errors
    /// [`ReleaseFault::Value`].
    pub fn check(&self) -> Result<(), ReleaseFault> {
        At::top("form").must((1..=Self::FORM).contains(&self.form), self.form, format!("from 1 to {}", Self::FORM))?;
        At::top("name").line(&self.name, 80)?;
        if let Some(club) = &self.club {
            At::top("club").line(club, 80)?;
        }
        let (rule, least) = (At::top("rule"), self.rule);
        for (name, found, wanted) in [
            ("least_with_noise", least.least_with_noise, Self::LEAST_WITH_NOISE),
            ("least_without_noise", least.least_without_noise, Self::LEAST_WITHOUT_NOISE),
            ("words_per_household", least.words_per_household, 1),
        ] {
            rule.field(name).must(found >= wanted, found, format!("{wanted} or more"))?;
        }
        match self.noise {
            Some(noise) => {
                let good = noise.epsilon > 0.0 && noise.epsilon <= 20.0;
                At::top("noise").field("epsilon").must(good, noise.epsilon, "above 0 and no more than 20")?;
            }
            None => {
                let inside = self.club.is_some() || self.people == People::Invented;
                At::top("noise").must(inside, "null", "given, unless it is a club's or invented")?;
            }
        }
        At::top("level").must((0.5..1.0).contains(&self.level), self.level, "from 0.5 to below 1")?;
        let made_by = At::top("made_by");
        made_by.field("command").line(&self.made_by.command, 2_000)?;
        made_by.field("program").line(&self.made_by.program, 80)?;
        let hash = &self.made_by.program_sha256;
        let hexadecimal = hash.len() == 64 && hash.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'));
        made_by.field("program_sha256").must(hexadecimal, format!("{hash:?}"), "64 hexadecimal digits")?;
        self.check_cells()
    }

    fn check_cells(&self) -> Result<(), ReleaseFault> {
        let (cells, many) = (At::top("cells"), self.cells.len());
        cells.must(many <= Self::MOST_CELLS, format!("{many} cells long"), format!("{} at most", Self::MOST_CELLS))?;
        let mut seen = BTreeSet::new();
        for (number, cell) in self.cells.iter().enumerate() {
            let at = cells.item(number);
            cell.check(&at, self.least())?;
            let since = cell.question.since_form();
            let wanted = format_args!("a question of form {}, or the form {since}", self.form);
            at.field("question").must(self.form >= since, cell.question.name(), wanted)?;
            let group = (cell.question, cell.species, cell.age_band, cell.word_kind);
            let name = format!("{} of the same group again", cell.question.name());
            at.must(seen.insert(group), name, "a question of a group that has not been answered above")?;
        }
        Ok(())
    }
}
