//! Sound of known truth in every format, rate and shape: heard alike, at the right moments.

use crate::common::{RATE, clips, replay, scene};
use crate::encoded::{Wav, flac, mp3, ogg, wav};
use sayso_listen::{Config, Detection, Detector, Enrolled, Pace, SoundInfo, decode_bytes};
use std::sync::{Arc, OnceLock};

fn enrolled() -> Arc<Enrolled> {
    static CLIPS: OnceLock<Arc<Enrolled>> = OnceLock::new();
    Arc::clone(CLIPS.get_or_init(|| Arc::new(Enrolled::new(&clips(6), Pace::File).unwrap())))
}

fn hear(bytes: Vec<u8>) -> (Vec<Detection>, SoundInfo) {
    let (mut ear, mut heard) = (None, Vec::new());
    let info = decode_bytes(bytes, |b| {
        let ear =
            ear.get_or_insert_with(|| Detector::with(enrolled(), Config::new(b.rate, b.channels, Pace::File)).unwrap());
        heard.extend(ear.push(b.samples));
        true
    })
    .unwrap();
    heard.extend(ear.unwrap().finish().0);
    (heard, info)
}

/// The scene at a rate, on one channel or louder on the left of two.
fn sound(rate: u32, channels: u16) -> (Vec<f32>, Vec<(u64, f64, f64)>) {
    let (x, truth) = scene(0.004);
    let y = replay(&x, RATE as f64 / f64::from(rate));
    match channels {
        1 => (y, truth),
        _ => (y.iter().flat_map(|v| [1.2 * v, 0.8 * v]).collect(), truth),
    }
}

/// Every press and nothing else, within `late` seconds; returns how late they were on average, and the largest deviation.
#[track_caller]
fn all(name: &str, heard: &[Detection], truth: &[(u64, f64, f64)], late: f64) -> (f64, f64) {
    let off: Vec<f64> = truth
        .iter()
        .map(|(w, at, speed)| {
            let found = heard.iter().find(|h| h.word == format!("word {w}") && (h.onset_s - at).abs() <= late);
            let found = found.unwrap_or_else(|| panic!("{name}: word {w} at {at} missing in {heard:#?}"));
            assert!((found.speed - speed).abs() < 0.005, "{name}: {found:?} should play at {speed}");
            found.onset_s - at
        })
        .collect();
    assert_eq!(heard.len(), truth.len(), "{name}: {heard:#?}");
    let mean = off.iter().sum::<f64>() / off.len() as f64;
    (mean, off.iter().fold(0.0, |m, o| m.max((o - mean).abs())))
}

#[test]
fn coded_files_are_heard_as_the_plain_one_is() {
    for (rate, channels) in [(16_000, 1), (44_100, 2)] {
        let (x, truth) = sound(rate, channels);
        let frames = x.len() as u64 / u64::from(channels);
        let (plain, _) = hear(wav(&x, rate, channels, Wav::Bits16));
        let (usual, _) = all("WAV", &plain, &truth, 0.05);

        let (heard, info) = hear(flac(&x, rate, channels));
        assert_eq!((info.frames, info.damaged), (frames, 0));
        assert_eq!(heard, plain, "FLAC loses nothing");

        for (name, bytes) in [("Ogg", ogg(&x, rate, channels)), ("MP3", mp3(&x, rate, channels, true))] {
            let (heard, info) = hear(bytes);
            let (mean, most) = all(name, &heard, &truth, 0.05);
            println!(
                "{name} {rate}: {} frames of {frames}, {:.1} ms late, {:.1} ms",
                info.frames,
                1e3 * (mean - usual),
                1e3 * most
            );
            assert!((mean - usual).abs() < 0.003, "{name} at {rate}: {mean} against {usual}");
            // Of an MP3 the reader leaves out the last frame or two, 85 ms at 16 kHz.
            let short = if name == "Ogg" { 1 } else { u64::from(rate) / 10 };
            assert!(info.frames.abs_diff(frames) <= short, "{name} at {rate}: {} of {frames} frames", info.frames);
        }
    }
}

#[test]
fn an_mp3_that_does_not_tell_its_delay_is_late_by_a_few_hundredths() {
    // An encoder puts some 1 100 samples before the sound. Where the file does not say so, no reader can know.
    for (rate, channels) in [(16_000, 1), (44_100, 2)] {
        let (x, truth) = sound(rate, channels);
        let (heard, _) = hear(mp3(&x, rate, channels, false));
        let (mean, most) = all("MP3", &heard, &truth, 0.15);
        println!("MP3 untold {rate}: {:.1} ms late, {:.1} ms", 1e3 * mean, 1e3 * most);
        assert!((0.01..0.1).contains(&mean) && most < 0.02, "late by {mean}, give or take {most}");
    }
}

#[test]
fn every_usual_rate_and_shape_of_a_wav_is_heard() {
    let kinds = [Wav::Bits16, Wav::Bits24, Wav::Float];
    for (i, rate) in [8_000, 11_025, 16_000, 22_050, 44_100, 48_000].into_iter().enumerate() {
        // Each rate in two of the three kinds, on one channel and on two.
        for channels in [1, 2] {
            let kind = kinds[(i + usize::from(channels)) % 3];
            let (x, truth) = sound(rate, channels);
            let (heard, info) = hear(wav(&x, rate, channels, kind));
            assert_eq!((info.rate, info.channels, info.frames), (rate, channels, x.len() as u64 / u64::from(channels)));
            all(&format!("{rate} {channels} {kind:?}"), &heard, &truth, 0.05);
        }
    }
}
