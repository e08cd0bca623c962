//! An interval of a share from what the choice of households and what the noise may do.

use sayso_methods::stats::normal_cdf;

/// Every share `s` that is not too far from the estimate: `(estimate − s)² ≤ z² (s (1 − s) / n + noise)`.
///
/// Without noise it is Wilson's (1927) interval, but for a few of many (see [`of_few`]); for a survival curve `n` is the number of households that would make the same variance,
/// as Rothman (1978) has it. `noise` is the variance of the estimate's noise. Ends lie within 0 and 1.
#[must_use]
pub fn interval(estimate: f64, n: f64, noise: f64, z: f64) -> (f64, f64) {
    let n = n.max(1.0);
    let k = z * z / n;
    let middle = (2.0 * estimate + k) / (2.0 * (1.0 + k));
    let constant = (estimate * estimate - z * z * noise) / (1.0 + k);
    // Where noise took the estimate out of reach of every share, the nearest end is what is left.
    let half = (middle * middle - constant).max(0.0).sqrt();
    let (low, high) = ((middle - half).clamp(0.0, 1.0), (middle + half).clamp(0.0, 1.0));
    if noise > 0.0 {
        return (low, high);
    }
    (low.min(of_few(estimate * n, n, z)), high.max(1.0 - of_few((1.0 - estimate) * n, n, z)))
}

/// Of a few whole ones of `n` Wilson's near end misses too often, as it jumps from one number to the next; there it is the share of which as
/// many or more are seen as often as all misses are allowed, by Poisson's law (Brown, Cai and DasGupta 2001). 1 where they are not few.
fn of_few(seen: f64, n: f64, z: f64) -> f64 {
    let few = if n > 50.0 { 3.0 } else { 2.0 };
    if (1.0..=few).contains(&seen.round()) { mean_of(seen, outside(z)) / n } else { 1.0 }
}

/// The mean of which so many, to the nearest whole number, or more are seen with such a chance, by Poisson's law.
pub fn mean_of(seen: f64, chance: f64) -> f64 {
    let seen = seen.round().max(0.0);
    let (mut low, mut high) = (0.0, seen);
    for _ in 0..40 {
        let mean: f64 = f64::midpoint(low, high);
        let (mut term, mut fewer, mut number) = ((-mean).exp(), 0.0, 0.0);
        while number < seen {
            fewer += term;
            number += 1.0;
            term *= mean / number;
        }
        if 1.0 - fewer < chance { low = mean } else { high = mean }
    }
    low
}

/// What a normal distribution has beyond so many standard deviations, on both sides.
pub fn outside(z: f64) -> f64 {
    2.0 * normal_cdf(-z)
}

/// The excess kurtosis of Laplace noise.
const OF_LAPLACE: f64 = 3.0;

/// Standard deviations that hold what `z` of a normal distribution do, where part of `variance` is a weighted sum of Laplace noises, each bin's
/// of `noise` and the sum of so many `draws`; `fourths` are the weights' fourth powers, added up. Its tails are heavier, most where one draw
/// is all there is: the first term of Cornish and Fisher's (1938) expansion.
#[must_use]
pub fn wider(z: f64, (noise, draws): (f64, f64), fourths: f64, variance: f64) -> f64 {
    if noise <= 0.0 || variance <= 0.0 {
        return z;
    }
    let most = OF_LAPLACE / draws.max(1.0);
    let excess = (most * noise * noise * fourths / (variance * variance)).min(most);
    z + excess * (z * z * z - 3.0 * z) / 24.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_draw_of_noise_is_held_as_often_as_it_should_be() {
        // Laplace noise of scale 1 has variance 2 and is beyond x to either side with the chance exp(-x): 0.05 would be 2.996.
        let z = 1.959_964;
        let far = wider(z, (2.0, 1.0), 1.0, 2.0) * 2.0_f64.sqrt();
        assert!((0.045..0.05).contains(&(-far).exp()), "{far}");
        // Of many draws, beside much else, or without noise it is as good as normal.
        let others = [wider(z, (2.0, 1e6), 1.0, 2.0), wider(z, (2.0, 1.0), 1.0, 2e3), wider(z, (0.0, 1.0), 1.0, 2.0)];
        assert!(others.iter().all(|wide| (wide - z).abs() < 1e-3), "{others:?}");
    }

    #[test]
    fn whole_numbers_make_no_gap_at_the_ends() {
        for (n, mean) in [(300.0, 0.55), (300.0, 0.18), (1_000.0, 1.02), (50.0, 0.45)] {
            let truth = mean / n;
            let (mut chance, mut held) = (f64::exp(-mean), 0.0);
            for seen in 0..40 {
                let share = f64::from(seen) / n;
                let ((low, high), (left, right)) = (interval(share, n, 0.0, 1.96), interval(1.0 - share, n, 0.0, 1.96));
                assert!((left - (1.0 - high)).abs() < 1e-9 && (right - (1.0 - low)).abs() < 1e-9, "{seen} of {n}");
                held += if (low..=high).contains(&truth) { chance } else { 0.0 };
                chance *= mean / f64::from(seen + 1);
            }
            // Between 93 and 97.5 there may be no number: half a household is seen as none, one, or two.
            assert!(held > 0.93, "{mean} of {n}: {held}");
        }
    }

    #[test]
    fn without_noise_it_is_wilsons() {
        // 3 of 20 at 95 %: Wilson's interval worked out by hand; of so few of 20 only 1 and 2 are too few for it.
        let (low, high) = interval(0.15, 20.0, 0.0, 1.959_963_985);
        assert!((low - 0.052_369).abs() < 1e-5 && (high - 0.360_418).abs() < 1e-5, "{low} {high}");
        let (low, high) = interval(0.0, 20.0, 0.0, 1.959_963_985);
        assert!(low == 0.0 && (high - 0.161_125).abs() < 1e-5, "{high}");
    }

    #[test]
    fn noise_alone_adds_as_much_as_it_varies() {
        let (low, high) = interval(0.4, 1e12, 0.01, 2.0);
        assert!((low - 0.2).abs() < 1e-6 && (high - 0.6).abs() < 1e-6, "{low} {high}");
    }

    #[test]
    fn an_estimate_out_of_reach_still_has_an_interval() {
        for estimate in [-0.5, -0.01, 1.01, 1.5] {
            let (low, high) = interval(estimate, 50.0, 0.001, 2.0);
            assert!((0.0..=1.0).contains(&low) && low <= high && high <= 1.0, "{estimate}: {low} {high}");
        }
    }
}
