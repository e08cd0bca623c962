//! Shares of kinds, of all.

use super::counts::Counts;
use super::interval::interval;

/// A share.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Share {
    /// The share.
    pub share: f64,
    /// Lower end of its interval.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Share {
    /// Rounded to so many steps of 1: the share down, so that together they are never more than the whole, its interval outward.
    #[must_use]
    pub fn outward(self, steps: f64) -> Self {
        let (down, up) = (|x: f64| (x * steps).floor() / steps, |x: f64| (x * steps).ceil() / steps);
        Self { share: down(self.share), low: down(self.low), high: up(self.high) }
    }
}

/// The share of each bin, of all. None where the noise leaves the sum itself unsure.
#[must_use]
pub fn shares(counts: &Counts, z: f64) -> Option<Vec<Share>> {
    const LEAST_SURE: f64 = 4.0;
    let (whole, many) = (counts.whole(), counts.bins.len() as f64);
    if whole < 1.0 || whole < LEAST_SURE * counts.noise_of(many, many).sqrt() {
        return None;
    }
    let estimates: Vec<f64> = counts.bins.iter().map(|bin| bin / whole).collect();
    let one = |estimate: &f64| {
        // Derivatives of bin / whole: (1 - share) / whole by the bin, -share / whole by each other.
        let (own, other) = ((1.0 - estimate) / whole, -estimate / whole);
        let (sum, squares) = (own + (many - 1.0) * other, own * own + (many - 1.0) * other * other);
        interval(*estimate, whole, counts.noise_of(sum, squares), z)
    };
    let ends: Vec<(f64, f64)> = estimates.iter().map(one).collect();
    let nearest = nearest_shares(&estimates);
    Some(
        nearest
            .iter()
            .zip(ends)
            .map(|(share, (low, high))| Share { share: *share, low: low.min(*share), high: high.max(*share) })
            .collect(),
    )
}

/// The nearest shares that are none below 0 and add up to 1: each less the same, and none below 0 (Euclidean projection on the simplex).
fn nearest_shares(estimates: &[f64]) -> Vec<f64> {
    let mut falling = estimates.to_vec();
    falling.sort_by(|a, b| b.total_cmp(a));
    let (mut sum, mut less) = (0.0, 0.0);
    for (many, value) in (1..).zip(&falling) {
        sum += value;
        let each = (sum - 1.0) / f64::from(many);
        if *value > each {
            less = each;
        }
    }
    estimates.iter().map(|value| (value - less).max(0.0)).collect()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn shares_add_up_whatever_the_noise() {
        let of = |bins: &[f64], noise| shares(&Counts::new(bins.to_vec(), noise), 1.96);
        let plain = of(&[10.0, 30.0], 0.0).unwrap();
        assert!((plain[0].share - 0.25).abs() < 1e-12 && plain[0].low > 0.13 && plain[0].high < 0.42, "{plain:?}");
        let noisy = of(&[-8.0, 100.0, 40.0, -3.0], 25.0).unwrap();
        assert!((noisy.iter().map(|s| s.share).sum::<f64>() - 1.0).abs() < 1e-9, "{noisy:?}");
        assert!(
            noisy.iter().all(|s| s.low <= s.share && s.share <= s.high && s.low >= 0.0 && s.high <= 1.0),
            "{noisy:?}"
        );
        assert_eq!(of(&[10.0, 10.0], 100.0), None);
        assert_eq!(of(&[0.0, 0.0], 0.0), None);
    }
}
