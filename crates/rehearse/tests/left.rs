//! What was held out, or lay there, as the animal left tells nothing of the person.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

mod common;

use common::{run as by_hand, you};
use sayso_rehearse::{Change, change, conduct};
use sayso_sim::rehearsal::{Character, Does, Exercise, Run, Setup, Thing, What, play, read};

const BALL: Thing = Thing::Ball;

fn setup(exercise: Exercise, character: Character, seed: u64) -> Setup {
    Setup { seed, character, exercise }
}

fn played(exercise: Exercise, character: Character, seed: u64, acts: &str) -> Run {
    play(setup(exercise, character, seed), &read(acts, 300_000).unwrap())
}

fn named(run: &Run) -> Change {
    change(&conduct(run), run).change
}

#[test]
fn what_was_held_out_as_it_left_is_no_choice_and_no_haste() {
    // Held out at 7 s; it goes at 7.6 s, and the next pair is held out once it is back.
    let run = played(Exercise::Likes, Character::Old, 206, "t.7000_t.16400_e.30000");
    let leaves = run.told.iter().find(|t| t.what == What::Leaves).unwrap().at_ms;
    let comes = run.told.iter().find(|t| t.what == What::Comes && t.at_ms > leaves).unwrap().at_ms;
    assert!((7_000..16_400).contains(&leaves) && comes < 16_400, "{:?}", run.told);
    let c = conduct(&run);
    assert_eq!(c.held.value, Some(1.0), "{:?}", run.told);
    assert_eq!(c.held.n, 1);
    assert_eq!(c.chosen.iter().map(|(_, held)| held).sum::<usize>(), 2, "one pair");

    let told = |more: &[(u32, What)]| {
        let first = [(0, What::Joined), (1_000, you(Does::Two)), (1_000, What::Held(BALL, Thing::Out))];
        conduct(&by_hand(setup(Exercise::Likes, Character::Eager, 1), 60_000, &[&first, more].concat()))
    };
    let next = [(20_000, you(Does::Two)), (20_000, What::Held(BALL, Thing::Treat)), (22_000, What::Chose(BALL))];
    let left = [&[(1_500, What::Leaves), (9_000, What::Comes), (12_000, What::Joined)][..], &next].concat();
    assert_eq!((told(&left).held.value, told(&left).held.n), (Some(1.0), 1));
    assert_eq!(told(&left).chosen[BALL.place()], (1, 1));
    // Whoever holds out the next while it still chooses has not held still.
    assert_eq!((told(&next).held.value, told(&next).held.n), (Some(0.5), 2));
}

#[test]
fn what_lay_there_as_it_left_is_not_said_to_have_been_left_untaken() {
    // It goes at 29 s, before it can take what was given at 28.7 s.
    let acts = "s0.3000_g0.3700_s1.12000_g1.12700_s0.21000_g0.21700";
    let run = played(Exercise::Leaving, Character::Eager, 7, &format!("{acts}_s0.28100_g0.28700_e.35000"));
    assert!(run.told.iter().any(|t| t.what == What::Leaves && (28_700..30_000).contains(&t.at_ms)), "{:?}", run.told);
    let without = played(Exercise::Leaving, Character::Eager, 7, &format!("{acts}_e.35000"));
    assert_eq!(conduct(&run).taken, conduct(&without).taken);
    assert_eq!(named(&run), named(&without));

    let taken = |told: &[(u32, What)]| {
        let whole = [&[(0, What::Joined)], told].concat();
        let share = conduct(&by_hand(setup(Exercise::Free, Character::Eager, 1), 60_000, &whole)).taken;
        (share.value, share.n)
    };
    let show = (10_000, you(Does::Show(BALL)));
    let give = (10_800, you(Does::Give(BALL)));
    assert_eq!(taken(&[show, give, (11_400, What::Ignored(BALL))]), (Some(0.0), 1));
    assert_eq!(taken(&[show, give, (11_200, What::Leaves)]), (None, 0));
    // It left before the thing came, or just before the press.
    assert_eq!(taken(&[show, (10_500, What::Leaves), give, (12_800, What::Ignored(BALL))]), (None, 0));
    assert_eq!(taken(&[(9_401, What::Leaves), show, give, (12_800, What::Ignored(BALL))]), (None, 0));
    assert_eq!(taken(&[(9_400, What::Leaves), show, give, (12_800, What::Ignored(BALL))]), (Some(0.0), 1));
}
