//! The proof of a recording: the button is pressed once more, and it is said whether the ear takes that for its word,
//! and if not, why.

use crate::detection::Detection;
use crate::detector::{Config, Detector};
use crate::dsp::resampler::RATE;
use crate::enrolled::{Enrolled, Pace};
use crate::error::ListenError;
use crate::io::clip::Clip;
use crate::speeds::Speeds;
use crate::stretches::{QUIET_DB, stretches};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Confidence from which a press is heard surely; below it a person is asked whether it sounded at all.
pub const SURE: f64 = 0.9;
/// Decibels by which a press may be weaker than its recording; twice the distance is about 6 dB less (our own choice).
const FAR_DB: f64 = 20.0;
/// How much faster the sound is played to look for a replay at another speed; with every speed the engine can listen for,
/// together 0.76 to 1.28 of the recorded one.
const FACTORS: [f64; 3] = [1.0, 1.19, 0.845];
/// Silence before and after the press, for the engine to know the room.
const AROUND_S: f64 = 0.7;

/// What the ear got of the press.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Evidence {
    /// Level of the loudest thing that sounded, dB under full scale, and how far it lay over the room; none where nothing
    /// stood out.
    pub sounded: Option<(f64, f64)>,
    /// Level of the recording, dB under full scale.
    pub recorded_db: f64,
    /// The word heard best: whether it is the one to be proved, its name, confidence and speed.
    pub heard: Option<HeardAs>,
    /// Speed at which the recording fits beyond those listened for.
    pub other_speed: Option<f64>,
}

/// A word as it was heard.
#[derive(Debug, Clone, PartialEq)]
pub struct HeardAs {
    /// Whether it is the word to be proved.
    pub own: bool,
    /// The word, as enrolled.
    pub word: String,
    /// How surely, 0 to 1.
    pub confidence: f64,
    /// Speed against the recording.
    pub speed: f64,
}

/// What came of the proof, with what it rests on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "outcome", rename_all = "snake_case")]
#[non_exhaustive]
pub enum Proof {
    /// Heard surely as its word.
    Heard {
        /// How surely, 0 to 1.
        confidence: f64,
        /// Speed against the recording.
        speed: f64,
    },
    /// Heard as its word, not surely, though it was loud and near enough.
    Unsure {
        /// How surely, 0 to 1.
        confidence: f64,
    },
    /// Nothing stood out of the room.
    Nothing,
    /// It hardly stood out of the room.
    TooQuiet {
        /// By how much, dB.
        over_room_db: f64,
    },
    /// Much weaker than the recording.
    TooFar {
        /// By how much, dB.
        below_db: f64,
    },
    /// The recording, at a speed that is not listened for.
    WrongSpeed {
        /// Speed against the recording.
        speed: f64,
    },
    /// Heard as another word.
    AnotherWord {
        /// That word, as enrolled.
        word: String,
        /// How surely, 0 to 1.
        confidence: f64,
    },
    /// Loud and near enough, and no word that is known.
    AnotherSound,
}

/// What came of a proof, from what the ear got.
#[must_use]
pub fn outcome(of: &Evidence) -> Proof {
    let weak = || {
        let (level_db, over_room_db) = of.sounded?;
        let below_db = of.recorded_db - level_db;
        match () {
            () if over_room_db < QUIET_DB => Some(Proof::TooQuiet { over_room_db }),
            () if below_db > FAR_DB => Some(Proof::TooFar { below_db }),
            () => None,
        }
    };
    match &of.heard {
        Some(h) if h.own && h.confidence >= SURE => Proof::Heard { confidence: h.confidence, speed: h.speed },
        Some(h) if h.own => weak().unwrap_or(Proof::Unsure { confidence: h.confidence }),
        Some(h) => Proof::AnotherWord { word: h.word.clone(), confidence: h.confidence },
        None => match (of.other_speed, of.sounded) {
            (Some(speed), _) => Proof::WrongSpeed { speed },
            (None, None) => Proof::Nothing,
            (None, Some(_)) => weak().unwrap_or(Proof::AnotherSound),
        },
    }
}

/// Hears a sound in which the button of `word` was pressed once, and says what came of it.
///
/// # Errors
/// [`ListenError::NoClips`] where no clip of that word is enrolled, [`ListenError::Format`].
pub fn prove(enrolled: &Arc<Enrolled>, word: &str, sound: &Clip) -> Result<Proof, ListenError> {
    let own: Vec<&Vec<f32>> =
        enrolled.words.iter().zip(&enrolled.sounds).filter(|(w, _)| *w == word).map(|(_, x)| x).collect();
    let Some(first) = own.first() else { return Err(ListenError::NoClips) };
    let level = |x: &[f32]| loudest(&Clip::from_samples(word, x.to_vec(), RATE as u32).ok()?).map(|(l, _)| l);
    let recorded_db = own.iter().filter_map(|x| level(x)).fold(f64::NEG_INFINITY, f64::max);
    // A recording without any pause has no room to stand out of: its level as a whole.
    let recorded_db = if recorded_db.is_finite() { recorded_db } else { root_mean_square_db(first) };
    let best = listened(enrolled, sound, f64::from(sound.rate()))?;
    let heard = best.map(|d| HeardAs { own: d.word == word, word: d.word, confidence: d.confidence, speed: d.speed });
    let sounded = loudest(sound);
    let other_speed = match (&heard, sounded) {
        (None, Some(_)) => at_other_speeds(enrolled, word, sound)?,
        _ => None,
    };
    Ok(outcome(&Evidence { sounded, recorded_db, heard, other_speed }))
}

/// Level and height over the room of the loudest thing that sounds.
fn loudest(sound: &Clip) -> Option<(f64, f64)> {
    let all = stretches(sound).sounds;
    all.iter().map(|s| (s.level_db, s.over_room_db)).max_by(|a, b| a.0.total_cmp(&b.0))
}

fn root_mean_square_db(x: &[f32]) -> f64 {
    let power = x.iter().map(|v| f64::from(v * v)).sum::<f64>() / x.len().max(1) as f64;
    10.0 * power.max(1e-12).log10()
}

/// The press heard most surely in a sound taken to have so many samples a second.
fn listened(enrolled: &Arc<Enrolled>, sound: &Clip, rate: f64) -> Result<Option<Detection>, ListenError> {
    let config = Config::new(rate.round() as u32, 1, Pace::File);
    let mut ear = Detector::with(Arc::clone(enrolled), config)?;
    let quiet = vec![0.0; (AROUND_S * rate) as usize];
    let mut heard = ear.push(&quiet);
    heard.extend(ear.push(sound.samples()));
    heard.extend(ear.push(&quiet));
    heard.extend(ear.finish().0);
    Ok(heard.into_iter().max_by(|a, b| a.confidence.total_cmp(&b.confidence)))
}

/// The speed at which the word's recording is in the sound, among those the engine does not look at.
fn at_other_speeds(enrolled: &Arc<Enrolled>, word: &str, sound: &Clip) -> Result<Option<f64>, ListenError> {
    let mut clips = Vec::new();
    for (_, x) in enrolled.words.iter().zip(&enrolled.sounds).filter(|(w, _)| *w == word) {
        clips.push(Clip::from_samples(word, x.clone(), RATE as u32)?.at_speeds(Speeds::WIDE));
    }
    let alone = Arc::new(Enrolled::with_weights(&clips, Pace::File, enrolled.weights.clone())?);
    let mut best: Option<(f64, f64)> = None;
    for factor in FACTORS {
        let Some(d) = listened(&alone, sound, f64::from(sound.rate()) * factor)? else { continue };
        if best.is_none_or(|(sure, _)| d.confidence > sure) {
            best = Some((d.confidence, d.speed / factor));
        }
    }
    Ok(best.map(|(_, speed)| speed))
}
