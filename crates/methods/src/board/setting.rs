//! What a layout costs: the wishes of a board, weighed, for one word, a pair, or all.

use super::problem::{PlacingError, Problem};
use super::wishes::{BoardWord, Degrees, Grid, Wishes, brushed, mixed_up, reach, steps};
use sayso_model::Place;

/// The cost of a layout, wish by wish (already weighted); lower is better.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Parts {
    /// Related words far from each other.
    pub related: f64,
    /// Words that sound alike near each other.
    pub alike: f64,
    /// Words a paw may brush by accident side by side.
    pub accident: f64,
    /// Words used often out of reach.
    pub reach: f64,
    /// Known words moved.
    pub moving: f64,
}

impl Parts {
    /// The whole cost.
    pub fn total(&self) -> f64 {
        self.related + self.alike + self.accident + self.reach + self.moving
    }
}

/// Everything a cost depends on.
pub(super) struct Setting<'a> {
    pub(super) words: &'a [BoardWord],
    pub(super) grid: &'a Grid,
    pub(super) wishes: &'a Wishes,
    pub(super) degrees: Degrees,
    pub(super) places: Vec<Place>,
}

impl Setting<'_> {
    pub(super) fn problem(&self) -> Result<Problem, PlacingError> {
        let between = |f: &dyn Fn(Place, Place) -> f64| -> Vec<Vec<f64>> {
            self.places.iter().map(|p| self.places.iter().map(|q| f(*p, *q)).collect()).collect()
        };
        let alone: Vec<Vec<f64>> = (0..self.words.len())
            .map(|i| {
                let cost = |p: &Place| {
                    let parts = self.alone(i, *p);
                    parts.reach + parts.moving
                };
                self.places.iter().map(cost).collect()
            })
            .collect();
        let weighted = |table: &[Vec<f64>], weight: f64| -> Vec<Vec<f64>> {
            // Each pair is counted from both sides.
            table.iter().map(|row| row.iter().map(|d| weight * d / 2.0).collect()).collect()
        };
        let (d, w, way) = (&self.degrees, &self.wishes.weights, self.longest_way());
        Problem::new(self.words.len(), self.places.len())?
            .with_flow(&weighted(&d.related, w.related), &between(&|p, q| steps(p, q) / way))?
            .with_flow(&weighted(&d.alike, w.alike), &between(&mixed_up))?
            .with_flow(&weighted(&d.accident, w.accident), &between(&brushed))?
            .with_place_cost(&alone)
    }

    pub(super) fn longest_way(&self) -> f64 {
        f64::from(self.grid.rows - 1).hypot(f64::from(self.grid.columns - 1)).max(1.0)
    }

    // Cost of one word by itself.
    pub(super) fn alone(&self, i: usize, at: Place) -> Parts {
        let moved = self.words[i].at.is_some_and(|now| now != at);
        Parts {
            reach: self.wishes.weights.reach * self.degrees.use_share[i] * reach(self.grid, at),
            moving: if moved { self.wishes.weights.moving * self.words[i].known } else { 0.0 },
            ..Parts::default()
        }
    }

    /// Cost of a pair of words.
    pub(super) fn pair(&self, i: usize, j: usize, p: Place, q: Place) -> Parts {
        let (d, w) = (&self.degrees, &self.wishes.weights);
        Parts {
            related: w.related * d.related[i][j] * steps(p, q) / self.longest_way(),
            alike: w.alike * d.alike[i][j] * mixed_up(p, q),
            accident: w.accident * d.accident[i][j] * brushed(p, q),
            ..Parts::default()
        }
    }

    /// Cost of one word with all the others, wish by wish.
    pub(super) fn of_word(&self, i: usize, at: &[Place]) -> Parts {
        let pairs = (0..at.len()).filter(|j| *j != i).map(|j| self.pair(i, j, at[i], at[j]));
        std::iter::once(self.alone(i, at[i])).chain(pairs).fold(Parts::default(), plus)
    }

    pub(super) fn parts(&self, at: &[Place]) -> Parts {
        let alone = (0..at.len()).map(|i| self.alone(i, at[i]));
        let pairs = (0..at.len()).flat_map(|i| (0..i).map(move |j| (i, j)));
        let pairs = pairs.map(|(i, j)| self.pair(i, j, at[i], at[j]));
        alone.chain(pairs).fold(Parts::default(), plus)
    }
}

fn plus(a: Parts, b: Parts) -> Parts {
    Parts {
        related: a.related + b.related,
        alike: a.alike + b.alike,
        accident: a.accident + b.accident,
        reach: a.reach + b.reach,
        moving: a.moving + b.moving,
    }
}
