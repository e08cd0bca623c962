//! The streaming engine: sound in, presses out.

use crate::decide::decider::Decider;
use crate::detection::{Candidate, Detection, LEAST_CONFIDENCE, by_onset};
use crate::dsp::resampler::{RATE, Resampler};
use crate::enrolled::{Enrolled, Pace};
use crate::error::ListenError;
use crate::io::clip::Clip;
use crate::io::downmix::{check_format, mix_down};
use crate::pipeline::Pipeline;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

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
    /// Look at every candidate of the first look to the end and keep its evidence, for study (slow); see
    /// [`Detector::finish`]. What is heard stays the same.
    pub keep_candidates: bool,
}

impl Config {
    /// The usual settings for sound of this shape.
    pub fn new(rate: u32, channels: u16, pace: Pace) -> Self {
        Self { rate, channels, pace, least_confidence: LEAST_CONFIDENCE, keep_candidates: false }
    }
}

/// Listens to one stream.
pub struct Detector {
    enrolled: Arc<Enrolled>,
    config: Config,
    resampler: Resampler,
    partial: Vec<f32>,
    pipeline: Pipeline,
    decider: Decider,
    scratch: Vec<f32>,
}

impl Detector {
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
            pipeline: Pipeline::new(Arc::clone(&enrolled), 0, config.keep_candidates),
            decider: Decider::new(enrolled.words.len(), config.least_confidence),
            enrolled,
            resampler: Resampler::new(config.rate as usize),
            config,
            partial: Vec::new(),
            scratch: Vec::new(),
        })
    }

    /// What the enrolled clips say.
    pub fn words(&self) -> &[String] {
        self.enrolled.words()
    }

    /// Takes interleaved samples (full scale 1.0), any number of them, and returns the presses now certain, in order of
    /// onset. One that was unsure may come up to two minutes late, once others show that the board is in use.
    ///
    /// Samples that are not finite count as silence.
    pub fn push(&mut self, samples: &[f32]) -> Vec<Detection> {
        let mut heard = Vec::new();
        for part in samples.chunks(1 << 15) {
            self.scratch.clear();
            mix_down(part, usize::from(self.config.channels), &mut self.partial, &mut self.scratch);
            let mut sound = Vec::with_capacity(self.scratch.len());
            self.resampler.push(&self.scratch, &mut sound);
            self.pipeline.push(&sound);
            self.decider.add(self.pipeline.take_hypotheses());
            heard.extend(self.decider.decide_up_to(self.pipeline.certain(), &self.enrolled));
        }
        by_onset(&mut heard);
        heard
    }

    /// Says that `frames` samples per channel were lost here, so that later onsets stay true.
    pub fn gap(&mut self, frames: u64) -> Vec<Detection> {
        let silence = vec![0.0f32; 1 << 14];
        let (mut heard, mut left) = (Vec::new(), frames * u64::from(self.config.channels));
        while left > 0 {
            let n = left.min(silence.len() as u64) as usize;
            heard.extend(self.push(&silence[..n]));
            left -= n as u64;
        }
        by_onset(&mut heard);
        heard
    }

    /// Ends the stream and returns the last presses.
    pub fn finish(mut self) -> (Vec<Detection>, Vec<Candidate>) {
        let mut sound = Vec::new();
        self.resampler.finish(&mut sound);
        self.pipeline.push(&sound);
        let end_s = self.position_s();
        self.pipeline.finish();
        self.decider.add(self.pipeline.take_hypotheses());
        let mut heard = self.decider.decide_up_to(u64::MAX, &self.enrolled);
        heard.retain(|h| h.onset_s < end_s);
        (heard, std::mem::take(&mut self.pipeline.candidates))
    }

    /// Seconds of sound taken so far.
    pub fn position_s(&self) -> f64 {
        self.pipeline.end() as f64 / RATE as f64
    }
}
