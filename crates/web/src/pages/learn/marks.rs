//! Who has read which lesson.

use sayso_model::{EventId, LessonRead, Moment, PersonId, Story};
use std::collections::BTreeMap;

/// Somebody's mark on a lesson.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Mark {
    /// When it was read, the first time.
    pub at: Moment,
    /// Whether coaches who handed the lesson over may see it.
    pub shown: bool,
    /// Every event that says so.
    pub events: Vec<EventId>,
}

/// Marks on a lesson, by whoever made them.
pub fn of(story: &Story, lesson: &str) -> BTreeMap<PersonId, Mark> {
    let mut marks: BTreeMap<PersonId, Mark> = BTreeMap::new();
    for fact in story.everyones::<LessonRead>().filter(|fact| fact.part.lesson.as_str() == lesson) {
        if let Some(person) = fact.person() {
            let mark = marks.entry(person).or_insert_with(|| Mark { at: fact.at(), shown: false, events: Vec::new() });
            mark.at = mark.at.min(fact.at());
            mark.shown |= fact.part.shown;
            mark.events.push(fact.id());
        }
    }
    marks
}
