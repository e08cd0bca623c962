//! What releases have cost households so far: lines that are only ever added to. Pure: whoever keeps the file reads and appends.

use crate::loss::Loss;
use sayso_model::Day;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

/// Days within which releases add up.
const YEAR: i32 = 365;

/// A line: a release, entered before it was made.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// The form of the line.
    pub form: u32,
    /// The day.
    pub made: Day,
    /// What the release is called; each once.
    pub name: String,
    /// Its epsilon; none where no noise was added.
    #[serde(with = "loss")]
    pub epsilon: Option<Loss>,
    /// The club whose households it is of.
    pub club: Option<String>,
    /// SHA-256 of the line before, so that none can be taken out of the middle or altered unseen.
    pub before: String,
}

/// Why a ledger cannot be used, or a release must not be made.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum LedgerFault {
    /// Not a line of this form.
    #[error("line {line}: {why}")]
    Form {
        /// The line, from 1.
        line: usize,
        /// Why.
        why: String,
    },
    /// Lines are missing or were altered.
    #[error("line {line} does not follow from the line before: the file was altered; go on from a copy that was not")]
    Altered {
        /// The line, from 1.
        line: usize,
    },
    /// The last line is not whole.
    #[error("line {line} has no end: a release was stopped while it was entered; end the line, for it counts as made")]
    Cut {
        /// The line, from 1.
        line: usize,
    },
    /// Before the last.
    #[error("the release would be of {asked}, before the last one, of {last}")]
    Backwards {
        /// The day asked for.
        asked: Day,
        /// The last entry's.
        last: Day,
    },
    /// A name again.
    #[error("a release called \"{0}\" was entered already: asking again costs again, under a name of its own")]
    Again(String),
    /// It would go over what a year may cost.
    #[error(
        "epsilon = {asked} would go over the budget: of {yearly} a year, {spent} was spent since {since}; no release was made"
    )]
    Over {
        /// What was asked for.
        asked: Loss,
        /// What a year may cost.
        yearly: Loss,
        /// What the last year cost.
        spent: Loss,
        /// Since when.
        since: Day,
    },
    /// A club's second release without noise within a year.
    #[error(
        "\"{club}\" had a release without noise on {last}: another within a year would tell, by what differs, of those who came or went"
    )]
    Often {
        /// The club.
        club: String,
        /// When.
        last: Day,
    },
}

/// Everything that was released so far.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Ledger {
    entries: Vec<Entry>,
    last: Option<[u8; 32]>,
}

impl Ledger {
    const FORM: u32 = 1;

    /// Reads all lines.
    ///
    /// # Errors
    /// [`LedgerFault`], of the first line that is wrong.
    pub fn read(text: &str) -> Result<Self, LedgerFault> {
        let mut ledger = Self::default();
        for (line, number) in text.split_inclusive('\n').zip(1..) {
            let Some(line) = line.strip_suffix('\n') else { return Err(LedgerFault::Cut { line: number }) };
            let form = |why: String| LedgerFault::Form { line: number, why };
            let entry: Entry = serde_json::from_str(line).map_err(|why| form(why.to_string()))?;
            if entry.form != Self::FORM {
                return Err(form(format!("form is {}; it must be {}", entry.form, Self::FORM)));
            }
            if entry.before != ledger.before() || ledger.entries.last().is_some_and(|last| last.made > entry.made) {
                return Err(LedgerFault::Altered { line: number });
            }
            ledger.entries.push(entry);
            ledger.last = Some(Sha256::digest(line).into());
        }
        Ok(ledger)
    }

    /// Every entry, oldest first.
    #[must_use]
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The line to append before a release is made: whatever becomes of the release then, it counts as made.
    ///
    /// # Errors
    /// [`LedgerFault`], where it must not be made.
    pub fn enter(
        &self,
        made: Day,
        name: &str,
        epsilon: Option<Loss>,
        club: Option<&str>,
    ) -> Result<String, LedgerFault> {
        if let Some(last) = self.entries.last().map(|entry| entry.made).filter(|last| *last > made) {
            return Err(LedgerFault::Backwards { asked: made, last });
        }
        if self.entries.iter().any(|entry| entry.name == name) {
            return Err(LedgerFault::Again(name.to_owned()));
        }
        let lately = || self.entries.iter().filter(|entry| made.days_since(entry.made) < YEAR);
        match epsilon {
            Some(asked) => {
                let spent = lately().filter_map(|entry| entry.epsilon).fold(Loss::default(), Loss::and);
                if spent.and(asked) > Loss::YEARLY {
                    let since = made.plus(1 - YEAR);
                    return Err(LedgerFault::Over { asked, yearly: Loss::YEARLY, spent, since });
                }
            }
            None => {
                let mut plain = lately().filter(|entry| entry.epsilon.is_none() && entry.club.as_deref() == club);
                if let Some(last) = plain.next_back() {
                    let club = club.unwrap_or_default().to_owned();
                    return Err(LedgerFault::Often { club, last: last.made });
                }
            }
        }
        let entry = Entry {
            form: Self::FORM,
            made,
            name: name.to_owned(),
            epsilon,
            club: club.map(str::to_owned),
            before: self.before(),
        };
        let line = serde_json::to_string(&entry);
        line.map(|line| line + "\n")
            .map_err(|why| LedgerFault::Form { line: self.entries.len() + 1, why: why.to_string() })
    }

    fn before(&self) -> String {
        self.last.unwrap_or_default().iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// A loss as it is written, so that it is read back exactly.
mod loss {
    use super::Loss;
    use serde::{Deserialize, Deserializer, Serialize, Serializer, de};

    pub(super) fn serialize<S: Serializer>(loss: &Option<Loss>, to: S) -> Result<S::Ok, S::Error> {
        loss.map(|loss| loss.to_string()).serialize(to)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Loss>, D::Error> {
        let text = Option::<String>::deserialize(from)?;
        text.map(|text| text.parse().map_err(de::Error::custom)).transpose()
    }
}
