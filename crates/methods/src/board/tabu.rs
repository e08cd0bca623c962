//! A good placing quickly: tabu search.
//!
//! Source: robust tabu search, E. Taillard (1991), Parallel Computing 17:443, with its updating of the changes; empty
//! places count as words nobody says, and there are several starts. Deterministic for a seed.

use super::bound::Open;
use super::problem::Problem;
use rand::seq::SliceRandom;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

// Swaps weighed in one search at most (times layers); large boards get fewer rounds, so that the answer comes at once.
const MOST_SWAPS: usize = 40_000_000;

/// Searches from `start` and from random placings; gives the cheapest placing met.
pub(super) fn search(problem: &Problem, start: &[usize], starts: u32, rounds: u32, seed: u64) -> Vec<usize> {
    let board = FreeBoard::of(problem);
    if board.words.len() < 2 && board.units < 2 {
        return start.to_vec();
    }
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let swaps = board.units * board.words.len().max(1) * starts.max(1) as usize * board.layers.len().max(1);
    let rounds = (rounds as usize).min(MOST_SWAPS / swaps + 1) as u32;
    let mut best = board.units_at(start);
    let mut least = board.cost(&best);
    for run in 0..starts {
        let mut from = board.units_at(start);
        if run > 0 {
            from.shuffle(&mut rng);
        }
        let found = board.run(from, rounds, &mut rng);
        let cost = board.cost(&found);
        if cost < least {
            (least, best) = (cost, found);
        }
    }
    let mut placing = start.to_vec();
    for (word, at) in board.words.iter().zip(&best) {
        placing[*word] = board.places[*at];
    }
    placing
}

/// Words in order on the free places, fixed ones where they are.
pub(super) fn first_placing(problem: &Problem) -> Vec<usize> {
    let mut free = (0..problem.places).filter(|p| !problem.fixed.contains(&Some(*p)));
    // There are at least as many free places as free words, so the fallback is never taken.
    problem.fixed.iter().map(|f| f.or_else(|| free.next()).unwrap_or(0)).collect()
}

// Flow between units and distance between places, both row by row.
struct Tables {
    flow: Vec<f64>,
    distance: Vec<f64>,
    // Both column by column, where one of them differs from what it is row by row.
    turned: Option<(Vec<f64>, Vec<f64>)>,
}

impl Tables {
    fn new(flow: Vec<f64>, distance: Vec<f64>, n: usize) -> Self {
        let turn = |table: &[f64]| -> Vec<f64> { (0..n * n).map(|at| table[at % n * n + at / n]).collect() };
        let turned = (turn(&flow), turn(&distance));
        let turned = (turned.0 != flow || turned.1 != distance).then_some(turned);
        Self { flow, distance, turned }
    }
}

// The free words and places only, with as many units as places: the words, then the empty ones.
struct FreeBoard {
    words: Vec<usize>,
    places: Vec<usize>,
    units: usize,
    layers: Vec<Tables>,
    // Cost of a unit at a place, with all it has to do with fixed words.
    alone: Vec<f64>,
}

impl FreeBoard {
    fn of(problem: &Problem) -> Self {
        let open = Open::new(problem);
        let (words, places) = open.free();
        let units = places.len();
        let mut alone = vec![0.0; units * units];
        for (a, w) in words.iter().enumerate() {
            for (b, p) in places.iter().enumerate() {
                alone[a * units + b] = open.choice_at(*w, *p);
            }
        }
        let layer = |l: &super::problem::Layer| {
            let (mut flow, mut distance) = (vec![0.0; units * units], vec![0.0; units * units]);
            for (a, v) in words.iter().enumerate() {
                for (b, w) in words.iter().enumerate().filter(|(b, _)| *b != a) {
                    flow[a * units + b] = l.flow.at(*v, *w);
                }
            }
            for (a, p) in places.iter().enumerate() {
                for (b, q) in places.iter().enumerate() {
                    distance[a * units + b] = l.distance.at(*p, *q);
                }
            }
            Tables::new(flow, distance, units)
        };
        let layers = problem.layers.iter().map(layer).collect();
        Self { words, places, units, layers, alone }
    }

    fn units_at(&self, placing: &[usize]) -> Vec<usize> {
        let place = |p: usize| self.places.iter().position(|q| *q == p);
        let mut at: Vec<usize> = self.words.iter().filter_map(|w| place(placing[*w])).collect();
        let empty: Vec<usize> = (0..self.units).filter(|p| !at.contains(p)).collect();
        at.extend(empty);
        at
    }

    fn cost(&self, at: &[usize]) -> f64 {
        let n = self.units;
        let mut total: f64 = at.iter().enumerate().map(|(i, p)| self.alone[i * n + p]).sum();
        for Tables { flow, distance, .. } in &self.layers {
            for i in 0..self.words.len() {
                for j in 0..self.words.len() {
                    total += flow[i * n + j] * distance[at[i] * n + at[j]];
                }
            }
        }
        total
    }

    // Change of cost by a swap of two units.
    fn change(&self, at: &[usize], i: usize, j: usize) -> f64 {
        let (n, p, q) = (self.units, at[i], at[j]);
        let mut delta = self.alone[i * n + q] - self.alone[i * n + p] + self.alone[j * n + p] - self.alone[j * n + q];
        // Empty units have no flow.
        let at = &at[..self.words.len()];
        for Tables { flow: f, distance: d, turned } in &self.layers {
            let (to, from) = (&d[q * n..(q + 1) * n], &d[p * n..(p + 1) * n]);
            let out = differences(f, n, i, j).zip(at).map(|(flow, r)| flow * (to[*r] - from[*r]));
            let pairs = out.enumerate().filter(|(k, _)| *k != i && *k != j);
            match turned {
                // What comes back is what goes out.
                None => pairs.for_each(|(_, out)| delta += out + out),
                Some((f, d)) => pairs.for_each(|(k, out)| {
                    let r = at[k];
                    delta += out + (f[i * n + k] - f[j * n + k]) * (d[q * n + r] - d[p * n + r]);
                }),
            }
            delta += (f[i * n + j] - f[j * n + i]) * (d[q * n + p] - d[p * n + q]);
        }
        delta
    }

    // After u and v were swapped, the change by swapping i and j (neither is u or v) is what it was before plus, for
    // each of these pairs of lists, the product of the differences of their entries for i and j.
    fn updates(&self, at: &[usize], u: usize, v: usize) -> Vec<(Vec<f64>, Vec<f64>)> {
        let n = self.units;
        let mut lists = Vec::with_capacity(2 * self.layers.len());
        for Tables { flow: f, distance: d, .. } in &self.layers {
            let there = |i: usize| f[u * n + i] - f[v * n + i];
            let back = |i: usize| f[i * n + u] - f[i * n + v];
            let to = |i: usize| d[at[v] * n + at[i]] - d[at[u] * n + at[i]];
            let from = |i: usize| d[at[i] * n + at[v]] - d[at[i] * n + at[u]];
            lists.push(((0..n).map(there).collect(), (0..n).map(to).collect()));
            lists.push(((0..n).map(back).collect(), (0..n).map(from).collect()));
        }
        lists
    }

    // Brings the changes of all swaps up to date after one swap (or computes them all).
    fn refresh(&self, at: &[usize], deltas: &mut [f64], swapped: Option<(usize, usize)>) {
        let (n, words) = (self.units, self.words.len());
        let lists = swapped.map(|(u, v)| self.updates(at, u, v));
        for i in 0..words {
            let row = &mut deltas[i * n..(i + 1) * n];
            for (flow, way) in lists.iter().flatten() {
                let later = flow[i + 1..].iter().zip(&way[i + 1..]);
                for (cell, (f, w)) in row[i + 1..].iter_mut().zip(later) {
                    *cell += (flow[i] - f) * (way[i] - w);
                }
            }
            let all = swapped.is_none_or(|(u, v)| i == u || i == v);
            for j in i + 1..n {
                if all || swapped.is_some_and(|(u, v)| j == u || j == v) {
                    row[j] = self.change(at, i, j);
                }
            }
        }
    }

    fn run(&self, mut at: Vec<usize>, rounds: u32, rng: &mut ChaCha8Rng) -> Vec<usize> {
        let (n, words) = (self.units, self.words.len());
        let mut cost = self.cost(&at);
        let mut best = (cost, at.clone());
        let mut deltas = vec![0.0; words * n];
        // Round until which a unit may not return to a place, and since when it has not been there.
        let mut tabu = vec![0_u32; n * n];
        let tenure = (n * 9 / 10).max(1) as u32..=(n * 11 / 10 + 2) as u32;
        // A choice not made for so long is made now (the long-term part of the method).
        let patience = (3 * n * n) as u32;
        let mut swapped: Option<(usize, usize)> = None;
        for round in 1..=rounds {
            self.refresh(&at, &mut deltas, swapped);
            let mut chosen: Option<(bool, f64, usize, usize)> = None;
            for i in 0..words {
                for j in i + 1..n {
                    let delta = deltas[i * n + j];
                    // Only a choice overdue can come before a cheaper one, so most need no further look.
                    if chosen.is_some_and(|(urgent, least, ..)| delta >= least && (urgent || round <= patience)) {
                        continue;
                    }
                    let (back, forth) = (tabu[i * n + at[j]], tabu[j * n + at[i]]);
                    let allowed = back < round || forth < round;
                    let record = cost + delta < best.0 - 1e-9 * best.0.abs();
                    let overdue = round > patience && back < round - patience && forth < round - patience;
                    let urgent = record || overdue;
                    let better = chosen.is_none_or(|(u, d, ..)| (urgent && !u) || (urgent == u && delta < d));
                    if (allowed || urgent) && better {
                        chosen = Some((urgent, delta, i, j));
                    }
                }
            }
            // Where everything is barred, wait it out; the changes are then computed afresh.
            swapped = chosen.map(|(_, _, i, j)| (i, j));
            let Some((_, delta, i, j)) = chosen else { continue };
            tabu[i * n + at[i]] = round + rng.random_range(tenure.clone());
            tabu[j * n + at[j]] = round + rng.random_range(tenure.clone());
            at.swap(i, j);
            cost += delta;
            if cost < best.0 {
                // Summed afresh, so that rounding never builds up.
                cost = self.cost(&at);
                if cost < best.0 {
                    best = (cost, at.clone());
                }
            }
        }
        best.1
    }
}

// Row i less row j of a square table.
fn differences(table: &[f64], n: usize, i: usize, j: usize) -> impl Iterator<Item = f64> {
    table[i * n..(i + 1) * n].iter().zip(&table[j * n..(j + 1) * n]).map(|(a, b)| a - b)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn changes_are_differences_of_costs_also_when_updated() {
        let mut rng = ChaCha8Rng::seed_from_u64(7);
        let mut table = |rows: usize, columns: usize, low: f64| -> Vec<Vec<f64>> {
            (0..rows).map(|_| (0..columns).map(|_| rng.random_range(low..9.0)).collect()).collect()
        };
        let problem = Problem::new(5, 7).unwrap();
        let problem = problem.with_flow(&table(5, 5, -9.0), &table(7, 7, 0.0)).unwrap();
        let mut alike = |size: usize| {
            let mut both = table(size, size, 0.0);
            (0..size).for_each(|i| (0..i).for_each(|j| both[i][j] = both[j][i]));
            both
        };
        let problem = problem.with_flow(&alike(5), &alike(7)).unwrap();
        let problem = problem.with_place_cost(&table(5, 7, -9.0)).unwrap().with_fixed(2, 4).unwrap();
        let board = FreeBoard::of(&problem);
        assert_eq!((board.words.len(), board.units), (4, 6));
        assert!(board.layers[0].turned.is_some() && board.layers[1].turned.is_none());
        let before: Vec<usize> = vec![5, 0, 3, 1, 2, 4];
        let mut after = before.clone();
        after.swap(0, 4);
        for i in 0..4 {
            for j in i + 1..6 {
                let difference = |at: &[usize]| {
                    let mut then = at.to_vec();
                    then.swap(i, j);
                    board.cost(&then) - board.cost(at)
                };
                assert!((board.change(&before, i, j) - difference(&before)).abs() < 1e-9);
            }
        }
        let mut deltas = vec![0.0; 4 * 6];
        board.refresh(&before, &mut deltas, None);
        board.refresh(&after, &mut deltas, Some((0, 4)));
        let mut fresh = vec![0.0; 4 * 6];
        board.refresh(&after, &mut fresh, None);
        assert!(deltas.iter().zip(&fresh).all(|(a, b)| (a - b).abs() < 1e-9), "{deltas:?} {fresh:?}");
        assert!(deltas.iter().any(|d| d.abs() > 1.0));
        // The board's own cost differs from the problem's by what the fixed words cost among themselves, a constant.
        let placing = |at: &[usize]| {
            let mut all = first_placing(&problem);
            board.words.iter().zip(at).for_each(|(w, p)| all[*w] = board.places[*p]);
            all
        };
        let constant = |at: &[usize]| problem.sum(&placing(at)) - board.cost(at);
        assert!((constant(&before) - constant(&after)).abs() < 1e-9);
    }
}
