//! The scene maker: from a seed to clips, sounds and their truth. Nothing of it is used by the detector.

mod chain;
mod noise;
mod room;
pub(crate) mod scene;
pub(crate) mod signal;
mod television;
mod voice;

use super::truth::{ClipFile, SoundFile, Truth};
use crate::error::{LabError, at, told};
use chain::Recorder;
pub use room::Home;
use sayso_sim::Chance;
use scene::Scene;
pub(crate) use scene::{Button, busy, quiet};
use signal::RATE;
use std::path::{Path, PathBuf};
use voice::{Voice, Word, say};

/// What to make.
#[derive(Debug, Clone, clap::Args)]
pub struct Order {
    /// Folder for it; made if it is not there.
    #[arg(long, value_name = "DIR")]
    pub out: PathBuf,
    /// Seed everything follows from.
    #[arg(long, default_value_t = 1)]
    pub seed: u64,
    /// Kind of home.
    #[arg(long, value_enum, default_value_t = Home::Flat)]
    pub home: Home,
    /// Buttons on the board, 2 to 60.
    #[arg(long, default_value_t = 12, value_parser = clap::value_parser!(u16).range(2..=60))]
    pub words: u16,
    /// Signal-to-noise ratios in decibels, for each so many sounds with presses.
    #[arg(long, value_delimiter = ',', default_values_t = [20.0, 10.0, 5.0, 0.0], allow_negative_numbers = true)]
    pub snr: Vec<f64>,
    /// Sounds for each ratio, each in a room of its own.
    #[arg(long, default_value_t = 2)]
    pub sounds: u16,
    /// Minutes of each.
    #[arg(long, default_value_t = 3.0)]
    pub minutes: f64,
    /// Minutes without a press in all, in sounds of at most ten minutes, each in a room of its own.
    #[arg(long, default_value_t = 0.0)]
    pub empty_minutes: f64,
    /// For each ratio, so many sounds more with presses while a television is on.
    #[arg(long, default_value_t = 0)]
    pub television_sounds: u16,
    /// Minutes more without a press while a television is on.
    #[arg(long, default_value_t = 0.0)]
    pub television_minutes: f64,
}

/// Where chance begins for sounds without a press, for those with a television, and for both.
const EMPTY: u64 = 10_000;
const TELEVISION: u64 = 5_000;

/// A board of so many buttons.
pub(crate) fn board(seed: u64, home: Home, words: u16) -> Vec<Button> {
    let mut c = Chance::new(seed, 1);
    // One to three people record a board.
    let voices: Vec<Voice> = (0..1 + c.below(3)).map(|_| Voice::draw(&mut c)).collect();
    let recorder = Recorder::draw(home, &mut c);
    let mut buttons: Vec<Button> = Vec::new();
    while buttons.len() < usize::from(words) {
        let (sound, voice) = (Word::draw(&mut c), voices[c.below(voices.len())]);
        if buttons.iter().any(|b| b.sound == sound) {
            continue;
        }
        let clip = recorder.record(&say(&sound, &voice, &mut c), &mut c);
        // Buttons of this kind hold some seconds at most, and less than a fifth of one is no word.
        if (0.3..3.5).contains(&(clip.len() as f64 / RATE as f64)) {
            buttons.push(Button { word: format!("word {:02}", buttons.len()), sound, voice, clip });
        }
    }
    buttons
}

fn wav(path: &Path, x: &[f32]) -> Result<(), LabError> {
    let whole: Vec<i16> = x.iter().map(|v| (v.clamp(-1.0, 1.0) * 32_767.0).round() as i16).collect();
    std::fs::write(path, sayso_listen::wav(whole.into_iter(), RATE as u32)).map_err(at(path))
}

/// Makes a corpus: `clips/`, `sounds/` and `truth.json`. The same order gives the same bytes.
///
/// # Errors
/// [`LabError`] where lengths are no lengths, or a file cannot be written.
pub fn make(order: &Order) -> Result<Truth, LabError> {
    let length = |minutes: f64| (0.0..=600.0).contains(&minutes);
    let some = order.sounds > 0 || order.television_sounds > 0;
    let lengths = [order.minutes, order.empty_minutes, order.television_minutes];
    if !lengths.into_iter().all(length) || (some && order.minutes < 0.25) {
        return Err(told("a sound lasts from a quarter of a minute to 600 minutes"));
    }
    for folder in ["clips", "sounds"] {
        let path = order.out.join(folder);
        std::fs::create_dir_all(&path).map_err(at(&path))?;
    }
    let buttons = board(order.seed, order.home, order.words);
    let mut clips = Vec::new();
    for b in &buttons {
        let file = format!("clips/{}.wav", b.word.replace(' ', "_"));
        wav(&order.out.join(&file), &b.clip)?;
        clips.push(ClipFile { word: b.word.clone(), file });
    }
    let mut sounds = Vec::new();
    let mut keep = |name: String, snr_db: Option<f64>, scene: Scene| {
        let file = format!("sounds/{name}.wav");
        wav(&order.out.join(&file), &scene.samples)?;
        let seconds = scene.samples.len() as f64 / RATE as f64;
        eprintln!("{name}: {} presses, {} live, {:.1} min", scene.presses.len(), scene.live.len(), seconds / 60.0);
        let Scene { presses, live, tired, .. } = scene;
        sounds.push(SoundFile { sound: name, file, snr_db, seconds, tired, presses, live });
        Ok::<(), LabError>(())
    };
    let minutes = 60.0 * order.minutes;
    for (television, n) in [(false, order.sounds), (true, order.television_sounds)] {
        let mut stream = 100 + if television { TELEVISION } else { 0 };
        for snr in &order.snr {
            for k in 0..n {
                stream += 1;
                let c = Chance::new(order.seed, stream);
                let name = if television { format!("{snr}dB_television_{k}") } else { format!("{snr}dB_{k}") };
                keep(name, Some(*snr), busy(order.home, television, *snr, minutes, &buttons, None, c))?;
            }
        }
    }
    for (television, minutes) in [(false, order.empty_minutes), (true, order.television_minutes)] {
        let (mut left, mut k) = (minutes, 0);
        while left > 0.01 {
            let minutes = left.min(10.0);
            let c = Chance::new(order.seed, EMPTY + k + if television { TELEVISION } else { 0 });
            let name = if television { format!("television_{k}") } else { format!("empty_{k}") };
            keep(name, None, quiet(order.home, television, 60.0 * minutes, &buttons, c))?;
            (left, k) = (left - minutes, k + 1);
        }
    }
    let home = serde_json::to_value(order.home).map_err(told)?;
    // As corpora without a television always said.
    let television = match (order.television_sounds, order.television_minutes) {
        (0, 0.0) => String::new(),
        (sounds, minutes) => format!(" --television-sounds {sounds} --television-minutes {minutes}"),
    };
    let made_by = format!(
        "lab hearing scenes --seed {} --home {} --words {} --snr {} --sounds {} --minutes {} --empty-minutes {}{television}",
        order.seed,
        home.as_str().unwrap_or_default(),
        order.words,
        order.snr.iter().map(ToString::to_string).collect::<Vec<_>>().join(","),
        order.sounds,
        order.minutes,
        order.empty_minutes
    );
    let truth = Truth { made_by, sample_rate: RATE as u32, seed: order.seed, clips, sounds };
    truth.write(&order.out)?;
    Ok(truth)
}
