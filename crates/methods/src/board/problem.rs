//! The quadratic assignment problem of a board: every word to a place of its own, so that the sum of flows times distances is least.
//!
//! Source: T. C. Koopmans & M. Beckmann (1957), Econometrica 25:53, with several pairs of flow and distance added up, a cost of
//! a word at a place, fixed words, and more places than words.

/// A placing problem that makes no sense.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PlacingError {
    /// More words than places.
    #[error("{words} words need as many places, there are {places}")]
    TooFewPlaces {
        /// Words.
        words: usize,
        /// Places.
        places: usize,
    },
    /// A table of the wrong size.
    #[error("the table of {what} has the wrong size")]
    Size {
        /// Which table.
        what: &'static str,
    },
    /// A value that is not a finite number, or a negative distance.
    #[error("a {what} of {value} makes no sense")]
    Value {
        /// Which table.
        what: &'static str,
        /// The value.
        value: f64,
    },
    /// No such word or place, or one used twice.
    #[error("word {word} can not be at place {place}: no such word or place, or already taken")]
    Place {
        /// The word.
        word: usize,
        /// The place.
        place: usize,
    },
    /// More places than the program takes.
    #[error("{0} places are more than the {MOST_PLACES} this program takes")]
    TooMany(usize),
}

/// Most places of a problem.
pub const MOST_PLACES: usize = 400;

/// A square or rectangular table, row by row.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Table {
    pub(super) columns: usize,
    cells: Vec<f64>,
}

impl Table {
    pub(super) fn zero(rows: usize, columns: usize) -> Self {
        Self { columns, cells: vec![0.0; rows * columns] }
    }

    fn checked(what: &'static str, rows: &[Vec<f64>], height: usize, width: usize) -> Result<Self, PlacingError> {
        if rows.len() != height || rows.iter().any(|r| r.len() != width) {
            return Err(PlacingError::Size { what });
        }
        // Beyond this a sum of products could overflow.
        let senseless = |v: &&f64| !(v.abs() <= 1e100);
        match rows.iter().flatten().find(senseless) {
            Some(value) => Err(PlacingError::Value { what, value: *value }),
            None => Ok(Self { columns: width, cells: rows.concat() }),
        }
    }

    pub(super) fn at(&self, row: usize, column: usize) -> f64 {
        self.cells[row * self.columns + column]
    }

    pub(super) fn row(&self, row: usize) -> &[f64] {
        &self.cells[row * self.columns..(row + 1) * self.columns]
    }

    pub(super) fn at_mut(&mut self, row: usize, column: usize) -> &mut f64 {
        &mut self.cells[row * self.columns + column]
    }

    fn all(&self, f: impl Fn(f64) -> bool) -> bool {
        self.cells.iter().all(|v| f(*v))
    }

    fn is_symmetric(&self) -> bool {
        let n = self.columns;
        (0..n).all(|i| self.at(i, i) == 0.0 && (0..i).all(|j| self.at(i, j) == self.at(j, i)))
    }
}

#[derive(Debug, Clone, PartialEq)]
pub(super) struct Layer {
    pub(super) flow: Table,
    pub(super) distance: Table,
}

/// A placing problem: words, places, what flows between words, how far places are apart.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem {
    pub(super) words: usize,
    pub(super) places: usize,
    pub(super) layers: Vec<Layer>,
    pub(super) at_place: Table,
    pub(super) fixed: Vec<Option<usize>>,
}

impl Problem {
    /// `words` to put on `places`, without costs yet.
    ///
    /// # Errors
    /// [`PlacingError::TooFewPlaces`], [`PlacingError::TooMany`].
    pub fn new(words: usize, places: usize) -> Result<Self, PlacingError> {
        if words > places {
            return Err(PlacingError::TooFewPlaces { words, places });
        }
        if places > MOST_PLACES {
            return Err(PlacingError::TooMany(places));
        }
        Ok(Self { words, places, layers: Vec::new(), at_place: Table::zero(words, places), fixed: vec![None; words] })
    }

    /// Adds `sum over i, j of flow[i][j] * distance[place of i][place of j]`; diagonals count. Flows may be negative
    /// (wish to be apart), distances may not.
    ///
    /// # Errors
    /// [`PlacingError::Size`], [`PlacingError::Value`].
    pub fn with_flow(mut self, flow: &[Vec<f64>], distance: &[Vec<f64>]) -> Result<Self, PlacingError> {
        let layer = Layer {
            flow: Table::checked("flows", flow, self.words, self.words)?,
            distance: Table::checked("distances", distance, self.places, self.places)?,
        };
        if let Some(value) = distance.iter().flatten().find(|d| **d < 0.0) {
            return Err(PlacingError::Value { what: "distance", value: *value });
        }
        // Flows of nothing would only cost time.
        if !layer.flow.all(|f| f == 0.0) {
            self.layers.push(layer);
        }
        Ok(self)
    }

    /// Adds `sum over i of cost[i][place of i]`.
    ///
    /// # Errors
    /// [`PlacingError::Size`], [`PlacingError::Value`].
    pub fn with_place_cost(mut self, cost: &[Vec<f64>]) -> Result<Self, PlacingError> {
        let cost = Table::checked("place costs", cost, self.words, self.places)?;
        for word in 0..self.words {
            for place in 0..self.places {
                *self.at_place.at_mut(word, place) += cost.at(word, place);
            }
        }
        Ok(self)
    }

    /// Fixes a word at a place.
    ///
    /// # Errors
    /// [`PlacingError::Place`] for a word or place that does not exist or is fixed already.
    pub fn with_fixed(mut self, word: usize, place: usize) -> Result<Self, PlacingError> {
        if word >= self.words || place >= self.places || self.fixed[word].is_some() || self.fixed.contains(&Some(place))
        {
            return Err(PlacingError::Place { word, place });
        }
        self.fixed[word] = Some(place);
        Ok(self)
    }

    /// The cost of a placing: `placing[i]` is the place of word `i`.
    ///
    /// # Errors
    /// [`PlacingError::Size`] or [`PlacingError::Place`] for a placing that leaves a word out, or puts two at one place.
    pub fn cost(&self, placing: &[usize]) -> Result<f64, PlacingError> {
        if placing.len() != self.words {
            return Err(PlacingError::Size { what: "places of words" });
        }
        let mut taken = vec![false; self.places];
        for (word, &place) in placing.iter().enumerate() {
            match taken.get_mut(place) {
                Some(t) if !*t => *t = true,
                _ => return Err(PlacingError::Place { word, place }),
            }
        }
        Ok(self.sum(placing))
    }

    pub(super) fn sum(&self, placing: &[usize]) -> f64 {
        let mut total: f64 = placing.iter().enumerate().map(|(i, p)| self.at_place.at(i, *p)).sum();
        for layer in &self.layers {
            for (i, p) in placing.iter().enumerate() {
                let (flow, distance) = (layer.flow.row(i), layer.distance.row(*p));
                total += flow.iter().zip(placing).map(|(f, q)| f * distance[*q]).sum::<f64>();
            }
        }
        total
    }

    /// Two placings that differ in cost differ by at least this much; 0 where costs are not whole numbers.
    pub(super) fn step(&self) -> f64 {
        // Whole numbers stay exact in a double below 2^53; far below it here.
        let whole = |t: &Table| t.all(|v| v.fract() == 0.0 && v.abs() < 1e6);
        if !whole(&self.at_place) || !self.layers.iter().all(|l| whole(&l.flow) && whole(&l.distance)) {
            return 0.0;
        }
        let doubled = self.layers.iter().all(|l| l.flow.is_symmetric() && l.distance.is_symmetric());
        if doubled && self.at_place.all(|v| v == 0.0) { 2.0 } else { 1.0 }
    }
}
