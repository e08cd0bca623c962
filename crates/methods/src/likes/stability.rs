//! Is it time to test again?
//!
//! The rule is common practice put in numbers, no source.

use super::LikesError;
use crate::stats::{Proportion, StatsError, Tail};

/// What is known about how far a ranking can still be trusted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RankingState {
    /// Days since the last test; `None` if there was none.
    pub age_days: Option<f64>,
    /// Half-life of likes, days (infinite: they do not change).
    pub half_life_days: f64,
    /// Probability that the top set is right, from a fit in which old trials count for less.
    pub top_probability: f64,
    /// Offers of a top item since the test, and how many of them were turned down.
    pub turned_down: Option<Proportion>,
}

/// When a ranking is stale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RetestRule {
    /// Test again when this share of what was known is forgotten by age (0 to 1).
    pub forgotten: f64,
    /// Test again when the top set is less sure than this.
    pub least_top_probability: f64,
    /// Share of offers of a top item that may be turned down without meaning anything.
    pub usual_turn_downs: f64,
    /// Level at which more turning down counts as news.
    pub alpha: f64,
}

impl Default for RetestRule {
    /// Half forgotten, 60 % sure, a fifth turned down, 5 % (common practice put in numbers, no source).
    fn default() -> Self {
        Self { forgotten: 0.5, least_top_probability: 0.6, usual_turn_downs: 0.2, alpha: 0.05 }
    }
}

/// Why to test again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RetestReason {
    /// Never tested.
    NeverTested,
    /// A top item is turned down more often than is usual.
    TurnedDown(Proportion),
    /// Too old: so many days past its time.
    TooOld(f64),
    /// The top set is not clear.
    TopUnclear(f64),
}

/// Whether to test again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Retest {
    /// Now, and why.
    Now(RetestReason),
    /// Not for so many days (infinite if likes do not change).
    InDays(f64),
}

/// Decides whether a ranking is stale.
///
/// # Errors
/// [`LikesError::Stats`] for an age, half-life, probability or rule outside its range.
///
/// ```
/// use sayso_methods::likes::{RankingState, Retest, RetestRule, retest};
/// let state = RankingState {
///     age_days: Some(10.0),
///     half_life_days: 30.0,
///     top_probability: 0.9,
///     turned_down: None,
/// };
/// assert_eq!(retest(&state, &RetestRule::default())?, Retest::InDays(20.0));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn retest(state: &RankingState, rule: &RetestRule) -> Result<Retest, LikesError> {
    let shares = [
        ("share forgotten", rule.forgotten),
        ("least probability", rule.least_top_probability),
        ("usual turn-downs", rule.usual_turn_downs),
        ("alpha", rule.alpha),
        ("top probability", state.top_probability),
    ];
    if let Some((what, value)) = shares.into_iter().find(|(_, v)| !(0.0..=1.0).contains(v)) {
        return Err(StatsError::OutOfRange { what, value }.into());
    }
    if state.half_life_days.is_nan() || state.half_life_days <= 0.0 {
        return Err(StatsError::OutOfRange { what: "half-life in days", value: state.half_life_days }.into());
    }
    if rule.forgotten == 0.0 {
        return Err(StatsError::OutOfRange { what: "share forgotten", value: 0.0 }.into());
    }
    let Some(age) = state.age_days else { return Ok(Retest::Now(RetestReason::NeverTested)) };
    if !(age >= 0.0 && age.is_finite()) {
        return Err(StatsError::OutOfRange { what: "age in days", value: age }.into());
    }
    if let Some(turned_down) = state.turned_down
        && turned_down.n() > 0
        && turned_down.test(rule.usual_turn_downs, Tail::Greater)? < rule.alpha
    {
        return Ok(Retest::Now(RetestReason::TurnedDown(turned_down)));
    }
    // A share f is forgotten after log2(1 / (1 - f)) half-lives.
    let half_lives = -(1.0 - rule.forgotten).log2();
    let time = state.half_life_days * half_lives;
    if age >= time {
        return Ok(Retest::Now(RetestReason::TooOld(age - time)));
    }
    if state.top_probability < rule.least_top_probability {
        return Ok(Retest::Now(RetestReason::TopUnclear(state.top_probability)));
    }
    Ok(Retest::InDays(time - age))
}
