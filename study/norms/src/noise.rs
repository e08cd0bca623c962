//! Noise on counts. What is published is drawn by OpenDP, whose sampler of the discrete Laplace distribution is exact and proven (Canonne,
//! Kamath, Steinke 2020, arXiv:2004.00010); everything else here is for tests and measurements.

use opendp::domains::{AtomDomain, VectorDomain};
use opendp::measurements::make_laplace;
use opendp::measures::MaxDivergence;
use opendp::metrics::L1Distance;
use rand::{RngExt as _, SeedableRng};
use rand_xoshiro::Xoshiro256PlusPlus;

/// Counts with noise, and what they cost.
#[derive(Clone, PartialEq, Debug)]
pub struct Noisy {
    /// In the order in which they were given.
    pub counts: Vec<i64>,
    /// The privacy loss of giving them away.
    pub loss: f64,
}

/// OpenDP would not.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[error("no noise can be had: {0}")]
pub struct NoNoise(String);

/// Whoever adds noise.
pub trait Noise {
    /// Adds independent noise of a scale to each count. All of them together change by `sensitivity` at most where one household comes or
    /// goes.
    ///
    /// # Errors
    /// [`NoNoise`].
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise>;
}

/// The noise of what is published. Its randomness is the system's; nobody can ask for the same again.
#[derive(Clone, Copy, Default, Debug)]
pub struct Proven;

impl Noise for Proven {
    fn add(&mut self, counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        let why = |e: opendp::error::Error| NoNoise(e.to_string());
        let measured = make_laplace::<_, _, MaxDivergence>(
            VectorDomain::new(AtomDomain::<i64>::default()),
            L1Distance::<i64>::default(),
            scale,
            None,
        )
        .map_err(why)?;
        // The loss by OpenDP's own reckoning, not by ours.
        let loss = measured.map(&i64::from(sensitivity)).map_err(why)?;
        Ok(Noisy { counts: measured.invoke(&counts).map_err(why)?, loss })
    }
}

/// Noise that a seed repeats: **not private**, as whoever has the seed can take it off again.
#[derive(Debug)]
pub struct FromSeed(Xoshiro256PlusPlus);

impl FromSeed {
    /// Noise of a seed.
    #[must_use]
    pub fn new(seed: u64) -> Self {
        Self(Xoshiro256PlusPlus::seed_from_u64(seed))
    }

    /// One draw: the difference of two geometric ones.
    fn draw(&mut self, scale: f64) -> i64 {
        let mut geometric = || {
            // Above 0, so that its logarithm is finite.
            let unit = 1.0 - self.0.random::<f64>();
            (-unit.ln() * scale).floor() as i64
        };
        geometric() - geometric()
    }
}

impl Noise for FromSeed {
    fn add(&mut self, mut counts: Vec<i64>, sensitivity: u32, scale: f64) -> Result<Noisy, NoNoise> {
        for count in &mut counts {
            *count += self.draw(scale);
        }
        Ok(Noisy { counts, loss: f64::from(sensitivity) / scale })
    }
}

/// Variance of discrete Laplace noise of a scale.
#[must_use]
pub fn variance(scale: f64) -> f64 {
    let kept = (-1.0 / scale).exp();
    2.0 * kept / (1.0 - kept).powi(2)
}

/// What discrete Laplace noise of a scale exceeds, or equals, once in twenty at most.
#[must_use]
pub fn rarely_reached(scale: f64) -> f64 {
    const ONCE_IN_TWENTY: f64 = 0.05;
    // P(x >= k) = exp(-k/scale) / (1 + exp(-1/scale)).
    (scale * -(ONCE_IN_TWENTY * (1.0 + (-1.0 / scale).exp())).ln()).ceil().max(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn variance_and_bar_are_those_of_the_distribution() {
        for scale in [0.5, 3.0, 25.0] {
            let weight = |x: i32| (-f64::from(x.abs()) / scale).exp();
            let all: f64 = (-2_000..=2_000).map(weight).sum();
            let squares: f64 = (-2_000..=2_000).map(|x| f64::from(x).powi(2) * weight(x)).sum();
            assert!((variance(scale) - squares / all).abs() < 1e-6 * squares / all, "{scale}");
            let bar = rarely_reached(scale) as i32;
            let beyond = |from: i32| (from..=2_000).map(weight).sum::<f64>() / all;
            assert!(beyond(bar) <= 0.05 && beyond(bar - 1) > 0.05, "{scale}: {bar}");
        }
        assert_eq!([25.0, 100.0 / 6.0, 50.0].map(rarely_reached), [59.0, 39.0, 116.0]);
    }
}
