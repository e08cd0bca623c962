//! Faults of a file by kind: one mistake made in a thousand rows is told once.

use super::problem::RowProblem;
use std::collections::HashMap;

/// Lines named of each kind; the rest is counted.
const NAMED_LINES: usize = 5;
/// Kinds told; faults of further kinds are counted.
const MOST_KINDS: usize = 100;

/// Faults that are the same mistake: in the same field, with the same thing wanted there.
#[derive(Clone, PartialEq, Debug)]
pub struct FaultKind {
    /// How many there are.
    pub count: usize,
    /// The first lines it stands in, from 1, each once; none where it is about the whole file.
    pub lines: Vec<u64>,
    /// The first of them, as an example.
    pub example: RowProblem,
}

impl FaultKind {
    /// Whether it stands in more lines than are named.
    #[must_use]
    pub const fn in_more_lines(&self) -> bool {
        self.lines.len() == NAMED_LINES && self.count > NAMED_LINES
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
    let wanted = fault.wanted.to_string();
    let mut sort = String::with_capacity(fault.field.len() + wanted.len() + 1);
    let mut in_number = false;
    for c in fault.field.chars().chain(['\n']).chain(wanted.chars()) {
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
    use super::super::wanted::Wanted;
    use super::*;

    fn fault(line: u64, field: &str, found: &str, wanted: Wanted) -> RowProblem {
        RowProblem { line, field: field.to_owned(), found: found.to_owned(), wanted: Box::new(wanted) }
    }

    #[test]
    fn the_same_mistake_is_one_kind_with_its_first_lines_and_an_example() {
        let mut faults = Faults::default();
        faults.add(&fault(2, "zone", "Mars", Wanted::Text));
        for line in 3..=10 {
            faults.add(&fault(line, "word", "bal", Wanted::OneOf(vec!["ball".to_owned()])));
        }
        faults.add(&fault(11, "words[0]", "x", Wanted::Id));
        faults.add(&fault(11, "words[12]", "y", Wanted::Id));
        let told: Vec<_> = faults
            .kinds()
            .into_iter()
            .map(|k| (k.count, k.lines.clone(), k.in_more_lines(), k.example.to_string()))
            .collect();
        assert_eq!(
            told,
            [
                (8, vec![3, 4, 5, 6, 7], true, "line 3, word: found \"bal\"; wanted one of: ball".to_owned()),
                (2, vec![11], false, format!("line 11, words[0]: found \"x\"; wanted {}", Wanted::Id)),
                (1, vec![2], false, "line 2, zone: found \"Mars\"; wanted a text".to_owned()),
            ]
        );
        assert_eq!(faults.beyond(), 0);
    }

    #[test]
    fn other_things_wanted_of_one_field_are_other_kinds_and_very_many_are_counted() {
        let mut faults = Faults::default();
        for n in 0..MOST_KINDS as u64 + 7 {
            faults.add(&fault(n + 1, "word", "", Wanted::Offset("x".repeat(n as usize))));
        }
        assert_eq!((faults.kinds().len(), faults.beyond()), (MOST_KINDS, 7));
    }
}
