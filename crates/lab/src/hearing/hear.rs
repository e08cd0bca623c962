//! Runs the detector over a corpus.

use super::truth::{SoundFile, Truth};
use crate::error::{LabError, at, told};
use sayso_listen::{Candidate, Clip, Config, Detection, Detector, Enrolled, Pace, Weights, decode_file};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

/// What was heard in one sound.
pub(crate) struct HeardSound {
    pub(crate) heard: Vec<Detection>,
    /// Every candidate, where they were asked for.
    pub(crate) candidates: Vec<Candidate>,
}

/// Reads weights from a file; the shipped ones where none is named.
pub(crate) fn weights(file: Option<&PathBuf>) -> Result<Weights, LabError> {
    let Some(path) = file else { return Ok(Weights::shipped().clone()) };
    let text = std::fs::read_to_string(path).map_err(at(path))?;
    Weights::from_json(&text).map_err(|reason| LabError::Content { path: path.clone(), reason })
}

/// Hears every sound of a corpus, as a file is heard, several at a time; answers come in the corpus's order.
pub(crate) fn hear(
    corpus: &Path,
    truth: &Truth,
    weights: Weights,
    keep_candidates: bool,
) -> Result<Vec<HeardSound>, LabError> {
    let clips: Result<Vec<Clip>, _> =
        truth.clips.iter().map(|c| Clip::from_file(&c.word, &corpus.join(&c.file))).collect();
    let enrolled = Enrolled::with_weights(&clips.map_err(told)?, Pace::File, weights).map_err(told)?;
    let enrolled = Arc::new(enrolled);
    let next = AtomicUsize::new(0);
    let work = || {
        let mut done = Vec::new();
        while let Some((i, sound)) =
            Some(next.fetch_add(1, Ordering::Relaxed)).and_then(|i| Some((i, truth.sounds.get(i)?)))
        {
            done.push((i, one(corpus, sound, &enrolled, keep_candidates)));
        }
        done
    };
    let threads = std::thread::available_parallelism().map_or(1, usize::from).min(truth.sounds.len().max(1));
    let mut all = std::thread::scope(|scope| {
        let others: Vec<_> = (1..threads).map(|_| scope.spawn(work)).collect();
        let mut all = work();
        for other in others {
            match other.join() {
                Ok(done) => all.extend(done),
                Err(panic) => std::panic::resume_unwind(panic),
            }
        }
        all
    });
    all.sort_by_key(|(i, _)| *i);
    all.into_iter().map(|(_, heard)| heard).collect()
}

fn one(corpus: &Path, sound: &SoundFile, enrolled: &Arc<Enrolled>, keep: bool) -> Result<HeardSound, LabError> {
    let (mut detector, mut heard, mut wrong) = (None, Vec::new(), None);
    decode_file(&corpus.join(&sound.file), |block| {
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
    Ok(HeardSound { heard, candidates })
}
