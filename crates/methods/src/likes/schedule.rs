//! What to put where in each trial of a likes test, from a seed.
//!
//! Sources: every pair once a round, sides balanced (Fisher et al. 1992, J Appl Behav Anal 25:491); an array drawn at
//! random whose leftmost item moves to the right end after each choice (DeLeon & Iwata 1996, J Appl Behav Anal
//! 29:519); single items in random order (Pace et al. 1985, J Appl Behav Anal 18:249).

use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_chacha::ChaCha8Rng;

/// Two items, side by side as the learner sees them.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Pair {
    /// Round, from 1.
    pub round: u16,
    /// Index of the item on the learner's left.
    pub left: usize,
    /// Index of the item on its right.
    pub right: usize,
}

/// Every pair of `items` items once a round for `rounds` rounds, in random order.
///
/// Within a round each item stands on the left as often as on the right (within one); even rounds repeat the pairs of
/// the round before with sides changed. An item is in two trials running only where that cannot be helped.
/// Fewer than two items give no trials.
///
/// ```
/// use sayso_methods::likes::schedule::paired;
/// let trials = paired(4, 2, 7);
/// assert_eq!(trials.len(), 12);
/// assert_eq!(trials.iter().filter(|t| t.left == 0).count(), 3);
/// ```
#[must_use]
pub fn paired(items: usize, rounds: u16, seed: u64) -> Vec<Pair> {
    let mut trials = Vec::new();
    for round in 1..=rounds {
        // Rounds 1 and 2, 3 and 4, ... share a drawing, with sides changed in the second.
        let mut rng = ChaCha8Rng::seed_from_u64(seed ^ (u64::from((round - 1) / 2) << 32));
        let mut names: Vec<usize> = (0..items).collect();
        names.shuffle(&mut rng);
        let mut pairs = balanced_pairs(items, round % 2 == 0, &names);
        let mut order = ChaCha8Rng::seed_from_u64(seed ^ (u64::from(round) << 32) ^ 0x5eed);
        pairs.shuffle(&mut order);
        let mut last: Option<(usize, usize)> = None;
        while !pairs.is_empty() {
            let apart = |&(l, r): &(usize, usize)| last.is_none_or(|(a, b)| l != a && l != b && r != a && r != b);
            let (left, right) = pairs.remove(pairs.iter().position(apart).unwrap_or(0));
            last = Some((left, right));
            trials.push(Pair { round, left, right });
        }
    }
    trials
}

/// All pairs, oriented round a circle so that each item is on the left as often as on the right, within one.
fn balanced_pairs(items: usize, changed: bool, names: &[usize]) -> Vec<(usize, usize)> {
    let mut pairs = Vec::new();
    for i in 0..items {
        for j in i + 1..items {
            // Of two items the one that comes first going the short way round is left.
            let first_is_left = if 2 * (j - i) == items { i % 2 == 0 } else { 2 * (j - i) < items };
            let (left, right) = if first_is_left { (names[i], names[j]) } else { (names[j], names[i]) };
            pairs.push(if changed { (right, left) } else { (left, right) });
        }
    }
    pairs
}

/// The array of a round after some choices: indices from the learner's left to its right.
///
/// Starts in random order. After each choice the chosen item is not put back and the leftmost of the others moves to
/// the right end. Choices that are not in the array are passed over.
///
/// ```
/// use sayso_methods::likes::schedule::array;
/// let first = array(5, 1, 7, &[]);
/// let next = array(5, 1, 7, &first[..1]);
/// assert_eq!(next.len(), 4);
/// assert!(!next.contains(&first[0]));
/// ```
#[must_use]
pub fn array(items: usize, round: u16, seed: u64, chosen: &[usize]) -> Vec<usize> {
    let mut row: Vec<usize> = (0..items).collect();
    row.shuffle(&mut ChaCha8Rng::seed_from_u64(seed ^ (u64::from(round) << 32) ^ 0xa44a));
    for choice in chosen {
        if let Some(at) = row.iter().position(|i| i == choice) {
            row.remove(at);
            if !row.is_empty() {
                row.rotate_left(1);
            }
        }
    }
    row
}

/// Single items, each once a round, in random order; no item twice running where there is more than one.
#[must_use]
pub fn singles(items: usize, rounds: u16, seed: u64) -> Vec<(u16, usize)> {
    let mut trials: Vec<(u16, usize)> = Vec::new();
    for round in 1..=rounds {
        let mut row: Vec<usize> = (0..items).collect();
        row.shuffle(&mut ChaCha8Rng::seed_from_u64(seed ^ (u64::from(round) << 32) ^ 0x51));
        if row.len() > 1 && trials.last().is_some_and(|&(_, last)| last == row[0]) {
            row.rotate_left(1);
        }
        trials.extend(row.into_iter().map(|i| (round, i)));
    }
    trials
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sides_are_balanced_within_a_round_and_exactly_over_two() {
        for items in 2..=9 {
            for seed in 0..20 {
                let trials = paired(items, 2, seed);
                assert_eq!(trials.len(), items * (items - 1));
                for i in 0..items {
                    let left = |r: u16| trials.iter().filter(|t| t.round == r && t.left == i).count();
                    let right = |r: u16| trials.iter().filter(|t| t.round == r && t.right == i).count();
                    assert!(
                        left(1).abs_diff(right(1)) <= 1,
                        "{items} items, seed {seed}: {} and {}",
                        left(1),
                        right(1)
                    );
                    assert_eq!(left(1) + left(2), items - 1);
                }
            }
        }
    }

    #[test]
    fn every_pair_comes_once_a_round() {
        let trials = paired(6, 1, 3);
        let mut pairs: Vec<_> = trials.iter().map(|t| (t.left.min(t.right), t.left.max(t.right))).collect();
        pairs.sort_unstable();
        pairs.dedup();
        assert_eq!(pairs.len(), 15);
        assert!(paired(1, 3, 3).is_empty() && paired(0, 3, 3).is_empty());
    }

    #[test]
    fn seeds_give_different_orders_and_the_same_seed_the_same() {
        assert_eq!(paired(6, 2, 1), paired(6, 2, 1));
        assert_ne!(paired(6, 2, 1), paired(6, 2, 2));
        assert_ne!(array(6, 1, 1, &[]), array(6, 2, 1, &[]));
        assert_eq!(singles(4, 3, 1).len(), 12);
        assert!(singles(4, 30, 1).windows(2).all(|w| w[0].1 != w[1].1));
    }
}
