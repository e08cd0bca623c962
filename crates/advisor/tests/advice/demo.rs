//! The advice on simulated households, and the rules it may never break.

use sayso_advisor::Case;
use sayso_advisor::likes::{Setup, next_setup};
use sayso_advisor::steps::Step;
use sayso_advisor::stuck::Cause;
use sayso_advisor::{Act, Because, Caution, Change, Topic, checks, evidence, stages, thinning, today};
use sayso_model::{
    AnimalId, AssessmentId, Body, Event, EventId, Invitation, InvitationKind, InvitationResult, LikeOutcome, LikeTrial,
    LikesFormat, LikesTest, Moment, Note, ProbePlan, RewardId, Seconds, Sign, SignLevel, Source, Story, When,
    Withdrawal, WordId,
};
use uuid::Uuid;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

fn demo() -> (Story, AnimalId) {
    let story = Story::from_events(sayso_sim::demo(7, now()).events);
    let animal = *story.animals().keys().max_by_key(|l| story.words_of(**l).len()).unwrap();
    (story, animal)
}

fn event(story: &Story, animal: AnimalId, number: u128, at: Moment, body: impl Into<Body>) -> Event {
    let pattern = story.ledger().all().next().unwrap();
    Event {
        id: EventId(Uuid::from_u128(number)),
        home: pattern.home,
        animal: Some(animal),
        person: None,
        happened_at: at,
        zone: story.zone(),
        recorded_at: at,
        source: Source::Tap,
        body: body.into(),
    }
}

#[test]
fn a_strong_sign_outranks_everything_and_rests_the_day() {
    let (mut story, animal) = demo();
    let before = today::today(&Case::new(&story, animal, now())).unwrap();
    assert!(before.plan().is_some(), "the demo has a session to hold");
    let sign = Sign {
        sign: Note::new("freezes, stares").unwrap(),
        level: SignLevel::Strong,
        when: When::During,
        session: None,
    };
    let seen = event(&story, animal, 1, now().plus_seconds(-600.0), sign);
    story.add(seen);
    let after = today::today(&Case::new(&story, animal, now())).unwrap();
    assert_eq!(after.advice().next().unwrap().topic, Topic::Welfare);
    assert_eq!(after.next, today::Next::Rest, "no session is planned for the rest of the day");
    assert!(after.steps.iter().all(|s| s.step == Step::Rest), "no step but rest");
    assert!(
        after.welfare[0].because.iter().any(|r| r.events.contains(&EventId(Uuid::from_u128(1)))),
        "it names what was seen"
    );
    // The sign rests the day; it does not speak about every word on the board.
    let (was, is) = (stages_of(&before), stages_of(&after));
    assert_eq!(was, is, "no word goes back a stage for one sign");
}

fn stages_of(today: &today::Today) -> Vec<(sayso_model::Stage, sayso_model::Stage)> {
    today.steps.iter().map(|s| (s.stage, s.figures_say)).collect()
}

#[test]
fn no_advice_or_evidence_says_that_the_animal_does_not_understand() {
    let (story, _) = demo();
    let mut said = String::new();
    for animal in story.animals().keys() {
        let today = today::today(&Case::new(&story, *animal, now())).unwrap();
        said += &format!("{today:?}");
        for word in story.words_of(*animal) {
            let e = evidence::evidence(&Case::new(&story, *animal, now()), word.word).unwrap();
            said += &e.claim.map_or_else(|e| e.to_string(), |(claim, animal)| format!("{claim:?}{animal:?}"));
        }
    }
    let said = said.to_lowercase();
    assert!(said.len() > 1000);
    for never in ["does not understand", "doesn't understand", "cannot learn", "failed", "stubborn", "wrong answer"] {
        assert!(!said.contains(never), "{never}");
    }
}

#[test]
fn the_demo_s_stall_is_found_with_its_late_delivery() {
    let (story, animal) = demo();
    let ball = story.words_of(animal).into_iter().find(|w| w.says.as_str() == "ball").unwrap().word;
    let today = today::today(&Case::new(&story, animal, now())).unwrap();
    let step = today.steps.iter().find(|s| s.word.word == ball).unwrap();
    assert!(step.stuck && matches!(step.advice.act, Act::Mend { cause: Cause::TooLate, .. }), "{step:?}");
    assert!(
        step.advice
            .because
            .iter()
            .any(|r| matches!(r.fact, Because::Delay { seconds, bar } if seconds.low > Some(bar)))
    );
}

#[test]
fn an_invitation_it_did_not_want_is_never_counted() {
    let (story, animal) = demo();
    let word = WordId(Uuid::from_u128(77));
    let ask = |number: u128, result, took| {
        let seconds = |s| Seconds::new(s).unwrap();
        let body = Invitation {
            word,
            other: None,
            way: InvitationKind::OfferInView,
            wait_s: seconds(5.0),
            result,
            shown: true,
            took,
            session: None,
            call: None,
        };
        event(&story, animal, number, now(), body)
    };
    let pressed = |w| InvitationResult::Pressed { word: w, after_s: Seconds::new(2.0).unwrap() };
    let other = WordId(Uuid::from_u128(78));
    let told = Story::from_events([
        ask(1, InvitationResult::NothingByWait, Some(true)),
        ask(2, InvitationResult::NothingByWait, Some(false)),
        ask(3, InvitationResult::NothingByWait, None),
        ask(4, pressed(word), Some(true)),
        ask(5, pressed(word), Some(false)),
        ask(6, pressed(other), Some(true)),
        ask(7, InvitationResult::Left { after_s: None }, None),
        ask(8, InvitationResult::WithoutButton { after_s: None }, Some(true)),
    ]);
    let case = Case::new(&told, animal, now());
    let sorted = case.invitations(word);
    // Wanted: 1, 4, 6 and 8; pressed, whichever word: 4 and 6.
    assert_eq!(sorted.pressed(), (2, 4));
    // Every press counts among the right and wrong ones, wanted or not, or the share would be flattered: 4, 5 and 6.
    assert_eq!(sorted.right(), (2, 3));
    assert_eq!((sorted.not_wanted, sorted.without_button, sorted.unrecorded), (3, 1, 1));
    assert_eq!(sorted.total(), 8);
}

#[test]
fn a_likes_test_goes_on_from_what_was_recorded_and_taken_back() {
    let (base, animal) = demo();
    let rewards: Vec<RewardId> = (1..=3).map(|n| RewardId(Uuid::from_u128(n))).collect();
    let assessment = AssessmentId(Uuid::from_u128(9));
    let test = LikesTest { assessment, format: LikesFormat::Multiple, rewards, rounds: 1, seed: 5 };
    let mut story = Story::from_events([event(&base, animal, 1, now(), test)]);
    let offered = |story: &Story| match next_setup(story, animal, assessment).unwrap() {
        Setup::Offer { offered, .. } => offered,
        Setup::Done => Vec::new(),
    };
    let first = offered(&story);
    assert_eq!(first.len(), 3);
    let choose = |row: &[RewardId], number: u128, result| {
        let trial = LikeTrial { assessment, format: LikesFormat::Multiple, round: 1, offered: row.to_vec(), result };
        event(&base, animal, number, now(), trial)
    };
    story.add(choose(&first, 2, LikeOutcome::Chose { reward: first[1] }));
    assert_eq!(offered(&story), vec![first[2], first[0]], "the leftmost of the others moves to the right end");
    let back = Withdrawal { of: EventId(Uuid::from_u128(2)), because: None };
    story.add(event(&base, animal, 3, now(), back));
    assert_eq!(offered(&story), first, "a trial taken back comes again");
    story.add(choose(&first, 4, LikeOutcome::WalkedAway));
    assert_eq!(next_setup(&story, animal, assessment), Some(Setup::Done), "walking away is an answer");
}

#[test]
fn a_word_asked_for_more_than_it_can_be_given_gets_a_signal_and_a_sign_to_go_back() {
    use sayso_model::{Accident, Answer, Delivery, Press, PressedBy, Probability, Stage};
    let (story, animal) = demo();
    let case = Case::new(&story, animal, now());
    let standings = stages::standings(&case);
    assert!(thinning::thinning(&case).is_empty(), "the demo's people keep up");
    let word = standings.iter().find(|s| s.stage == Stage::Converse && s.says == "tug").unwrap().word;
    let mut busy = story.clone();
    for i in 0..300_u32 {
        let at = now().plus_seconds(-600.0 * f64::from(i));
        let press = Press {
            word,
            by: PressedBy::Animal,
            certainty: Probability::clamped(1.0),
            accident: Accident::Unsure,
            place: None,
            speed: None,
            stream: None,
            session: None,
        };
        let id = u128::from(i) * 2 + 10;
        busy.add(event(&story, animal, id, at, press));
        let delivery = Delivery {
            answers: Some(EventId(Uuid::from_u128(id))),
            word,
            answer: if i % 5 == 0 { Answer::Given } else { Answer::Declined },
            alternative: None,
            delay_s: None,
            then: None,
            then_word: None,
            session: None,
        };
        busy.add(event(&story, animal, id + 1, at.plus_seconds(2.0), delivery));
    }
    let case = Case::new(&busy, animal, now());
    let advice = thinning::thinning(&case);
    assert_eq!(advice.iter().filter_map(|a| a.word).collect::<Vec<_>>(), [word]);
    assert!(
        advice[0].cautions.contains(&Caution::BurstMayCome) && advice[0].cautions.contains(&Caution::NeverForNeeds)
    );
    assert_eq!(advice[0].would_change, [Change::LongerOrBack]);
    assert!(advice[0].because.iter().any(|r| matches!(r.fact, Because::ManyPresses { rate, .. } if rate.n >= 100)));
    let today = today::today(&case).unwrap();
    let step = today.steps.iter().find(|s| s.word.word == word).unwrap();
    assert_eq!(step.step, Step::Signal, "and it is the word's one step");
}

#[test]
fn the_demo_s_checks_were_run_in_the_order_their_plans_give() {
    let (story, animal) = demo();
    let plans: Vec<ProbePlan> = story.of::<ProbePlan>(animal).map(|p| p.part.clone()).collect();
    assert_eq!(plans.len(), 3);
    for plan in plans {
        let planned = checks::order(&plan).unwrap();
        let run = checks::trials(&story, animal, plan.probe);
        assert!(!run.is_empty());
        for trial in run {
            assert_eq!(planned[usize::from(trial.part.trial) - 1].word, trial.part.target);
        }
        let departures = checks::report(&Case::new(&story, animal, now()), plan.probe).unwrap().unwrap().departures;
        assert!(departures.is_empty(), "{departures:?}");
    }
}
