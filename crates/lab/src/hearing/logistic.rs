//! Regularised logistic regression: ridge on standardised figures, by Newton's method.
//!
//! Source: Hoerl and Kennard 1970 (ridge); le Cessie and van Houwelingen 1992, Appl Stat 41:191 (in logistic regression).

use crate::error::{LabError, told};
use sayso_sim::logistic;

/// A fitted model.
#[derive(Debug, Clone, PartialEq)]
pub struct Logistic {
    /// Log odds where all figures are 0.
    pub constant: f64,
    /// Weight of each figure.
    pub weights: Vec<f64>,
    /// Newton steps taken.
    pub steps: usize,
}

const MOST_STEPS: usize = 100;

/// Log odds of a row.
fn log_odds(beta: &[f64], row: &[f64]) -> f64 {
    beta[0] + beta[1..].iter().zip(row).map(|(w, x)| w * x).sum::<f64>()
}

/// Penalised negative log-likelihood.
fn loss(beta: &[f64], rows: &[Vec<f64>], right: &[bool], ridge: f64) -> f64 {
    let penalty = 0.5 * ridge * beta[1..].iter().map(|w| w * w).sum::<f64>();
    rows.iter().zip(right).fold(penalty, |sum, (row, y)| {
        let x = log_odds(beta, row) * if *y { -1.0 } else { 1.0 };
        // ln(1 + e^x) without overflow.
        sum + x.max(0.0) + (-x.abs()).exp().ln_1p()
    })
}

/// Solves a symmetric positive definite system in place by Cholesky's factors; none if it is not so.
fn solve(mut a: Vec<Vec<f64>>, mut b: Vec<f64>) -> Option<Vec<f64>> {
    let n = b.len();
    for i in 0..n {
        for j in 0..=i {
            let sum: f64 = (0..j).map(|k| a[i][k] * a[j][k]).sum();
            let left = a[i][j] - sum;
            if i == j {
                if !(left > 0.0) {
                    return None;
                }
                a[i][i] = left.sqrt();
            } else {
                a[i][j] = left / a[j][j];
            }
        }
    }
    for i in 0..n {
        let sum: f64 = (0..i).map(|k| a[i][k] * b[k]).sum();
        b[i] = (b[i] - sum) / a[i][i];
    }
    for i in (0..n).rev() {
        let sum: f64 = (i + 1..n).map(|k| a[k][i] * b[k]).sum();
        b[i] = (b[i] - sum) / a[i][i];
    }
    Some(b)
}

/// Fits `P(right) = 1 / (1 + exp(-(constant + weights . figures)))` to rows of figures. Each figure is brought to mean 0
/// and spread 1; the penalty is half of `ridge` times the sum of squared weights on that scale; the constant bears none.
///
/// # Errors
/// [`LabError::Refused`] without rows of both kinds, with figures that are not finite, or where Newton's method does not
/// settle.
pub fn fit(rows: &[Vec<f64>], right: &[bool], ridge: f64) -> Result<Logistic, LabError> {
    let n = rows.len() as f64;
    let width = rows.first().map_or(0, Vec::len);
    let hits = right.iter().filter(|r| **r).count();
    if hits == 0 || hits == rows.len() {
        return Err(told(format!("{hits} of {} rows are presses: nothing can be learned", rows.len())));
    }
    if rows.iter().any(|r| r.len() != width || r.iter().any(|v| !v.is_finite())) {
        return Err(told("a row's figures are not finite numbers, or not as many as the others'"));
    }
    let mean: Vec<f64> = (0..width).map(|k| rows.iter().map(|r| r[k]).sum::<f64>() / n).collect();
    let spread: Vec<f64> =
        (0..width).map(|k| (rows.iter().map(|r| (r[k] - mean[k]).powi(2)).sum::<f64>() / n).sqrt().max(1e-9)).collect();
    let scaled: Vec<Vec<f64>> =
        rows.iter().map(|r| (0..width).map(|k| (r[k] - mean[k]) / spread[k]).collect()).collect();
    let mut beta = vec![0.0; width + 1];
    beta[0] = (hits as f64 / (n - hits as f64)).ln();
    let mut now = loss(&beta, &scaled, right, ridge);
    for steps in 1..=MOST_STEPS {
        let mut gradient: Vec<f64> = beta.iter().map(|w| ridge * w).collect();
        gradient[0] = 0.0;
        let mut curve = vec![vec![0.0; width + 1]; width + 1];
        (1..=width).for_each(|k| curve[k][k] = ridge);
        for (row, y) in scaled.iter().zip(right) {
            let p = logistic(log_odds(&beta, row));
            let (off, weight) = (p - f64::from(u8::from(*y)), p * (1.0 - p));
            let at = |k: usize| if k == 0 { 1.0 } else { row[k - 1] };
            for i in 0..=width {
                gradient[i] += off * at(i);
                for j in 0..=i {
                    curve[i][j] += weight * at(i) * at(j);
                }
            }
        }
        (0..=width).for_each(|i| curve[i][i] += 1e-9);
        let step = solve(curve, gradient).ok_or_else(|| told("the figures do not determine the weights"))?;
        let mut size = 1.0;
        let (next, then) = loop {
            let next: Vec<f64> = beta.iter().zip(&step).map(|(w, s)| w - size * s).collect();
            let then = loss(&next, &scaled, right, ridge);
            if then <= now || size < 1e-6 {
                break (next, then);
            }
            size *= 0.5;
        };
        let gained = now - then;
        (beta, now) = (next, then);
        if gained < 1e-9 * (1.0 + now.abs()) {
            let weights: Vec<f64> = beta[1..].iter().zip(&spread).map(|(w, s)| w / s).collect();
            let constant = beta[0] - weights.iter().zip(&mean).map(|(w, m)| w * m).sum::<f64>();
            return Ok(Logistic { constant, weights, steps });
        }
    }
    Err(told(format!("the fit did not settle in {MOST_STEPS} steps")))
}

/// The constant alone, fitted with the weighted sums of the figures given: the sum of probabilities is then the number of
/// right rows.
///
/// # Errors
/// As [`fit`].
pub fn constant(sums: &[f64], right: &[bool]) -> Result<f64, LabError> {
    let hits = right.iter().filter(|r| **r).count();
    if hits == 0 || hits == right.len() {
        return Err(told(format!("{hits} of {} rows are presses: nothing can be learned", right.len())));
    }
    let (mut low, mut high) = (-1e4, 1e4);
    for _ in 0..200 {
        let at = f64::midpoint(low, high);
        let expected: f64 = sums.iter().map(|s| logistic(s + at)).sum();
        if expected < hits as f64 { low = at } else { high = at }
    }
    Ok(f64::midpoint(low, high))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use sayso_sim::Chance;

    /// Draws rows whose answer follows known weights.
    fn known(n: usize, truth: &[f64], seed: u64) -> (Vec<Vec<f64>>, Vec<bool>) {
        let mut c = Chance::new(seed, 0);
        (0..n)
            .map(|_| {
                let row: Vec<f64> =
                    truth[1..].iter().enumerate().map(|(k, _)| c.normal() * (k + 1) as f64 + 2.0).collect();
                let y = c.coin(logistic(log_odds(truth, &row)));
                (row, y)
            })
            .unzip()
    }

    #[test]
    fn known_weights_are_recovered() {
        let truth = [-1.0, 0.8, -0.5, 0.0, 0.3];
        let (rows, right) = known(20_000, &truth, 3);
        let found = fit(&rows, &right, 1.0).unwrap();
        // The standard errors are below 0.04 here.
        assert!((found.constant - truth[0]).abs() < 0.15, "{found:?}");
        for (w, t) in found.weights.iter().zip(&truth[1..]) {
            assert!((w - t).abs() < 0.08, "{found:?}");
        }
        let sums: Vec<f64> = rows.iter().map(|r| log_odds(&truth, r) - truth[0]).collect();
        assert!((constant(&sums, &right).unwrap() - truth[0]).abs() < 0.1);
    }

    #[test]
    fn a_heavier_ridge_shrinks_and_separated_rows_still_settle() {
        let (rows, right) = known(300, &[0.0, 1.0, -1.0], 5);
        let size = |ridge| fit(&rows, &right, ridge).unwrap().weights.iter().map(|w| w * w).sum::<f64>();
        assert!(size(100.0) < size(10.0) && size(10.0) < size(0.1));
        let rows: Vec<Vec<f64>> = (0..40).map(|i| vec![f64::from(i)]).collect();
        let right: Vec<bool> = (0..40).map(|i| i >= 20).collect();
        let found = fit(&rows, &right, 1.0).unwrap();
        assert!(found.weights[0] > 0.1 && found.weights[0].is_finite());
    }

    #[test]
    fn what_cannot_be_learned_from_is_refused() {
        assert!(fit(&[vec![1.0]], &[true], 1.0).is_err());
        assert!(fit(&[vec![1.0], vec![f64::NAN]], &[true, false], 1.0).is_err());
        assert!(fit(&[vec![1.0], vec![1.0, 2.0]], &[true, false], 1.0).is_err());
    }
}
