//! Reading scores of two or more people: a line for each thing scored, a column for each person.

use super::scale::ScoreScale;
use std::collections::BTreeSet;

/// Most lines read; more is a file for a statistics package.
const MOST_LINES: usize = 20_000;
/// Most people.
const MOST_PEOPLE: usize = 20;
/// Most different categories that are names.
const MOST_CATEGORIES: usize = 200;

/// Why scores cannot be read.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ScoresError {
    /// Nothing there.
    #[error("no scores: write a line for each thing scored, with a column for each person, such as \"press,brush\"")]
    Empty,
    /// A line with another number of columns.
    #[error(
        "line {line} has {got} columns where line {first} has {wanted}; leave a column empty where somebody gave no score"
    )]
    Ragged {
        /// The line, counted from 1.
        line: usize,
        /// Columns there.
        got: usize,
        /// The first line with scores.
        first: usize,
        /// Columns there.
        wanted: usize,
    },
    /// One person only, or too many.
    #[error(
        "{0} columns; two to {MOST_PEOPLE} people are compared, a column for each, parted by commas, semicolons or tabs"
    )]
    People(usize),
    /// Too many lines.
    #[error("more than {MOST_LINES} lines")]
    TooLong,
    /// A name where a number belongs.
    #[error("line {line}, {person}: \"{got}\" is no number; numbers are needed unless the scores are names")]
    NoNumber {
        /// The line, counted from 1.
        line: usize,
        /// Whose.
        person: String,
        /// What stands there.
        got: String,
    },
    /// Names without end.
    #[error("more than {MOST_CATEGORIES} different names; are these numbers?")]
    TooManyNames,
}

/// Scores as they were read.
#[derive(Clone, PartialEq, Debug)]
pub struct Scores {
    /// Whose, one a column.
    pub people: Vec<String>,
    /// What was scored as what: the categories in order, or the different numbers.
    pub categories: Vec<String>,
    /// One row a person, one column a thing; the place in `categories`, where a score was given.
    pub by_person: Vec<Vec<Option<usize>>>,
    /// The value of each category: its number, or its place where categories are names.
    pub values: Vec<f64>,
}

/// Reads `text`; with `headed` its first line names the people, else `person` does by their number, from 1.
///
/// # Errors
/// [`ScoresError`], naming the line.
pub fn read(
    text: &str,
    headed: bool,
    scale: ScoreScale,
    person: impl Fn(usize) -> String,
) -> Result<Scores, ScoresError> {
    let lines: Vec<(usize, &str)> =
        text.lines().enumerate().map(|(i, l)| (i + 1, l)).filter(|(_, l)| !l.trim().is_empty()).collect();
    if lines.len() > MOST_LINES {
        return Err(ScoresError::TooLong);
    }
    let Some(&(first, head)) = lines.first() else { return Err(ScoresError::Empty) };
    let mark = ['\t', ';', ','].into_iter().find(|m| head.contains(*m)).unwrap_or(',');
    let cells =
        |line: &str| -> Vec<String> { line.split(mark).map(|c| c.trim().trim_matches('"').to_owned()).collect() };
    let wanted = cells(head).len();
    if !(2..=MOST_PEOPLE).contains(&wanted) {
        return Err(ScoresError::People(wanted));
    }
    let people: Vec<String> = if headed { cells(head) } else { (1..=wanted).map(person).collect() };
    let mut rows = Vec::new();
    for &(line, text) in lines.iter().skip(usize::from(headed)) {
        let row = cells(text);
        if row.len() != wanted {
            return Err(ScoresError::Ragged { line, got: row.len(), first, wanted });
        }
        rows.push((line, row));
    }
    if rows.is_empty() {
        return Err(ScoresError::Empty);
    }
    let given = |cell: &str| !cell.is_empty() && cell != "-";
    let mut number_of = std::collections::BTreeMap::new();
    if scale != ScoreScale::Names {
        for (line, row) in &rows {
            for (cell, person) in row.iter().zip(&people).filter(|(c, _)| given(c)) {
                let number = cell
                    .parse::<f64>()
                    .ok()
                    .filter(|v| v.is_finite())
                    .ok_or_else(|| ScoresError::NoNumber { line: *line, person: person.clone(), got: cell.clone() })?;
                // -0 is 0.
                number_of.insert(cell.clone(), number + 0.0);
            }
        }
    }
    let (categories, values): (Vec<String>, Vec<f64>) = if scale == ScoreScale::Names {
        let names: BTreeSet<&String> = rows.iter().flat_map(|(_, r)| r).filter(|c| given(c)).collect();
        if names.len() > MOST_CATEGORIES {
            return Err(ScoresError::TooManyNames);
        }
        names.into_iter().enumerate().map(|(i, n)| (n.clone(), i as f64)).unzip()
    } else {
        let mut numbers: Vec<f64> = number_of.values().copied().collect();
        numbers.sort_by(f64::total_cmp);
        numbers.dedup();
        numbers.into_iter().map(|v| (v.to_string(), v)).unzip()
    };
    let place = |cell: &String| -> Option<usize> {
        match number_of.get(cell) {
            Some(number) => values.iter().position(|v| v == number),
            None => categories.binary_search(cell).ok().filter(|_| given(cell)),
        }
    };
    let by_person = (0..wanted).map(|p| rows.iter().map(|(_, r)| place(&r[p])).collect()).collect();
    Ok(Scores { people, categories, by_person, values })
}
