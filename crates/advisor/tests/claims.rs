//! Which records are handed to the ladder, and what a person who bends them wins: nothing.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_possible_truncation)]

use sayso_advisor::Case;
use sayso_advisor::claims::{Claims, claims};
use sayso_advisor::stages::standings;
use sayso_methods::understanding::ladder::Rung;
use sayso_model::order::{earlier_order, order};
use sayso_model::{
    AnimalId, Answer, Body, Call, Correction, Delivery, Event, EventId, HomeId, Invitation, InvitationKind,
    InvitationResult, Label, Moment, Press, PressedBy, ProbeDesign, ProbeId, ProbePlan, ProbeResponse, ProbeTrial,
    RewardCard, RewardId, RewardKind, Round, RoundId, Seconds, Source, Stage, Story, SwapDraw, SwapId, SwapPlan, Then,
    Withdrawal, WordCard, WordId, Zone, draw,
};
use serde_json::json;
use uuid::Uuid;

const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(7));

fn begin() -> Moment {
    "2026-01-05T08:00:00Z".parse().unwrap()
}

fn word(n: usize) -> WordId {
    WordId(Uuid::from_u128(100 + n as u128))
}

fn words(n: usize) -> Vec<WordId> {
    (0..n).map(word).collect()
}

/// Writes events one after another, a minute apart unless told otherwise.
struct Log {
    events: Vec<Event>,
    at: Moment,
    next: u128,
    dice: u64,
}

impl Log {
    /// A household with so many words, each with its reward.
    fn with(words: usize) -> Self {
        let mut log = Self { events: Vec::new(), at: begin(), next: 1, dice: 9 };
        for n in 0..words {
            let reward = RewardId(Uuid::from_u128(200 + n as u128));
            let label = |s: &str| Label::new(&format!("{s}{n}")).unwrap();
            let card: RewardCard = serde_json::from_value(json!({
                "reward": reward, "name": label("thing"), "reward_kind": RewardKind::Play,
            }))
            .unwrap();
            log.write(card);
            let card: WordCard = serde_json::from_value(
                json!({ "word": word(n), "says": label("word"), "reward": reward, "answer": "Give it." }),
            )
            .unwrap();
            log.write(card);
        }
        log
    }

    /// Ids are random as those of devices are, but follow from a count.
    fn id(&mut self) -> Uuid {
        self.next += 1;
        let mut z = self.next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C834);
        z ^= z >> 61;
        Uuid::from_u128(z.wrapping_mul(0xBF58_476D_1CE4_E5B9_94D0_49BB_1331_11EB))
    }

    fn below(&mut self, n: usize) -> usize {
        self.dice = self.dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.dice >> 33) as usize % n
    }

    fn write(&mut self, body: impl Into<Body>) -> EventId {
        self.at = self.at.plus_seconds(60.0);
        let id = EventId(self.id());
        let body = body.into();
        let about = !matches!(body, Body::WordCard(_) | Body::RewardCard(_));
        self.events.push(Event {
            id,
            home: HomeId(Uuid::from_u128(1)),
            animal: about.then_some(ANIMAL),
            person: None,
            happened_at: self.at,
            zone: Zone::utc(),
            recorded_at: self.at,
            source: Source::Tap,
            body,
        });
        id
    }

    fn plan(&mut self, design: ProbeDesign, words: usize, trials: u16) -> ProbePlan {
        let probe = ProbeId(self.id());
        let seed = self.below(1 << 30) as u32;
        let plan = ProbePlan { probe, design, words: self::words(words), choices: 2, trials, seed, blind: true };
        self.write(plan.clone());
        plan
    }

    /// One trial of a plan, right or wrong.
    fn trial(&mut self, plan: &ProbePlan, number: u16, right: bool) -> EventId {
        let planned = &order(plan).unwrap()[usize::from(number) - 1];
        let other = planned.laid_out.iter().copied().find(|w| *w != planned.word).unwrap();
        let word = if right { planned.word } else { other };
        let response = ProbeResponse::Chose { word, after_s: None };
        self.write(ProbeTrial { probe: plan.probe, trial: number, target: planned.word, blind: true, response })
    }

    /// A round in which `press` tells what is pressed when a word is called; none leaves the round there.
    fn round(&mut self, words: usize, mut press: impl FnMut(&mut Self, usize) -> Option<usize>) {
        let round = RoundId(self.id());
        let to_hand = self::words(words);
        self.write(Round { round, words: to_hand.clone(), calls: draw::CALLS, session: None });
        for number in 1..=draw::CALLS {
            let called = draw::called(round, number, &to_hand).unwrap();
            let at = to_hand.iter().position(|w| *w == called).unwrap();
            let Some(pressed) = press(self, at) else { return };
            self.invite(called, word(pressed), Some(Call { round, number }));
        }
    }

    fn invite(&mut self, word: WordId, pressed: WordId, call: Option<Call>) -> EventId {
        let seconds = |s| Seconds::new(s).unwrap();
        self.write(Invitation {
            word,
            other: None,
            way: InvitationKind::OfferInView,
            wait_s: seconds(5.0),
            result: InvitationResult::Pressed { word: pressed, after_s: seconds(2.0) },
            shown: false,
            took: Some(true),
            session: None,
            call,
        })
    }

    fn read(&self) -> Claims {
        let story = Story::from_events(self.events.clone());
        claims(&Case::new(&story, ANIMAL, self.at.plus_seconds(7_200.0))).unwrap()
    }
}

fn top(claims: &Claims) -> bool {
    claims.words.iter().any(|c| c.rung() == Rung::StandsUpToBlindCheck)
}

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

/// Presses of two words; `again` tells whether the same button is pressed again after the thing came.
fn swapped(log: &mut Log, days: u16, ignores: bool, then: Option<Then>, mut again: impl FnMut(&mut Log, bool) -> bool) {
    let swap = SwapId(log.id());
    log.write(SwapPlan { swap, words: words(2), one_in: draw::ONE_IN, days });
    let begun = log.at;
    let press_body =
        |n: usize| -> Press { serde_json::from_value(json!({ "word": word(n), "by": PressedBy::Animal })).unwrap() };
    for _ in 0..usize::from(days) * 30 {
        log.at = log.at.plus_seconds(86_400.0 / 31.0 - 240.0);
        if log.at.seconds_since(begun) > f64::from(days) * 86_400.0 - 600.0 {
            break;
        }
        let n = log.below(2);
        let press = log.write(press_body(n));
        let partner = draw::partner(&words(2), draw::block(begun, log.at).unwrap(), word(n)).unwrap();
        let is_swapped = draw::swapped(swap, press, draw::ONE_IN);
        let give = if is_swapped { partner } else { word(n) };
        log.write(SwapDraw { swap, press, word: word(n), give });
        let other = is_swapped && !ignores;
        let delivery: Delivery = serde_json::from_value(json!({
            "answers": press,
            "word": word(n),
            "answer": if other { Answer::Alternative } else { Answer::Given },
            "then": then,
            "alternative": other.then(|| RewardId(Uuid::from_u128(200 + 1 - n as u128))),
        }))
        .unwrap();
        log.write(delivery);
        if again(log, is_swapped) {
            log.at = log.at.plus_seconds(-50.0);
            log.write(press_body(n));
            log.at = log.at.plus_seconds(-10.0);
        }
    }
    log.at = log.at.plus_seconds(86_400.0);
}

#[test]
fn pressing_again_after_swaps_holds_against_habit_and_pressing_again_anyway_does_not() {
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, Some(Then::Took), |log, swapped| swapped && log.below(10) < 7);
    let found = log.read().animal;
    assert_eq!(found.verdict.rung, Rung::HoldsAgainstHabit, "{found:?}");
    assert!(found.swaps.departed == 0 && found.swaps.swapped > 50, "{found:?}");
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, Some(Then::Took), |log, _| log.below(10) < 7);
    assert_eq!(log.read().animal.verdict.rung, Rung::FitsChance);
    // Draws that are not carried out cannot speak for anything.
    let mut log = Log::with(2);
    swapped(&mut log, 28, true, Some(Then::Took), |log, swapped| swapped && log.below(10) < 7);
    let ignored = log.read().animal;
    assert!(ignored.swaps.departed > 50 && ignored.verdict.rung <= Rung::FitsChance, "{ignored:?}");
    // Nor can answers after which nobody wrote down what it did: presses may be missing as well.
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, None, |log, swapped| swapped && log.below(10) < 7);
    assert!(log.read().animal.verdict.rung <= Rung::FitsChance);
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
