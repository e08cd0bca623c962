//! The module for pages, run by Node, hears what the engine here hears: the same words, at the same time within a
//! millisecond, in made scenes of either home.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_lab::hearing::scenes::{Home, Order, make};
use sayso_lab::hearing::truth::Truth;
use sayso_listen::{Clip, Config, Detection, Detector, Pace, decode_file};
use serde_json::Value;
use std::path::Path;
use std::process::Command;

/// One sound as a microphone brings it, a tenth of a second at a time.
fn here(clips: &[Clip], sound: &Path, rate: u32) -> Vec<Detection> {
    let mut samples = Vec::new();
    decode_file(sound, |block| {
        samples.extend_from_slice(block.samples);
        true
    })
    .unwrap();
    let mut detector = Detector::new(clips, Config::new(rate, 1, Pace::Page)).unwrap();
    let mut heard: Vec<Detection> = samples.chunks(rate as usize / 10).flat_map(|block| detector.push(block)).collect();
    heard.extend(detector.finish().0);
    heard
}

fn in_node(module: &Path, corpus: &Path) -> Value {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../benches/listen/ear.mjs");
    let run = Command::new("node").arg(script).arg(module).arg(corpus).output();
    let run = run.expect("Node runs the module; install it (20.19 or newer), for example: apt-get install nodejs");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    serde_json::from_slice(&run.stdout).unwrap()
}

#[test]
fn the_module_hears_what_the_engine_hears() {
    let Some(module) = sayso_ear::MODULE else {
        eprintln!(
            "NOT RUN: this build has no module for pages. rustup target add wasm32-unknown-unknown, then build again."
        );
        return;
    };
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("ear.wasm");
    std::fs::write(&file, module).unwrap();
    let mut presses = 0;
    for (seed, home, words, minutes) in
        [(11, Home::Flat, 12, 0.75), (12, Home::House, 12, 0.75), (13, Home::House, 60, 0.5)]
    {
        let corpus = dir.path().join(seed.to_string());
        let order = Order {
            out: corpus.clone(),
            seed,
            home,
            words,
            snr: vec![20.0, 5.0, 0.0],
            sounds: 1,
            minutes,
            empty_minutes: 0.25,
            television_sounds: 0,
            television_minutes: 0.0,
        };
        let truth: Truth = make(&order).unwrap();
        let clips: Vec<Clip> =
            truth.clips.iter().map(|c| Clip::from_file(&c.word, &corpus.join(&c.file)).unwrap()).collect();
        let there = in_node(&file, &corpus);
        for (sound, heard) in truth.sounds.iter().zip(there["heard"].as_array().unwrap()) {
            let ours = here(&clips, &corpus.join(&sound.file), truth.sample_rate);
            let told = format!("seed {seed}, {}: here {ours:?}, there {heard}", sound.sound);
            let theirs = heard.as_array().unwrap();
            assert_eq!(theirs.len(), ours.len(), "{told}");
            for (a, b) in ours.iter().zip(theirs) {
                assert_eq!(b["word"], a.word.as_str(), "{told}");
                assert!((b["onset"].as_f64().unwrap() - a.onset_s).abs() <= 0.001, "{told}");
            }
            presses += ours.len();
        }
    }
    assert!(presses > 40, "scenes with presses: {presses}");
}

/// Clips as the notebook sends them, at the engine's own rate, are the clips: nothing of them changes on the way.
#[test]
fn a_clip_at_the_engines_rate_is_the_same_clip() {
    let dir = tempfile::tempdir().unwrap();
    let order = Order {
        out: dir.path().to_owned(),
        seed: 14,
        home: Home::Flat,
        words: 3,
        snr: vec![10.0],
        sounds: 1,
        minutes: 0.5,
        empty_minutes: 0.0,
        television_sounds: 0,
        television_minutes: 0.0,
    };
    let truth = make(&order).unwrap();
    let clips: Vec<Clip> =
        truth.clips.iter().map(|c| Clip::from_file(&c.word, &dir.path().join(&c.file)).unwrap()).collect();
    let sent: Vec<Clip> = clips.iter().map(Clip::brought_to_engine_rate).collect();
    let sound = dir.path().join(&truth.sounds[0].file);
    let heard = here(&clips, &sound, truth.sample_rate);
    assert!(heard.len() >= 3, "{heard:?}");
    assert_eq!(here(&sent, &sound, truth.sample_rate), heard);
}
