//! Does the animal press on when now and then the partner's thing comes, as drawn, instead of the word's own?
//!
//! Source: exact conditional test of an interaction, Zelen 1971, Biometrika 58:129. What a person scores is not used: an
//! outcome is good if no button sounded within the correction time after the thing came. A better liked thing, a livelier
//! button, mealtimes and bouts cancel out, because word and thing are compared crosswise and the notebook drew which came.
//!
//! Which button is pressed then is on purpose not used: an animal that leaves alone the button of what just came, whatever
//! it had pressed, presses its first button again more often after the partner's thing (`docs/lab/understanding.md`).
//!
//! Of the animal, not of a word: one pair that means it carries the rest.

use crate::stats::evalue::{Bets, SwapCells, swap_bets};
use std::collections::BTreeMap;

/// One drawn answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DrawnAnswer {
    /// Block of days in which partners stay together, counted over all agreed times.
    pub block: usize,
    /// Word pressed.
    pub word: usize,
    /// Its partner in this block.
    pub partner: usize,
    /// Whether the partner's thing was drawn.
    pub swapped: bool,
    /// The word pressed within the correction time after the thing came, if any.
    pub next: Option<usize>,
    /// Whether something other than what was drawn was given, or nothing is recorded of it.
    pub departed: bool,
}

/// What the drawn answers of closed blocks amount to.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct SwapEvidence {
    /// After each block: its number, and the natural logarithm of the e-value so far.
    pub blocks: Vec<(usize, f64)>,
    /// Drawn answers.
    pub answers: usize,
    /// Of those, swapped.
    pub swapped: usize,
    /// Not carried out as drawn: such a block can only speak against, never for.
    pub departed: usize,
}

/// Evidence over closed blocks, which may come in any order.
#[must_use]
pub fn swap_evidence(answers: &[DrawnAnswer]) -> SwapEvidence {
    let mut by_block: BTreeMap<usize, Vec<&DrawnAnswer>> = BTreeMap::new();
    for answer in answers {
        by_block.entry(answer.block).or_default().push(answer);
    }
    let mut outcome = Bets::NONE;
    let mut found = SwapEvidence {
        answers: answers.len(),
        swapped: answers.iter().filter(|a| a.swapped).count(),
        departed: answers.iter().filter(|a| a.departed).count(),
        ..SwapEvidence::default()
    };
    for (block, answers) in by_block {
        let departed = answers.iter().any(|a| a.departed);
        let hold = |bets: Bets| if departed { bets.least(Bets::NONE) } else { bets };
        outcome = outcome.and(hold(outcomes(&answers)));
        found.blocks.push((block, outcome.ln()));
    }
    found
}

/// Pairs of partners of one block: no button sounded after the thing came.
fn outcomes(answers: &[&DrawnAnswer]) -> Bets {
    let mut pairs: BTreeMap<(usize, usize), SwapCells> = BTreeMap::new();
    for a in answers {
        let first = a.word < a.partner;
        let cells = pairs.entry((a.word.min(a.partner), a.word.max(a.partner))).or_default();
        let cell = match (first, a.swapped) {
            (true, false) => &mut cells.first_after_first,
            (false, true) => &mut cells.first_after_second,
            (false, false) => &mut cells.second_after_second,
            (true, true) => &mut cells.second_after_first,
        };
        cell[0] += u32::from(a.next.is_none());
        cell[1] += 1;
    }
    pairs.into_values().map(swap_bets).fold(Bets::NONE, Bets::and)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn block(number: usize, departed: bool) -> Vec<DrawnAnswer> {
        (0..64)
            .map(|i| {
                let (word, swapped) = (i % 2, i % 8 < 2);
                let next = swapped.then_some(word);
                DrawnAnswer { block: number, word, partner: 1 - word, swapped, next, departed: departed && i == 5 }
            })
            .collect()
    }

    #[test]
    fn pressing_again_only_after_the_wrong_thing_is_found() {
        let found = swap_evidence(&[block(0, false), block(1, false)].concat());
        assert!(found.blocks.last().is_some_and(|b| b.1 > 100f64.ln()), "{found:?}");
    }

    #[test]
    fn a_block_that_departed_from_its_draws_wins_nothing() {
        let found = swap_evidence(&block(0, true));
        assert!(found.departed == 1 && found.blocks.iter().all(|b| b.1 <= 0.0), "{found:?}");
    }
}
