//! Clips prepared for listening.

use crate::decide::weights::Weights;
use crate::error::ListenError;
use crate::io::clip::Clip;
use crate::search::template_bank::{Cut, FASTEST, SLOWEST, TemplateBank};
use crate::verify::coherence::{self, SearchRamps};
use crate::verify::coherent_sum::ReplaySpectra;
use serde::{Deserialize, Serialize};

/// Soon or cheap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Pace {
    /// Within half a second of the end of a clip of up to 3 s, 0.6 s for one of 4 s, at several times the cost.
    Live,
    /// Within about a second of the end of a clip, for a device that also does other things.
    Page,
    /// Within some seconds.
    File,
}

/// What enrolled clips look like to the engine; shared by detectors that work side by side.
pub struct Enrolled {
    pub(crate) words: Vec<String>,
    pub(crate) sounds: Vec<Vec<f32>>,
    pub(crate) bank: TemplateBank,
    pub(crate) replays: Vec<ReplaySpectra>,
    pub(crate) ramps: SearchRamps,
    pub(crate) weights: Weights,
}

impl Enrolled {
    /// Prepares clips for listening.
    ///
    /// # Errors
    /// [`ListenError::NoClips`] without clips, [`ListenError::ClipLength`] when one is under 0.15 s or over 4 s.
    pub fn new(clips: &[Clip], pace: Pace) -> Result<Self, ListenError> {
        Self::with_weights(clips, pace, Weights::shipped().clone())
    }

    /// The same, to be heard with other weights than the shipped ones.
    ///
    /// # Errors
    /// As [`Enrolled::new`].
    pub fn with_weights(clips: &[Clip], pace: Pace, weights: Weights) -> Result<Self, ListenError> {
        if clips.is_empty() {
            return Err(ListenError::NoClips);
        }
        for c in clips {
            if !(0.15..=4.0).contains(&c.seconds()) {
                return Err(ListenError::ClipLength { word: c.word().to_owned(), seconds: c.seconds() });
            }
        }
        let cut = match pace {
            Pace::Live => Cut::Short,
            Pace::Page => Cut::Middle,
            Pace::File => Cut::Long,
        };
        let sounds: Vec<Vec<f32>> = clips.iter().map(Clip::at_engine_rate).collect();
        let replays: Vec<ReplaySpectra> = sounds.iter().map(|x| coherence::prepare(x)).collect();
        Ok(Self {
            words: clips.iter().map(|c| c.word().to_owned()).collect(),
            bank: TemplateBank::new(&sounds, cut),
            ramps: SearchRamps::new(&replays),
            replays,
            sounds,
            weights,
        })
    }

    /// The enrolled words, in the order given.
    pub fn words(&self) -> &[String] {
        &self.words
    }

    pub(crate) fn longest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| coherence::reach(x.len(), SLOWEST)).max().unwrap_or(0)
    }

    #[cfg(feature = "files")]
    pub(crate) fn shortest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| coherence::reach(x.len(), FASTEST)).min().unwrap_or(0)
    }
}
