//! Which items are the best-liked few, how sure that is, and whether to go on testing.
//!
//! Source: probability of correct selection (R. E. Bechhofer 1954, Ann Math Stat 25:16, indifference zone), here over draws from
//! the normal approximation of the fitted strengths.

use super::{
    ChoiceFit, LikesError,
    draws::{check_top, draw_strengths, members},
};
use crate::stats::StatsError;

/// The best-liked few.
#[derive(Debug, Clone, PartialEq)]
pub struct TopSet {
    /// The items with the highest estimates, strongest first.
    pub members: Vec<usize>,
    /// Probability that no item left out is truly stronger, by more than the margin, than one taken in.
    pub probability: f64,
    /// Per item, in index order: probability of truly being among the top few (without margin).
    pub each: Vec<f64>,
    /// Choices behind it.
    pub n: u64,
}

/// The `top` best-liked items and how sure the set is. `margin` (log odds, 0 or more) is the difference that does not matter.
///
/// # Errors
/// [`LikesError::Stats`] unless `1 <= top < items`, `margin >= 0` and `draws >= 1`.
///
/// ```
/// use sayso_methods::likes::{Prior, bradley_terry, top_set};
/// use sayso_methods::stats::Level;
/// let wins = [[0.0, 9.0, 9.0], [1.0, 0.0, 5.0], [1.0, 5.0, 0.0]];
/// let best = top_set(&bradley_terry(&wins, Prior::HOME, Level::P95)?, 1, 0.0, 2000, 7)?;
/// assert_eq!(best.members, vec![0]);
/// assert!(best.probability > 0.95);
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn top_set(fit: &ChoiceFit, top: usize, margin: f64, draws: usize, seed: u64) -> Result<TopSet, LikesError> {
    let items = fit.strengths.len();
    check_top(top, items)?;
    if !(margin >= 0.0 && margin.is_finite()) {
        return Err(StatsError::OutOfRange { what: "margin", value: margin }.into());
    }
    let chosen: Vec<usize> = fit.ranking().into_iter().take(top).collect();
    let mut each = vec![0.0; items];
    let mut right = 0;
    let mut inside = vec![false; items];
    chosen.iter().for_each(|i| inside[*i] = true);
    for draw in draw_strengths(fit, draws, seed)? {
        for (share, is_member) in each.iter_mut().zip(members(&draw, top)) {
            *share += f64::from(u8::from(is_member)) / draws as f64;
        }
        let weakest_in = chosen.iter().map(|i| draw[*i]).fold(f64::INFINITY, f64::min);
        let strongest_out =
            draw.iter().zip(&inside).filter(|(_, i)| !**i).map(|(d, _)| *d).fold(f64::NEG_INFINITY, f64::max);
        right += usize::from(strongest_out <= weakest_in + margin);
    }
    Ok(TopSet { members: chosen, probability: right as f64 / draws as f64, each, n: fit.n })
}

/// When enough is enough.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StopRule {
    /// Size of the set wanted.
    pub top: usize,
    /// Probability that the set is right at which to stop.
    pub enough: f64,
    /// Difference in strength (log odds) that does not matter.
    pub margin: f64,
    /// Stop at so many choices in any case, for the learner's sake.
    pub most: u64,
}

impl Default for StopRule {
    /// The best three, 90 % sure, up to differences of a quarter of a log odds (a 56 : 44 preference), at most 60 choices.
    fn default() -> Self {
        Self { top: 3, enough: 0.9, margin: 0.25, most: 60 }
    }
}

/// Whether to go on.
#[derive(Debug, Clone, PartialEq)]
pub enum Verdict {
    /// Not sure enough yet.
    GoOn(TopSet),
    /// The top set is known well enough.
    KnownWellEnough(TopSet),
    /// Not sure, but the learner has done enough; take it up another day.
    EnoughForNow(TopSet),
}

/// Applies the rule to what is known.
///
/// # Errors
/// As [`top_set`]; also for an `enough` outside 0..1.
pub fn should_stop(fit: &ChoiceFit, rule: &StopRule, draws: usize, seed: u64) -> Result<Verdict, LikesError> {
    if !(rule.enough > 0.0 && rule.enough < 1.0) {
        return Err(StatsError::OutOfRange { what: "probability at which to stop", value: rule.enough }.into());
    }
    let set = top_set(fit, rule.top, rule.margin, draws, seed)?;
    Ok(if set.probability >= rule.enough {
        Verdict::KnownWellEnough(set)
    } else if fit.n >= rule.most {
        Verdict::EnoughForNow(set)
    } else {
        Verdict::GoOn(set)
    })
}
