//! Streams that are not perfect: clocks that drift, blocks lost or sent twice, rubbish, damaged files.

use crate::common::{RATE, add, bed, clips, replay, room, say};
use crate::encoded::{flac, mp3, ogg};
use proptest::prelude::*;
use sayso_listen::{Config, Detection, Detector, Enrolled, ListenError, Pace, PcmFormat, PcmReader, decode_bytes};
use std::sync::{Arc, OnceLock};

fn enrolled() -> Arc<Enrolled> {
    static CLIPS: OnceLock<Arc<Enrolled>> = OnceLock::new();
    Arc::clone(CLIPS.get_or_init(|| Arc::new(Enrolled::new(&clips(6), Pace::Live).unwrap())))
}

fn ear(rate: u32, channels: u16) -> Detector {
    Detector::with(enrolled(), Config::new(rate, channels, Pace::Live)).unwrap()
}

/// Sound, and word, onset, end and speed of each press.
type Minutes = (Vec<f32>, Vec<(u64, f64, f64, f64)>);

/// Three minutes, a press every six seconds or so.
fn minutes() -> &'static Minutes {
    static SOUND: OnceLock<Minutes> = OnceLock::new();
    SOUND.get_or_init(|| {
        let (mut sound, mut truth) = (bed(180, 0.004, 17), Vec::new());
        for i in 0..29u32 {
            let (w, at) = (u64::from(i * 5 % 6), 2.0 + 6.0 * f64::from(i) + 0.37 * f64::from(i % 3));
            let speed = 0.98 + 0.008 * f64::from(i * 5 % 6);
            let x = replay(&say(w, 0), speed);
            add(&mut sound, &room(&x, 0.35, 9), at, 0.3);
            truth.push((w, at, at + x.len() as f64 / RATE as f64, speed));
        }
        (sound, truth)
    })
}

fn has(heard: &[Detection], w: u64, at: f64) -> Option<&Detection> {
    heard.iter().find(|h| h.word == format!("word {w}") && (h.onset_s - at).abs() < 0.03)
}

#[test]
fn a_clock_that_runs_off_by_200_parts_in_a_million_is_followed() {
    let (sound, truth) = minutes();
    for clock in [1.0002, 0.9998] {
        let mut ear = ear(RATE as u32, 1);
        let mut heard: Vec<Detection> = replay(sound, clock).chunks(320).flat_map(|b| ear.push(b)).collect();
        heard.extend(ear.finish().0);
        for (w, at, _, speed) in truth {
            // At the end of three minutes the clocks are 36 ms apart: onsets are those of the stream's own.
            let found = has(&heard, *w, at / clock).unwrap_or_else(|| panic!("word {w} at {at}: {heard:#?}"));
            assert!((found.speed - speed * clock).abs() < 0.002, "{found:?} {speed}");
        }
        assert_eq!(heard.len(), truth.len());
    }
}

/// What becomes of a block of a tenth of a second.
#[derive(Clone, Copy, PartialEq)]
enum Fate {
    Lost,
    LostAndTold,
    Twice,
}

/// Pushes the three minutes with some blocks lost or sent twice. Every press that lies wholly in sound that came in order
/// must be heard where the stream has it; returns how many these were, and the number heard that are no press.
fn disturbed(fate: Fate, every: usize, length: usize) -> (usize, usize) {
    let (sound, truth) = minutes();
    let hit = |block: usize| block % every >= every - length;
    let (mut ear, mut heard, mut shift, mut starts) = (ear(RATE as u32, 1), Vec::new(), 0i64, Vec::new());
    for (i, block) in sound.chunks(RATE / 10).enumerate() {
        starts.push(shift);
        match fate {
            _ if !hit(i) => heard.extend(ear.push(block)),
            Fate::Lost => shift -= block.len() as i64,
            Fate::LostAndTold => heard.extend(ear.gap(block.len() as u64)),
            Fate::Twice => {
                heard.extend(ear.push(block));
                heard.extend(ear.push(block));
                shift += block.len() as i64;
            }
        }
    }
    heard.extend(ear.finish().0);
    let block_of = |s: f64| (10.0 * s) as usize;
    let (mut whole, mut matched) = (0, 0);
    for (w, at, end, _) in truth {
        // A tenth of a second around it as well: the engine looks at what surrounds a press.
        let around = block_of(at - 0.1)..=block_of(end + 0.1).min(starts.len() - 1);
        let true_at = at + starts[*around.start()] as f64 / RATE as f64;
        let found = has(&heard, *w, true_at);
        if around.clone().all(|b| !hit(b)) {
            whole += 1;
            assert!(found.is_some(), "word {w} at {true_at} after {shift} samples: {heard:#?}");
        }
        let near = |h: &&Detection| h.word == format!("word {w}") && (h.onset_s - true_at).abs() < 1.0;
        matched += heard.iter().filter(near).count();
    }
    (whole, heard.len() - matched)
}

#[test]
fn presses_after_lost_blocks_are_heard() {
    let (whole, strange) = disturbed(Fate::Lost, 37, 4);
    assert!(whole >= 12 && strange == 0, "{whole} whole presses, {strange} strange");
}

#[test]
fn lost_blocks_that_are_told_keep_later_onsets_true() {
    let (whole, strange) = disturbed(Fate::LostAndTold, 37, 4);
    assert!(whole >= 12 && strange == 0, "{whole} whole presses, {strange} strange");
}

#[test]
fn blocks_sent_twice_disturb_only_what_they_hit() {
    let (whole, strange) = disturbed(Fate::Twice, 37, 2);
    assert!(whole >= 12 && strange == 0, "{whole} whole presses, {strange} strange");
}

/// A second of a word in each format that is coded.
fn files() -> &'static [Vec<u8>; 4] {
    static FILES: OnceLock<[Vec<u8>; 4]> = OnceLock::new();
    FILES.get_or_init(|| {
        let mut x = say(1, 0);
        x.resize(RATE, 0.0);
        [
            flac(&x, RATE as u32, 1),
            ogg(&x, RATE as u32, 1),
            mp3(&x, RATE as u32, 1, true),
            mp3(&x, RATE as u32, 1, false),
        ]
    })
}

/// Decodes at most some minutes; what it says where it refuses.
fn read(bytes: Vec<u8>) -> Result<Vec<f32>, ListenError> {
    let mut sound = Vec::new();
    let info = decode_bytes(bytes, |b| {
        sound.extend_from_slice(b.samples);
        sound.len() < 1 << 22
    });
    match info {
        Ok(info) => {
            assert!(info.rate > 0 && info.channels > 0, "{info:?}");
            Ok(sound)
        }
        Err(e) => Err(e),
    }
}

#[test]
fn a_file_cut_off_anywhere_is_refused_in_words_or_read_as_far_as_it_goes() {
    for (i, file) in files().iter().enumerate() {
        let whole = read(file.clone()).unwrap().len();
        let mut longest = 0;
        // FLAC tells its frames, this MP3's first frame its bytes: less is refused. Ogg and bare MP3 promise nothing.
        let promises = [true, false, true, false][i];
        for end in (0..file.len()).step_by(1 + file.len() / 150) {
            match read(file[..end].to_vec()) {
                Ok(sound) => longest = longest.max(sound.len()),
                Err(e) => assert!(matches!(e, ListenError::Decode { name: None, .. }), "{e}"),
            }
        }
        let as_wanted = if promises { longest == 0 } else { longest > whole / 2 && longest <= whole };
        assert!(as_wanted, "file {i}: {longest} of {whole}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn flipped_bits_never_panic(file in 0usize..4, flips in prop::collection::vec((any::<prop::sample::Index>(), 0u8..8), 1..6), head in any::<bool>()) {
        let mut bytes = files()[file].clone();
        let reach = if head { 128.min(bytes.len()) } else { bytes.len() };
        for (at, bit) in flips {
            bytes[at.index(reach)] ^= 1 << bit;
        }
        if let Err(e) = read(bytes) {
            prop_assert!(matches!(e, ListenError::Decode { name: None, .. }), "{}", e);
        }
    }

    #[test]
    fn rubbish_behind_a_true_header_holds_no_press(file in 0usize..4, rubbish in prop::collection::vec(any::<u8>(), 20_000), keep in 40usize..4000) {
        let mut bytes = files()[file].clone();
        // What stands before is less than half of the word.
        bytes.truncate(keep.min(bytes.len() / 4));
        bytes.extend(rubbish);
        if let Ok(sound) = read(bytes) {
            let mut ear = ear(RATE as u32, 1);
            let mut heard = ear.push(&sound);
            heard.extend(ear.finish().0);
            prop_assert!(heard.is_empty(), "{:?}", heard);
        }
    }
}

proptest! {
    // Each case is some seconds of full-scale noise, the dearest sound there is.
    #![proptest_config(ProptestConfig::with_cases(16))]

    #[test]
    fn a_stream_of_rubbish_holds_no_press(seed in any::<u64>(), float in any::<bool>(), block in 1usize..9000, rate in prop::sample::select(vec![4000u32, 8000, 16_000, 44_100]), channels in 1u16..4) {
        let mut state = seed | 1;
        let bytes: Vec<u8> = (0..120_000)
            .map(|_| {
                state ^= state << 13;
                state ^= state >> 7;
                state ^= state << 17;
                (state >> 32) as u8
            })
            .collect();
        let mut reader = PcmReader::new(if float { PcmFormat::F32Le } else { PcmFormat::S16Le });
        let (mut ear, mut heard, mut samples) = (ear(rate, channels), Vec::new(), Vec::new());
        for part in bytes.chunks(block) {
            samples.clear();
            reader.push(part, &mut samples);
            heard.extend(ear.push(&samples));
        }
        heard.extend(ear.finish().0);
        prop_assert!(heard.is_empty(), "{:?}", heard);
    }
}
