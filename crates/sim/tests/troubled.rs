//! A club of troubled homes: each sound, and troubled as it says it is.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use sayso_model::*;
use sayso_sim::*;
use std::collections::BTreeSet;
use std::sync::LazyLock;

fn end() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

static CLUB: LazyLock<Vec<TroubledHome>> = LazyLock::new(|| troubled_club(5, 60, end()));

fn with(trouble: Trouble) -> impl Iterator<Item = &'static TroubledHome> {
    CLUB.iter().filter(move |h| h.is.troubles.iter().any(|(t, _)| *t == trouble))
}

#[test]
fn every_configuration_holds_together_and_every_event_is_sound() {
    for (number, one) in (0..).zip(CLUB.iter()) {
        let (is, home) = troubled_home(5, number);
        assert_eq!((home.check(), &is), (Ok(()), &one.is), "{number}");
        for e in &one.run.events {
            assert!(e.check().is_ok() && e.recorded_at <= end() && e.home == one.run.truth.ids.home, "{e:?}");
        }
    }
    let ids: BTreeSet<EventId> = CLUB.iter().flat_map(|h| &h.run.events).map(|e| e.id).collect();
    assert_eq!(ids.len(), CLUB.iter().map(|h| h.run.events.len()).sum::<usize>());
}

#[test]
fn the_same_seed_is_the_same_club() {
    assert_eq!(troubled_club(5, 4, end()), CLUB[..4]);
    assert_ne!(troubled_one(6, 0, end()).run.events, CLUB[0].run.events);
}

#[test]
fn there_are_all_sorts() {
    let all: Vec<Troubled> = (0..500).map(|n| troubled_home(5, n).0).collect();
    for trouble in Trouble::ALL {
        let n = all.iter().filter(|h| h.troubles.iter().any(|(t, _)| *t == trouble)).count();
        assert!((8..80).contains(&n), "{trouble:?}: {n}");
    }
    assert!(all.iter().filter(|h| h.troubles.len() == 2).count() > 15);
    assert!(all.iter().filter(|h| h.troubles.is_empty()).count() > 200);
    assert!(all.iter().filter(|h| h.meaningless).count() > 25);
    for keeps in [Keeps::FewDays, Keeps::FewRecords, Keeps::OnlyPresses] {
        assert!(all.iter().filter(|h| h.keeps == keeps).count() > 12, "{keeps:?}");
    }
}

#[test]
fn what_is_said_to_be_wrong_is_in_the_log() {
    for home in with(Trouble::Silent) {
        let last = home.run.events.iter().map(|e| e.recorded_at).max().unwrap();
        assert!(end().seconds_since(last) > 7.0 * 86_400.0);
    }
    for trouble in [Trouble::StrongSigns, Trouble::Guarding] {
        for home in with(trouble) {
            let signs =
                home.run.events.iter().filter(|e| matches!(&e.body, Body::Sign(s) if s.level == SignLevel::Strong));
            assert!(signs.filter(|e| end().seconds_since(e.happened_at) < 28.0 * 86_400.0).count() > 0);
        }
    }
    let food = |home: &TroubledHome| -> f64 {
        let kcal = home.run.events.iter().filter_map(|e| match &e.body {
            Body::Feed(f) => Some(f.kcal.get()),
            _ => None,
        });
        kcal.sum::<f64>() / f64::from(home.run.truth.home.days)
    };
    let over: Vec<f64> = with(Trouble::Overfed).filter(|h| h.is.keeps == Keeps::All).map(food).collect();
    assert!(!over.is_empty() && over.iter().all(|kcal| *kcal > 60.0), "{over:?}");
    let fine = CLUB.iter().filter(|h| h.is.troubles.is_empty()).map(food);
    assert!(fine.fold(0.0, f64::max) < 50.0);
}

#[test]
fn who_writes_little_writes_less_and_no_showings_where_only_presses_are_kept() {
    let a_day = |h: &&TroubledHome| h.run.events.len() as f64 / f64::from(h.run.truth.home.days);
    let long = || CLUB.iter().filter(|h| h.run.truth.home.days > 40);
    let mean = |little: bool| {
        let all: Vec<f64> = long().filter(|h| (h.is.keeps != Keeps::All) == little).map(|h| a_day(&h)).collect();
        all.iter().sum::<f64>() / all.len() as f64
    };
    assert!(mean(true) < 0.6 * mean(false), "{} {}", mean(true), mean(false));
    for home in CLUB.iter().filter(|h| h.is.keeps == Keeps::OnlyPresses) {
        assert!(home.run.events.iter().all(|e| !matches!(&e.body, Body::Press(p) if p.by == PressedBy::Person)));
    }
}
