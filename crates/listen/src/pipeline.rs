//! One stream through all looks: mono sound at the engine's rate in, examined candidates out.

use crate::decide::hypothesis::Hypothesis;
use crate::decide::weights::STAGE_FIGURES;
use crate::decide::{cascade, classifier};
use crate::detection::Candidate;
use crate::dsp::resampler::RATE;
use crate::enrolled::Enrolled;
use crate::search::peak_picking::PeakPicker;
use crate::search::template_bank::HeldBlocks;
use crate::search::whitening::{HOP, WINDOW, Whitener};
use crate::verify::coherence::{self, CoherenceSearch, Match, Stage};
use crate::verify::coherent_sum::SHARES;
use crate::verify::multi_resolution::MultiResolution;
use crate::verify::whitened_stft::{self, Segment};
use std::sync::Arc;

/// A peak of the first look's score that waits to be examined.
struct Pending {
    clip: usize,
    /// Engine-rate sample.
    at: u64,
    z: f32,
    speed: f64,
    ready: u64,
}

/// Samples no louder than this (120 dB under full scale) are digital silence: no microphone is that quiet.
const SILENCE: f32 = 1e-6;

/// Looks through one stream.
pub(crate) struct Pipeline {
    enrolled: Arc<Enrolled>,
    audio: Vec<f32>,
    audio_at: u64,
    whitener: Whitener,
    search: CoherenceSearch,
    closer: MultiResolution,
    /// Per word: frame of the next scores, and the peaks among those made.
    next: Vec<u64>,
    peaks: Vec<PeakPicker>,
    pending: Vec<Pending>,
    hypotheses: Vec<Hypothesis>,
    keep_candidates: bool,
    pub(crate) candidates: Vec<Candidate>,
}

impl Pipeline {
    /// Starts at engine-rate sample `start`, a multiple of 640.
    pub(crate) fn new(enrolled: Arc<Enrolled>, start: u64, keep_candidates: bool) -> Self {
        let frame = start / HOP as u64;
        let words = enrolled.words.len();
        Self {
            audio: Vec::new(),
            audio_at: start,
            whitener: Whitener::new(frame),
            search: CoherenceSearch::new(start),
            closer: MultiResolution::new(),
            next: vec![frame; words],
            peaks: (0..words).map(|_| PeakPicker::new(frame)).collect(),
            pending: Vec::new(),
            hypotheses: Vec::new(),
            enrolled,
            keep_candidates,
            candidates: Vec::new(),
        }
    }

    pub(crate) fn end(&self) -> u64 {
        self.audio_at + self.audio.len() as u64
    }

    pub(crate) fn push(&mut self, sound: &[f32]) {
        self.audio.extend_from_slice(sound);
        loop {
            let start = self.whitener.next_frame() * HOP as u64;
            if start + WINDOW as u64 > self.end() {
                break;
            }
            let at = (start - self.audio_at) as usize;
            self.whitener.push(&self.audio[at..at + WINDOW]);
        }
        self.score();
        self.examine();
        self.forget();
    }

    /// The candidates examined since the last call.
    pub(crate) fn take_hypotheses(&mut self) -> Vec<Hypothesis> {
        std::mem::take(&mut self.hypotheses)
    }

    /// Adds the silence that lets the last candidates be examined.
    pub(crate) fn finish(&mut self) {
        let step = self.enrolled.bank.block_size().step * HOP;
        let tail = self.enrolled.longest_reach() as usize * 2 + step * 2 + RATE;
        for _ in 0..tail.div_ceil(4096) {
            self.push(&[0.0; 4096]);
        }
    }

    fn score(&mut self) {
        let enrolled = Arc::clone(&self.enrolled);
        let bank = &enrolled.bank;
        let step = bank.block_size().step as u64;
        let mut held = HeldBlocks::default();
        for w in 0..self.next.len() {
            let (at, need) = (self.next[w], bank.need(w));
            let rows = &self.whitener.rows;
            let Some(room) = rows.end().checked_sub(at + need as u64) else { continue };
            let blocks =
                held.of(at, need, || (0..=room / step).map(|i| bank.block(rows, at + i * step, need)).collect());
            for scores in bank.score(blocks, w) {
                for (z, s) in scores.best.iter().zip(&scores.speed) {
                    self.peaks[w].push(*z, *s);
                }
                self.next[w] += step;
            }
            let pending = &mut self.pending;
            self.peaks[w].pick(|p| {
                let (at, speed) = (p.frame * HOP as u64, bank.speed(w, p.speed));
                pending.push(Pending { clip: w, at, z: p.score, speed, ready: at + enrolled.reach(w, p.speed) });
            });
        }
    }

    fn examine(&mut self) {
        let end = self.end();
        self.pending.sort_by_key(|c| (c.ready, c.clip));
        let due = self.pending.partition_point(|c| c.ready <= end);
        let due: Vec<Pending> = self.pending.drain(..due).collect();
        for c in due {
            let sound = Segment { samples: &self.audio, at: self.audio_at };
            let clip = &self.enrolled.sounds[c.clip];
            let query = coherence::Query {
                clip,
                replays: &self.enrolled.replays[c.clip],
                ramps: &self.enrolled.ramps,
                at: c.at,
                near: c.speed,
            };
            let (weights, keep) = (&self.enrolled.weights, self.keep_candidates);
            let (mut passed, mut stages) = (true, Vec::new());
            let go_on = |stage: Stage, m: &Match| {
                let figures = cascade::figures(c.z, m);
                passed &= cascade::promising(&weights.cascade, stage, &figures);
                if keep {
                    stages.push((stage as usize, figures[..STAGE_FIGURES[stage as usize]].to_vec()));
                }
                passed || keep
            };
            let Some(m) = self.search.look(&sound, &query, go_on) else { continue };
            if !self.enrolled.speeds[c.clip].plausible(m.speed) || !self.mostly_sound(&m, clip.len()) {
                continue;
            }
            let share = f64::from(SHARES[m.share]);
            let views = self.closer.look(&sound, clip, share, m.speed, m.onset, c.ready);
            let figures = classifier::figures(c.z, &m, &views, self.enrolled.sounding_s[c.clip][m.share]);
            let hypothesis = self.hypothesis(&c, &m, weights.classifier.log_odds(&figures));
            if keep {
                self.candidates.push(Candidate {
                    clip: c.clip,
                    onset_s: hypothesis.onset / RATE as f64,
                    end_s: hypothesis.end / RATE as f64,
                    speed: m.speed,
                    passed,
                    log_odds: hypothesis.log_odds,
                    figures: figures.to_vec(),
                    stages,
                });
            }
            if passed {
                self.hypotheses.push(hypothesis);
            }
        }
    }

    /// Whether at least half of what should be the press is not digital silence. Where a file or a stream breaks off
    /// within a word, the little that sounded fits perfectly, and nothing after it contradicts.
    fn mostly_sound(&self, m: &Match, samples: usize) -> bool {
        let length = (samples as f64 / m.speed * f64::from(SHARES[m.share])) as usize;
        let from = (m.onset.max(self.audio_at as f64) as u64 - self.audio_at) as usize;
        let heard = self.audio.iter().skip(from).take(length);
        2 * heard.filter(|v| v.abs() > SILENCE).count() >= length
    }

    fn hypothesis(&self, c: &Pending, m: &Match, log_odds: f64) -> Hypothesis {
        let share = f64::from(SHARES[m.share]);
        let length = self.enrolled.sounds[c.clip].len() as f64 / m.speed * share;
        let from = (m.onset.max(self.audio_at as f64) as u64 - self.audio_at) as usize;
        let to = (from + length as usize).min(self.audio.len());
        let power = self.audio[from.min(to)..to].iter().map(|v| f64::from(v * v)).sum::<f64>()
            / (to - from.min(to)).max(1) as f64;
        Hypothesis {
            clip: c.clip,
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
        let undiscovered = self.peaks.iter().enumerate();
        let first = undiscovered.map(|(w, p)| p.checked() * HOP as u64 + self.enrolled.soonest_reach(w)).min();
        self.end().min(first.unwrap_or(0).saturating_sub(1))
    }

    fn forget(&mut self) {
        let found = self.peaks.iter().map(PeakPicker::checked).min().unwrap_or(0) * HOP as u64;
        let oldest = self.pending.iter().map(|c| c.at).min().unwrap_or(u64::MAX).min(found);
        let keep = oldest.saturating_sub(4 * whitened_stft::WINDOW as u64);
        self.search.sound.forget_before(keep.min(self.end()));
        let old = (keep.saturating_sub(self.audio_at) as usize).min(self.audio.len());
        if old * 2 > self.audio.len() {
            self.audio.drain(..old);
            self.audio_at += old as u64;
        }
        let rows = self.next.iter().copied().min().unwrap_or(0);
        self.whitener.rows.forget_before(rows);
    }
}
