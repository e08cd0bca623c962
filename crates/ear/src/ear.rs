//! Clips and sound in, presses out, by numbers alone: a clip is named by its place in the order given, a word by that of
//! its first clip.

use sayso_listen::{
    Clip, Config, Detection, Detector, Enrolled, ListenError, Pace, Proof, Speeds, Stretches, prove, stretches,
};
use std::sync::Arc;

/// Numbers in a press: clip, onset in seconds from the beginning of the stream, confidence, speed, level in dB under full
/// scale, share heard; as [`Detection`] has them.
pub const PRESS: usize = 6;

/// One ear: clips first, then any number of streams, one after the other.
#[derive(Default)]
pub struct Ear {
    clips: Vec<Clip>,
    enrolled: Option<Arc<Enrolled>>,
    detector: Option<Detector>,
}

impl Ear {
    /// Takes the next clip: one channel, full scale 1.0, `rate` samples a second. `word` is the place of the first clip
    /// that says the same, its own where none did.
    ///
    /// # Errors
    /// [`ListenError::Format`], [`ListenError::Silent`].
    pub fn clip(&mut self, samples: &[f32], rate: u32, word: u32) -> Result<(), ListenError> {
        self.clips.push(Clip::from_samples(word.to_string(), samples.to_vec(), rate)?);
        Ok(())
    }

    /// The clip last taken is listened for at speeds from `centre - width` to `centre + width`, as [`Speeds::around`]
    /// holds them, instead of the usual ones. Before any clip it does nothing.
    pub fn at_speeds(&mut self, centre: f64, width: f64) {
        if let Some(last) = self.clips.pop() {
            self.clips.push(last.at_speeds(Speeds::around(centre, width)));
        }
    }

    fn enrolled(&mut self) -> Result<Arc<Enrolled>, ListenError> {
        let enrolled = match &self.enrolled {
            Some(ready) => Arc::clone(ready),
            None => Arc::new(Enrolled::new(&std::mem::take(&mut self.clips), Pace::Page)?),
        };
        self.enrolled = Some(Arc::clone(&enrolled));
        Ok(enrolled)
    }

    /// What comes of a proof of a word: in these samples, `rate` a second, its button was pressed once. As [`begin`],
    /// it takes the clips.
    ///
    /// # Errors
    /// As [`prove`], and of [`Ear::begin`].
    ///
    /// [`begin`]: Ear::begin
    pub fn prove(&mut self, samples: &[f32], rate: u32, word: u32) -> Result<Proof, ListenError> {
        let word = word.to_string();
        let sound = Clip::from_samples("", samples.to_vec(), rate);
        match sound {
            Ok(sound) => prove(&self.enrolled()?, &word, &sound),
            // A microphone that gives nothing at all.
            Err(ListenError::Silent { .. }) => Ok(Proof::Nothing),
            Err(why) => Err(why),
        }
    }

    /// The samples, `rate` a second, cut at their pauses.
    ///
    /// # Errors
    /// [`ListenError::Format`], [`ListenError::Silent`].
    pub fn cut(samples: &[f32], rate: u32) -> Result<Stretches, ListenError> {
        Ok(stretches(&Clip::from_samples("", samples.to_vec(), rate)?))
    }

    /// A stream of `rate` samples a second begins; the one before is over. The first takes the clips, and no more of
    /// them are heard after.
    ///
    /// # Errors
    /// [`ListenError::NoClips`], [`ListenError::ClipLength`], [`ListenError::Format`].
    pub fn begin(&mut self, rate: u32) -> Result<(), ListenError> {
        self.detector = Some(Detector::with(self.enrolled()?, Config::new(rate, 1, Pace::Page))?);
        Ok(())
    }

    /// Hears samples, and answers with the presses now certain, [`PRESS`] numbers each. Before a stream began there are none.
    pub fn push(&mut self, samples: &[f32]) -> Vec<f64> {
        self.detector.as_mut().map_or_else(Vec::new, |d| flat(d.push(samples)))
    }

    /// So many samples were lost here: they are heard as silence, so that later onsets stay true.
    pub fn gap(&mut self, samples: u32) -> Vec<f64> {
        self.detector.as_mut().map_or_else(Vec::new, |d| flat(d.gap(u64::from(samples))))
    }

    /// The stream is over: its last presses.
    pub fn finish(&mut self) -> Vec<f64> {
        self.detector.take().map_or_else(Vec::new, |d| flat(d.finish().0))
    }
}

fn flat(heard: Vec<Detection>) -> Vec<f64> {
    heard.into_iter().flat_map(|h| [h.clip as f64, h.onset_s, h.confidence, h.speed, h.level_db, h.share]).collect()
}
