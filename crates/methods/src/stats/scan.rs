//! Where along a series is it worst? Many stretches are looked at; the p-value allows for all of them.
//!
//! Source: permutation distribution of the largest statistic (Westfall & Young 1993, from memory). With so many draws the
//! p-value is `(as large + 1) / (draws + 1)` (Phipson & Smyth 2010, Stat Appl Genet Mol Biol 9:39).

use super::StatsError;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};

/// The stretch that stands out most.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scan {
    /// Which of the stretches given.
    pub at: usize,
    /// Its mean less that of the rest.
    pub higher_by: f64,
    /// p-value that the largest excess over all stretches is as large by chance.
    pub p: f64,
    /// Values.
    pub n: usize,
}

/// Draws of the rearrangements.
const DRAWS: u32 = 999;

/// The stretch whose values are highest against the rest, of those given as lists of indices into `values`.
///
/// The values are rearranged in runs of `run` neighbours (1: singly), so that what neighbours share does not count as a
/// finding. A stretch that holds none or all of the values is passed over.
///
/// # Errors
/// [`StatsError::OutOfRange`] for an index beyond the values, a value that is not finite, or a `run` of 0;
/// [`StatsError::NoVariation`] where all values are the same or no stretch is left.
///
/// ```
/// use sayso_methods::stats::highest_stretch;
/// let values = [0.0, 1.0, 0.0, 0.0, 1.0, 3.0, 2.0, 3.0, 0.0, 0.0, 1.0, 0.0];
/// let found = highest_stretch(&values, &[vec![0, 1, 2], vec![5, 6, 7]], 1, 4)?;
/// assert!(found.at == 1 && found.p < 0.05);
/// # Ok::<(), sayso_methods::stats::StatsError>(())
/// ```
pub fn highest_stretch(values: &[f64], stretches: &[Vec<usize>], run: usize, seed: u64) -> Result<Scan, StatsError> {
    let n = values.len();
    if run == 0 {
        return Err(StatsError::OutOfRange { what: "length of a run", value: 0.0 });
    }
    if let Some(&value) = values.iter().find(|v| !v.is_finite()) {
        return Err(StatsError::OutOfRange { what: "value", value });
    }
    if let Some(&index) = stretches.iter().flatten().find(|i| **i >= n) {
        return Err(StatsError::OutOfRange { what: "index of a value", value: index as f64 });
    }
    let all: f64 = values.iter().sum();
    let mean = all / n.max(1) as f64;
    let spread = values.iter().map(|v| (v - mean).powi(2)).sum::<f64>();
    if spread <= 0.0 || !stretches.iter().any(|s| !s.is_empty() && s.len() < n) {
        return Err(StatsError::NoVariation("a series of values"));
    }
    // Standardised, so that long and short stretches compare.
    let excess = |values: &[f64], stretch: &[usize]| {
        let inside = stretch.len() as f64;
        let sum: f64 = stretch.iter().map(|i| values[*i]).sum();
        (sum - inside * mean) / (inside * (n as f64 - inside)).sqrt()
    };
    let useful: Vec<(usize, &[usize])> =
        stretches.iter().map(Vec::as_slice).enumerate().filter(|(_, s)| !s.is_empty() && s.len() < n).collect();
    let largest = |values: &[f64]| {
        useful.iter().fold((f64::NEG_INFINITY, 0), |best, (at, stretch)| {
            let here = excess(values, stretch);
            if here > best.0 { (here, *at) } else { best }
        })
    };
    let (seen, at) = largest(values);
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(seed);
    let mut below = |n: usize| ((u128::from(rng.next_u64()) * n as u128) >> 64) as usize;
    let mut runs: Vec<&[f64]> = values.chunks(run).collect();
    let mut drawn = Vec::with_capacity(n);
    let mut as_large = 0;
    for _ in 0..DRAWS {
        for i in (1..runs.len()).rev() {
            runs.swap(i, below(i + 1));
        }
        drawn.clear();
        runs.iter().for_each(|run| drawn.extend_from_slice(run));
        // Runs that end elsewhere would else always lie in the same place.
        drawn.rotate_left(below(n));
        as_large += u32::from(largest(&drawn).0 >= seen - 1e-9);
    }
    let inside = stretches[at].len() as f64;
    let sum: f64 = stretches[at].iter().map(|i| values[*i]).sum();
    Ok(Scan {
        at,
        higher_by: sum / inside - (all - sum) / (n as f64 - inside),
        p: f64::from(as_large + 1) / f64::from(DRAWS + 1),
        n,
    })
}
