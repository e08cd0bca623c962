//! Homes that write little get no cause about what was not written. Which records each cause needs:
//! showings too few: a log that is full; not wanted: what was taken, noted for most; too late: delays; avoided: contacts, and
//! no other button pressed instead; people differ: answers of two; sounds alike: presses at invitations; hours and health:
//! sessions with their joining or end.

use crate::kit::{Home, ago, word};
use crate::words::held;
use sayso_advisor::desk::{About, Lack, What};
use sayso_advisor::stuck::Cause;
use serde_json::json;

/// Sixty days in which the third word is shown once in four days, everything else as ever.
fn shown_too_little() -> Home {
    let mut home = Home::new();
    for d in (0..60).rev() {
        home.day(d, true, &[0, 1], 2.0, 2);
        let at = ago(f64::from(d)).plus_seconds(-1800.0);
        if d % 4 == 0 {
            home.show(at, 2, 2.0, "took");
        }
        if d < 30 {
            home.invite(at.plus_seconds(-900.0), 2, None);
        }
    }
    home
}

fn names_too_little(home: &Home) -> bool {
    held(&home.needs()).iter().any(|(_, _, h)| h.is_some_and(|h| h.cause == Cause::TooLittle))
}

#[test]
fn too_little_showing_is_named_where_the_log_is_full() {
    let home = shown_too_little();
    assert!(home.line().logging.full());
    assert!(names_too_little(&home), "{:?}", home.needs());
}

#[test]
fn it_is_not_named_where_only_one_day_in_four_is_written() {
    let mut home = shown_too_little();
    home.events.retain(|e| e.animal.is_none() || e.happened_at.day(&sayso_model::Zone::utc()).parts().2 % 4 == 0);
    let needs = home.needs();
    assert!(!names_too_little(&home) && !needs.is_empty(), "{needs:?}");
    assert!(needs.iter().any(|n| matches!(n.what, What::Little { lack: Lack::Days, .. })), "{needs:?}");
}

#[test]
fn it_is_not_named_where_people_write_presses_and_nothing_else() {
    let mut home = shown_too_little();
    home.events.retain(|e| {
        e.animal.is_none() || matches!(&e.body, sayso_model::Body::Press(p) if p.by == sayso_model::PressedBy::Animal)
    });
    let needs = home.needs();
    assert!(held(&needs).is_empty(), "{needs:?}");
    assert!(needs.iter().all(|n| n.about == About::Little), "{needs:?}");
    // Days there are enough.
    assert!(needs.iter().any(|n| matches!(n.what, What::Little { lack: Lack::Whole, .. })), "{needs:?}");
}

#[test]
fn a_word_hardly_pressed_is_no_stuck_word_where_presses_are_hardly_written() {
    let mut home = Home::new();
    for d in (0..60).rev().filter(|d| d % 5 == 0) {
        home.session(ago(f64::from(d)).plus_seconds(-3600.0), true, &[0, 1, 2, 0, 1, 2], 2.0);
    }
    let needs = home.needs();
    assert!(held(&needs).is_empty(), "{needs:?}");
}

#[test]
fn not_wanted_is_not_named_where_only_refusals_are_noted() {
    let wanted = |noted: &dyn Fn(i32) -> Option<&'static str>| {
        let mut home = Home::new();
        for d in (0..40).rev() {
            home.day(d, true, &[0, 1], 2.0, 2);
            for k in 0..3 {
                let at = ago(f64::from(d)).plus_seconds(-1800.0 - 120.0 * f64::from(k));
                let press = home.tell(at, json!({ "kind": "press", "word": word(2), "by": "person" }));
                home.tell(
                    at.plus_seconds(2.0),
                    json!({ "kind": "delivery", "answers": press, "word": word(2), "answer": "given",
                    "delay_s": 2.0, "then": noted(d * 3 + k) }),
                );
            }
        }
        held(&home.needs()).iter().any(|(w, _, h)| *w == 2 && h.is_some_and(|h| h.cause == Cause::NotWanted))
    };
    assert!(wanted(&|n| Some(if n % 4 == 0 { "took" } else { "ignored" })));
    assert!(!wanted(&|n| (n % 4 == 1).then_some("ignored")), "three of four outcomes were not written");
}

#[test]
fn a_button_beside_which_another_is_pressed_instead_is_not_called_avoided() {
    let avoided = |instead: Option<usize>| {
        let mut home = Home::new();
        for d in (0..45).rev() {
            home.day(d, true, &[0, 1], 2.0, 4);
            let at = ago(f64::from(d)).plus_seconds(-1800.0);
            (0..3).for_each(|k| home.show(at.plus_seconds(60.0 * f64::from(k)), 2, 2.0, "took"));
            home.invite(at.plus_seconds(-600.0), 2, instead.map(|w| (w, 2.0)));
        }
        held(&home.needs()).iter().any(|(w, _, h)| *w == 2 && h.is_some_and(|h| h.cause == Cause::Avoided))
    };
    assert!(avoided(None));
    assert!(!avoided(Some(0)), "a habit of place is no fear of a button");
}
