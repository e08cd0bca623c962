//! What is wrong with a file or an event, by line and field.

use super::wanted::Wanted;

/// One thing wrong with a file or an event.
#[derive(Clone, PartialEq, Debug)]
pub struct RowProblem {
    /// The line, from 1; 0 where it is about the whole file, or about an event alone.
    pub line: u64,
    /// The column, or the field as a path such as `body.word`; `file`, `line`, `row` or `column` where it is about one of
    /// these.
    pub field: String,
    /// What stands there, shortened.
    pub found: String,
    /// What should stand there.
    pub wanted: Box<Wanted>,
}

impl std::fmt::Display for RowProblem {
    /// In English, for the log.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.line > 0 {
            write!(f, "line {}, ", self.line)?;
        }
        if !self.field.is_empty() {
            write!(f, "{}: ", self.field)?;
        }
        if let Wanted::Other(fault) = &*self.wanted {
            // It says itself what was found.
            return write!(f, "{fault}");
        }
        if !self.found.is_empty() {
            write!(f, "found \"{}\"; ", self.found)?;
        }
        write!(f, "wanted {}", self.wanted)
    }
}
