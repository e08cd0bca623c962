//! Decisions in the order of time: rivals, the button's usual speed, and how busy the board is.
//!
//! This is the only part with a memory longer than a clip, and it is cheap: sound can be examined in pieces, side by
//! side, and decided here in order with the same result.

use crate::decide::classifier;
use crate::decide::hypothesis::Hypothesis;
use crate::decide::prior::{Activity, SpeedHistory};
use crate::decide::rivals::{greatest_lead, overlap, together};
use crate::detection::Detection;
use crate::dsp::resampler::RATE;
use crate::enrolled::Enrolled;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// Engine-rate samples a hypothesis waits for rivals.
pub(crate) const PATIENCE: u64 = RATE as u64 / 10;
/// Engine-rate samples for which what was decided may still stand against what comes.
const REMEMBERED: u64 = 8 * RATE as u64;

/// A press that was told: its clip, where it lay, and when it was ready.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Told {
    clip: usize,
    at: (f64, f64),
    ready: u64,
}

/// Decides hypotheses, with non-maximum suppression of the same press seen twice.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Decider {
    waiting: VecDeque<Hypothesis>,
    recent: VecDeque<Hypothesis>,
    #[serde(default)]
    told: VecDeque<Told>,
    /// Per clip.
    history: Vec<SpeedHistory>,
    activity: Activity,
    least: f64,
}

/// Whether two stretches are one press of a word: of one clip those so close that no re-press can come sooner, of two
/// clips that say the same those that cover each other.
fn same_press(of: (f64, f64), other: (f64, f64), one_clip: bool) -> bool {
    let near = (0.25 * RATE as f64).min(0.42 * (of.1 - of.0));
    (of.0 - other.0).abs() < near || (!one_clip && (overlap(of, other) || overlap(other, of)))
}

impl Decider {
    pub(crate) fn new(clips: usize, least: f64) -> Self {
        let history = vec![SpeedHistory::default(); clips];
        let (waiting, recent, told) = (VecDeque::new(), VecDeque::new(), VecDeque::new());
        Self { waiting, recent, told, history, activity: Activity::default(), least }
    }

    /// Takes hypotheses in any order; all with `ready <= certain` must have been given before deciding up to `certain`.
    pub(crate) fn add(&mut self, hypotheses: impl IntoIterator<Item = Hypothesis>) {
        self.waiting.extend(hypotheses);
        self.waiting.make_contiguous().sort_by(|a, b| a.ready.cmp(&b.ready).then(a.clip.cmp(&b.clip)));
    }

    /// Decides what can be decided once everything up to `certain` is known.
    pub(crate) fn decide_up_to(&mut self, certain: u64, enrolled: &Enrolled) -> Vec<Detection> {
        let mut heard = Vec::new();
        while self.waiting.front().is_some_and(|v| v.ready + PATIENCE <= certain) {
            let Some(v) = self.waiting.pop_front() else { break };
            while self.recent.front().is_some_and(|r| r.ready + REMEMBERED < v.ready) {
                self.recent.pop_front();
            }
            while self.told.front().is_some_and(|t| t.ready + REMEMBERED < v.ready) {
                self.told.pop_front();
            }
            heard.extend(self.decide(&v, enrolled));
            self.recent.push_back(v);
        }
        heard
    }

    fn decide(&mut self, v: &Hypothesis, enrolled: &Enrolled) -> Option<Detection> {
        let words = enrolled.words();
        let one_word = |clip: usize| words[clip] == words[v.clip];
        let in_time = self.waiting.iter().take_while(|r| r.ready <= v.ready + PATIENCE);
        let others = in_time.chain(&self.recent);
        let better = |r: &Hypothesis| {
            (r.log_odds, r.ready, std::cmp::Reverse(r.clip)) > (v.log_odds, v.ready, std::cmp::Reverse(v.clip))
        };
        let seen = |clip: usize, at: (f64, f64)| one_word(clip) && same_press(v.place(), at, clip == v.clip);
        // The same press, seen better or told already.
        if others.clone().any(|r| better(r) && seen(r.clip, r.place())) || self.told.iter().any(|t| seen(t.clip, t.at))
        {
            return None;
        }
        let lead = greatest_lead(v, others.clone(), words);
        let now = v.onset / RATE as f64;
        let odds = v.log_odds
            + enrolled.weights.classifier.rivalry(lead)
            + self.history[v.clip].log_odds(v.speed, now, enrolled.speeds[v.clip])
            + self.activity.log_odds(now, enrolled.weights.idle_prior);
        let probability = classifier::probability(odds);
        let called = probability >= self.least;
        // One sound, two words too alike to be told apart: the better is told, and is no sign of the other's button.
        let twin = |clip: usize, at: (f64, f64)| {
            !one_word(clip) && together(v.place(), at) && enrolled.too_alike(clip, v.clip)
        };
        if called
            && (self.told.iter().any(|t| twin(t.clip, t.at))
                || others.clone().any(|r| better(r) && twin(r.clip, r.place())))
        {
            return None;
        }
        if probability > 0.05 {
            self.history[v.clip].add(now, v.speed, probability);
            self.activity.add(now, probability);
        }
        if !called {
            return None;
        }
        self.told.push_back(Told { clip: v.clip, at: v.place(), ready: v.ready });
        Some(Detection {
            word: words[v.clip].clone(),
            clip: v.clip,
            onset_s: now.max(0.0),
            confidence: probability,
            speed: v.speed,
            level_db: v.level_db,
            share: v.share,
        })
    }
}
