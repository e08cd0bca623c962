//! Likes by hour of day: each item's strength may rise and fall once a day.
//!
//! Sources: first harmonic of a daily cycle (K. V. Mardia & P. E. Jupp 2000, Directional Statistics, 11.3), in the conditional
//! logit of [`super::bradley_terry()`]; p-value by permuting the hours between sessions (E. S. Edgington 1995, Randomization Tests),
//! so that choices of one session stay together.

use super::{
    LikesError, PairOutcome, PairTrial, check_items,
    fit::SIDE_RIDGE,
    logit::{Design, Optimum},
};
use crate::stats::{Interval, Level, StatsError};
use rand::SeedableRng;
use rand::seq::SliceRandom;
use rand_chacha::ChaCha8Rng;
use std::f64::consts::TAU;

/// A paired trial with the hour it was run at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HourTrial {
    /// The trial. Only those with one item taken say something here.
    pub trial: PairTrial,
    /// Local hour, 0 to 24 (14.5 is half past two).
    pub hour: f64,
    /// Which session it belongs to.
    pub session: usize,
    /// How much it counts (see [`super::forgetting_weight`]); 1 for in full.
    pub weight: f64,
}

/// Strength of an item at an hour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HourStrength {
    /// The item.
    pub item: usize,
    /// Log odds of being taken rather than an item of average strength at that hour.
    pub value: f64,
    /// Standard error.
    pub standard_error: f64,
    /// Interval.
    pub interval: Interval,
}

/// A fitted daily cycle of likes.
#[derive(Debug, Clone, PartialEq)]
pub struct HourFit {
    /// Permutation p-value that hours make so much difference by chance.
    pub p: f64,
    /// Choices.
    pub n: u64,
    /// Sessions.
    pub sessions: usize,
    /// Level of the intervals.
    pub level: Level,
    items: usize,
    design: Design,
    top: Optimum,
}

/// Penalty of the strengths (standard deviation 1.6) and of each half of a cycle (0.7: an hour seldom turns likes round).
const ITEM_RIDGE: f64 = 0.2;
const CYCLE_RIDGE: f64 = 1.0;
/// Fewest sessions for which permuting their hours can mean something.
const LEAST_SESSIONS: usize = 5;
/// Most items: above it the cycles outnumber any household's trials.
const MOST_ITEMS: usize = 40;

fn design(items: usize, trials: &[&HourTrial], hours: &[f64]) -> Design {
    // Parameters: strengths, then cosines, then sines, then the side.
    let mut ridge = vec![ITEM_RIDGE; items];
    ridge.extend(vec![CYCLE_RIDGE; 2 * items]);
    ridge.push(SIDE_RIDGE);
    let mut design = Design::new(ridge, 0);
    for (trial, hour) in trials.iter().zip(hours) {
        let (sin, cos) = (hour / 24.0 * TAU).sin_cos();
        let terms =
            |item: usize, side: f64| [(item, 1.0), (items + item, cos), (2 * items + item, sin), (3 * items, side)];
        let taken = |outcome| if trial.trial.outcome == outcome { trial.weight } else { 0.0 };
        design.alternative(&terms(trial.trial.left, 0.5), taken(PairOutcome::Left));
        design.alternative(&terms(trial.trial.right, -0.5), taken(PairOutcome::Right));
        design.end_stage();
    }
    design
}

/// Fits a daily cycle and tests whether it is one, over `permutations` rearrangements of the sessions' hours.
///
/// # Errors
/// [`LikesError::UnknownItem`], [`LikesError::Repeated`]; [`LikesError::Stats`] below five sessions with choices, below 99
/// permutations, above 40 items, for hours outside 0 to 24, bad weights, or if all sessions were at the same hour.
pub fn fit_pairs_by_hour(
    items: usize,
    trials: &[HourTrial],
    level: Level,
    permutations: usize,
    seed: u64,
) -> Result<HourFit, LikesError> {
    check_items(items)?;
    if items > MOST_ITEMS {
        return Err(StatsError::OutOfRange { what: "number of items", value: items as f64 }.into());
    }
    for trial in trials {
        trial.trial.check(items)?;
        if !(0.0..=24.0).contains(&trial.hour) {
            return Err(StatsError::OutOfRange { what: "hour", value: trial.hour }.into());
        }
        if !(0.0..=1e6).contains(&trial.weight) {
            return Err(StatsError::OutOfRange { what: "weight", value: trial.weight }.into());
        }
    }
    let kept: Vec<&HourTrial> = trials.iter().filter(|t| t.trial.chosen().is_some() && t.weight > 0.0).collect();
    let mut sessions: Vec<usize> = kept.iter().map(|t| t.session).collect();
    sessions.sort_unstable();
    sessions.dedup();
    let count = sessions.len();
    if count < LEAST_SESSIONS {
        return Err(StatsError::TooFew { what: "sessions with choices", needed: LEAST_SESSIONS, got: count }.into());
    }
    if permutations < 99 {
        return Err(StatsError::TooFew { what: "permutations", needed: 99, got: permutations }.into());
    }
    let at: Vec<usize> = kept.iter().map(|t| sessions.partition_point(|s| *s < t.session)).collect();
    // A session's hour is that of its first choice; the trials keep their small shifts from it.
    let mut starts = vec![f64::NAN; count];
    for (trial, session) in kept.iter().zip(&at) {
        if starts[*session].is_nan() {
            starts[*session] = trial.hour;
        }
    }
    let first = starts.first().copied().unwrap_or(0.0);
    if starts.iter().all(|h| *h == first) {
        return Err(StatsError::NoVariation("the hour of the sessions").into());
    }
    let shifts: Vec<f64> = kept.iter().zip(&at).map(|(t, s)| t.hour - starts[*s]).collect();
    let fit = |starts: &[f64]| {
        let hours: Vec<f64> = at.iter().zip(&shifts).map(|(s, shift)| starts[*s] + shift).collect();
        let design = design(items, &kept, &hours);
        design.optimum().map(|top| (design, top)).ok_or(LikesError::Unsettled)
    };
    let (design, top) = fit(&starts)?;
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let mut as_large = 0;
    let mut shuffled = starts.clone();
    for _ in 0..permutations {
        shuffled.shuffle(&mut rng);
        as_large += usize::from(fit(&shuffled)?.1.objective >= top.objective - 1e-9);
    }
    let p = (as_large + 1) as f64 / (permutations + 1) as f64;
    Ok(HourFit { p, n: kept.len() as u64, sessions: count, level, items, design, top })
}

impl HourFit {
    /// Strengths at an hour (0 to 24), with profile intervals.
    ///
    /// # Errors
    /// [`LikesError::Stats`] for an hour outside 0 to 24.
    pub fn at(&self, hour: f64) -> Result<Vec<HourStrength>, LikesError> {
        if !(0.0..=24.0).contains(&hour) {
            return Err(StatsError::OutOfRange { what: "hour", value: hour }.into());
        }
        let (sin, cos) = (hour / 24.0 * TAU).sin_cos();
        let k = self.items;
        (0..k)
            .map(|item| {
                let mut contrast = vec![0.0; 3 * k + 1];
                for other in 0..k {
                    let share = f64::from(u8::from(other == item)) - 1.0 / k as f64;
                    contrast[other] = share;
                    contrast[k + other] = share * cos;
                    contrast[2 * k + other] = share * sin;
                }
                let value: f64 = contrast.iter().zip(&self.top.theta).map(|(c, t)| c * t).sum();
                let standard_error = self.top.factor.quadratic(&contrast).sqrt();
                let z = self.level.z();
                let end = |up| self.design.profile_end(&self.top, &contrast, z, up).ok_or(LikesError::Unsettled);
                let interval = Interval { low: end(false)?, high: end(true)?, level: self.level };
                Ok(HourStrength { item, value, standard_error, interval })
            })
            .collect()
    }
}
