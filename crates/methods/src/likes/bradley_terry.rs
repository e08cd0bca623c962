//! Paired choices: the Bradley-Terry model, with terms for the side, for "neither" and for "both".
//!
//! Sources: E. Zermelo (1929), Math Z 29:436; R. A. Bradley & M. E. Terry (1952), Biometrika 39:324; existence of the estimate:
//! L. R. Ford (1957), Am Math Mon 64(8):28; taking both: R. R. Davidson (1970), J Am Stat Assoc 65:317; "neither" as an
//! alternative of its own in every offer: R. D. Luce (1959), Individual Choice Behavior.

use super::{
    LikesError, PairOutcome, PairTrial, check_items,
    fit::{ChoiceFit, Intervals, Layout, Prior, RIVAL_RIDGE, SIDE_RIDGE, TermCounts, conclude},
    logit::Design,
    tiring::{MOST_TRIALS, TIRES_RIDGE, just_had},
};
use crate::stats::{Level, StatsError};
use std::collections::BTreeMap;

/// What the model of paired trials takes into account.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairModel {
    /// Assumption about the strengths. The other terms always have a weak prior of their own.
    pub prior: Prior,
    /// Estimate a pull towards the left or right apart from the liking.
    pub side: bool,
    /// Let trials with neither taken speak: "nothing" becomes a rival with a strength of its own. Otherwise they are left out.
    pub nothing: bool,
    /// Estimate how much less an item is wanted for each taste of it just had.
    pub tires: bool,
    /// Level of the intervals.
    pub level: Level,
    /// Spend the time for the best intervals, or make do with normal ones (planning and simulation).
    pub intervals: Intervals,
}

impl Default for PairModel {
    /// Learned spread, side term, tiring, trials without a choice kept, 95 %.
    fn default() -> Self {
        Self {
            prior: Prior::HOME,
            side: true,
            nothing: true,
            tires: true,
            level: Level::P95,
            intervals: Intervals::Best,
        }
    }
}

/// Bradley-Terry strengths from a table of wins: `wins[i][j]` = times `i` was taken when offered with `j` (may be fractions).
///
/// # Errors
/// Without a prior: [`LikesError::Disconnected`] or [`LikesError::Separated`] where no finite estimate exists.
/// [`LikesError::Stats`] for a table that is not square, has fewer than two items or holds a negative or non-finite number.
///
/// ```
/// use sayso_methods::likes::{Prior, bradley_terry};
/// use sayso_methods::stats::Level;
/// let wins = [[0.0, 3.0, 2.0], [1.0, 0.0, 3.0], [2.0, 1.0, 0.0]];
/// let fit = bradley_terry(&wins, Prior::None, Level::P95)?;
/// assert_eq!(fit.ranking(), vec![0, 1, 2]);
/// assert!(fit.strengths[0].interval.low < 0.0, "twelve choices do not settle it");
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn bradley_terry<R: AsRef<[f64]>>(wins: &[R], prior: Prior, level: Level) -> Result<ChoiceFit, LikesError> {
    let items = wins.len();
    check_items(items)?;
    let alpha = prior.ridge()?;
    let mut layout = Layout::items_only(items);
    let mut total = 0.0;
    let (mut offered, mut chosen) = (vec![0.0; items], vec![0.0; items]);
    let mut won = vec![Vec::new(); items];
    for (i, row) in wins.iter().enumerate() {
        let row = row.as_ref();
        if row.len() != items {
            return Err(StatsError::Unpaired { left: items, right: row.len() }.into());
        }
        for (j, count) in row.iter().enumerate() {
            let diagonal = i == j && *count != 0.0;
            if !(*count >= 0.0 && *count < 1e12) || diagonal {
                return Err(StatsError::OutOfRange { what: "wins", value: *count }.into());
            }
            if *count > 0.0 {
                won[i].push(j);
                chosen[i] += count;
                offered[i] += count;
                offered[j] += count;
                total += count;
            }
        }
    }
    if prior == Prior::None {
        finite_estimate_exists(&won)?;
    }
    let mut design = Design::new(vec![alpha; items], if alpha == 0.0 { items } else { 0 });
    for i in 0..items {
        for j in i + 1..items {
            let (a, b) = (wins[i].as_ref()[j], wins[j].as_ref()[i]);
            if a + b > 0.0 {
                design.alternative(&[(i, 1.0)], a);
                design.alternative(&[(j, 1.0)], b);
                design.end_stage();
            }
        }
    }
    let whole = |v: &[f64]| v.iter().map(|x| x.round() as u64).collect();
    (layout.offered, layout.chosen, layout.n) = (whole(&offered), whole(&chosen), total.round() as u64);
    conclude(design, &layout, prior, level, Intervals::Best)
}

/// Strengths from paired trials of one sitting in the order run, with the terms `model` asks for. Without trials it gives back
/// the prior. With trials of several days see [`fit_sittings`].
///
/// # Errors
/// [`LikesError::UnknownItem`], [`LikesError::Repeated`]; without a prior as for [`bradley_terry`].
///
/// ```
/// use sayso_methods::likes::{PairModel, PairOutcome::*, PairTrial, fit_pairs};
/// let trial = |left, right, outcome| PairTrial { left, right, outcome };
/// let trials = [trial(0, 1, Left), trial(1, 0, Right), trial(2, 0, Right), trial(1, 2, Left), trial(2, 1, Neither)];
/// let fit = fit_pairs(3, &trials, &PairModel::default())?;
/// assert_eq!(fit.ranking(), vec![0, 1, 2]);
/// assert_eq!((fit.n, fit.strengths[2].offered), (5, 3));
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn fit_pairs(items: usize, trials: &[PairTrial], model: &PairModel) -> Result<ChoiceFit, LikesError> {
    fit_sittings(items, trials, &vec![1.0; trials.len()], &vec![0; trials.len()], model)
}

/// As [`fit_pairs`], with the weight of each trial and its sitting: what was tasted in one sitting is forgotten in the next.
///
/// # Errors
/// As [`fit_pairs`]; [`LikesError::Stats`] if a weight or a sitting is missing.
pub fn fit_sittings(
    items: usize,
    trials: &[PairTrial],
    weights: &[f64],
    sittings: &[i64],
    model: &PairModel,
) -> Result<ChoiceFit, LikesError> {
    check_items(items)?;
    if let Some(other) = [weights.len(), sittings.len()].into_iter().find(|n| *n != trials.len()) {
        return Err(StatsError::Unpaired { left: trials.len(), right: other }.into());
    }
    if let Some(bad) = weights.iter().find(|w| !(**w >= 0.0 && **w <= 1e6)) {
        return Err(StatsError::OutOfRange { what: "weight", value: *bad }.into());
    }
    let alpha = model.prior.ridge()?;
    let mut layout = Layout::items_only(items);
    let mut won = vec![Vec::new(); items];
    for trial in trials {
        trial.check(items)?;
    }
    let kept: Vec<(&PairTrial, f64, [f64; 2])> = trials
        .iter()
        .zip(weights.iter().copied())
        .zip(just_had(items, trials, sittings))
        .map(|((trial, weight), had)| (trial, weight, had))
        .filter(|(t, w, _)| *w > 0.0 && (model.nothing || t.outcome != PairOutcome::Neither))
        .collect();
    let mut counts = TermCounts::default();
    for (trial, _, had) in &kept {
        counts.tires += u64::from(had[0] != had[1]);
        layout.offered[trial.left] += 1;
        layout.offered[trial.right] += 1;
        if let Some(item) = trial.chosen() {
            layout.chosen[item] += 1;
            won[item].push(if item == trial.left { trial.right } else { trial.left });
            counts.side += 1;
        }
        counts.nothing += u64::from(trial.outcome == PairOutcome::Neither);
        if trial.outcome == PairOutcome::Both {
            counts.both += 1;
            layout.chosen[trial.left] += 1;
            layout.chosen[trial.right] += 1;
            won[trial.left].push(trial.right);
            won[trial.right].push(trial.left);
        }
    }
    layout.n = kept.len() as u64;
    if model.prior == Prior::None {
        finite_estimate_exists(&won)?;
    }
    // The extra terms have a prior of their own even where the strengths have none: a learner may always have gone left.
    let mut ridge = vec![alpha; items];
    let mut place = |wanted: bool, penalty: f64| {
        wanted.then(|| {
            ridge.push(penalty);
            ridge.len() - 1
        })
    };
    layout.side = place(model.side, SIDE_RIDGE);
    layout.nothing = place(counts.nothing > 0, RIVAL_RIDGE);
    layout.both = place(counts.both > 0, RIVAL_RIDGE);
    layout.tires = place(model.tires && counts.tires > 0 && kept.len() <= MOST_TRIALS, TIRES_RIDGE);
    layout.counts = counts;
    let mut design = Design::new(ridge, if alpha == 0.0 { items } else { 0 });
    // Trials with the same offer share a stage, if what was just had does not count: only how often each outcome came of it does.
    let mut offers: BTreeMap<(usize, usize, usize), Offer> = BTreeMap::new();
    for (at, (trial, weight, had)) in kept.into_iter().enumerate() {
        let alone = if layout.tires.is_some() { at } else { 0 };
        let offer = offers.entry((trial.left, trial.right, alone)).or_insert(Offer { taken: [0.0; 4], had });
        offer.taken[trial.outcome as usize] += weight;
    }
    for ((left, right, _), Offer { taken, had }) in offers {
        let terms = |item: usize, half: f64, had: f64| {
            let mut terms = vec![(item, 1.0)];
            terms.extend(layout.side.map(|side| (side, half)));
            terms.extend(layout.tires.map(|tires| (tires, -had)));
            terms
        };
        design.alternative(&terms(left, 0.5, had[0]), taken[PairOutcome::Left as usize]);
        design.alternative(&terms(right, -0.5, had[1]), taken[PairOutcome::Right as usize]);
        if let Some(nothing) = layout.nothing {
            design.alternative(&[(nothing, 1.0)], taken[PairOutcome::Neither as usize]);
        }
        if let Some(both) = layout.both {
            let mut terms = vec![(left, 0.5), (right, 0.5), (both, 1.0)];
            terms.extend(layout.tires.map(|tires| (tires, -(had[0] + had[1]) / 2.0)));
            design.alternative(&terms, taken[PairOutcome::Both as usize]);
        }
        design.end_stage();
    }
    conclude(design, &layout, model.prior, model.level, model.intervals)
}

/// What came of one offer, by outcome, and how much of its left and right item was just had.
struct Offer {
    taken: [f64; 4],
    had: [f64; 2],
}

impl Layout {
    pub(super) fn items_only(items: usize) -> Self {
        Self {
            items,
            side: None,
            nothing: None,
            both: None,
            tires: None,
            counts: TermCounts::default(),
            offered: vec![0; items],
            chosen: vec![0; items],
            n: 0,
        }
    }
}

/// Ford's condition: from every item one can get to every other by "was preferred to". `won[i]`: items `i` was preferred to.
pub(super) fn finite_estimate_exists(won: &[Vec<usize>]) -> Result<(), LikesError> {
    let items = won.len();
    let mut lost = vec![Vec::new(); items];
    let mut either = won.to_vec();
    for (winner, losers) in won.iter().enumerate() {
        for loser in losers {
            lost[*loser].push(winner);
            either[*loser].push(winner);
        }
    }
    let mut group = vec![usize::MAX; items];
    let mut groups: Vec<Vec<usize>> = Vec::new();
    for start in 0..items {
        if group[start] == usize::MAX {
            let members: Vec<usize> = reached(&either, start);
            members.iter().for_each(|m| group[*m] = groups.len());
            groups.push(members);
        }
    }
    if groups.len() > 1 {
        return Err(LikesError::Disconnected { groups });
    }
    // Follow "lost to" upwards: those that cannot be left form the set that never lost to the rest.
    let mut ahead = reached(&lost, 0);
    loop {
        let smaller = ahead.iter().map(|item| reached(&lost, *item)).find(|set| set.len() < ahead.len());
        match smaller {
            Some(set) => ahead = set,
            None => break,
        }
    }
    if ahead.len() < items { Err(LikesError::Separated { ahead }) } else { Ok(()) }
}

/// Items reached from `start`, itself included, in index order.
fn reached(next: &[Vec<usize>], start: usize) -> Vec<usize> {
    let mut seen = vec![false; next.len()];
    let mut stack = vec![start];
    seen[start] = true;
    while let Some(at) = stack.pop() {
        for to in &next[at] {
            if !std::mem::replace(&mut seen[*to], true) {
                stack.push(*to);
            }
        }
    }
    (0..next.len()).filter(|i| seen[*i]).collect()
}
