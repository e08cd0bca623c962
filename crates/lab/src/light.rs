//! Light learners for laboratory use: bare draws instead of events, thousands in a moment.
//!
//! Indices stand for words and items. Degenerate input (no words, no items) gives empty output.

use sayso_sim::{Chance, logistic};

/// Who presses in [`presses`].
#[derive(Clone, PartialEq, Debug)]
pub enum LightPresser {
    /// Any word, whatever is wanted.
    Random,
    /// Words in proportion to these weights, whatever is wanted: a habit of place.
    PlaceHabit(Vec<f64>),
    /// The word of the thing wanted with this probability, otherwise any word.
    Understands(f64),
}

/// One press of a light learner.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct LightPress {
    /// The session it fell in, from 0.
    pub session: usize,
    /// The word of the thing wanted.
    pub wanted: usize,
    /// The word pressed.
    pub pressed: usize,
    /// Whether what came was taken.
    pub took: bool,
    /// Where something else came than what was wanted: the word pressed next, if any.
    pub then: Option<usize>,
}

/// A home of [`presses`].
#[derive(Clone, PartialEq, Debug)]
pub struct LightSetting {
    /// Words on the board.
    pub words: usize,
    /// Sessions.
    pub sessions: usize,
    /// Presses a session.
    pub per_session: usize,
    /// Probability of taking a thing that was wanted.
    pub takes_wanted: f64,
    /// Probability of taking a thing that was not wanted. Above 0 for any thing liked: uptake alone proves little.
    pub takes_unwanted: f64,
    /// Probability of pressing again after something else came than what was wanted.
    pub corrects: f64,
    /// Probability that what is wanted is the same as just before in the session: wants come in runs.
    pub same_want: f64,
}

impl Default for LightSetting {
    fn default() -> Self {
        Self {
            words: 4,
            sessions: 20,
            per_session: 8,
            takes_wanted: 0.9,
            takes_unwanted: 0.45,
            corrects: 0.6,
            same_want: 0.3,
        }
    }
}

/// Presses of one light learner, each answered with the thing of the word pressed.
///
/// # Example
/// ```
/// use sayso_lab::{LightSetting, LightPresser, presses};
/// let knows = presses(&LightPresser::Understands(0.9), &LightSetting::default(), 1);
/// let right = knows.iter().filter(|p| p.pressed == p.wanted).count();
/// assert!(right as f64 / knows.len() as f64 > 0.8);
/// ```
#[must_use]
pub fn presses(presser: &LightPresser, setting: &LightSetting, seed: u64) -> Vec<LightPress> {
    let mut c = Chance::new(seed, 21);
    let n = setting.words;
    if n == 0 {
        return Vec::new();
    }
    let aim = |c: &mut Chance, wanted: usize| match presser {
        LightPresser::Random => c.below(n),
        LightPresser::PlaceHabit(weights) => c.pick(weights.get(..n).unwrap_or(weights)).unwrap_or_else(|| c.below(n)),
        LightPresser::Understands(p) => {
            if c.coin(*p) {
                wanted
            } else {
                c.below(n)
            }
        }
    };
    let mut out = Vec::with_capacity(setting.sessions * setting.per_session);
    for session in 0..setting.sessions {
        let mut wanted = c.below(n);
        for _ in 0..setting.per_session {
            if !c.coin(setting.same_want) {
                wanted = c.below(n);
            }
            let pressed = aim(&mut c, wanted);
            let took = c.coin(if pressed == wanted { setting.takes_wanted } else { setting.takes_unwanted });
            let then = (pressed != wanted && !took && c.coin(setting.corrects)).then(|| aim(&mut c, wanted));
            out.push(LightPress { session, wanted, pressed, took, then });
        }
    }
    out
}

/// Invitations of a light learner whose knowledge grows: outcomes and the truth behind each.
#[derive(Clone, PartialEq, Debug)]
pub struct LightCurve {
    /// Pressed in the wait, where the thing was wanted.
    pub pressed: Vec<bool>,
    /// The true probability in each trial.
    pub probability: Vec<f64>,
}

/// A learning curve: x(k+1) = x(k) + gain + noise * N(0, 1), p(k) = logistic(x(k)).
///
/// The state-space model of Smith et al. 2004 (J Neurosci 24:447) with a drift.
#[must_use]
pub fn learning_curve(first_logit: f64, gain: f64, noise: f64, trials: usize, seed: u64) -> LightCurve {
    let mut c = Chance::new(seed, 22);
    let mut x = first_logit;
    let (mut pressed, mut probability) = (Vec::with_capacity(trials), Vec::with_capacity(trials));
    for _ in 0..trials {
        let p = logistic(x);
        probability.push(p);
        pressed.push(c.coin(p));
        x += gain + noise * c.normal();
    }
    LightCurve { pressed, probability }
}

/// How presses come together, for [`bouts`].
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Bouts {
    /// Presses expected over all days.
    pub presses: f64,
    /// Days.
    pub days: u32,
    /// Presses in a bout: always so many, or, if `geometric`, so many on average.
    pub size: f64,
    /// Whether sizes differ.
    pub geometric: bool,
    /// Spread of the logarithm of a day's rate: good and bad days.
    pub day_spread: f64,
}

/// Times of presses in days from the start: bouts at random between 7 and 22 o'clock, about a minute from press to press.
#[must_use]
pub fn bouts(how: &Bouts, seed: u64) -> Vec<f64> {
    let mut c = Chance::new(seed, 46);
    let mut times = Vec::new();
    let mean = how.presses / how.size / f64::from(how.days);
    for day in 0..how.days {
        // Multiplied by a factor with mean 1.
        let today = mean * (how.day_spread * c.normal() - how.day_spread * how.day_spread / 2.0).exp();
        let mut spent = c.exponential(1.0);
        while spent < today {
            let mut at = f64::from(day) + c.between(7.0, 22.0) / 24.0;
            let mut pressed = 0.0;
            loop {
                times.push(at);
                pressed += 1.0;
                let over = if how.geometric { c.coin(1.0 / how.size) } else { pressed >= how.size };
                if over {
                    break;
                }
                at += c.exponential(1.0 / 1440.0);
            }
            spent += c.exponential(1.0);
        }
    }
    times.retain(|t| *t < f64::from(how.days));
    times.sort_by(f64::total_cmp);
    times
}

/// Latencies under a fixed wait: (seconds, pressed). Log-normal; what lies beyond the wait is censored at it.
/// A share `never` does not press at all.
#[must_use]
pub fn latencies(median_s: f64, spread: f64, never: f64, wait_s: f64, n: usize, seed: u64) -> Vec<(f64, bool)> {
    let mut c = Chance::new(seed, 23);
    (0..n)
        .map(|_| {
            let t = c.lognormal(median_s, spread);
            if c.coin(never) || t > wait_s { (wait_s, false) } else { (t, true) }
        })
        .collect()
}

/// A light chooser: strengths are logits, `none` is the logit of choosing nothing.
#[derive(Clone, PartialEq, Debug)]
pub struct Chooser {
    /// One logit per item.
    pub strengths: Vec<f64>,
    /// Logits by which the left is favoured over the right.
    pub side_bias: f64,
    /// Logit of choosing none; minus infinity for a learner that always chooses.
    pub none: f64,
}

impl Chooser {
    fn choose(&self, offered: &[usize], c: &mut Chance) -> Option<usize> {
        let last = offered.len().saturating_sub(1);
        #[allow(clippy::cast_precision_loss)]
        let side = |i: usize| if last == 0 { 0.0 } else { 0.5 - i as f64 / last as f64 };
        let mut weights: Vec<f64> = offered
            .iter()
            .enumerate()
            .map(|(i, item)| (self.strengths[*item] + side(i) * self.side_bias).exp())
            .collect();
        weights.push(self.none.exp());
        c.pick(&weights).and_then(|i| offered.get(i)).copied()
    }

    /// Every pair in each round, sides alternating: (left, right, chosen).
    ///
    /// # Example
    /// ```
    /// let c = sayso_lab::Chooser { strengths: vec![3.0, 0.0], side_bias: 0.0, none: f64::NEG_INFINITY };
    /// let wins = c.paired(200, 1).iter().filter(|t| t.2 == Some(0)).count();
    /// assert!(wins > 170); // expected 190.5, standard deviation 3.0
    /// ```
    #[must_use]
    pub fn paired(&self, rounds: usize, seed: u64) -> Vec<(usize, usize, Option<usize>)> {
        let mut c = Chance::new(seed, 24);
        let mut out = Vec::new();
        for round in 0..rounds {
            let mut pairs = Vec::new();
            for a in 0..self.strengths.len() {
                for b in a + 1..self.strengths.len() {
                    pairs.push(if (pairs.len() + round) % 2 == 0 { [a, b] } else { [b, a] });
                }
            }
            c.shuffle(&mut pairs);
            for pair in pairs {
                out.push((pair[0], pair[1], self.choose(&pair, &mut c)));
            }
        }
        out
    }

    /// Rounds without replacement: for each, the items in the order chosen; what was never chosen is missing.
    #[must_use]
    pub fn multiple(&self, rounds: usize, seed: u64) -> Vec<Vec<usize>> {
        let mut c = Chance::new(seed, 25);
        (0..rounds)
            .map(|_| {
                let mut left: Vec<usize> = (0..self.strengths.len()).collect();
                c.shuffle(&mut left);
                let mut order = Vec::new();
                while let Some(item) = self.choose(&left, &mut c) {
                    order.push(item);
                    left.retain(|x| *x != item);
                }
                order
            })
            .collect()
    }

    /// One item at a time: (item, approached), each item once a round.
    #[must_use]
    pub fn single(&self, rounds: usize, seed: u64) -> Vec<(usize, bool)> {
        let mut c = Chance::new(seed, 26);
        let mut out = Vec::new();
        for _ in 0..rounds {
            let mut order: Vec<usize> = (0..self.strengths.len()).collect();
            c.shuffle(&mut order);
            for item in order {
                out.push((item, c.coin(logistic(self.strengths[item]))));
            }
        }
        out
    }

    /// Free access: seconds with each item out of `observed_s`, in bouts of a mean of 25 s.
    #[must_use]
    pub fn free(&self, observed_s: f64, seed: u64) -> Vec<f64> {
        let mut c = Chance::new(seed, 27);
        let weights: Vec<f64> =
            self.strengths.iter().map(|s| s.exp()).chain(std::iter::once(self.none.exp())).collect();
        let (mut spent, mut left) = (vec![0.0; self.strengths.len()], observed_s);
        while left > 0.0 {
            let bout = c.exponential(25.0).min(left);
            left = if left - bout > 0.01 { left - bout } else { 0.0 };
            if let Some(i) = c.pick(&weights)
                && let Some(s) = spent.get_mut(i)
            {
                *s += bout;
            }
        }
        spent
    }
}
