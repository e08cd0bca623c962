//! Clips and sound in, presses out, by numbers alone: a clip is named by its place in the order given.

use sayso_listen::{Clip, Config, Detection, Detector, Enrolled, ListenError, Pace, Speeds};
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
    /// Takes the next clip: one channel, full scale 1.0, `rate` samples a second.
    ///
    /// # Errors
    /// [`ListenError::Format`], [`ListenError::Silent`].
    pub fn clip(&mut self, samples: &[f32], rate: u32) -> Result<(), ListenError> {
        let place = self.clips.len().to_string();
        self.clips.push(Clip::from_samples(place, samples.to_vec(), rate)?);
        Ok(())
    }

    /// The clip last taken is listened for at speeds from `centre - width` to `centre + width`, as [`Speeds::around`]
    /// holds them, instead of the usual ones. Before any clip it does nothing.
    pub fn at_speeds(&mut self, centre: f64, width: f64) {
        if let Some(last) = self.clips.pop() {
            self.clips.push(last.at_speeds(Speeds::around(centre, width)));
        }
    }

    /// A stream of `rate` samples a second begins; the one before is over. The first takes the clips, and no more of
    /// them are heard after.
    ///
    /// # Errors
    /// [`ListenError::NoClips`], [`ListenError::ClipLength`], [`ListenError::Format`].
    pub fn begin(&mut self, rate: u32) -> Result<(), ListenError> {
        let enrolled = match &self.enrolled {
            Some(ready) => Arc::clone(ready),
            None => Arc::new(Enrolled::new(&std::mem::take(&mut self.clips), Pace::Page)?),
        };
        self.detector = Some(Detector::with(Arc::clone(&enrolled), Config::new(rate, 1, Pace::Page))?);
        self.enrolled = Some(enrolled);
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
