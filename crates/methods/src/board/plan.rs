//! A layout for a board: which word goes where, which words move, and why.
//!
//! Source: a quadratic assignment problem made of the wishes (see `wishes`), solved by `solve`. Cost of a layout:
//!
//! ```text
//! related x sum over pairs of degree x steps / longest way
//! + alike x sum over pairs of likeness x mixed-up(places)
//! + accident x sum over pairs of (mean share of presses + brushes seen) x brushed(places)
//! + reach x sum over words of share of presses x distance from the animal
//! + moving x sum over moved words of how well they are known
//! ```

use super::problem::PlacingError;
use super::setting::{Parts, Setting};
use super::solve::{Effort, Proof, solve};
use super::why::{Move, why};
use super::wishes::{BoardWord, Degrees, Grid, Wishes};
use sayso_model::Place;

/// Why no layout was made.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PlanError {
    /// The grid is empty or larger than 20 by 20.
    #[error("a board has 1 to 20 rows and columns, not {rows} by {columns}")]
    Grid {
        /// Rows.
        rows: u8,
        /// Columns.
        columns: u8,
    },
    /// A figure of a word that cannot be right.
    #[error("the {what} of word {word} cannot be {value}")]
    Word {
        /// Which word.
        word: usize,
        /// Which figure.
        what: &'static str,
        /// The figure.
        value: f64,
    },
    /// A word is on a place the board does not have, or two are on one.
    #[error("word {0} is where the board has no place, or where another word is")]
    At(usize),
    /// A pair of words that are no pair, or a degree outside 0 to 1.
    #[error("words {a} and {b} with degree {degree} make no pair")]
    Pair {
        /// One word.
        a: usize,
        /// The other.
        b: usize,
        /// The degree.
        degree: f64,
    },
    /// A weight that is negative or not a number.
    #[error("the weight {0} makes no sense")]
    Weight(f64),
    /// There are more words than places.
    #[error(transparent)]
    Placing(#[from] PlacingError),
}

/// A layout.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// Place of each word.
    pub places: Vec<Place>,
    /// Its cost.
    pub cost: Parts,
    /// Cost of the best layout in which every word on the board stays (only new ones are placed), for comparison; none
    /// where no word is on the board yet.
    pub if_none_move: Option<Parts>,
    /// Words on the board that move, with the reason.
    pub moves: Vec<Move>,
    /// Whether the layout is proven best or the best found (in the units of `cost`).
    pub proof: Proof,
}

/// Lays a board out. A known word moves only if that saves more than moving it costs.
///
/// # Errors
/// [`PlanError`] for a grid, a word or a wish that makes no sense, or too few places.
///
/// ```
/// use sayso_methods::board::{BoardWord, Effort, Grid, Wishes, plan};
/// let word = |says: &str| BoardWord { says: says.into(), presses: 5.0, known: 0.0, at: None, stays: false };
/// let grid = Grid { rows: 1, columns: 4, closed: vec![] };
/// let found = plan(&[word("tug"), word("hug"), word("water")], &grid, &Wishes::default(), &Effort::default())?;
/// let apart = found.places[0].column.abs_diff(found.places[1].column);
/// assert!(apart >= 2); // two words that sound alike are not side by side
/// # Ok::<(), sayso_methods::board::PlanError>(())
/// ```
pub fn plan(words: &[BoardWord], grid: &Grid, wishes: &Wishes, effort: &Effort) -> Result<Plan, PlanError> {
    check(words, grid, wishes)?;
    let places = grid.places();
    let index = |at: Place| places.iter().position(|p| *p == at);
    let now: Vec<Option<usize>> = words.iter().map(|w| w.at.and_then(index)).collect();
    for (i, word) in words.iter().enumerate() {
        let known = now[i].is_some() || word.at.is_none();
        if !known || (now[i].is_some() && now[..i].contains(&now[i])) {
            return Err(PlanError::At(i));
        }
    }
    let setting = Setting { words, grid, wishes, degrees: Degrees::of(words, wishes), places };
    let mut staying = setting.problem()?;
    let mut problem = staying.clone();
    for (i, at) in now.iter().enumerate() {
        if let Some(at) = at {
            staying = staying.with_fixed(i, *at)?;
            if words[i].stays {
                problem = problem.with_fixed(i, *at)?;
            }
        }
    }
    let stay = solve(&staying, None, effort)?;
    // Where all that is on the board must stay, or nothing is on it, the two are one problem.
    let found = if staying == problem { stay.clone() } else { solve(&problem, Some(&stay.places), effort)? };
    let at = |chosen: &[usize]| -> Vec<Place> { chosen.iter().map(|p| setting.places[*p]).collect() };
    let (before, after) = (at(&stay.places), at(&found.places));
    let moves = (0..words.len())
        .filter(|i| now[*i].is_some() && before[*i] != after[*i])
        .map(|i| why(&setting, i, &before, &after))
        .collect();
    Ok(Plan {
        cost: setting.parts(&after),
        if_none_move: now.iter().any(Option::is_some).then(|| setting.parts(&before)),
        places: after,
        moves,
        proof: found.proof,
    })
}

fn check(words: &[BoardWord], grid: &Grid, wishes: &Wishes) -> Result<(), PlanError> {
    let side = 1..=20;
    if !side.contains(&grid.rows) || !side.contains(&grid.columns) {
        return Err(PlanError::Grid { rows: grid.rows, columns: grid.columns });
    }
    for (i, word) in words.iter().enumerate() {
        if !(0.0..=1e6).contains(&word.presses) {
            return Err(PlanError::Word { word: i, what: "presses a day", value: word.presses });
        }
        if !(0.0..=1.0).contains(&word.known) {
            return Err(PlanError::Word { word: i, what: "degree to which it is known", value: word.known });
        }
    }
    for pair in wishes.related.iter().chain(&wishes.brushed).chain(&wishes.heard_alike) {
        let (a, b, degree) = (pair.a, pair.b, pair.degree);
        if a == b || a >= words.len() || b >= words.len() || !(0.0..=1.0).contains(&degree) {
            return Err(PlanError::Pair { a, b, degree });
        }
    }
    let w = &wishes.weights;
    let weights = [w.related, w.alike, w.accident, w.reach, w.moving];
    match weights.into_iter().find(|w| !(0.0..=1e6).contains(w)) {
        Some(weight) => Err(PlanError::Weight(weight)),
        None => Ok(()),
    }
}
