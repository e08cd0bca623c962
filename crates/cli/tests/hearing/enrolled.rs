//! Recordings are checked against each other.

use crate::home::{Home, sayso, wav, well};
use crate::sounds::say;
use std::path::Path;

#[tokio::test]
async fn a_recording_is_checked_against_the_others_and_a_new_one_takes_its_place() {
    let home = Home::new().await;
    home.enrol_all();
    let data = home.path("notebook");
    let same = well(home.enrol("word 0", &home.path("clip0.wav")));
    assert!(String::from_utf8_lossy(&same.stdout).contains("enrolled already"));
    // Another word's sound, much louder than the rest.
    let loud: Vec<f32> = say(1, 0).iter().map(|v| (v * 12.0).clamp(-0.9, 0.9)).collect();
    let file = home.path("loud.wav");
    wav(Path::new(&file), &loud);
    let answer = well(home.enrol("word 0", &file));
    let text = String::from_utf8_lossy(&answer.stdout).into_owned();
    for what in ["Clipped", "louder than the others", "word 1", "5 others", "from another room"] {
        assert!(text.contains(what), "no {what} in {text}");
    }
    let all = sayso(&["clips", "--data", &data]);
    assert_eq!(all.status.code(), Some(2));
    assert_eq!(String::from_utf8_lossy(&all.stdout).matches("Clipped").count(), 1, "the former one is not in use");
    well(home.enrol("word 0", &home.path("clip0.wav")));
    let all = sayso(&["clips", "--data", &data]);
    assert!(!String::from_utf8_lossy(&all.stdout).contains("Clipped"), "the former one is in use again");
}
