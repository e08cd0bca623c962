//! A corpus on disk: clips, sounds, and the truth about them in `truth.json`.

use crate::error::{LabError, at};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::path::Path;

/// A press: which button, when its clip's first sample reaches the microphone, how fast, and after how many seconds it
/// was cut off by the next.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Press {
    /// Word.
    pub word: String,
    /// Seconds.
    pub onset_s: f64,
    /// Against the clip.
    pub speed: f64,
    /// Seconds it sounded, if cut off.
    pub cut_s: Option<f64>,
}

/// Somebody saying a button's word: no press.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Live {
    /// Word.
    pub word: String,
    /// Seconds.
    pub onset_s: f64,
    /// Who: teacher, person, radio.
    pub source: String,
}

/// One button's recording.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ClipFile {
    /// Word.
    pub word: String,
    /// File, from the corpus's folder.
    pub file: String,
}

/// One sound.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SoundFile {
    /// Its name.
    #[serde(alias = "scene")]
    pub sound: String,
    /// File, from the corpus's folder.
    pub file: String,
    /// Decibels of presses over the rest; none where nothing is pressed.
    pub snr_db: Option<f64>,
    /// Length.
    pub seconds: f64,
    /// The button whose battery runs down.
    #[serde(default)]
    pub tired: Option<String>,
    /// Presses, in order of time.
    pub presses: Vec<Press>,
    /// Live speech, in order of time.
    pub live: Vec<Live>,
}

/// The truth about a corpus.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Truth {
    /// The command that made it.
    #[serde(default)]
    pub made_by: String,
    /// Samples a second.
    pub sample_rate: u32,
    /// Seed.
    pub seed: u64,
    /// Clips.
    pub clips: Vec<ClipFile>,
    /// Sounds.
    #[serde(alias = "scenes")]
    pub sounds: Vec<SoundFile>,
}

const FILE: &str = "truth.json";

impl Truth {
    /// Reads `truth.json` of a corpus.
    ///
    /// # Errors
    /// [`LabError::File`] where it cannot be read, [`LabError::Content`] where it holds something else, with the place.
    pub fn read(corpus: &Path) -> Result<Self, LabError> {
        let path = corpus.join(FILE);
        let text = std::fs::read_to_string(&path).map_err(at(&path))?;
        serde_json::from_str(&text).map_err(|e| LabError::Content { path, reason: e.to_string() })
    }

    /// Writes it.
    pub(crate) fn write(&self, corpus: &Path) -> Result<(), LabError> {
        let path = corpus.join(FILE);
        let text = serde_json::to_string_pretty(self).map_err(crate::error::told)?;
        std::fs::write(&path, text + "\n").map_err(at(&path))
    }

    /// SHA-256 over the truth and every file it names, in its order.
    ///
    /// # Errors
    /// [`LabError::File`] where one cannot be read.
    pub fn hash(&self, corpus: &Path, into: &mut Sha256) -> Result<(), LabError> {
        let files = self.clips.iter().map(|c| &c.file).chain(self.sounds.iter().map(|s| &s.file));
        for file in std::iter::once(&FILE.to_owned()).chain(files) {
            let path = corpus.join(file);
            into.update(std::fs::read(&path).map_err(at(&path))?);
        }
        Ok(())
    }
}
