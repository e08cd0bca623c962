//! Counts in bins, each with noise, and a count of the whole with noise of its own.

/// Counts of a group of households.
#[derive(Clone, PartialEq, Debug)]
pub struct Counts {
    /// Households in each bin.
    pub bins: Vec<f64>,
    /// Variance of the noise of each bin; 0 without noise.
    pub noise: f64,
    /// Draws of noise that each bin adds up.
    pub draws: f64,
    /// Variance that the noise of all bins has in common, taken off: the covariance is `noise · (I − shared · 11ᵀ)`.
    pub shared: f64,
}

impl Counts {
    /// Counts whose noise is independent, one draw for each bin.
    #[must_use]
    pub fn new(bins: Vec<f64>, noise: f64) -> Self {
        Self { bins, noise, draws: 1.0, shared: 0.0 }
    }

    /// Brings bins and a count of the whole together, by least squares: what they miss each other by is spread evenly over the bins, as
    /// far as the whole is the better known of the two.
    #[must_use]
    pub fn told(mut self, whole: f64, whole_noise: f64) -> Self {
        let many = self.bins.len() as f64;
        let both = many * self.noise + whole_noise;
        if both > 0.0 {
            self.shared = self.noise / both;
            let each = (whole - self.whole()) * self.shared;
            self.bins.iter_mut().for_each(|bin| *bin += each);
        }
        self
    }

    /// Households in all bins.
    #[must_use]
    pub fn whole(&self) -> f64 {
        self.bins.iter().sum()
    }

    /// Variance of the noise of a weighted sum of bins, by the sums of weights and of their squares.
    #[must_use]
    pub fn noise_of(&self, weights: f64, squares: f64) -> f64 {
        (self.noise * (squares - self.shared * weights * weights)).max(0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_known_well_moves_what_is_not() {
        let counts = || Counts::new(vec![10.0, 20.0, 30.0], 4.0);
        // A whole without noise is believed.
        assert!((counts().told(90.0, 0.0).whole() - 90.0).abs() < 1e-9);
        // One that says next to nothing is not.
        assert!((counts().told(90.0, 1e12).whole() - 60.0).abs() < 1e-6);
        // As uncertain as the sum of bins: in the middle, with half the variance.
        let both = counts().told(90.0, 12.0);
        assert!((both.whole() - 75.0).abs() < 1e-9);
        assert!((both.noise_of(3.0, 3.0) - 6.0).abs() < 1e-9);
        // Without noise there is nothing to bring together.
        assert_eq!(Counts::new(vec![1.0, 2.0], 0.0).told(3.0, 0.0), Counts::new(vec![1.0, 2.0], 0.0));
    }
}
