//! What is wrong with a file, by line and field.

/// One thing wrong with a file.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct RowProblem {
    /// The line, from 1; 0 where it is about the whole file.
    pub line: u64,
    /// The column, or the field as a path such as `body.word`.
    pub field: String,
    /// What stands there, shortened.
    pub found: String,
    /// What should stand there.
    pub wanted: String,
}

impl std::fmt::Display for RowProblem {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        if self.line > 0 {
            write!(f, "line {}, ", self.line)?;
        }
        write!(f, "{}: ", self.field)?;
        if !self.found.is_empty() {
            write!(f, "found \"{}\"; ", self.found)?;
        }
        write!(f, "wanted {}", self.wanted)
    }
}
