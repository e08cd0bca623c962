//! In which order needs and animals stand, and what was put aside.

use crate::kit::{Home, ago, animal, now, word};
use sayso_advisor::desk::{About, Bar, Line, Mark, Seen, SignKind, desk, needs, order};
use serde_json::json;

fn growls(days: &[f64]) -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    days.iter().for_each(|d| {
        home.sign(ago(*d), "growl");
    });
    home.line()
}

fn fallen() -> Line {
    let mut home = Home::new();
    home.lives(60, 9);
    (0..9).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3));
    home.line()
}

fn silent() -> Line {
    let mut home = Home::new();
    home.lives(60, 14);
    home.line()
}

fn overfed() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    (0..7).for_each(|d| home.feed(ago(f64::from(d) + 0.1), 120.0));
    home.line()
}

fn waiting() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    home.tell(ago(59.0), json!({ "kind": "stage_choice", "word": word(1), "stage": "show" }));
    home.line()
}

fn fine() -> Line {
    let mut home = Home::new();
    home.lives(60, 0);
    home.line()
}

#[test]
fn animals_stand_in_the_written_order_whatever_order_they_come_in() {
    let today = growls(&[0.05]);
    let (again, old) = (growls(&[3.0, 12.0, 20.0]), growls(&[3.0]));
    let all = [
        ("a fine one", fine()),
        ("ready", waiting()),
        ("silent", silent()),
        ("growled last week", old),
        ("overfed", overfed()),
        ("growls again and again", again),
        ("joins no more", fallen()),
        ("growled today", today),
    ];
    let expected = [
        "growled today",
        "growls again and again",
        "growled last week",
        "joins no more",
        "silent",
        "overfed",
        "ready",
        "a fine one",
    ];
    for turn in 0..all.len() {
        let turned = all.iter().cycle().skip(turn).take(all.len());
        let rows = desk(turned.map(|(name, line)| (*name, line)), now(), &Seen::default(), None);
        assert_eq!(rows.iter().map(|r| r.key).collect::<Vec<_>>(), expected);
    }
}

#[test]
fn strong_signs_stand_above_everything_that_any_other_home_can_have() {
    let worst = [fallen(), silent(), overfed(), waiting()];
    for guard in ["growl", "guards food, a thing or the button", "swallowed something that is no food"] {
        let mut home = Home::new();
        home.lives(60, 0);
        home.sign(ago(26.0), guard);
        let line = home.line();
        let all = worst.iter().chain([&line]).enumerate();
        let rows = desk(all, now(), &Seen::default(), None);
        assert_eq!(rows[0].key, worst.len(), "{guard}: {:?}", rows[0].needs);
    }
}

#[test]
fn needs_of_one_animal_come_in_the_order_of_what_they_are_about() {
    let mut home = Home::new();
    home.lives(60, 9);
    (0..9).rev().for_each(|d| home.day(d, false, &[0, 1, 2], 2.0, 3));
    (0..7).for_each(|d| home.feed(ago(f64::from(d) + 0.1), 120.0));
    home.sign(ago(10.0), "growl");
    let mut found = home.needs();
    let abouts: Vec<About> = found.iter().map(|n| n.about).collect();
    assert_eq!(abouts[..3], [About::Safety, About::Change, About::Ration], "{abouts:?}");
    found.reverse();
    order(&mut found);
    assert_eq!(found, home.needs());
}

#[test]
fn what_was_put_aside_goes_behind_its_like_but_safety_never_does() {
    let (first, second) = (overfed(), overfed());
    let mut seen = Seen::default();
    let mark = Mark { about: About::Ration, word: None, kind: None };
    seen.put_aside(animal(), mark, now());
    assert_eq!(seen.at(animal(), mark), Some(now()));
    let bar = Bar::over([&first, &second]);
    assert_eq!(needs(&first, now(), &bar, &seen, None)[0].seen, Some(now()));
    let growled = growls(&[3.0]);
    let mark = Mark { about: About::Safety, word: None, kind: Some(SignKind::Threat) };
    seen.put_aside(animal(), mark, now());
    assert_eq!(needs(&growled, now(), &bar, &seen, None)[0].seen, None);
    // It began anew after it was put aside.
    let mut old = Seen::default();
    old.put_aside(animal(), Mark { about: About::Change, word: None, kind: None }, ago(40.0));
    let line = fallen();
    assert_eq!(needs(&line, now(), &Bar::over([&line]), &old, None)[0].seen, None);
}

#[test]
fn a_change_counts_only_against_all_that_was_looked_at() {
    let mut weak = fallen();
    weak.looks.iter_mut().for_each(|l| l.p = 0.01);
    let alone = needs(&weak, now(), &Bar::over([&weak]), &Seen::default(), None);
    assert!(alone.iter().any(|n| n.about == About::Change));
    let others: Vec<Line> = (0..60).map(|_| fine()).collect();
    let among = needs(&weak, now(), &Bar::over(others.iter().chain([&weak])), &Seen::default(), None);
    assert!(among.iter().all(|n| n.about != About::Change), "{among:?}");
}
