//! A club of invented homes: each one sound, no two alike, and each is what it says it is.
#![allow(clippy::unwrap_used, clippy::cast_precision_loss)]

use sayso_model::*;
use sayso_sim::*;
use std::collections::BTreeSet;
use std::sync::LazyLock;

fn end() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

static CLUB: LazyLock<Vec<ClubHome>> = LazyLock::new(|| club(3, 40, end()));

#[test]
fn every_configuration_holds_together_and_every_event_is_sound() {
    for (number, one) in (0..).zip(CLUB.iter()) {
        let (lot, home) = club_home(3, number, end());
        assert_eq!((home.check(), lot), (Ok(()), one.lot), "{number}");
        assert_eq!(home, one.run.truth.home);
        for e in &one.run.events {
            assert!(e.check().is_ok() && e.recorded_at <= end() && e.home == one.run.truth.ids.home, "{e:?}");
        }
    }
}

#[test]
fn the_same_seed_is_the_same_club_and_a_smaller_one_begins_alike() {
    assert_eq!(club(3, 5, end()), CLUB[..5]);
    let other = club(4, 5, end());
    assert!(other.iter().zip(CLUB.iter()).all(|(a, b)| a.run.events != b.run.events));
}

#[test]
fn no_two_homes_share_an_id_or_a_name() {
    let all = || CLUB.iter().map(|one| &one.run);
    let homes: BTreeSet<HomeId> = all().map(|run| run.truth.ids.home).collect();
    let names: BTreeSet<&str> = all().map(|run| run.truth.home.name.as_str()).collect();
    let events: BTreeSet<EventId> = all().flat_map(|run| &run.events).map(|e| e.id).collect();
    let animals: BTreeSet<AnimalId> = all().flat_map(|run| run.truth.ids.animals.clone()).collect();
    assert_eq!((homes.len(), names.len()), (40, 40));
    assert_eq!(events.len(), all().map(|run| run.events.len()).sum::<usize>());
    assert_eq!(animals.len(), all().map(|run| run.truth.ids.animals.len()).sum::<usize>());
}

#[test]
fn there_is_every_species_every_cause_and_every_lot_and_homes_stay_small() {
    let species: BTreeSet<Species> = CLUB.iter().map(|one| one.run.truth.home.animals[0].species).collect();
    let lots: BTreeSet<Lot> = CLUB.iter().map(|one| one.lot).collect();
    assert_eq!(species.len(), Species::ALL.len());
    assert_eq!(lots.len(), 3 + Cause::ALL.len());
    let days: Vec<u32> = CLUB.iter().map(|one| one.run.truth.home.days).collect();
    assert!(days.iter().any(|d| *d > 150) && days.iter().any(|d| (21..60).contains(d)));
    let words: BTreeSet<usize> = CLUB.iter().map(|one| one.run.truth.home.words.len()).collect();
    assert!(words.first() == Some(&2) && words.last() == Some(&8), "{words:?}");
    let events: usize = CLUB.iter().map(|one| one.run.events.len()).sum();
    assert!((20_000..80_000).contains(&events), "{events}");
    for one in CLUB.iter().filter(|one| one.lot == Lot::New) {
        assert!(one.run.events.len() < 120, "{}", one.run.events.len());
    }
}

/// How far each word of the first animal is understood, those that hold for long.
fn understood(one: &ClubHome) -> Vec<f64> {
    let home = &one.run.truth.home;
    let last = one.run.truth.last_day(0).unwrap();
    let long = home.words.iter().map(|w| home.days.saturating_sub(w.shown_from) >= 35);
    last.understanding.iter().zip(long).filter(|(_, long)| *long).map(|(u, _)| *u).collect()
}

#[test]
fn in_most_homes_that_are_fine_words_are_learned() {
    let fine: Vec<f64> = CLUB.iter().filter(|one| one.lot == Lot::Fine).flat_map(understood).collect();
    let learned = fine.iter().filter(|u| **u > 0.5).count();
    assert!(learned * 4 >= fine.len() * 3, "{learned} of {}: {fine:?}", fine.len());
}

#[test]
fn what_means_nothing_presses_whatever_it_wants() {
    let hit = |one: &ClubHome| {
        let wanted: Vec<bool> =
            one.run.truth.presses.values().filter_map(|p| p.wanted.map(|w| w == p.pressed)).collect();
        (wanted.iter().filter(|w| **w).count(), wanted.len())
    };
    let sum = |lot: Lot| {
        let (hits, n) = CLUB.iter().filter(|one| one.lot == lot).map(hit).fold((0, 0), |a, b| (a.0 + b.0, a.1 + b.1));
        (hits as f64 / n as f64, n)
    };
    let (fine, many) = sum(Lot::Fine);
    let (nothing, some) = sum(Lot::Meaningless);
    assert!(many > 200 && some > 50, "{many} {some}");
    assert!(fine > 0.85 && nothing < 0.7, "{fine:.2} {nothing:.2}");
}

#[test]
fn every_word_says_what_it_means_how_it_is_answered_and_what_is_said_for_not_now() {
    for word in CLUB.iter().flat_map(|one| &one.run.truth.home.words) {
        let all = [&word.means, &word.answer, &word.not_now];
        assert!(all.iter().all(|text| text.is_some()), "{}", word.says);
    }
}
