//! Several clips of one word, and words whose clips are too alike.

use crate::common::{RATE, add, bed, clips, replay, room, say};
use sayso_listen::{Clip, Config, Detection, Detector, Pace};

fn hear(clips: &[Clip], sound: &[f32]) -> Vec<Detection> {
    let mut ear = Detector::new(clips, Config::new(RATE as u32, 1, Pace::File)).unwrap();
    let mut heard = ear.push(sound);
    heard.extend(ear.finish().0);
    heard
}

fn clip(word: &str, samples: Vec<f32>) -> Clip {
    Clip::from_samples(word, samples, RATE as u32).unwrap()
}

/// As a button's recorder keeps it: coarser, with some hiss.
fn recorded(x: &[f32], steps: f32) -> Vec<f32> {
    x.iter().enumerate().map(|(i, v)| (v * steps + ((i * 7919) % 13) as f32 / 13.0).round() / steps).collect()
}

/// Presses of these sounds, three seconds apart.
fn pressed(sounds: &[Vec<f32>]) -> Vec<f32> {
    let mut sound = bed(3 * sounds.len() + 3, 0.004, 11);
    for (i, x) in sounds.iter().enumerate() {
        add(&mut sound, &room(&replay(x, 0.99), 0.35, 9), 1.0 + 3.0 * i as f64, 0.3);
    }
    sound
}

fn told(heard: &[Detection]) -> Vec<(&str, usize, i64)> {
    heard.iter().map(|h| (h.word.as_str(), h.clip, h.onset_s.round() as i64)).collect()
}

#[test]
fn clips_of_one_word_are_heard_as_that_word_each_by_its_index() {
    // Two people's recordings of "ball", beside four other words.
    let mut all = clips(4);
    all.push(clip("ball", say(7, 0)));
    all.push(clip("ball", say(7, 5)));
    let sound = pressed(&[say(7, 5), say(7, 0), say(2, 0), say(7, 5)]);
    let heard = hear(&all, &sound);
    assert_eq!(told(&heard), [("ball", 5, 1), ("ball", 4, 4), ("word 2", 2, 7), ("ball", 5, 10)]);
    // As sure as each alone: a second clip of the word is no rival.
    all.remove(4);
    let alone = hear(&all, &sound);
    let of = |heard: &[Detection], at: f64| heard.iter().find(|h| (h.onset_s - at).abs() < 0.1).unwrap().confidence;
    assert!((of(&heard, 1.0) - of(&alone, 1.0)).abs() < 1e-6);
}

#[test]
fn one_recording_given_twice_for_a_word_is_heard_once() {
    let mut all = clips(3);
    let again = clip("word 1", say(1, 0));
    // The same bytes, and a worse copy that begins a little later.
    for second in [again, clip("word 1", recorded(&say(1, 0)[400..], 60.0))] {
        all.push(second);
        let heard = hear(&all, &pressed(&[say(1, 0), say(0, 0), say(1, 0)]));
        assert_eq!(told(&heard), [("word 1", 1, 1), ("word 0", 0, 4), ("word 1", 1, 7)]);
        all.pop();
    }
}

#[test]
fn of_two_words_with_one_saying_only_the_better_is_told() {
    // One saying, recorded on two buttons whose recorders differ.
    let saying = say(1, 0);
    let coarse = recorded(&saying, 40.0);
    let mut all = clips(1);
    all.push(clip("out", saying.clone()));
    all.push(clip("walk", coarse.clone()));
    for fine_first in [true, false] {
        let heard = hear(&all, &pressed(&[saying.clone(), say(0, 0), saying.clone()]));
        let words: Vec<_> = heard.iter().map(|h| h.word.as_str()).collect();
        assert_eq!(words, ["out", "word 0", "out"], "given first: {fine_first}; {heard:#?}");
        all.swap(1, 2);
    }
    // Words that are not alike are told both, however close together.
    let mut both = bed(6, 0.004, 3);
    for w in [0, 1] {
        add(&mut both, &room(&say(w, 0), 0.35, 9), 1.0 + 0.02 * w as f64, 0.3);
    }
    let mut words: Vec<String> = hear(&clips(3), &both).into_iter().map(|h| h.word).collect();
    words.sort();
    assert_eq!(words, ["word 0", "word 1"]);
}
