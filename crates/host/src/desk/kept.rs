//! What is kept of one home: a line of each of its animals, and beside them what they are called.

use crate::desk::answers::{HomeAnswer, answers};
use sayso_advisor::Case;
use sayso_advisor::calendar::has_meeting_or_check;
use sayso_advisor::desk::{Line, Version};
use sayso_model::talks::{Answered, Passed, Standing, Talk, passed, talks, until};
use sayso_model::{AccountId, AnimalId, EventId, Moment, Story, WordId, Zone};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The form of the bytes: that of the lines in them, and ours around them.
pub const FORM: i32 = 100 * Version::NUMBER as i32 + 5;

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
    /// What coaches wrote lately, and what the home answered lately; without a word of it.
    pub written: Vec<Written>,
    /// Whether there is, or may come to be, a meeting or a check that is due.
    pub dated: bool,
}

/// Something that a coach wrote.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Written {
    /// The event.
    pub id: EventId,
    /// The account that it names as the one that wrote.
    pub by: AccountId,
    /// When.
    pub at: Moment,
    /// Whether nobody has answered it, nor taken it back.
    pub waits: bool,
    /// From when on its time has passed, where it has one.
    pub until: Option<Moment>,
    /// Answers of the last weeks, and what was shared of a rehearsal.
    pub answers: Vec<Answer>,
}

/// An answer of a home.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    /// The event.
    pub id: EventId,
    /// When.
    pub at: Moment,
    /// The account that gave it, where it is no person of the home.
    pub by: Option<AccountId>,
}

/// What is not answered and was written, or what was answered, so many days ago is kept; older is news to nobody.
pub const LATELY: f64 = 30.0;

fn written(talks: &[Talk<'_>], zone: &Zone, now: Moment) -> Vec<Written> {
    let lately = |at: Moment| at > now.plus_seconds(-LATELY * DAY_S);
    let one = |talk: &Talk<'_>| {
        let answers = talk.answers.iter().filter(|a| lately(a.event.happened_at));
        let of = |a: &Answered<'_>| Answer {
            id: a.event.id,
            at: a.event.happened_at,
            by: a.part.by.as_ref().map(|by| by.account),
        };
        Written {
            id: talk.id(),
            by: talk.part.from.account,
            at: talk.event.happened_at,
            waits: talk.standing == Standing::Open,
            until: until(talk.part, zone),
            answers: answers.map(of).collect(),
        }
    };
    let matters = |written: &Written| (written.waits && lately(written.at)) || !written.answers.is_empty();
    talks.iter().map(one).filter(matters).collect()
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
        let (passed, written) = (passed(&all), written(&all, &story.zone(), now));
        let dated = has_meeting_or_check(story, &all, now);
        Self { home, animals: active.map(one).collect(), passed, answers: answered, written, dated }
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
