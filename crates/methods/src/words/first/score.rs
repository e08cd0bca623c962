//! The score of one set of words, in its parts.

use super::given::{Candidate, FirstWordRules};
use crate::words::alike::Likeness;
use sayso_model::RewardKind;

/// What lets a word be delivered no oftener.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bound {
    /// The minutes of practice, shared by the words of a set.
    Time,
    /// The most times a day.
    Most,
    /// The day's food, shared by the foods of a set.
    Ration,
}

/// How often a word can be delivered at the board.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Delivery {
    /// Deliveries a day that time, satiation and ration leave.
    pub per_day: f64,
    /// Which of the three it is.
    pub bound: Bound,
    /// `min(1, per_day / enough)`.
    pub opportunity: f64,
    /// Seconds of one delivery.
    pub seconds: f64,
    /// Whether the seconds were assumed because none were given.
    pub assumed: bool,
}

/// A score and its parts; `total` is their sum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Score {
    /// The sum.
    pub total: f64,
    /// Mean liking.
    pub liking: f64,
    /// Taken off for uncertainty (0 or negative).
    pub uncertainty: f64,
    /// Taken off for deliveries too few (0 or negative for likings above the caution).
    pub deliveries: f64,
    /// Added for different kinds of reward.
    pub spread: f64,
    /// Added for sounding different.
    pub apart: f64,
    /// Added for words already said.
    pub said: f64,
    /// Standard deviation of the total from the uncertainty of the likings (taken as independent).
    pub sd: f64,
}

/// How often each word of a set can be delivered.
pub(super) fn deliveries(words: &[&Candidate], rules: &FirstWordRules) -> Vec<Delivery> {
    let rationed = words.iter().filter(|c| c.ration_pieces.is_some()).count().max(1) as f64;
    let delivery = |c: &&Candidate| {
        let seconds = c.seconds.unwrap_or(rules.seconds_assumed);
        let in_time = rules.minutes_per_day * 60.0 / (words.len() as f64 * seconds.max(f64::MIN_POSITIVE));
        let limit = c.most_per_day.map_or(f64::INFINITY, f64::from);
        let ration = c.ration_pieces.map_or(f64::INFINITY, |p| (f64::from(p) / rationed).floor());
        let per_day = in_time.min(limit).min(ration).min(MOST_PER_DAY);
        let bound = match per_day {
            n if n >= ration => Bound::Ration,
            n if n >= limit => Bound::Most,
            _ => Bound::Time,
        };
        Delivery {
            per_day,
            bound,
            opportunity: (per_day / rules.enough_per_day).min(1.0),
            seconds,
            assumed: c.seconds.is_none(),
        }
    };
    words.iter().map(delivery).collect()
}

// A delivery of no time at all would otherwise come infinitely often.
const MOST_PER_DAY: f64 = 1000.0;

/// The score of a set, given how often each of its words can be delivered and how alike each pair sounds.
pub(super) fn score(
    words: &[&Candidate],
    delivered: &[Delivery],
    pairs: &[&Likeness],
    rules: &FirstWordRules,
) -> Score {
    let k = words.len() as f64;
    let mean = |f: &dyn Fn(&Candidate, f64) -> f64| {
        words.iter().zip(delivered).map(|(c, d)| f(c, d.opportunity)).sum::<f64>() / k
    };
    let liking = mean(&|c, _| c.liking.mean);
    let uncertainty = -rules.caution * mean(&|c, _| c.liking.sd);
    let deliveries = mean(&|c, o| (c.liking.mean - rules.caution * c.liking.sd) * (o - 1.0));
    let kinds = RewardKind::ALL.iter().filter(|kind| words.iter().any(|c| c.kind == **kind)).count() as f64;
    let spread = rules.weights.spread * kinds / (*rules.sizes.end() as f64).max(k);
    let apart = rules.weights.apart * pairs.iter().map(|p| p.apart).fold(1.0, f64::min);
    let said = rules.weights.said * words.iter().filter(|c| c.already_said).count() as f64 / k;
    let sd = mean(&|c, o| (o * c.liking.sd).powi(2)) / k;
    Score {
        total: liking + uncertainty + deliveries + spread + apart + said,
        liking,
        uncertainty,
        deliveries,
        spread,
        apart,
        said,
        sd: sd.sqrt(),
    }
}

/// A set of words with its score.
#[derive(Debug, Clone, PartialEq)]
pub struct Scored {
    /// Indices of the candidates, ascending.
    pub words: Vec<usize>,
    /// The score in its parts.
    pub score: Score,
    /// How often each word can be delivered, in the order of `words`.
    pub deliveries: Vec<Delivery>,
    /// Share of draws from the likings' uncertainty in which this set is the best.
    pub best_in: f64,
}
