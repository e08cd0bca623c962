//! A line survives being kept, follows from the set of events alone, and holds nothing that names anybody.

use crate::kit::{Home, ago, now};
use sayso_advisor::desk::{Line, Version};
use serde_json::json;

fn home() -> Home {
    let mut home = Home::new();
    home.lives(60, 0);
    for d in (0..30).rev() {
        let at = ago(f64::from(d)).plus_seconds(-7200.0);
        home.invite(at, 0, Some((0, 1.7)));
        home.invite(at.plus_seconds(-60.0), 2, None);
    }
    let growl = home.sign(ago(9.0), "growl at the postman");
    home.sign(ago(12.0), "guards food, a thing or the button");
    home.card(ago(8.0), json!({ "kind": "withdrawal", "of": growl }));
    home.feed(ago(0.2), 77.7);
    home.card(ago(5.0), json!({ "kind": "remark", "text": "Milo was tired after the walk." }));
    home
}

#[test]
fn it_is_the_same_after_it_was_kept() {
    let line = home().line();
    let kept = serde_json::to_string(&line).unwrap();
    assert_eq!(serde_json::from_str::<Line>(&kept).unwrap(), line);
    assert!(kept.len() < 8_000, "{} bytes", kept.len());
}

#[test]
fn one_of_another_form_is_refused_with_what_to_do() {
    let mut kept = serde_json::to_value(home().line()).unwrap();
    assert_eq!(kept["version"], Version::NUMBER);
    kept["version"] = json!(Version::NUMBER + 1);
    let why = serde_json::from_value::<Line>(kept).unwrap_err().to_string();
    assert!(why.contains("work it out anew"), "{why}");
}

#[test]
fn it_names_nobody_and_holds_no_text_of_the_home() {
    let kept = serde_json::to_string(&home().line()).unwrap();
    for own in ["Milo", "Ilse", "Jonas", "Quiet Street", "ball", "tug", "postman", "tired", "scraps"] {
        assert!(!kept.contains(own), "{own}: {kept}");
    }
}

#[test]
fn equal_sets_of_events_give_equal_lines_in_whatever_order_they_arrived() {
    let home = home();
    let line = home.line();
    let mut dice = 5_u64;
    for _ in 0..4 {
        let mut other = home.clone();
        for i in (1..other.events.len()).rev() {
            dice = dice.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            other.events.swap(i, (dice >> 33) as usize % (i + 1));
        }
        let mut story = sayso_model::Story::default();
        other.events.iter().for_each(|e| assert_eq!(story.add(e.clone()), sayso_model::Inserted::New));
        assert_eq!(Line::of(&sayso_advisor::Case::new(&story, crate::kit::animal(), now())), line);
    }
}

#[test]
fn what_is_dated_later_is_not_in_it() {
    let mut home = home();
    let line = home.line();
    home.sign(now().plus_seconds(600.0), "growl");
    home.press(now().plus_seconds(900.0), 1);
    home.session(now().plus_seconds(1200.0), true, &[0], 2.0);
    assert_eq!(home.line(), line);
}
