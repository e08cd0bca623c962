//! Faults of a file by kind: one mistake made in a thousand rows is told once.

use super::problem::RowProblem;
use std::collections::HashMap;
use std::fmt;

/// Lines named of each kind; the rest is counted.
const NAMED_LINES: usize = 5;
/// Kinds told; faults of further kinds are counted.
const MOST_KINDS: usize = 100;

/// Faults that are the same mistake: in the same field, with the same thing wanted there.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct FaultKind {
    /// How many there are.
    pub count: usize,
    /// The first lines it stands in, from 1, each once; none where it is about the whole file.
    pub lines: Vec<u64>,
    /// The first of them, as an example.
    pub example: RowProblem,
}

impl fmt::Display for FaultKind {
    /// Such as `word, 3 times (lines 2, 5, 9): found "bal", for example; wanted an id or one of the known names: ball`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.count == 1 {
            return self.example.fmt(f);
        }
        write!(f, "{}, {} times{}: ", self.example.field, self.count, self.where_it_stands())?;
        if !self.example.found.is_empty() {
            write!(f, "found \"{}\", for example; ", self.example.found)?;
        }
        write!(f, "wanted {}", self.example.wanted)
    }
}

impl FaultKind {
    /// The first lines in words, such as ` (lines 2, 5 and more)`; empty where it is about the whole file.
    #[must_use]
    pub fn where_it_stands(&self) -> String {
        let named = self.lines.iter().map(u64::to_string).collect::<Vec<_>>().join(", ");
        match self.lines.len() {
            0 => String::new(),
            1 => format!(" (line {named})"),
            NAMED_LINES if self.count > NAMED_LINES => format!(" (lines {named} and more)"),
            _ => format!(" (lines {named})"),
        }
    }
}

/// All faults of a file, by kind.
#[derive(Clone, Debug, Default)]
pub struct Faults {
    kinds: Vec<FaultKind>,
    places: HashMap<String, usize>,
    beyond: usize,
}

impl Faults {
    /// Adds one.
    pub(super) fn add(&mut self, fault: &RowProblem) {
        let sort = sort(fault);
        match self.places.get(&sort) {
            Some(at) => {
                if let Some(kind) = self.kinds.get_mut(*at) {
                    kind.count += 1;
                    if kind.lines.len() < NAMED_LINES && kind.lines.last() != Some(&fault.line) {
                        kind.lines.push(fault.line);
                    }
                }
            }
            None if self.kinds.len() < MOST_KINDS => {
                self.places.insert(sort, self.kinds.len());
                let lines = if fault.line > 0 { vec![fault.line] } else { Vec::new() };
                self.kinds.push(FaultKind { count: 1, lines, example: fault.clone() });
            }
            None => self.beyond += 1,
        }
    }

    /// The kinds, the commonest first; of equally common ones that which came first.
    #[must_use]
    pub fn kinds(&self) -> Vec<&FaultKind> {
        let mut all: Vec<&FaultKind> = self.kinds.iter().collect();
        all.sort_by_key(|kind| std::cmp::Reverse(kind.count));
        all
    }

    /// Faults of further kinds, where there are very many kinds.
    #[must_use]
    pub const fn beyond(&self) -> usize {
        self.beyond
    }
}

/// What two faults of a kind share: the field and what is wanted, without the numbers in them, such as the place in a
/// list or the column where JSON breaks off.
fn sort(fault: &RowProblem) -> String {
    let mut sort = String::with_capacity(fault.field.len() + fault.wanted.len() + 1);
    let mut in_number = false;
    for c in fault.field.chars().chain(['\n']).chain(fault.wanted.chars()) {
        if !c.is_ascii_digit() {
            sort.push(c);
        } else if !in_number {
            sort.push('#');
        }
        in_number = c.is_ascii_digit();
    }
    sort
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault(line: u64, field: &str, found: &str, wanted: &str) -> RowProblem {
        RowProblem { line, field: field.to_owned(), found: found.to_owned(), wanted: wanted.to_owned() }
    }

    #[test]
    fn the_same_mistake_is_one_kind_with_its_first_lines_and_an_example() {
        let mut faults = Faults::default();
        faults.add(&fault(2, "zone", "Mars", "a time zone"));
        for line in 3..=10 {
            faults.add(&fault(line, "word", "bal", "one of: ball"));
        }
        faults.add(&fault(11, "words[0]", "x", "an id"));
        faults.add(&fault(11, "words[12]", "y", "an id"));
        let told: Vec<String> = faults.kinds().iter().map(ToString::to_string).collect();
        assert_eq!(
            told,
            [
                "word, 8 times (lines 3, 4, 5, 6, 7 and more): found \"bal\", for example; wanted one of: ball",
                "words[0], 2 times (line 11): found \"x\", for example; wanted an id",
                "line 2, zone: found \"Mars\"; wanted a time zone",
            ]
        );
        assert_eq!(faults.beyond(), 0);
    }

    #[test]
    fn other_things_wanted_of_one_field_are_other_kinds_and_very_many_are_counted() {
        let mut faults = Faults::default();
        for n in 0..MOST_KINDS as u64 + 7 {
            faults.add(&fault(n + 1, "word", "", &format!("thing {}", "x".repeat(n as usize))));
        }
        assert_eq!((faults.kinds().len(), faults.beyond()), (MOST_KINDS, 7));
    }
}
