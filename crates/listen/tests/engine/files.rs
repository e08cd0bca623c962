//! Files, raw streams, checkpoints, and rubbish in place of sound.

use crate::common;

use crate::common::{RATE, clips, say, scene};
use proptest::prelude::*;
use sayso_listen::{
    Checkpoint, Clip, Config, Detection, Detector, Enrolled, FileHearing, Finding, Pace, PcmFormat, PcmReader,
    check_clips, decode_bytes, decode_file, hear_file, picture,
};
use std::path::PathBuf;
use std::sync::Arc;

fn wav(samples: &[f32]) -> Vec<u8> {
    let data: Vec<u8> = samples.iter().flat_map(|v| ((v * 32767.0) as i16).to_le_bytes()).collect();
    let mut out = b"RIFF".to_vec();
    out.extend((36 + data.len() as u32).to_le_bytes());
    out.extend(b"WAVEfmt ");
    out.extend(16u32.to_le_bytes());
    out.extend(1u16.to_le_bytes());
    out.extend(1u16.to_le_bytes());
    out.extend((RATE as u32).to_le_bytes());
    out.extend((2 * RATE as u32).to_le_bytes());
    out.extend(2u16.to_le_bytes());
    out.extend(16u16.to_le_bytes());
    out.extend(b"data");
    out.extend((data.len() as u32).to_le_bytes());
    out.extend(data);
    out
}

struct Temporary(PathBuf);

impl Temporary {
    fn new(name: &str, bytes: &[u8]) -> Self {
        let path = std::env::temp_dir().join(format!("sayso-listen-{}-{name}", std::process::id()));
        std::fs::write(&path, bytes).unwrap();
        Self(path)
    }
}

impl Drop for Temporary {
    fn drop(&mut self) {
        let _ = std::fs::remove_file(&self.0);
    }
}

/// Nine minutes: the scene, silence, the scene again across the seam of two pieces.
fn long_scene() -> Vec<f32> {
    let (short, _) = scene(0.004);
    let mut sound = short.clone();
    sound.resize(224 * RATE, 0.0);
    sound.extend(&short);
    sound.resize(520 * RATE, 0.0);
    sound.extend(&short);
    sound
}

fn same(a: &[Detection], b: &[Detection]) {
    assert_eq!(a.len(), b.len(), "{a:#?}\n{b:#?}");
    for (x, y) in a.iter().zip(b) {
        assert_eq!(x.word, y.word);
        assert!((x.onset_s - y.onset_s).abs() < 1e-3 && (x.confidence - y.confidence).abs() < 1e-2, "{x:?} {y:?}");
    }
}

#[test]
fn a_file_on_two_threads_gives_what_streaming_gives_and_can_be_resumed() {
    let sound = long_scene();
    let file = Temporary::new("long.wav", &wav(&sound));
    let enrolled = Arc::new(Enrolled::new(&clips(6), Pace::File).unwrap());
    let mut ear = Detector::with(Arc::clone(&enrolled), Config::new(RATE as u32, 1, Pace::File)).unwrap();
    let mut streamed = Vec::new();
    decode_file(&file.0, |b| {
        streamed.extend(ear.push(b.samples));
        true
    })
    .unwrap();
    streamed.extend(ear.finish().0);
    assert!(streamed.len() >= 27, "{}", streamed.len());

    let how = FileHearing { threads: 2, ..FileHearing::default() };
    let mut calls = 0;
    let (whole, info) = hear_file(&file.0, &enrolled, &how, |_| {
        calls += 1;
        true
    })
    .unwrap();
    assert_eq!((info.rate, info.channels, calls), (RATE as u32, 1, 3));
    same(&whole, &streamed);

    let (mut stored, mut first) = (String::new(), Vec::new());
    hear_file(&file.0, &enrolled, &how, |p| {
        stored = serde_json::to_string(p.checkpoint).unwrap();
        first.extend(p.heard.iter().cloned());
        false
    })
    .unwrap();
    let resume: Option<Checkpoint> = serde_json::from_str(&stored).unwrap();
    assert_eq!(resume.as_ref().map(Checkpoint::done_s), Some(240.0));
    let (rest, _) = hear_file(&file.0, &enrolled, &FileHearing { resume, ..how }, |_| true).unwrap();
    first.extend(rest);
    same(&first, &streamed);
}

#[test]
fn a_wav_is_read_whole() {
    let x = say(1, 0);
    let bytes = wav(&x);
    let clip = Temporary::new("clip.wav", &bytes);
    let clip = Clip::from_file("one", &clip.0).unwrap();
    assert_eq!((clip.samples().len(), clip.rate()), (x.len(), RATE as u32));
}

#[test]
fn missing_files_and_other_files_are_named() {
    let e = decode_file(&PathBuf::from("no such.wav"), |_| true).unwrap_err().to_string();
    assert!(e.contains("no such.wav"), "{e}");
    let text = Temporary::new("letter.txt", b"Dear friend, this is not a sound at all, however long one reads on.");
    let e = decode_file(&text.0, |_| true).unwrap_err().to_string();
    assert!(e.contains("letter.txt") && e.contains("no sound file"), "{e}");
}

#[test]
fn clips_are_checked_at_once() {
    let mut sounds: Vec<(String, Vec<f32>)> = (0..4).map(|w| (format!("word {w}"), say(w, 0))).collect();
    sounds.push(("copy".into(), say(2, 0)));
    sounds.push(("soft".into(), say(5, 0).iter().map(|v| 0.05 * v).collect()));
    sounds.push(("harsh".into(), say(6, 0).iter().map(|v| (8.0 * v).clamp(-0.9, 0.9)).collect()));
    let mut hiss = common::Chance::new(3);
    sounds.push(("hissing".into(), say(7, 0).iter().map(|v| v + 0.2 * hiss.pm()).collect()));
    sounds.push(("long".into(), say(8, 0).repeat(6)));
    let clips: Vec<Clip> = sounds.into_iter().map(|(w, x)| Clip::from_samples(w, x, RATE as u32).unwrap()).collect();
    let reports = check_clips(&clips);
    let of = |w: &str| &reports.iter().find(|r| r.word == w).unwrap().findings;
    assert!(of("word 0").is_empty() && of("word 1").is_empty(), "{reports:#?}");
    assert!(of("copy").contains(&Finding::TooLike("word 2".into())));
    assert!(of("soft").contains(&Finding::Quieter));
    assert!(of("harsh").contains(&Finding::Clipped));
    assert!(of("hissing").contains(&Finding::Noisy));
    assert!(of("long").contains(&Finding::TooLong));
    assert!(check_clips(&[]).is_empty());
    let one = check_clips(&clips[..1]);
    assert!(one[0].against_others.is_none() && one[0].most_like.is_none());
}

#[test]
fn loudness_is_that_of_the_standard() {
    // ITU-R BS.1770: a 997 Hz sine at 0 dBFS in one front channel reads -3.01 LUFS.
    let sine: Vec<f32> =
        (0..48_000).map(|i| (2.0 * std::f32::consts::PI * 997.0 * i as f32 / 48_000.0).sin()).collect();
    let report = check_clips(&[Clip::from_samples("tone", sine, 48_000).unwrap()]);
    assert!((report[0].loudness_lufs.unwrap() + 3.01).abs() < 0.05, "{report:?}");
}

#[test]
fn a_picture_shows_where_the_sound_is() {
    let mut x = vec![0.0; RATE];
    x.extend((0..RATE).map(|i| 0.5 * (2.0 * std::f32::consts::PI * 3000.0 * i as f32 / RATE as f32).sin()));
    let p = picture(&Clip::from_samples("late", x, RATE as u32).unwrap(), 20, 16);
    assert_eq!((p.outline.len(), p.levels.len(), p.levels[0].len()), (20, 20, 16));
    assert!(p.outline[3].1 < 0.01 && p.outline[15].1 > 0.4);
    // 3 kHz of 8 kHz lies in band 6 of 16.
    assert!(p.levels[15][6] > -3.0 && p.levels[15][12] < -40.0 && p.levels[3][6] <= -79.0);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn rubbish_is_refused_without_panic(bytes in proptest::collection::vec(any::<u8>(), 0..4096), head in 0usize..6) {
        let heads: [&[u8]; 6] = [b"", b"RIFF\x24\x00\x00\x00WAVEfmt ", b"fLaC\x00\x00\x00\x22", b"OggS\x00\x02", b"\xff\xfb\x90\x64", b"ID3\x04\x00\x00"];
        let mut all = heads[head].to_vec();
        all.extend(bytes);
        match decode_bytes(all, |b| b.samples.len() < 1 << 24) {
            Ok(info) => prop_assert!(info.rate > 0 && info.channels > 0),
            Err(e) => prop_assert!(!e.to_string().is_empty()),
        }
    }

    #[test]
    fn raw_bytes_read_the_same_however_cut(bytes in proptest::collection::vec(any::<u8>(), 0..600), cut in 1usize..9, float in any::<bool>()) {
        let format = if float { PcmFormat::F32Le } else { PcmFormat::S16Le };
        let (mut one, mut many) = (Vec::new(), Vec::new());
        let mut a = PcmReader::new(format);
        a.push(&bytes, &mut one);
        let mut b = PcmReader::new(format);
        bytes.chunks(cut).for_each(|c| b.push(c, &mut many));
        prop_assert_eq!(&one, &many);
        prop_assert_eq!(a.left_over(), bytes.len() % format.bytes());
        prop_assert!(one.iter().all(|v| v.is_finite()));
    }
}

#[test]
fn no_byte_of_a_wav_header_makes_it_panic() {
    let whole = wav(&say(3, 0)[..2000]);
    for at in 0..44 {
        for value in 0..=255u8 {
            let mut bytes = whole.clone();
            bytes[at] = value;
            match decode_bytes(bytes, |b| b.samples.len() < 1 << 24) {
                Ok(info) => assert!(info.rate > 0 && info.channels > 0, "byte {at} = {value}: {info:?}"),
                Err(e) => assert!(!e.to_string().is_empty()),
            }
        }
    }
}

#[test]
fn a_stream_of_rubbish_floats_gives_no_press_and_no_panic() {
    let mut ear = Detector::new(&clips(2), Config::new(16_000, 1, Pace::Live)).unwrap();
    let odd = [f32::NAN, f32::INFINITY, -1e30, 1e30, 0.0, f32::MIN_POSITIVE];
    let sound: Vec<f32> = (0..160_000).map(|i| odd[i * 7 % 6]).collect();
    assert!(ear.push(&sound).is_empty());
    assert!(ear.finish().0.is_empty());
}
