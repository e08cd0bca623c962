//! Situations differ in how long their episodes are. That alone must never look like a preference for a word.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use sayso_methods::understanding::MonteCarlo;
use sayso_methods::understanding::association::{PressIn, Unit, association};

/// Presses of words that have nothing to do with the situation; runs of one word where `sticky`.
fn unrelated(presses: usize, lengths: [usize; 3], per_session: usize, sticky: f64, seed: u64) -> Vec<PressIn> {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut all = Vec::new();
    let (mut session, mut last) = (0, 0);
    while all.len() < presses {
        for _ in 0..per_session {
            let outcome = rng.random_range(0..3);
            // One to twice the mean length less one.
            for _ in 0..rng.random_range(1..2 * lengths[outcome]) {
                let word = if rng.random::<f64>() < sticky { last } else { rng.random_range(0..4) };
                last = word;
                all.push(PressIn { session, word, outcome });
            }
        }
        session += 1;
    }
    all
}

/// Households of 200 in which something is claimed at 5 %.
fn claims(presses: usize, lengths: [usize; 3], per_session: usize, sticky: f64) -> usize {
    let draws = |seed| MonteCarlo { seed, most: 399, enough: 40 };
    (0..200)
        .filter(|seed| {
            let data = unrelated(presses, lengths, per_session, sticky, *seed);
            association(&data, Unit::Episode, draws(*seed)).unwrap().overall.p <= 0.05
        })
        .count()
}

#[test]
fn long_episodes_of_one_situation_are_no_preference() {
    // At 5 % a count of 25 or more of 200 has a probability below 0.0001.
    for (presses, lengths, per_session, sticky) in [
        (300, [5, 5, 5], 8, 0.0),
        (300, [10, 5, 2], 8, 0.0),
        (3000, [6, 5, 4], 8, 0.0),
        (3000, [10, 5, 2], 8, 0.0),
        (3000, [10, 5, 2], 8, 0.7),
        (3000, [10, 5, 2], 60, 0.7),
        (300, [10, 5, 2], 30, 0.5),
    ] {
        let found = claims(presses, lengths, per_session, sticky);
        println!(
            "{presses} presses, episodes of {lengths:?}, {per_session} a session, sticky {sticky}: {found} of 200"
        );
        assert!(found < 25, "{presses} presses, {lengths:?}: {found} of 200 claimed at 5 %");
    }
}

#[test]
fn a_real_preference_is_still_found() {
    let mut data = unrelated(600, [10, 5, 2], 8, 0.3, 7);
    let mut rng = ChaCha8Rng::seed_from_u64(1);
    for press in &mut data {
        if press.outcome == 2 && rng.random::<f64>() < 0.6 {
            press.word = 3;
        }
    }
    let found = association(&data, Unit::Episode, MonteCarlo::seeded(1)).unwrap();
    assert!(found.by_word[3].p.p < 0.001, "{:?}", found.by_word[3]);
    assert_eq!(found.by_word[3].leading_outcome, 2);
}
