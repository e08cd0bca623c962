//! The engine under the choice models: conditional logit with a quadratic penalty, by Newton's method.
//!
//! Sources: D. McFadden (1974), Conditional logit analysis of qualitative choice behavior. Profile intervals:
//! D. J. Venzon & S. H. Moolgavkar (1988), Appl Stat 37:87.
//!
//! Each stage offers alternatives; alternative `a` is taken with probability proportional to `exp(x_a' theta)`.
//! The objective, log-likelihood less `sum(ridge * theta^2)`, is concave, so the optimum is the only one.

use crate::stats::dense::Cholesky;

/// One alternative: where its terms lie, and how often (or with what weight) it was taken.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Alternative {
    first_term: usize,
    end_term: usize,
    taken: f64,
}

/// The choices as a design over `parameters` unknowns.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Design {
    parameters: usize,
    /// End of each stage in `alternatives`.
    stages: Vec<usize>,
    alternatives: Vec<Alternative>,
    terms: Vec<(usize, f64)>,
    /// Penalty per parameter.
    ridge: Vec<f64>,
    /// Whether the first so many parameters are held to a sum of zero (they are only defined up to a shift).
    centred: usize,
}

/// Objective and its derivatives at one point.
struct Point {
    objective: f64,
    gradient: Vec<f64>,
    /// Minus the second derivatives, row-major.
    information: Vec<f64>,
}

/// The optimum.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Optimum {
    pub(super) theta: Vec<f64>,
    pub(super) objective: f64,
    pub(super) log_likelihood: f64,
    pub(super) factor: Cholesky,
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

impl Design {
    pub(super) fn new(ridge: Vec<f64>, centred: usize) -> Self {
        Self {
            parameters: ridge.len(),
            stages: Vec::new(),
            alternatives: Vec::new(),
            terms: Vec::new(),
            ridge,
            centred,
        }
    }

    /// The same choices with another penalty on these parameters.
    pub(super) fn with_ridge(&self, parameters: &[usize], ridge: f64) -> Self {
        let mut changed = self.clone();
        parameters.iter().for_each(|p| changed.ridge[*p] = ridge);
        changed
    }

    /// Adds an alternative to the stage being built.
    pub(super) fn alternative(&mut self, terms: &[(usize, f64)], taken: f64) {
        let first_term = self.terms.len();
        self.terms.extend_from_slice(terms);
        self.alternatives.push(Alternative { first_term, end_term: self.terms.len(), taken });
    }

    /// Closes the stage. A stage of one alternative says nothing and is harmless.
    pub(super) fn end_stage(&mut self) {
        self.stages.push(self.alternatives.len());
    }

    fn stages(&self) -> impl Iterator<Item = &[Alternative]> {
        let starts = std::iter::once(0).chain(self.stages.iter().copied());
        starts.zip(&self.stages).map(|(start, end)| &self.alternatives[start..*end])
    }

    fn terms(&self, alternative: &Alternative) -> &[(usize, f64)] {
        &self.terms[alternative.first_term..alternative.end_term]
    }

    /// Fills `shares` with the probabilities of a stage and returns its log-likelihood.
    fn shares(&self, stage: &[Alternative], theta: &[f64], shares: &mut Vec<f64>) -> f64 {
        shares.clear();
        shares.extend(stage.iter().map(|a| self.terms(a).iter().map(|(p, x)| theta[*p] * x).sum::<f64>()));
        let top = shares.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let (mut ln, mut taken, mut sum) = (0.0, 0.0, 0.0);
        for (share, alternative) in shares.iter_mut().zip(stage) {
            let relative = *share - top;
            ln += alternative.taken * relative;
            taken += alternative.taken;
            *share = relative.exp();
            sum += *share;
        }
        shares.iter_mut().for_each(|s| *s /= sum);
        ln - taken * sum.ln()
    }

    fn penalty(&self, theta: &[f64]) -> f64 {
        let sum: f64 = theta[..self.centred].iter().sum();
        self.ridge.iter().zip(theta).map(|(r, t)| r * t * t).sum::<f64>() + sum * sum / 2.0
    }

    pub(super) fn log_likelihood(&self, theta: &[f64]) -> f64 {
        let mut shares = Vec::new();
        self.stages().map(|stage| self.shares(stage, theta, &mut shares)).sum()
    }

    /// Log-likelihood less penalty.
    pub(super) fn objective(&self, theta: &[f64]) -> f64 {
        self.log_likelihood(theta) - self.penalty(theta)
    }

    fn point(&self, theta: &[f64]) -> Point {
        let k = self.parameters;
        let (mut ln, mut gradient, mut information) = (0.0, vec![0.0; k], vec![0.0; k * k]);
        let mut shares = Vec::new();
        let mut touched: Vec<usize> = Vec::new();
        let mut mean = vec![0.0; k];
        for stage in self.stages() {
            ln += self.shares(stage, theta, &mut shares);
            let taken: f64 = stage.iter().map(|a| a.taken).sum();
            if taken == 0.0 {
                continue;
            }
            touched.clear();
            for (alternative, share) in stage.iter().zip(&shares) {
                let terms = self.terms(alternative);
                for (p, x) in terms {
                    gradient[*p] += (alternative.taken - taken * share) * x;
                    if mean[*p] == 0.0 && !touched.contains(p) {
                        touched.push(*p);
                    }
                    mean[*p] += share * x;
                    for (q, y) in terms {
                        information[p * k + q] += taken * share * x * y;
                    }
                }
            }
            for p in &touched {
                for q in &touched {
                    information[p * k + q] -= taken * mean[*p] * mean[*q];
                }
            }
            touched.iter().for_each(|p| mean[*p] = 0.0);
        }
        let sum: f64 = theta[..self.centred].iter().sum();
        for p in 0..k {
            gradient[p] -= 2.0 * self.ridge[p] * theta[p];
            information[p * k + p] += 2.0 * self.ridge[p];
        }
        for p in 0..self.centred {
            gradient[p] -= sum;
            information[p * k..p * k + self.centred].iter_mut().for_each(|v| *v += 1.0);
        }
        Point { objective: ln - self.penalty(theta), gradient, information }
    }

    /// The optimum; `None` if the information is singular or the steps do not settle.
    pub(super) fn optimum(&self) -> Option<Optimum> {
        let mut theta = vec![0.0; self.parameters];
        let mut point = self.point(&theta);
        for round in 0..200 {
            let factor = Cholesky::new(&point.information, self.parameters)?;
            let step = factor.solve(&point.gradient);
            let gain = dot(&step, &point.gradient);
            let next = self.climb(&theta, &step, point.objective);
            let scale = 1.0 + point.objective.abs();
            // Where rounding stops the climb, or sends it about the top, what is left to gain must be rounding too.
            let enough = if next.is_none() || round > 50 { 1e-9 } else { 1e-18 };
            if gain < enough * scale {
                let log_likelihood = self.log_likelihood(&theta);
                return Some(Optimum { theta, objective: point.objective, log_likelihood, factor });
            }
            (theta, point) = next?;
        }
        None
    }

    /// Halves the step until it does not descend. The whole step nearly always does not, so its point is worked out at once.
    fn climb(&self, theta: &[f64], step: &[f64], from: f64) -> Option<(Vec<f64>, Point)> {
        let mut size = 1.0;
        while size > 1e-9 {
            let next: Vec<f64> = theta.iter().zip(step).map(|(t, s)| t + size * s).collect();
            let point = self.point(&next);
            // Near the top rounding hides the last gains.
            if point.objective >= from - 1e-12 * (1.0 + from.abs()) {
                return Some((next, point));
            }
            size /= 2.0;
        }
        None
    }

    /// Best objective with `contrast' theta` held at `value`, from a start on that plane; and the multiplier there.
    fn held(&self, start: Vec<f64>, contrast: &[f64], value: f64) -> Option<(Vec<f64>, f64, f64)> {
        let mut theta = start;
        let mut point = self.point(&theta);
        for round in 0..100 {
            let factor = Cholesky::new(&point.information, self.parameters)?;
            let (free, along) = (factor.solve(&point.gradient), factor.solve(contrast));
            let multiplier = (dot(contrast, &free) - (value - dot(contrast, &theta))) / dot(contrast, &along);
            let step: Vec<f64> = free.iter().zip(&along).map(|(f, a)| f - multiplier * a).collect();
            let gain = dot(&step, &point.gradient).abs();
            let scale = 1.0 + point.objective.abs();
            let next = self.climb(&theta, &step, point.objective);
            let enough = if next.is_none() || round > 50 { 1e-9 } else { 1e-12 };
            if gain < enough * scale {
                return Some((theta, point.objective, multiplier));
            }
            (theta, point) = next?;
        }
        None
    }

    /// End of the profile interval of `contrast' theta`: where the best objective has fallen by `z^2 / 2`.
    pub(super) fn profile_end(&self, top: &Optimum, contrast: &[f64], z: f64, upwards: bool) -> Option<f64> {
        let along = top.factor.solve(contrast);
        let variance = dot(contrast, &along);
        let centre = dot(contrast, &top.theta);
        let sign = if upwards { 1.0 } else { -1.0 };
        let (mut low, mut high) = (0.0, f64::INFINITY);
        let mut reach = z * variance.sqrt();
        let (mut theta, mut at) = (top.theta.clone(), centre);
        for _ in 0..60 {
            let value = centre + sign * reach;
            // Move to the plane along the direction that costs least, then climb on it.
            let moved: Vec<f64> = theta.iter().zip(&along).map(|(t, a)| t + a * (value - at) / variance).collect();
            let (best, objective, multiplier) = self.held(moved, contrast, value)?;
            (theta, at) = (best, value);
            let root = (2.0 * (top.objective - objective)).max(0.0).sqrt();
            if (root - z).abs() < 1e-7 {
                return Some(value);
            }
            if root < z {
                low = reach
            } else {
                high = reach
            }
            // The signed root of the drop is nearly straight, and the multiplier is its slope times itself.
            let newton = reach + (z - root) * root / multiplier.abs();
            reach = if newton.is_finite() && newton > low && newton < high {
                newton
            } else if high.is_finite() {
                (low + high) / 2.0
            } else {
                2.0 * reach
            };
        }
        Some(centre + sign * reach)
    }
}
