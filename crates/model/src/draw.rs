//! Draws that follow from ids alone, so that the page, the reading afterwards and anybody else come to the same ones, and a
//! draw can be neither repeated until it suits nor known before its id is made.
//!
//! An id is a UUID of version 7, whose last 62 bits are random (RFC 9562). They are mixed by the last step of `SplitMix64`
//! (Steele, Lea & Flood 2014, OOPSLA) and brought below `n` as the upper half of a product (Lemire 2019, ACM Trans Model
//! Comput Simul 29:3); the bias is at most n / 2^64.

use crate::id::{AnimalId, EventId, RoundId, SwapId, WordId};
use crate::time::Moment;
use uuid::Uuid;

/// Words called for in a round. Four keep a round short enough to be finished and long enough to tell something.
pub const CALLS: u16 = 4;
/// One answer in this many brings the partner's thing while a household agrees to swaps (8 is a welfare choice of ours).
pub const ONE_IN: u16 = 8;
/// Days for which two words stay partners.
pub const PARTNER_DAYS: i32 = 4;

const GOLDEN: u64 = 0x9E37_79B9_7F4A_7C15;

const fn mix(mut z: u64) -> u64 {
    z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

const fn low(id: Uuid) -> u64 {
    id.as_u64_pair().1
}

const fn of_two(one: Uuid, other: Uuid) -> u64 {
    mix(low(one).wrapping_add(mix(low(other))))
}

fn below(bits: u64, n: usize) -> usize {
    // The upper half of the product is below n.
    usize::try_from((u128::from(bits) * n as u128) >> 64).unwrap_or(0)
}

/// The word called for in call `number` (from 1) of a round with those words to hand; none without words.
#[must_use]
pub fn called(round: RoundId, number: u16, words: &[WordId]) -> Option<WordId> {
    let bits = mix(low(round.0).wrapping_add(GOLDEN.wrapping_mul(u64::from(number))));
    words.get(below(bits, words.len())).copied()
}

/// Whether the answer to a press brings the partner's thing.
#[must_use]
pub fn swapped(swap: SwapId, press: EventId, one_in: u16) -> bool {
    below(of_two(press.0, swap.0), usize::from(one_in.max(1))) == 0
}

/// A number that follows from an event's id alone. Of many events the one with the smallest is one drawn by lot, and stays it until
/// one with a smaller comes.
#[must_use]
pub fn lot(event: EventId) -> u64 {
    mix(low(event.0))
}

/// Heads or tails for a word of an animal, which follows from their ids alone and so is the same whatever becomes of the word.
#[must_use]
pub fn heads(animal: AnimalId, word: WordId) -> bool {
    below(of_two(word.0, animal.0), 2) == 0
}

/// One of `n` for a word of an animal, from 0, which follows from their ids alone; draws of other numbers have nothing to do with each other.
#[must_use]
pub fn one_of(animal: AnimalId, word: WordId, draw: u64, n: usize) -> usize {
    below(mix(of_two(word.0, animal.0).wrapping_add(GOLDEN.wrapping_mul(draw))), n)
}

/// Blocks of [`PARTNER_DAYS`] since a time of swaps began; none before it.
#[must_use]
pub fn block(begun: Moment, at: Moment) -> Option<usize> {
    let days = at.seconds_since(begun) / 86_400.0;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    (days >= 0.0).then(|| (days / f64::from(PARTNER_DAYS)) as usize)
}

/// The word that is the partner of `word` in a block: everybody meets everybody in turn (the circle method of tournament
/// schedules). None for a word that does not take part, or sits this block out because the number is odd.
#[must_use]
pub fn partner(words: &[WordId], block: usize, word: WordId) -> Option<WordId> {
    let at = words.iter().position(|w| *w == word)?;
    if words.len() < 2 {
        return None;
    }
    let last = words.len() + words.len() % 2 - 1;
    let turn = block % last;
    let other = if at == last {
        // The one whose double is this turn.
        (0..last).find(|i| 2 * i % last == turn)?
    } else {
        let other = (turn + last - at) % last;
        if other == at { last } else { other }
    };
    words.get(other).copied()
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use std::collections::{BTreeMap, BTreeSet};

    fn words(n: u128) -> Vec<WordId> {
        (1..=n).map(|i| WordId(Uuid::from_u128(i))).collect()
    }

    #[test]
    fn every_word_is_called_as_often_as_any_other_and_calls_do_not_hang_together() {
        let words = words(4);
        let mut pairs: BTreeMap<(WordId, WordId), u32> = BTreeMap::new();
        for i in 0..16_000u128 {
            let round = RoundId(Uuid::from_u128(i * 7919 + 5));
            *pairs.entry((called(round, 1, &words).unwrap(), called(round, 2, &words).unwrap())).or_default() += 1;
        }
        // 16 pairs, 1000 each expected, standard deviation 31.
        assert!(pairs.len() == 16 && pairs.values().all(|n| (870..1130).contains(n)), "{pairs:?}");
        assert_eq!(called(RoundId(Uuid::nil()), 1, &[]), None);
    }

    #[test]
    fn one_answer_in_eight_is_swapped() {
        let swap = SwapId(Uuid::from_u128(99));
        let n = (0..16_000u128).filter(|i| swapped(swap, EventId(Uuid::from_u128(i * 31 + 2)), 8)).count();
        assert!((1830..2170).contains(&n), "{n}"); // 2000 expected, standard deviation 42
    }

    #[test]
    fn draws_for_a_word_are_even_and_have_nothing_to_do_with_each_other() {
        let mut both: BTreeMap<(bool, usize, usize), u32> = BTreeMap::new();
        for i in 0..24_000u128 {
            let (animal, word) = (AnimalId(Uuid::from_u128(i / 5 + 3)), WordId(Uuid::from_u128(i * 7919 + 11)));
            let drawn = (heads(animal, word), one_of(animal, word, 1, 4), one_of(animal, word, 2, 3));
            *both.entry(drawn).or_default() += 1;
        }
        // 24 outcomes, 1000 each expected, standard deviation 31.
        assert!(both.len() == 24 && both.values().all(|n| (870..1130).contains(n)), "{both:?}");
    }

    #[test]
    fn partners_are_mutual_and_everybody_meets_everybody() {
        for n in 2..=9u128 {
            let words = words(n);
            let turns = words.len() + words.len() % 2 - 1;
            let mut met = BTreeSet::new();
            for block in 0..turns {
                for w in &words {
                    if let Some(p) = partner(&words, block, *w) {
                        assert_eq!(partner(&words, block, p), Some(*w), "{n} words, block {block}");
                        assert_ne!(p, *w);
                        met.insert((*w, p));
                    }
                }
            }
            assert_eq!(met.len() as u128, n * (n - 1), "{n} words");
        }
        assert_eq!(partner(&words(1), 0, words(1)[0]), None);
    }

    /// The client draws the same: `tests/reference/draws.json` is read on both sides.
    #[test]
    fn draws_are_those_of_the_shared_reference() {
        let shared = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/reference/draws.json");
        let cases: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(shared).unwrap()).unwrap();
        let words = words(5);
        for case in cases["called"].as_array().unwrap() {
            let (id, number) =
                (case["round"].as_str().unwrap(), u16::try_from(case["number"].as_u64().unwrap()).unwrap());
            let n = usize::try_from(case["words"].as_u64().unwrap()).unwrap();
            let found = called(id.parse().unwrap(), number, &words[..n]).unwrap();
            assert_eq!(found.0.as_u128() - 1, u128::from(case["index"].as_u64().unwrap()), "{case}");
        }
        for case in cases["swapped"].as_array().unwrap() {
            let id = |name: &str| case[name].as_str().unwrap();
            let one_in = u16::try_from(case["one_in"].as_u64().unwrap()).unwrap();
            let found = swapped(id("swap").parse().unwrap(), id("press").parse().unwrap(), one_in);
            assert_eq!(found, case["is"].as_bool().unwrap(), "{case}");
        }
        for case in cases["partner"].as_array().unwrap() {
            let number = |name: &str| case[name].as_u64().map(|n| usize::try_from(n).unwrap());
            let words = self::words(case["words"].as_u64().unwrap().into());
            let found = partner(&words, number("block").unwrap(), words[number("word").unwrap()]);
            assert_eq!(found, number("partner").map(|at| words[at]), "{case}");
        }
    }
}
