//! Tiring of what was just had: each taste makes an item wanted a little less, for a while.
//!
//! Satiation within a session is why the trade rotates items (common practice, no source). Its form here, a loss of log odds for
//! each taste that fades from trial to trial, is an own construction; the rate of fading is fixed, the loss is estimated.

use super::{PairOutcome, PairTrial};

/// What is left of a taste from one trial to the next.
const STAYS: f64 = 0.9;
/// Penalty of the loss a taste: standard deviation 0.3, either way, since a first taste may also whet the appetite.
pub(super) const TIRES_RIDGE: f64 = 0.5 / (0.3 * 0.3);
/// Most trials with the term: every trial becomes a stage of its own with it, and so many settle the strengths on their own.
pub(super) const MOST_TRIALS: usize = 400;

/// Per trial how much of the item on its left and on its right was just had, in tastes. A change of sitting starts anew.
pub(super) fn just_had(items: usize, trials: &[PairTrial], sittings: &[i64]) -> Vec<[f64; 2]> {
    let mut had = vec![0.0; items];
    let mut last = None;
    let mut all = Vec::with_capacity(trials.len());
    for (trial, sitting) in trials.iter().zip(sittings) {
        if last != Some(*sitting) {
            had.fill(0.0);
            last = Some(*sitting);
        }
        all.push([had[trial.left], had[trial.right]]);
        had.iter_mut().for_each(|h| *h *= STAYS);
        let taken =
            |side: PairOutcome| f64::from(u8::from(trial.outcome == side || trial.outcome == PairOutcome::Both));
        had[trial.left] += taken(PairOutcome::Left);
        had[trial.right] += taken(PairOutcome::Right);
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_taste_fades_and_a_new_sitting_starts_fresh() {
        let trial = |left, right, outcome| PairTrial { left, right, outcome };
        let trials = [
            trial(0, 1, PairOutcome::Left),
            trial(1, 0, PairOutcome::Neither),
            trial(2, 0, PairOutcome::Both),
            trial(0, 2, PairOutcome::Right),
        ];
        assert_eq!(just_had(3, &trials, &[0; 4])[..3], [[0.0, 0.0], [0.0, 1.0], [0.0, STAYS]]);
        assert_eq!(just_had(3, &trials, &[0, 0, 1, 1])[2..], [[0.0, 0.0], [1.0, 1.0]]);
    }
}
