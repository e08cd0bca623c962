//! A word that was put away is watched to that day, and no longer.

use crate::home::Home;
use sayso_model::{AnimalId, WordId};
use sayso_norms::{StageWait, TimedStage};
use serde_json::json;
use uuid::Uuid;

/// Shown on the first day; the animal is seen on the hundredth, when the home goes on with other things.
fn shown(word: u128) -> Home {
    let mut home = Home::new(word);
    home.show(0.0);
    home.yawns(100.0);
    home
}

/// A word that is asked of the stage in which it is shown, and one of the other.
fn asked() -> [u128; 2] {
    let of = |show| {
        (1..).find(|id| sayso_model::draw::heads(AnimalId(Uuid::from_u128(7)), WordId(Uuid::from_u128(*id))) == show)
    };
    [true, false].map(|show| of(show).unwrap())
}

#[test]
fn a_wait_and_a_stay_end_on_the_day_the_word_was_put_away() {
    let [show, invite] = asked();
    let mut home = shown(show);
    assert_eq!((home.row(200.0).watched, home.row(200.0).days), (100, 100));
    home.word(30.0, false, &[]);
    home.word(40.0, false, &[]);
    let stay = StageWait { stage: TimedStage::Show, days: 30, moved_on: false };
    let told = home.row(200.0);
    assert_eq!((told.watched, told.days, told.pressed, told.stage), (30, 30, false, Some(stay)));
    // On the days before it was there; and once it is back it was watched all along.
    assert_eq!(home.row(20.0).watched, 0, "the last record so far is the showing");
    home.word(60.0, true, &[]);
    assert_eq!((home.row(200.0).watched, home.row(50.0).watched), (100, 0));

    let mut home = shown(invite);
    home.tell(10.0, json!({ "kind": "stage_choice", "word": home.word, "stage": "invite" }));
    home.word(30.0, false, &[]);
    let stay = StageWait { stage: TimedStage::Invite, days: 20, moved_on: false };
    assert_eq!(home.row(200.0).stage, Some(stay));
}

#[test]
fn a_word_taken_from_this_animal_alone_is_put_away_for_it_and_what_is_done_with_it_still_is_watched() {
    let mut home = shown(asked()[0]);
    home.word(30.0, true, &[AnimalId(Uuid::from_u128(8))]);
    assert_eq!(home.row(200.0).watched, 30);
    home.show(35.0);
    assert_eq!((home.row(200.0).watched, home.row(200.0).exposures), (35, 2));
    home.press(45.0);
    let told = home.row(200.0);
    assert_eq!((told.watched, told.days, told.pressed), (45, 45, true));
    home.word(50.0, true, &[]);
    assert_eq!(home.row(200.0).watched, 100);
}
