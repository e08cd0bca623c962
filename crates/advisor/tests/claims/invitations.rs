//! Invitations: those that were drawn climb, those a person chose do not.

use crate::log::{ANIMAL, Log, word};
use sayso_advisor::Case;
use sayso_advisor::claims::claims;
use sayso_advisor::stages::standings;
use sayso_methods::understanding::ladder::Rung;
use sayso_model::{Body, InvitationResult, ProbeDesign, Stage, Story};

#[test]
fn wrong_presses_at_invitations_count_and_random_pressing_is_no_stage() {
    let mut log = Log::with(4);
    for _ in 0..120 {
        for called in 0..4 {
            let pressed = log.below(4);
            log.invite(word(called), word(pressed), None);
        }
        log.at = log.at.plus_seconds(20_000.0);
    }
    let now = log.at.plus_seconds(60.0);
    let story = Story::from_events(log.events.clone());
    for s in standings(&Case::new(&story, ANIMAL, now)) {
        assert_eq!((s.response.value, s.response.n), (Some(1.0), 120), "it pressed each time it wanted something");
        assert!(s.right.n == 120 && s.right.value.is_some_and(|r| (0.1..0.4).contains(&r)), "{:?}", s.right);
        assert!(!s.above_chance && s.figures_say != Stage::Converse, "{s:?}");
        assert!((s.chance.even() - 0.25).abs() < 1e-9, "{:?}", s.chance);
    }
    assert!(claims(&Case::new(&story, ANIMAL, now)).unwrap().words.iter().all(|c| c.rung() <= Rung::FitsChance));
}

#[test]
fn what_is_dated_ahead_is_not_there_yet() {
    let mut log = Log::with(2);
    let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
    let now = log.at;
    log.at = log.at.plus_seconds(86_400.0 * 400.0);
    (1..=48).for_each(|n| {
        log.trial(&plan, n, true);
    });
    (0..40).for_each(|_| log.round(2, |_, called| Some(called)));
    (0..40).for_each(|_| {
        log.invite(word(0), word(0), None);
    });
    let story = Story::from_events(log.events.clone());
    let found = claims(&Case::new(&story, ANIMAL, now)).unwrap();
    assert!(found.words.iter().all(|c| c.rung() == Rung::NothingYet) && found.rounds == (0, 0));
    assert!(standings(&Case::new(&story, ANIMAL, now)).iter().all(|s| s.right.n == 0 && s.response.n == 0));
}

#[test]
fn drawn_rounds_climb_and_chosen_invitations_do_not() {
    let mut log = Log::with(4);
    (0..25).for_each(|_| log.round(4, |_, called| Some(called)));
    let drawn = log.read();
    assert!(drawn.words.iter().all(|c| c.asking.rung == Rung::DiffersByWord), "{drawn:?}");
    let mut log = Log::with(4);
    (0..100).for_each(|i| {
        log.invite(word(i % 4), word(i % 4), None);
    });
    assert!(log.read().words.iter().all(|c| c.rung() <= Rung::FitsChance), "a person chose what to call for");
}

#[test]
fn rounds_left_at_a_wrong_press_or_with_wrong_presses_left_out_win_nothing() {
    for leaves_out in [false, true] {
        let mut log = Log::with(4);
        for _ in 0..400 {
            log.round(4, |log, called| {
                let pressed = log.below(4);
                (pressed == called || !leaves_out).then_some(pressed)
            });
            if !leaves_out {
                // The last round is left where it went wrong: what follows the first wrong press is missing.
                let of = log.events.iter().rposition(|e| matches!(&e.body, Body::Round(_))).unwrap();
                let wrong = log.events[of..].iter().position(|e| match &e.body {
                    Body::Invitation(i) => {
                        !matches!(i.result, InvitationResult::Pressed { word, .. } if word == i.word)
                    }
                    _ => false,
                });
                if let Some(wrong) = wrong {
                    log.events.truncate(of + wrong + 1);
                }
            }
        }
        let found = log.read();
        assert!(found.rounds.0 == 400 && found.rounds.1 > 200, "{:?}", found.rounds);
        assert!(found.words.iter().all(|c| c.rung() <= Rung::FitsChance), "{leaves_out}: {found:?}");
    }
}
