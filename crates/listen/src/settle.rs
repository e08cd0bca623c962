//! Decisions in the order of time: rivals, the button's usual speed, and how busy the board is.
//!
//! This is the only part with a memory longer than a clip, and it is cheap: sound can be examined in pieces, side by
//! side, and settled here in order with the same result.

use crate::ear::Heard;
use crate::judge;
use crate::sinc::RATE;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// A candidate that may be a press, waiting to be settled. Times in engine-rate samples.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Verdict {
    pub(crate) word: usize,
    /// Where the first look saw it start.
    pub(crate) at: u64,
    pub(crate) onset: f64,
    pub(crate) end: f64,
    /// When all sound needed to examine it was there; the order of settling.
    pub(crate) ready: u64,
    /// Log odds from its own sound.
    pub(crate) log_odds: f64,
    /// Logarithm of its coherence ratio.
    pub(crate) ratio: f64,
    pub(crate) speed: f64,
    pub(crate) level_db: f64,
    pub(crate) share: f64,
}

/// Engine-rate samples a verdict waits for rivals.
pub(crate) const PATIENCE: u64 = RATE as u64 / 10;
/// Speeds remembered per button.
const REMEMBERED: usize = 6;
/// Spread of one button's speed from press to press.
const SPEED_SPREAD: f64 = 0.0022;
/// Width of the range of speeds a false candidate may show.
const SPEED_RANGE: f64 = 0.1;
/// Seconds over which pressing counts as going on.
const BUSY_S: f64 = 300.0;
/// Prior odds of a press in a quiet home against those on a busy board.
const IDLE: f64 = 0.0006;
/// Presses within [`BUSY_S`] at which a board is busy.
const BUSY: f64 = 1.0;

/// What was believed of one candidate.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
struct Believed {
    time_s: f64,
    speed: f64,
    probability: f64,
}

/// Settles verdicts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Settler {
    words: Vec<String>,
    waiting: VecDeque<Verdict>,
    recent: VecDeque<Verdict>,
    history: Vec<VecDeque<Believed>>,
    /// Presses of late, fading; and the time it was last brought up to date.
    activity: (f64, f64),
    least: f64,
}

impl Settler {
    pub(crate) fn new(words: Vec<String>, least: f64) -> Self {
        let history = words.iter().map(|_| VecDeque::new()).collect();
        Self { words, waiting: VecDeque::new(), recent: VecDeque::new(), history, activity: (0.0, 0.0), least }
    }

    /// Takes verdicts in any order; all with `ready <= certain` must have been given before settling up to `certain`.
    pub(crate) fn add(&mut self, verdicts: impl IntoIterator<Item = Verdict>) {
        self.waiting.extend(verdicts);
        self.waiting.make_contiguous().sort_by(|a, b| a.ready.cmp(&b.ready).then(a.word.cmp(&b.word)));
    }

    /// Settles what can be settled once everything up to `certain` is known.
    pub(crate) fn settle(&mut self, certain: u64) -> Vec<Heard> {
        let mut heard = Vec::new();
        while self.waiting.front().is_some_and(|v| v.ready + PATIENCE <= certain) {
            let Some(v) = self.waiting.pop_front() else { break };
            while self.recent.front().is_some_and(|r| r.ready + 8 * (RATE as u64) < v.ready) {
                self.recent.pop_front();
            }
            heard.extend(self.decide(&v));
            self.recent.push_back(v);
        }
        heard
    }

    fn decide(&mut self, v: &Verdict) -> Option<Heard> {
        let in_time = self.waiting.iter().take_while(|r| r.ready <= v.ready + PATIENCE);
        let mut lead = 0.0f64;
        for r in in_time.chain(&self.recent) {
            let overlap = (v.end.min(r.end) - v.onset.max(r.onset)) / (v.end - v.onset).max(1.0);
            if r.word == v.word {
                // The same press seen twice; a re-press cannot come sooner than this.
                let near = (0.25 * RATE as f64).min(0.42 * (v.end - v.onset));
                if (r.onset - v.onset).abs() < near && (r.log_odds, r.ready) > (v.log_odds, v.ready) {
                    return None;
                }
            } else if overlap > 0.4 {
                lead = lead.max(r.ratio - v.ratio);
            }
        }
        let now = v.onset / RATE as f64;
        let odds = v.log_odds + judge::rivalry(lead) + self.busy(now) + self.usual_speed(v, now);
        let probability = judge::probability(odds);
        if probability > 0.05 {
            let past = &mut self.history[v.word];
            past.push_back(Believed { time_s: now, speed: v.speed, probability });
            if past.len() > REMEMBERED {
                past.pop_front();
            }
            self.activity.0 += (2.0 * probability - 1.0).max(0.0);
        }
        (probability >= self.least).then(|| Heard {
            word: self.words[v.word].clone(),
            onset_s: now.max(0.0),
            confidence: probability,
            speed: v.speed,
            level_db: v.level_db,
            share: v.share,
        })
    }

    /// Change of the log odds for how busy the board has been.
    fn busy(&mut self, now: f64) -> f64 {
        let fade = (-(now - self.activity.1).max(0.0) / BUSY_S).exp();
        self.activity = (self.activity.0 * fade, now.max(self.activity.1));
        (IDLE + self.activity.0 / BUSY).min(1.0).ln()
    }

    /// Change of the log odds for a speed like, or unlike, those this button has had.
    ///
    /// A button keeps its speed, or slows as its battery tires; a chance match has any speed.
    fn usual_speed(&self, v: &Verdict, now: f64) -> f64 {
        let (mut sum, mut weight) = (0.5, 0.5);
        for b in &self.history[v.word] {
            let since = (now - b.time_s).max(0.0);
            let z = (v.speed - b.speed) / SPEED_SPREAD;
            let mut density = 0.9 * (-0.5 * z * z).exp() / (SPEED_SPREAD * (2.0 * std::f64::consts::PI).sqrt());
            let slowing = (0.0004 * since + 0.004).min(0.06);
            if v.speed > b.speed - slowing && v.speed < b.speed + 0.002 {
                density += 0.1 / (slowing + 0.002);
            }
            sum += b.probability * density * SPEED_RANGE;
            weight += b.probability;
        }
        (sum / weight).ln()
    }
}
