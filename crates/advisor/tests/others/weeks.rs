//! How often a word was pressed in one week: which week follows from ids alone, and only weeks that were watched count.

use crate::home::Home;
use sayso_norms::{Often, Stretch, WeekPresses};
use serde_json::json;

const DAYS: u32 = 26 * 7;

/// Shown on the first day, and seen on every day for half a year.
fn seen(word: u128) -> Home {
    let mut home = Home::new(word);
    home.show(0.0);
    for of_record in 1..=DAYS {
        home.yawns(f64::from(of_record));
    }
    home
}

fn week(home: &Home) -> Option<WeekPresses> {
    home.row(1_000.0).week
}

/// The week that is asked of a word: the one in which presses change what is told.
fn asked(word: u128) -> u32 {
    let pressed_in = |week: u32| {
        let mut home = seen(word);
        home.press(f64::from(7 * week) - 3.5);
        self::week(&home).unwrap().pressed == Often::Some
    };
    let all: Vec<u32> = (1..=26).filter(|week| pressed_in(*week)).collect();
    assert_eq!(all.len(), 1, "{all:?}");
    all[0]
}

#[test]
fn one_week_is_asked_of_each_word_whatever_was_pressed_and_stretches_are_as_likely() {
    for word in 1..6 {
        let (week, told) = (asked(word), self::week(&seen(word)).unwrap());
        assert!((u32::from(told.from.from())..=u32::from(told.from.to())).contains(&week), "{week}: {told:?}");
        assert_eq!(told.pressed, Often::Not);
        // The same in whatever week it is pressed.
        let mut home = seen(word);
        for of_record in 0..DAYS {
            home.press(f64::from(of_record) + 0.5);
        }
        assert_eq!(self::week(&home), Some(WeekPresses { pressed: Often::Daily, ..told }));
    }
    let from: Vec<Stretch> = (1..400).map(|word| week(&seen(word)).unwrap().from).collect();
    let drawn = Stretch::ALL.map(|stretch| from.iter().filter(|of| **of == stretch).count());
    // A hundred each expected, standard deviation 8.7.
    assert!(drawn.iter().all(|many| (65..135).contains(many)), "{drawn:?}");
}

#[test]
fn a_week_counts_once_it_is_over_and_only_where_something_else_was_noted_in_it() {
    let word = 3;
    let (asked, all) = (asked(word), seen(word));
    let told = week(&all);
    let (begin, end) = (f64::from(7 * (asked - 1)), f64::from(7 * asked));
    let until = |last: f64| all.row(last).week;
    assert_eq!((until(end - 0.5), until(end + 0.5)), (None, told));
    // Nobody noted anything in that week but, at most, presses of the word.
    let mut home = Home::new(word);
    home.show(0.0);
    (0..=DAYS).map(f64::from).filter(|at| *at < begin || *at >= end).for_each(|at| home.yawns(at));
    let away = if asked == 1 { told } else { None };
    assert_eq!(week(&home), away, "in the first week the showing was noted");
    home.press(begin + 1.0);
    if asked > 1 {
        assert_eq!(week(&home), None);
    }
    home.yawns(begin + 2.0);
    assert_eq!(week(&home).map(|week| week.pressed), Some(Often::Some));
    // After it was put away nothing is watched.
    home.word(begin + 3.0, false, &[]);
    assert_eq!(week(&home), None);
}

#[test]
fn seven_presses_are_daily_and_six_are_some_and_stumbles_are_none() {
    let word = 4;
    let begin = f64::from(7 * (asked(word) - 1));
    let mut home = seen(word);
    for (nth, often) in [Often::Some; 6].into_iter().chain([Often::Daily; 3]).enumerate() {
        home.press(begin + 0.1 + nth as f64 / 2.0);
        assert_eq!(week(&home).unwrap().pressed, often, "{}", nth + 1);
    }
    let mut home = seen(word);
    home.tell(begin + 1.0, json!({ "kind": "press", "word": home.word, "by": "animal", "accident": "likely" }));
    assert_eq!(week(&home).unwrap().pressed, Often::Not);
}
