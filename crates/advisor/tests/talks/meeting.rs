//! What is told at a meeting: counted in the days that were asked for, with as long a time before beside it.

use crate::kit::{BALL, DOG, Log, WALK, lines, now, today};
use sayso_advisor::Case;
use sayso_advisor::meeting::{Measure, New, first_day, meeting};
use sayso_model::talks::talks;
use sayso_model::*;
use uuid::Uuid;

fn press(log: &mut Log, days: f64, word: WordId, by: PressedBy) {
    let (certainty, accident) = (Probability::clamped(1.0), Accident::No);
    log.put(days, Press { word, by, certainty, accident, place: None, speed: None, stream: None, session: None });
}

fn invite(log: &mut Log, days: f64, pressed: bool) {
    let result = if pressed {
        InvitationResult::Pressed { word: BALL, after_s: Seconds::clamped(2.0) }
    } else {
        InvitationResult::NothingByWait
    };
    let (way, wait_s, took) = (InvitationKind::OfferInView, Seconds::clamped(5.0), Some(true));
    let invitation =
        Invitation { word: BALL, other: None, way, wait_s, result, shown: false, took, session: None, call: None };
    log.put(days, invitation);
}

fn session(log: &mut Log, days: f64, joins: bool) {
    let session = SessionId(Uuid::from_u128(500 + log.len() as u128));
    log.put(days, SessionStart { session, purpose: Purpose::Showing, words: vec![BALL], room: None });
    if joins {
        log.put(days - 0.001, Joining { session, after_s: None });
    }
    log.put(days - 0.01, SessionEnd { session, reason: EndReason::Done });
}

fn plan(last_day: Day) -> Proposed {
    Proposed::Plan { lines: lines(&[BALL]), last_day }
}

fn first(log: &Log, chosen: Option<Day>) -> i32 {
    let story = log.story();
    let case = Case::new(&story, DOG, now());
    today().days_since(first_day(&case, &talks(&story, now()), chosen))
}

#[test]
fn it_begins_on_the_chosen_day_else_with_the_last_plan_else_two_weeks_ago() {
    let mut log = Log::with_walk(2.0);
    assert_eq!(first(&log, None), 13);
    assert_eq!(first(&log, Some(today().plus(-40))), 40);
    for out in [1, -84, -4_000] {
        assert_eq!(first(&log, Some(today().plus(out))), 13, "{out}");
    }
    let told = log.proposes(30.0, plan(today().plus(3)));
    assert_eq!(first(&log, None), 13, "nobody agreed");
    log.replies(20.0, told, Reply::Accepted);
    assert_eq!(first(&log, None), 20, "since it was agreed");
    log.put(6.0, OwnPlan { lines: lines(&[BALL]), last_day: today() });
    assert_eq!(first(&log, None), 6, "or made");
    let new = log.proposes(0.1, plan(today().plus(6)));
    log.replies(0.05, new, Reply::Accepted);
    assert_eq!(first(&log, None), 6, "today's plan is what comes next, not what was");
}

#[test]
fn figures_are_counted_since_and_in_as_many_days_before_and_nothing_from_further_back() {
    let mut log = Log::with_walk(2.0);
    // Thirteen days ago and today are days of the stretch; the days before it begin one day earlier.
    for (days, pressed) in [(30.0, true), (14.0, false), (20.0, true), (13.0, true), (12.0, true), (1.0, false)] {
        invite(&mut log, days, pressed);
    }
    for days in [2.0, 3.0, 4.0] {
        invite(&mut log, days, true);
        session(&mut log, days, days < 4.0);
    }
    for days in [1.0, 2.0, 3.0, 15.0, 40.0] {
        press(&mut log, days, BALL, PressedBy::Animal);
        press(&mut log, days, BALL, PressedBy::Person);
    }
    let story = log.story();
    let case = Case::new(&story, DOG, now());
    let told = meeting(&case, today().plus(-13));
    assert_eq!((told.days, told.sessions, told.presses), (14, 3, 3));
    assert_eq!(told.noted, 6, "days 13, 12, 4, 3, 2 and 1");
    let [pressed, presses, joining] = told.figures;
    assert_eq!((pressed.measure, pressed.since.n, pressed.before.n), (Measure::Pressed, 6, 2));
    assert!((pressed.since.value.unwrap() - 5.0 / 6.0).abs() < 1e-12, "{pressed:?}");
    assert!((pressed.before.value.unwrap() - 0.5).abs() < 1e-12, "{pressed:?}");
    assert_eq!((presses.measure, presses.since.n, presses.before.n), (Measure::Presses, 3, 1));
    // Up to this evening the stretch has 13 days and 20 hours.
    assert!((presses.since.value.unwrap() - 3.0 / (13.0 + 20.0 / 24.0)).abs() < 1e-9, "{presses:?}");
    assert_eq!((joining.measure, joining.since.n, joining.before.n), (Measure::Joining, 3, 0));
    assert!(joining.since.too_early(), "three sessions say nothing yet, and no delay is better known");
    assert!(pressed.since.low.unwrap() < pressed.since.value.unwrap(), "an interval stands beside it");
}

#[test]
fn news_are_of_the_stretch_alone() {
    let mut log = Log::with_walk(2.0);
    log.put(20.0, StageChoice { word: BALL, stage: Stage::Show, because: None });
    log.put(3.0, StageChoice { word: BALL, stage: Stage::Invite, because: None });
    press(&mut log, 20.0, BALL, PressedBy::Animal);
    press(&mut log, 1.0, WALK, PressedBy::Animal);
    let story = log.story();
    let told = meeting(&Case::new(&story, DOG, now()), today().plus(-13));
    let [New::Word { word: new }, New::Stage { word: staged, to }, New::FirstPress { word: pressed, .. }] =
        told.news.as_slice()
    else {
        panic!("{:?}", told.news)
    };
    assert_eq!((new.word, staged.word, *to, pressed.word), (WALK, BALL, Stage::Invite, WALK));
}
