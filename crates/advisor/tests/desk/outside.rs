//! A word outside the middle nine tenths of comparable homes: context that nothing stands below, said only where the records carry it.

use crate::kit::{Home, ago, now, read, read_beside, word};
use sayso_advisor::desk::{About, Need, Until, What};
use sayso_norms::{Answer, Outside, Quantile, Question, Release};
use serde_json::json;

/// Invented homes with dogs: nineteen in twenty play words were pressed within 45 showings (34 to 66), 13 days (11 to 30).
fn release() -> Release {
    Release::read(include_str!("../../../../tests/norms/invented.sayso-norms")).unwrap()
}

/// Ordinary days; the third word is shown twice a day for the last so many of them, and pressed for the first time so many days ago.
fn home(shown: i32, pressed: Option<i32>) -> Home {
    let mut home = Home::new();
    for d in (0..60).rev() {
        home.day(d, true, &[0, 1], 2.0, 2);
        let at = ago(f64::from(d)).plus_seconds(-1800.0);
        if d < shown {
            (0..2).for_each(|k| home.show(at.plus_seconds(60.0 * f64::from(k)), 2, 2.0, "took"));
        }
        if pressed == Some(d) {
            home.press(at.plus_seconds(600.0), 2);
        }
    }
    home
}

fn told(home: &Home, release: &Release) -> Vec<Need> {
    read_beside(&home.line(), now(), release).into_iter().filter(|need| need.about == About::Outside).collect()
}

/// Side, question, wait and whether it was pressed, of the one that is told.
fn only(found: &[Need]) -> (Outside, Question, u32, bool) {
    let [Need { what: What::Outside { word: of, side, by, wait, pressed, .. }, .. }] = found else {
        panic!("{found:?}")
    };
    assert_eq!(*of, word(2));
    (*side, *by, *wait, *pressed)
}

#[test]
fn a_word_not_pressed_beyond_where_nineteen_in_twenty_were_is_told_last_of_all() {
    let (home, release) = (home(50, None), release());
    let found = told(&home, &release);
    assert_eq!(only(&found), (Outside::Above, Question::ShowingsToFirstPress, 100, false));
    assert_eq!(found[0].until, Until::FirstPress);
    let What::Outside { beside, laid, place, .. } = &found[0].what else { panic!() };
    assert_eq!((beside.homes, *laid, place.value), (90, 3, Some(45.0)), "its own count, and all that could be laid");
    let all = read_beside(&home.line(), now(), &release);
    assert_eq!(all.last(), found.last(), "nothing stands below it");
    // It adds itself, and moves nothing else.
    let others: Vec<&Need> = all.iter().filter(|need| need.about != About::Outside).collect();
    assert_eq!(others, read(&home.line(), now()).iter().collect::<Vec<_>>());
}

#[test]
fn it_brings_the_cause_that_the_desk_has_for_that_word() {
    let mut home = home(50, None);
    for d in (0..30).rev() {
        home.invite(ago(f64::from(d)).plus_seconds(-900.0), 2, None);
    }
    let all = read_beside(&home.line(), now(), &release());
    let own = |need: &Need| match &need.what {
        What::Held { word: of, held, .. } if *of == word(2) => *held,
        _ => None,
    };
    let held = all.iter().find_map(own).unwrap();
    let found = told(&home, &release());
    assert!(matches!(&found[0].what, What::Outside { held: Some(h), .. } if *h == held), "{found:?}");
}

#[test]
fn a_wait_that_ends_before_that_place_says_nothing() {
    assert_eq!(told(&home(10, None), &release()), [], "twenty showings in ten days");
    // Between the place and the end of its interval it is in doubt.
    assert_eq!(told(&home(28, None), &release()), [], "56 showings, 28 days");
}

#[test]
fn a_home_that_writes_little_is_not_called_late_nor_early() {
    let mut little = home(60, None);
    assert!(!told(&little, &release()).is_empty());
    little.events.retain(|e| e.animal.is_none() || e.happened_at.day(&sayso_model::Zone::utc()).parts().2 % 4 == 0);
    assert_eq!(told(&little, &release()), []);
    // Its showings are whole, and of all else only the presses are there.
    let mut answers_missing = home(60, None);
    answers_missing.events.retain(|e| !matches!(&e.body, sayso_model::Body::Delivery(d) if d.word != word(2)));
    assert!(!answers_missing.line().logging.whole());
    assert_eq!(told(&answers_missing, &release()), []);
}

#[test]
fn what_was_pressed_late_is_told_for_four_weeks() {
    let (home, release) = (home(60, Some(10)), release());
    assert!(only(&told(&home, &release)).3);
    let later = |days: f64| {
        let mut home = home.clone();
        for d in 1..=(days as i32) {
            home.day(-d, true, &[0, 1], 2.0, 2);
        }
        let at = now().plus_seconds(days * 86_400.0);
        let needs = read_beside(&home.line_at(at), at, &release);
        needs.iter().filter(|need| need.about == About::Outside).count()
    };
    assert_eq!((later(17.0), later(20.0)), (1, 0));
}

#[test]
fn an_early_press_is_told_as_its_own_side() {
    let mut release = release();
    for cell in &mut release.cells {
        if let Answer::Curve(curve) = &mut cell.answer {
            curve.quantiles.p05 = Quantile { value: Some(7.0), low: Some(6.0), high: Some(8.0) };
        }
    }
    let home = home(8, Some(7));
    let found = told(&home, &release);
    assert_eq!(only(&found), (Outside::Below, Question::ShowingsToFirstPress, 2, true));
    assert!(matches!(&found[0].what, What::Outside { held: None, .. }));
}

#[test]
fn nothing_is_told_beside_a_cell_too_small_nor_of_an_animal_that_is_unsafe() {
    let home = home(50, None);
    let mut small = release();
    small.cells.clear();
    assert_eq!(told(&home, &small), []);
    let mut growled = home.clone();
    growled.sign(ago(0.1), "growl");
    assert_eq!(told(&growled, &release()), []);
}

#[test]
fn a_word_that_ends_a_session_is_not_laid_beside_words_that_bring_something() {
    let mut home = home(50, None);
    home.card(
        ago(89.0),
        json!({ "kind": "word_card", "word": word(2), "says": "done", "answer": "Stop.", "not_now": "Later.", "closing": true }),
    );
    assert_eq!(told(&home, &release()), []);
}
