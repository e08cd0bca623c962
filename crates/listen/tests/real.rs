//! Recordings of real people: as what is heard in a home without a press, and as what is on the buttons.
//!
//! The recordings are telephone prompts read in English: the Debian package `asterisk-core-sounds-en-wav`, by its
//! copyright file under CC-BY-SA-3.0. `.ci/install` brings it; nothing of it is kept here.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod common;

use common::{RATE, add, clips, replay, room};
use sayso_listen::{Clip, Config, Detection, Detector, Pace, decode_file};
use std::path::{Path, PathBuf};

const PACKAGE: &str = "/usr/share/asterisk/sounds";

/// Every recording of the package, in order of its name.
fn recordings() -> Vec<PathBuf> {
    fn within(dir: &Path, all: &mut Vec<PathBuf>) {
        for entry in std::fs::read_dir(dir).into_iter().flatten().flatten() {
            let path = entry.path();
            if path.is_dir() {
                within(&path, all);
            } else if path.extension().is_some_and(|e| e == "wav") {
                all.push(path);
            }
        }
    }
    let mut all = Vec::new();
    for entry in std::fs::read_dir(PACKAGE).expect("recordings of people; .ci/install brings them").flatten() {
        if entry.file_name().to_string_lossy().starts_with("en") {
            within(&entry.path(), &mut all);
        }
    }
    all.sort();
    assert!(all.len() > 400, "{} recordings under {PACKAGE}", all.len());
    all
}

/// A recording at the scenes' rate; the package holds 8 kHz.
fn sound(path: &Path) -> Vec<f32> {
    let (mut all, mut rate) = (Vec::new(), 0);
    decode_file(path, |b| {
        rate = b.rate;
        all.extend(b.samples.chunks(usize::from(b.channels)).map(|f| f[0]));
        true
    })
    .unwrap();
    replay(&all, f64::from(rate) / RATE as f64)
}

fn hear(clips: &[Clip], sound: impl Iterator<Item = Vec<f32>>) -> (Vec<Detection>, f64) {
    let mut ear = Detector::new(clips, Config::new(RATE as u32, 1, Pace::File)).unwrap();
    let mut heard: Vec<Detection> = sound.flat_map(|s| ear.push(&s)).collect();
    let seconds = ear.position_s();
    heard.extend(ear.finish().0);
    (heard, seconds)
}

#[test]
fn people_who_read_are_never_a_press() {
    let pause = vec![0.0; RATE / 4];
    let talk = recordings().into_iter().map(|p| [sound(&p), pause.clone()].concat());
    let (heard, seconds) = hear(&clips(12), talk);
    assert!(seconds > 1200.0, "{seconds:.0} s of speech");
    assert!(heard.is_empty(), "{heard:#?}");
}

#[test]
fn words_of_a_real_voice_are_heard_among_other_words_of_that_voice() {
    let all: Vec<(PathBuf, Vec<f32>)> = recordings().into_iter().map(|p| (p.clone(), sound(&p))).collect();
    let length = |x: &[f32]| x.len() as f64 / RATE as f64;
    let (words, talk): (Vec<_>, Vec<_>) = all.into_iter().partition(|(_, x)| (0.5..1.2).contains(&length(x)));
    // Every ninth, so that no two are forms of one word, as "thirteen" and "thirty" are.
    let words: Vec<Vec<f32>> = words.into_iter().step_by(9).take(8).map(|(_, x)| x).collect();
    assert_eq!(words.len(), 8);
    let clips: Vec<Clip> = (0..)
        .zip(&words)
        .map(|(w, x)| Clip::from_samples(format!("word {w}"), x.clone(), RATE as u32).unwrap())
        .collect();
    let seconds = 180;
    let mut scene = vec![0.0; seconds * RATE];
    let mut at = 0.5;
    for (i, (_, x)) in talk.iter().enumerate() {
        if at + length(x) + 1.5 > seconds as f64 {
            break;
        }
        add(&mut scene, &room(x, 0.4, 50 + i as u64 % 7), at, 0.3);
        at += length(x) + 0.4;
    }
    let mut truth = Vec::new();
    for press in 0..24 {
        let (word, speed) = (press * 5 % 8, 0.97 + 0.0075 * (press * 5 % 8) as f64);
        let at = 3.0 + 7.2 * press as f64;
        add(&mut scene, &room(&replay(&words[word], speed), 0.35, 9), at, 0.8);
        truth.push((word, at, speed));
    }
    let (heard, _) = hear(&clips, std::iter::once(scene));
    for (word, at, speed) in &truth {
        let found = heard.iter().find(|h| h.word == format!("word {word}") && (h.onset_s - at).abs() < 0.05);
        let found = found.unwrap_or_else(|| panic!("word {word} at {at} missing in {heard:#?}"));
        assert!((found.speed - speed).abs() < 0.005, "{found:?} should play at {speed}");
    }
    // The same person reading other words is the hardest company there is: at most one of them may be taken, as unsure.
    let sure = heard.iter().filter(|h| h.confidence >= 0.9).count();
    assert!(sure <= truth.len() && heard.len() <= truth.len() + 1, "{heard:#?}");
}
