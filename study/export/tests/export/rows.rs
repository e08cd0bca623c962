//! A home's rows hold what its log holds, and nothing that tells whose it is.

use sayso_advisor::observe::{answered_between, own_presses, showings};
use sayso_model::{Accident, Catch, Invitation, Moment, Story};
use sayso_sim::{any_home, simulate};
use study_cohort::{By, Kind, Outcome};
use study_export::household;

fn story(seed: u64) -> Story {
    let mut home = any_home(seed);
    home.days = 40;
    Story::from_events(simulate(&home, seed, "2026-06-01T19:00:00Z".parse().unwrap()).unwrap().events)
}

#[test]
fn counts_are_those_of_the_log() {
    for seed in 1..6 {
        let story = story(seed);
        let animal = *story.animals().keys().next().unwrap();
        let told = household(&story, 17);
        let count = |is: &dyn Fn(&&study_cohort::Row) -> bool| told.rows.iter().filter(is).count();
        let ever = (Moment::clamped(i64::MIN), Moment::clamped(i64::MAX));
        let answered = answered_between(&story, animal, ever, ever.1);
        let shown = showings(&answered, None).len()
            + story.of::<Invitation>(animal).filter(|f| f.part.shown).count()
            + story.of::<Catch>(animal).filter(|f| f.part.shown).count();
        assert_eq!(count(&|r| r.kind == Kind::Showing), shown);
        let own = own_presses(&answered, None);
        let stumbles = own.iter().filter(|a| a.press.part.accident == Accident::Likely).count();
        assert!(!own.is_empty());
        assert_eq!(count(&|r| r.kind == Kind::Press && r.by == Some(By::Animal)), own.len() - stumbles);
        assert_eq!(count(&|r| r.kind == Kind::Session), story.sessions(animal).len());
        let joined = story.sessions(animal).iter().filter(|s| s.joined()).count();
        assert_eq!(count(&|r| r.kind == Kind::Session && r.joined == Some(true)), joined);
        assert_eq!(count(&|r| r.kind == Kind::Invitation), story.of::<Invitation>(animal).count());
    }
}

#[test]
fn time_begins_with_the_first_showing_and_words_are_numbered_from_it() {
    let told = household(&story(3), 17);
    let first = told.rows.iter().find(|r| r.kind == Kind::Showing).unwrap();
    assert_eq!((first.at_s, first.word.map(|w| w.0)), (0, Some(0)));
    assert!(told.rows.is_sorted());
    assert!(told.rows.iter().all(|r| r.household == 17 && r.hour < 24));
    assert_eq!(told.animals.len(), 1);
    assert_eq!(told.animals[0].until_s, told.rows.iter().map(|r| r.at_s).max().unwrap());
}

#[test]
fn an_animal_that_left_did_not_take_part() {
    let left = (1..12).flat_map(|seed| household(&story(seed), 1).rows).filter(|r| r.kind == Kind::Invitation);
    let (mut of_left, mut unpressed) = (0, 0);
    for row in left {
        if row.outcome == Some(Outcome::Left) {
            assert_eq!(row.joined, Some(false));
            of_left += 1;
        }
        unpressed += usize::from(row.outcome == Some(Outcome::Nothing) && row.joined == Some(true));
    }
    assert!(of_left + unpressed > 0);
}
