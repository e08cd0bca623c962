//! Decisions in the order of time: rivals, the button's usual speed, and how busy the board is.
//!
//! This is the only part with a memory longer than a clip, and it is cheap: sound can be examined in pieces, side by
//! side, and decided here in order with the same result.

use crate::decide::classifier;
use crate::decide::hypothesis::Hypothesis;
use crate::decide::prior::{Activity, SpeedHistory};
use crate::decide::rivals::greatest_lead;
use crate::decide::weights::Weights;
use crate::detection::Detection;
use crate::dsp::resampler::RATE;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// Engine-rate samples a hypothesis waits for rivals.
pub(crate) const PATIENCE: u64 = RATE as u64 / 10;
/// Decides hypotheses, with non-maximum suppression of the same press seen twice.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Decider {
    words: Vec<String>,
    waiting: VecDeque<Hypothesis>,
    recent: VecDeque<Hypothesis>,
    history: Vec<SpeedHistory>,
    activity: Activity,
    least: f64,
}

impl Decider {
    pub(crate) fn new(words: Vec<String>, least: f64) -> Self {
        let history = vec![SpeedHistory::default(); words.len()];
        Self { words, waiting: VecDeque::new(), recent: VecDeque::new(), history, activity: Activity::default(), least }
    }

    /// Takes hypotheses in any order; all with `ready <= certain` must have been given before deciding up to `certain`.
    pub(crate) fn add(&mut self, hypotheses: impl IntoIterator<Item = Hypothesis>) {
        self.waiting.extend(hypotheses);
        self.waiting.make_contiguous().sort_by(|a, b| a.ready.cmp(&b.ready).then(a.word.cmp(&b.word)));
    }

    /// Decides what can be decided once everything up to `certain` is known.
    pub(crate) fn decide_up_to(&mut self, certain: u64, weights: &Weights) -> Vec<Detection> {
        let mut heard = Vec::new();
        while self.waiting.front().is_some_and(|v| v.ready + PATIENCE <= certain) {
            let Some(v) = self.waiting.pop_front() else { break };
            while self.recent.front().is_some_and(|r| r.ready + 8 * (RATE as u64) < v.ready) {
                self.recent.pop_front();
            }
            heard.extend(self.decide(&v, weights));
            self.recent.push_back(v);
        }
        heard
    }

    fn decide(&mut self, v: &Hypothesis, weights: &Weights) -> Option<Detection> {
        let in_time = self.waiting.iter().take_while(|r| r.ready <= v.ready + PATIENCE);
        let others = in_time.chain(&self.recent);
        // The same press seen twice; a re-press cannot come sooner than this.
        let near = (0.25 * RATE as f64).min(0.42 * (v.end - v.onset));
        let better = |r: &&Hypothesis| {
            r.word == v.word && (r.onset - v.onset).abs() < near && (r.log_odds, r.ready) > (v.log_odds, v.ready)
        };
        if others.clone().any(|r| better(&r)) {
            return None;
        }
        let lead = greatest_lead(v, others);
        let now = v.onset / RATE as f64;
        let odds = v.log_odds
            + weights.classifier.rivalry(lead)
            + self.activity.log_odds(now, weights.idle_prior)
            + self.history[v.word].log_odds(v.speed, now);
        let probability = classifier::probability(odds);
        if probability > 0.05 {
            self.history[v.word].add(now, v.speed, probability);
            self.activity.add(probability);
        }
        (probability >= self.least).then(|| Detection {
            word: self.words[v.word].clone(),
            onset_s: now.max(0.0),
            confidence: probability,
            speed: v.speed,
            level_db: v.level_db,
            share: v.share,
        })
    }
}
