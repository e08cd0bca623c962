//! What is kept of one home: a line of each of its animals, and beside them what they are called.

use crate::desk::answers::{HomeAnswer, answers};
use sayso_advisor::Case;
use sayso_advisor::desk::{Line, Version};
use sayso_model::talks::{Passed, passed, talks};
use sayso_model::{AnimalId, Moment, Story, WordId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The form of the bytes: that of the lines in them, and ours around them.
pub const FORM: i32 = 100 * Version::NUMBER as i32 + 3;

/// The line of a week ago is worked out for so many days before, and again when it has become older than that.
const WEEK_AGO: f64 = 7.0;
const OLD: f64 = 8.0;
const DAY_S: f64 = 86_400.0;

/// One animal. Lines hold no names: those stand beside them, under the same consent.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KeptAnimal {
    /// What it is called.
    pub name: String,
    /// What its buttons say, also those no longer in use.
    pub words: BTreeMap<WordId, String>,
    /// As it is.
    pub line: Line,
    /// As it was a week before, for who has not spoken with the home since.
    pub week_ago: Line,
}

/// One home.
#[derive(Clone, PartialEq, Debug, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kept {
    /// What it is called; empty where nothing says so.
    pub home: String,
    /// Its active animals, by id.
    pub animals: BTreeMap<AnimalId, KeptAnimal>,
    /// By what the writing of one coach passed on to another.
    pub passed: Vec<Passed>,
    /// What it answered lately, the latest first.
    pub answers: Vec<HomeAnswer>,
}

impl Kept {
    /// All of a home at a moment. The week before is taken from what was kept earlier while it is not too old.
    #[must_use]
    pub fn of(story: &Story, now: Moment, earlier: Option<&Self>) -> Self {
        let active = story.animals().into_values().filter(|card| card.active);
        let one = |card: &sayso_model::AnimalCard| {
            let animal = card.animal;
            let known = earlier.and_then(|kept| kept.animals.get(&animal)).map(|kept| &kept.week_ago);
            let holds = |line: &&Line| line.at > now.plus_seconds(-OLD * DAY_S) && line.at < now;
            let week_ago = match known.filter(holds) {
                Some(line) => line.clone(),
                None => Line::of(&Case::new(story, animal, now.plus_seconds(-WEEK_AGO * DAY_S))),
            };
            let kept = KeptAnimal {
                name: card.name.to_string(),
                words: story.words().into_values().map(|word| (word.word, word.says.to_string())).collect(),
                line: Line::of(&Case::new(story, animal, now)),
                week_ago,
            };
            (animal, kept)
        };
        let all = talks(story, now);
        let worked_out = earlier.and_then(|kept| kept.animals.values().map(|animal| animal.line.at).max());
        let answered = answers(&all, now, earlier.map(|kept| kept.answers.as_slice()).zip(worked_out));
        let home = story.home().map(|card| card.name.to_string()).unwrap_or_default();
        Self { home, animals: active.map(one).collect(), passed: passed(&all), answers: answered }
    }

    /// As it is kept.
    ///
    /// # Errors
    /// Where it cannot be written, which would be a fault of ours.
    pub fn bytes(&self) -> Result<Vec<u8>, serde_json::Error> {
        serde_json::to_vec(self)
    }

    /// As it was kept; none for another form, and for bytes that are not understood: it is worked out anew.
    #[must_use]
    pub fn read(form: i32, bytes: &[u8]) -> Option<Self> {
        if form != FORM {
            return None;
        }
        serde_json::from_slice(bytes).inspect_err(|why| tracing::warn!("Lines of a desk are made anew: {why}")).ok()
    }
}
