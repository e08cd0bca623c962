//! Sounds as phones code them: read at their whole length and in their place, heard as the plain ones are, refused by name
//! where they cannot be read. How the files were made stands beside them.

use crate::common::{RATE, clips, replay, say, scene};
use sayso_listen::{Clip, Config, Detection, Detector, ListenError, Pace, SoundInfo, Undecodable, decode_bytes};
use std::path::{Path, PathBuf};

fn coded(name: &str) -> Vec<u8> {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/coded").join(name);
    std::fs::read(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// Frames averaged over channels, and what the file told.
fn decoded(bytes: Vec<u8>) -> Result<(Vec<f32>, SoundInfo), ListenError> {
    let mut sound = Vec::new();
    let info = decode_bytes(bytes, |b| {
        let channels = usize::from(b.channels);
        sound.extend(b.samples.chunks(channels).map(|f| f.iter().sum::<f32>() / channels as f32));
        true
    })?;
    Ok((sound, info))
}

#[track_caller]
fn refused(bytes: Vec<u8>) -> Undecodable {
    match decoded(bytes) {
        Err(ListenError::Decode { reason, .. }) => reason,
        other => panic!("{other:?}"),
    }
}

/// Cosine of the angle between two sounds, as far as the shorter goes.
fn alike(a: &[f32], b: &[f32]) -> f64 {
    let sum = |f: &dyn Fn(f64, f64) -> f64| a.iter().zip(b).map(|(x, y)| f(f64::from(*x), f64::from(*y))).sum::<f64>();
    sum(&|x, y| x * y) / (sum(&|x, _| x * x) * sum(&|_, y| y * y)).sqrt()
}

#[test]
fn every_coding_gives_back_the_sound_at_its_length_and_in_its_place() {
    // The last column: most samples at 16 kHz that the length may be off, for a coder's frame or block.
    let word = say(1, 0);
    let (long, _) = scene(0.004);
    for (name, plain, likeness, frame) in [
        ("word.aiff", &word, 0.99999, 0),
        ("word.caf", &word, 0.99999, 0),
        ("word.flac", &word, 0.99999, 0),
        ("word-lossless.m4a", &word, 0.99999, 32),
        ("word-ms.wav", &word, 0.99, 1012),
        ("word-ima.wav", &word, 0.99, 1017),
        ("word-ima.caf", &word, 0.99, 64),
        ("word-first.m4a", &word, 0.95, 32),
        ("scene.m4a", &long, 0.9, 32),
        ("scene.opus", &long, 0.8, 1),
        ("scene.webm", &long, 0.9, 320),
    ] {
        let (sound, info) = decoded(coded(name)).unwrap_or_else(|e| panic!("{name}: {e}"));
        let sound = replay(&sound, f64::from(info.rate) / RATE as f64);
        let here = alike(&sound, plain);
        // Nowhere else within 2 ms is it more alike; the resampler of Opus may be off by a sample.
        let best = (3..32).flat_map(|n| [alike(&sound[n..], plain), alike(&sound, &plain[n..])]).fold(0.0, f64::max);
        println!(
            "{name}: {} bytes, {} Hz, alike {here:.5} (elsewhere {best:.5}), {} samples of {}",
            coded(name).len(),
            info.rate,
            sound.len(),
            plain.len()
        );
        assert!(here > likeness && here > best, "{name}: alike {here}, elsewhere {best}");
        assert!(sound.len().abs_diff(plain.len()) <= frame, "{name}: {} of {}", sound.len(), plain.len());
        assert_eq!((info.channels, info.damaged), (1, 0), "{name}");
    }
}

#[test]
fn bare_aac_tells_no_delay_and_is_late_by_it() {
    let (sound, info) = decoded(coded("word.aac")).unwrap();
    assert_eq!((info.rate, info.damaged), (RATE as u32, 0));
    let word = say(1, 0);
    assert!(alike(&sound[1024..], &word) > 0.95 && sound.len() >= word.len() + 1024);
}

fn hear(bytes: Vec<u8>) -> Vec<Detection> {
    let (mut ear, mut heard) = (None, Vec::new());
    decode_bytes(bytes, |b| {
        let ear =
            ear.get_or_insert_with(|| Detector::new(&clips(6), Config::new(b.rate, b.channels, Pace::File)).unwrap());
        heard.extend(ear.push(b.samples));
        true
    })
    .unwrap();
    heard.extend(ear.unwrap().finish().0);
    heard
}

#[test]
fn presses_are_heard_after_every_coding() {
    let (plain, truth) = scene(0.004);
    let plain = hear(sayso_listen::wav(plain.iter().map(|v| (v * 32767.0) as i16), RATE as u32));
    for name in ["scene.m4a", "scene.opus", "scene.webm"] {
        let heard = hear(coded(name));
        let right = truth
            .iter()
            .filter(|(w, at, _)| heard.iter().any(|h| h.word == format!("word {w}") && (h.onset_s - at).abs() <= 0.05))
            .count();
        let f1 = 2.0 * right as f64 / (heard.len() + truth.len()) as f64;
        let late = heard.iter().zip(&plain).map(|(a, b)| a.onset_s - b.onset_s).fold(0.0, |m: f64, d| m.max(d.abs()));
        println!(
            "{name}: F1 {f1:.3}, {right} of {} presses, onsets within {:.1} ms of the plain",
            truth.len(),
            1e3 * late
        );
        assert!((f1 - 1.0).abs() < 1e-9, "{name}: {heard:#?}");
        assert!(late < 0.003, "{name}: {late}");
    }
}

#[test]
fn a_clip_may_be_of_any_coding() {
    for name in ["word-first.m4a", "word-ima.caf", "word-ms.wav"] {
        let clip = Clip::from_bytes("one", coded(name)).unwrap();
        assert!((clip.seconds() - say(1, 0).len() as f64 / RATE as f64).abs() < 0.07, "{name}: {}", clip.seconds());
    }
    match Clip::from_bytes("one", sayso_listen::wav(vec![9000; 90 * RATE].into_iter(), RATE as u32)) {
        Err(ListenError::ClipLength { seconds, .. }) => assert!((seconds - 90.0).abs() < 1e-6, "{seconds}"),
        other => panic!("{other:?}"),
    }
}

#[test]
fn what_is_not_read_is_named_with_the_way_out() {
    let other = |bytes: &[u8]| refused(bytes.to_vec()).to_string();
    for (bytes, name) in [
        (coded("word-gsm.wav"), "GSM 6.10"),
        (coded("word-ac3.m4a"), "AC-3"),
        (b"#!AMR\n\x3c\x55\x00".repeat(40), "AMR"),
        (b"\x30\x26\xb2\x75\x8e\x66\xcf\x11".repeat(40), "WMA"),
    ] {
        let said = other(&bytes);
        assert!(said.contains(name) && said.contains("save it as WAV or m4a"), "{said}");
    }
    // An MP4 file whose sound is of another kind than AAC.
    let mut amr = coded("word-first.m4a");
    let place = amr.windows(4).position(|w| w == b"mp4a").unwrap();
    amr[place..place + 4].copy_from_slice(b"samr");
    let said = other(&amr);
    assert!(said.contains("coded as AMR,"), "{said}");
    assert_eq!(refused(Vec::new()), Undecodable::Empty);
    assert_eq!(refused(sayso_listen::wav(std::iter::empty(), 16_000)), Undecodable::Empty);
    assert_eq!(refused(b"Dear friend, this is a letter and no sound.".repeat(9)), Undecodable::Unknown);
}

/// Writes what the coded files were made of.
#[test]
#[ignore = "writes files"]
fn plain() {
    let folder = std::env::var("SAYSO_WRITE_PLAIN").expect("SAYSO_WRITE_PLAIN names no folder");
    for (name, sound) in [("scene", scene(0.004).0), ("word", say(1, 0))] {
        let sound = sayso_listen::wav(sound.iter().map(|v| (v.clamp(-1.0, 1.0) * 32767.0).round() as i16), RATE as u32);
        std::fs::write(Path::new(&folder).join(name).with_extension("wav"), sound).unwrap();
    }
}
