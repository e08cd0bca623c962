//! Seeded chance. Every draw follows from a seed and a stream number; nothing else is random in this crate.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// A source of chance: `ChaCha8` with a seed and a stream.
#[derive(Clone, Debug)]
pub struct Chance(ChaCha8Rng);

impl Chance {
    /// The source of that seed and stream. Streams of one seed are independent of each other.
    #[must_use]
    pub fn new(seed: u64, stream: u64) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        rng.set_stream(stream);
        Self(rng)
    }

    /// Uniform on [0, 1).
    pub fn unit(&mut self) -> f64 {
        self.0.random::<f64>()
    }

    /// True with probability `p`; below 0 counts as 0, above 1 as 1, not-a-number as 0.
    pub fn coin(&mut self, p: f64) -> bool {
        self.unit() < p
    }

    /// Uniform on [low, high).
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.unit()
    }

    /// Uniform on 0..n; 0 where n is 0.
    pub fn below(&mut self, n: usize) -> usize {
        if n == 0 { 0 } else { self.0.random_range(0..n) }
    }

    /// A whole number from all 32-bit numbers.
    pub fn seed(&mut self) -> u32 {
        self.0.random::<u32>()
    }

    /// Standard normal (Box and Muller 1958).
    pub fn normal(&mut self) -> f64 {
        let u = 1.0 - self.unit();
        (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }

    /// Log-normal with that median and that standard deviation of the logarithm.
    pub fn lognormal(&mut self, median: f64, spread: f64) -> f64 {
        median * (spread * self.normal()).exp()
    }

    /// Exponential with that mean.
    pub fn exponential(&mut self, mean: f64) -> f64 {
        -mean * (1.0 - self.unit()).ln()
    }

    /// An index with probability in proportion to its weight; none where no weight is positive.
    pub fn pick(&mut self, weights: &[f64]) -> Option<usize> {
        let total: f64 = weights.iter().filter(|w| **w > 0.0).sum();
        if total <= 0.0 || !total.is_finite() {
            return None;
        }
        let mut left = self.unit() * total;
        let mut last = None;
        for (i, w) in weights.iter().enumerate().filter(|(_, w)| **w > 0.0) {
            last = Some(i);
            if left < *w {
                return last;
            }
            left -= w;
        }
        last
    }

    /// Puts `items` in random order (Fisher and Yates).
    pub fn shuffle<T>(&mut self, items: &mut [T]) {
        for i in (1..items.len()).rev() {
            items.swap(i, self.below(i + 1));
        }
    }

    /// Random bytes.
    pub fn bytes<const N: usize>(&mut self) -> [u8; N] {
        let mut bytes = [0; N];
        for b in &mut bytes {
            *b = self.0.random::<u8>();
        }
        bytes
    }
}

/// The logistic function, 1 / (1 + e^-x).
#[must_use]
pub fn logistic(x: f64) -> f64 {
    1.0 / (1.0 + (-x).exp())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn same_seed_and_stream_same_draws_other_stream_other_draws() {
        let draws = |seed, stream| {
            let mut c = Chance::new(seed, stream);
            [c.unit(), c.normal(), c.exponential(2.0)]
        };
        assert_eq!(draws(1, 2), draws(1, 2));
        assert_ne!(draws(1, 2), draws(1, 3));
        assert_ne!(draws(1, 2), draws(2, 2));
    }

    #[test]
    fn moments_are_near_the_formulae() {
        let mut c = Chance::new(5, 0);
        let n = 40_000;
        let mean = |f: &mut dyn FnMut() -> f64| (0..n).map(|_| f()).sum::<f64>() / f64::from(n);
        let m = mean(&mut || c.normal());
        assert!(m.abs() < 0.02, "{m}"); // 4 standard errors
        let v = mean(&mut || c.normal().powi(2));
        assert!((v - 1.0).abs() < 0.03, "{v}");
        let e = mean(&mut || c.exponential(2.0));
        assert!((e - 2.0).abs() < 0.04, "{e}");
        let p = mean(&mut || if c.pick(&[1.0, 0.0, 3.0]) == Some(2) { 1.0 } else { 0.0 });
        assert!((p - 0.75).abs() < 0.01, "{p}");
    }

    #[test]
    fn weights_that_allow_nothing_pick_nothing() {
        let mut c = Chance::new(5, 0);
        assert_eq!(c.pick(&[]), None);
        assert_eq!(c.pick(&[0.0, -1.0]), None);
        assert_eq!(c.pick(&[f64::NAN]), None);
        assert_eq!(c.pick(&[f64::INFINITY]), None);
    }
}
