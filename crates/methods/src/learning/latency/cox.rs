//! Proportional hazards regression.
//!
//! Source: D. R. Cox (1972), J R Stat Soc B 34:187; ties by B. Efron (1977), J Am Stat Assoc 72:557. Newton's method.
//! Assumes that a covariate multiplies the rate of the event by the same factor at all times.

use super::{LatencyError, Wait};
use crate::stats::{Interval, Level, StatsError, dense::Cholesky, normal_cdf};

/// One covariate's effect.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoxTerm {
    /// Change of the log rate per unit of the covariate.
    pub coef: f64,
    /// Its standard error, from the observed information.
    pub standard_error: f64,
    /// Normal interval of `coef`; exponentiate for the ratio of rates.
    pub interval: Interval,
    /// Two-sided normal p-value.
    pub p: f64,
}

/// A fitted model.
#[derive(Debug, Clone, PartialEq)]
pub struct CoxFit {
    /// Per covariate, in the order given.
    pub terms: Vec<CoxTerm>,
    /// Log partial likelihood at the estimate.
    pub log_likelihood: f64,
    /// Waits.
    pub n: usize,
    /// Events.
    pub events: usize,
}

struct Row {
    time: f64,
    event: bool,
    x: Vec<f64>,
}

/// Sums over a set of waits: weight, weighted covariates, weighted products.
#[derive(Clone)]
struct Sums {
    weight: f64,
    x: Vec<f64>,
    xx: Vec<f64>,
}

impl Sums {
    fn zero(k: usize) -> Self {
        Self { weight: 0.0, x: vec![0.0; k], xx: vec![0.0; k * k] }
    }

    fn clear(&mut self) {
        self.weight = 0.0;
        self.x.fill(0.0);
        self.xx.fill(0.0);
    }

    fn add(&mut self, weight: f64, x: &[f64]) {
        self.weight += weight;
        for (a, xa) in x.iter().enumerate() {
            self.x[a] += weight * xa;
            for (b, xb) in x.iter().enumerate() {
                self.xx[a * x.len() + b] += weight * xa * xb;
            }
        }
    }
}

/// Log partial likelihood, its gradient and the information at `beta`. `rows` run from the longest time to the shortest.
fn evaluate(rows: &[Row], beta: &[f64]) -> (f64, Vec<f64>, Vec<f64>) {
    let k = beta.len();
    let (mut ln, mut gradient, mut information) = (0.0, vec![0.0; k], vec![0.0; k * k]);
    let (mut risk, mut tied) = (Sums::zero(k), Sums::zero(k));
    let mut mean = vec![0.0; k];
    for group in rows.chunk_by(|a, b| a.time == b.time) {
        tied.clear();
        let mut d = 0_u32;
        for row in group {
            let eta: f64 = row.x.iter().zip(beta).map(|(x, b)| x * b).sum();
            let weight = eta.exp();
            risk.add(weight, &row.x);
            if row.event {
                d += 1;
                ln += eta;
                gradient.iter_mut().zip(&row.x).for_each(|(g, x)| *g += x);
                tied.add(weight, &row.x);
            }
        }
        for l in 0..d {
            let share = f64::from(l) / f64::from(d);
            let total = risk.weight - share * tied.weight;
            ln -= total.ln();
            for a in 0..k {
                mean[a] = (risk.x[a] - share * tied.x[a]) / total;
                gradient[a] -= mean[a];
            }
            for a in 0..k {
                for b in 0..k {
                    information[a * k + b] +=
                        (risk.xx[a * k + b] - share * tied.xx[a * k + b]) / total - mean[a] * mean[b];
                }
            }
        }
    }
    (ln, gradient, information)
}

/// Fits the model to `waits` with one slice of values per covariate, each as long as `waits`.
///
/// # Errors
/// [`LatencyError::Stats`] for no data, no covariate, a length that differs, a value that is no number or a covariate that
/// does not vary; [`LatencyError::NoEvents`]; [`LatencyError::NotComparable`] if covariates repeat each other;
/// [`LatencyError::Separated`] if no finite estimate exists.
///
/// ```
/// use sayso_methods::learning::latency::{Wait, cox_regression};
/// use sayso_methods::stats::Level;
/// let waits: Vec<Wait> = [1.0, 2.0, 3.0, 4.0, 5.0, 6.0].map(Wait::ended).into();
/// let shown_before = [1.0, 1.0, 0.0, 1.0, 0.0, 0.0];
/// let fit = cox_regression(&waits, &[&shown_before], Level::P95)?;
/// assert!(fit.terms[0].coef > 0.0, "a higher rate of pressing where it was shown before");
/// # Ok::<(), sayso_methods::learning::latency::LatencyError>(())
/// ```
pub fn cox_regression(waits: &[Wait], covariates: &[&[f64]], level: Level) -> Result<CoxFit, LatencyError> {
    let (n, k) = (waits.len(), covariates.len());
    if n == 0 || k == 0 {
        return Err(StatsError::TooFew { what: "waits and covariates", needed: 1, got: 0 }.into());
    }
    if let Some(bad) = waits.iter().find(|w| !(w.time >= 0.0 && w.time.is_finite())) {
        return Err(StatsError::OutOfRange { what: "time", value: bad.time }.into());
    }
    let events = waits.iter().filter(|w| w.event).count();
    if events == 0 {
        return Err(LatencyError::NoEvents { n });
    }
    // Centred and scaled, so that the exponentials and the stopping rule do not depend on the unit.
    let mut scales = Vec::with_capacity(k);
    for column in covariates {
        if column.len() != n {
            return Err(StatsError::Unpaired { left: n, right: column.len() }.into());
        }
        if let Some(bad) = column.iter().find(|x| !x.is_finite() || x.abs() > 1e150) {
            return Err(StatsError::OutOfRange { what: "covariate", value: *bad }.into());
        }
        let mean = column.iter().sum::<f64>() / n as f64;
        let sd = (column.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / n as f64).sqrt();
        if !(sd > 1e-12 * mean.abs() && sd > 0.0) {
            return Err(StatsError::NoVariation("a covariate").into());
        }
        scales.push((mean, sd));
    }
    let mut rows: Vec<Row> = waits
        .iter()
        .enumerate()
        .map(|(i, w)| Row {
            time: w.time + 0.0,
            event: w.event,
            x: covariates.iter().zip(&scales).map(|(column, (mean, sd))| (column[i] - mean) / sd).collect(),
        })
        .collect();
    rows.sort_unstable_by(|a, b| b.time.total_cmp(&a.time));
    let mut beta = vec![0.0; k];
    let (mut ln, mut gradient, mut information) = evaluate(&rows, &beta);
    // A direction in which nothing varies among those at risk cannot be told apart from the start.
    let mut factor = Cholesky::new(&information, k).ok_or(LatencyError::NotComparable)?;
    for _ in 0..100 {
        let step = factor.solve(&gradient);
        let decrement: f64 = step.iter().zip(&gradient).map(|(s, g)| s * g).sum();
        if decrement < 1e-14 * (1.0 + ln.abs()).min(1e4) {
            break;
        }
        let mut size = 1.0;
        loop {
            let next: Vec<f64> = beta.iter().zip(&step).map(|(b, s)| b + size * s).collect();
            let found = evaluate(&rows, &next);
            if found.0.is_finite() && found.0 >= ln - 1e-12 * ln.abs() {
                beta = next;
                (ln, gradient, information) = found;
                break;
            }
            size /= 2.0;
            if size < 1e-10 {
                return Err(LatencyError::Separated);
            }
        }
        factor = Cholesky::new(&information, k).ok_or(LatencyError::Separated)?;
    }
    let covariance = factor.inverse();
    let mut terms = Vec::with_capacity(k);
    for (a, (_, sd)) in scales.iter().enumerate() {
        let scaled_error = covariance[a * k + a].sqrt();
        // With an infinite estimate the information melts away while the likelihood stops rising.
        if !scaled_error.is_finite() || scaled_error > 1e3 {
            return Err(LatencyError::Separated);
        }
        let (coef, standard_error) = (beta[a] / sd, scaled_error / sd);
        let half = level.z() * standard_error;
        let p = (2.0 * normal_cdf(-(coef / standard_error).abs())).min(1.0);
        terms.push(CoxTerm {
            coef,
            standard_error,
            interval: Interval { low: coef - half, high: coef + half, level },
            p,
        });
    }
    Ok(CoxFit { terms, log_likelihood: ln, n, events })
}
