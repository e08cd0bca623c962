//! Random draws the rearrangements rest on: whole numbers, hypergeometric counts, tables with given margins.
//!
//! Sources: multiply-shift for whole numbers (Lemire 2019, ACM Trans Model Comput Simul 29:3); hypergeometric counts by
//! inversion outwards from the mode (Devroye 1986, Non-Uniform Random Variate Generation, from memory); tables row by row
//! from their margins (cf. Patefield 1981, Appl Stat 30:91).

use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::Rng;

/// Most words (and most outcomes) that can be told apart: a byte each keeps the inner loop in the nearest cache.
pub(super) const MOST_KINDS: usize = 256;

/// A number from 0 to `n - 1`; the bias of the multiplication is at most n / 2^64.
#[inline]
pub(super) fn below(rng: &mut Xoshiro256PlusPlus, n: u64) -> u64 {
    ((u128::from(rng.next_u64()) * u128::from(n)) >> 64) as u64
}

#[inline]
fn unit(rng: &mut Xoshiro256PlusPlus) -> f64 {
    (rng.next_u64() >> 11) as f64 * (1.0 / (1u64 << 53) as f64)
}

/// Draws a table with these margins and adds it to `table`, word by word.
pub(super) fn draw_table(
    words: &[(u8, u64)],
    outcomes: &[(u8, u64)],
    columns: usize,
    log_factorial: &[f64],
    rng: &mut Xoshiro256PlusPlus,
    table: &mut [i64],
) {
    let Some(((last_outcome, last_count), others)) = outcomes.split_last() else { return };
    let mut left: u64 = words.iter().map(|word| word.1).sum();
    // Presses of each word not given an outcome yet.
    let mut free = [0u64; MOST_KINDS];
    let free = &mut free[..words.len()];
    for (slot, word) in free.iter_mut().zip(words) {
        *slot = word.1;
    }
    for (outcome, count) in others {
        let (mut to_place, mut pool) = (*count, left);
        for (slot, word) in free.iter_mut().zip(words) {
            if to_place == 0 {
                break;
            }
            let taken = hypergeometric(*slot, to_place, pool, log_factorial, rng);
            table[usize::from(word.0) * columns + usize::from(*outcome)] += taken as i64;
            pool -= *slot;
            *slot -= taken;
            to_place -= taken;
        }
        left -= count;
    }
    debug_assert_eq!(left, *last_count);
    for (slot, word) in free.iter().zip(words) {
        table[usize::from(word.0) * columns + usize::from(*last_outcome)] += *slot as i64;
    }
}

/// How many of `drawn` balls, taken from `total` of which `marked` are marked, are marked.
fn hypergeometric(marked: u64, drawn: u64, total: u64, log_factorial: &[f64], rng: &mut Xoshiro256PlusPlus) -> u64 {
    let least = (marked + drawn).saturating_sub(total);
    let most = marked.min(drawn);
    if least == most {
        return least;
    }
    let (m, k, n) = (marked as f64, drawn as f64, total as f64);
    let mode = (((m + 1.0) * (k + 1.0) / (n + 2.0)) as u64).clamp(least, most);
    let lf = |x: u64| log_factorial[x as usize];
    let log_p = lf(marked) - lf(mode) - lf(marked - mode) + lf(total - marked)
        - lf(drawn - mode)
        - lf(total + mode - marked - drawn)
        - lf(total)
        + lf(drawn)
        + lf(total - drawn);
    // Inversion outwards from the mode, the likelier side first at each step.
    let centre = log_p.exp();
    let mut u = unit(rng) - centre;
    if u < 0.0 {
        return mode;
    }
    let rest = n - m - k;
    let (mut up, mut down) = (mode, mode);
    let (mut p_up, mut p_down) = (centre, centre);
    loop {
        let can_up = up < most;
        let can_down = down > least;
        if can_up {
            let a = up as f64;
            p_up *= (m - a) * (k - a) / ((a + 1.0) * (rest + a + 1.0));
            up += 1;
            u -= p_up;
            if u < 0.0 {
                return up;
            }
        }
        if can_down {
            let a = down as f64;
            p_down *= a * (rest + a) / ((m - a + 1.0) * (k - a + 1.0));
            down -= 1;
            u -= p_down;
            if u < 0.0 {
                return down;
            }
        }
        if !(can_up || can_down) {
            // Rounding left a sliver of probability over.
            return mode;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rand_xoshiro::rand_core::SeedableRng;

    /// The inversion draws the hypergeometric distribution itself: chi-square against exact probabilities.
    #[test]
    fn hypergeometric_draws_follow_the_distribution() {
        let (marked, drawn, total) = (30u64, 25u64, 80u64);
        let lf: Vec<f64> = (0..=80).map(|k| (1..=k).map(|i| f64::from(i).ln()).sum()).collect();
        let choose = |n: u64, k: u64| (lf[n as usize] - lf[k as usize] - lf[(n - k) as usize]).exp();
        let mut rng = Xoshiro256PlusPlus::seed_from_u64(11);
        let draws = 100_000;
        let mut seen = [0u32; 26];
        for _ in 0..draws {
            seen[hypergeometric(marked, drawn, total, &lf, &mut rng) as usize] += 1;
        }
        let mut chi2 = 0.0;
        let mut cells = 0;
        for a in 0..=25 {
            let p = choose(30, a) * choose(50, 25 - a) / choose(80, 25);
            let expected = p * f64::from(draws);
            if expected > 5.0 {
                chi2 += (f64::from(seen[a as usize]) - expected).powi(2) / expected;
                cells += 1;
            }
        }
        assert!(chi2 < 3.0 * f64::from(cells), "{chi2} over {cells} cells");
    }
}
