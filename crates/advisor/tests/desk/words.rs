//! What holds a word up: named with its figure where the records carry it; ready words; food.

use crate::kit::{Home, ago, now, read, word};
use sayso_advisor::desk::{About, Held, Lack, Line, Need, Since, Until, What};
use sayso_advisor::stuck::{Cause, StuckFor};
use serde_json::json;

pub fn held(needs: &[Need]) -> Vec<(usize, bool, Option<Held>)> {
    let of = |n: &Need| match n.what {
        What::Held { word: w, stuck, held, .. } => (0..3).find(|i| word(*i) == w).map(|i| (i, stuck.is_some(), held)),
        _ => None,
    };
    needs.iter().filter_map(of).collect()
}

/// Forty days; the third word's thing comes after so many seconds, and it is invited without a press.
fn late(seconds: f64) -> Home {
    let mut home = Home::new();
    for d in (0..40).rev() {
        home.day(d, true, &[0, 1], 2.0, 2);
        let at = ago(f64::from(d)).plus_seconds(-1800.0);
        (0..2).for_each(|k| home.show(at.plus_seconds(120.0 * f64::from(k)), 2, seconds, "took"));
        if d < 20 {
            home.invite(at.plus_seconds(-600.0), 2, None);
        }
        home.show(at.plus_seconds(400.0), 2, seconds, "took");
    }
    home
}

#[test]
fn a_stuck_word_whose_thing_comes_late_is_told_with_the_seconds() {
    let needs = late(15.0).needs();
    let [(2, true, Some(found))] = held(&needs)[..] else { panic!("{needs:?}") };
    assert_eq!((found.cause, found.figure.value, found.beside.value), (Cause::TooLate, Some(15.0), Some(5.0)));
    assert!(found.figure.n >= 40 && found.p.unwrap() < 1e-6, "{found:?}");
}

#[test]
fn a_stuck_word_without_a_cause_in_the_records_gets_none() {
    let needs = late(2.0).needs();
    assert!(
        held(&needs).iter().any(|(w, stuck, held)| *w == 2 && *stuck && held.is_none_or(|h| h.cause != Cause::TooLate)),
        "{needs:?}"
    );
}

#[test]
fn a_stuck_word_says_because_of_what_and_since_when_it_was_seen() {
    let home = late(15.0);
    let of = |line: &Line, at| {
        let all = read(line, at);
        all.into_iter().find(|n| n.about == About::Held).unwrap()
    };
    let line = home.line();
    let need = of(&line, now());
    assert!(matches!(need.what, What::Held { stuck: Some(StuckFor::SeldomRight), .. }), "{need:?}");
    // The records do not tell when it began: the day on which it was first seen, kept while the cause is the same.
    let today = now().day(&sayso_model::Zone::utc());
    assert_eq!(need.since, Some(Since::Seen(today)));
    let before = home.line_at(ago(3.0));
    assert_eq!(of(&line.clone().remembering(&before), now()).since, Some(Since::Seen(today.plus(-3))));
    let mut other = before.clone();
    other.words.iter_mut().filter_map(|w| w.held.as_mut()).for_each(|held| held.cause = Cause::PeopleDiffer);
    assert_eq!(of(&line.clone().remembering(&other), now()).since, Some(Since::Seen(today)));
    // Hardly pressed, where nobody invited.
    let mut home = late(2.0);
    home.events.retain(|e| !matches!(e.body, sayso_model::Body::Invitation(_)));
    let need = of(&home.line(), now());
    assert!(matches!(need.what, What::Held { stuck: Some(StuckFor::HardlyPressed { presses: 0 }), .. }), "{need:?}");
}

#[test]
fn what_would_change_a_word_that_is_stuck_without_a_cause_has_not_happened_yet() {
    let mut line = late(2.0).line();
    line.words.iter_mut().for_each(|word| word.held = None);
    let until = |line: &Line| {
        let all = read(line, now());
        all.into_iter().find(|n| matches!(n.what, What::Held { held: None, stuck: Some(_), .. })).unwrap().until
    };
    assert!(line.logging.full());
    assert_eq!(until(&line), Until::MoreRight, "records on most days there are already");
    line.logging.days = 3;
    assert_eq!(until(&line), Until::MoreRecords { lack: Lack::Days });
}

#[test]
fn a_late_thing_is_told_of_a_word_that_gets_on_only_beyond_what_was_looked_at() {
    let mut home = Home::new();
    for d in (0..40).rev() {
        home.day(d, true, &[0, 1], 2.0, 2);
        home.day(d, true, &[2], 12.0, 2);
    }
    let needs = home.needs();
    let found = held(&needs);
    assert!(found.iter().any(|(w, stuck, h)| *w == 2 && !stuck && h.unwrap().cause == Cause::TooLate), "{needs:?}");
}

#[test]
fn more_food_than_the_days_rewards_is_told_from_three_days_of_the_week_on() {
    let over = |days: i32, kcal: f64| {
        let mut home = Home::new();
        home.lives(40, 0);
        (0..days).for_each(|d| home.feed(ago(f64::from(d) + 0.1), kcal));
        home.needs().into_iter().find(|n| n.about == About::Ration)
    };
    assert_eq!(over(2, 90.0), None);
    assert_eq!(over(7, 52.0), None, "pieces are weighed by eye");
    let found = over(4, 90.0).unwrap();
    assert!(
        matches!(found.what, What::Ration { days: 4, of: 7, most_kcal, budget_kcal } if most_kcal == 90.0 && budget_kcal == 50.0),
        "{found:?}"
    );
}

#[test]
fn a_ready_word_that_waits_is_told_and_not_while_something_is_unsafe() {
    let mut home = Home::new();
    home.lives(40, 0);
    let ready =
        |home: &Home| home.needs().iter().any(|n| matches!(n.what, What::Ready { word: w, .. } if w == word(1)));
    assert!(!ready(&home), "nobody chose to keep it at showing");
    let choice = json!({ "kind": "stage_choice", "word": word(1), "stage": "show" });
    home.tell(ago(39.0), choice);
    assert!(ready(&home), "{:?}", home.line().words);
    home.sign(ago(2.0), "growl");
    assert!(!ready(&home), "safety first");
}
