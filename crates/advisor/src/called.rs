//! Rounds of drawn invitations, as the methods read them.
//!
//! What was called for follows from the round's id; an invitation that names another word, was changed or taken back, or is
//! missing, leaves its call's outcome unknown, and unknown outcomes count at their worst.

use crate::originals::{Fate, Originals};
use sayso_methods::understanding::rounds::{Called, Outcome, Round};
use sayso_model::{InvitationResult, Moment, RoundId, WordId, draw};
use std::collections::{BTreeMap, BTreeSet};

/// A round that is not carried on is over after this long.
const OPEN_FOR_S: f64 = 3600.0;

/// A closed round.
#[derive(Clone, PartialEq, Debug)]
pub struct ClosedRound {
    /// When it was closed: with its last call, or when it was not carried on.
    pub at: Moment,
    /// Words that were to hand.
    pub words: Vec<WordId>,
    /// Its calls, as planned.
    pub calls: Round,
    /// Whether every call has its outcome.
    pub whole: bool,
}

/// Numbers for words, given out as they are met.
#[derive(Default, Debug)]
pub struct Numbered(BTreeMap<WordId, usize>);

impl Numbered {
    /// The words with their numbers, beginning with these.
    #[must_use]
    pub fn of(words: impl IntoIterator<Item = WordId>) -> Self {
        let mut all = Self::default();
        for word in words {
            all.number(word);
        }
        all
    }

    /// The number of a word.
    pub fn number(&mut self, word: WordId) -> usize {
        let next = self.0.len();
        *self.0.entry(word).or_insert(next)
    }
}

/// Every closed round, by the time it was closed.
#[must_use]
pub fn closed_rounds(all: &Originals<'_>, numbered: &mut Numbered, now: Moment) -> Vec<ClosedRound> {
    let mut answers: BTreeMap<(RoundId, u16), Vec<_>> = BTreeMap::new();
    for call in &all.calls {
        if let Some(c) = call.part.call {
            answers.entry((c.round, c.number)).or_default().push(call);
        }
    }
    let mut seen = BTreeSet::new();
    let mut out = Vec::new();
    for (at, begun) in all.rounds.iter().enumerate() {
        let round = begun.part;
        // A round told twice is one round: the first counts.
        if !seen.insert(round.round) {
            continue;
        }
        let mut last = begun.at();
        let calls: Round = (1..=round.calls)
            .filter_map(|number| {
                let word = draw::called(round.round, number, &round.words)?;
                let told = answers.get(&(round.round, number)).map_or(&[][..], Vec::as_slice);
                let outcome = match told {
                    [only] if only.fate == Fate::Stands && only.part.word == word => {
                        last = last.max(only.at());
                        match only.part.result {
                            InvitationResult::Pressed { word, .. } => Outcome::Pressed(numbered.number(word)),
                            _ => Outcome::NoPress,
                        }
                    }
                    _ => Outcome::Unknown,
                };
                Some(Called { word: numbered.number(word), outcome })
            })
            .collect();
        let whole = calls.iter().all(|c| c.outcome != Outcome::Unknown);
        let later = all.rounds[at + 1..].iter().map(|r| r.at()).find(|t| *t > begun.at());
        let given_up = begun.at().plus_seconds(OPEN_FOR_S);
        let closed = if whole { last } else { later.map_or(given_up, |later| later.min(given_up)) };
        if closed <= now {
            out.push(ClosedRound { at: closed, words: round.words.clone(), calls, whole });
        }
    }
    out.sort_by_key(|r| r.at);
    out
}
