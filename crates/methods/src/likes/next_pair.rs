//! Which two items to offer next, and on which sides.
//!
//! Source: expected information gain of a trial (D. V. Lindley 1956, Ann Math Stat 27:986), here over draws from the normal
//! approximation of the fitted strengths. Sides are counterbalanced per item, then per pair.

use super::{
    ChoiceFit, LikesError, PairTrial,
    draws::{check_top, draw_strengths, members},
    fit::logistic,
};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

/// What the next trial should tell most about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Goal {
    /// All strengths alike.
    Strengths,
    /// Which items belong to the best so many.
    TopSet(usize),
}

/// The pair to offer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NextPair {
    /// Item to lay on the learner's left.
    pub left: usize,
    /// Item to lay on its right.
    pub right: usize,
    /// Information expected of the trial, in nats; compare pairs by it, not days.
    pub gain: f64,
}

/// Entropy of a yes/no with probability `p`, nats.
fn entropy(p: f64) -> f64 {
    let part = |q: f64| if q > 0.0 { -q * q.ln() } else { 0.0 };
    part(p) + part(1.0 - p)
}

/// The pair whose outcome is expected to tell most. `history` (oldest first) counterbalances the sides; the pair offered last
/// is not offered again at once if there is another. The same seed gives the same pair.
///
/// # Errors
/// [`LikesError::UnknownItem`] for a history with other items; [`LikesError::Stats`] for a top set of 0 or all items, or no draws.
///
/// ```
/// use sayso_methods::likes::{Goal, PairModel, PairOutcome, PairTrial, fit_pairs, next_pair};
/// let history = [PairTrial { left: 0, right: 1, outcome: PairOutcome::Left }];
/// let fit = fit_pairs(3, &history, &PairModel::default())?;
/// let next = next_pair(&fit, &history, Goal::TopSet(1), 500, 1)?;
/// assert!(next.left == 2 || next.right == 2, "nothing is known of item 2 yet");
/// # Ok::<(), sayso_methods::likes::LikesError>(())
/// ```
pub fn next_pair(
    fit: &ChoiceFit,
    history: &[PairTrial],
    goal: Goal,
    draws: usize,
    seed: u64,
) -> Result<NextPair, LikesError> {
    let items = fit.strengths.len();
    for trial in history {
        trial.check(items)?;
    }
    let strengths = draw_strengths(fit, draws, seed)?;
    let flags: Vec<Vec<bool>> = match goal {
        Goal::Strengths => Vec::new(),
        Goal::TopSet(top) => {
            check_top(top, items)?;
            strengths.iter().map(|draw| members(draw, top)).collect()
        }
    };
    let last = history.last().map(|t| (t.left.min(t.right), t.left.max(t.right)));
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    rng.set_stream(1);
    let mut best: Option<(f64, usize, usize)> = None;
    for a in 0..items {
        for b in a + 1..items {
            if last == Some((a, b)) && items > 2 {
                continue;
            }
            let gain = expected_gain(&strengths, &flags, a, b);
            // Ties (nothing known yet) are broken at random, so that the first pair is not always the same.
            let gain = gain * (1.0 + 1e-9 * rng.random::<f64>());
            if best.is_none_or(|(most, ..)| gain > most) {
                best = Some((gain, a, b));
            }
        }
    }
    let (gain, a, b) = best.ok_or(LikesError::Unsettled)?;
    let swap = lay_swapped(history, a, b).unwrap_or_else(|| rng.random::<bool>());
    let (left, right) = if swap { (b, a) } else { (a, b) };
    Ok(NextPair { left, right, gain })
}

fn expected_gain(strengths: &[Vec<f64>], flags: &[Vec<bool>], a: usize, b: usize) -> f64 {
    let wins: Vec<f64> = strengths.iter().map(|draw| logistic(draw[a] - draw[b])).collect();
    let n = wins.len() as f64;
    let mean = wins.iter().sum::<f64>() / n;
    let Some(first) = flags.first() else {
        return (entropy(mean) - wins.iter().map(|p| entropy(*p)).sum::<f64>() / n).max(0.0);
    };
    // Item by item: how much the outcome would tell about its belonging to the top.
    (0..first.len())
        .map(|item| {
            let (mut inside, mut sum) = (0.0, 0.0);
            for (win, flag) in wins.iter().zip(flags) {
                if flag[item] {
                    inside += 1.0;
                    sum += win;
                }
            }
            let outside = n - inside;
            if inside == 0.0 || outside == 0.0 {
                return 0.0;
            }
            let (with, without) = (sum / inside, (mean * n - sum) / outside);
            (entropy(mean) - inside / n * entropy(with) - outside / n * entropy(without)).max(0.0)
        })
        .sum()
}

/// Whether to lay `b` on the left; `None` if nothing speaks for either.
fn lay_swapped(history: &[PairTrial], a: usize, b: usize) -> Option<bool> {
    let lean =
        |item: usize| history.iter().map(|t| i64::from(t.left == item) - i64::from(t.right == item)).sum::<i64>();
    let (lean_a, lean_b) = (lean(a), lean(b));
    let as_is = (lean_a + 1).abs() + (lean_b - 1).abs();
    let swapped = (lean_a - 1).abs() + (lean_b + 1).abs();
    if as_is != swapped {
        return Some(swapped < as_is);
    }
    let before = history.iter().rev().find(|t| (t.left == a && t.right == b) || (t.left == b && t.right == a));
    before.map(|t| t.left == a)
}
