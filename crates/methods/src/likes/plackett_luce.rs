//! Choices from arrays, one after another: the Plackett-Luce model.
//!
//! Sources: R. D. Luce (1959), Individual Choice Behavior; R. L. Plackett (1975), Appl Stat 24:193; existence of the estimate:
//! D. R. Hunter (2004), Ann Stat 32:384. Each choice is made among what is still in the array, so a ranking that breaks off
//! after some choices still counts in full for those.

use super::{
    LikesError, Ranking,
    bradley_terry::finite_estimate_exists,
    check_items,
    fit::{ChoiceFit, Intervals, Layout, Prior, RIVAL_RIDGE, conclude},
    logit::Design,
};
use crate::stats::{Level, StatsError};

/// What the model of rankings takes into account.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RankModel {
    /// Assumption about the strengths.
    pub prior: Prior,
    /// Let turning away speak: "nothing" becomes a rival at every choice. Needs at least one array that was turned away from.
    pub nothing: bool,
    /// Level of the intervals.
    pub level: Level,
}

impl Default for RankModel {
    /// Weak prior, turning away kept, 95 %.
    fn default() -> Self {
        Self { prior: Prior::HOME, nothing: true, level: Level::P95 }
    }
}

/// Plackett-Luce strengths of `items` items; turning away only says that what was left is liked less than what was taken.
///
/// # Errors
/// [`LikesError::UnknownItem`], [`LikesError::Repeated`]; without a prior [`LikesError::Disconnected`] or
/// [`LikesError::Separated`] where no finite estimate exists.
///
/// ```
/// use sayso_methods::likes::{Prior, Ranking, plackett_luce};
/// use sayso_methods::stats::Level;
/// let rankings = [Ranking::complete(&[0, 1, 2]), Ranking::complete(&[1, 0, 2]), Ranking::stopped(&[0], &[1, 2])];
/// let fit = plackett_luce(3, &rankings, Prior::Weak { alpha: 0.1 }, Level::P95)?;
/// assert_eq!(fit.ranking(), vec![0, 1, 2]);
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn plackett_luce(items: usize, rankings: &[Ranking], prior: Prior, level: Level) -> Result<ChoiceFit, LikesError> {
    fit_rankings(items, rankings, &RankModel { prior, nothing: false, level })
}

/// Strengths from rankings, with the terms `model` asks for. Without rankings it gives back the prior.
///
/// # Errors
/// As [`plackett_luce`].
pub fn fit_rankings(items: usize, rankings: &[Ranking], model: &RankModel) -> Result<ChoiceFit, LikesError> {
    fit_weighted_rankings(items, rankings, &vec![1.0; rankings.len()], model)
}

/// As [`fit_rankings`], each ranking counting by its weight (0 to 1: how much it still says about today).
///
/// # Errors
/// As [`fit_rankings`]; [`LikesError::Stats`] if a weight is missing, negative, above a million or no number.
pub fn fit_weighted_rankings(
    items: usize,
    rankings: &[Ranking],
    weights: &[f64],
    model: &RankModel,
) -> Result<ChoiceFit, LikesError> {
    check_items(items)?;
    if rankings.len() != weights.len() {
        return Err(StatsError::Unpaired { left: rankings.len(), right: weights.len() }.into());
    }
    if let Some(bad) = weights.iter().find(|w| !(**w >= 0.0 && **w <= 1e6)) {
        return Err(StatsError::OutOfRange { what: "weight", value: *bad }.into());
    }
    let alpha = model.prior.ridge()?;
    let mut layout = Layout::items_only(items);
    let mut won = vec![Vec::new(); items];
    let kept = || rankings.iter().zip(weights.iter().copied()).filter(|(_, w)| *w > 0.0);
    for ranking in rankings {
        ranking.check(items)?;
    }
    for (ranking, _) in kept() {
        let array: Vec<usize> = ranking.chosen.iter().chain(&ranking.left_over).copied().collect();
        for (at, item) in ranking.chosen.iter().enumerate() {
            layout.chosen[*item] += 1;
            array[at..].iter().for_each(|i| layout.offered[*i] += 1);
            won[*item].extend_from_slice(&array[at + 1..]);
            layout.n += 1;
        }
        if turned(ranking) {
            ranking.left_over.iter().for_each(|i| layout.offered[*i] += 1);
            layout.counts.nothing += 1;
            layout.n += u64::from(model.nothing);
        }
    }
    if model.prior == Prior::None {
        finite_estimate_exists(&won)?;
    }
    let mut ridge = vec![alpha; items];
    if model.nothing && layout.counts.nothing > 0 {
        layout.nothing = Some(items);
        ridge.push(RIVAL_RIDGE);
    }
    let mut design = Design::new(ridge, if alpha == 0.0 { items } else { 0 });
    for (ranking, weight) in kept() {
        let array: Vec<usize> = ranking.chosen.iter().chain(&ranking.left_over).copied().collect();
        let choices = ranking.chosen.len();
        let stages = choices + usize::from(layout.nothing.is_some() && turned(ranking));
        for at in 0..stages {
            for (place, item) in array.iter().enumerate().skip(at) {
                design.alternative(&[(*item, 1.0)], if place == at && at < choices { weight } else { 0.0 });
            }
            if let Some(nothing) = layout.nothing {
                design.alternative(&[(nothing, 1.0)], if at == choices { weight } else { 0.0 });
            }
            design.end_stage();
        }
    }
    conclude(design, &layout, model.prior, model.level, Intervals::Best)
}

fn turned(ranking: &Ranking) -> bool {
    ranking.turned_away && !ranking.left_over.is_empty()
}
