//! The streaming engine: sound in, presses out.

use crate::clip::Clip;
use crate::coherence::{self, Wheel};
use crate::error::ListenError;
use crate::judge;
use crate::listener::Listener;
use crate::phases::Replays;
use crate::settle::Settler;
use crate::sinc::{RATE, Resampler};
use crate::sketch::{Bank, FASTEST, SLOWEST};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Confidence below which a candidate is usually not called a press.
pub(crate) const LEAST_CONFIDENCE: f64 = 0.55;

/// How sound arrives, and what is wanted of it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Config {
    /// Samples per second of each channel, 4 000 to 384 000.
    pub rate: u32,
    /// Channels, interleaved; they are averaged.
    pub channels: u16,
    /// Whether events must come soon (a microphone) or cheaply (a long file).
    pub pace: Pace,
    /// Events below this confidence are kept back.
    pub least_confidence: f64,
    /// Keep every candidate the first look proposes, for study; see [`Ear::take_glimpses`].
    pub keep_glimpses: bool,
}

/// Soon or cheap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Pace {
    /// Within half a second of the end of a clip of up to 3 s, 0.6 s for one of 4 s, at several times the cost.
    Live,
    /// Within some seconds.
    File,
}

impl Config {
    /// The usual settings for sound of this shape.
    pub fn new(rate: u32, channels: u16, pace: Pace) -> Self {
        Self { rate, channels, pace, least_confidence: LEAST_CONFIDENCE, keep_glimpses: false }
    }
}

/// A press that was heard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Heard {
    /// What the button says, as enrolled.
    pub word: String,
    /// Seconds from the start of the sound to the clip's first sample.
    pub onset_s: f64,
    /// Probability that this is a press of this word, 0 to 1.
    pub confidence: f64,
    /// Playback speed against the enrolled clip; 0.97 is 3 % slow.
    pub speed: f64,
    /// Level of the sound while the clip played, dB under full scale (root mean square, 8 kHz band).
    pub level_db: f64,
    /// Share of the clip that was heard before something cut it off, 0 to 1.
    pub share: f64,
}

/// A candidate and its evidence, heard or not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Glimpse {
    /// Index of the clip.
    pub word: usize,
    /// Seconds from the start of the sound.
    pub onset_s: f64,
    /// Speed of the best match.
    pub speed: f64,
    /// First look's score, in spreads above the usual.
    pub first_look: f64,
    /// Log odds from its own sound alone.
    pub log_odds: f64,
    /// Share of the clip that fitted best.
    pub share: f64,
    /// The figures the confidence is made of.
    pub figures: Vec<f64>,
}

/// What enrolled clips look like to the engine; shared by ears that work side by side.
pub struct Enrolled {
    pub(crate) words: Vec<String>,
    pub(crate) sounds: Vec<Vec<f32>>,
    pub(crate) bank: Bank,
    pub(crate) replays: Vec<Replays>,
    pub(crate) wheel: Wheel,
}

impl Enrolled {
    /// Prepares clips for listening.
    ///
    /// # Errors
    /// [`ListenError::NoClips`] without clips, [`ListenError::ClipLength`] when one is under 0.15 s or over 4 s.
    pub fn new(clips: &[Clip], pace: Pace) -> Result<Self, ListenError> {
        if clips.is_empty() {
            return Err(ListenError::NoClips);
        }
        for c in clips {
            if !(0.15..=4.0).contains(&c.seconds()) {
                return Err(ListenError::ClipLength { word: c.word().to_owned(), seconds: c.seconds() });
            }
        }
        let sounds: Vec<Vec<f32>> = clips.iter().map(Clip::at_engine_rate).collect();
        let replays: Vec<Replays> = sounds.iter().map(|x| coherence::prepare(x)).collect();
        Ok(Self {
            words: clips.iter().map(|c| c.word().to_owned()).collect(),
            bank: Bank::new(&sounds, pace == Pace::File),
            wheel: Wheel::new(&replays),
            replays,
            sounds,
        })
    }

    /// The enrolled words, in the order given.
    pub fn words(&self) -> &[String] {
        &self.words
    }

    pub(crate) fn longest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| judge::reach(x.len(), SLOWEST)).max().unwrap_or(0)
    }

    pub(crate) fn shortest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| judge::reach(x.len(), FASTEST)).min().unwrap_or(0)
    }
}

/// Listens to one stream.
pub struct Ear {
    enrolled: Arc<Enrolled>,
    config: Config,
    resampler: Resampler,
    partial: Vec<f32>,
    listener: Listener,
    settler: Settler,
    scratch: Vec<f32>,
}

impl Ear {
    /// An ear for these clips.
    ///
    /// # Errors
    /// As [`Enrolled::new`]; [`ListenError::Format`] when the rate or channel count is out of range.
    pub fn new(clips: &[Clip], config: Config) -> Result<Self, ListenError> {
        Self::with(Arc::new(Enrolled::new(clips, config.pace)?), config)
    }

    /// An ear for clips prepared before.
    ///
    /// # Errors
    /// [`ListenError::Format`] when the rate or channel count is out of range.
    pub fn with(enrolled: Arc<Enrolled>, config: Config) -> Result<Self, ListenError> {
        check_format(config.rate, config.channels)?;
        Ok(Self {
            listener: Listener::new(Arc::clone(&enrolled), 0, config.keep_glimpses),
            settler: Settler::new(enrolled.words.clone(), config.least_confidence),
            enrolled,
            resampler: Resampler::new(config.rate as usize),
            config,
            partial: Vec::new(),
            scratch: Vec::new(),
        })
    }

    /// The enrolled words.
    pub fn words(&self) -> &[String] {
        self.enrolled.words()
    }

    /// Takes interleaved samples (full scale 1.0), any number of them, and returns the presses now certain.
    ///
    /// Samples that are not finite count as silence.
    pub fn push(&mut self, samples: &[f32]) -> Vec<Heard> {
        let mut heard = Vec::new();
        for part in samples.chunks(1 << 15) {
            self.scratch.clear();
            mix_down(part, usize::from(self.config.channels), &mut self.partial, &mut self.scratch);
            let mut sound = Vec::with_capacity(self.scratch.len());
            self.resampler.push(&self.scratch, &mut sound);
            self.listener.push(&sound);
            self.settler.add(self.listener.take_verdicts());
            heard.extend(self.settler.settle(self.listener.certain()));
        }
        heard
    }

    /// Says that `frames` samples per channel were lost here, so that later onsets stay true.
    pub fn gap(&mut self, frames: u64) -> Vec<Heard> {
        let silence = vec![0.0f32; 1 << 14];
        let (mut heard, mut left) = (Vec::new(), frames * u64::from(self.config.channels));
        while left > 0 {
            let n = left.min(silence.len() as u64) as usize;
            heard.extend(self.push(&silence[..n]));
            left -= n as u64;
        }
        heard
    }

    /// Ends the stream and returns the last presses.
    pub fn finish(mut self) -> (Vec<Heard>, Vec<Glimpse>) {
        let mut sound = Vec::new();
        self.resampler.finish(&mut sound);
        self.listener.push(&sound);
        let end_s = self.position_s();
        self.listener.finish();
        self.settler.add(self.listener.take_verdicts());
        let mut heard = self.settler.settle(u64::MAX);
        heard.retain(|h| h.onset_s < end_s);
        (heard, std::mem::take(&mut self.listener.glimpses))
    }

    /// Seconds of sound taken so far.
    pub fn position_s(&self) -> f64 {
        self.listener.end() as f64 / RATE as f64
    }

    /// The candidates since the last call, if the configuration keeps them.
    pub fn take_glimpses(&mut self) -> Vec<Glimpse> {
        std::mem::take(&mut self.listener.glimpses)
    }
}

pub(crate) fn check_format(rate: u32, channels: u16) -> Result<(), ListenError> {
    if (4000..=384_000).contains(&rate) && (1..=32).contains(&channels) {
        Ok(())
    } else {
        Err(ListenError::Format { rate, channels })
    }
}

/// Averages channels; what is left of an incomplete frame waits in `partial`.
pub(crate) fn mix_down(samples: &[f32], channels: usize, partial: &mut Vec<f32>, out: &mut Vec<f32>) {
    let clean = |v: f32| if v.is_finite() { v.clamp(-8.0, 8.0) } else { 0.0 };
    if channels == 1 {
        out.extend(samples.iter().map(|v| clean(*v)));
        return;
    }
    let mut rest = samples;
    if !partial.is_empty() {
        let take = (channels - partial.len()).min(rest.len());
        partial.extend_from_slice(&rest[..take]);
        rest = &rest[take..];
        if partial.len() < channels {
            return;
        }
        out.push(partial.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32);
        partial.clear();
    }
    let frames = rest.chunks_exact(channels);
    partial.extend_from_slice(frames.remainder());
    out.extend(frames.map(|f| f.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32));
}
