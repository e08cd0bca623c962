//! What is kept of one home: a line of each of its animals, and beside them what they are called.

use crate::desk::answers::{DAY_S, HomeAnswer, answers, lately, told, words};
use sayso_advisor::Case;
use sayso_advisor::calendar::has_meeting_or_check;
use sayso_advisor::desk::{Line, Version};
use sayso_model::talks::{Passed, Standing, Talk, passed, talks, until};
use sayso_model::{AccountId, AnimalId, EventId, Moment, Story, WordId, Zone};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The form of the bytes: that of the lines in them, and ours around them.
pub const FORM: i32 = 100 * Version::NUMBER as i32 + 11;

/// The line of a week ago is worked out for so many days before, and again when it has become older than that.
const WEEK_AGO: f64 = 7.0;
const OLD: f64 = 8.0;

/// One animal. Lines hold no names: those stand beside them, under the same consent.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct KeptAnimal {
    /// What it is called.
    pub name: String,
    /// As it is.
    pub line: Line,
    /// As it was a week before, for who has not spoken with the home since.
    pub week_ago: Line,
}

/// One home.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kept {
    /// When it was worked out.
    pub at: Moment,
    /// What it is called; empty where nothing says so.
    pub home: String,
    /// Its active animals, by id.
    pub animals: BTreeMap<AnimalId, KeptAnimal>,
    /// Whether an animal was ever written down.
    pub begun: bool,
    /// What its buttons say, also those no longer in use.
    pub words: BTreeMap<WordId, String>,
    /// By what the writing of one coach passed on to another.
    pub passed: Vec<Passed>,
    /// What it answered lately, the latest first.
    pub answers: Vec<HomeAnswer>,
    /// What coaches wrote lately and nobody has answered; without a word of it.
    pub waiting: Vec<Waiting>,
    /// Whether there is, or may come to be, a meeting or a check that is due.
    pub dated: bool,
}

/// Something that a coach wrote and nobody has answered, nor taken back.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Waiting {
    /// The event.
    pub id: EventId,
    /// The account that it names as the one that wrote.
    pub by: AccountId,
    /// When.
    pub at: Moment,
    /// From when on its time has passed, where it has one.
    pub until: Option<Moment>,
    /// About which animal; none for the home.
    pub animal: Option<AnimalId>,
    /// What, by its name on the wire.
    pub kind: String,
    /// Words that it is about.
    pub words: Vec<WordId>,
}

fn waiting(talks: &[Talk<'_>], zone: &Zone, now: Moment) -> Vec<Waiting> {
    let open = talks.iter().filter(|t| t.standing == Standing::Open && lately(t.event.happened_at, now));
    let one = |talk: &Talk<'_>| Waiting {
        id: talk.id(),
        by: talk.part.from.account,
        at: talk.event.happened_at,
        until: until(talk.part, zone),
        animal: talk.event.animal,
        kind: talk.part.proposes.name().to_owned(),
        words: words(&talk.part.proposes),
    };
    open.map(one).collect()
}

impl Kept {
    /// All of a home at a moment. The week before is taken from what was kept earlier while it is not too old.
    #[must_use]
    pub fn of(story: &Story, now: Moment, earlier: Option<&Self>) -> Self {
        let active = story.animals().into_values().filter(|card| card.active);
        let one = |card: &sayso_model::AnimalCard| {
            let animal = card.animal;
            let before = earlier.and_then(|kept| kept.animals.get(&animal));
            let last = before.map(|kept| &kept.line);
            let then = now.plus_seconds(-WEEK_AGO * DAY_S);
            let holds = |line: &&Line| line.at > now.plus_seconds(-OLD * DAY_S) && line.at < now;
            let week_ago = match before.map(|kept| &kept.week_ago).filter(holds) {
                Some(line) => line.clone(),
                None => {
                    let line = Line::of(&Case::new(story, animal, then));
                    match last.filter(|last| last.at <= then) {
                        Some(last) => line.remembering(last),
                        None => line,
                    }
                }
            };
            // Since when something holds is told by what was seen last: what was over in between began anew.
            let seen = last.filter(|last| last.at > week_ago.at).unwrap_or(&week_ago);
            let line = Line::of(&Case::new(story, animal, now)).remembering(seen);
            let kept = KeptAnimal { name: card.name.to_string(), line, week_ago };
            (animal, kept)
        };
        let all = talks(story, now);
        let answers = answers(&all, now, earlier.map(|kept| kept.answers.as_slice()));
        let home = story.home().map(|card| card.name.to_string()).unwrap_or_default();
        let (passed, waiting) = (passed(&all), waiting(&all, &story.zone(), now));
        let dated = has_meeting_or_check(story, &all, now);
        let begun = !story.animals().is_empty();
        let words = story.words().into_values().map(|word| (word.word, word.says.to_string())).collect();
        Self { at: now, home, animals: active.map(one).collect(), begun, words, passed, answers, waiting, dated }
    }

    /// Answers that a desk tells, the latest first.
    pub fn told_answers(&self) -> impl Iterator<Item = &HomeAnswer> {
        told(&self.answers, self.at)
    }

    /// The home's zone, by which its lines go; UTC without any.
    #[must_use]
    pub fn zone(&self) -> Zone {
        self.animals.values().next().map_or_else(Zone::utc, |animal| animal.line.zone.clone())
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
