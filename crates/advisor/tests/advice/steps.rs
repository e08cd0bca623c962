//! One step a word, a plan that agrees with the steps, facts that do not contradict each other.

use sayso_advisor::hint::Hint;
use sayso_advisor::lately::Lately;
use sayso_advisor::steps::Step;
use sayso_advisor::stuck::Cause;
use sayso_advisor::today::{Next, Today, today};
use sayso_advisor::{Act, Because, Case, stages};
use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, HomeId, Moment, RewardCard, Source, Stage, StageChoice, Story, WordId,
    Zone,
};
use serde_json::json;
use uuid::Uuid;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

fn demo() -> (Story, AnimalId) {
    let story = Story::from_events(sayso_sim::demo(7, now()).events);
    let animal = *story.animals().keys().max_by_key(|l| story.words_of(**l).len()).unwrap();
    (story, animal)
}

fn event(number: u128, home: HomeId, animal: Option<AnimalId>, body: impl Into<Body>) -> Event {
    Event {
        id: EventId(Uuid::from_u128(number)),
        home,
        animal,
        person: None,
        happened_at: now().plus_seconds(-60.0),
        zone: Zone::utc(),
        recorded_at: now(),
        source: Source::Tap,
        body: body.into(),
    }
}

fn checked(today: &Today) {
    let plan = today.plan();
    for s in &today.steps {
        let planned = plan.and_then(|p| p.words.iter().find(|w| w.word == s.word));
        let invites = s.advice.act.invites();
        assert_eq!(planned.is_some_and(|p| p.invitations > 0), planned.is_some() && invites, "{s:?}");
        assert!(planned.is_none_or(|p| p.invitations <= p.showings), "{planned:?}");
        assert!(s.also.iter().all(|a| !a.act.invites()), "{s:?}");
        assert!(!(s.figures_say < s.stage.min(Stage::Invite) && invites), "{s:?}");
        if let Some(p) = planned {
            assert_eq!(p.hint, s.hint, "{s:?}");
            assert!(!matches!(p.hint, Some(Hint::ShowOnly)) || p.invitations == 0, "{p:?}");
            assert!(!matches!(p.hint, Some(Hint::WaitThenShow { .. })) || p.invitations > 0, "{p:?}");
        }
        assert_eq!(s.trend.len(), 8);
    }
}

#[test]
fn every_word_of_the_demo_has_one_step_and_the_plan_agrees() {
    let (story, animal) = demo();
    let found = today(&Case::new(&story, animal, now())).unwrap();
    let words: Vec<_> = story.words_of(animal).iter().map(|w| w.word).collect();
    assert_eq!(found.steps.iter().map(|s| s.word.word).collect::<Vec<_>>(), words);
    checked(&found);
    assert!(found.plan().is_some());
}

#[test]
fn a_word_that_is_pressed_more_is_not_one_that_is_kept_away_from() {
    let mut seen = 0;
    for seed in 1..=4 {
        let story = Story::from_events(sayso_sim::demo(seed, now()).events);
        for animal in story.animals().keys() {
            let found = today(&Case::new(&story, *animal, now())).unwrap();
            for fact in &found.lately {
                let Lately::MorePresses { word, .. } = fact else { continue };
                let step = found.steps.iter().find(|s| s.word == *word).unwrap();
                let away = |act: &Act| matches!(act, Act::Mend { cause: Cause::Avoided, .. });
                assert!(!away(&step.advice.act) && !step.also.iter().any(|a| away(&a.act)), "{seed}: {step:?}");
                seen += 1;
            }
        }
    }
    assert!(seen > 0, "some word is pressed more in its last week");
}

#[test]
fn a_round_draws_what_the_plan_invites_and_others_only_where_nothing_could_be_drawn() {
    let (story, animal) = demo();
    let mut today = today(&Case::new(&story, animal, now())).unwrap();
    let may: Vec<_> = today.steps.iter().map(|s| s.word.word).filter(|w| today.may_invite(*w)).collect();
    assert!(may.len() > 2, "{may:?}");
    let planned = |today: &mut Today, invited: usize| {
        let (Next::Session { plan } | Next::Pause { plan, .. }) = &mut today.next else {
            panic!("the demo has a session to hold")
        };
        for (number, word) in plan.words.iter_mut().enumerate() {
            word.invitations = usize::from(number < invited);
        }
        plan.words.iter().map(|w| w.word.word).take(invited).collect::<Vec<_>>()
    };
    let all = today.plan().map_or(0, |plan| plan.words.len());
    assert!(all > 1, "{all}");
    for invited in 2..=all {
        let of_the_plan = planned(&mut today, invited);
        assert_eq!(of_the_plan.len(), invited);
        assert_eq!(today.draws(), of_the_plan);
    }
    for invited in [0, 1] {
        planned(&mut today, invited);
        assert_eq!(today.draws(), may, "{invited}: none could be drawn from fewer than two");
    }
}

#[test]
fn a_word_people_moved_on_too_early_is_stepped_back_shown_and_not_invited() {
    let (mut story, animal) = demo();
    let home = story.ledger().all().next().unwrap().home;
    let case = Case::new(&story, animal, now());
    let early: Vec<_> = stages::standings(&case)
        .iter()
        .filter(|s| s.figures_say == Stage::Show && !s.closing)
        .map(|s| s.word)
        .collect();
    assert!(!early.is_empty(), "the demo has a word that is being shown");
    for (n, word) in early.iter().enumerate() {
        let choice = StageChoice { word: *word, stage: Stage::Invite, because: None };
        story.add(event(900 + n as u128, home, Some(animal), choice));
    }
    let found = today(&Case::new(&story, animal, now())).unwrap();
    checked(&found);
    for word in early {
        let step = found.steps.iter().find(|s| s.word.word == word).unwrap();
        assert!(step.step <= Step::StepBack, "{step:?}");
        if step.step == Step::StepBack {
            assert!(matches!(step.advice.act, Act::StepBack { to: Stage::Show, .. }));
        }
    }
}

/// The demo with a word set to a stage by a person just now.
fn with_stage(mut story: Story, animal: AnimalId, word: WordId, stage: Stage) -> Story {
    let home = story.ledger().all().next().unwrap().home;
    story.add(event(950, home, Some(animal), StageChoice { word, stage, because: None }));
    story
}

#[test]
fn a_word_stepped_back_to_inviting_is_invited_by_row_hint_and_plan() {
    let (story, animal) = demo();
    let case = Case::new(&story, animal, now());
    let words: Vec<_> = stages::standings(&case)
        .iter()
        .filter(|s| s.figures_say == Stage::Invite && !s.closing)
        .map(|s| s.word)
        .collect();
    let mut seen = 0;
    for word in words {
        let story = with_stage(demo().0, animal, word, Stage::Converse);
        let found = today(&Case::new(&story, animal, now())).unwrap();
        checked(&found);
        let step = found.steps.iter().find(|s| s.word.word == word).unwrap();
        if !matches!(step.advice.act, Act::StepBack { to: Stage::Invite, .. }) {
            continue;
        }
        assert!(matches!(step.hint, Some(Hint::WaitThenShow { .. } | Hint::GiveFaster { .. })), "{step:?}");
        let planned = found.plan().and_then(|p| p.words.iter().find(|w| w.word.word == word));
        assert!(planned.is_none_or(|p| p.invitations > 0), "{planned:?}");
        seen += usize::from(planned.is_some());
    }
    assert!(seen > 0, "the demo has a word to be invited");
}

#[test]
fn a_word_that_ends_sessions_is_shown_at_their_end_whatever_stage_people_set() {
    let (story, animal) = demo();
    let closing = story.words_of(animal).iter().find(|w| w.closing).unwrap().word;
    for stage in [Stage::Prepare, Stage::Show, Stage::Invite] {
        let story = with_stage(demo().0, animal, closing, stage);
        let case = Case::new(&story, animal, now());
        let standing = stages::standings(&case).iter().find(|s| s.word == closing).unwrap();
        assert_eq!((standing.stage, standing.figures_say), (stage, Stage::Show));
        assert_eq!(standing.because, [Because::EndsSessions]);
        let found = today(&case).unwrap();
        let step = found.steps.iter().find(|s| s.word.word == closing).unwrap();
        assert!(matches!(step.advice.act, Act::ShowAtEnd { .. }), "{step:?}");
        assert!(step.hint == Some(Hint::AtTheEnd) && !step.stuck, "{step:?}");
        assert!(!step.advice.would_change.is_empty() && !step.advice.because.is_empty(), "{step:?}");
        assert!(found.plan().is_none_or(|p| p.words.iter().all(|w| w.word.word != closing)));
    }
}

#[test]
fn what_is_set_up_comes_one_thing_at_a_time() {
    let (home, animal) = (HomeId(Uuid::from_u128(1)), AnimalId(Uuid::from_u128(2)));
    let card: AnimalCard =
        serde_json::from_value(json!({ "animal": animal, "name": "Bo", "species": "dog", "active": true })).unwrap();
    let mut story = Story::from_events([event(1, home, None, card)]);
    let next = |story: &Story| today(&Case::new(story, animal, now())).unwrap().next;
    let asked = |next: Next| match next {
        Next::SetUp { advice } | Next::TestLikes { advice } => advice.act,
        other => panic!("{other:?}"),
    };
    assert_eq!(asked(next(&story)), Act::ListRewards);
    for n in 0..2_u128 {
        let card = json!({ "reward": Uuid::from_u128(50 + n), "name": format!("toy {n}"), "reward_kind": "play" });
        let card: RewardCard = serde_json::from_value(card).unwrap();
        story.add(event(10 + n, home, None, card));
    }
    assert_eq!(asked(next(&story)), Act::SetAllowance);
}

#[test]
fn the_week_is_told_in_facts_that_carry_what_they_say() {
    let (story, animal) = demo();
    let found = today(&Case::new(&story, animal, now())).unwrap();
    for good in &found.lately {
        match good {
            Lately::Joined { joined, of } | Lately::Taken { taken: joined, of } => {
                assert!(*of >= 5 && joined <= of, "{good:?}");
            }
            Lately::MorePresses { now, before, p, .. } => assert!(4 * now > *before && *p < 0.05, "{good:?}"),
            Lately::FirstPress { word, .. } => {
                let step = found.steps.iter().find(|s| s.word == *word).unwrap();
                assert!(step.trend[..7].iter().all(|n| *n == 0) && step.trend[7] > 0, "{good:?}");
            }
            Lately::CheckPassed { right, of, .. } => assert!(right <= of && *of > 0, "{good:?}"),
        }
    }
    let empty = today(&Case::new(&story, animal, "2020-01-01T12:00:00Z".parse().unwrap()));
    assert!(empty.is_none_or(|t| t.lately.is_empty()), "before the first record there is nothing");
}

#[test]
fn the_same_invitations_are_told_in_the_same_counts_everywhere() {
    let (story, animal) = demo();
    let case = Case::new(&story, animal, now());
    let found = today(&case).unwrap();
    let mut seen = 0;
    for s in &found.steps {
        let asked = case.invitations(s.word.word);
        let ((pressed, wanted), facts) =
            (asked.pressed(), s.advice.because.iter().chain(s.also.iter().flat_map(|a| &a.because)));
        for reason in facts {
            if let Because::WhenWanted { this, other, none } = reason.fact {
                assert_eq!((this + other, this + other + none), (pressed, wanted));
                seen += 1;
            }
        }
    }
    assert!(seen > 0, "the demo tells of its invitations");
}

#[test]
fn advice_holds_typed_values_and_no_sentences() {
    let (story, animal) = demo();
    let found = today(&Case::new(&story, animal, now())).unwrap();
    assert!(!found.steps.is_empty() && !found.lately.is_empty());
    // What people typed stands in quotation marks too, but is no sentence in the demo.
    let held = format!("{:?} {:?} {:?} {:?} {:?}", found.welfare, found.next, found.steps, found.lately, found.later);
    let texts: Vec<&str> = held.split('"').skip(1).step_by(2).collect();
    let sentences: Vec<&&str> = texts.iter().filter(|t| t.ends_with('.') && t.contains(' ')).collect();
    assert!(sentences.is_empty(), "{sentences:?}");
}
