//! Lessons in words: each found by its id, about an animal by its name where that is known.

use crate::catalogue::{by_id, say as say_by_id};
use crate::{Locale, say, signs};
use sayso_model::facts::{self, Lesson, LessonFact};

/// All that a lesson says.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Told {
    /// What it is about.
    pub title: String,
    /// What for, in a sentence.
    pub short: String,
    /// What to do, sentence by sentence.
    pub steps: Vec<String>,
    /// Mild and strong signs, a species each, where it is about them.
    pub signs: Vec<String>,
    /// What its drawing shows.
    pub drawing: String,
    /// One mistake to avoid.
    pub mistake: String,
    /// The caution: every lesson has one.
    pub care: String,
    /// What is not known, where that matters.
    pub unknown: Option<String>,
    /// The self-check.
    pub questions: Vec<Asked>,
    /// What it rests on, each with its source and how far that was read.
    pub rests_on: Vec<String>,
}

/// A question with its answers.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Asked {
    /// The question.
    pub question: String,
    /// Its answers.
    pub answers: Vec<Answered>,
}

/// An answer and what speaks for or against it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Answered {
    /// The answer.
    pub says: String,
    /// What speaks for or against it.
    pub why: String,
    /// Whether it is the right one.
    pub right: bool,
}

/// What a lesson is about.
#[must_use]
pub fn title(l: &Locale, lesson: &Lesson, name: Option<&str>) -> String {
    Part { l, lesson, name: whom(l, name) }.said("title")
}

/// A lesson as a log names it: its title, or the name under which another version knows it.
#[must_use]
pub fn named(l: &Locale, id: &str) -> String {
    facts::lesson(id).map_or_else(|| id.to_owned(), |lesson| title(l, lesson, None))
}

/// All that a lesson says.
#[must_use]
pub fn told(l: &Locale, lesson: &Lesson, name: Option<&str>) -> Told {
    let part = Part { l, lesson, name: whom(l, name) };
    let question = |(i, question): (usize, &facts::Question)| {
        let asked = format!("q{}", i + 1);
        let answer = |answer: &String| Answered {
            says: part.said(&format!("{asked}-{answer}")),
            why: part.said(&format!("{asked}-{answer}-why")),
            right: *answer == question.right,
        };
        Asked { question: part.said(&asked), answers: question.answers.iter().map(answer).collect() }
    };
    Told {
        title: part.said("title"),
        short: part.said("short"),
        steps: (1..=lesson.steps).map(|i| part.said(&format!("do-{i}"))).collect(),
        signs: if lesson.signs { signs::levels(l) } else { Vec::default() },
        drawing: part.said("drawing"),
        mistake: part.said("mistake"),
        care: part.said("care"),
        unknown: lesson.unknown.then(|| part.said("unknown")),
        questions: lesson.questions.iter().enumerate().map(question).collect(),
        rests_on: lesson.rests_on().map(|fact| self::fact(l, fact)).collect(),
    }
}

/// A finding, its source, and how far that was read.
fn fact(l: &Locale, fact: &LessonFact) -> String {
    let text = by_id(l, &format!("lesson-facts-{}", fact.id)).unwrap_or_else(|| fact.fact.clone());
    let read = say!(l, lessons::read_as, read = fact.read.name());
    let source = by_id(l, &format!("lesson-facts-source-{}", fact.id)).unwrap_or_else(|| fact.source.clone());
    say!(l, lessons::fact, fact = text, source = source, read = read)
}

/// The animal as the lessons name it.
fn whom(l: &Locale, name: Option<&str>) -> String {
    name.map_or_else(|| say!(l, lessons::your_animal), ToOwned::to_owned)
}

/// Messages of one lesson.
struct Part<'a> {
    l: &'a Locale,
    lesson: &'a Lesson,
    name: String,
}

impl Part<'_> {
    fn said(&self, part: &str) -> String {
        let id = format!("lessons-{}-{part}", self.lesson.id);
        say_by_id(self.l, &id, &[("name", &self.name.as_str().into())])
    }
}
