//! The best placing for certain: depth-first branch and bound.
//!
//! Source: bound of Gilmore and Lawler (see `bound`); each step decides the word whose choices are the dearest (in the
//! manner of T. Mautor & C. Roucairol 1994, Discrete Applied Mathematics 55:281).

use super::bound::{Open, Order};
use super::problem::Problem;

/// How a search of everything ended.
pub(super) struct Searched {
    /// A placing better than the one known at the start, if there is one.
    pub(super) better: Option<(f64, Vec<usize>)>,
    /// Bound of the whole problem.
    pub(super) root_bound: f64,
    /// Partial placings looked at.
    pub(super) nodes: u64,
    /// Whether all were looked at or excluded.
    pub(super) finished: bool,
}

struct Search<'a> {
    problem: &'a Problem,
    order: Order,
    best: f64,
    better: Option<(f64, Vec<usize>)>,
    // A bound above `best - margin` cannot lead to anything better.
    margin: f64,
    nodes: u64,
    most_nodes: u64,
}

/// Looks for a placing cheaper than `known`, at most `most_nodes` partial placings.
pub(super) fn search(problem: &Problem, known: f64, most_nodes: u64) -> Searched {
    // Between whole-number costs nothing lies; otherwise rounding errors must not keep the search going for ever.
    let step = problem.step();
    let margin = if step > 0.0 { step - 1e-6 } else { 1e-9 * known.abs().max(1e-9) };
    let open = Open::new(problem);
    let order = Order::of(problem);
    let root_bound = open.bound(problem, &order).value;
    let mut search = Search { problem, order, best: known, better: None, margin, nodes: 0, most_nodes };
    let finished = search.visit(&open);
    Searched { better: search.better, root_bound, nodes: search.nodes, finished }
}

impl Search<'_> {
    fn hopeless(&self, bound: f64) -> bool {
        bound > self.best - self.margin
    }

    // False once the allowance of nodes is used up.
    fn visit(&mut self, open: &Open) -> bool {
        if self.nodes >= self.most_nodes {
            return false;
        }
        self.nodes += 1;
        let bound = open.bound(self.problem, &self.order);
        if self.hopeless(bound.value) {
            return true;
        }
        // The assignment behind the bound is itself a placing.
        let mut placing: Vec<usize> = open.placed.iter().map(|p| p.unwrap_or(0)).collect();
        for (w, at) in bound.words.iter().zip(&bound.assigned) {
            placing[*w] = bound.places[*at];
        }
        let cost = self.problem.sum(&placing);
        if cost < self.best {
            self.best = cost;
            self.better = Some((cost, placing));
        }
        let gap = self.best - bound.value;
        let dearness = |row: usize| bound.reduced.row(row).iter().map(|r| r.min(gap)).sum::<f64>();
        let rows = 0..bound.words.len();
        let Some(row) = rows.max_by(|a, b| dearness(*a).total_cmp(&dearness(*b))) else { return true };
        let mut choices: Vec<(f64, usize)> =
            bound.reduced.row(row).iter().copied().zip(bound.places.iter().copied()).collect();
        choices.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        for (extra, place) in choices {
            if self.hopeless(bound.value + extra) {
                break;
            }
            let mut child = open.clone();
            child.decide(self.problem, bound.words[row], place);
            if !self.visit(&child) {
                return false;
            }
        }
        true
    }
}
