//! The best placing: proven for small boards, the best found for large ones.
//!
//! Source: tabu search for a good placing, then branch and bound to better or prove it (see `tabu`, `exact`).

use super::exact;
use super::problem::{PlacingError, Problem};
use super::tabu;

/// How hard to search.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Effort {
    /// Try for a proof where at most this many words are free.
    pub prove_up_to: usize,
    /// Partial placings a proof may look at.
    pub nodes: u64,
    /// Starts of the tabu search.
    pub starts: u32,
    /// Rounds of each; fewer on boards so large that they would take long.
    pub rounds: u32,
    /// Seed of the random starts.
    pub seed: u64,
}

impl Default for Effort {
    fn default() -> Self {
        Self { prove_up_to: 12, nodes: 25_000, starts: 4, rounds: 4000, seed: 1 }
    }
}

/// How good a placing is known to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Proof {
    /// No placing costs less.
    Best {
        /// Partial placings looked at to know that.
        nodes: u64,
    },
    /// The best that was found; none can cost less than the bound.
    Found {
        /// A cost no placing can beat.
        bound: f64,
        /// Partial placings looked at in a proof that was not finished; 0 where none was tried.
        nodes: u64,
    },
}

/// A placing with its cost.
#[derive(Debug, Clone, PartialEq)]
pub struct Placing {
    /// Place of each word.
    pub places: Vec<usize>,
    /// Its cost.
    pub cost: f64,
    /// How good it is known to be.
    pub proof: Proof,
}

/// Places the words, from `start` where one is known (the board as it is).
///
/// # Errors
/// [`PlacingError`] for a start that is no placing or moves a fixed word.
///
/// ```
/// use sayso_methods::board::{Effort, Problem, Proof, solve};
/// let flow = vec![vec![0.0, 5.0, 1.0], vec![5.0, 0.0, 0.0], vec![1.0, 0.0, 0.0]];
/// let in_a_row = vec![vec![0.0, 1.0, 2.0], vec![1.0, 0.0, 1.0], vec![2.0, 1.0, 0.0]];
/// let found = solve(&Problem::new(3, 3)?.with_flow(&flow, &in_a_row)?, None, &Effort::default())?;
/// assert_eq!(found.cost, 12.0); // the first word in the middle
/// assert!(matches!(found.proof, Proof::Best { .. }));
/// # Ok::<(), sayso_methods::board::PlacingError>(())
/// ```
pub fn solve(problem: &Problem, start: Option<&[usize]>, effort: &Effort) -> Result<Placing, PlacingError> {
    let start = match start {
        Some(given) => {
            problem.cost(given)?;
            let moved = problem.fixed.iter().zip(given).position(|(fixed, at)| fixed.is_some_and(|f| f != *at));
            if let Some(word) = moved {
                return Err(PlacingError::Place { word, place: given[word] });
            }
            given.to_vec()
        }
        None => tabu::first_placing(problem),
    };
    let free = problem.fixed.iter().filter(|f| f.is_none()).count();
    let mut places = tabu::search(problem, &start, effort.starts, effort.rounds, effort.seed);
    let mut cost = problem.sum(&places);
    // A single look at the whole gives the bound even where a proof is out of reach.
    let nodes = if free <= effort.prove_up_to { effort.nodes.max(1) } else { 1 };
    let searched = exact::search(problem, cost, nodes);
    if let Some((better, placing)) = searched.better {
        (cost, places) = (better, placing);
    }
    let proof = if searched.finished {
        Proof::Best { nodes: searched.nodes }
    } else {
        let nodes = if nodes > 1 { searched.nodes } else { 0 };
        Proof::Found { bound: searched.root_bound.min(cost), nodes }
    };
    Ok(Placing { places, cost, proof })
}
