//! Sudden changes and silence: beyond chance, against the home's own habit, by records that can carry it.

use crate::kit::{DAY_S, Home, ago, now, read, word};
use sayso_advisor::desk::{About, Look, Measure, Need, Since, What};
use serde_json::json;

fn changes(needs: &[Need]) -> Vec<Look> {
    needs.iter().filter_map(|n| if let What::Change(look) = n.what { Some(look) } else { None }).collect()
}

fn of(needs: &[Need]) -> Vec<Measure> {
    changes(needs).iter().map(|l| l.measure).collect()
}

/// Ordinary days, then so many on which it is asked to sessions and joins none.
fn stays_away(days: i32) -> Home {
    let mut home = Home::new();
    home.lives(60, days);
    (0..days).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3));
    home
}

#[test]
fn an_animal_that_joins_no_more_is_a_need_with_its_figures() {
    let needs = stays_away(9).needs();
    assert_eq!(of(&needs), [Measure::Joining], "{needs:?}");
    let look = changes(&needs)[0];
    assert_eq!(look.lately.value, Some(0.0));
    assert!(look.before.value.unwrap() > 0.75 && look.p < 0.001, "{look:?}");
    assert!(needs[0].since.is_some() && needs[0].n >= 40, "{:?}", needs[0]);
}

#[test]
fn a_few_sessions_missed_are_no_need() {
    for days in [1, 2] {
        assert!(of(&stays_away(days).needs()).is_empty());
    }
}

#[test]
fn sessions_taken_back_or_without_an_end_say_nothing_of_joining() {
    let mut home = Home::new();
    home.lives(60, 9);
    for d in (0..9).rev() {
        let at = ago(f64::from(d)).plus_seconds(-3.0 * 3600.0);
        if d % 2 == 0 {
            let start = home.session(at, false, &[], 2.0);
            home.card(at.plus_seconds(60.0), json!({ "kind": "withdrawal", "of": start }));
        } else {
            // The phone was put away: nobody wrote whether it came.
            let session = uuid::Uuid::from_u128(5_000 + d as u128);
            home.tell(at, json!({ "kind": "session_start", "session": session, "purpose": "showing", "words": [] }));
        }
        for k in 0..3 {
            home.press(at.plus_seconds(-3600.0 * f64::from(k)), 0);
        }
    }
    assert!(of(&home.needs()).is_empty());
}

/// Ordinary days, then ten with sessions and so many own presses a day.
fn presses(a_day: usize) -> Home {
    let mut home = Home::new();
    home.lives(60, 10);
    (0..10).rev().for_each(|d| home.day(d, d % 6 != 0, &[0, 1, 2], 2.0, a_day));
    home
}

#[test]
fn own_presses_that_stop_while_sessions_go_on_are_a_need_and_more_presses_are_none() {
    assert_eq!(of(&presses(0).needs()), [Measure::Presses]);
    assert!(of(&presses(3).needs()).is_empty());
    assert!(of(&presses(9).needs()).is_empty(), "more is no trouble");
}

#[test]
fn presses_by_people_and_stumbles_do_not_hide_that_own_presses_stopped() {
    let mut home = presses(0);
    for d in 0..10 {
        for k in 0..3 {
            let at = ago(f64::from(d)).plus_seconds(-3600.0 * (5.0 + f64::from(k)));
            home.show(at, k as usize, 2.0, "took");
            let stumble = json!({ "kind": "press", "word": word(0), "by": "animal", "accident": "likely" });
            home.tell(at.plus_seconds(600.0), stumble);
        }
    }
    assert_eq!(of(&home.needs()), [Measure::Presses]);
}

#[test]
fn days_on_which_nobody_watched_are_no_days_without_presses() {
    let mut home = Home::new();
    home.lives(60, 10);
    // One day in three somebody is there, and then it presses as before.
    (0..10).rev().filter(|d| d % 3 == 0).for_each(|d| home.day(d, true, &[0, 1, 2], 2.0, 3));
    assert!(of(&home.needs()).is_empty());
}

#[test]
fn slower_to_press_when_invited_is_a_need_and_a_new_word_is_not() {
    let invited = |slow: f64, second: usize| {
        let mut home = Home::new();
        home.lives(60, 0);
        for d in (0..50).rev() {
            let (w, s) = if d < 10 { (second, slow) } else { (0, 1.5) };
            for k in 0..2 {
                let at = ago(f64::from(d)).plus_seconds(-7200.0 - 60.0 * f64::from(k));
                home.invite(at, w, Some((w, s + 0.1 * f64::from((d + k) % 7))));
            }
        }
        of(&home.needs())
    };
    assert_eq!(invited(6.0, 0), [Measure::Latency]);
    assert!(invited(1.5, 0).is_empty());
    assert!(invited(6.0, 1).is_empty(), "another word, learned later, is slower by itself");
}

#[test]
fn silence_is_told_by_the_homes_own_habit_and_when_it_is_read() {
    let silent = |home: &Home, days: f64| {
        let needs = read(&home.line(), now().plus_seconds(days * DAY_S));
        needs.into_iter().find(|n| n.about == About::Silent)
    };
    let mut daily = Home::new();
    daily.lives(60, 0);
    assert_eq!((silent(&daily, 3.0), silent(&daily, 4.0)), (None, None), "never before four whole days");
    let found = silent(&daily, 5.0).unwrap();
    assert!(matches!(found.what, What::Silent { days: 4, after: 4, .. }), "{found:?}");
    assert_eq!(found.since, Some(Since::Began("2026-11-26".parse().unwrap())));
    let mut weekly = Home::new();
    (0..10).rev().for_each(|w| weekly.day(7 * w, true, &[0, 1, 2], 2.0, 3));
    assert_eq!(silent(&weekly, 8.0), None, "who writes on Wednesdays is not silent on a Thursday");
    assert!(silent(&weekly, 16.0).is_some(), "two Wednesdays missed");
    // A microphone that goes on by itself is nobody writing.
    let mut heard = Home::new();
    heard.lives(60, 12);
    for d in (0..12).rev() {
        let body = json!({ "kind": "press", "word": word(0), "by": "animal", "certainty": 0.9 });
        heard.event(Some(crate::kit::animal()), ago(f64::from(d)), sayso_model::Source::Heard, body);
    }
    assert!(silent(&heard, 0.0).is_some());
    // Nor is a coach who asks how it goes.
    let mut asked = Home::new();
    asked.lives(60, 12);
    let from = json!({ "account": "01a21c89-9a2a-7086-a563-386342d6decc", "name": "Sam" });
    let body =
        json!({ "kind": "proposal", "from": from, "proposes": { "what": "question" }, "text": "How is it going?" });
    asked.event(Some(crate::kit::animal()), ago(1.0), sayso_model::Source::Tap, body);
    assert!(silent(&asked, 0.0).is_some());
}
