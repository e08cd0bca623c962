//! The streaming engine: sound in, presses out.

use crate::clip::Clip;
use crate::closer::Lens;
use crate::coherence::{self, Match, Print, Ramps, Sound, Stretch};
use crate::error::ListenError;
use crate::judge;
use crate::lanes::Rows;
use crate::settle::{Settler, Verdict};
use crate::sinc::{RATE, Resampler};
use crate::sketch::{self, Bank, Block, SPEEDS, Sketcher};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Confidence below which a candidate is usually not called a press.
pub(crate) const LEAST_CONFIDENCE: f64 = 0.5;

/// How sound arrives, and what is wanted of it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Config {
    /// Samples per second of each channel, 4 000 to 384 000.
    pub rate: u32,
    /// Channels, interleaved; they are averaged.
    pub channels: u16,
    /// Whether events must come soon (a microphone) or cheaply (a long file). The events are the same.
    pub pace: Pace,
    /// Events below this confidence are kept back.
    pub least_confidence: f64,
    /// Keep every candidate the first look proposes, for study; see [`Ear::take_glimpses`].
    pub keep_glimpses: bool,
}

/// Soon or cheap.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Pace {
    /// Within half a second of the clip's end, at several times the cost.
    Live,
    /// Within some seconds.
    File,
}

impl Config {
    /// The usual settings for sound of this shape.
    pub fn new(rate: u32, channels: u16, pace: Pace) -> Self {
        Self { rate, channels, pace, least_confidence: LEAST_CONFIDENCE, keep_glimpses: false }
    }
}

/// A press that was heard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Heard {
    /// What the button says, as enrolled.
    pub word: String,
    /// Seconds from the start of the sound to the clip's first sample.
    pub onset_s: f64,
    /// Probability that this is a press of this word, 0 to 1.
    pub confidence: f64,
    /// Playback speed against the enrolled clip; 0.97 is 3 % slow.
    pub speed: f64,
    /// Level of the sound while the clip played, dB under full scale (root mean square, 8 kHz band).
    pub level_db: f64,
    /// Share of the clip that was heard before something cut it off, 0 to 1.
    pub share: f64,
}

/// A candidate and its evidence, heard or not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Glimpse {
    /// Index of the clip.
    pub word: usize,
    /// Seconds from the start of the sound.
    pub onset_s: f64,
    /// Speed of the best match.
    pub speed: f64,
    /// First look's score, in spreads above the usual.
    pub first_look: f64,
    /// Log odds from its own sound alone.
    pub log_odds: f64,
    /// Share of the clip that fitted best.
    pub share: f64,
    /// The figures the confidence is made of.
    pub figures: Vec<f64>,
}

struct Candidate {
    word: usize,
    /// Engine-rate sample.
    at: u64,
    z: f32,
    speed: f64,
    ready: u64,
}

/// What enrolled clips look like to the engine; shared by ears that work side by side.
pub struct Enrolled {
    words: Vec<String>,
    sounds: Vec<Vec<f32>>,
    lens: Lens,
    bank: Bank,
    prints: Vec<Print>,
    ramps: Ramps,
}

impl Enrolled {
    /// Prepares clips for listening.
    ///
    /// # Errors
    /// [`ListenError::NoClips`] without clips, [`ListenError::ClipLength`] when one is under 0.15 s or over 4 s.
    pub fn new(clips: &[Clip], pace: Pace) -> Result<Self, ListenError> {
        if clips.is_empty() {
            return Err(ListenError::NoClips);
        }
        for c in clips {
            if !(0.15..=4.0).contains(&c.seconds()) {
                return Err(ListenError::ClipLength { word: c.word().to_owned(), seconds: c.seconds() });
            }
        }
        let sounds: Vec<Vec<f32>> = clips.iter().map(Clip::at_engine_rate).collect();
        let prints: Vec<Print> = sounds.iter().map(|x| Print::new(x)).collect();
        Ok(Self {
            words: clips.iter().map(|c| c.word().to_owned()).collect(),
            bank: Bank::new(&sounds, pace == Pace::File),
            ramps: Ramps::new(&prints),
            prints,
            lens: Lens::new(),
            sounds,
        })
    }

    /// The enrolled words, in the order given.
    pub fn words(&self) -> &[String] {
        &self.words
    }

    pub(crate) fn longest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| coherence::reach(x.len())).max().unwrap_or(0)
    }

    pub(crate) fn shortest_reach(&self) -> u64 {
        self.sounds.iter().map(|x| coherence::reach(x.len())).min().unwrap_or(0)
    }
}

/// Listens to one stream.
pub struct Ear {
    enrolled: Arc<Enrolled>,
    config: Config,
    resampler: Resampler,
    partial: Vec<f32>,
    listener: Listener,
    settler: Settler,
    scratch: Vec<f32>,
}

impl Ear {
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
            listener: Listener::new(Arc::clone(&enrolled), 0, config.keep_glimpses),
            settler: Settler::new(enrolled.words.clone(), config.least_confidence),
            enrolled,
            resampler: Resampler::new(config.rate as usize),
            config,
            partial: Vec::new(),
            scratch: Vec::new(),
        })
    }

    /// The enrolled words.
    pub fn words(&self) -> &[String] {
        self.enrolled.words()
    }

    /// Takes interleaved samples (full scale 1.0), any number of them, and returns the presses now certain.
    ///
    /// Samples that are not finite count as silence.
    pub fn push(&mut self, samples: &[f32]) -> Vec<Heard> {
        let mut heard = Vec::new();
        for part in samples.chunks(1 << 15) {
            self.scratch.clear();
            mix_down(part, usize::from(self.config.channels), &mut self.partial, &mut self.scratch);
            let mut sound = Vec::with_capacity(self.scratch.len());
            self.resampler.push(&self.scratch, &mut sound);
            self.listener.push(&sound);
            self.settler.add(self.listener.take_verdicts());
            heard.extend(self.settler.settle(self.listener.certain()));
        }
        heard
    }

    /// Says that `frames` samples per channel were lost here, so that later onsets stay true.
    pub fn gap(&mut self, frames: u64) -> Vec<Heard> {
        let silence = vec![0.0f32; 1 << 14];
        let (mut heard, mut left) = (Vec::new(), frames * u64::from(self.config.channels));
        while left > 0 {
            let n = left.min(silence.len() as u64) as usize;
            heard.extend(self.push(&silence[..n]));
            left -= n as u64;
        }
        heard
    }

    /// Ends the stream and returns the last presses.
    pub fn finish(mut self) -> (Vec<Heard>, Vec<Glimpse>) {
        let mut sound = Vec::new();
        self.resampler.finish(&mut sound);
        self.listener.push(&sound);
        let end_s = self.position_s();
        self.listener.finish();
        self.settler.add(self.listener.take_verdicts());
        let mut heard = self.settler.settle(u64::MAX);
        heard.retain(|h| h.onset_s < end_s);
        (heard, std::mem::take(&mut self.listener.glimpses))
    }

    /// Seconds of sound taken so far.
    pub fn position_s(&self) -> f64 {
        self.listener.end() as f64 / RATE as f64
    }

    /// The candidates since the last call, if the configuration keeps them.
    pub fn take_glimpses(&mut self) -> Vec<Glimpse> {
        std::mem::take(&mut self.listener.glimpses)
    }
}

pub(crate) fn check_format(rate: u32, channels: u16) -> Result<(), ListenError> {
    if (4000..=384_000).contains(&rate) && (1..=32).contains(&channels) {
        Ok(())
    } else {
        Err(ListenError::Format { rate, channels })
    }
}

/// Averages channels; what is left of an incomplete frame waits in `partial`.
pub(crate) fn mix_down(samples: &[f32], channels: usize, partial: &mut Vec<f32>, out: &mut Vec<f32>) {
    let clean = |v: f32| if v.is_finite() { v.clamp(-8.0, 8.0) } else { 0.0 };
    if channels == 1 {
        out.extend(samples.iter().map(|v| clean(*v)));
        return;
    }
    let mut rest = samples;
    if !partial.is_empty() {
        let take = (channels - partial.len()).min(rest.len());
        partial.extend_from_slice(&rest[..take]);
        rest = &rest[take..];
        if partial.len() < channels {
            return;
        }
        out.push(partial.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32);
        partial.clear();
    }
    let frames = rest.chunks_exact(channels);
    partial.extend_from_slice(frames.remainder());
    out.extend(frames.map(|f| f.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32));
}

/// Frames on each side within which a candidate must be the highest.
const PEAK: usize = 6;
/// The engine proper, on mono sound at the engine's rate.
pub(crate) struct Listener {
    enrolled: Arc<Enrolled>,
    audio: Vec<f32>,
    audio_at: u64,
    sketcher: Sketcher,
    sound: Sound,
    /// Per word: frame of the next scores, the scores from `scored_from` on, and their best speeds.
    next: Vec<u64>,
    scores: Vec<Rows>,
    checked: Vec<u64>,
    pending: Vec<Candidate>,
    verdicts: Vec<Verdict>,
    keep_glimpses: bool,
    pub(crate) glimpses: Vec<Glimpse>,
}

impl Listener {
    /// Starts at engine-rate sample `start`, a multiple of 640.
    pub(crate) fn new(enrolled: Arc<Enrolled>, start: u64, keep_glimpses: bool) -> Self {
        let frame = start / sketch::HOP as u64;
        let words = enrolled.words.len();
        Self {
            audio: Vec::new(),
            audio_at: start,
            sketcher: Sketcher::new(frame),
            sound: Sound::new(start),
            next: vec![frame; words],
            scores: (0..words).map(|_| Rows::new(2, frame)).collect(),
            checked: vec![frame; words],
            pending: Vec::new(),
            verdicts: Vec::new(),
            enrolled,
            keep_glimpses,
            glimpses: Vec::new(),
        }
    }

    pub(crate) fn end(&self) -> u64 {
        self.audio_at + self.audio.len() as u64
    }

    pub(crate) fn push(&mut self, sound: &[f32]) {
        self.audio.extend_from_slice(sound);
        loop {
            let start = self.sketcher.next_frame() * sketch::HOP as u64;
            if start + sketch::WINDOW as u64 > self.end() {
                break;
            }
            let at = (start - self.audio_at) as usize;
            self.sketcher.push(&self.audio[at..at + sketch::WINDOW]);
        }
        self.score();
        self.examine();
        self.forget();
    }

    /// The candidates examined since the last call.
    pub(crate) fn take_verdicts(&mut self) -> Vec<Verdict> {
        std::mem::take(&mut self.verdicts)
    }

    /// Adds the silence that lets the last candidates be examined.
    pub(crate) fn finish(&mut self) {
        let step = self.enrolled.bank.cut().step * sketch::HOP;
        let tail = self.enrolled.longest_reach() as usize * 2 + step * 2 + RATE;
        for _ in 0..tail.div_ceil(4096) {
            self.push(&[0.0; 4096]);
        }
    }

    fn score(&mut self) {
        let enrolled = Arc::clone(&self.enrolled);
        let bank = &enrolled.bank;
        loop {
            let mut moved = false;
            let mut block: Option<Block> = None;
            for w in 0..self.next.len() {
                let (at, need) = (self.next[w], bank.need(w));
                if at + need as u64 > self.sketcher.rows.end() {
                    continue;
                }
                let fresh = match block.take() {
                    Some(b) if b.at == at && b.need == need => b,
                    _ => bank.block(&self.sketcher.rows, at, need),
                };
                let scores = bank.score(&fresh, w);
                block = Some(fresh);
                for (z, s) in scores.best.iter().zip(&scores.speed) {
                    self.scores[w].push(&[*z, f32::from(*s)]);
                }
                self.next[w] = at + bank.cut().step as u64;
                self.peaks(w);
                moved = true;
            }
            if !moved {
                break;
            }
        }
    }

    fn peaks(&mut self, w: usize) {
        let scores = &self.scores[w];
        let reach = coherence::reach(self.enrolled.sounds[w].len());
        while self.checked[w] + (PEAK as u64) < scores.end() {
            let t = self.checked[w];
            self.checked[w] += 1;
            let z = scores.row(t)[0];
            if z < judge::FIRST_LOOK {
                continue;
            }
            let from = t.saturating_sub(PEAK as u64).max(scores.first());
            let highest =
                (from..t).all(|u| scores.row(u)[0] < z) && (t + 1..=t + PEAK as u64).all(|u| scores.row(u)[0] <= z);
            if highest {
                let at = t * sketch::HOP as u64;
                let speed = SPEEDS[scores.row(t)[1] as usize];
                self.pending.push(Candidate { word: w, at, z, speed, ready: at + reach });
            }
        }
        self.scores[w].forget_before(self.checked[w].saturating_sub(PEAK as u64));
    }

    fn examine(&mut self) {
        let end = self.end();
        self.pending.sort_by_key(|c| (c.ready, c.word));
        let due = self.pending.partition_point(|c| c.ready <= end);
        let due: Vec<Candidate> = self.pending.drain(..due).collect();
        for c in due {
            let stretch = Stretch { samples: &self.audio, at: self.audio_at };
            let question = coherence::Question {
                print: &self.enrolled.prints[c.word],
                ramps: &self.enrolled.ramps,
                at: c.at,
                near: c.speed,
                within: judge::REACH,
                least: judge::LEAST_RATIO,
            };
            let go_on = |quick, _| judge::promising(c.z, quick);
            let Some(m) = coherence::look(&mut self.sound, &stretch, &question, go_on) else {
                continue;
            };
            if !judge::SPEEDS.contains(&m.speed) {
                continue;
            }
            let share = f64::from(coherence::SHARES[m.share]);
            let clip = &self.enrolled.sounds[c.word];
            let views = self.enrolled.lens.look(&stretch, clip, share, m.speed, m.onset, c.ready);
            let figures = judge::figures(c.z, &m, &views);
            let log_odds = judge::log_odds(&figures);
            if self.keep_glimpses {
                self.glimpses.push(Glimpse {
                    word: c.word,
                    onset_s: m.onset / RATE as f64,
                    speed: m.speed,
                    first_look: f64::from(c.z),
                    log_odds,
                    share,
                    figures: figures.to_vec(),
                });
            }
            self.verdicts.push(self.verdict(&c, &m, log_odds));
        }
    }

    fn verdict(&self, c: &Candidate, m: &Match, log_odds: f64) -> Verdict {
        let share = f64::from(coherence::SHARES[m.share]);
        let length = self.enrolled.sounds[c.word].len() as f64 / m.speed * share;
        let from = (m.onset.max(self.audio_at as f64) as u64 - self.audio_at) as usize;
        let to = (from + length as usize).min(self.audio.len());
        let power = self.audio[from.min(to)..to].iter().map(|v| f64::from(v * v)).sum::<f64>()
            / (to - from.min(to)).max(1) as f64;
        Verdict {
            word: c.word,
            at: c.at,
            onset: m.onset,
            end: m.onset + length,
            ready: c.ready,
            log_odds,
            ratio: f64::from(m.ratio.max(1e-3)).ln(),
            speed: m.speed,
            level_db: 10.0 * (power + 1e-12).log10(),
            share,
        }
    }

    /// Time up to which every candidate has been found and examined, in `ready` samples.
    pub(crate) fn certain(&self) -> u64 {
        let undiscovered = |w: usize| self.checked[w] * sketch::HOP as u64 + coherence::reach(self.enrolled.sounds[w].len());
        (0..self.checked.len()).map(undiscovered).fold(self.end(), u64::min)
    }

    fn forget(&mut self) {
        let found = self.checked.iter().copied().min().unwrap_or(0) * sketch::HOP as u64;
        let oldest = self.pending.iter().map(|c| c.at).min().unwrap_or(u64::MAX).min(found);
        let keep = oldest.saturating_sub(4 * coherence::WINDOW as u64);
        self.sound.forget_before(keep.min(self.end()));
        let old = (keep.saturating_sub(self.audio_at) as usize).min(self.audio.len());
        if old * 2 > self.audio.len() {
            self.audio.drain(..old);
            self.audio_at += old as u64;
        }
        let rows = self.next.iter().copied().min().unwrap_or(0);
        self.sketcher.rows.forget_before(rows);
    }
}
