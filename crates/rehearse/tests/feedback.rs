//! What is told after a rehearsal, on rehearsals written by hand: each figure counts what it says, and the animal comes first.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

use sayso_model::SignLevel;
use sayso_rehearse::{Change, Conduct, change, conduct, truth};
use sayso_sim::rehearsal::{
    Act, BED, Character, Does, Exercise, Over, Run, Setup, SignSeen, Thing, Told, What, play, read,
};

const SETUP: Setup = Setup { seed: 1, character: Character::Eager, exercise: Exercise::Free };

/// A rehearsal in which just this happened.
fn run(told: &[(u32, What)]) -> Run {
    Run {
        setup: SETUP,
        over: (60_000, Over::Time),
        begins_at: BED,
        told: told.iter().map(|&(at_ms, what)| Told { at_ms, what }).collect(),
        motions: Vec::new(),
        likes: [0.0; 4],
        logits: ([0.0; 4], [0.0; 4]),
        demand: [1.0; 4],
        stays: true,
    }
}

fn you(does: Does) -> What {
    What::Person(does)
}

fn sign(level: SignLevel) -> What {
    What::Sign(SignSeen { level, id: "growl" })
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
    assert_eq!(change(&of(&[offer(1_000), (3_000, you(Does::Again))]), Exercise::Inviting), Change::Wait);
}

#[test]
fn leaving_is_honoured_where_nothing_is_asked_until_it_is_back() {
    let honoured = |told: &[(u32, What)]| k_of_n(&of(told).leaving);
    assert_eq!(honoured(&[(1_000, What::Leaves), (4_000, What::Gone), (5_000, you(Does::End))]), (1, 1));
    assert_eq!(honoured(&[(1_000, What::Leaves), (2_000, you(Does::Call)), (4_000, What::Gone)]), (0, 1));
    assert_eq!(honoured(&[(1_000, What::Leaves), (9_000, What::Joined), (9_500, you(Does::Show(Thing::Out)))]), (1, 1));
    let barred = [(1_000, What::Leaves), (1_200, you(Does::Block)), (1_200, What::Barred), (4_000, What::Leaves)];
    assert_eq!(honoured(&barred), (1, 2), "the second time it was let go");
    assert_eq!(change(&of(&barred), Exercise::Leaving), Change::LetGo);
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
    assert_eq!(change(&of(&late), Exercise::Free), Change::Sooner { delay_s: 5.0 });
    let with = |more: &[(u32, What)]| {
        let mut all = late.to_vec();
        all.extend_from_slice(more);
        change(&of(&all), Exercise::Free)
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
    assert_eq!(change(&of(&[]), Exercise::Free), Change::CarryOn);
    assert_eq!(change(&of(&[]), Exercise::Showing), Change::Oftener);
    assert_eq!(change(&of(&[]), Exercise::Likes), Change::MorePairs);
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
        let t = truth(&run, &acts);
        assert_eq!((t.before, t.after), run.understood());
        as_it_was += t.after.iter().sum::<f64>();
        sooner += t.sooner.iter().sum::<f64>();
    }
    assert!(sooner > as_it_was, "{sooner} {as_it_was}");
}
