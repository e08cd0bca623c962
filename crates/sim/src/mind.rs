//! The state of one learner's mind as the days go by: mood, drift, satiation, understanding, demand.

use crate::animal::{AnimalTruth, Liking};
use crate::chance::{Chance, logistic};
use sayso_model::Moment;

/// Mood lost by an unwell learner, and logits lost of every want.
const UNWELL: (f64, f64) = (2.5, 1.0);
/// Bounds of the demand multiplier of a word.
const DEMAND: (f64, f64) = (0.3, 2.5);

/// The changing state of one learner.
#[derive(Clone, Debug)]
pub(crate) struct Mind<'a> {
    pub(crate) truth: &'a AnimalTruth,
    mood: f64,
    drift: Vec<f64>,
    sated: Vec<(f64, Option<Moment>)>,
    logit: Vec<f64>,
    demand: Vec<f64>,
    shown_today: Vec<bool>,
    day: u32,
}

/// Log-odds added by the local hour: a cosine with its top at `peak`.
fn swing(hour: f64, peak: f64, size: f64) -> f64 {
    size * (std::f64::consts::TAU * (hour - peak) / 24.0).cos()
}

impl<'a> Mind<'a> {
    pub(crate) fn new(truth: &'a AnimalTruth, rewards: usize, words: usize, chance: &mut Chance) -> Self {
        let first = truth.presser.first_logit;
        Self {
            truth,
            mood: chance.normal(),
            drift: (0..rewards).map(|r| truth.likes.get(r).map_or(0.0, |l| l.drift_sd * chance.normal())).collect(),
            sated: vec![(0.0, None); rewards],
            logit: vec![first; words],
            demand: vec![1.0; words],
            shown_today: vec![false; words],
            day: 0,
        }
    }

    /// Mood and likes move on to another day; what was not shown is forgotten a little.
    pub(crate) fn new_day(&mut self, day: u32, chance: &mut Chance) {
        self.day = day;
        let keep = self.truth.temper.mood_keep.clamp(0.0, 0.999);
        self.mood = keep * self.mood + (1.0 - keep * keep).sqrt() * chance.normal();
        for (drift, like) in self.drift.iter_mut().zip(&self.truth.likes) {
            let keep = like.drift_keep.clamp(0.0, 0.999);
            *drift = keep * *drift + like.drift_sd * (1.0 - keep * keep).sqrt() * chance.normal();
        }
        let p = &self.truth.presser;
        for (logit, shown) in self.logit.iter_mut().zip(&mut self.shown_today) {
            if !*shown {
                *logit = p.first_logit + (*logit - p.first_logit) * (1.0 - p.forgets);
            }
            *shown = false;
        }
        for demand in &mut self.demand {
            *demand += 0.1 * (1.0 - *demand);
        }
    }

    /// The mood at a local hour.
    pub(crate) fn mood(&self, hour: f64) -> f64 {
        let temper = &self.truth.temper;
        let noise = temper.noise.filter(|n| (n.from..n.to).contains(&hour)).map_or(0.0, |n| n.mood);
        let unwell = if self.unwell() { UNWELL.0 } else { 0.0 };
        self.mood - noise - unwell
    }

    fn unwell(&self) -> bool {
        self.truth.temper.unwell_from.is_some_and(|d| self.day >= d)
    }

    /// Probability of joining a session with that mood at that hour.
    pub(crate) fn joins(&self, mood: f64, hour: f64) -> f64 {
        let t = &self.truth.temper;
        let away = if self.unwell() { t.unwell_stays_away } else { 0.0 };
        logistic(t.join + t.join_mood * mood + swing(hour, t.best_hour, t.hour_swing) - away)
    }

    /// Probability of leaving after a turn of a session.
    pub(crate) fn leaves(&self, mood: f64, turn: u16) -> f64 {
        let t = &self.truth.temper;
        let tired = 1.0 + f64::from(turn) / t.tires_after.max(1.0);
        (t.leave * tired * (-0.6 * mood).exp()).clamp(0.0, 1.0)
    }

    fn like(&self, reward: usize) -> Option<&Liking> {
        self.truth.likes.get(reward)
    }

    /// Logit of wanting a reward now.
    pub(crate) fn appeal(&self, reward: usize, at: Moment, hour: f64) -> f64 {
        let Some(like) = self.like(reward) else { return -8.0 };
        let (sated, since) = self.sated[reward];
        let left = since.map_or(0.0, |s| sated * (-at.seconds_since(s) / 3600.0 / like.recovery_h.max(0.01)).exp());
        let unwell = if self.unwell() { UNWELL.1 } else { 0.0 };
        like.strength + self.drift[reward] + swing(hour, like.hour_peak, like.hour_swing) - left - unwell
    }

    /// Probability of wanting a reward now.
    pub(crate) fn wants(&self, reward: usize, at: Moment, hour: f64) -> f64 {
        logistic(self.appeal(reward, at, hour))
    }

    /// Probability of wanting a reward, unsated, averaged over the hours of today.
    pub(crate) fn wants_all_day(&self, reward: usize) -> f64 {
        let Some(like) = self.like(reward) else { return 0.0 };
        let base = like.strength + self.drift[reward] - if self.unwell() { UNWELL.1 } else { 0.0 };
        let at = |h: u32| logistic(base + swing(f64::from(h), like.hour_peak, like.hour_swing));
        (0..24).map(at).sum::<f64>() / 24.0
    }

    /// The learner had `portion` of a reward.
    pub(crate) fn has(&mut self, reward: usize, portion: f64, at: Moment) {
        let Some(like) = self.like(reward).copied() else { return };
        let (sated, since) = self.sated[reward];
        let left = since.map_or(0.0, |s| sated * (-at.seconds_since(s) / 3600.0 / like.recovery_h.max(0.01)).exp());
        self.sated[reward] = (left + like.satiation * portion, Some(at));
    }

    /// Probability of a meant press, given wanting and opportunity.
    pub(crate) fn understands(&self, word: usize) -> f64 {
        self.truth.presser.top * logistic(self.logit[word])
    }

    /// One pairing of press and thing, `delay_s` apart; `weight` 1 for a showing, below 0 where something else came.
    pub(crate) fn learns(&mut self, word: usize, ease: f64, delay_s: f64, weight: f64, chance: &mut Chance) {
        let p = &self.truth.presser;
        let step = p.rate * ease * weight * (-delay_s / p.delay_tau_s.max(0.1)).exp();
        let next = self.logit[word] + step + p.noise_sd * chance.normal();
        self.logit[word] = next.clamp(p.first_logit, p.most_logit.max(p.first_logit));
        self.shown_today[word] = true;
    }

    /// Seconds from an offer to a meant press: slower while the word is new.
    pub(crate) fn latency(&self, word: usize, chance: &mut Chance) -> f64 {
        let p = &self.truth.presser;
        chance.lognormal(p.latency_s * (3.0 - 2.0 * logistic(self.logit[word])), p.latency_spread).clamp(0.3, 300.0)
    }

    /// How often the learner asks for a word's thing, against the first day.
    pub(crate) fn demand(&self, word: usize) -> f64 {
        self.demand[word]
    }

    /// Asking was worth it, or not.
    pub(crate) fn paid(&mut self, word: usize, yes: bool) {
        let d = &mut self.demand[word];
        *d = (*d * if yes { 1.04 } else { 0.93 }).clamp(DEMAND.0, DEMAND.1);
    }
}
