//! A word that does not get on: what held it up, what the notebook says of it, and what was true.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

use sayso_advisor::stuck::Cause;
use sayso_model::Label;
use sayso_rehearse::{NAMEABLE, before, found, shown_before, truth};
use sayso_sim::Cause as Holds;
use sayso_sim::rehearsal::{Act, Character, Does, Exercise, Hidden, Setup, Thing, play};

const SETUP: Setup = Setup { seed: 1, character: Character::Eager, exercise: Exercise::Free };

/// The notebook hears of the weeks before and of this session what a person would have written down.
#[test]
fn the_notebook_suspects_the_true_cause_and_the_session_shows_it() {
    let label = |text: &str| Label::new(text).unwrap();
    let says = ["Treat", "Ball", "Out", "Company"].map(label);
    let acts: Vec<Act> = (0..12)
        .flat_map(|i| {
            let (at_ms, thing) = (2_000 + i * 14_000, Thing::ALL[i as usize % 4]);
            [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + 600, does: Does::Give(thing) }]
        })
        .collect();
    let (mut suspected, mut seen, mut all) = (0, 0, 0);
    for seed in 0..30 {
        let setup = Setup { seed, character: Character::ALL[seed as usize % 5], exercise: Exercise::Stuck };
        let run = play(setup, &acts);
        let weeks = before(setup, &label("Zip"), &says).unwrap();
        let found = found(&run, &weeks).unwrap();
        assert_eq!(Some(found.word), setup.hides().map(|hidden| hidden.word));
        assert!(NAMEABLE.contains(&found.cause) && found.said.iter().any(|w| w.cause == found.cause));
        suspected += usize::from(found.said.iter().any(|w| w.cause == found.cause && w.suspected()));
        seen += usize::from(found.shown.is_seen());
        all += 1;
        // Two a day is the notebook's own bar; what is told beforehand is enough to see that it was not reached.
        let few = shown_before(&weeks)[found.word.place()] < 42;
        assert_eq!(few, found.cause == Cause::TooLittle, "{:?} {:?}", found.cause, shown_before(&weeks));
    }
    assert!(suspected * 10 >= all * 9 && seen * 10 >= all * 8, "{suspected} and {seen} of {all}");
    assert_eq!(Hidden::CAUSES.len(), NAMEABLE.len());
    let free = Setup { exercise: Exercise::Free, ..SETUP };
    assert!(before(free, &label("Zip"), &says).is_none());
}

#[test]
fn what_was_put_right_before_it_showed_is_told_as_such() {
    let label = |text: &str| Label::new(text).unwrap();
    let says = ["Treat", "Ball", "Out", "Company"].map(label);
    let showing = (0..12).flat_map(|i| {
        let (at_ms, thing) = (2_000 + i * 14_000, Thing::ALL[i as usize % 4]);
        [Act { at_ms, does: Does::Show(thing) }, Act { at_ms: at_ms + 600, does: Does::Give(thing) }]
    });
    let mends = |at_ms| [Does::Ready, Does::Softer, Does::Quiet].map(|does| Act { at_ms, does });
    let first: Vec<Act> = mends(100).into_iter().chain(showing.clone()).collect();
    let last: Vec<Act> = showing.clone().chain(mends(175_000)).collect();
    let mut told = [0; 2];
    for seed in 0..40 {
        let setup = Setup { seed, character: Character::ALL[seed as usize % 5], exercise: Exercise::Stuck };
        let weeks = before(setup, &label("Zip"), &says).unwrap();
        let of = |acts: &[Act]| found(&play(setup, acts), &weeks).unwrap();
        let mended = matches!(of(&first).cause, Cause::TooLate | Cause::Avoided | Cause::TimeOrPlace);
        assert_eq!(of(&first).put_right, mended, "{:?}", of(&first).cause);
        assert!(!of(&showing.clone().collect::<Vec<_>>()).put_right, "nothing was done about it");
        told[0] += usize::from(mended);
        told[1] += usize::from(mended && !of(&last).put_right);
    }
    assert!(told[0] > 10 && told[1] * 10 >= told[0] * 7, "put right late it had mostly shown before: {told:?}");
}

/// What it keeps away from it does not press, whatever it understands.
#[test]
fn an_avoided_button_is_pressed_never_until_it_is_softer() {
    let avoided = |seed: &u64| {
        let setup = Setup { seed: *seed, character: Character::Eager, exercise: Exercise::Stuck };
        setup.hides().is_some_and(|hidden| hidden.cause == Holds::DeviceAvoided)
    };
    for seed in (0..60).filter(avoided) {
        let setup = Setup { seed, character: Character::Eager, exercise: Exercise::Stuck };
        let place = setup.hides().unwrap().word.place();
        let left = truth(&play(setup, &[]));
        assert_eq!((left.before[place], left.after[place], left.sooner[place]), (0.0, 0.0, 0.0), "seed {seed}");
        let soft = truth(&play(setup, &[Act { at_ms: 1_000, does: Does::Softer }]));
        assert!(soft.before[place] == 0.0 && soft.after[place] > 0.5 && soft.sooner[place] > 0.5, "seed {seed}");
        assert!((0..4).filter(|other| *other != place).all(|other| left.before[other] > 0.5));
    }
}
