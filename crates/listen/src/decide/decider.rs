//! Decisions in the order of time: rivals, the button's usual speed, and how busy the board is.
//!
//! This is the only part with a memory longer than a clip, and it is cheap: sound can be examined in pieces, side by
//! side, and decided here in order with the same result.

use crate::decide::classifier;
use crate::decide::hypothesis::Hypothesis;
use crate::decide::prior::{Activity, SpeedHistory, one_press};
use crate::decide::rivals::{greatest_lead, overlap, together};
use crate::detection::{Detection, SURE, by_onset};
use crate::dsp::resampler::RATE;
use crate::enrolled::Enrolled;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;

/// Engine-rate samples a hypothesis waits for rivals.
pub(crate) const PATIENCE: u64 = RATE as u64 / 10;
/// Engine-rate samples for which what was decided may still stand against what comes.
const REMEMBERED: u64 = 8 * RATE as u64;
/// Engine-rate samples for which what was not told may still be, once presses that were show that the board is in use.
const HELD: u64 = 120 * RATE as u64;
/// Log odds of its own sound, on a board in use, from which it may be: its button's usual speed alone must not make it sure.
const LIKELY: f64 = 1.0;
/// Presses of late that show it. More than make a board busy, so that a few false ones, as of a toy that talks, call up no more.
const IN_USE: f64 = 4.0;

/// A press that was told: its clip, where it lay, and when it was ready.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Told {
    clip: usize,
    at: (f64, f64),
    ready: u64,
}

/// What would be a press on a board in use, and came where none was known to be.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
struct Held {
    of: Hypothesis,
    /// Log odds from its own sound and its rivals.
    odds: f64,
}

/// Decides hypotheses, with non-maximum suppression of the same press seen twice. Each press told makes it likelier that the
/// board is in use, and so may tell what came before it: only then is anything told late.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub(crate) struct Decider {
    waiting: VecDeque<Hypothesis>,
    recent: VecDeque<Hypothesis>,
    #[serde(default)]
    told: VecDeque<Told>,
    #[serde(default)]
    held: VecDeque<Held>,
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

/// Whether another word, of this clip and place, is the same sound and too alike to be told apart.
fn is_twin(v: &Hypothesis, (clip, at): (usize, (f64, f64)), enrolled: &Enrolled) -> bool {
    let words = enrolled.words();
    words[clip] != words[v.clip] && together(v.place(), at) && enrolled.too_alike(clip, v.clip)
}

impl Decider {
    pub(crate) fn new(clips: usize, least: f64) -> Self {
        let history = vec![SpeedHistory::default(); clips];
        let (waiting, recent, told, held) = (VecDeque::new(), VecDeque::new(), VecDeque::new(), VecDeque::new());
        Self { waiting, recent, told, held, history, activity: Activity::default(), least }
    }

    /// Takes hypotheses in any order; all with `ready <= certain` must have been given before deciding up to `certain`.
    pub(crate) fn add(&mut self, hypotheses: impl IntoIterator<Item = Hypothesis>) {
        self.waiting.extend(hypotheses);
        self.waiting.make_contiguous().sort_by(|a, b| a.ready.cmp(&b.ready).then(a.clip.cmp(&b.clip)));
    }

    /// Decides what can be decided once everything up to `certain` is known; in order of onset.
    pub(crate) fn decide_up_to(&mut self, certain: u64, enrolled: &Enrolled) -> Vec<Detection> {
        let mut heard = Vec::new();
        while self.waiting.front().is_some_and(|v| v.ready + PATIENCE <= certain) {
            let Some(v) = self.waiting.pop_front() else { break };
            while self.recent.front().is_some_and(|r| r.ready + REMEMBERED < v.ready) {
                self.recent.pop_front();
            }
            while self.held.front().is_some_and(|h| h.of.ready + HELD < v.ready) {
                self.held.pop_front();
            }
            self.told.retain(|t| t.ready + HELD + REMEMBERED >= v.ready);
            if let Some(press) = self.decide(&v, enrolled) {
                heard.push(press);
                heard.extend(std::iter::from_fn(|| self.late(enrolled)));
            }
            self.recent.push_back(v);
        }
        by_onset(&mut heard);
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
        let odds = v.log_odds + enrolled.weights.classifier.rivalry(lead);
        let probability = self.probability(v, odds, enrolled);
        let called = probability >= self.least;
        // One sound, two words too alike to be told apart: the better is told, and is no sign of the other's button.
        if called
            && (self.twin_told(v, enrolled)
                || others.clone().any(|r| better(r) && is_twin(v, (r.clip, r.place()), enrolled)))
        {
            return None;
        }
        if probability > 0.05 {
            self.history[v.clip].add(v.onset_s(), v.speed, probability);
            self.activity.add(v.onset_s(), probability);
        }
        if called {
            return Some(self.tell(v, probability, enrolled));
        }
        if odds > LIKELY {
            self.held.push_back(Held { of: v.clone(), odds });
        }
        None
    }

    /// The likeliest of what was held that is surely a press by what is known now; none where nothing is.
    fn late(&mut self, enrolled: &Enrolled) -> Option<Detection> {
        if self.activity.presses() < IN_USE {
            return None;
        }
        let (words, least) = (enrolled.words(), self.least.max(SURE));
        let mut likely: Option<(f64, usize)> = None;
        for (at, Held { of, odds }) in self.held.iter().enumerate() {
            let seen = |t: &Told| words[t.clip] == words[of.clip] && same_press(of.place(), t.at, t.clip == of.clip);
            let probability = self.probability(of, *odds, enrolled);
            if probability >= least.max(likely.map_or(0.0, |l| l.0))
                && !self.told.iter().any(seen)
                && !self.twin_told(of, enrolled)
            {
                likely = Some((probability, at));
            }
        }
        let (probability, at) = likely?;
        let Held { of, .. } = self.held.remove(at)?;
        self.history[of.clip].add(of.onset_s(), of.speed, probability);
        if !self.told.iter().any(|t| one_press(t.at.0 / RATE as f64, of.onset_s())) {
            self.activity.add_late(probability);
        }
        Some(self.tell(&of, probability, enrolled))
    }

    /// Probability of a press, given its log odds from its own sound and its rivals.
    fn probability(&self, v: &Hypothesis, odds: f64, enrolled: &Enrolled) -> f64 {
        let now = v.onset_s();
        classifier::probability(
            odds + self.history[v.clip].log_odds(v.speed, now, enrolled.speeds[v.clip])
                + self.activity.log_odds(now, enrolled.weights.idle_prior),
        )
    }

    /// Whether a word too alike to be told apart was told of this sound.
    fn twin_told(&self, v: &Hypothesis, enrolled: &Enrolled) -> bool {
        self.told.iter().any(|t| is_twin(v, (t.clip, t.at), enrolled))
    }

    fn tell(&mut self, v: &Hypothesis, probability: f64, enrolled: &Enrolled) -> Detection {
        self.told.push_back(Told { clip: v.clip, at: v.place(), ready: v.ready });
        Detection {
            word: enrolled.words()[v.clip].clone(),
            clip: v.clip,
            onset_s: v.onset_s().max(0.0),
            confidence: probability,
            speed: v.speed,
            level_db: v.level_db,
            share: v.share,
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::enrolled::Pace;
    use crate::io::clip::Clip;

    /// Two words nothing alike.
    fn enrolled() -> Enrolled {
        let tone = |hz: f32| (0..RATE).map(|i| (i as f32 / RATE as f32 * hz * std::f32::consts::TAU).sin()).collect();
        let clip = |word: &str, hz| Clip::from_samples(word, tone(hz), RATE as u32).unwrap();
        Enrolled::new(&[clip("low", 500.0), clip("high", 1_900.0)], Pace::Live).unwrap()
    }

    fn candidate(clip: usize, onset_s: f64, log_odds: f64) -> Hypothesis {
        let at = |s: f64| s * RATE as f64;
        let (onset, end, ready) = (at(onset_s), at(onset_s + 1.0), at(onset_s + 1.2) as u64);
        let at = onset as u64;
        Hypothesis { clip, at, onset, end, ready, log_odds, ratio: 1.0, speed: 1.0, level_db: -20.0, share: 1.0 }
    }

    /// What is told by then, as clip and whole seconds, each time it is asked.
    fn told(of: &[Hypothesis], by_s: &[f64]) -> Vec<Vec<(usize, u64)>> {
        let (enrolled, mut decider) = (enrolled(), Decider::new(2, 0.55));
        decider.add(of.iter().cloned());
        let mut ask = |s: &f64| decider.decide_up_to((s * RATE as f64) as u64, &enrolled);
        by_s.iter().map(|s| ask(s).iter().map(|h| (h.clip, h.onset_s as u64)).collect()).collect()
    }

    #[test]
    fn a_press_that_was_unsure_is_told_once_the_board_is_in_use() {
        let (unsure, sure) = (|s| candidate(0, s, 3.0), |s| candidate(1, s, 14.0));
        // Four are not enough, as they fade, and five are; nothing is told twice, and what comes together comes in order.
        let mut of = vec![unsure(1.0)];
        of.extend([11.0, 21.0, 31.0, 41.0, 51.0, 61.0].map(sure));
        let first = vec![(1, 11), (1, 21), (1, 31), (1, 41)];
        assert_eq!(told(&of, &[10.0, 50.0, 60.0, 1e6]), [vec![], first, vec![(0, 1), (1, 51)], vec![(1, 61)]]);
        // Nor is one that came too long before, or that is not sure even so.
        let after: Vec<Hypothesis> = [125.0, 127.0, 129.0, 131.0, 133.0].map(sure).to_vec();
        let late = |first: Hypothesis| told(&[vec![first], after.clone()].concat(), &[1e6])[0].len();
        assert_eq!([late(unsure(1.0)), late(unsure(100.0)), late(candidate(0, 100.0, 2.0))], [5, 6, 5]);
    }

    #[test]
    fn where_nothing_is_told_nothing_is_told_late() {
        let of: Vec<Hypothesis> = (0..200).map(|i| candidate(i % 2, 3.0 * i as f64, 3.0)).collect();
        assert_eq!(told(&of, &[1e6]), [[]]);
    }

    #[test]
    fn one_press_seen_twice_is_told_once_also_late() {
        // The worse of one word at one place; and of what was told.
        let mut of = vec![candidate(0, 1.0, 3.1), candidate(0, 1.1, 3.0), candidate(1, 11.1, 3.0)];
        of.extend([11.0, 13.0, 15.0, 17.0, 19.0].map(|s| candidate(1, s, 14.0)));
        assert_eq!(told(&of, &[1e6]), [[(0, 1), (1, 11), (1, 13), (1, 15), (1, 17), (1, 19)]]);
    }

    #[test]
    fn what_is_held_can_be_stored_and_taken_up() {
        let (enrolled, mut decider) = (enrolled(), Decider::new(2, 0.55));
        decider.add([candidate(0, 1.0, 3.0)]);
        assert!(decider.decide_up_to(10 * RATE as u64, &enrolled).is_empty());
        let mut stored: Decider = serde_json::from_str(&serde_json::to_string(&decider).unwrap()).unwrap();
        assert_eq!(stored, decider);
        stored.add([11.0, 13.0, 15.0, 17.0, 19.0].map(|s| candidate(1, s, 14.0)));
        assert_eq!(stored.decide_up_to(u64::MAX, &enrolled).len(), 6);
    }
}
