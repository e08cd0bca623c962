//! Exact test over several two-by-two tables that keeps each table's margins: one table a session (or other stratum).
//!
//! Sources: Gart 1970, Biometrika 57:471, and Mehta, Patel & Gray 1985, J Am Stat Assoc 80:969 (the sum of independent
//! hypergeometric counts, here convolved in full); common odds ratio: Mantel & Haenszel 1959, J Natl Cancer Inst 22:719.
//! Page: `docs/methods/understanding.md`.

use super::UnderstandingError;
use crate::stats::{Tail, TwoByTwo};

/// Result over all strata.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StratifiedTest {
    /// p for the tail asked for; 1 if no stratum can say anything. Anything below 1e-50 is given as 1e-50.
    pub p: f64,
    /// Sum of the first cells.
    pub observed: u64,
    /// Its expectation by chance, margins kept.
    pub expected: f64,
    /// The smallest p these margins could have given (for the two-sided test, of the rarer end): if it is above the
    /// level of the test, nothing could have been found.
    pub least_p: f64,
    /// Mantel-Haenszel common odds ratio; `None` for 0/0, infinite where only the denominator is 0.
    pub odds_ratio: Option<f64>,
    /// Strata in which the first cell could vary.
    pub informative: usize,
    /// Observations in those strata.
    pub n: u64,
}

/// Outcomes no likelier than this many times the one seen count as ties (rounding).
const TIE: f64 = 1.0 + 1e-7;
/// Probabilities below this are left out of the running distribution.
const NEGLIGIBLE: f64 = 1e-60;
/// Least p given, well above what the probabilities left out can add up to.
const LEAST: f64 = 1e-50;

/// Tests whether the first cell is larger (or smaller) than chance, over all tables `[[a, b], [c, d]]` together.
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] if the first cells could sum to more than ten million.
///
/// ```
/// use sayso_methods::understanding::exact::stratified_exact;
/// use sayso_methods::stats::{Tail, TwoByTwo};
/// // One table is Fisher's exact test.
/// let one = stratified_exact(&[TwoByTwo([[3, 1], [1, 3]])], Tail::Greater)?;
/// assert!((one.p - 17.0 / 70.0).abs() < 1e-12);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn stratified_exact(tables: &[TwoByTwo], tail: Tail) -> Result<StratifiedTest, UnderstandingError> {
    let (mut observed, mut expected, mut n, mut informative) = (0u64, 0.0, 0u64, 0usize);
    let (mut top, mut bottom) = (0.0, 0.0);
    // Running distribution of the sum, from `low` up.
    let (mut low, mut weights) = (0u64, vec![1.0f64]);
    let mut widest = 0u64;
    for table in tables {
        let [[a, b], [c, d]] = table.0.map(|row| row.map(u128::from));
        let total = a + b + c + d;
        let (row, column) = (a + b, a + c);
        let (least, most) = ((row + column).saturating_sub(total), row.min(column));
        if least == most {
            continue;
        }
        let too_large = UnderstandingError::OutOfRange { what: "observations in a stratum", value: total as f64 };
        widest = widest.saturating_add(u64::try_from(most - least).map_err(|_| too_large)?);
        if widest > 10_000_000 || total > 1 << 40 {
            return Err(too_large);
        }
        informative += 1;
        observed += table.0[0][0];
        n += total as u64;
        let size = total as f64;
        expected += row as f64 * column as f64 / size;
        top += a as f64 * d as f64 / size;
        bottom += b as f64 * c as f64 / size;
        let one = hypergeometric(row as u64, column as u64, total as u64);
        low += least as u64;
        weights = convolve(&weights, &one);
        // Drop ends too small to matter, so that ten years of sessions stay quick.
        let first = weights.iter().position(|w| *w >= NEGLIGIBLE).unwrap_or(0);
        let last = weights.iter().rposition(|w| *w >= NEGLIGIBLE).unwrap_or(weights.len() - 1);
        weights = weights[first..=last].to_vec();
        low += first as u64;
    }
    if informative == 0 {
        let none = StratifiedTest { p: 1.0, observed, expected, least_p: 1.0, odds_ratio: None, informative, n };
        return Ok(none);
    }
    let upper = |from: u64| weights.iter().skip(from.saturating_sub(low) as usize).sum::<f64>();
    let lower = |to: u64| weights.iter().take((to + 1).saturating_sub(low) as usize).sum::<f64>();
    let seen = observed.checked_sub(low).and_then(|at| weights.get(at as usize)).copied().unwrap_or(0.0);
    let ends = (weights[0], weights[weights.len() - 1]);
    let (p, least_p) = match tail {
        Tail::Greater => (upper(observed), ends.1),
        Tail::Less => (lower(observed), ends.0),
        Tail::TwoSided => {
            (weights.iter().filter(|w| **w <= seen * TIE).sum(), if ends.0 < ends.1 { ends.0 } else { ends.1 })
        }
    };
    let odds_ratio = (top > 0.0 || bottom > 0.0).then(|| top / bottom);
    Ok(StratifiedTest {
        p: p.clamp(LEAST, 1.0),
        observed,
        expected,
        least_p: least_p.clamp(LEAST, 1.0),
        odds_ratio,
        informative,
        n,
    })
}

/// Probabilities of the first cell from its least to its greatest value, by the ratio of neighbours from the mode.
fn hypergeometric(row: u64, column: u64, total: u64) -> Vec<f64> {
    let least = (row + column).saturating_sub(total);
    let most = row.min(column);
    // P(a + 1) / P(a); the last factor in floating point because total - row - column may be below zero.
    let ratio = |a: u64| {
        let d = total as f64 - row as f64 - column as f64 + (a + 1) as f64;
        (row - a) as f64 * (column - a) as f64 / ((a + 1) as f64 * d)
    };
    let width = (most - least + 1) as usize;
    let mode = (((row + 1) as f64 * (column + 1) as f64 / (total + 2) as f64) as u64).clamp(least, most);
    let mut weights = vec![0.0; width];
    let centre = (mode - least) as usize;
    weights[centre] = 1.0;
    for at in centre + 1..width {
        weights[at] = weights[at - 1] * ratio(least + at as u64 - 1);
    }
    for at in (0..centre).rev() {
        weights[at] = weights[at + 1] / ratio(least + at as u64);
    }
    let sum: f64 = weights.iter().sum();
    weights.iter_mut().for_each(|w| *w /= sum);
    weights
}

fn convolve(long: &[f64], short: &[f64]) -> Vec<f64> {
    let mut out = vec![0.0; long.len() + short.len() - 1];
    for (shift, weight) in short.iter().enumerate().filter(|(_, weight)| **weight > 0.0) {
        for (slot, value) in out[shift..].iter_mut().zip(long) {
            *slot += weight * value;
        }
    }
    out
}
