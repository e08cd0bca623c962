//! A clip: what one button says, as recorded on it.

use crate::dsp::resampler;
use crate::error::ListenError;
#[cfg(feature = "files")]
use crate::io::{
    decode::{SoundBlock, SoundInfo},
    downmix::mix_down,
};
use crate::speeds::Speeds;
#[cfg(feature = "files")]
use std::path::Path;

/// Longest stretch of a file that is held; no clip is nearly as long.
#[cfg(feature = "files")]
const MOST_KEPT_S: usize = 60;
/// Longest stretch of a file that is decoded to say how long it is.
#[cfg(feature = "files")]
const MOST_COUNTED_S: usize = 3600;

/// One word's recording, mono.
#[derive(Debug, Clone, PartialEq)]
pub struct Clip {
    word: String,
    samples: Vec<f32>,
    rate: u32,
    speeds: Speeds,
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
        Ok(Self { word, samples, rate, speeds: Speeds::USUAL })
    }

    /// A clip from a sound file; channels are averaged.
    ///
    /// # Errors
    /// As [`crate::decode_file`] and [`Clip::from_samples`]; [`ListenError::ClipLength`] where it is over a minute long.
    #[cfg(feature = "files")]
    pub fn from_file(word: impl Into<String>, path: &Path) -> Result<Self, ListenError> {
        Self::decoded(word.into(), |each| crate::io::decode::decode_file(path, each))
    }

    /// A clip from a sound file's bytes; as [`Clip::from_file`].
    ///
    /// # Errors
    /// As [`Clip::from_file`].
    #[cfg(feature = "files")]
    pub fn from_bytes(word: impl Into<String>, bytes: Vec<u8>) -> Result<Self, ListenError> {
        Self::decoded(word.into(), |each| crate::io::decode::decode_bytes(bytes, each))
    }

    #[cfg(feature = "files")]
    fn decoded(
        word: String,
        decode: impl FnOnce(&mut dyn FnMut(SoundBlock) -> bool) -> Result<SoundInfo, ListenError>,
    ) -> Result<Self, ListenError> {
        let (mut samples, mut partial) = (Vec::new(), Vec::new());
        let mut frames = 0;
        let info = decode(&mut |sound| {
            frames += sound.samples.len() / usize::from(sound.channels);
            if frames <= MOST_KEPT_S * sound.rate as usize {
                mix_down(sound.samples, usize::from(sound.channels), &mut partial, &mut samples);
            }
            // Counted on, so that its length can be said.
            frames < MOST_COUNTED_S * sound.rate as usize
        })?;
        let seconds = info.frames as f64 / f64::from(info.rate);
        if frames > MOST_KEPT_S * info.rate as usize {
            return Err(ListenError::ClipLength { word, seconds });
        }
        Self::from_samples(word, samples, info.rate)
    }

    /// The same clip, to be listened for at these speeds instead of [`Speeds::USUAL`].
    #[must_use]
    pub fn at_speeds(self, speeds: Speeds) -> Self {
        Self { speeds, ..self }
    }

    /// The speeds at which it is listened for.
    pub fn speeds(&self) -> Speeds {
        self.speeds
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
        Self {
            samples: self.at_engine_rate(),
            rate: resampler::RATE as u32,
            word: self.word.clone(),
            speeds: self.speeds,
        }
    }

    pub(crate) fn at_engine_rate(&self) -> Vec<f32> {
        resampler::to_engine_rate(&self.samples, self.rate as usize)
    }
}
