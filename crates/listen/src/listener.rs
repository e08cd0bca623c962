//! The engine proper: mono sound at the engine's rate in, examined candidates out.

use crate::closer::Lens;
use crate::coherence::{self, Desk, Match};
use crate::ear::{Enrolled, Glimpse};
use crate::judge;
use crate::lanes::Rows;
use crate::phases;
use crate::settle::Verdict;
use crate::sinc::RATE;
use crate::sketch::{self, Block, FASTEST, SPEEDS, Sketcher};
use crate::whitened::{self, Stretch};
use std::sync::Arc;

struct Candidate {
    word: usize,
    /// Engine-rate sample.
    at: u64,
    z: f32,
    speed: f64,
    ready: u64,
}

/// Frames on each side within which a candidate must be the highest.
const PEAK: usize = 6;

/// Samples no louder than this (120 dB under full scale) are digital silence: no microphone is that quiet.
const SILENCE: f32 = 1e-6;

/// Looks through one stream.
pub(crate) struct Listener {
    enrolled: Arc<Enrolled>,
    audio: Vec<f32>,
    audio_at: u64,
    sketcher: Sketcher,
    desk: Desk,
    lens: Lens,
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
            desk: Desk::new(start),
            lens: Lens::new(),
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
        let step = bank.cut().step as u64;
        let mut blocks: Vec<Block> = Vec::new();
        for w in 0..self.next.len() {
            let (at, need) = (self.next[w], bank.need(w));
            let Some(room) = self.sketcher.rows.end().checked_sub(at + need as u64) else { continue };
            if blocks.first().is_none_or(|b| b.at != at || b.need != need) {
                blocks = (0..=room / step).map(|i| bank.block(&self.sketcher.rows, at + i * step, need)).collect();
            }
            for scores in bank.score(&blocks, w) {
                for (z, s) in scores.best.iter().zip(&scores.speed) {
                    self.scores[w].push(&[*z, f32::from(*s)]);
                }
                self.next[w] += step;
            }
            self.peaks(w);
        }
    }

    fn peaks(&mut self, w: usize) {
        let scores = &self.scores[w];
        let samples = self.enrolled.sounds[w].len();
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
                self.pending.push(Candidate { word: w, at, z, speed, ready: at + judge::reach(samples, speed) });
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
            let clip = &self.enrolled.sounds[c.word];
            let question = coherence::Question {
                clip,
                replays: &self.enrolled.replays[c.word],
                wheel: &self.enrolled.wheel,
                at: c.at,
                near: c.speed,
                within: judge::REACH,
            };
            let Some(m) = self.desk.look(&stretch, &question, |stage, m| judge::promising(c.z, stage, m)) else {
                continue;
            };
            if !judge::SPEEDS.contains(&m.speed) || !self.mostly_sound(&m, self.enrolled.sounds[c.word].len()) {
                continue;
            }
            let share = f64::from(phases::SHARES[m.share]);
            let views = self.lens.look(&stretch, clip, share, m.speed, m.onset, c.ready);
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

    /// Whether at least half of what should be the press is not digital silence. Where a file or a stream breaks off
    /// within a word, the little that sounded fits perfectly, and nothing after it contradicts.
    fn mostly_sound(&self, m: &Match, samples: usize) -> bool {
        let length = (samples as f64 / m.speed * f64::from(phases::SHARES[m.share])) as usize;
        let from = (m.onset.max(self.audio_at as f64) as u64 - self.audio_at) as usize;
        let heard = self.audio.iter().skip(from).take(length);
        2 * heard.filter(|v| v.abs() > SILENCE).count() >= length
    }

    fn verdict(&self, c: &Candidate, m: &Match, log_odds: f64) -> Verdict {
        let share = f64::from(phases::SHARES[m.share]);
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
    ///
    /// A candidate not yet found starts at or after its word's next frame, so it is ready a word's reach later at the
    /// earliest: everything ready before that moment is known, whatever the lengths of the other words.
    pub(crate) fn certain(&self) -> u64 {
        let undiscovered = self.checked.iter().zip(&self.enrolled.sounds);
        let first = undiscovered.map(|(t, x)| t * sketch::HOP as u64 + judge::reach(x.len(), FASTEST)).min();
        self.end().min(first.unwrap_or(0).saturating_sub(1))
    }

    fn forget(&mut self) {
        let found = self.checked.iter().copied().min().unwrap_or(0) * sketch::HOP as u64;
        let oldest = self.pending.iter().map(|c| c.at).min().unwrap_or(u64::MAX).min(found);
        let keep = oldest.saturating_sub(4 * whitened::WINDOW as u64);
        self.desk.sound.forget_before(keep.min(self.end()));
        let old = (keep.saturating_sub(self.audio_at) as usize).min(self.audio.len());
        if old * 2 > self.audio.len() {
            self.audio.drain(..old);
            self.audio_at += old as u64;
        }
        let rows = self.next.iter().copied().min().unwrap_or(0);
        self.sketcher.rows.forget_before(rows);
    }
}
