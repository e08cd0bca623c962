//! What must hold across the fields of an event. Ranges of single fields are held by their types.

use crate::event::Event;
use std::fmt;

/// One thing wrong with an event.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Problem {
    /// Path of the field, such as `body.then_word`.
    pub field: String,
    /// What was found and what would be right.
    pub what: String,
}

/// Everything wrong with an event.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub struct Problems(pub Vec<Problem>);

impl fmt::Display for Problems {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, p) in self.0.iter().enumerate() {
            write!(f, "{}{}: {}", if i == 0 { "" } else { "; " }, p.field, p.what)?;
        }
        Ok(())
    }
}

/// Most words or the like that one event lists.
pub(crate) const MOST_LISTED: usize = 400;

/// What is wrong so far, and where in the event the check is.
#[derive(Default, Debug)]
pub struct Findings {
    at: String,
    problems: Vec<Problem>,
}

impl Findings {
    /// Notes that a field here is wrong: what was found and what would be right.
    pub(crate) fn wrong(&mut self, field: &str, what: impl Into<String>) {
        self.problems.push(Problem { field: format!("{}{field}", self.at), what: what.into() });
    }

    /// Goes on inside a field.
    pub(crate) fn within(&mut self, field: &str, check: impl FnOnce(&mut Self)) {
        let before = self.at.len();
        self.at.push_str(field);
        self.at.push('.');
        check(self);
        self.at.truncate(before);
    }
}

impl Event {
    /// Checks what the types cannot hold.
    ///
    /// # Errors
    /// [`Problems`], each with its field and what would be right.
    pub fn check(&self) -> Result<(), Problems> {
        let mut found = Findings::default();
        if self.body.about().needs_animal && self.animal.is_none() {
            found.wrong("animal", "is missing; this kind of event is about one animal");
        }
        found.within("body", |found| self.body.check(found));
        if found.problems.is_empty() { Ok(()) } else { Err(Problems(found.problems)) }
    }
}
