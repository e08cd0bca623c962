//! Binomial and Poisson probabilities that stay accurate for large counts.
//!
//! Source: C. Loader (2000), Fast and accurate computation of binomial probabilities (saddle-point expansion).

use std::f64::consts::TAU;

/// Error of Stirling's formula: ln(n!) - ln(sqrt(2 pi n) (n/e)^n).
fn stirling_error(n: f64) -> f64 {
    if n < 16.0 {
        return statrs::function::gamma::ln_gamma(n + 1.0) - ((n + 0.5) * n.ln() - n + 0.5 * TAU.ln());
    }
    let n2 = n * n;
    (1.0 / 12.0 - (1.0 / 360.0 - (1.0 / 1260.0 - (1.0 / 1680.0 - 1.0 / 1188.0 / n2) / n2) / n2) / n2) / n
}

/// Deviance part x ln(x/m) + m - x, without cancellation when x is near m.
fn deviance(x: f64, m: f64) -> f64 {
    if (x - m).abs() < 0.1 * (x + m) {
        let v = (x - m) / (x + m);
        let mut sum = (x - m) * v;
        let mut term = 2.0 * x * v;
        for j in 1..1000 {
            term *= v * v;
            let next = sum + term / f64::from(2 * j + 1);
            if next == sum {
                break;
            }
            sum = next;
        }
        return sum;
    }
    x * (x / m).ln() + m - x
}

/// P(X = k) for X binomial(n, p); `p` in 0..=1.
pub(super) fn binomial(k: u64, n: u64, p: f64) -> f64 {
    if k > n {
        return 0.0;
    }
    if p <= 0.0 {
        return if k == 0 { 1.0 } else { 0.0 };
    }
    if p >= 1.0 {
        return if k == n { 1.0 } else { 0.0 };
    }
    let (x, size) = (k as f64, n as f64);
    if k == 0 {
        return (size * (-p).ln_1p()).exp();
    }
    if k == n {
        return (size * p.ln()).exp();
    }
    let rest = size - x;
    let exponent = stirling_error(size)
        - stirling_error(x)
        - stirling_error(rest)
        - deviance(x, size * p)
        - deviance(rest, size * (1.0 - p));
    exponent.exp() * (size / (TAU * x * rest)).sqrt()
}

/// P(X = k) for X Poisson with the given mean (positive).
pub(super) fn poisson(k: u64, mean: f64) -> f64 {
    if k == 0 {
        return (-mean).exp();
    }
    let x = k as f64;
    (-stirling_error(x) - deviance(x, mean)).exp() / (TAU * x).sqrt()
}

/// Sums a run of falling terms: `first`, then each times `ratio(i)`, until nothing is added or the ratios end.
fn falling_sum(first: f64, mut ratio: impl FnMut() -> Option<f64>) -> f64 {
    let (mut sum, mut term) = (first, first);
    while let Some(r) = ratio() {
        term *= r;
        let next = sum + term;
        if next == sum {
            break;
        }
        sum = next;
    }
    sum
}

/// P(X >= k).
pub(super) fn binomial_upper(k: u64, n: u64, p: f64) -> f64 {
    if k == 0 {
        return 1.0;
    }
    if k > n || p <= 0.0 {
        return 0.0;
    }
    if p >= 1.0 {
        return 1.0;
    }
    if (k as f64) > n as f64 * p {
        let odds = p / (1.0 - p);
        let mut i = k;
        let sum = falling_sum(binomial(k, n, p), || {
            (i < n).then(|| {
                i += 1;
                (n - i + 1) as f64 / i as f64 * odds
            })
        });
        return sum.min(1.0);
    }
    (1.0 - binomial_lower(k - 1, n, p)).clamp(0.0, 1.0)
}

/// P(X <= k).
pub(super) fn binomial_lower(k: u64, n: u64, p: f64) -> f64 {
    if k >= n || p <= 0.0 {
        return 1.0;
    }
    if p >= 1.0 {
        return 0.0;
    }
    if (k as f64) <= n as f64 * p {
        let odds = (1.0 - p) / p;
        let mut i = k;
        let sum = falling_sum(binomial(k, n, p), || {
            (i > 0).then(|| {
                i -= 1;
                (i + 1) as f64 / (n - i) as f64 * odds
            })
        });
        return sum.min(1.0);
    }
    (1.0 - binomial_upper(k + 1, n, p)).clamp(0.0, 1.0)
}

/// P(X >= k), Poisson.
pub(super) fn poisson_upper(k: u64, mean: f64) -> f64 {
    if k == 0 {
        return 1.0;
    }
    if mean <= 0.0 {
        return 0.0;
    }
    if (k as f64) > mean {
        let mut i = k as f64;
        let sum = falling_sum(poisson(k, mean), || {
            i += 1.0;
            Some(mean / i)
        });
        return sum.min(1.0);
    }
    (1.0 - poisson_lower(k - 1, mean)).clamp(0.0, 1.0)
}

/// P(X <= k), Poisson.
pub(super) fn poisson_lower(k: u64, mean: f64) -> f64 {
    if mean <= 0.0 {
        return 1.0;
    }
    if (k as f64) <= mean {
        let mut i = k;
        let sum = falling_sum(poisson(k, mean), || {
            (i > 0).then(|| {
                i -= 1;
                (i + 1) as f64 / mean
            })
        });
        return sum.min(1.0);
    }
    (1.0 - poisson_upper(k + 1, mean)).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn probabilities_add_up() {
        for n in [1_u64, 2, 7, 30, 400] {
            for p in [0.001, 0.2, 0.5, 0.93] {
                let total: f64 = (0..=n).map(|k| binomial(k, n, p)).sum();
                assert!((total - 1.0).abs() < 1e-12, "{n} {p} {total}");
                for k in 0..=n {
                    let direct: f64 = (k..=n).map(|i| binomial(i, n, p)).sum();
                    assert!((binomial_upper(k, n, p) - direct).abs() < 1e-12);
                    assert!((binomial_lower(k, n, p) + binomial_upper(k + 1, n, p) - 1.0).abs() < 1e-12);
                }
            }
        }
        let total: f64 = (0..200).map(|k| poisson(k, 40.0)).sum();
        assert!((total - 1.0).abs() < 1e-12);
    }

    #[test]
    fn million_trials_stay_accurate() {
        // scipy.stats.binom.pmf(500000, 10**6, 0.5) = 0.00079788436133 (normal: 1/sqrt(pi n / 2))
        assert!((binomial(500_000, 1_000_000, 0.5) - 7.978_843_613_3e-4).abs() < 1e-13);
    }
}
