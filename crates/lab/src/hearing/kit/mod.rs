//! Recordings of real buttons, made with the notebook's page for it: read, checked, and heard by the engine.

pub mod archive;
pub mod error;
mod rise;
pub mod tally;

use super::hear;
use super::score::paired;
use crate::error::{LabError, at};
use crate::work::side_by_side;
use archive::{Kit, Sound, Take};
use error::KitError;
use rise::rise_s;
use sayso_listen::{Clip, Config, Detection, Detector, Enrolled, Pace};
use std::path::PathBuf;
use std::sync::Arc;
use tally::{Heard, Scores, Tally};

/// A detection is a marked press where it comes within so many seconds of the mark. A countdown leaves six seconds from
/// press to press, and people are off by some tenths.
pub const WITHIN_S: f64 = 1.5;

/// What to read.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Archives, as the page saves them.
    #[arg(required = true, value_name = "FILE")]
    pub files: Vec<PathBuf>,
    /// Weights to hear with; the shipped ones, if left out.
    #[arg(long, value_name = "FILE")]
    pub weights: Option<PathBuf>,
    /// File for the tables as well.
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,
}

/// Reads archives and hears what is in them. Each is heard with its own buttons alone.
///
/// # Errors
/// [`LabError::Kit`] where an archive is refused, [`LabError`] where weights or tables cannot be read or written.
pub fn kit(order: &Order) -> Result<Scores, LabError> {
    let weights = hear::weights(order.weights.as_ref())?;
    // All are checked before the first is heard.
    let kits: Vec<Kit> = order.files.iter().map(|path| Kit::read(path)).collect::<Result<_, _>>()?;
    let mut scores = Scores::default();
    for kit in &kits {
        let clips = kit.manifest.buttons.iter().map(|b| clip(kit, &b.word, &b.clip)).collect::<Result<Vec<_>, _>>()?;
        let wrong = |e: sayso_listen::ListenError| KitError::Sound {
            path: kit.path.clone(),
            entry: "its clips".into(),
            reason: e.to_string(),
        };
        let enrolled = Arc::new(Enrolled::with_weights(&clips, Pace::File, weights.clone()).map_err(wrong)?);
        let takes = &kit.manifest.takes;
        let answers = side_by_side(takes.len(), |i, _| one(kit, &takes[i], &clips, &enrolled));
        for answer in answers {
            scores.takes.push(answer?);
        }
        scores.notes.extend(notes(kit));
    }
    if let Some(path) = &order.out {
        std::fs::write(path, scores.tables()).map_err(at(path))?;
    }
    Ok(scores)
}

fn notes(kit: &Kit) -> Vec<String> {
    let (m, file) = (&kit.manifest, kit.path.display());
    let words: Vec<String> = m.buttons.iter().map(|b| format!("\"{}\" ({})", b.word, b.about)).collect();
    let publish = if m.consent.publish { "may be published" } else { "is not to be published" };
    let mut notes = vec![format!(
        "{file}: saved {} by {}, {} takes; listened for {} alone; its sound {publish}.",
        m.made_at,
        m.made_by,
        m.takes.len(),
        words.join(", ")
    )];
    if m.microphone.processed() {
        notes.push(format!(
            "{file}: the browser says that it changed the sound (echo, noise or gain): not as the engine wants it."
        ));
    }
    notes
}

fn clip(kit: &Kit, word: &str, sound: &Sound) -> Result<Clip, KitError> {
    Clip::from_bytes(word, kit.bytes(sound).to_vec()).map_err(|e| KitError::Sound {
        path: kit.path.clone(),
        entry: sound.file.clone(),
        reason: e.to_string(),
    })
}

fn one(kit: &Kit, take: &Take, clips: &[Clip], enrolled: &Arc<Enrolled>) -> Result<Heard, KitError> {
    let wrong = |e: sayso_listen::ListenError| KitError::Sound {
        path: kit.path.clone(),
        entry: take.sound.file.clone(),
        reason: e.to_string(),
    };
    let (mut samples, mut rate) = (Vec::new(), 0);
    sayso_listen::decode_bytes(kit.bytes(&take.sound).to_vec(), |block| {
        rate = block.rate;
        let channels = usize::from(block.channels);
        samples.extend(block.samples.chunks(channels).map(|frame| frame.iter().sum::<f32>() / channels as f32));
        true
    })
    .map_err(wrong)?;
    let mut heard: Vec<Detection> = Vec::new();
    if !samples.is_empty() {
        let mut detector = Detector::with(Arc::clone(enrolled), Config::new(rate, 1, Pace::File)).map_err(wrong)?;
        heard.extend(detector.push(&samples));
        heard.extend(detector.finish().0);
    }
    let tally = tallied(take, clips, &heard, &samples, rate);
    Ok(Heard {
        phone: kit.manifest.phone.clone(),
        distance_mm: (1000.0 * take.distance_m).round() as u32,
        room: take.room.clone(),
        noise: take.noise.clone(),
        marked: take.marked,
        tally,
    })
}

fn tallied(take: &Take, clips: &[Clip], heard: &[Detection], samples: &[f32], rate: u32) -> Tally {
    let word = take.word.as_deref().unwrap_or_default();
    let marks: Vec<(&str, f64)> = take.presses_s.iter().map(|at| (word, *at)).collect();
    let press = paired(heard, &marks, WITHIN_S);
    let mut tally = Tally { takes: 1, hours: take.sound.seconds / 3600.0, presses: marks.len(), ..Tally::default() };
    // The clip has some quiet before its sound, which the onset counts from.
    let lead = clips.iter().find(|c| c.word() == word).and_then(|c| rise_s(c.samples(), c.rate(), 0.0, c.seconds()));
    for (detection, press) in heard.iter().zip(press) {
        let Some(mark) = press.map(|j| marks[j].1) else {
            tally.wrong += 1;
            continue;
        };
        tally.heard += 1;
        tally.from_mark_s.push(detection.onset_s - mark);
        let rise = rise_s(samples, rate, mark - WITHIN_S, mark + WITHIN_S);
        tally.from_rise_s.extend(rise.zip(lead).map(|(rise, lead)| detection.onset_s + lead / detection.speed - rise));
    }
    tally
}
