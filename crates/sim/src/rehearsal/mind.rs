//! What the animal wants and what it has learned, as in the simulated homes, hurried.

use super::character::Traits;
use super::exercise::Exercise;
use super::hidden::Hidden;
use super::luck::{Luck, Of};
use super::pairing::{LOGITS, Pairing, after};
use super::thing::Thing;
use crate::chance::logistic;

/// Share of meant presses left when everything is known.
const TOP: f64 = 0.95;
/// Bounds of how much oftener or more rarely than at first it asks for a thing.
const DEMAND: (f64, f64) = (0.3, 2.5);
/// Log-odds of wanting nothing in particular.
const NOTHING: f64 = -1.0;
/// Seconds in which what was had is half forgotten by the appetite.
const RECOVERS_S: f64 = 60.0;

/// Its mind.
#[derive(Clone, Debug)]
pub(super) struct Mind {
    pub traits: Traits,
    pub luck: Luck,
    /// What it likes, by place: log-odds.
    pub likes: [f64; 4],
    sated: [f64; 4],
    /// Logits of understanding, by place.
    pub logit: [f64; 4],
    /// What taught it, in order.
    pub pairings: Vec<Pairing>,
    /// How it asks for each, against the beginning.
    pub demand: [f64; 4],
    /// What it wants now.
    pub want: Option<Thing>,
    next_want_ms: u32,
}

impl Mind {
    pub fn new(traits: Traits, exercise: Exercise, luck: Luck) -> Self {
        let mut c = luck.of(Of::Likes, 0);
        let likes = traits.likes.map(|like| like + traits.likes_spread * c.normal());
        let known = Hidden::drawn(exercise, luck).map_or_else(|| exercise.known(), Hidden::known);
        let known = if traits.means { known } else { [LOGITS.0; 4] };
        let (sated, demand) = ([0.0; 4], [1.0; 4]);
        Self { traits, luck, likes, sated, logit: known, pairings: Vec::new(), demand, want: None, next_want_ms: 0 }
    }

    /// Time goes on.
    pub fn step(&mut self, now: u32, dt_s: f64) {
        for sated in &mut self.sated {
            *sated *= (-dt_s * std::f64::consts::LN_2 / RECOVERS_S).exp();
        }
        if now >= self.next_want_ms {
            let mut c = self.luck.of(Of::Wants, now);
            let mut weights = [0.0; 5];
            for thing in Thing::ALL {
                weights[thing.place()] = self.appeal(thing).exp() * self.demand[thing.place()];
            }
            weights[4] = NOTHING.exp();
            self.want = c.pick(&weights).and_then(Thing::at);
            self.wants_anew(now, c.between(15.0, 30.0));
        }
    }

    /// It thinks of something else in so many seconds.
    pub fn wants_anew(&mut self, now: u32, in_s: f64) {
        self.next_want_ms = now + ms(in_s);
    }

    /// Log-odds of wanting a thing now.
    pub fn appeal(&self, thing: Thing) -> f64 {
        self.likes[thing.place()] - self.sated[thing.place()]
    }

    /// Whether it takes a thing that lies there, and likes it.
    pub fn takes(&self, thing: Thing, now: u32) -> bool {
        let more = if self.want == Some(thing) { 1.5 } else { 0.0 };
        self.luck.of(Of::Takes, now).coin(logistic(self.appeal(thing) + more))
    }

    /// What it likes most now.
    pub fn best(&self) -> Thing {
        Thing::ALL.into_iter().max_by(|a, b| self.appeal(*a).total_cmp(&self.appeal(*b))).unwrap_or(Thing::Treat)
    }

    /// It had a portion.
    pub fn has(&mut self, thing: Thing) {
        self.sated[thing.place()] += thing.sates();
    }

    /// Probability of a meant press, given that it wants the thing.
    pub fn understands(&self, thing: Thing) -> f64 {
        understanding(self.logit[thing.place()])
    }

    /// One pairing of a press with what came of it.
    pub fn learns(&mut self, pairing: Pairing) {
        self.pairings.push(pairing);
        self.logit = after(&self.traits, self.logit, [pairing]);
    }

    /// Asking was worth it, or not.
    pub fn paid(&mut self, thing: Thing, by: f64) {
        let demand = &mut self.demand[thing.place()];
        *demand = (*demand * by).clamp(DEMAND.0, DEMAND.1);
    }

    /// The button it presses when it means this one.
    pub fn aims(&self, thing: Thing, now: u32) -> Thing {
        let mut c = self.luck.of(Of::Presses, now.wrapping_add(1));
        if !self.traits.means {
            return Thing::ALL[c.below(4)];
        }
        if c.coin(self.traits.slips) { Thing::ALL[thing.place() ^ 1] } else { thing }
    }
}

/// The probability that goes with a logit of understanding.
#[must_use]
pub fn understanding(logit: f64) -> f64 {
    TOP * logistic(logit)
}

/// Seconds as milliseconds of the rehearsal.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
pub(super) fn ms(seconds: f64) -> u32 {
    (seconds.clamp(0.0, 1e6) * 1000.0).round() as u32
}
