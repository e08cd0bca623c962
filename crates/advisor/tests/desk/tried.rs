//! What was agreed to change, and what followed; trials, and how they came out; over many homes.

use crate::kit::{Home, ago, animal, now, word};
use sayso_advisor::designs::Outcome;
use sayso_advisor::desk::{ChangeKind, ChangeLine, Line, overall};
use sayso_model::{CaseQuestion, PlanWay};
use serde_json::{Value, json};
use uuid::Uuid;

fn from(account: u128) -> Value {
    json!({ "account": Uuid::from_u128(account), "name": "Brook" })
}

fn agrees(home: &mut Home, days: f64, account: u128, proposes: &Value) -> Uuid {
    let id = home.tell(ago(days + 1.0), json!({ "kind": "proposal", "from": from(account), "proposes": proposes }));
    home.tell(ago(days), json!({ "kind": "proposal_answer", "to": id, "reply": "accepted" }));
    id.0
}

fn quieter() -> Value {
    json!({ "what": "change", "question": "quieter_button", "measure": "own_presses", "expected": "more" })
}

/// Sixty days with so many presses a day up to thirty days ago, and so many since.
fn lived(before: usize, since: usize) -> Home {
    let mut home = Home::new();
    for d in (0..60).rev() {
        home.day(d, true, &[0, 1, 2], 2.0, if d > 30 { before } else { since });
    }
    home
}

fn of_all(_: &ChangeLine) -> bool {
    true
}

#[test]
fn presses_of_watched_days_before_and_after_are_counted_and_the_day_itself_is_not() {
    let mut home = lived(3, 6);
    agrees(&mut home, 30.0, 9, &quieter());
    let line = home.line();
    let [change] = line.changes.as_slice() else { panic!("{:?}", line.changes) };
    assert_eq!(change.kind, ChangeKind::Change { question: CaseQuestion::QuieterButton });
    assert_eq!((change.before.days, change.before.presses), (28, 3 * 28));
    assert_eq!((change.after.days, change.after.presses), (28, 6 * 28));
    assert!(!change.drawn);
    // Only agreed is a change; a day ago too little is known.
    let mut home = lived(3, 6);
    home.tell(ago(30.0), json!({ "kind": "proposal", "from": from(9), "proposes": quieter() }));
    assert!(home.line().changes.is_empty(), "nobody answered");
    agrees(&mut home, 1.0, 9, &quieter());
    let found = overall([(1, &home.line())], of_all);
    assert_eq!((found.followed.len(), found.followed[0].more.n, found.followed[0].early), (1, 0, 1), "{found:?}");
}

#[test]
fn of_a_word_that_was_not_there_before_nothing_is_said_to_have_gone_up() {
    let mut home = lived(3, 3);
    let says = json!({ "kind": "word_card", "word": word(9), "says": "water", "answer": "Fill it." });
    home.card(ago(33.0), says);
    for d in 0..20 {
        home.press(ago(f64::from(d)).plus_seconds(-7200.0), 9);
    }
    let plan = json!({ "what": "plan", "last_day": "2026-12-24", "lines": [
        { "word": word(9), "way": "show", "minutes": 3, "times": 3 },
        { "word": word(0), "way": "offer_in_view", "minutes": 3, "times": 3 }] });
    agrees(&mut home, 30.0, 9, &plan);
    let line = home.line();
    let [shown, invited] = line.changes.as_slice() else { panic!("{:?}", line.changes) };
    assert_eq!(shown.kind, ChangeKind::Plan { way: Some(PlanWay::Show) });
    assert_eq!(shown.before.days, 0, "nobody could press it: {shown:?}");
    assert_eq!((invited.before.presses, invited.before.days), (28, 28), "of the one word alone: {invited:?}");
    let found = overall([(1, &line)], of_all);
    let early: Vec<usize> = found.followed.iter().map(|f| f.early).collect();
    assert_eq!(early, [0, 1], "{found:?}");
}

#[test]
fn each_home_counts_once_and_what_others_proposed_is_not_told() {
    let line = |before, since, account| -> Line {
        let mut home = lived(before, since);
        agrees(&mut home, 30.0, account, &quieter());
        // A later one of the same kind changes nothing.
        agrees(&mut home, 10.0, account, &quieter());
        home.line()
    };
    let (up, down, of_another, still) = (line(2, 6, 9), line(6, 2, 9), line(1, 9, 8), lived(2, 3).line());
    let mine = |c: &ChangeLine| c.by.0 == Uuid::from_u128(9);
    let found = overall([(1, &up), (1, &up), (2, &up), (3, &down), (4, &of_another), (5, &still)], mine);
    let [followed] = found.followed.as_slice() else { panic!("{found:?}") };
    assert_eq!((followed.more.n, followed.more.value), (3, Some(2.0 / 3.0)), "{followed:?}");
    assert!(followed.more.low.unwrap() < 0.2 && followed.more.high.unwrap() > 0.9);
    // Where nothing was agreed, by whomever: one home, and it went up.
    assert_eq!((found.nothing.n, found.nothing.value), (1, Some(1.0)), "{:?}", found.nothing);
    assert!(found.drawn.is_empty());
}

#[test]
fn what_was_drawn_by_lot_is_counted_apart_and_judged_by_its_own_test() {
    let mut home = lived(3, 3);
    let of = agrees(&mut home, 40.0, 9, &quieter());
    let first = ago(38.0).day(&sayso_model::Zone::utc());
    let plan = |seed: u32, presses: u16| {
        json!({ "kind": "design_plan", "trial": Uuid::from_u128(u128::from(seed)), "design": "reversal",
            "question": "quieter_button", "measure": "own_presses", "expected": "more", "unit": "day", "first": first,
            "points": presses, "phases": 4, "least": 5, "apart": 0, "seed": seed, "proposal": of })
    };
    home.tell(ago(39.0), plan(1, 28));
    let line = home.line();
    assert!(line.changes[0].drawn);
    assert_eq!((line.trials.len(), line.trials[0].outcome), (1, Outcome::MayBeChance), "the same every day");
    let found = overall([(1, &line), (1, &line)], of_all);
    assert!(found.followed.is_empty(), "{found:?}");
    assert_eq!((found.drawn[0].homes, found.drawn[0].outcomes[&Outcome::MayBeChance]), (1, 1), "once: {found:?}");
    // The same trial still goes on while its days do; one that a person stopped is neither.
    let early = sayso_advisor::Case::new(&home.story(), animal(), ago(20.0)).now();
    assert_eq!(home.line_at(early).trials[0].outcome, Outcome::Going);
    home.tell(ago(20.0), json!({ "kind": "design_stop", "trial": Uuid::from_u128(1), "reason": "not_good" }));
    assert_eq!(home.line_at(now()).trials[0].outcome, Outcome::Stopped);
}

#[test]
fn trials_that_measured_the_same_on_the_same_days_are_counted_apart() {
    let first = ago(38.0).day(&sayso_model::Zone::utc());
    let plan = |trial: u32, question: &str, measure: &str| {
        json!({ "kind": "design_plan", "trial": Uuid::from_u128(u128::from(trial)), "design": "reversal",
            "question": question, "measure": measure, "expected": "more", "unit": "day", "first": first,
            "points": 28, "phases": 4, "least": 5, "apart": 0, "seed": trial })
    };
    let with = |plans: &[Value]| {
        let mut home = lived(3, 3);
        for plan in plans {
            home.tell(ago(39.0), plan.clone());
        }
        home.line()
    };
    let alone = with(&[plan(1, "quieter_button", "own_presses")]);
    let two = with(&[plan(2, "quieter_button", "own_presses"), plan(3, "faster_delivery", "own_presses")]);
    // On the same days, but another measure says nothing of these.
    let apart = with(&[plan(4, "quieter_button", "own_presses"), plan(5, "faster_delivery", "stress_signs")]);
    let beside = |line: &Line| line.trials.iter().map(|t| t.beside).collect::<Vec<_>>();
    assert_eq!((beside(&alone), beside(&two), beside(&apart)), (vec![false], vec![true; 2], vec![false; 2]));
    let found = overall([(1, &alone), (2, &two), (3, &apart)], of_all);
    let quieter = found.drawn.iter().find(|d| d.question == CaseQuestion::QuieterButton).unwrap();
    let count = |of: &std::collections::BTreeMap<Outcome, usize>| of.values().sum::<usize>();
    assert_eq!((quieter.homes, count(&quieter.outcomes), count(&quieter.beside)), (3, 2, 1), "{quieter:?}");
    // What was planned only later was not beside it then.
    let mut home = lived(3, 3);
    home.tell(ago(39.0), plan(6, "quieter_button", "own_presses"));
    home.tell(ago(5.0), plan(7, "faster_delivery", "own_presses"));
    assert_eq!((beside(&home.line_at(ago(20.0))), beside(&home.line())), (vec![false], vec![true; 2]));
}

#[test]
fn a_line_with_changes_and_trials_comes_back_as_it_was_written() {
    let mut home = lived(3, 6);
    agrees(&mut home, 30.0, 9, &quieter());
    let line = home.line();
    let back: Line = serde_json::from_str(&serde_json::to_string(&line).unwrap()).unwrap();
    assert_eq!(back, line);
}
