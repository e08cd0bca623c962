//! First times at the Board, each of which opens its lesson once: the first session, the first invitation, the first "not now" of
//! whoever holds the device, with this animal.

use super::address;
use super::marks;
use crate::page::AnimalPage;
use sayso_model::facts::lesson;
use sayso_model::{Answer, Delivery, Invitation, PersonId, SessionStart};
use sayso_people::Capability;
use sayso_wording::lessons::told;
use sayso_wording::say;
use serde::Serialize;

/// A first time.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, schemars::JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum FirstTime {
    /// A session is begun.
    Session,
    /// A word is invited.
    Invitation,
    /// A press is answered with "not now", or with something else.
    NotNow,
}

impl FirstTime {
    const ALL: [Self; 3] = [Self::Session, Self::Invitation, Self::NotNow];

    /// The lesson that it opens.
    const fn lesson(self) -> &'static str {
        match self {
            Self::Session => "showing",
            Self::Invitation => "inviting",
            Self::NotNow => "not-now",
        }
    }

    /// Whether somebody did this already: whoever holds the device, or anyone where that is not known.
    pub(super) fn was(self, page: &AnimalPage) -> bool {
        let (story, id) = (&page.story, page.id);
        let mine = |person: Option<PersonId>| page.person.is_none() || person == page.person;
        let no = |answer| matches!(answer, Answer::Declined | Answer::Alternative);
        match self {
            Self::Session => story.of::<SessionStart>(id).any(|f| mine(f.person())),
            Self::Invitation => story.of::<Invitation>(id).any(|f| mine(f.person())),
            Self::NotNow => story.of::<Delivery>(id).any(|f| no(f.part.answer) && mine(f.person())),
        }
    }
}

/// The short form of a lesson, for a first time that still lies ahead.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, schemars::JsonSchema)]
pub struct FirstLesson {
    /// Which first time.
    pub at: FirstTime,
    /// That it is a lesson, and what about.
    pub title: String,
    /// What for, in a sentence.
    pub short: String,
    /// What to do, sentence by sentence.
    pub steps: Vec<String>,
    /// Its caution.
    pub care: String,
    /// Where the whole of it stands.
    pub address: String,
}

/// Lessons of first times that lie ahead and that whoever holds the device has not read.
#[must_use]
pub fn firsts(page: &AnimalPage) -> Vec<FirstLesson> {
    if !page.may(Capability::Record) {
        return Vec::new();
    }
    let l = &page.locale;
    let read = |id: &str| page.person.is_some_and(|me| marks::of(&page.story, id).contains_key(&me));
    let ahead = FirstTime::ALL.into_iter().filter(|at| !read(at.lesson()) && !at.was(page));
    ahead
        .filter_map(|at| {
            let told = told(l, lesson(at.lesson())?, Some(page.card.name.as_str()));
            Some(FirstLesson {
                at,
                title: say!(l, lessons::fits, title = told.title),
                short: told.short,
                steps: told.steps,
                care: told.care,
                address: address::about(page, &address::lesson(at.lesson()), Some(page.id)),
            })
        })
        .collect()
}
