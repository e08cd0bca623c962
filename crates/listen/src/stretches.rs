//! A stretch of sound cut at its pauses: what sounds, without the beep and the click in front, and how it stands out.

use crate::dsp::stft::Stft;
use crate::io::clip::Clip;
use serde::{Deserialize, Serialize};

/// Length of a frame whose level is looked at.
const FRAME_S: f64 = 0.01;
/// A pause shorter than this lies within a word ("all done"); people are asked to leave two seconds between buttons.
const PAUSE_S: f64 = 0.45;
/// What sounds shorter than this, alone, is a click or a knock.
const LEAST_S: f64 = 0.12;
/// Longest part in front of a word, apart from it, that is the click of the button itself.
const CLICK_S: f64 = 0.06;
/// Kept before and after what sounds, as far as there is only silence.
const EDGE_S: f64 = 0.08;
/// Share of frames taken for the room alone, from the quietest on.
const ROOM_SHARE: f64 = 0.1;
/// Decibels over the room at which something sounds.
const OVER_ROOM_DB: f64 = 9.0;
/// Decibels under the loudest frame at which nothing sounds any more: the room's echo of a loud word.
const UNDER_LOUDEST_DB: f64 = 36.0;
/// Decibels between room and loudest frame below which nothing stands out.
const STANDS_OUT_DB: f64 = 12.0;
/// A sound that stands out by less than this is quiet.
pub(crate) const QUIET_DB: f64 = 15.0;
/// Longer than a clip may be, or so much longer than its neighbours: two buttons without a pause.
const LONGEST_S: f64 = 4.0;
const LONGER_THAN_OTHERS: f64 = 2.2;
const LONG_S: f64 = 1.5;
/// A beep: one pitch above this, at which nearly all its energy lies, for at least so long.
const BEEP_HZ: f64 = 500.0;
const BEEP_SHARE: f64 = 0.8;
const BEEP_S: f64 = 0.06;
/// Level of frames without any sound, dB under full scale.
const SILENCE_DB: f64 = -100.0;

/// What sounds between two pauses. Positions are samples of the sound that was cut.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Stretch {
    /// Its first sample, a little silence before it included.
    pub from: usize,
    /// The sample after its last.
    pub to: usize,
    /// Level of what sounds, dB under full scale (root mean square of its frames).
    pub level_db: f64,
    /// How far that lies over the room, dB.
    pub over_room_db: f64,
    /// Whether a beep was cut off in front.
    pub beep: bool,
    /// Whether it hardly stands out.
    pub quiet: bool,
    /// Whether it is so long that two may have run together.
    pub long: bool,
}

/// A sound cut at its pauses.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Stretches {
    /// Level of the room, dB under full scale.
    pub room_db: f64,
    /// What sounds, in order; none where nothing stands out.
    pub sounds: Vec<Stretch>,
}

/// Cuts a sound at its pauses. Thresholds are our own choice (common practice, no source), held by the tests beside it.
#[must_use]
pub fn stretches(sound: &Clip) -> Stretches {
    let (x, rate) = (sound.samples(), f64::from(sound.rate()));
    let size = ((rate * FRAME_S) as usize).max(1);
    let levels: Vec<f64> = x.chunks_exact(size).map(level).collect();
    let mut sorted = levels.clone();
    sorted.sort_by(f64::total_cmp);
    let Some(loudest) = sorted.last().copied() else { return Stretches { room_db: SILENCE_DB, sounds: Vec::new() } };
    let room_db = sorted[(sorted.len() as f64 * ROOM_SHARE) as usize];
    if loudest - room_db < STANDS_OUT_DB {
        return Stretches { room_db, sounds: Vec::new() };
    }
    let floor = (room_db + OVER_ROOM_DB).max(loudest - UNDER_LOUDEST_DB);
    let frames = |s: f64| (s / FRAME_S).round() as usize;
    let (least, pause) = (frames(LEAST_S), frames(PAUSE_S));
    let mut sounds: Vec<Stretch> = Vec::new();
    for parts in grouped(&islands(&levels, floor), pause) {
        let parts = without_clicks(parts, frames(CLICK_S));
        let (Some(first), Some(last)) = (parts.first(), parts.last()) else { continue };
        let (begin, end) = (first.0, last.1);
        let beep_end = beep_end(x, begin * size, end * size, rate).map(|at| at.div_ceil(size));
        // What is left after the beep, where anything is.
        let after = beep_end.filter(|b| end.saturating_sub(*b) >= least);
        let begin = after.map_or(begin, |b| (b..end).find(|i| levels[*i] >= floor).unwrap_or(b));
        if end - begin < least {
            continue;
        }
        let level_db = mean_db(&levels[begin..end]);
        let earliest = after.unwrap_or(0) * size;
        let edge = (rate * EDGE_S) as usize;
        sounds.push(Stretch {
            from: (begin * size).saturating_sub(edge).max(earliest),
            to: (end * size + edge).min(x.len()),
            level_db,
            over_room_db: level_db - room_db,
            beep: after.is_some(),
            quiet: level_db - room_db < QUIET_DB,
            long: false,
        });
    }
    mark_long(&mut sounds, rate);
    Stretches { room_db, sounds }
}

fn level(frame: &[f32]) -> f64 {
    let power = frame.iter().map(|v| f64::from(v * v)).sum::<f64>() / frame.len().max(1) as f64;
    (10.0 * power.max(1e-12).log10()).max(SILENCE_DB)
}

/// Mean of the power, as a level.
pub(crate) fn mean_db(levels: &[f64]) -> f64 {
    let power = levels.iter().map(|l| 10f64.powf(l / 10.0)).sum::<f64>() / levels.len().max(1) as f64;
    (10.0 * power.max(1e-12).log10()).max(SILENCE_DB)
}

/// Runs of frames at or over the floor, each from and to.
fn islands(levels: &[f64], floor: f64) -> Vec<(usize, usize)> {
    let (mut all, mut begun) = (Vec::new(), None);
    for (i, sounds) in levels.iter().map(|l| *l >= floor).chain(std::iter::once(false)).enumerate() {
        match (begun, sounds) {
            (None, true) => begun = Some(i),
            (Some(from), false) => {
                all.push((from, i));
                begun = None;
            }
            _ => {}
        }
    }
    all
}

/// Islands that belong together: those with less than a pause between.
fn grouped(islands: &[(usize, usize)], pause: usize) -> Vec<&[(usize, usize)]> {
    islands.chunk_by(|a, b| b.0 - a.1 < pause).collect()
}

/// Without the clicks of the button in front and behind: short islands that stand apart from the word.
fn without_clicks(mut parts: &[(usize, usize)], most: usize) -> &[(usize, usize)] {
    let click = |a: (usize, usize), gap: usize| a.1 - a.0 <= most && gap > 2;
    while let [first, next, ..] = parts
        && click(*first, next.0 - first.1)
    {
        parts = &parts[1..];
    }
    while let [.., before, last] = parts
        && click(*last, last.0 - before.1)
    {
        parts = &parts[..parts.len() - 1];
    }
    parts
}

/// The sample after a beep that begins a stretch.
fn beep_end(x: &[f32], from: usize, to: usize, rate: f64) -> Option<usize> {
    // About 32 ms.
    let window = ((rate * 0.032) as usize).next_power_of_two().max(64);
    let (hop, bins) = (window / 4, window / 2);
    let mut spectra = Stft::new(window, 0, bins);
    let (mut re, mut im) = (vec![0.0f32; bins], vec![0.0f32; bins]);
    let (mut pitch, mut end) = (None, None);
    let mut at = from;
    while at + window <= to.min(x.len()) {
        spectra.frame(&x[at..at + window], &mut re, &mut im);
        let power: Vec<f64> = re.iter().zip(&im).map(|(a, b)| f64::from(a * a + b * b)).collect();
        let peak = (1..bins).max_by(|a, b| power[*a].total_cmp(&power[*b])).unwrap_or(1);
        let near: f64 = power[peak.saturating_sub(2)..(peak + 3).min(bins)].iter().sum();
        let all = power.iter().sum::<f64>().max(1e-12);
        let tonal = near / all >= BEEP_SHARE && peak as f64 * rate / window as f64 >= BEEP_HZ;
        let same = pitch.is_none_or(|p: usize| p.abs_diff(peak) <= 1);
        if !(tonal && same) {
            break;
        }
        pitch = Some(peak);
        end = Some(at + window);
        at += hop;
    }
    end.filter(|e| (e - from) as f64 >= BEEP_S * rate)
}

/// Marks what is too long for one word, or much longer than the middle one.
fn mark_long(sounds: &mut [Stretch], rate: f64) {
    let seconds = |s: &Stretch| (s.to - s.from) as f64 / rate;
    let mut all: Vec<f64> = sounds.iter().map(seconds).collect();
    all.sort_by(f64::total_cmp);
    let Some(middle) = all.get(all.len() / 2).copied() else { return };
    let several = all.len() > 2;
    for sound in sounds {
        let s = seconds(sound);
        sound.long = s > LONGEST_S || (several && s > LONG_S && s > LONGER_THAN_OTHERS * middle);
    }
}
