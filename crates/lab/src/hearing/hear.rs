//! Runs the detector over a corpus.

use super::scenes::signal::RATE;
use super::truth::{SoundFile, Truth};
use crate::error::{LabError, at, told};
use crate::work::side_by_side;
use sayso_listen::{
    Candidate, Clip, Config, Detection, Detector, Enrolled, ListenError, Pace, Speeds, Weights, decode_file,
};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// What was heard in one sound.
pub(crate) struct HeardSound {
    pub(crate) heard: Vec<Detection>,
    /// Every candidate, where they were asked for.
    pub(crate) candidates: Vec<Candidate>,
    /// How long it is.
    pub(crate) seconds: f64,
}

/// Reads weights from a file; the shipped ones where none is named.
pub(crate) fn weights(file: Option<&PathBuf>) -> Result<Weights, LabError> {
    let Some(path) = file else { return Ok(Weights::shipped().clone()) };
    let text = std::fs::read_to_string(path).map_err(at(path))?;
    Weights::from_json(&text).map_err(|reason| LabError::Content { path: path.clone(), reason })
}

/// Hears a sound held in memory, as a file is heard.
pub(crate) fn hear_samples(
    samples: &[f32],
    rate: u32,
    enrolled: &Arc<Enrolled>,
) -> Result<Vec<Detection>, ListenError> {
    let mut detector = Detector::with(Arc::clone(enrolled), Config::new(rate, 1, Pace::File))?;
    let mut heard = detector.push(samples);
    heard.extend(detector.finish().0);
    Ok(heard)
}

/// Hears sound just made.
pub(crate) fn hear_made(samples: &[f32], enrolled: &Arc<Enrolled>) -> Result<Vec<Detection>, LabError> {
    hear_samples(samples, RATE as u32, enrolled).map_err(told)
}

/// The clips, each listened for around the speeds it has in this sound, as one who has long heard the buttons would; those that
/// are not pressed in it as usual.
fn at_own_speeds(clips: &[Clip], sound: &SoundFile) -> Vec<Clip> {
    let own = |clip: &Clip| {
        let speeds = || sound.presses.iter().filter(|p| p.word == clip.word()).map(|p| p.speed);
        let (low, high) = (speeds().fold(f64::INFINITY, f64::min), speeds().fold(f64::NEG_INFINITY, f64::max));
        let width = 0.5 * (high - low) + Speeds::LEAST_WIDTH;
        if low <= high { Speeds::around(0.5 * (low + high), width) } else { Speeds::USUAL }
    };
    clips.iter().map(|clip| clip.clone().at_speeds(own(clip))).collect()
}

/// Hears every sound of a corpus, as a file is heard, several at a time; answers come in the corpus's order.
pub(crate) fn hear(
    corpus: &Path,
    truth: &Truth,
    weights: Weights,
    keep_candidates: bool,
    speeds_known: bool,
) -> Result<Vec<HeardSound>, LabError> {
    let clips: Result<Vec<Clip>, _> =
        truth.clips.iter().map(|c| Clip::from_file(&c.word, &corpus.join(&c.file))).collect();
    let clips = clips.map_err(told)?;
    let enrol = |clips: &[Clip]| Enrolled::with_weights(clips, Pace::File, weights.clone()).map(Arc::new).map_err(told);
    let enrolled = enrol(&clips)?;
    let hear = |i: usize| {
        let sound = &truth.sounds[i];
        let enrolled = if speeds_known { enrol(&at_own_speeds(&clips, sound))? } else { Arc::clone(&enrolled) };
        one(corpus, sound, &enrolled, keep_candidates)
    };
    let answers = side_by_side(truth.sounds.len(), |i, _| hear(i));
    answers.into_iter().collect()
}

fn one(corpus: &Path, sound: &SoundFile, enrolled: &Arc<Enrolled>, keep: bool) -> Result<HeardSound, LabError> {
    hear_file(&corpus.join(&sound.file), enrolled, keep)
}

/// Hears a sound file.
pub(crate) fn hear_file(path: &Path, enrolled: &Arc<Enrolled>, keep: bool) -> Result<HeardSound, LabError> {
    let (mut detector, mut heard, mut wrong) = (None, Vec::new(), None);
    let mut seconds = 0.0;
    decode_file(path, |block| {
        seconds += block.samples.len() as f64 / f64::from(block.channels) / f64::from(block.rate);
        if detector.is_none() {
            let mut config = Config::new(block.rate, block.channels, Pace::File);
            config.keep_candidates = keep;
            match Detector::with(Arc::clone(enrolled), config) {
                Ok(made) => detector = Some(made),
                Err(e) => wrong = Some(e),
            }
        }
        if let Some(detector) = &mut detector {
            heard.extend(detector.push(block.samples));
        }
        wrong.is_none()
    })
    .map_err(told)?;
    if let Some(e) = wrong {
        return Err(told(e));
    }
    let (last, candidates) = detector.map(Detector::finish).unwrap_or_default();
    heard.extend(last);
    Ok(HeardSound { heard, candidates, seconds })
}
