//! Fisher's exact test of a two-by-two table.
//!
//! Source: R. A. Fisher (1935), The Design of Experiments; two-sided by adding up every table no likelier than the one seen,
//! given the margins.

use super::{StatsError, Tail, binomial::TIE};
use statrs::function::gamma::ln_gamma;

/// Counts `[[a, b], [c, d]]`: a row a condition, a column an outcome.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TwoByTwo(pub [[u64; 2]; 2]);

/// Result of the test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FisherTest {
    /// p-value for the tail asked for.
    pub p: f64,
    /// Sample odds ratio ad/bc; `None` where it is 0/0, infinite when only bc is 0.
    pub odds_ratio: Option<f64>,
    /// Observations in the table.
    pub n: u64,
}

/// Most values of the first cell worked through one by one; beyond it a chi-square test would say the same.
const MOST_CELLS: u64 = 2_000_000;

impl TwoByTwo {
    /// The exact test. An empty margin gives p = 1: the table says nothing.
    ///
    /// # Errors
    /// [`StatsError::OutOfRange`] for a table so large that the first cell could take more than two million values.
    ///
    /// ```
    /// use sayso_methods::stats::{Tail, TwoByTwo};
    /// let tea = TwoByTwo([[3, 1], [1, 3]]);
    /// assert!((tea.fisher(Tail::TwoSided)?.p - 34.0 / 70.0).abs() < 1e-12);
    /// # Ok::<(), sayso_methods::stats::StatsError>(())
    /// ```
    pub fn fisher(self, tail: Tail) -> Result<FisherTest, StatsError> {
        let [[a, b], [c, d]] = self.0;
        let n = self.total()?;
        let support = Support::of(self.0);
        let weights = support.probabilities();
        let seen = (a - support.low) as usize;
        let p = match tail {
            Tail::Greater => weights.iter().skip(seen).sum(),
            Tail::Less => weights.iter().take(seen + 1).sum(),
            Tail::TwoSided => {
                let limit = weights.get(seen).copied().unwrap_or(0.0) * TIE;
                weights.iter().filter(|w| **w <= limit).sum::<f64>()
            }
        };
        let (ad, bc) = (a as f64 * d as f64, b as f64 * c as f64);
        let odds_ratio = if ad == 0.0 && bc == 0.0 { None } else { Some(ad / bc) };
        Ok(FisherTest { p: p.min(1.0), odds_ratio, n })
    }

    fn total(self) -> Result<u64, StatsError> {
        let total = self.0.iter().flatten().try_fold(0_u64, |sum, cell| sum.checked_add(*cell));
        let too_large =
            StatsError::OutOfRange { what: "table total", value: self.0.iter().flatten().map(|c| *c as f64).sum() };
        let n = total.ok_or(too_large)?;
        let support = Support::of(self.0);
        if support.high - support.low < MOST_CELLS { Ok(n) } else { Err(too_large) }
    }
}

/// The values the first cell may take, given the margins.
struct Support {
    low: u64,
    high: u64,
    row: u64,
    other: u64,
    column: u64,
}

impl Support {
    fn of([[a, b], [c, d]]: [[u64; 2]; 2]) -> Self {
        let (row, other, column) = (a + b, c + d, a + c);
        Self { low: column.saturating_sub(other), high: row.min(column), row, other, column }
    }

    /// Hypergeometric probabilities over the support.
    fn probabilities(&self) -> Vec<f64> {
        let choose =
            |n: u64, k: u64| ln_gamma(n as f64 + 1.0) - ln_gamma(k as f64 + 1.0) - ln_gamma((n - k) as f64 + 1.0);
        // Only differences matter, so the terms are chained from the first by ratios (exact to rounding).
        let mut logs = Vec::with_capacity((self.high - self.low + 1) as usize);
        let mut at = choose(self.row, self.low) + choose(self.other, self.column - self.low);
        for x in self.low..=self.high {
            logs.push(at);
            if x < self.high {
                let up = (self.row - x) as f64 * (self.column - x) as f64;
                let down = (x + 1) as f64 * (self.other + x + 1 - self.column) as f64;
                at += (up / down).ln();
            }
        }
        let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let mut weights: Vec<f64> = logs.iter().map(|l| (l - top).exp()).collect();
        let total: f64 = weights.iter().sum();
        weights.iter_mut().for_each(|w| *w /= total);
        weights
    }
}
