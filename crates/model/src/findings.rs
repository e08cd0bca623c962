//! What is wrong with an event, by field.

use crate::fault::Fault;
use std::fmt;

/// One thing wrong with an event.
#[derive(Clone, PartialEq, Debug)]
pub struct Problem {
    /// Path of the field, such as `body.then_word`.
    pub field: String,
    /// What was found and what would be right.
    pub fault: Fault,
}

/// Everything wrong with an event.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub struct Problems(pub Vec<Problem>);

impl Problems {
    /// One thing that is wrong: in which field, and what was found and would be right.
    pub fn one(field: impl Into<String>, fault: impl Into<Fault>) -> Self {
        Self(vec![Problem { field: field.into(), fault: fault.into() }])
    }
}

impl fmt::Display for Problems {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (i, p) in self.0.iter().enumerate() {
            write!(f, "{}{}: {}", if i == 0 { "" } else { "; " }, p.field, p.fault)?;
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
    /// All that was found, if anything was.
    pub(crate) fn told(self) -> Result<(), Problems> {
        if self.problems.is_empty() { Ok(()) } else { Err(Problems(self.problems)) }
    }

    /// Notes that a field here is wrong: what was found and what would be right.
    pub(crate) fn wrong(&mut self, field: &str, fault: Fault) {
        self.problems.push(Problem { field: format!("{}{field}", self.at), fault });
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
