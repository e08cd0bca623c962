//! Clips prepared for listening.

use crate::decide::weights::Weights;
use crate::error::ListenError;
use crate::io::clip::Clip;
use crate::search::likeness::{Fingerprint, TOO_ALIKE};
use crate::search::template_bank::{Cut, TemplateBank};
use crate::speeds::Speeds;
use crate::verify::coherence::{self, Replays, SearchRamps};
use crate::verify::coherent_sum::SHARES;
use crate::verify::sounding::sounding_s;
use serde::{Deserialize, Serialize};
use std::sync::OnceLock;

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
    pub(crate) speeds: Vec<Speeds>,
    /// Seconds of effective sound at each share of each clip.
    pub(crate) sounding_s: Vec<[f64; SHARES.len()]>,
    pub(crate) bank: TemplateBank,
    pub(crate) replays: Vec<Replays>,
    pub(crate) ramps: SearchRamps,
    pub(crate) weights: Weights,
    /// Made when two words are first heard together: few boards ever need one.
    prints: Vec<OnceLock<Fingerprint>>,
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
        let speeds: Vec<Speeds> = clips.iter().map(Clip::speeds).collect();
        let bank = TemplateBank::new(&sounds, &speeds, cut);
        let replays: Vec<Replays> = sounds.iter().zip(&speeds).map(|(x, s)| Replays::prepare(x, *s)).collect();
        Ok(Self {
            words: clips.iter().map(|c| c.word().to_owned()).collect(),
            bank,
            ramps: SearchRamps::new(&replays),
            replays,
            sounding_s: sounds.iter().map(|x| sounding_s(x)).collect(),
            sounds,
            speeds,
            prints: clips.iter().map(|_| OnceLock::new()).collect(),
            weights,
        })
    }

    /// Whether two clips are too alike to be told apart where both fit.
    pub(crate) fn too_alike(&self, a: usize, b: usize) -> bool {
        let [a, b] = [a, b].map(|clip| self.prints[clip].get_or_init(|| Fingerprint::of(&self.sounds[clip])));
        a.likeness(b).max(b.likeness(a)) > TOO_ALIKE
    }

    /// What the clips say, in the order given; clips that say the same are one word.
    pub fn words(&self) -> &[String] {
        &self.words
    }

    /// Engine-rate samples after a candidate's start at which it can be examined at the latest.
    pub(crate) fn longest_reach(&self) -> u64 {
        (0..self.sounds.len()).map(|clip| self.reach(clip, 0)).max().unwrap_or(0)
    }

    /// The same for one of a clip's templates.
    pub(crate) fn reach(&self, clip: usize, template: usize) -> u64 {
        coherence::reach(self.sounds[clip].len(), self.bank.speed(clip, template), self.speeds[clip])
    }

    /// The same for a clip's fastest template: no candidate of it is ready sooner.
    pub(crate) fn soonest_reach(&self, clip: usize) -> u64 {
        self.reach(clip, self.bank.templates(clip).len() - 1)
    }

    #[cfg(feature = "files")]
    pub(crate) fn shortest_reach(&self) -> u64 {
        (0..self.sounds.len()).map(|clip| self.soonest_reach(clip)).min().unwrap_or(0)
    }
}
