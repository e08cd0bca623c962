//! The interval of a share that is told only where enough are left to look at.

use super::interval::outside;
use sayso_methods::stats::{normal_cdf, normal_quantile};

/// A share that is told more seldom is allowed for as one that is told so often: beyond that an interval says next to nothing.
const SELDOM: f64 = 0.1;
/// Told as often as this or more often, a share needs no allowance: what is missed on the one side makes up for what is not told on the other.
const EVEN: f64 = 0.5;

/// Where a place is told, and how that hangs together with the share that has come by it.
#[derive(Clone, Copy, Debug)]
pub struct Telling {
    /// How many are left to look at.
    pub left: f64,
    /// By how much that is above the fewest of whom it is told.
    pub above: f64,
    /// How many fewer are left, on average, of a share that is larger by 1.
    pub moves: f64,
    /// The standard deviation of how many are left.
    pub spread: f64,
}

impl Telling {
    /// How often it would be told if the share were so much larger than it seems, between [`SELDOM`] and [`EVEN`].
    fn chance(&self, larger: f64) -> f64 {
        let chance = normal_cdf((self.above - self.moves * larger) / self.spread);
        if chance.is_nan() { EVEN } else { chance.clamp(SELDOM, EVEN) }
    }

    /// How many times as much noise moves such a share: fewer are left of it than seem to be, and noise is divided by how many are. In full where
    /// it is seldom told, for where it mostly is, they as often seem fewer.
    fn more(&self, larger: f64, chance: f64) -> f64 {
        1.0 + (EVEN - chance) / (EVEN - SELDOM) * self.moves * larger.max(0.0) / self.left
    }
}

/// The ends of the interval of an estimate that is told only where enough are left. `usual` has the ends by how many standard deviations they lie
/// off and by how many times as much noise there is; `rare` is the largest share of which what was seen is as rare as this, where that is
/// known otherwise.
///
/// More seem left where fewer seem to have come. So where a place is told in one of ten data sets, all those lie among them in which far too
/// few seem to have come, and a usual interval misses what is true in one of four. A share is in this interval unless the estimate is as far below it
/// as happens in so many **of the data sets that tell it** as `z` leaves outside: an interval that is conditional on having been chosen (Zhong
/// and Prentice 2008, of what passed a bar).
pub fn ends(
    estimate: f64,
    z: f64,
    telling: &Telling,
    (usual, rare): (impl Fn(f64, f64) -> (f64, f64), impl Fn(f64) -> f64),
) -> (f64, f64) {
    let (low, nearest) = usual(z, 1.0);
    let missed = outside(z);
    let end = |high: f64| {
        let chance = telling.chance(high - estimate);
        if chance >= EVEN {
            return nearest;
        }
        let z = normal_quantile(1.0 - missed * chance).map_or(z, |far| far.max(z));
        usual(z, telling.more(high - estimate, chance)).1.max(rare(missed * chance)).max(nearest)
    };
    // From without, so that it is the largest share that is not ruled out.
    let mut high = 1.0;
    for _ in 0..100 {
        let next = end(high);
        if high - next < 1e-9 {
            break;
        }
        high = next;
    }
    (low, high)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// How often an interval holds, of the data sets that tell it: an estimate and how many are left, both normal and moved by the same.
    fn held(told: f64, allowing: bool) -> f64 {
        let (truth, sd, z) = (0.6, 0.05, 1.959_964);
        let (spread, bar) = (20.0, 100.0);
        let mean = bar + spread * normal_quantile(told).unwrap_or(f64::NAN);
        let (mut all, mut those) = (0.0, 0.0);
        for step in -6_000..6_000 {
            let off = f64::from(step) / 1_000.0;
            let (weight, left, estimate) = ((-off * off / 2.0).exp(), mean + spread * off, truth - sd * off);
            let telling = Telling { left: f64::INFINITY, above: left - bar, moves: spread / sd, spread };
            let usual = |z: f64, more: f64| (estimate - z * more * sd, estimate + z * more * sd);
            let (low, high) = if allowing { ends(estimate, z, &telling, (usual, |_| 0.0)) } else { usual(z, 1.0) };
            if left >= bar {
                all += weight;
                those += if (low..=high).contains(&truth) { weight } else { 0.0 };
            }
        }
        those / all
    }

    #[test]
    fn it_holds_among_those_that_are_told() {
        for told in [0.1, 0.15, 0.25, 0.5, 0.8, 0.97] {
            let held = held(told, true);
            assert!((0.945..=0.975).contains(&held), "{told}: {held}");
        }
        // The usual interval does not.
        assert!(held(0.1, false) < 0.76 && held(0.25, false) < 0.91);
    }

    #[test]
    fn far_above_the_bar_it_is_the_usual_one() {
        let usual = |z: f64, more: f64| (0.5 - 0.05 * z * more, 0.5 + 0.05 * z * more);
        let of = |above| ends(0.5, 2.0, &Telling { left: 500.0, above, moves: 400.0, spread: 20.0 }, (usual, |_| 0.0));
        assert_eq!(of(100.0), usual(2.0, 1.0));
        let (low, high) = of(0.0);
        assert!(low == 0.4 && (0.63..=0.72).contains(&high), "{low} {high}");
    }
}
