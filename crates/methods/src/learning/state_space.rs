//! The random-walk state behind a run of yes/no trials: forward filter with the posterior mode,
//! fixed-interval smoother, and the Laplace approximation of the likelihood.
//!
//! Source: Smith, Frank, Wirth, Yanike, Hu, Kubota, Graybiel, Suzuki & Brown 2004, J Neurosci 24:447.
//! State `x_k = x_{k-1} + e_k`, `e_k ~ N(0, sigma2)`, `x_0 = 0` without error (or, beyond the source, `x_0 ~ N(0, start)`);
//! `P(yes) = logistic(mu + x_k)`.

/// Filtered or smoothed Gaussian state at each trial.
#[derive(Debug, Clone, Default)]
pub(super) struct States {
    pub mean: Vec<f64>,
    pub variance: Vec<f64>,
}

/// What the forward pass leaves behind for the smoother.
#[derive(Debug, Clone, Default)]
pub(super) struct Forward {
    filtered: States,
    predicted: States,
    /// Laplace approximation of the log-likelihood of the observed trials.
    pub log_likelihood: f64,
}

pub(super) fn logistic(x: f64) -> f64 {
    if x >= 0.0 {
        1.0 / (1.0 + (-x).exp())
    } else {
        let e = x.exp();
        e / (1.0 + e)
    }
}

/// ln(1 + e^x) without overflow.
fn softplus(x: f64) -> f64 {
    x.max(0.0) + (-x.abs()).exp().ln_1p()
}

/// The mode `z` of the posterior: the one root of `z = predicted + variance * (y - logistic(mu + z))`.
///
/// The root lies within one `variance` of the prediction because |y - p| <= 1; Newton steps that leave the
/// bracket are replaced by bisection, so it always ends.
fn posterior_mode(predicted: f64, variance: f64, y: f64, mu: f64) -> f64 {
    let (mut low, mut high) = (predicted - variance, predicted + variance);
    let mut z = predicted;
    for _ in 0..100 {
        let p = logistic(mu + z);
        let gap = z - predicted - variance * (y - p);
        if gap > 0.0 {
            high = z;
        } else {
            low = z;
        }
        let newton = z - gap / (1.0 + variance * p * (1.0 - p));
        let next = if newton >= low && newton <= high { newton } else { 0.5 * (low + high) };
        let step = (next - z).abs();
        z = next;
        if step < 1e-12 {
            break;
        }
    }
    z
}

/// Runs the filter from `x_0 ~ N(0, start_variance)`; `step(k)` is the variance of the step to trial `k` (from 0). A missing trial (`None`) only lets the state drift: the mean stays, the variance grows.
pub(super) fn forward(
    trials: &[Option<bool>],
    mu: f64,
    step: impl Fn(usize) -> f64,
    start_variance: f64,
    out: &mut Forward,
) {
    let Forward { filtered, predicted, log_likelihood } = out;
    for states in [&mut *filtered, &mut *predicted] {
        states.mean.clear();
        states.variance.clear();
    }
    *log_likelihood = 0.0;
    let (mut mean, mut variance) = (0.0, start_variance);
    for (k, trial) in trials.iter().enumerate() {
        let (before, before_variance) = (mean, variance + step(k));
        predicted.mean.push(before);
        predicted.variance.push(before_variance);
        if let Some(yes) = trial {
            let y = f64::from(u8::from(*yes));
            mean = posterior_mode(before, before_variance, y, mu);
            let p = logistic(mu + mean);
            variance = before_variance / (1.0 + before_variance * p * (1.0 - p));
            let eta = mu + mean;
            let log_bernoulli = y * eta - softplus(eta);
            *log_likelihood += log_bernoulli
                - 0.5 * (mean - before).powi(2) / before_variance
                - 0.5 * (before_variance / variance).ln();
        } else {
            mean = before;
            variance = before_variance;
        }
        filtered.mean.push(mean);
        filtered.variance.push(variance);
    }
}

/// Smooths in place into `out` and returns the expected sum of squared steps, `sum E (x_k - x_{k-1})^2`,
/// which divided by the number of steps is the M-step for `sigma2`.
pub(super) fn smooth(pass: &Forward, out: &mut States) -> f64 {
    out.mean.clone_from(&pass.filtered.mean);
    out.variance.clone_from(&pass.filtered.variance);
    let n = out.mean.len();
    let mut steps = 0.0;
    for k in (0..n.saturating_sub(1)).rev() {
        let gain = pass.filtered.variance[k] / pass.predicted.variance[k + 1];
        out.mean[k] += gain * (out.mean[k + 1] - pass.predicted.mean[k + 1]);
        out.variance[k] += gain * gain * (out.variance[k + 1] - pass.predicted.variance[k + 1]);
        let shared = gain * out.variance[k + 1];
        steps += (out.mean[k + 1] - out.mean[k]).powi(2) + out.variance[k + 1] + out.variance[k] - 2.0 * shared;
    }
    if n > 0 {
        steps += out.mean[0].powi(2) + out.variance[0];
    }
    steps
}
