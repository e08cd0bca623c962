//! What is told after a rehearsal, on rehearsals written by hand: each figure counts what it says, and the animal comes first.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

mod common;

use common::you;
use sayso_model::SignLevel;
use sayso_rehearse::{Change, Conduct, change, conduct, truth};
use sayso_sim::rehearsal::{
    Act, Came, Character, Does, Exercise, Over, Pairing, Run, Setup, SignSeen, Thing, What, play, read,
};

const SETUP: Setup = Setup { seed: 1, character: Character::Eager, exercise: Exercise::Free };

/// A rehearsal in which just this happened.
fn run(told: &[(u32, What)]) -> Run {
    common::run(SETUP, 60_000, told)
}

fn sign(level: SignLevel) -> What {
    What::Sign(SignSeen { level, id: "growl" })
}

/// The one thing to change after just this.
fn next(told: &[(u32, What)], exercise: Exercise) -> Change {
    let run = Run { setup: Setup { exercise, ..SETUP }, ..run(told) };
    change(&conduct(&run), &run).change
}

fn of(told: &[(u32, What)]) -> Conduct {
    conduct(&run(told))
}

/// So many of so many.
fn k_of_n(share: &sayso_advisor::Estimate) -> (usize, usize) {
    let k = share.value.map_or(0.0, |v| (v * f64::from(u32::try_from(share.n).unwrap())).round());
    (k as usize, share.n)
}

#[test]
fn delay_balance_and_answers_are_those_of_real_use() {
    let mut told = Vec::new();
    for (i, delay) in [500, 1_000, 1_500, 2_000, 2_500, 3_000, 9_000].into_iter().enumerate() {
        let (at, thing) = (i as u32 * 20_000, if i < 5 { Thing::Ball } else { Thing::Out });
        told.extend([
            (at, you(Does::Show(thing))),
            (at + delay, you(Does::Give(thing))),
            (at + delay + 600, if i % 2 == 0 { What::Took(thing) } else { What::Ignored(thing) }),
        ]);
    }
    told.push((150_000, What::Pressed(Thing::Treat)));
    told.push((151_000, you(Does::NotNow)));
    told.push((160_000, What::Pressed(Thing::Treat)));
    told.push((161_000, you(Does::Instead(Thing::Company))));
    told.push((170_000, What::Pressed(Thing::Treat)));
    told.push((178_000, What::Unanswered(Thing::Treat)));
    let mut run = run(&told);
    run.over.0 = 180_000;
    let c = conduct(&run);
    assert_eq!((c.delay.value, c.delay.n), (Some(2.0), 7));
    assert_eq!((c.delay.low, c.delay.high), (Some(0.5), Some(9.0)), "the order statistics of seven");
    assert_eq!(c.balance, [0, 5, 2, 0]);
    assert_eq!(k_of_n(&c.taken), (4, 7));
    assert_eq!(k_of_n(&c.answered), (2, 3));
    assert_eq!(c.declined[Thing::Treat.place()], (2, 3));
    assert_eq!(k_of_n(&c.alternatives), (1, 2));
    assert!((c.pace.value.unwrap() - 7.0 / 3.0).abs() < 1e-9);
}

#[test]
fn a_wait_is_kept_where_nothing_is_done_until_it_is_over() {
    let offer = |at| (at, you(Does::Offer(Thing::Ball)));
    let kept = |told: &[(u32, What)]| k_of_n(&of(told).waits);
    assert_eq!(
        kept(&[offer(1_000), (6_000, What::WaitOver(Thing::Ball)), (6_100, you(Does::Show(Thing::Ball)))]),
        (1, 1)
    );
    assert_eq!(
        kept(&[offer(1_000), (3_000, What::Pressed(Thing::Ball)), (3_400, you(Does::Give(Thing::Ball)))]),
        (1, 1)
    );
    assert_eq!(kept(&[offer(1_000), (2_000, What::Looks(Thing::Ball)), (3_000, you(Does::Again))]), (0, 1));
    assert_eq!(kept(&[offer(1_000), (3_000, you(Does::Show(Thing::Ball)))]), (0, 1));
    assert_eq!(kept(&[offer(1_000), (2_000, What::Leaves)]), (1, 1));
    assert_eq!(kept(&[offer(1_000), (2_000, you(Does::End))]), (0, 0), "ending is neither");
    assert_eq!(next(&[offer(1_000), (3_000, you(Does::Again))], Exercise::Inviting), Change::Wait);
}

#[test]
fn leaving_is_honoured_where_nothing_is_asked_until_it_is_back() {
    let honoured = |told: &[(u32, What)]| k_of_n(&of(told).leaving);
    assert_eq!(honoured(&[(1_000, What::Leaves), (4_000, What::Gone), (5_000, you(Does::End))]), (1, 1));
    assert_eq!(honoured(&[(1_000, What::Leaves), (2_000, you(Does::Call)), (4_000, What::Gone)]), (0, 1));
    assert_eq!(honoured(&[(1_000, What::Leaves), (9_000, What::Joined), (9_500, you(Does::Show(Thing::Out)))]), (1, 1));
    // Once it has set out to come back by itself, it is no longer gone; calling it back still is what it is.
    let back =
        [(1_000, What::Leaves), (9_000, What::Comes), (9_500, you(Does::Show(Thing::Out))), (13_000, What::Joined)];
    assert_eq!(honoured(&back), (1, 1));
    let called = [(1_000, What::Leaves), (8_000, you(Does::Call)), (9_000, What::Comes), (13_000, What::Joined)];
    assert_eq!(honoured(&called), (0, 1));
    let barred = [(1_000, What::Leaves), (1_200, you(Does::Block)), (1_200, What::Barred), (4_000, What::Leaves)];
    assert_eq!(honoured(&barred), (1, 2), "the second time it was let go");
    assert_eq!(next(&barred, Exercise::Leaving), Change::LetGo);
}

#[test]
fn a_mild_sign_asks_for_a_pause_and_a_strong_one_for_stepping_away() {
    let mild = |told: &[(u32, What)]| k_of_n(&of(told).mild);
    assert_eq!(mild(&[(1_000, sign(SignLevel::Mild)), (7_000, you(Does::Show(Thing::Out)))]), (1, 1));
    assert_eq!(mild(&[(1_000, sign(SignLevel::Mild)), (3_000, you(Does::Show(Thing::Out)))]), (0, 1));
    let strong = |told: &[(u32, What)]| k_of_n(&of(told).strong);
    assert_eq!(strong(&[(1_000, sign(SignLevel::Strong)), (3_000, you(Does::Back))]), (1, 1));
    assert_eq!(strong(&[(1_000, sign(SignLevel::Strong))]), (0, 1), "doing nothing is not enough");
    assert_eq!(strong(&[(1_000, sign(SignLevel::Strong)), (2_000, you(Does::Call)), (3_000, you(Does::End))]), (0, 1));
}

#[test]
fn what_the_animal_feels_comes_before_what_teaches_it() {
    let late = [
        (0, you(Does::Show(Thing::Ball))),
        (5_000, you(Does::Give(Thing::Ball))),
        (5_600, What::Took(Thing::Ball)),
        (20_000, you(Does::Show(Thing::Ball))),
        (25_000, you(Does::Give(Thing::Ball))),
        (25_600, What::Took(Thing::Ball)),
    ];
    assert_eq!(next(&late, Exercise::Free), Change::Sooner { delay_s: 5.0 });
    let with = |more: &[(u32, What)]| {
        let mut all = late.to_vec();
        all.extend_from_slice(more);
        next(&all, Exercise::Free)
    };
    assert_eq!(with(&[(40_000, you(Does::Call))]), Change::DoNotPush { times: 1 });
    assert_eq!(with(&[(40_000, sign(SignLevel::Mild)), (41_000, you(Does::Call))]), Change::Pause);
    let eats = [
        (40_000, What::Took(Thing::Treat)),
        (41_000, you(Does::Show(Thing::Out))),
        (43_000, What::Finished(Thing::Treat)),
    ];
    assert_eq!(with(&eats), Change::LetEat);
    let growls = [(40_000, sign(SignLevel::Strong)), (41_000, you(Does::Show(Thing::Out)))];
    assert_eq!(with(&growls), Change::StepAway);
    let held = [(40_000, What::Held(Thing::Out, Thing::Ball)), (41_000, you(Does::Two))];
    assert_eq!(with(&held), Change::LetChoose);
    let soon =
        [(0, you(Does::Show(Thing::Ball))), (900, you(Does::Give(Thing::Ball))), (1_500, What::Took(Thing::Ball))];
    assert_eq!(next(&soon, Exercise::Free), Change::CarryOn);
    // With a minute at the board there was room for more; ended early, that comes first.
    let there = [&[(0, What::Joined)][..], &soon].concat();
    assert_eq!(next(&there, Exercise::Showing), Change::Oftener);
    let pair = [you(Does::Two), What::Held(Thing::Out, Thing::Ball)].map(|what| (0, what));
    let pair = [&[(0, What::Joined)][..], &pair, &[(900, What::ChoseNone)]].concat();
    assert_eq!(next(&pair, Exercise::Likes), Change::MorePairs);
}

#[test]
fn a_choice_is_counted_for_both_things_held_out() {
    let c = of(&[
        (0, What::Held(Thing::Treat, Thing::Ball)),
        (2_000, What::Chose(Thing::Treat)),
        (9_000, What::Held(Thing::Ball, Thing::Treat)),
        (12_000, What::ChoseNone),
        (20_000, What::Held(Thing::Out, Thing::Ball)),
    ]);
    assert_eq!(c.chosen, [(1, 2), (0, 2), (0, 0), (0, 0)]);
    assert_eq!(k_of_n(&c.held), (2, 2));
}

#[test]
fn a_second_sooner_would_have_taught_no_less_on_average() {
    let (mut as_it_was, mut sooner) = (0.0, 0.0);
    for seed in 0..30 {
        let setup = Setup { seed, character: Character::Eager, exercise: Exercise::Showing };
        let acts: Vec<Act> =
            read("s0.8000_g0.11000_s1.20000_g1.23500_s0.35000_g0.38000_s2.50000_g2.54000", 120_000).unwrap();
        let run = play(setup, &acts);
        let t = truth(&run);
        assert_eq!((t.before, t.after), run.understood());
        as_it_was += t.after.iter().sum::<f64>();
        sooner += t.sooner.iter().sum::<f64>();
    }
    assert!(sooner > as_it_was, "{sooner} {as_it_was}");
}

#[test]
fn of_nothing_nothing_is_said_and_what_is_never_given_is_named() {
    for exercise in Exercise::ALL {
        assert_eq!(next(&[], exercise), Change::TooSoon, "{exercise:?}");
        assert_eq!(next(&[(15_000, you(Does::End))], exercise), Change::TooSoon, "{exercise:?}");
    }
    let let_go = [(9_000, What::Leaves), (20_000, you(Does::End))];
    for exercise in [Exercise::Showing, Exercise::Evening] {
        assert_eq!(next(&let_go, exercise), Change::TooSoon, "who does nothing lets go of nothing");
    }
    // Where letting it go is all that is asked, who ends after it has gone has done that; who does nothing at all has not.
    assert_eq!(next(&let_go, Exercise::Leaving), Change::CarryOn);
    assert_eq!(next(&let_go[..1], Exercise::Leaving), Change::TooSoon);
    assert_eq!(next(&[(5_000, you(Does::Back)), let_go[0]], Exercise::Leaving), Change::TooSoon, "before it went");
    let ball = [(0, you(Does::Show(Thing::Ball))), (900, you(Does::Give(Thing::Ball)))];
    assert_eq!(next(&[&ball[..], &let_go].concat(), Exercise::Leaving), Change::CarryOn);
    let shown = [(0, you(Does::Show(Thing::Ball))), (9_000, you(Does::Show(Thing::Out)))];
    assert_eq!(next(&shown, Exercise::Showing), Change::Give);
    assert_eq!(of(&shown).given, 0);
}

/// Each with what it would have brought, and the greater one first.
#[test]
fn of_what_teaches_the_one_that_would_have_taught_most_is_named() {
    let late = |delay_ms: u32| -> Vec<(u32, What)> {
        (0..4)
            .flat_map(|i| {
                let at = i * 20_000;
                let ball = Thing::Ball;
                [
                    (at, you(Does::Show(ball))),
                    (at + delay_ms, you(Does::Give(ball))),
                    (at + delay_ms + 600, What::Took(ball)),
                ]
            })
            .collect()
    };
    let with = |delay_ms: u32, unanswered: usize| {
        let mut told = late(delay_ms);
        for i in 0..unanswered {
            let at = 81_000 + 10_000 * i as u32;
            told.extend([(at, What::Pressed(Thing::Ball)), (at + 8_000, What::Unanswered(Thing::Ball))]);
        }
        let shown = Pairing::of(Thing::Ball, Came::Shown, f64::from(delay_ms) / 1000.0);
        let left = Pairing { came: Came::Unanswered, delay_s: 0.0, ..shown };
        let pairings = [vec![shown; 4], vec![left; unanswered]].concat();
        let bare = Run { pairings, over: (180_000, Over::Time), ..run(&told) };
        let run = Run { logits: ([0.0; 4], bare.had(bare.pairings.iter().copied())), ..bare };
        change(&conduct(&run), &run)
    };
    let (few, many) = (with(5_000, 1), with(2_500, 8));
    assert_eq!(few.change, Change::Sooner { delay_s: 5.0 });
    assert_eq!(many.change, Change::Answer);
    let (was, would_be) = few.brings(&run(&[])).unwrap_or((0.0, 0.0));
    assert_eq!((was, would_be), (0.0, 0.0), "of words that never came up nothing is said");
    let would = 0.5 * 4.0 * ((-0.25_f64).exp() - (-1.25_f64).exp());
    assert!((few.logits() - would).abs() < 1e-9, "{} {would}", few.logits());
    assert!(with(900, 0).logits().abs() < 1e-9, "given in time nothing is gained by giving sooner");
}

#[test]
fn showing_oftener_is_named_only_where_no_sign_stood_against_it() {
    let (mut oftener, mut signs) = (0, 0);
    for seed in 0..240 {
        let setup = Setup { seed, character: Character::ALL[seed as usize % 5], exercise: Exercise::Showing };
        // Presses are left here, and answering stands before it where those are many.
        let acts = read("s0.8000_g0.9000_s1.40000_g1.41000_s2.70000_g2.71000_s1.100000_g1.101000", 120_000).unwrap();
        let run = play(setup, &acts);
        let gain = change(&conduct(&run), &run);
        if gain.change == Change::Oftener {
            oftener += 1;
            assert!(gain.logits() >= 0.2 || conduct(&run).showings() < 6);
            assert!(!run.told.iter().any(|t| matches!(t.what, What::Sign(_))), "{seed}");
        }
        signs += usize::from(run.told.iter().any(|t| matches!(t.what, What::Sign(_))));
    }
    assert!(oftener > 20, "{oftener} of 240, {signs} with a sign");
}

#[test]
fn what_was_pressed_without_giving_is_counted_and_named() {
    let show = |at| (at, you(Does::Show(Thing::Ball)));
    let mut told: Vec<(u32, What)> = (0..7).map(|i| show(i * 6_000)).collect();
    told.extend([show(42_000), (42_900, you(Does::Give(Thing::Ball))), (43_500, What::Took(Thing::Ball))]);
    assert_eq!(k_of_n(&of(&told).paid), (1, 8));
    assert_eq!(next(&told, Exercise::Showing), Change::Give);
    let paid = |told: &[(u32, What)]| k_of_n(&of(told).paid);
    assert_eq!(paid(&[show(0), (900, you(Does::Give(Thing::Out)))]), (0, 1), "something else is not what it says");
    // What had no time to be given in tells nothing.
    for what in [What::Pressed(Thing::Out), What::Leaves, sign(SignLevel::Strong), you(Does::End), you(Does::Back)] {
        assert_eq!(paid(&[show(0), (1_000, what)]), (0, 0), "{what:?}");
        assert_eq!(paid(&[show(0), (8_000, what)]), (0, 1), "{what:?}");
    }
    assert_eq!(paid(&[show(58_000)]), (0, 0));
}

#[test]
fn a_press_left_until_it_went_or_all_was_over_is_one_without_an_answer() {
    let pressed = (22_000, What::Pressed(Thing::Treat));
    let answered = |told: &[(u32, What)]| k_of_n(&of(told).answered);
    assert_eq!(answered(&[pressed, (28_000, What::Leaves)]), (0, 1));
    assert_eq!(next(&[pressed, (28_000, What::Leaves)], Exercise::Leaving), Change::Answer);
    assert_eq!(answered(&[pressed, (23_000, What::Leaves)]), (0, 0), "there was no time for it");
    assert_eq!(answered(&[(55_000, What::Pressed(Thing::Treat))]), (0, 1));
    assert_eq!(answered(&[(59_000, What::Pressed(Thing::Treat))]), (0, 0));
    let fetched = [pressed, (23_000, you(Does::Give(Thing::Treat))), (23_000, What::Fetches(Thing::Treat))];
    assert_eq!(answered(&[&fetched[..], &[(28_000, What::Leaves)]].concat()), (0, 0), "it was on its way");
    let run = play(Setup { seed: 12, character: Character::Eager, exercise: Exercise::Leaving }, &[]);
    assert_eq!(change(&conduct(&run), &run).change, Change::Answer);
}

#[test]
fn a_button_that_frightens_is_left_until_it_is_softer() {
    let press = |at| [(at, you(Does::Show(Thing::Treat))), (at, What::Startled(Thing::Treat))];
    let once = press(1_000);
    assert_ne!(next(&once, Exercise::Stuck), Change::Soften { word: Thing::Treat, times: 0 });
    let again = [press(1_000), press(20_000), press(40_000)].concat();
    assert_eq!(next(&again, Exercise::Stuck), Change::Soften { word: Thing::Treat, times: 2 });
    let softened = [&once[..], &[(9_000, you(Does::Softer)), (20_000, you(Does::Show(Thing::Treat)))]].concat();
    assert_eq!(of(&softened).frightened, [0; 4]);
}

#[test]
fn showing_one_word_alone_is_named_where_words_share_the_showings() {
    let shown = |words: &[Thing]| -> Vec<(u32, What)> {
        (0..8)
            .flat_map(|i| {
                let (at, word) = (1_000 + i * 7_000, words[i as usize % words.len()]);
                [(at, you(Does::Show(word))), (at + 900, you(Does::Give(word))), (at + 1_500, What::Took(word))]
            })
            .collect()
    };
    let even = Change::Even { most: Thing::Ball, least: Thing::Treat };
    assert_eq!(next(&shown(&[Thing::Ball]), Exercise::Showing), even);
    assert_eq!(next(&shown(&[Thing::Ball]), Exercise::Free), Change::CarryOn);
    assert_eq!(next(&shown(&[Thing::Ball, Thing::Out]), Exercise::Showing), Change::CarryOn);
}

#[test]
fn a_showing_waits_on_while_a_press_of_something_else_is_answered() {
    // It pressed for a treat, the ball was shown just then, and each was given.
    let told = [
        (9_200, What::Pressed(Thing::Treat)),
        (9_500, you(Does::Show(Thing::Ball))),
        (10_300, you(Does::Give(Thing::Treat))),
        (10_800, you(Does::Give(Thing::Ball))),
        (10_900, What::Took(Thing::Treat)),
        (14_000, What::Took(Thing::Ball)),
    ];
    let c = of(&told);
    assert_eq!((k_of_n(&c.paid), k_of_n(&c.answered), c.alternatives.n), ((1, 1), (1, 1), 0));
    assert_eq!((c.balance, k_of_n(&c.taken)), ([0, 1, 0, 0], (1, 1)));
    // Of one thing given twice the first comes first.
    let twice = [told[1], (10_000, you(Does::Give(Thing::Ball))), (10_200, you(Does::Give(Thing::Ball)))];
    let took = [(10_600, What::Took(Thing::Ball)), (19_000, What::Ignored(Thing::Ball))];
    assert_eq!(k_of_n(&of(&[&twice[..], &took[..]].concat()).taken), (1, 1));
    // A showing is over once it is gone.
    let gone = [told[1], (11_000, What::Leaves), (15_000, What::Gone), (20_000, What::Joined)];
    assert_eq!(of(&[&gone[..], &[(21_000, you(Does::Give(Thing::Ball)))]].concat()).delay.n, 0);
    let run = play(
        Setup { seed: 6, character: Character::Eager, exercise: Exercise::Evening },
        &read("s1.9500_g0.10300_g1.10800_e.24200", 360_000).unwrap(),
    );
    assert_eq!(k_of_n(&conduct(&run).paid), (1, 1));
    let took = |thing| run.told.iter().filter(|t| t.what == What::Took(thing)).count();
    assert_eq!((took(Thing::Treat), took(Thing::Ball)), (1, 1), "{:?}", run.told);
}

#[test]
fn a_gain_that_whole_per_cent_do_not_show_is_not_told() {
    let late = |i: u32| {
        let (at, words) = (i * 20_000, [Thing::Ball, Thing::Out]);
        let word = words[i as usize % 2];
        [(at, you(Does::Show(word))), (at + 5_000, you(Does::Give(word))), (at + 5_600, What::Took(word))]
    };
    let told: Vec<_> = (0..4).flat_map(late).collect();
    let with = |share| {
        let pairing = Pairing { share, ..Pairing::of(Thing::Ball, Came::Shown, 5.0) };
        let bare = Run { pairings: vec![pairing; 4], over: (90_000, Over::Time), ..run(&told) };
        let run = Run { logits: ([0.0; 4], bare.had(bare.pairings.iter().copied())), ..bare };
        let gain = change(&conduct(&run), &run);
        assert_eq!(gain.change, Change::Sooner { delay_s: 5.0 });
        (gain.logits() > 1e-3, gain.brings(&run).map(|(was, would)| (100.0 * (would - was)).round()))
    };
    assert!(matches!(with(1.0), (true, Some(by)) if by >= 1.0), "{:?}", with(1.0));
    assert_eq!(with(0.02), (true, None));
}

#[test]
fn a_gift_of_the_word_just_shown_is_of_that_showing() {
    let told = [
        (1_000, you(Does::Show(Thing::Ball))),
        (1_500, What::Pressed(Thing::Out)),
        (2_000, you(Does::Give(Thing::Ball))),
        (2_600, What::Took(Thing::Ball)),
        (4_000, you(Does::Give(Thing::Out))),
    ];
    let c = of(&told);
    assert_eq!((c.balance, c.alternatives.n, k_of_n(&c.answered)), ([0, 1, 0, 0], 0, (1, 1)));
    let other = [told[1], (2_000, you(Does::Give(Thing::Ball)))];
    assert_eq!(k_of_n(&of(&other).alternatives), (1, 1), "nothing was shown: it is the answer");
}
