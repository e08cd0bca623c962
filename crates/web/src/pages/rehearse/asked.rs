//! What an address of a rehearsal asks for.

use crate::error::Error;
use crate::page::Page;
use sayso_advisor::stuck::Cause;
use sayso_rehearse::NAMEABLE;
use sayso_sim::rehearsal::{Act, ActsError, Character, Exercise, Run, Setup, play, read, written};
use sayso_wording::words;
use serde::Deserialize;

/// The list of exercises.
pub const REHEARSE: &str = "/rehearse";

/// What stands behind the question mark.
#[derive(Debug, Default, Deserialize)]
pub struct Fields {
    #[serde(default)]
    seed: String,
    #[serde(default)]
    character: String,
    #[serde(default)]
    acts: String,
    #[serde(default)]
    named: String,
}

/// The same as a handler takes it.
pub type Query = axum::extract::Query<Fields>;

impl Fields {
    /// The seed, where one is named.
    ///
    /// # Errors
    /// [`Error::Refused`] where it is no whole number.
    pub fn seed(&self) -> Result<Option<u64>, Error> {
        if self.seed.is_empty() {
            return Ok(None);
        }
        // Small enough to be told apart by a person, and exact in every script.
        let seed = self.seed.parse::<u32>().map_err(|_| not_read("seed", &self.seed))?;
        Ok(Some(u64::from(seed)))
    }

    /// The character; where none is named, the first.
    ///
    /// # Errors
    /// [`Error::Refused`] where there is none of that name.
    pub fn character(&self) -> Result<Character, Error> {
        if self.character.is_empty() {
            return Ok(Character::Eager);
        }
        Character::named(&self.character).ok_or_else(|| not_read("character", &self.character))
    }
}

impl Fields {
    /// What was named as holding a word up; none before anything was.
    ///
    /// # Errors
    /// [`Error::Refused`] where it is none of what can be named.
    pub fn named(&self) -> Result<Option<Cause>, Error> {
        if self.named.is_empty() {
            return Ok(None);
        }
        let cause = NAMEABLE.into_iter().find(|cause| cause_name(*cause) == self.named);
        cause.map(Some).ok_or_else(|| not_read("named", &self.named))
    }
}

/// How a cause is written in an address and chosen by in messages.
pub const fn cause_name(cause: Cause) -> &'static str {
    match cause {
        Cause::HardToMakeOut => "hard-to-make-out",
        Cause::NotWanted => "not-wanted",
        Cause::TooLittle => "too-little",
        Cause::TooLate => "too-late",
        Cause::Avoided => "avoided",
        Cause::TimeOrPlace => "time-or-place",
        Cause::Health => "health",
        Cause::SoundsAlike => "sounds-alike",
        Cause::PeopleDiffer => "people-differ",
    }
}

fn not_read(field: &str, text: &str) -> Error {
    Error::refused(field, words!(faults::not_read, text = text.chars().take(40).collect::<String>()))
}

/// The exercise of a name.
///
/// # Errors
/// [`Error::NotFound`].
pub fn exercise(name: &str) -> Result<Exercise, Error> {
    Exercise::named(name).ok_or_else(|| Error::NotFound(words!(rehearse::no_such)))
}

/// A rehearsal with all that was done in it.
pub struct Asked {
    /// What, with whom, from which seed.
    pub setup: Setup,
    /// What was done.
    pub acts: Vec<Act>,
}

impl Asked {
    /// Reads an address.
    ///
    /// # Errors
    /// [`Error::NotFound`], [`Error::Refused`].
    pub fn read(name: &str, query: &Fields) -> Result<Self, Error> {
        let exercise = exercise(name)?;
        let seed = query.seed()?.ok_or_else(|| not_read("seed", ""))?;
        let setup = Setup { seed, character: query.character()?, exercise };
        let acts = read(&query.acts, exercise.most_ms()).map_err(|why| {
            let item = match why {
                ActsError::NoAct { item } | ActsError::OutOfTime { item, .. } => item,
                other => other.to_string(),
            };
            Error::refused("acts", words!(rehearse::no_acts, item = item))
        })?;
        Ok(Self { setup, acts })
    }

    /// Plays it.
    pub fn run(&self) -> Run {
        play(self.setup, &self.acts)
    }
}

/// What an address says of a rehearsal.
fn said(setup: Setup, acts: &[Act]) -> Vec<(&'static str, String)> {
    let mut said = vec![("character", setup.character.name().to_owned()), ("seed", setup.seed.to_string())];
    if !acts.is_empty() {
        said.push(("acts", written(acts)));
    }
    said
}

/// The address of an exercise, or of a page below it, with all that was done.
pub fn address(page: &Page, setup: Setup, below: &str, acts: &[Act]) -> String {
    page.of_home_with(&format!("{}{below}", path(setup.exercise)), &said(setup, acts))
}

/// The same for somebody else: it names no home, so that whoever opens it stays at their own.
pub fn elsewhere(setup: Setup, below: &str, acts: &[Act]) -> String {
    let said: Vec<String> = said(setup, acts).into_iter().map(|(name, value)| format!("{name}={value}")).collect();
    format!("{}{below}?{}", path(setup.exercise), said.join("&"))
}

/// The address of an exercise without a seed: with another animal of that character.
pub fn another(page: &Page, setup: Setup) -> String {
    page.of_home_with(&path(setup.exercise), &[("character", setup.character.name().to_owned())])
}

/// The address of an exercise without a seed, for a link from elsewhere.
pub fn link(page: &Page, exercise: Exercise) -> String {
    page.of_home(&path(exercise))
}

fn path(exercise: Exercise) -> String {
    format!("{REHEARSE}/{}", exercise.name())
}
