//! Files shorter than they say, longer than can be, and damaged: refused with what is missing, nothing heard of them.

use crate::common;

use crate::common::{RATE, say, scene};
use crate::encoded::{flac, mp3, ogg};
use proptest::prelude::*;
use sayso_listen::{
    Clip, Enrolled, FileHearing, ListenError, Pace, SoundInfo, Undecodable, decode_bytes, hear_file, wav,
};
use std::path::PathBuf;
use std::sync::Arc;

fn coded(name: &str) -> Vec<u8> {
    std::fs::read(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/coded").join(name)).unwrap()
}

fn plain() -> Vec<u8> {
    wav(say(1, 0).iter().map(|v| (v * 32767.0) as i16), RATE as u32)
}

/// What decoding said, and the blocks handed over before.
fn read(bytes: Vec<u8>) -> (Result<SoundInfo, ListenError>, usize) {
    let mut blocks = 0;
    let said = decode_bytes(bytes, |_| {
        blocks += 1;
        true
    });
    (said, blocks)
}

#[track_caller]
fn cut(name: &str, bytes: &[u8]) -> Undecodable {
    match read(bytes.to_vec()) {
        (Err(ListenError::Decode { reason, .. }), 0) => reason,
        other => panic!("{name} of {} bytes: {other:?}", bytes.len()),
    }
}

#[test]
fn a_file_cut_short_says_how_much_is_there_and_gives_nothing() {
    let sound = say(1, 0);
    let seconds = sound.len() as f64 / RATE as f64;
    for (name, bytes) in [
        ("wav", plain()),
        ("flac", flac(&sound, RATE as u32, 1)),
        ("aiff", coded("word.aiff")),
        ("caf", coded("word.caf")),
        ("adpcm", coded("word-ima.wav")),
        ("m4a", coded("word-first.m4a")),
        ("mp3", mp3(&sound, RATE as u32, 1, true)),
    ] {
        let (whole, blocks) = read(bytes.clone());
        assert!(whole.is_ok() && blocks > 0, "{name}: {whole:?}");
        for share in [0.3, 0.5, 0.9] {
            let from = bytes.len() as f64 * share;
            match cut(name, &bytes[..from as usize]) {
                Undecodable::CutShort { there_s, promised_s } => {
                    // Of what costs more where more is said, and counts whole frames, the share is near.
                    assert!((promised_s - seconds).abs() < 0.12, "{name}: {promised_s} of {seconds}");
                    assert!(
                        (there_s / promised_s - share).abs() < 0.35,
                        "{name} at {share}: {there_s} of {promised_s}"
                    );
                }
                // The table of contents of an MP4 takes the first third.
                Undecodable::PartMissing if name == "m4a" => {}
                other => panic!("{name} at {share}: {other:?}"),
            }
        }
        assert!(matches!(cut(name, &bytes[..bytes.len() - 3]), Undecodable::CutShort { .. }), "{name}: its last bytes");
        // Within its head.
        let said = cut(name, &bytes[..30]).to_string();
        assert!(!said.is_empty());
    }
    let bytes = plain();
    let said = cut("wav", &bytes[..44 + (RATE / 2) * 2]).to_string();
    assert!(said.contains("0.5 s of 0.9 s are there"), "{said}");
}

#[test]
fn a_table_of_contents_that_was_last_is_missed() {
    let bytes = coded("scene.m4a");
    for share in [0.2, 0.6, 0.97] {
        let said = cut("m4a", &bytes[..(bytes.len() as f64 * share) as usize]);
        assert_eq!(said, Undecodable::PartMissing);
    }
    let bytes = coded("scene.webm");
    match cut("webm", &bytes[..bytes.len() / 2]) {
        Undecodable::CutShort { there_s, promised_s } => {
            assert!((promised_s - 34.0).abs() < 0.1 && (there_s - 17.0).abs() < 1.0, "{there_s} of {promised_s}");
        }
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_length_that_is_not_known_is_no_promise() {
    let whole = plain();
    let frames = (whole.len() - 44) as u64 / 2;
    for (riff, data) in [
        (u32::MAX, u32::MAX),
        (0, 0),
        (0x7fff_f024, 0x7fff_f000),
        (0x8000_0024, 0x8000_0000),
        (u32::MAX, u32::MAX - 36),
    ] {
        let mut bytes = whole.clone();
        bytes[4..8].copy_from_slice(&riff.to_le_bytes());
        bytes[40..44].copy_from_slice(&data.to_le_bytes());
        let (said, _) = read(bytes);
        let info = said.unwrap_or_else(|e| panic!("{riff:#x}: {e}"));
        assert_eq!((info.frames, info.damaged), (frames, 0), "{riff:#x}");
    }
    // Neither Ogg nor MP3 without a first frame that tells says how long it is.
    let (sound, _) = scene(0.004);
    for bytes in [ogg(&sound, RATE as u32, 1), mp3(&sound, RATE as u32, 1, false), coded("scene.opus")] {
        let (said, _) = read(bytes[..bytes.len() * 3 / 4].to_vec());
        assert!(said.unwrap().frames > 0);
    }
}

#[test]
fn nothing_is_heard_of_a_file_cut_short_and_a_clip_of_it_is_refused() {
    let (sound, _) = scene(0.004);
    let file = wav(sound.iter().map(|v| (v * 32767.0) as i16), RATE as u32);
    let path = std::env::temp_dir().join(format!("sayso-cut-{}.wav", std::process::id()));
    std::fs::write(&path, &file[..file.len() * 9 / 10]).unwrap();
    let enrolled = Arc::new(Enrolled::new(&common::clips(2), Pace::File).unwrap());
    let mut news = 0;
    let said = hear_file(&path, &enrolled, &FileHearing::default(), |_| {
        news += 1;
        true
    });
    std::fs::remove_file(&path).unwrap();
    let said = said.unwrap_err().to_string();
    assert!(news == 0 && said.contains("30.6 s of 34.0 s are there"), "{said}");
    assert!(Clip::from_bytes("one", plain()[..9000].to_vec()).is_err());
}

#[test]
fn a_header_that_claims_hours_takes_no_memory() {
    // Claims 2 GB of 384 channels at the highest rate, holds a hundred bytes.
    let mut bytes = plain()[..144].to_vec();
    bytes[4..8].copy_from_slice(&0x7ff0_0024_u32.to_le_bytes());
    bytes[40..44].copy_from_slice(&0x7ff0_0000_u32.to_le_bytes());
    assert!(matches!(cut("wav", &bytes), Undecodable::CutShort { .. }));
    bytes[22..24].copy_from_slice(&384_u16.to_le_bytes());
    assert!(read(bytes.clone()).0.is_err());
    bytes[40..44].copy_from_slice(&u32::MAX.to_le_bytes());
    assert!(read(bytes).0.is_err());
    // A rate beyond all recorders, so that no minute of it is held.
    let mut bytes = plain();
    bytes[24..28].copy_from_slice(&u32::MAX.to_le_bytes());
    assert!(matches!(read(bytes).0, Err(ListenError::Format { .. })));
}

const KINDS: [&str; 11] = [
    "word.aiff",
    "word.caf",
    "word.flac",
    "word.aac",
    "word-lossless.m4a",
    "word-ms.wav",
    "word-ima.wav",
    "word-ima.caf",
    "word-first.m4a",
    "scene.opus",
    "scene.webm",
];

proptest! {
    #![proptest_config(ProptestConfig::with_cases(256))]

    #[test]
    fn damaged_files_of_every_kind_are_refused_or_read_without_panic(
        kind in 0..KINDS.len(),
        // Most changes hit the head, where lengths and counts stand.
        changes in proptest::collection::vec((0usize..1200, any::<u8>()), 0..6),
        end in 0usize..20_000,
    ) {
        let mut bytes = coded(KINDS[kind]);
        bytes.truncate(end.max(1));
        for (at, value) in changes {
            if let Some(byte) = bytes.get_mut(at) {
                *byte = value;
            }
        }
        let mut values = 0usize;
        match decode_bytes(bytes, |b| { values += b.samples.len(); values < 1 << 22 }) {
            Ok(info) => prop_assert!(info.rate > 0 && info.channels > 0 && info.frames > 0),
            Err(e) => prop_assert!(!e.to_string().is_empty()),
        }
    }

    #[test]
    fn rubbish_after_the_head_of_any_container_is_refused_without_panic(
        bytes in proptest::collection::vec(any::<u8>(), 0..2048), head in 0usize..6,
    ) {
        let heads: [&[u8]; 6] = [
            b"FORM\x00\x00\x08\x00AIFFCOMM\x00\x00\x00\x12", b"caff\x00\x01\x00\x00desc\x00\x00\x00\x00\x00\x00\x00\x20",
            b"\x00\x00\x00\x18ftypM4A \x00\x00\x00\x00M4A mp42\x00\x00\x04\x00moov", b"\x1a\x45\xdf\xa3\x9f\x42\x86\x81\x01",
            b"RIFF\x24\x00\x00\x00WAVEfmt \x14\x00\x00\x00\x11\x00\x01\x00", b"OggS\x00\x02\x00\x00\x00\x00\x00\x00\x00\x00",
        ];
        let mut all = heads[head].to_vec();
        all.extend(bytes);
        let mut values = 0usize;
        let said = decode_bytes(all, |b| { values += b.samples.len(); values < 1 << 22 });
        prop_assert!(said.map_or_else(|e| !e.to_string().is_empty(), |info| info.frames > 0));
    }
}
