//! The proof of a recording on presses of known truth.

use crate::common::{RATE, add, bed, clips, replay, room, say};
use sayso_listen::{Clip, Enrolled, Evidence, HeardAs, ListenError, Pace, Proof, outcome, prove};
use std::sync::Arc;

fn ear() -> Arc<Enrolled> {
    Arc::new(Enrolled::new(&clips(4), Pace::Page).unwrap())
}

/// Six seconds in which this sounds.
fn in_a_room(x: &[f32], gain: f32, noise: f32) -> Clip {
    let mut scene = bed(6, noise, 31);
    add(&mut scene, &room(x, 0.25, 9), 2.0, gain);
    Clip::from_samples("", scene, RATE as u32).unwrap()
}

fn of(x: &[f32], gain: f32, noise: f32) -> Proof {
    prove(&ear(), "word 1", &in_a_room(x, gain, noise)).unwrap()
}

#[test]
fn a_press_of_the_button_is_heard_surely() {
    for speed in [1.0, 0.97, 1.02] {
        let proof = of(&replay(&say(1, 0), speed), 0.3, 0.002);
        let Proof::Heard { confidence, speed: found } = proof else { panic!("{speed}: {proof:?}") };
        assert!(confidence >= 0.9 && (found - speed).abs() < 0.005, "{proof:?}");
    }
}

#[test]
fn a_fresh_saying_is_another_sound() {
    for take in [3, 5, 8] {
        assert_eq!(of(&say(1, take), 0.3, 0.002), Proof::AnotherSound, "take {take}");
    }
}

#[test]
fn another_button_is_named() {
    let proof = of(&say(2, 0), 0.3, 0.002);
    assert!(
        matches!(&proof, Proof::AnotherWord { word, confidence } if word == "word 2" && *confidence > 0.5),
        "{proof:?}"
    );
}

#[test]
fn a_replay_at_another_speed_is_told_with_the_speed() {
    for speed in [0.82, 0.88, 1.16, 1.25] {
        let proof = of(&replay(&say(1, 0), speed), 0.3, 0.002);
        assert!(matches!(&proof, Proof::WrongSpeed { speed: s } if (s - speed).abs() < 0.02), "{speed}: {proof:?}");
    }
}

#[test]
fn silence_is_told_from_a_sound_that_drowns() {
    assert_eq!(of(&[], 0.0, 0.002), Proof::Nothing);
    let drowned = of(&say(1, 5), 0.03, 0.006);
    assert!(matches!(drowned, Proof::TooQuiet { .. } | Proof::Nothing), "{drowned:?}");
}

#[test]
fn a_word_that_is_not_enrolled_cannot_be_proved() {
    let asked = prove(&ear(), "word 9", &in_a_room(&say(1, 0), 0.3, 0.002));
    assert!(matches!(asked, Err(ListenError::NoClips)), "{asked:?}");
}

fn heard(own: bool, confidence: f64) -> Option<HeardAs> {
    Some(HeardAs { own, word: "ball".into(), confidence, speed: 1.0 })
}

#[test]
fn each_outcome_follows_from_what_the_ear_got() {
    let loud = Evidence { sounded: Some((-30.0, 30.0)), recorded_db: -20.0, heard: None, other_speed: None };
    let with = |heard| Evidence { heard, ..loud.clone() };
    assert_eq!(outcome(&with(heard(true, 0.95))), Proof::Heard { confidence: 0.95, speed: 1.0 });
    assert_eq!(outcome(&with(heard(true, 0.89))), Proof::Unsure { confidence: 0.89 });
    assert_eq!(outcome(&with(heard(false, 0.99))), Proof::AnotherWord { word: "ball".into(), confidence: 0.99 });
    assert_eq!(outcome(&loud), Proof::AnotherSound);
    // What is weak is told before what is unlike; but what is heard surely is heard.
    let far = |heard| Evidence { sounded: Some((-45.0, 22.0)), heard, ..loud.clone() };
    assert_eq!(outcome(&far(None)), Proof::TooFar { below_db: 25.0 });
    assert_eq!(outcome(&far(heard(true, 0.7))), Proof::TooFar { below_db: 25.0 });
    assert!(matches!(outcome(&far(heard(true, 0.9))), Proof::Heard { .. }));
    let quiet = |heard| Evidence { sounded: Some((-45.0, 14.0)), heard, ..loud.clone() };
    assert_eq!(outcome(&quiet(None)), Proof::TooQuiet { over_room_db: 14.0 });
    assert_eq!(outcome(&Evidence { other_speed: Some(0.85), ..quiet(None) }), Proof::WrongSpeed { speed: 0.85 });
    assert_eq!(outcome(&Evidence { sounded: None, ..loud.clone() }), Proof::Nothing);
    assert_eq!(outcome(&Evidence { sounded: None, ..with(heard(true, 0.6)) }), Proof::Unsure { confidence: 0.6 });
}

#[test]
fn outcomes_go_to_a_page_as_tagged_objects() {
    let text = serde_json::to_string(&Proof::WrongSpeed { speed: 0.85 }).unwrap();
    assert_eq!(text, r#"{"outcome":"wrong_speed","speed":0.85}"#);
    assert_eq!(serde_json::to_string(&Proof::AnotherSound).unwrap(), r#"{"outcome":"another_sound"}"#);
}
