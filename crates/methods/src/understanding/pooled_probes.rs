//! All planned checks of one word put together: what was begun stays in, and what came is bet on answer by answer.
//!
//! Source: mixture likelihood ratio of a share above chance, even prior (Robbins 1970, Ann Math Stat 41:1397), which may be
//! read, stopped or gone on with at any moment (Ville 1939); the same number as
//! [`binomial_bayes_factor`] with an even prior above chance.

use super::UnderstandingError;
use crate::stats::{BetaPrior, Direction, Proportion, binomial_bayes_factor};
use std::collections::BTreeMap;

/// An answer that counts: the first to a planned number. One without a choice is none; one taken back is wrong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Answered {
    /// Choices open in the trial; chance is one over this.
    pub choices: u16,
    /// Whether it was right.
    pub right: bool,
}

/// Natural logarithm of the e-value after each answer, in their order.
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] for fewer than two choices.
pub fn probe_evidence(answers: &[Answered]) -> Result<Vec<f64>, UnderstandingError> {
    let mut by_choices: BTreeMap<u16, ([u64; 2], f64)> = BTreeMap::new();
    let mut out = Vec::with_capacity(answers.len());
    for answer in answers {
        if answer.choices < 2 {
            let value = f64::from(answer.choices);
            return Err(UnderstandingError::OutOfRange { what: "choices a trial", value });
        }
        let (counts, ln) = by_choices.entry(answer.choices).or_default();
        counts[usize::from(!answer.right)] += 1;
        let seen = Proportion::new(counts[0], counts[0] + counts[1])?;
        let chance = 1.0 / f64::from(answer.choices);
        *ln = binomial_bayes_factor(seen, chance, BetaPrior::EVEN, Direction::Above)?.ln;
        out.push(by_choices.values().map(|(_, ln)| ln).sum());
    }
    Ok(out)
}

/// Trials to plan, and what they bring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrialsToPlan {
    /// Trials for each word.
    pub n: u64,
    /// Chance that a learner right at the rate asked for reaches the top rung by then, for one word.
    pub power: f64,
    /// Chance that one that guesses ever reaches it by then, for one word.
    pub false_alarm: f64,
}

/// The fewest trials for each of `words` after which a learner right in `rate` of the choices has reached `words / alpha`
/// at some trial with the power asked for. Exact, by recursion over the counts not yet there.
///
/// # Errors
/// [`UnderstandingError::OutOfRange`] for a rate not above chance, a power or alpha outside 0 to 1, or where more than
/// `most` trials were needed.
pub fn trials_to_plan(
    words: usize,
    choices: u16,
    rate: f64,
    alpha: f64,
    power: f64,
    most: u64,
) -> Result<TrialsToPlan, UnderstandingError> {
    let bad = |what, value| Err(UnderstandingError::OutOfRange { what, value });
    if choices < 2 || words == 0 {
        return bad("choices a trial, or words", f64::from(choices));
    }
    let chance = 1.0 / f64::from(choices);
    if !(rate > chance && rate <= 1.0) {
        return bad("share right worth finding", rate);
    }
    for (what, value) in [("alpha", alpha), ("power", power)] {
        if !(value > 0.0 && value < 1.0) {
            return bad(what, value);
        }
    }
    let bar = (words as f64 / alpha).ln();
    // Chances of each number right among those that have not reached the bar, under the rate and under chance.
    let (mut still, mut reached) = ([vec![1.0], vec![1.0]], [0.0; 2]);
    for n in 1..=most {
        let mut next = [vec![0.0; n as usize + 1], vec![0.0; n as usize + 1]];
        for right in 0..=n {
            let seen = Proportion::new(right, n)?;
            let there = binomial_bayes_factor(seen, chance, BetaPrior::EVEN, Direction::Above)?.ln >= bar;
            for (side, share) in [rate, chance].into_iter().enumerate() {
                let at = |k: u64| still[side].get(k as usize).copied().unwrap_or(0.0);
                let came = if right > 0 { at(right - 1) * share } else { 0.0 } + at(right) * (1.0 - share);
                if there { reached[side] += came } else { next[side][right as usize] = came }
            }
        }
        still = next;
        if reached[0] >= power {
            return Ok(TrialsToPlan { n, power: reached[0], false_alarm: reached[1] });
        }
    }
    bad("trials a word needed, at least", most as f64)
}
