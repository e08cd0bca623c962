//! Shares of kinds, of all.

use super::counts::Counts;
use super::interval::{interval, wider};

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
    /// The sum of all bins is sure where it is so many standard deviations of its noise.
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

/// The share in each bin but the first and all bins after it, of all bins: none more than the one before. `noise` is the variance of each bin's
/// noise, one draw of discrete Laplace's; `households` is another count of them all, by noise of its own, which decided that they are told.
///
/// Every share `s` is in its interval for which `(those − s · all)²` is no more than `z² (households · s (1 − s) + its noise)`, as Fieller
/// (1954) has it of a ratio: it holds however unsure the sum of all bins is, and is the whole from 0 to 1 where that is next to nothing.
#[must_use]
pub fn from_each_on(bins: &[f64], noise: f64, households: f64, z: f64) -> Vec<Share> {
    let (all, many) = (bins.iter().sum::<f64>(), bins.len() as f64);
    let mut most = 1.0_f64;
    let one = |first: usize| {
        let those: f64 = bins.iter().skip(first).sum();
        let (before, after) = (first as f64, many - first as f64);
        let share = (those / all.max(1.0)).clamp(0.0, most);
        most = share;
        let (up, down) = (1.0 - share, share);
        let fourths = after * up.powi(4) + before * down.powi(4);
        let variance = households * up * down + noise * (after * up * up + before * down * down);
        let z = wider(z, (noise, 1.0), fourths, variance);
        let (low, high) = of_ratio((those, all), (households, noise, after, many), z);
        Share { share, low: low.min(share), high: high.max(share) }
    };
    (1..bins.len()).map(one).collect()
}

/// The ends of the shares that `(those − s · all)² ≤ z² (households · s (1 − s) + noise (after (1 − s)² + (many − after) s²))` leaves.
fn of_ratio((those, all): (f64, f64), (households, noise, after, many): (f64, f64, f64, f64), z: f64) -> (f64, f64) {
    let squared = z * z;
    let square = all * all + squared * (households - many * noise);
    if square <= 0.0 {
        return (0.0, 1.0);
    }
    let middle = (those * all + squared * (0.5 * households - noise * after)) / square;
    // Where noise took the estimate out of reach of every share, the nearest is what is left.
    let half = (middle * middle - (those * those - squared * noise * after) / square).max(0.0).sqrt();
    ((middle - half).clamp(0.0, 1.0), (middle + half).clamp(0.0, 1.0))
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
        let plain = from_each_on(&[50.0, 30.0, 20.0], 0.0, 100.0, 1.96);
        let told: Vec<f64> = plain.iter().map(|one| one.share).collect();
        assert!((told[0] - 0.5).abs() < 1e-12 && (told[1] - 0.2).abs() < 1e-12, "{told:?}");
        // Wilson's of 50 of 100, by hand.
        assert!((plain[0].low - 0.403_8).abs() < 1e-4 && (plain[0].high - 0.596_2).abs() < 1e-4, "{plain:?}");
        // A bin below nought by its noise: what is after it is no more than what it is part of.
        let noisy = from_each_on(&[60.0, -9.0, 49.0], 9.0, 100.0, 1.96);
        assert!(noisy[1].share <= noisy[0].share && noisy[1].high >= 0.49, "{noisy:?}");
        assert!(noisy[0].high - noisy[0].low > plain[0].high - plain[0].low, "{noisy:?}");
        // All bins together next to nothing, or below it: nothing is known.
        for bins in [[1.0, 2.0, 1.0], [-30.0, 5.0, 5.0]] {
            let unsure = from_each_on(&bins, 800.0, 216.0, 1.96);
            assert!(unsure.iter().all(|one| (one.low, one.high) == (0.0, 1.0)), "{unsure:?}");
        }
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
