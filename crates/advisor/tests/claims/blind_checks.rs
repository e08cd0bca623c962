//! Checks: every one that was begun counts, as it was first carried out.

use crate::log::{ANIMAL, Log, top, word};
use sayso_advisor::Case;
use sayso_methods::understanding::ladder::Rung;
use sayso_model::order::{earlier_order, order};
use sayso_model::{Body, Correction, ProbeDesign, ProbeResponse, ProbeTrial, Story, Withdrawal};

#[test]
fn a_finished_blind_check_climbs_its_own_ladder() {
    for (design, asks) in [(ProbeDesign::PickForWord, false), (ProbeDesign::PressUnderCovers, true)] {
        let mut log = Log::with(2);
        let plan = log.plan(design, 2, 48);
        (1..=48).for_each(|n| {
            log.trial(&plan, n, true);
        });
        for c in log.read().words {
            assert_eq!(c.asking.rung == Rung::StandsUpToBlindCheck, asks, "{design:?}");
            assert_eq!(c.hearing.rung == Rung::StandsUpToBlindCheck, !asks, "{design:?}");
            assert!(c.best().1.since.is_some_and(|at| at < log.at), "it stood before the last trial");
        }
    }
    let mut log = Log::with(2);
    let plan = log.plan(ProbeDesign::PressForThing, 2, 48);
    (1..=48).for_each(|n| {
        log.trial(&plan, n, true);
    });
    assert!(log.read().words.iter().all(|c| c.rung() <= Rung::FitsChance), "buttons kept their places");
}

#[test]
fn answers_again_under_used_numbers_win_nothing() {
    let mut log = Log::with(2);
    let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
    for number in 1..=48 {
        let right = log.below(2) == 0;
        log.trial(&plan, number, right);
        (0..4).for_each(|_| {
            log.trial(&plan, number, true);
        });
    }
    assert!(!top(&log.read()));
}

#[test]
fn wrong_answers_taken_back_or_changed_stay_wrong() {
    for change in [false, true] {
        let mut log = Log::with(2);
        let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
        for number in 1..=48 {
            let right = log.below(2) == 0;
            let of = log.trial(&plan, number, right);
            if right {
                continue;
            }
            if change {
                let planned = &order(&plan).unwrap()[usize::from(number) - 1];
                let response = ProbeResponse::Chose { word: planned.word, after_s: None };
                let body: Body =
                    ProbeTrial { probe: plan.probe, trial: number, target: planned.word, blind: true, response }.into();
                log.write(Correction { of, happened_at: None, animal: Some(ANIMAL), body: Box::new(body) });
            } else {
                log.write(Withdrawal { of, because: None });
                log.trial(&plan, number, true);
            }
        }
        let found = log.read();
        assert!(!top(&found) && found.words.iter().all(|c| c.evidence.blind[1].as_ref().unwrap().ln_now() < 2.0));
    }
}

/// Begins a check, stops without a record at the first wrong answer and begins another one: all that is on record is right.
#[test]
fn checks_given_up_when_they_go_badly_stay_in_the_pool() {
    let mut log = Log::with(2);
    for _ in 0..60 {
        let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
        for number in 1..=48 {
            if log.below(2) == 1 {
                break;
            }
            log.trial(&plan, number, true);
        }
    }
    let found = log.read();
    let recorded = log.events.iter().filter(|e| matches!(e.body, Body::ProbeTrial(_))).count();
    assert!(recorded > 40, "{recorded} right answers are on record and no wrong one");
    assert!(!top(&found) && found.words.iter().all(|c| c.hearing.n > 30));
}

/// It always takes the same thing, or one that was not asked for last: right for some words or more often than half the
/// time, if answers were told apart by what was asked for or what is asked for were kept from running.
#[test]
fn a_favourite_thing_and_taking_turns_pass_no_check() {
    for favourite in [true, false] {
        let mut log = Log::with(2);
        let mut last = word(0);
        for _ in 0..10 {
            let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
            for trial in order(&plan).unwrap() {
                let takes = if favourite { word(0) } else { *trial.laid_out.iter().find(|w| **w != last).unwrap() };
                log.trial(&plan, trial.number, takes == trial.word);
                last = trial.word;
            }
        }
        let found = log.read();
        assert!(found.words.iter().all(|c| c.rung() <= Rung::FitsChance), "favourite {favourite}: {found:?}");
        assert_eq!(found.words.iter().map(|c| c.hearing.n).sum::<u64>(), 480);
    }
}

/// A notebook that was kept before what is asked for came to be drawn last still reads as it was carried out.
#[test]
fn a_check_in_the_earlier_order_is_shown_as_planned_and_climbs_nothing() {
    let mut log = Log::with(2);
    let plan = log.plan(ProbeDesign::PickForWord, 2, 48);
    for t in earlier_order(&plan).unwrap() {
        let response = ProbeResponse::Chose { word: t.word, after_s: None };
        log.write(ProbeTrial { probe: plan.probe, trial: t.number, target: t.word, blind: true, response });
    }
    let story = Story::from_events(log.events.clone());
    let report = sayso_advisor::checks::report(&Case::new(&story, ANIMAL, log.at.plus_seconds(60.0)), plan.probe)
        .unwrap()
        .unwrap();
    assert_eq!(report.words.iter().map(|w| (w.k, w.right.n)).collect::<Vec<_>>(), [(24, 24), (24, 24)]);
    assert!(report.departures == [sayso_advisor::checks::Departure::EarlierRule], "{:?}", report.departures);
    assert!(log.read().words.iter().all(|c| c.rung() == Rung::NothingYet));
}
