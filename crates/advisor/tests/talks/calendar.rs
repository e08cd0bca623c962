//! What a calendar holds: what was agreed and has a day, no more, and nothing to be done while sessions rest.

use crate::kit::{BALL, Log, WALK, card, lines, now, today};
use sayso_advisor::calendar::{What, entries};
use sayso_model::talks::talks;
use sayso_model::*;
use uuid::Uuid;

/// A proposal, and what the home says to it.
fn proposes(log: &mut Log, days: f64, proposes: Proposed, reply: Option<Reply>) -> EventId {
    let to = log.proposes(days, proposes);
    if let Some(reply) = reply {
        log.replies(days - 0.1, to, reply);
    }
    to
}

/// What the calendar holds, as short lines.
fn told(log: &Log) -> Vec<String> {
    let story = log.story();
    let all = talks(&story, now());
    let day = |day: &Day| day.days_since(today());
    let told = entries(&story, &all, &[], now()).into_iter().map(|entry| match entry.what {
        What::Meeting { minutes, agreed, .. } => format!("meeting {minutes} {agreed}"),
        What::Plan { from, lines, first, last } => {
            let words: Vec<_> = lines.iter().map(|l| if l.word == BALL { "ball" } else { "walk" }).collect();
            format!(
                "{} {} {} {}",
                if from.is_some() { "plan" } else { "own" },
                words.join("+"),
                day(&first),
                day(&last)
            )
        }
        What::GoOnWithCheck { done, of, .. } => format!("check {done}/{of}"),
        What::PlanCheck { word, .. } => format!("check {}", word.says),
    });
    told.collect()
}

fn plan(words: &[WordId], last: i32) -> Proposed {
    Proposed::Plan { lines: lines(words), last_day: today().plus(last) }
}

fn meeting(days: f64, minutes: u16) -> Proposed {
    Proposed::Meeting { starts_at: now().plus_seconds(86_400.0 * days), minutes }
}

/// So many days ago; twelve hours are the least rest.
fn growls(log: &mut Log, days: f64) {
    let sign = Note::new("growl").unwrap();
    log.put(days, Sign { sign, level: SignLevel::Strong, when: When::During, session: None });
}

#[test]
fn meetings_that_nobody_declined_and_that_are_not_long_over() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 3.0, meeting(2.0, 10), None);
    proposes(&mut log, 3.0, meeting(2.0, 20), Some(Reply::Accepted));
    proposes(&mut log, 3.0, meeting(2.0, 30), Some(Reply::Declined));
    proposes(&mut log, 9.0, meeting(-5.0, 40), None);
    proposes(&mut log, 9.0, meeting(-5.0, 50), Some(Reply::Accepted));
    proposes(&mut log, 50.0, meeting(-40.0, 60), Some(Reply::Accepted));
    let back = proposes(&mut log, 3.0, meeting(2.0, 70), Some(Reply::Accepted));
    log.put(1.0, Withdrawal { of: back, because: None });
    let mut told = told(&log);
    told.sort();
    assert_eq!(told, ["meeting 10 false", "meeting 20 true", "meeting 50 true"]);
}

#[test]
fn plans_that_hold_with_the_lines_in_force() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, plan(&[BALL], 4), None);
    assert!(told(&log).is_empty(), "nobody agreed");
    proposes(&mut log, 5.0, plan(&[BALL, WALK], 4), Some(Reply::Accepted));
    proposes(&mut log, 8.0, plan(&[BALL], -1), Some(Reply::Accepted));
    assert_eq!(told(&log), ["plan ball+walk -5 4"]);
    log.put(2.0, OwnPlan { lines: vec![PlanLine { times: 1, ..lines(&[BALL])[0] }], last_day: today().plus(9) });
    assert_eq!(told(&log), ["plan walk -5 4", "own ball -2 9"], "of two plans for a word the later is in force");
}

#[test]
fn a_check_that_was_agreed_until_it_is_planned() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    assert_eq!(told(&log), ["check ball"]);
    let probe = ProbeId(Uuid::from_u128(70));
    let words = vec![BALL, WALK];
    let (design, blind) = (ProbeDesign::PickForWord, true);
    log.put(1.0, ProbePlan { probe, design, words, trials: 12, choices: 2, blind, seed: 1 });
    assert!(told(&log).is_empty());
}

#[test]
fn while_sessions_rest_nothing_is_to_be_done_before_they_may_be_held_again() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, plan(&[BALL], 4), Some(Reply::Accepted));
    proposes(&mut log, 5.0, plan(&[WALK], 0), Some(Reply::Accepted));
    proposes(&mut log, 5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    proposes(&mut log, 5.0, meeting(2.0, 10), Some(Reply::Accepted));
    assert_eq!(told(&log).len(), 4);
    growls(&mut log, 0.1);
    let told = told(&log);
    assert_eq!(told[0], "meeting 10 true", "to talk is always possible");
    assert!(
        told.len() <= 2 && told.iter().skip(1).all(|t| t.starts_with("plan ball") && !t.contains(" -")),
        "{told:?}"
    );
    assert!(told.iter().all(|t| !t.starts_with("plan ball 0")), "not today: {told:?}");
}

#[test]
fn what_nobody_waits_for_and_what_a_step_comes_before_is_no_entry() {
    let invites = |word| PlanLine { way: Some(PlanWay::AskAndPoint), ..lines(&[word])[0] };
    let agreed = |log: &mut Log| {
        let lines = vec![invites(BALL), lines(&[WALK])[0]];
        proposes(log, 5.0, Proposed::Plan { lines, last_day: today().plus(4) }, Some(Reply::Accepted));
    };
    let mut invited = Log::with_walk(60.0);
    agreed(&mut invited);
    invited.put(4.0, StageChoice { word: BALL, stage: Stage::Invite, because: None });
    assert_eq!(told(&invited), ["plan walk -5 4"], "never shown: that comes first");
    let mut ends = Log::with_walk(60.0);
    agreed(&mut ends);
    ends.put(4.0, WordCard { closing: true, ..card(BALL, "ball") });
    assert_eq!(told(&ends), ["plan walk -5 4"]);
    // A card that lacks something is filled first, as Today says.
    let mut lacks = Log::with_walk(60.0);
    agreed(&mut lacks);
    lacks.put(4.0, WordCard { reward: None, ..card(BALL, "ball") });
    assert_eq!(told(&lacks), ["plan walk -5 4"]);
    lacks.put(3.0, WordCard { answer: None, ..card(WALK, "walk") });
    assert!(told(&lacks).is_empty(), "{:?}", told(&lacks));
    // A rest hides none of that: it asks for nothing more on the days after it than before the sign. It ends within tomorrow.
    for log in [&mut invited, &mut ends] {
        growls(log, 0.1);
        assert_eq!(told(log), ["plan walk 2 4"]);
    }
    growls(&mut lacks, 0.1);
    assert!(told(&lacks).is_empty(), "{:?}", told(&lacks));
}

#[test]
fn a_rest_that_ends_at_midnight_leaves_the_whole_day_after_it() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, plan(&[BALL], 4), Some(Reply::Accepted));
    // In the morning: twelve hours are over before the day is.
    growls(&mut log, 0.5);
    assert_eq!(told(&log), ["plan ball 1 4"]);
}

#[test]
fn a_line_that_stands_in_two_plans_is_one_entry() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, plan(&[BALL, WALK], 4), Some(Reply::Accepted));
    log.put(2.0, OwnPlan { lines: lines(&[BALL]), last_day: today().plus(9) });
    assert_eq!(told(&log), ["plan walk -5 4", "own ball -2 9"]);
    proposes(&mut log, 1.0, plan(&[BALL], 8), Some(Reply::Accepted));
    assert_eq!(told(&log), ["plan ball -1 8", "plan walk -5 4"], "renewed before it ended");
}

#[test]
fn a_check_waits_a_day_longer_as_on_today() {
    let mut log = Log::with_walk(60.0);
    proposes(&mut log, 5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    growls(&mut log, 1.0);
    assert!(told(&log).is_empty(), "{:?}", told(&log));
    let mut calm = Log::with_walk(60.0);
    proposes(&mut calm, 5.0, Proposed::Check { word: BALL }, Some(Reply::Accepted));
    growls(&mut calm, 3.0);
    assert_eq!(told(&calm), ["check ball"]);
}
