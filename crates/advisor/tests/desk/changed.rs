//! What changed since: facts, and figures beyond chance.

use crate::kit::{Home, ago, animal, now, word};
use sayso_advisor::desk::{Changed, SignKind, changes};
use sayso_model::Stage;
use serde_json::json;

/// Sixty days as ever, looked at a week ago and today.
fn week(of: impl Fn(&mut Home)) -> Vec<Changed> {
    let mut home = Home::new();
    home.lives(60, 8);
    home.tell(ago(30.0), json!({ "kind": "stage_choice", "word": word(0), "stage": "show" }));
    let before = home.line_at(ago(7.0));
    of(&mut home);
    changes(&before, &home.line())
}

fn as_ever(home: &mut Home) {
    home.lives(7, 0);
}

#[test]
fn a_week_as_ever_tells_nothing() {
    assert_eq!(week(as_ever), []);
}

#[test]
fn facts_are_told() {
    let found = week(|home| {
        as_ever(home);
        home.sign(ago(3.0), "growl");
        home.sign(ago(2.0), "growl");
        home.tell(ago(2.0), json!({ "kind": "stage_choice", "word": word(0), "stage": "invite" }));
        let new = json!({ "kind": "word_card", "word": word(9), "says": "water", "answer": "Fill it." });
        home.card(ago(4.0), new);
        home.press(ago(1.0), 9);
        home.card(ago(1.0), json!({ "kind": "word_card", "word": word(2), "says": "tug", "active": false }));
    });
    let day = |d: &str| d.parse().unwrap();
    assert!(found.contains(&Changed::Signs { kind: SignKind::Threat, count: 2, last: day("2026-11-23") }), "{found:?}");
    assert!(found.contains(&Changed::NewStage { word: word(0), from: Stage::Show, to: Stage::Invite }), "{found:?}");
    assert!(found.contains(&Changed::NewWord { word: word(9) }), "{found:?}");
    assert!(found.contains(&Changed::FirstPress { word: word(9), day: day("2026-11-24") }), "{found:?}");
    assert!(found.contains(&Changed::WordGone { word: word(2) }), "{found:?}");
}

#[test]
fn figures_are_told_beyond_chance_only() {
    let joining = |found: &[Changed]| found.iter().any(|c| matches!(c, Changed::Joining { .. }));
    let presses = |found: &[Changed]| found.iter().any(|c| matches!(c, Changed::Presses { .. }));
    let away = week(|home| (0..=7).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3)));
    assert!(joining(&away) && !presses(&away), "{away:?}");
    let livelier = week(|home| (0..=7).rev().for_each(|d| home.day(d, d % 6 != 0, &[0, 1, 2], 2.0, 12)));
    assert!(!joining(&livelier) && presses(&livelier), "{livelier:?}");
    let a_little = week(|home| (0..=7).rev().for_each(|d| home.day(d, d % 3 != 0, &[0, 1, 2], 2.0, 3)));
    assert!(!joining(&a_little) && !presses(&a_little), "{a_little:?}");
}

#[test]
fn a_likely_accident_is_no_first_press_and_a_growl_taken_back_none() {
    let found = week(|home| {
        as_ever(home);
        home.card(ago(4.0), json!({ "kind": "word_card", "word": word(9), "says": "water", "answer": "Fill it." }));
        let stumble = json!({ "kind": "press", "word": word(9), "by": "animal", "accident": "likely" });
        home.tell(ago(1.0), stumble);
        let growl = home.sign(ago(2.0), "growl");
        home.card(ago(1.9), json!({ "kind": "withdrawal", "of": growl }));
    });
    assert!(!found.iter().any(|c| matches!(c, Changed::FirstPress { .. } | Changed::Signs { .. })), "{found:?}");
}

#[test]
fn lines_of_two_animals_or_the_wrong_way_round_tell_nothing() {
    let mut home = Home::new();
    home.lives(60, 0);
    let (before, after) = (home.line_at(ago(7.0)), home.line());
    assert!(changes(&after, &before).is_empty());
    let mut other = after.clone();
    other.animal = sayso_model::AnimalId(uuid::Uuid::from_u128(8));
    assert!(other.animal != animal() && changes(&before, &other).is_empty());
    assert!(changes(&after, &after).is_empty(), "no day went by: {}", now());
}
