//! What is told of an animal's likes.

use crate::advice::Because;
use crate::estimate::Estimate;
use sayso_model::{LikesFormat, Moment, RewardId, RewardKind};
use serde::Serialize;
use std::collections::BTreeMap;

/// One reward in the ranking.
#[derive(Clone, PartialEq, Debug)]
pub struct RankedReward {
    /// Which.
    pub reward: RewardId,
    /// Its name.
    pub name: String,
    /// Its kind.
    pub kind: RewardKind,
    /// Chance of being chosen over a reward of average strength, with its posterior interval (Bradley-Terry or Plackett-Luce, learned spread).
    pub over_average: Estimate,
    /// Log odds against the average and its standard error, for further use; none where it was never in a choice.
    pub strength: Option<(f64, f64)>,
    /// Probability of truly being among the best three (or the best, with fewer than five rewards).
    pub among_best: Option<f64>,
    /// Published scores by format it was tested in: share of offers chosen, approached, or of time engaged.
    pub scores: BTreeMap<&'static str, Estimate>,
}

/// Which pair to offer next: the one that would tell most about the best few; sides balance earlier ones.
#[derive(Clone, PartialEq, Debug)]
pub struct NextTest {
    /// Lay this on the animal's left.
    pub left: RewardId,
    /// Lay this on its right.
    pub right: RewardId,
}

/// What is known of an animal's likes.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct LikesReport {
    /// Trials of all tests.
    pub trials: usize,
    /// Of those, the ones in which it could choose between things; the others were timed, or held one thing.
    pub choosing: usize,
    /// Trials in which it chose none or walked away: an answer too.
    pub no_choice: usize,
    /// Rewards tested, best liked first; those never in a choice last.
    pub ranking: Vec<RankedReward>,
    /// Choices on the left, of paired trials.
    pub side: Option<SideReport>,
    /// How consistent paired choices are.
    pub consistency: Option<ConsistencyReport>,
    /// Whether the best few are known well enough.
    pub known: Option<Known>,
    /// What a further pair would tell most.
    pub next: Option<NextTest>,
    /// Why to test again, if so.
    pub retest: Option<Because>,
    /// The last trial.
    pub last: Option<Moment>,
}

impl LikesReport {
    /// The rewards whose strength can be told, best liked first.
    #[must_use]
    pub fn ranked(&self) -> Vec<&RankedReward> {
        self.ranking.iter().filter(|r| r.over_average.value.is_some()).collect()
    }

    /// The formats in which published scores were found.
    #[must_use]
    pub fn formats(&self) -> Vec<LikesFormat> {
        let scored = |f: &LikesFormat| self.ranking.iter().any(|r| r.scores.contains_key(f.name()));
        LikesFormat::ALL.iter().copied().filter(scored).collect()
    }
}

/// Side bias in words and figures.
#[derive(Clone, PartialEq, Debug)]
pub struct SideReport {
    /// Share of choices on the left.
    pub left: Estimate,
    /// Exact two-sided p against one half.
    pub p: f64,
    /// What that means.
    pub lean: Lean,
}

/// Whether choices lean to one side.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lean {
    /// To its left; the ranking allows for it.
    Left,
    /// To its right; the ranking allows for it.
    Right,
    /// Too few choices to say.
    TooFew,
    /// None beyond chance.
    None,
}

/// Circular triads in words and figures.
#[derive(Clone, PartialEq, Debug)]
pub struct ConsistencyReport {
    /// Circular triads.
    pub circular: u64,
    /// Most there could be.
    pub most: u64,
    /// Coefficient of consistence, 0 to 1.
    pub zeta: f64,
    /// Items compared.
    pub items: usize,
}

/// Whether the best few are known.
#[derive(Clone, PartialEq, Debug)]
pub struct Known {
    /// How settled that is.
    pub verdict: Settled,
    /// The best few.
    pub best: Vec<RewardId>,
    /// Their names.
    pub names: Vec<String>,
    /// Probability that no reward left out is clearly better.
    pub probability: f64,
    /// Choices behind it.
    pub n: u64,
}

/// How settled the best few are.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Settled {
    /// Known well enough.
    WellEnough,
    /// Not settled, but enough for now.
    EnoughForNow,
    /// Not known well enough.
    NotYet,
}
