//! What must hold of every simulated log.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_precision_loss)]

use proptest::prelude::*;
use sayso_model::event::Part;
use sayso_model::*;
use sayso_sim::*;
use std::collections::{BTreeMap, BTreeSet};

const END: &str = "2026-11-25T19:30:00Z";

fn end() -> Moment {
    END.parse().unwrap()
}

/// Everything that holds of any simulated log.
fn holds(run: &Simulated, end: Moment) {
    let mut seen: BTreeMap<EventId, &Event> = BTreeMap::new();
    let mut sessions = BTreeSet::new();
    for e in &run.events {
        e.check().unwrap_or_else(|p| panic!("{p}: {e:?}"));
        assert_eq!(e.id.0.get_version_num(), 7);
        let (secs, nanos) = e.id.0.get_timestamp().unwrap().to_unix();
        let millis = i64::try_from(secs).unwrap() * 1000 + i64::from(nanos) / 1_000_000;
        assert_eq!(millis, e.recorded_at.millis(), "an id carries the time of recording");
        assert!(e.happened_at <= e.recorded_at && e.recorded_at <= end, "{e:?}");
        assert_eq!(e.home, run.truth.ids.home);
        assert!(seen.insert(e.id, e).is_none(), "an id twice");
        if let Body::SessionStart(s) = &e.body {
            sessions.insert(s.session);
        }
    }
    assert!(run.events.is_sorted_by_key(|e| (e.recorded_at, e.id)));
    for e in &run.events {
        if let Some(of) = e.body.amends() {
            assert!(seen[&of].recorded_at <= e.recorded_at);
        }
        if let Body::Delivery(d) = &e.body
            && let Some(press) = d.answers
        {
            let press = seen.get(&press).unwrap_or_else(|| panic!("answers an unknown press: {e:?}"));
            assert!(press.happened_at <= e.happened_at);
            // A mistap that was put right later may name another word.
            assert!(matches!(press.body, Body::Press(_)));
        }
        if let Some(s) = e.body.session() {
            assert!(sessions.contains(&s), "{e:?}");
        }
    }
    for p in run.truth.presses.keys() {
        assert!(matches!(seen[p].body, Body::Press(_)));
    }
    for d in &run.truth.days {
        assert!(d.understanding.iter().chain(&d.wanting).all(|p| (0.0..=1.0).contains(p)), "{d:?}");
    }
    assert!(run.truth.sessions.iter().all(|s| (0.0..=1.0).contains(&s.join)));
    assert_eq!(run.truth.sessions.len(), sessions.len());
}

#[test]
fn same_seed_same_bytes() {
    let text = |seed| serde_json::to_string(&demo(seed, end()).events).unwrap();
    assert_eq!(text(7), text(7));
    assert_ne!(text(7), text(8));
}

#[test]
fn the_demo_is_a_valid_log() {
    let run = demo(7, end());
    holds(&run, end());
    assert!((3_000..9_000).contains(&run.events.len()), "{}", run.events.len());
    demo_home(end()).check().unwrap();
}

#[test]
fn samples_show_every_kind_and_the_demo_all_but_clips_designs_lessons_consent_and_talk() {
    for seed in 1..=4 {
        let kinds: BTreeSet<Kind> = demo(seed, end()).events.iter().map(|e| e.body.kind()).collect();
        let missing: Vec<&Kind> = Kind::ALL.iter().filter(|k| !kinds.contains(k)).collect();
        let left_out = [
            Kind::ClipCard,
            Kind::PictureCard,
            Kind::DesignPlan,
            Kind::DesignNote,
            Kind::DesignStop,
            Kind::LessonRead,
            Kind::ConsentGiven,
            Kind::ConsentTakenBack,
            Kind::Proposal,
            Kind::ProposalAnswer,
            Kind::OwnPlan,
            Kind::AimDone,
        ];
        assert_eq!(missing, left_out.iter().collect::<Vec<_>>(), "seed {seed}");
    }
    let samples = samples();
    assert!(samples.iter().all(|e| e.check().is_ok()));
    assert_eq!(samples.iter().map(|e| e.body.kind()).collect::<Vec<_>>(), Kind::ALL);
    let wire = serde_json::to_string(&samples).unwrap();
    assert_eq!(serde_json::from_str::<Vec<Event>>(&wire).unwrap(), samples);
}

#[test]
fn the_demo_goes_through_a_day_of_25_hours() {
    let run = demo(7, end());
    let zone = &run.truth.home.zone;
    let day: Day = "2026-10-25".parse().unwrap();
    assert_eq!(day.hours(zone), 25.0);
    let that_day: Vec<&Event> = run.events.iter().filter(|e| e.happened_at.day(zone) == day).collect();
    assert!(that_day.len() > 20, "{}", that_day.len());
    // Life keeps to the local clock: the dog sleeps from 22 to 7 before and after the change.
    let dog = run.truth.ids.animals[0];
    let awake = |e: &&&Event| (6..=23).contains(&e.happened_at.hour(zone));
    let presses = run.events.iter().filter(|e| e.animal == Some(dog) && e.body.kind() == Kind::Press);
    assert!(presses.collect::<Vec<_>>().iter().all(|e| awake(&e)));
    assert_eq!(run.truth.days.len(), 140);
    assert_eq!(run.truth.last_day(0).unwrap().day, end().day(zone));
}

#[test]
fn today_has_a_session_whatever_the_hour() {
    for hour in [1, 5, 8, 12, 17, 23] {
        let end: Moment = format!("2026-11-25T{hour:02}:10:00Z").parse().unwrap();
        let run = demo(3, end);
        holds(&run, end);
        let story = Story::from_events(run.events);
        let zone = story.zone();
        let today = story
            .sessions(run.truth.ids.animals[0])
            .iter()
            .filter(|s| s.start.at().day(&zone) == end.day(&zone))
            .count();
        assert!(today >= 1, "none by {end}");
    }
}

#[test]
fn the_demo_tells_the_story_it_should() {
    for seed in 1..=6 {
        let run = demo(seed, end());
        let story = Story::from_events(run.events);
        let [dog, rabbit] = run.truth.ids.animals[..] else { panic!() };
        let stage = |word: usize| {
            let word = run.truth.ids.words[word];
            story.of::<StageChoice>(dog).rfind(|f| f.part.word == word).unwrap().part.stage
        };
        // Success: all three first words converse. Stall: ball never gets there. One word is still prepared.
        let first = [stage(0), stage(1), stage(2)];
        assert!(first.iter().filter(|s| **s == Stage::Converse).count() >= 2, "seed {seed}: {first:?}");
        assert_eq!((stage(4), stage(5), stage(6)), (Stage::Invite, Stage::Show, Stage::Prepare), "seed {seed}");
        let ball = run.truth.last_day(0).unwrap();
        assert!(ball.understanding[4] < 0.1 && ball.wanting[4] > 0.5, "seed {seed}");
        assert!(ball.showings[4] > 100, "seed {seed}");
        // The cause can be seen in the record: it is taken when it comes, but it comes late.
        let shown = |word: usize| {
            let word = run.truth.ids.words[word];
            let mut all: Vec<&Delivery> = story.of::<Delivery>(dog).map(|f| f.part).collect();
            all.retain(|d| d.word == word && d.answer == Answer::Given && d.then.is_some());
            let mut delays: Vec<f64> = all.iter().filter_map(|d| d.delay_s).map(Seconds::get).collect();
            delays.sort_by(f64::total_cmp);
            let took = all.iter().filter(|d| d.then == Some(Then::Took)).count();
            (delays[delays.len() / 2], took as f64 / all.len() as f64)
        };
        let ((ball_delay, ball_took), (tug_delay, _)) = (shown(4), shown(1));
        assert!(ball_delay > 12.0 && tug_delay < 4.0 && ball_took > 0.6, "{ball_delay} {ball_took} {tug_delay}");
        assert!(story.of::<Press>(rabbit).count() > 50);
        assert!(story.animals()[&rabbit].day_kcal.is_some());
        assert!(story.people().len() == 3 && story.rewards().len() == 10 && story.words_of(dog).len() == 7);
    }
}

#[test]
fn scale_has_as_many_presses_as_asked_for() {
    for n in [0, 1, 37, 5_000] {
        let run = scale(1, n, end());
        holds(&run, end());
        let own = run.events.iter().filter(|e| matches!(&e.body, Body::Press(p) if p.by == PressedBy::Animal));
        assert_eq!(own.count(), n);
        assert_eq!(run.truth.presses.len(), n);
    }
}

#[test]
fn day_by_day_gives_the_same_events_as_all_at_once() {
    let home = stuck_home(Cause::SoundsAlike, 5);
    let mut steps = Simulation::new(&home, 5, end()).unwrap();
    let mut events = Vec::new();
    while let Some(day) = steps.next_day() {
        events.extend(day);
    }
    events.sort_by_key(|e| (e.recorded_at, e.id));
    let once = simulate(&home, 5, end()).unwrap();
    assert_eq!(events, once.events);
    assert_eq!(steps.into_truth(), once.truth);
}

#[test]
fn configurations_that_do_not_hold_together_are_refused() {
    let good = stuck_home(Cause::Unwell, 1);
    let refused = |change: &dyn Fn(&mut Home)| {
        let mut bad = good.clone();
        change(&mut bad);
        simulate(&bad, 1, end()).unwrap_err()
    };
    assert_eq!(refused(&|h| h.people.clear()), ConfigError::None("people"));
    assert_eq!(refused(&|h| h.words[0].reward = 9), ConfigError::Dangling("word.reward"));
    assert!(matches!(refused(&|h| h.days = 0), ConfigError::OutOfRange("days", _)));
    assert!(matches!(refused(&|h| h.words[1].place = h.words[0].place), ConfigError::OutOfRange("word.place", _)));
    assert!(matches!(refused(&|h| h.animals[0].plan.wait_s = f64::NAN), ConfigError::OutOfRange("plan.wait_s", _)));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, ..ProptestConfig::default() })]
    #[test]
    fn any_home_gives_a_valid_log(seed in any::<u64>(), hours in 0i64..400_000) {
        let end = Moment::clamped(1_577_836_800_000 + hours * 3_600_000);
        let home = any_home(seed);
        home.check().unwrap();
        let run = simulate(&home, seed, end).unwrap();
        holds(&run, end);
    }

    #[test]
    fn odd_numbers_never_break_a_run(
        strength in -50.0..50.0f64, rate in -1.0..5.0f64, slip in -1.0..2.0f64, delay in 0.01..5_000.0f64,
        mood_keep in -1.0..2.0f64, bias in -20.0..20.0f64, wait in 0.5..120.0f64, style in 0usize..3,
    ) {
        let mut home = stuck_home(Cause::DeviceAvoided, 3);
        home.days = 12;
        home.clips = true;
        home.words[1].invited_from = Some(2);
        let l = &mut home.animals[0];
        l.likes[0].strength = strength;
        l.presser.rate = rate;
        l.presser.slip = slip;
        l.presser.side_bias = bias;
        l.presser.style = [Style::ByMeaning, Style::AnyWord, Style::ByPlace(vec![])][style].clone();
        l.temper.mood_keep = mood_keep;
        l.plan.wait_s = wait;
        home.people[0].delay_s = delay;
        let run = simulate(&home, 9, end()).unwrap();
        holds(&run, end());
    }
}

/// A drawn life is a valid log, the same each time, with about the presses a day it should have; its checks follow their order.
#[test]
fn drawn_lives_are_valid_logs() {
    for (habit, tricks) in [(Habit::Random, &[][..]), (Habit::Aroused, &Trick::ON_PURPOSE), (Habit::Means(0.7), &[])] {
        let mut home = DrawnHome::of(habit, 30).checked(6);
        home.tricks = tricks.to_vec();
        let life = drawn_life(&home, 5, end());
        assert_eq!(life, drawn_life(&home, 5, end()));
        let ids: BTreeSet<EventId> = life.events.iter().map(|e| e.id).collect();
        assert_eq!(ids.len(), life.events.len());
        for e in &life.events {
            e.check().unwrap_or_else(|p| panic!("{p}: {e:?}"));
            assert!(e.recorded_at <= end());
        }
        let presses = life.events.iter().filter(|e| e.body.kind() == Kind::Press).count();
        assert!((6 * 30..60 * 30).contains(&presses), "{habit:?}: {presses}");
        let plans: Vec<&ProbePlan> = life.events.iter().filter_map(|e| ProbePlan::of(&e.body)).collect();
        let trials = life.events.iter().filter_map(|e| ProbeTrial::of(&e.body));
        for trial in trials {
            let plan = plans.iter().find(|p| p.probe == trial.probe).unwrap();
            let planned = sayso_model::order::order(plan).unwrap();
            assert_eq!(planned[usize::from(trial.trial) - 1].word, trial.target);
        }
    }
}

/// Meaning is in the choice alone: at p = 0.7 of four buttons 77.5 % of pressed calls are right, at random 25 %.
#[test]
fn pressed_calls_are_right_as_often_as_meant() {
    let share = |habit| {
        let life = drawn_life(&DrawnHome::of(habit, 200), 8, end());
        let pressed: Vec<bool> = life
            .events
            .iter()
            .filter_map(|e| Invitation::of(&e.body))
            .filter_map(|i| match i.result {
                InvitationResult::Pressed { word, .. } => Some(word == i.word),
                _ => None,
            })
            .collect();
        assert!(pressed.len() > 800, "{}", pressed.len());
        pressed.iter().filter(|r| **r).count() as f64 / pressed.len() as f64
    };
    // Standard errors 0.013 and 0.014.
    assert!((share(Habit::Means(0.7)) - 0.775).abs() < 0.06);
    assert!((share(Habit::Random) - 0.25).abs() < 0.06);
}
