//! What the choice of first words starts from.

use crate::words::alike::AlikeRule;
use sayso_model::{Language, RewardKind};
use std::ops::RangeInclusive;

/// How much something is liked, with its uncertainty: the probability that it is taken rather than an average item.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Liking {
    /// Best estimate, 0 to 1.
    pub mean: f64,
    /// Standard error.
    pub sd: f64,
}

impl Liking {
    /// Never tested: any value from 0 to 1 is as likely as another.
    pub const UNTESTED: Self = Self { mean: 0.5, sd: 0.288_675_134_594_812_9 };

    /// From a log-odds strength against the average item and its standard error (first-order approximation).
    ///
    /// ```
    /// use sayso_methods::words::Liking;
    /// let average = Liking::from_log_odds(0.0, 0.4);
    /// assert!((average.mean - 0.5).abs() < 1e-12 && (average.sd - 0.1).abs() < 1e-12);
    /// ```
    pub fn from_log_odds(strength: f64, standard_error: f64) -> Self {
        let mean = 1.0 / (1.0 + (-strength).exp());
        Self { mean, sd: mean * (1.0 - mean) * standard_error }
    }

    pub(super) fn is_usable(self) -> bool {
        (0.0..=1.0).contains(&self.mean) && self.sd >= 0.0 && self.sd.is_finite()
    }
}

/// Something a first word could stand for.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// What the button would say.
    pub says: String,
    /// Kind of reward.
    pub kind: RewardKind,
    /// How much it is liked.
    pub liking: Liking,
    /// Whether it can be given at the board, again and again.
    pub at_board: bool,
    /// Seconds from press to done at the board, if known.
    pub seconds: Option<f64>,
    /// How often a day before people or the learner have had enough, if there is a limit.
    pub most_per_day: Option<u32>,
    /// Pieces a day the ration allows of it alone; none for what is not eaten.
    pub ration_pieces: Option<u32>,
    /// Whether it must not be given at all (a food listed as "never", a danger in the home).
    pub barred: bool,
    /// Whether it is to be given only a little, or better not: of two that are as good, the other is taken.
    pub cautioned: bool,
    /// Whether the household already says this word many times a day.
    pub already_said: bool,
}

/// Weights of the parts of the score against liking, which weighs 1. Ours, without a source.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weights {
    /// Kinds of reward, as a share of the most words a set may have.
    pub spread: f64,
    /// Sounding different.
    pub apart: f64,
    /// Words the household already says.
    pub said: f64,
}

/// What a set of first words must satisfy and how it is scored.
#[derive(Debug, Clone, PartialEq)]
pub struct FirstWordRules {
    /// How many words; common practice is 2 or 3 (no source).
    pub sizes: RangeInclusive<usize>,
    /// A delivery slower than this, in seconds, is not for a first word: showing needs many quick repetitions.
    pub slowest: f64,
    /// Seconds assumed for a delivery where none are given.
    pub seconds_assumed: f64,
    /// Deliveries a day below which a word gets too little showing.
    pub fewest_per_day: f64,
    /// Deliveries a day beyond which more add nothing.
    pub enough_per_day: f64,
    /// Minutes of showing a day, shared between the words.
    pub minutes_per_day: f64,
    /// Standard errors taken off a liking, so that a sure liking beats a guess.
    pub caution: f64,
    /// Weights of the other parts.
    pub weights: Weights,
    /// When two labels sound too much alike to go together.
    pub alike: AlikeRule,
    /// Language of the labels.
    pub language: Language,
    /// Draws of the simulation that gives the probability of being best, 1 to 100,000.
    pub draws: u32,
    /// Its seed.
    pub seed: u64,
}

impl Default for FirstWordRules {
    /// Two or three words, five minutes a day. The figures are common practice or ours, without a source. The weight of
    /// kinds puts three kinds before two of one, unless the third kind is liked less by 0.6 of the whole scale.
    fn default() -> Self {
        Self {
            sizes: 2..=3,
            slowest: 60.0,
            seconds_assumed: 15.0,
            fewest_per_day: 3.0,
            enough_per_day: 10.0,
            minutes_per_day: 5.0,
            caution: 0.5,
            weights: Weights { spread: 0.6, apart: 0.1, said: 0.05 },
            alike: AlikeRule::default(),
            language: Language::En,
            draws: 2000,
            seed: 1,
        }
    }
}

impl FirstWordRules {
    /// The first setting that makes no sense, if any.
    pub(super) fn fault(&self) -> Option<&'static str> {
        let positive = |x: f64| x > 0.0 && x.is_finite();
        let not_negative = |x: f64| x >= 0.0 && x.is_finite();
        let weights = [self.weights.spread, self.weights.apart, self.weights.said, self.caution];
        let checks = [
            (*self.sizes.start() >= 1 && self.sizes.start() <= self.sizes.end(), "sizes"),
            (positive(self.slowest), "slowest"),
            (positive(self.seconds_assumed), "seconds_assumed"),
            (not_negative(self.fewest_per_day), "fewest_per_day"),
            (positive(self.enough_per_day), "enough_per_day"),
            (positive(self.minutes_per_day), "minutes_per_day"),
            (weights.into_iter().all(not_negative), "weights or caution"),
            (not_negative(self.alike.share_changed) && not_negative(self.alike.apart), "alike"),
            ((1..=100_000).contains(&self.draws), "draws"),
        ];
        checks.into_iter().find(|(fine, _)| !fine).map(|(_, what)| what)
    }
}
