//! Does pressing go with what was called for, where the notebook drew what to call for?
//!
//! Two bets are held on every word, and the lower of the two counts; each is valid where the other is not:
//! - **within a round**: which of its pressed calls were this word's, the margins of the round kept
//!   ([`crate::stats::evalue::table_bets`]). Interest and habits that drift cannot win: within a round they stand still. A
//!   round has a number of calls settled beforehand; a call whose outcome is missing, was changed or taken back counts with
//!   whatever would speak most against the word. So stopping at a wrong press, leaving out what did not fit or correcting
//!   it wins nothing.
//! - **call by call**: the call is held against how often the word was called among pressed calls, the press against how
//!   often it was pressed lately, both learned from earlier calls alone (a martingale with plug-in predictions; Ville 1939;
//!   the product of two errors as in doubly robust estimation, Robins, Rotnitzky & Zhao 1994, J Am Stat Assoc 89:846). A
//!   learner that avoids, or goes back to, what it was just given wins nothing here, but would win within rounds.
//!
//! Known to get past neither: a habit that changes from call to call together with what is wanted (see `docs/lab`).

use crate::stats::evalue::{Bets, Table, ln_mean, table_bets};

/// What came of a call.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// This word was pressed within the wait.
    Pressed(usize),
    /// Nothing was pressed. Never a failure to understand.
    NoPress,
    /// Missing, changed later or taken back: anything may have come.
    Unknown,
}

/// One call of a round.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Called {
    /// The word drawn.
    pub word: usize,
    /// What came.
    pub outcome: Outcome,
}

/// A closed round: as many calls as were planned when it was begun.
pub type Round = Vec<Called>;

/// Stakes of the bets call by call.
const STAKES: [f64; 4] = [0.5, 1.0, 2.0, 3.5];
/// Calls after which an earlier one counts 1/e, for how often a word is called among pressed calls, and pressed.
const MEMORY: (f64, f64) = (40.0, 12.0);
/// A bet never risks more than this share of what it has.
const MOST_AT_RISK: f64 = 0.9;

/// Natural logarithm of the e-value of one word after each round: pressing it goes with its being called for, of `words`.
#[must_use]
pub fn word_evidence(rounds: &[Round], word: usize, words: usize) -> Vec<f64> {
    let (mut within, mut by_call) = (Bets::NONE, ByCall::new(words));
    rounds
        .iter()
        .map(|round| {
            within = within.and(round_bets(round, word));
            by_call.round(round, word);
            within.ln().min(ln_mean(&by_call.capital))
        })
        .collect()
}

/// The bets within one round, at their worst over everything that unknown outcomes may have been.
#[must_use]
pub fn round_bets(round: &[Called], word: usize) -> Bets {
    let mut table: Table = [[0; 2]; 2];
    let mut unknown = [0u32; 2];
    for call in round {
        let row = usize::from(call.word != word);
        match call.outcome {
            Outcome::Pressed(pressed) => table[row][usize::from(pressed != word)] += 1,
            Outcome::NoPress => {}
            Outcome::Unknown => unknown[row] += 1,
        }
    }
    let mut least = table_bets(table);
    // Of each row's unknown calls: so many pressed this word, so many another, the rest nothing.
    for (this, other) in shares(unknown[0]) {
        for (this_2, other_2) in shares(unknown[1]) {
            let [[a, b], [c, d]] = table;
            least = least.least(table_bets([[a + this, b + other], [c + this_2, d + other_2]]));
        }
    }
    least
}

fn shares(n: u32) -> impl Iterator<Item = (u32, u32)> {
    (0..=n).flat_map(move |this| (0..=n - this).map(move |other| (this, other)))
}

/// How often something came lately, from earlier calls alone.
#[derive(Clone, Copy)]
struct Lately {
    share: f64,
    seen: f64,
    memory: f64,
}

impl Lately {
    fn sees(&mut self, came: bool) {
        self.seen += 1.0;
        self.share += (f64::from(u8::from(came)) - self.share) * (1.0 / (self.seen + 4.0)).max(1.0 / self.memory);
    }
}

/// The bet call by call on one word.
struct ByCall {
    /// Called and pressed lately, by how long ago in the sitting the word was called for last: what was just had is wanted
    /// less, whatever the word means.
    lately: [(Lately, Lately); 3],
    capital: [f64; 4],
}

impl ByCall {
    fn new(words: usize) -> Self {
        let start = |memory| Lately { share: 1.0 / words.max(2) as f64, seen: 0.0, memory };
        Self { lately: [(start(MEMORY.0), start(MEMORY.1)); 3], capital: [0.0; 4] }
    }

    fn round(&mut self, round: &[Called], word: usize) {
        let mut last: Option<usize> = None;
        for (at, call) in round.iter().enumerate() {
            let recency = last.map_or(2, |last| usize::from(at - last > 1));
            let (called, pressed) = &mut self.lately[recency];
            let (is_called, was) = (call.word == word, *pressed);
            let error = f64::from(u8::from(is_called)) - called.share;
            let ln_factors = |came: bool| {
                let most = (called.share * (1.0 - was.share)).max((1.0 - called.share) * was.share);
                let product = error * (f64::from(u8::from(came)) - was.share);
                STAKES.map(|stake| (stake.min(MOST_AT_RISK / most.max(1e-9)) * product).ln_1p())
            };
            let factors = match call.outcome {
                Outcome::NoPress => [0.0; 4],
                Outcome::Pressed(pressed) => ln_factors(pressed == word),
                Outcome::Unknown => {
                    let (this, other) = (ln_factors(true), ln_factors(false));
                    std::array::from_fn(|i| this[i].min(other[i]).min(0.0))
                }
            };
            for (capital, factor) in self.capital.iter_mut().zip(factors) {
                *capital += factor;
            }
            if let Outcome::Pressed(came) = call.outcome {
                called.sees(is_called);
                pressed.sees(came == word);
            }
            if is_called {
                last = Some(at);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn right(word: usize) -> Called {
        Called { word, outcome: Outcome::Pressed(word) }
    }

    #[test]
    fn a_round_cut_short_is_never_better_than_the_same_round_finished_in_any_way() {
        let begun = [right(0), right(1), Called { word: 0, outcome: Outcome::Pressed(1) }];
        for outcome in [Outcome::Pressed(0), Outcome::Pressed(1), Outcome::Pressed(3), Outcome::NoPress] {
            for word in [0, 2] {
                let finished: Round = begun.iter().copied().chain([Called { word, outcome }]).collect();
                let cut: Round = begun.iter().copied().chain([Called { word, outcome: Outcome::Unknown }]).collect();
                let (finished, cut) = (round_bets(&finished, 0), round_bets(&cut, 0));
                assert!(finished.0.iter().zip(cut.0).all(|(f, c)| c <= f + 1e-12), "{outcome:?} {finished:?} {cut:?}");
            }
        }
    }

    #[test]
    fn presses_that_go_with_the_call_are_found_and_none_are_not() {
        let meant: Vec<Round> = (0..12).map(|i| (0..4).map(|j| right((i + j) % 4)).collect()).collect();
        assert!(word_evidence(&meant, 0, 4).last().is_some_and(|ln| *ln > 80f64.ln()));
        let silent: Vec<Round> = (0..12)
            .map(|i| (0..4).map(|j| Called { word: (i + j) % 4, outcome: Outcome::NoPress }).collect())
            .collect();
        assert!(word_evidence(&silent, 0, 4).iter().all(|ln| *ln == 0.0));
    }
}
