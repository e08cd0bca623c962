//! Lower bounds of a partly decided placing.
//!
//! Sources: P. C. Gilmore (1962), J SIAM 10:305; E. L. Lawler (1963), Management Science 9:586. The linear assignment
//! inside: H. W. Kuhn (1955), Naval Research Logistics Quarterly 2:83, in the shortest augmenting path form.

use super::problem::{Problem, Table};

/// Places and words not decided yet, with what the decided ones cost each choice.
#[derive(Clone)]
pub(super) struct Open {
    /// Place of each decided word.
    pub(super) placed: Vec<Option<usize>>,
    free_place: Vec<bool>,
    /// Cost of the decided words among themselves.
    pub(super) base: f64,
    /// Cost of a free word at a free place, itself and against the decided words.
    choice: Table,
}

/// A bound, with the reduced cost of every choice left.
pub(super) struct Bound {
    /// No completion costs less.
    pub(super) value: f64,
    /// Free words.
    pub(super) words: Vec<usize>,
    /// Free places.
    pub(super) places: Vec<usize>,
    /// A completion that puts the free word at the free place costs at least `value` plus this.
    pub(super) reduced: Table,
    /// Place (index into `places`) of each free word in the assignment behind the bound.
    pub(super) assigned: Vec<usize>,
}

impl Open {
    pub(super) fn new(problem: &Problem) -> Self {
        let mut choice = problem.at_place.clone();
        for layer in &problem.layers {
            for word in 0..problem.words {
                for place in 0..problem.places {
                    *choice.at_mut(word, place) += layer.flow.at(word, word) * layer.distance.at(place, place);
                }
            }
        }
        let mut open =
            Self { placed: vec![None; problem.words], free_place: vec![true; problem.places], base: 0.0, choice };
        for (word, place) in problem.fixed.iter().enumerate() {
            if let Some(place) = place {
                open.decide(problem, word, *place);
            }
        }
        open
    }

    /// Words and places still free.
    pub(super) fn free(&self) -> (Vec<usize>, Vec<usize>) {
        let words = (0..self.placed.len()).filter(|w| self.placed[*w].is_none()).collect();
        let places = (0..self.free_place.len()).filter(|p| self.free_place[*p]).collect();
        (words, places)
    }

    /// Cost of a free word at a free place, itself and against the decided words.
    pub(super) fn choice_at(&self, word: usize, place: usize) -> f64 {
        self.choice.at(word, place)
    }

    /// Puts a free word at a free place.
    pub(super) fn decide(&mut self, problem: &Problem, word: usize, place: usize) {
        self.base += self.choice.at(word, place);
        self.placed[word] = Some(place);
        self.free_place[place] = false;
        for layer in &problem.layers {
            for other in (0..problem.words).filter(|o| self.placed[*o].is_none()) {
                let (there, back) = (layer.flow.at(other, word), layer.flow.at(word, other));
                for q in (0..problem.places).filter(|q| self.free_place[*q]) {
                    *self.choice.at_mut(other, q) +=
                        there * layer.distance.at(q, place) + back * layer.distance.at(place, q);
                }
            }
        }
    }

    /// The bound of everything left open.
    pub(super) fn bound(&self, problem: &Problem, order: &Order) -> Bound {
        let (words, places) = self.free();
        let mut cost = Table::zero(words.len(), places.len());
        for (a, w) in words.iter().enumerate() {
            for (b, p) in places.iter().enumerate() {
                *cost.at_mut(a, b) = self.choice.at(*w, *p);
            }
        }
        for (layer, LayerOrder { flows, distances }) in problem.layers.iter().zip(&order.0) {
            let near: Vec<Vec<f64>> = places
                .iter()
                .map(|p| {
                    distances[*p].iter().filter(|q| self.free_place[**q]).map(|q| layer.distance.at(*p, *q)).collect()
                })
                .collect();
            for (a, w) in words.iter().enumerate() {
                let out: Vec<f64> =
                    flows[*w].iter().filter(|v| self.placed[**v].is_none()).map(|v| layer.flow.at(*w, *v)).collect();
                for (b, near) in near.iter().enumerate() {
                    *cost.at_mut(a, b) += least_product(&out, near);
                }
            }
        }
        let (value, assigned) = assign(&mut cost, words.len());
        Bound { value: self.base + value, words, places, reduced: cost, assigned }
    }
}

/// For each layer, the orders its bound needs.
pub(super) struct Order(Vec<LayerOrder>);

struct LayerOrder {
    // The other words of each word by falling flow.
    flows: Vec<Vec<usize>>,
    // The other places of each place by rising distance.
    distances: Vec<Vec<usize>>,
}

impl Order {
    pub(super) fn of(problem: &Problem) -> Self {
        let sorted = |table: &Table, size: usize, sign: f64| -> Vec<Vec<usize>> {
            let one = |i: usize| {
                let mut others: Vec<usize> = (0..size).filter(|j| *j != i).collect();
                others.sort_by(|a, b| (sign * table.at(i, *a)).total_cmp(&(sign * table.at(i, *b))));
                others
            };
            (0..size).map(one).collect()
        };
        let layer = |l: &super::problem::Layer| LayerOrder {
            flows: sorted(&l.flow, problem.words, -1.0),
            distances: sorted(&l.distance, problem.places, 1.0),
        };
        Self(problem.layers.iter().map(layer).collect())
    }
}

// Least sum of products of falling flows with as many of the rising distances: the positive ones meet the shortest,
// the negative ones the longest.
fn least_product(falling: &[f64], rising: &[f64]) -> f64 {
    let positive = falling.iter().take_while(|f| **f > 0.0).count();
    let near: f64 = falling[..positive].iter().zip(rising).map(|(f, d)| f * d).sum();
    let far: f64 = falling[positive..].iter().rev().zip(rising.iter().rev()).map(|(f, d)| f * d).sum();
    near + far
}

/// Least-cost assignment of `rows` rows to columns (at least as many). Gives its cost and the column of each row, and
/// turns the table into its reduced costs (0 where assigned).
pub(super) fn assign(cost: &mut Table, rows: usize) -> (f64, Vec<usize>) {
    let columns = cost.columns;
    let (mut u, mut v) = (vec![0.0; rows + 1], vec![0.0; columns + 1]);
    // Row (from 1) in each column (from 1); column 0 holds the row being placed.
    let mut row_in = vec![0_usize; columns + 1];
    for row in 1..=rows {
        row_in[0] = row;
        let (mut least, mut from) = (vec![f64::INFINITY; columns + 1], vec![0_usize; columns + 1]);
        let mut done = vec![false; columns + 1];
        let mut column = 0;
        loop {
            done[column] = true;
            let here = row_in[column];
            let (mut step, mut next) = (f64::INFINITY, 0);
            for j in (1..=columns).filter(|j| !done[*j]) {
                let reduced = cost.at(here - 1, j - 1) - u[here] - v[j];
                if reduced < least[j] {
                    least[j] = reduced;
                    from[j] = column;
                }
                if least[j] < step {
                    step = least[j];
                    next = j;
                }
            }
            for j in 0..=columns {
                if done[j] {
                    u[row_in[j]] += step;
                    v[j] -= step;
                } else {
                    least[j] -= step;
                }
            }
            column = next;
            if row_in[column] == 0 {
                break;
            }
        }
        while column != 0 {
            row_in[column] = row_in[from[column]];
            column = from[column];
        }
    }
    let mut assigned = vec![0; rows];
    let mut total = 0.0;
    for j in 1..=columns {
        if row_in[j] > 0 {
            assigned[row_in[j] - 1] = j - 1;
            total += cost.at(row_in[j] - 1, j - 1);
        }
    }
    for row in 0..rows {
        for column in 0..columns {
            let reduced = cost.at(row, column) - u[row + 1] - v[column + 1];
            *cost.at_mut(row, column) = reduced.max(0.0);
        }
    }
    (total, assigned)
}
