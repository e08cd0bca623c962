//! The animal of a rehearsal: the same again from the same acts, and the worse for being pushed.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_precision_loss, missing_docs)]

use proptest::prelude::*;
use sayso_model::{SignLevel, facts};
use sayso_sim::rehearsal::{
    Act, Came, Character, Does, Exercise, LEANS_AWAY, ROOM, Rehearsal, Run, Setup, Spot, Thing, Told, What, play,
    play_with,
};

fn act(at_ms: u32, does: Does) -> Act {
    Act { at_ms, does }
}

/// A press of one word after the other every so many milliseconds, each thing so long after its press.
fn teaching(every_ms: u32, delay_ms: u32, most_ms: u32) -> Vec<Act> {
    let mut acts = Vec::new();
    let mut at = 2_000;
    let mut turn = 0;
    while at + delay_ms < most_ms {
        let thing = Thing::ALL[turn % 3];
        acts.push(act(at, Does::Show(thing)));
        acts.push(act(at + delay_ms, Does::Give(thing)));
        at += every_ms.max(delay_ms);
        turn += 1;
    }
    acts
}

fn setups(n: u64) -> impl Iterator<Item = Setup> {
    let of = move |exercise| (0..n).map(move |seed| (seed, exercise));
    Exercise::ALL.into_iter().flat_map(of).flat_map(|(seed, exercise)| {
        Character::ALL.into_iter().map(move |character| Setup { seed, character, exercise })
    })
}

fn does() -> impl Strategy<Value = Does> {
    let thing = || (0..4usize).prop_map(|i| Thing::ALL[i]);
    prop_oneof![
        thing().prop_map(Does::Show),
        thing().prop_map(Does::Give),
        thing().prop_map(Does::Offer),
        thing().prop_map(Does::Instead),
        Just(Does::Two),
        Just(Does::Again),
        Just(Does::NotNow),
        Just(Does::Call),
        Just(Does::Block),
        Just(Does::Back),
        Just(Does::Ready),
        Just(Does::Softer),
        Just(Does::Quiet),
    ]
}

fn setup() -> impl Strategy<Value = Setup> {
    (any::<u64>(), 0..5usize, 0..7usize).prop_map(|(seed, character, exercise)| Setup {
        seed,
        character: Character::ALL[character],
        exercise: Exercise::ALL[exercise],
    })
}

fn acts() -> impl Strategy<Value = Vec<Act>> {
    proptest::collection::vec((0..85_000u32, does()), 0..60).prop_map(|all| {
        let mut acts: Vec<Act> = all.into_iter().map(|(at, does)| act(at, does)).collect();
        acts.sort_by_key(|a| a.at_ms);
        acts
    })
}

fn is_inside(spot: Spot) -> bool {
    (0.0..=ROOM.0).contains(&spot.x) && (0.0..=ROOM.1).contains(&spot.y)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    #[test]
    fn the_same_acts_give_the_same_rehearsal_and_nothing_out_of_the_room(setup in setup(), acts in acts()) {
        let run = play(setup, &acts);
        prop_assert_eq!(&run, &play(setup, &acts));
        prop_assert!(run.told.windows(2).all(|w| w[0].at_ms <= w[1].at_ms), "in time");
        for motion in &run.motions {
            prop_assert!(is_inside(motion.from) && is_inside(motion.to) && motion.ends_ms >= motion.begins_ms);
        }
        let (before, after) = run.understood();
        prop_assert!(before.iter().chain(&after).all(|p| (0.0..=1.0).contains(p)));
        prop_assert!(run.demand.iter().all(|d| (0.3..=2.5).contains(d)));
        prop_assert!(run.over.0 <= setup.exercise.most_ms());
    }

    /// The page draws what comes if nothing more is done, and goes on from there when something is.
    #[test]
    fn what_is_done_later_changes_nothing_before(setup in setup(), acts in acts(), upto in 0..60usize) {
        let upto = upto.min(acts.len());
        let (first, whole) = (play(setup, &acts[..upto]), play(setup, &acts));
        let Some(next) = acts.get(upto) else { return Ok(()) };
        let before = |run: &Run| -> Vec<Told> { run.told.iter().copied().filter(|t| t.at_ms < next.at_ms).collect() };
        prop_assert_eq!(before(&first), before(&whole));
    }
}

#[test]
fn live_it_goes_as_it_does_when_played() {
    for setup in setups(2) {
        let acts = teaching(7_000, 1_000, setup.exercise.most_ms());
        let mut live = Rehearsal::new(setup);
        let mut left = acts.iter().peekable();
        let mut done = Vec::new();
        while !live.is_over() {
            while let Some(next) = left.next_if(|a| a.at_ms <= live.now_ms()) {
                live.does(next.does);
                done.push(act(live.now_ms(), next.does));
            }
            live.step();
        }
        assert_eq!(live.ends(), play(setup, &done), "{setup:?}");
    }
}

fn mean(of: impl Iterator<Item = f64>) -> f64 {
    let all: Vec<f64> = of.collect();
    all.iter().sum::<f64>() / all.len() as f64
}

fn showing(seed: u64, character: Character) -> Setup {
    Setup { seed, character, exercise: Exercise::Showing }
}

#[test]
fn what_is_given_sooner_teaches_more() {
    for character in Character::ALL {
        let learned = |delay| {
            mean((0..60).map(|seed| play(showing(seed, character), &teaching(9_000, delay, 115_000)).learned()))
        };
        let (soon, late, later) = (learned(500), learned(3_000), learned(7_000));
        assert!(soon > 1.3 * late && late > 1.3 * later && later > 0.0, "{character:?}: {soon} {late} {later}");
    }
}

/// All else being as it was: so it can never have been the worse for it.
#[test]
fn a_second_sooner_would_have_taught_more_of_every_word_that_was_given() {
    for setup in setups(6) {
        let run = play(setup, &teaching(9_000, 2_000, 115_000));
        assert_eq!(run.had(run.pairings.iter().copied()), run.logits.1, "what happened adds up: {setup:?}");
        let sooner = run.had(run.pairings.iter().map(|p| p.sooner(1.0)));
        assert!(sooner.iter().zip(&run.logits.1).all(|(sooner, was)| sooner >= was), "{setup:?}");
        let given = run.pairings.iter().any(|p| p.came == Came::Shown);
        let room = run.logits.1.iter().all(|logit| *logit < 2.5);
        assert!(!given || !room || sooner.iter().sum::<f64>() > run.logits.1.iter().sum::<f64>(), "{setup:?}");
    }
}

#[test]
fn one_that_means_nothing_learns_nothing() {
    let traits = sayso_sim::rehearsal::Traits { means: false, plays: 0.05, ..Character::Eager.traits() };
    for seed in 0..20 {
        let run = play_with(showing(seed, Character::Eager), traits, &teaching(8_000, 500, 115_000));
        assert_eq!(run.logits.0, run.logits.1);
        assert!(run.told.iter().any(|t| matches!(t.what, What::Pressed(_))) || seed > 0, "it presses all the same");
    }
}

fn signs(run: &Run, level: SignLevel) -> usize {
    run.told.iter().filter(|t| matches!(t.what, What::Sign(s) if s.level == level)).count()
}

#[test]
fn being_called_barred_and_hurried_shows_in_what_it_feels() {
    for character in Character::ALL {
        let calm = teaching(9_000, 800, 75_000);
        let mut pushed = calm.clone();
        for at in (5_000..70_000).step_by(6_000) {
            pushed.push(act(at, Does::Call));
            pushed.push(act(at + 700, Does::Again));
        }
        pushed.sort_by_key(|a| a.at_ms);
        let of =
            |acts: &[Act], level| mean((0..40).map(|seed| signs(&play(showing(seed, character), acts), level) as f64));
        let (calm_mild, calm_strong) = (of(&calm, SignLevel::Mild), of(&calm, SignLevel::Strong));
        let (mild, strong) = (of(&pushed, SignLevel::Mild), of(&pushed, SignLevel::Strong));
        assert!(
            mild + strong > calm_mild + calm_strong + 0.5,
            "{character:?}: {calm_mild} {calm_strong} {mild} {strong}"
        );
        assert!(calm_strong < 0.25, "{character:?} is at ease when left in peace: {calm_strong}");
    }
}

#[test]
fn one_that_guards_its_food_says_so_and_the_eager_one_does_not() {
    let mut acts = Vec::new();
    for at in (3_000..100_000).step_by(10_000) {
        acts.extend([act(at, Does::Show(Thing::Treat)), act(at + 500, Does::Give(Thing::Treat))]);
        acts.extend([act(at + 2_200, Does::Show(Thing::Ball)), act(at + 2_600, Does::Give(Thing::Ball))]);
    }
    let of = |character| {
        mean((0..40).map(|seed| {
            let run = play(showing(seed, character), &acts);
            (signs(&run, SignLevel::Mild) + signs(&run, SignLevel::Strong)) as f64
        }))
    };
    let (guards, eager) = (of(Character::Guards), of(Character::Eager));
    assert!(guards > eager + 0.5, "{guards} {eager}");
}

#[test]
fn one_that_wants_to_go_goes_and_is_gone_unless_its_way_is_barred() {
    for character in Character::ALL {
        for seed in 0..20 {
            let setup = Setup { seed, character, exercise: Exercise::Leaving };
            let run = play(setup, &[]);
            let leaves = run.told.iter().find(|t| t.what == What::Leaves).expect("it goes");
            assert!(leaves.at_ms <= 42_100 && !run.stays, "{character:?}");
            let barring: Vec<Act> = (0..5).map(|i| act(leaves.at_ms + 150 + i * 2_800, Does::Block)).collect();
            let barred = play(setup, &barring);
            assert!(barred.told.iter().any(|t| t.what == What::Barred), "{character:?} {seed}");
            let strain = |run: &Run| signs(run, SignLevel::Mild) + signs(run, SignLevel::Strong);
            assert!(strain(&barred) > strain(&run), "{character:?} {seed}");
        }
    }
}

#[test]
fn an_evening_has_its_presses_and_the_wait_of_an_invitation_is_five_seconds() {
    let presses = |character| {
        mean((0..20).map(|seed| {
            let setup = Setup { seed, character, exercise: Exercise::Evening };
            let mut live = Rehearsal::new(setup);
            let mut answered = 0;
            while !live.is_over() {
                live.step();
                let last = live.told().iter().rev().find(|t| matches!(t.what, What::Pressed(_))).copied();
                if let Some(Told { at_ms, what: What::Pressed(thing) }) = last
                    && at_ms != answered
                    && live.now_ms() > at_ms + 900
                {
                    answered = at_ms;
                    live.does(Does::Give(thing));
                }
            }
            live.ends().told.iter().filter(|t| matches!(t.what, What::Pressed(_))).count() as f64
        }))
    };
    for character in [Character::Eager, Character::Quick, Character::Guards] {
        assert!(presses(character) > 20.0, "{character:?}: {}", presses(character));
    }
    let setup = Setup { seed: 3, character: Character::Eager, exercise: Exercise::Inviting };
    let run = play(setup, &[act(10_000, Does::Offer(Thing::Treat))]);
    let over =
        run.told.iter().find(|t| t.at_ms > 10_000 && matches!(t.what, What::WaitOver(_) | What::Pressed(_))).unwrap();
    assert!(over.at_ms <= 15_100 && (matches!(over.what, What::Pressed(_)) || over.at_ms >= 15_000), "{over:?}");
}

#[test]
fn what_it_is_invited_to_and_what_is_held_out_end_as_it_leaves() {
    let (mut invited, mut held) = (0, 0);
    for setup in setups(12) {
        for (does, ended) in [(Does::Offer(Thing::Treat), &mut invited), (Does::Two, &mut held)] {
            let acts: Vec<Act> = (1..25).map(|i| act(i * 6_100, does)).collect();
            let (mut open, mut left) = (false, false);
            for told in play(setup, &acts).told {
                match told.what {
                    What::Person(Does::Offer(_)) | What::Held(..) => open = true,
                    What::Leaves => {
                        *ended += usize::from(open);
                        (open, left) = (false, true);
                    }
                    What::Comes | What::Joined | What::Barred => left = false,
                    What::WaitOver(_) | What::Chose(_) | What::ChoseNone => {
                        assert!(!left, "{setup:?}: {told:?}");
                        open = false;
                    }
                    What::Pressed(_) => open = false,
                    _ => {}
                }
            }
        }
    }
    assert!(invited > 20 && held > 20, "{invited} {held}");
}

#[test]
fn signs_are_those_of_the_facts_at_their_level() {
    let mut seen = 0;
    for setup in setups(12) {
        let species = setup.character.species();
        let acts: Vec<Act> =
            (1..40).map(|i| act(i * 2_000, if i % 3 == 0 { Does::Call } else { Does::Show(Thing::Treat) })).collect();
        for told in play(setup, &acts).told {
            let What::Sign(sign) = told.what else { continue };
            seen += 1;
            if sign.id == LEANS_AWAY {
                assert_eq!(sign.level, SignLevel::Mild);
                continue;
            }
            let fact = facts::signs(species).into_iter().find(|f| f.id == sign.id).expect("a sign of the facts");
            assert_eq!(fact.level, sign.level.name(), "{species:?} {}", sign.id);
        }
    }
    assert!(seen > 20, "{seen}");
}

#[test]
fn what_is_chosen_of_two_follows_what_is_liked_and_every_pair_comes_on_both_sides() {
    let (mut agree, mut all) = (0, 0);
    for seed in 0..60 {
        let setup = Setup { seed, character: Character::ALL[seed as usize % 5], exercise: Exercise::Likes };
        let mut live = Rehearsal::new(setup);
        let mut next = 0;
        while !live.is_over() {
            live.step();
            let busy = live.told().iter().rev().find(|t| !matches!(t.what, What::Looks(_) | What::LooksUp));
            let waits = busy.is_some_and(|t| matches!(t.what, What::Held(..) | What::Chose(_) | What::Comes));
            if live.is_there() && !waits && live.now_ms() >= next {
                next = live.now_ms() + 3_000;
                live.does(Does::Two);
            }
        }
        let run = live.ends();
        let mut pair = None;
        let mut held = std::collections::BTreeSet::new();
        for told in &run.told {
            match told.what {
                What::Held(left, right) => {
                    pair = Some((left, right));
                    held.insert((left, right));
                }
                What::Chose(thing) => {
                    let (left, right) = pair.unwrap();
                    let other = if thing == left { right } else { left };
                    all += 1;
                    agree += usize::from(run.likes[thing.place()] > run.likes[other.place()]);
                }
                _ => {}
            }
        }
        if held.len() == 12 {
            assert!(held.iter().all(|(left, right)| held.contains(&(*right, *left))));
        }
    }
    assert!(all > 200 && agree as f64 / all as f64 > 0.6, "{agree} of {all}");
}
