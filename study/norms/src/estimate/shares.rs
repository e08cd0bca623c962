//! Shares of kinds, of all.

use super::counts::Counts;
use super::interval::interval;

/// The sum of all bins is sure where it is so many standard deviations of its noise.
const LEAST_SURE: f64 = 4.0;

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

/// The share in each bin but the first and all bins after it, of all: none more than the one before. None where the noise leaves the sum
/// itself unsure.
#[must_use]
pub fn from_each_on(counts: &Counts, z: f64) -> Option<Vec<Share>> {
    let (whole, many) = (counts.whole(), counts.bins.len() as f64);
    if whole < 1.0 || whole < LEAST_SURE * counts.noise_of(many, many).sqrt() {
        return None;
    }
    let mut most = 1.0_f64;
    let one = |first: usize| {
        let share = counts.bins.iter().skip(first).sum::<f64>() / whole;
        // Derivatives: (1 - share) / whole by each bin of them, -share / whole by each other.
        let (own, other) = ((1.0 - share) / whole, -share / whole);
        let (before, after) = (first as f64, many - first as f64);
        let noise = counts.noise_of(after * own + before * other, after * own * own + before * other * other);
        let (low, high) = interval(share, whole, noise, z);
        let share = share.clamp(0.0, most);
        most = share;
        Share { share, low: low.min(share), high: high.max(share) }
    };
    Some((1..counts.bins.len()).map(one).collect())
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
    fn shares_from_a_bin_on_never_rise_and_hold_what_noise_does() {
        let plain = from_each_on(&Counts::new(vec![50.0, 30.0, 20.0], 0.0), 1.96).unwrap();
        let told: Vec<f64> = plain.iter().map(|one| one.share).collect();
        assert!((told[0] - 0.5).abs() < 1e-12 && (told[1] - 0.2).abs() < 1e-12, "{told:?}");
        // Wilson's of 50 of 100, by hand.
        assert!((plain[0].low - 0.403_8).abs() < 1e-4 && (plain[0].high - 0.596_2).abs() < 1e-4, "{plain:?}");
        // A bin below nought by its noise: what is after it is no more than what it is part of.
        let noisy = from_each_on(&Counts::new(vec![60.0, -9.0, 49.0], 9.0), 1.96).unwrap();
        assert!(noisy[1].share <= noisy[0].share && noisy[1].high >= 0.49, "{noisy:?}");
        assert!(noisy[0].high - noisy[0].low > plain[0].high - plain[0].low, "{noisy:?}");
        assert_eq!(from_each_on(&Counts::new(vec![10.0, 5.0, 5.0], 100.0), 1.96), None);
    }

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
