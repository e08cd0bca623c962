//! Control of the false discovery rate over several tests.
//!
//! Source: Y. Benjamini & Y. Hochberg (1995), J R Stat Soc B 57:289. Assumes tests that are independent or positively dependent.

use super::StatsError;

/// What stands after the correction.
#[derive(Debug, Clone, PartialEq)]
pub struct Discoveries {
    /// Adjusted p-values, in the order given.
    pub adjusted: Vec<f64>,
    /// How many are rejected at the rate asked for.
    pub rejected: usize,
    /// Which are rejected, in the order given.
    pub is_rejected: Vec<bool>,
}

/// Adjusts `p` values and counts those rejected at false discovery rate `q`.
///
/// # Errors
/// [`StatsError::OutOfRange`] for a p or q outside 0..=1.
///
/// ```
/// use sayso_methods::stats::benjamini_hochberg;
/// let found = benjamini_hochberg(&[0.01, 0.04, 0.5], 0.05)?;
/// assert_eq!(found.rejected, 1);
/// assert!((found.adjusted[1] - 0.06).abs() < 1e-12);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn benjamini_hochberg(p: &[f64], q: f64) -> Result<Discoveries, StatsError> {
    for value in p.iter().chain([&q]) {
        if !(0.0..=1.0).contains(value) {
            return Err(StatsError::OutOfRange { what: "p-value or rate", value: *value });
        }
    }
    let m = p.len();
    let mut order: Vec<usize> = (0..m).collect();
    order.sort_by(|a, b| p[*a].total_cmp(&p[*b]));
    let rejected = order
        .iter()
        .enumerate()
        .rev()
        .find(|(at, test)| p[**test] <= (at + 1) as f64 / m as f64 * q)
        .map_or(0, |(at, _)| at + 1);
    let mut adjusted = vec![1.0; m];
    let mut least = 1.0_f64;
    for (at, test) in order.iter().enumerate().rev() {
        least = least.min(p[*test] * m as f64 / (at + 1) as f64);
        adjusted[*test] = least;
    }
    let mut is_rejected = vec![false; m];
    for test in order.iter().take(rejected) {
        is_rejected[*test] = true;
    }
    Ok(Discoveries { adjusted, rejected, is_rejected })
}
