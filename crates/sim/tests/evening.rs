//! An evening of presses: whoever answers fairly gets enough of them to practise on, whatever the character.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use sayso_sim::rehearsal::{Character, Does, Exercise, Rehearsal, Setup, TREATS, Thing, What, play};

/// Milliseconds from a press to its answer.
const ANSWERS_MS: u32 = 1_000;
const SEEDS: u64 = 200;
/// Presses that are enough to practise on, in nine evenings of ten.
const ENOUGH: usize = 15;

/// Presses of an evening in which each is answered after a second: with its thing, with "not now" once the treats are used up.
fn presses(seed: u64, character: Character) -> usize {
    let mut evening = Rehearsal::new(Setup { seed, character, exercise: Exercise::Evening });
    let (mut seen, mut treats, mut waits) = (0, TREATS, Vec::new());
    while !evening.is_over() {
        evening.step();
        let new: Vec<_> = evening.told()[seen..].to_vec();
        seen += new.len();
        waits.extend(new.iter().filter_map(|t| match t.what {
            What::Pressed(thing) => Some((t.at_ms + ANSWERS_MS, thing)),
            _ => None,
        }));
        let (now, later) = waits.into_iter().partition(|(at, _)| *at <= evening.now_ms());
        waits = later;
        for (_, thing) in now {
            let none = thing == Thing::Treat && treats == 0;
            treats -= usize::from(thing == Thing::Treat && !none);
            evening.does(if none { Does::NotNow } else { Does::Give(thing) });
        }
    }
    evening.ends().told.iter().filter(|t| matches!(t.what, What::Pressed(_))).count()
}

#[test]
fn every_character_gives_an_evening_enough_presses_to_answer() {
    let mut few = Vec::new();
    for character in Character::ALL {
        let mut all: Vec<usize> = (0..SEEDS).map(|seed| presses(seed, character)).collect();
        all.sort_unstable();
        let at = |share: usize| all[share * (all.len() - 1) / 100];
        let enough = all.iter().filter(|n| **n >= ENOUGH).count();
        eprintln!("{character:?}: 5 % {}, middle {}, 95 % {}; {enough} of {SEEDS} enough", at(5), at(50), at(95));
        if enough * 10 < 9 * all.len() {
            few.push((character, enough));
        }
    }
    assert!(few.is_empty(), "of {SEEDS} evenings so many had {ENOUGH} presses: {few:?}");
}

#[test]
fn the_first_press_of_an_evening_comes_soon_and_not_at_once() {
    for character in Character::ALL {
        for seed in 0..60 {
            let run = play(Setup { seed, character, exercise: Exercise::Evening }, &[]);
            let first = run.told.iter().find(|t| matches!(t.what, What::Pressed(_))).map(|t| t.at_ms);
            assert!(first.is_some_and(|ms| (5_000..=20_000).contains(&ms)), "{character:?} {seed}: {first:?}");
        }
    }
}
