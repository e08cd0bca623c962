//! Lessons for whoever teaches: their order, where in the work each belongs, what it rests on, and which answers to its
//! questions are right. The words stand in the catalogues under the ids here.

use super::parsed;
use crate::stage::Stage;
use serde::Deserialize;
use std::sync::OnceLock;

/// A moment of the work in which a lesson is offered.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Occasion {
    /// The notebook is new.
    Begin,
    /// What the animal may want is listed or tested.
    Wants,
    /// Words are chosen.
    Words,
    /// A button is recorded.
    Recording,
    /// Buttons get their places.
    Places,
    /// A word is shown.
    Showing,
    /// A word is about to be invited, or is.
    Inviting,
    /// Presses are answered.
    Answering,
    /// A press is to be answered with "not now".
    Declining,
    /// Signs of stress were seen.
    Signs,
    /// A word does not get on.
    Stuck,
    /// What presses tell is checked.
    Checking,
}

/// How far a source was read. Figures that were only told by others are never passed off as read.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadAs {
    /// The text itself.
    Text,
    /// Its abstract.
    Abstract,
    /// Its abstract, on a page of an index; authors and journal from memory.
    Index,
    /// By what others tell of it.
    Secondary,
    /// From memory.
    Memory,
}

impl ReadAs {
    /// Its name, for messages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Text => "text",
            Self::Abstract => "abstract",
            Self::Index => "index",
            Self::Secondary => "secondary",
            Self::Memory => "memory",
        }
    }
}

/// A finding that a lesson rests on.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LessonFact {
    /// Its short name.
    pub id: String,
    /// What was found, and in whom.
    pub fact: String,
    /// Where it was published.
    pub source: String,
    /// Whether that describes a page rather than naming a publication: then the catalogues have words for it.
    #[serde(default)]
    pub described: bool,
    /// How far that was read.
    pub read: ReadAs,
}

/// A question of a lesson's self-check.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Question {
    /// Short names of its answers, in the order in which they stand.
    pub answers: Vec<String>,
    /// The short name of the right one.
    pub right: String,
}

/// A lesson.
#[derive(Clone, PartialEq, Eq, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lesson {
    /// Its short name: the end of its address and part of the ids of its words.
    pub id: String,
    /// The stage of a word in which it is needed.
    pub stage: Stage,
    /// Moments in which it is offered.
    pub fits: Vec<Occasion>,
    /// How many sentences of what to do it has.
    pub steps: usize,
    /// Whether it lists the signs of each species, as the Board does.
    #[serde(default)]
    pub signs: bool,
    /// Whether something that would matter is not known, and is said to be so.
    pub unknown: bool,
    /// What it rests on, by id; whatever else it says is common practice without a source.
    pub facts: Vec<String>,
    /// The self-check.
    pub questions: [Question; 2],
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LessonFile {
    lessons: Vec<Lesson>,
    facts: Vec<LessonFact>,
}

fn file() -> &'static LessonFile {
    static FILE: OnceLock<LessonFile> = OnceLock::new();
    FILE.get_or_init(|| parsed("lessons.json", include_str!("../../facts/lessons.json")))
}

/// Every lesson, in the order of the work.
#[must_use]
pub fn lessons() -> &'static [Lesson] {
    &file().lessons
}

/// A lesson by its short name.
#[must_use]
pub fn lesson(id: &str) -> Option<&'static Lesson> {
    lessons().iter().find(|lesson| lesson.id == id)
}

/// Lessons offered in a moment of the work, in their order.
pub fn lessons_for(occasion: Occasion) -> impl Iterator<Item = &'static Lesson> {
    lessons().iter().filter(move |lesson| lesson.fits.contains(&occasion))
}

/// Every finding that some lesson rests on.
#[must_use]
pub fn lesson_facts() -> &'static [LessonFact] {
    &file().facts
}

impl Lesson {
    /// What it rests on, in its order.
    pub fn rests_on(&self) -> impl Iterator<Item = &'static LessonFact> {
        self.facts.iter().filter_map(|id| lesson_facts().iter().find(|fact| fact.id == *id))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn lessons_follow_the_work_and_each_has_a_short_name_of_its_own() {
        assert!((12..=20).contains(&lessons().len()));
        let ids: BTreeSet<&String> = lessons().iter().map(|l| &l.id).collect();
        assert_eq!(ids.len(), lessons().len());
        for id in ids {
            let plain = id.bytes().all(|b| b.is_ascii_lowercase() || b == b'-');
            assert!(plain && lesson(id).is_some(), "{id} stands in addresses");
        }
        let stages: Vec<Stage> = lessons().iter().map(|l| l.stage).collect();
        assert!(stages.is_sorted(), "in the order of the work: {stages:?}");
    }

    #[test]
    fn a_lesson_has_its_parts() {
        for lesson in lessons() {
            assert!((3..=5).contains(&lesson.steps), "{}: a minute or two", lesson.id);
            assert!(!lesson.fits.is_empty() && !lesson.facts.is_empty(), "{}", lesson.id);
            assert_eq!(lesson.rests_on().count(), lesson.facts.len(), "{} rests on facts that stand here", lesson.id);
            for question in &lesson.questions {
                let answers: BTreeSet<_> = question.answers.iter().collect();
                assert!(answers.len() >= 2 && answers.len() == question.answers.len(), "{}", lesson.id);
                assert!(answers.contains(&question.right), "{}", lesson.id);
            }
        }
    }

    #[test]
    fn the_right_answer_is_not_always_in_the_same_place() {
        let questions: Vec<&Question> = lessons().iter().flat_map(|l| &l.questions).collect();
        let first = questions.iter().filter(|q| q.answers.first() == Some(&q.right)).count();
        assert!((questions.len() / 3..=questions.len() * 2 / 3).contains(&first), "{first} of {}", questions.len());
    }

    #[test]
    fn every_fact_has_its_source_and_a_lesson_that_rests_on_it() {
        let ids: BTreeSet<&String> = lesson_facts().iter().map(|f| &f.id).collect();
        assert_eq!(ids.len(), lesson_facts().len());
        for fact in lesson_facts() {
            // A source that is told only as what it is, of whom nobody knows name or year, says so.
            let dated = fact.source.bytes().any(|b| b.is_ascii_digit());
            let title = dated != fact.described && !fact.source.contains("read)");
            assert!(title && fact.fact.ends_with('.'), "{}: {}", fact.id, fact.source);
            assert!(lessons().iter().any(|l| l.facts.contains(&fact.id)), "nothing rests on {}", fact.id);
        }
    }

    #[test]
    fn every_moment_has_its_lesson() {
        use Occasion::*;
        for at in
            [Begin, Wants, Words, Recording, Places, Showing, Inviting, Answering, Declining, Signs, Stuck, Checking]
        {
            assert!(lessons_for(at).next().is_some(), "{at:?}");
        }
    }
}
