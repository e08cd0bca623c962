//! A clip: what one button says, as recorded on it.

use crate::dsp::resampler;
use crate::error::ListenError;
#[cfg(feature = "files")]
use std::path::Path;

/// One word's recording, mono.
#[derive(Debug, Clone, PartialEq)]
pub struct Clip {
    word: String,
    samples: Vec<f32>,
    rate: u32,
}

impl Clip {
    /// A clip from mono samples (full scale 1.0) at `rate` samples a second.
    ///
    /// # Errors
    /// [`ListenError::Format`] for a rate outside 4 000 to 384 000, [`ListenError::Silent`] when nothing sounds.
    pub fn from_samples(word: impl Into<String>, samples: Vec<f32>, rate: u32) -> Result<Self, ListenError> {
        let word = word.into();
        if !(4000..=384_000).contains(&rate) {
            return Err(ListenError::Format { rate, channels: 1 });
        }
        if !samples.iter().any(|v| v.is_finite() && v.abs() > 1e-5) {
            return Err(ListenError::Silent { word });
        }
        let samples = samples.into_iter().map(|v| if v.is_finite() { v } else { 0.0 }).collect();
        Ok(Self { word, samples, rate })
    }

    /// A clip from a sound file (WAV, FLAC, Ogg Vorbis or MP3).
    ///
    /// # Errors
    /// As [`crate::decode_file`] and [`Clip::from_samples`].
    #[cfg(feature = "files")]
    pub fn from_file(word: impl Into<String>, path: &Path) -> Result<Self, ListenError> {
        let mut samples = Vec::new();
        let info = crate::io::decode::decode_file(path, |sound| {
            let mut partial = Vec::new();
            crate::io::downmix::mix_down(sound.samples, usize::from(sound.channels), &mut partial, &mut samples);
            samples.len() < 60 * sound.rate as usize
        })?;
        Self::from_samples(word, samples, info.rate)
    }

    /// What the button says.
    pub fn word(&self) -> &str {
        &self.word
    }

    /// The samples.
    pub fn samples(&self) -> &[f32] {
        &self.samples
    }

    /// Samples per second.
    pub fn rate(&self) -> u32 {
        self.rate
    }

    /// Length in seconds.
    pub fn seconds(&self) -> f64 {
        self.samples.len() as f64 / f64::from(self.rate)
    }

    /// The same sound as the engine hears it: at its own rate, which another engine takes as it is.
    #[must_use]
    pub fn brought_to_engine_rate(&self) -> Self {
        Self { word: self.word.clone(), samples: self.at_engine_rate(), rate: resampler::RATE as u32 }
    }

    pub(crate) fn at_engine_rate(&self) -> Vec<f32> {
        resampler::to_engine_rate(&self.samples, self.rate as usize)
    }
}
