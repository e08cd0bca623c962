//! What may be said about understanding: the records turned into evidence for the ladder.
//!
//! Methods and rungs: [`sayso_methods::understanding`]. This file only decides what counts as what. Only what the notebook
//! drew climbs: rounds of invitations ([`crate::called`]), agreed swaps ([`crate::swaps`]), planned checks
//! ([`crate::pool`]). What a person chose to invite or to give is shown beside it and may suggest; it climbs nothing, since a
//! choice follows the clock, the bout and the hope of the person who makes it.

use crate::called::{ClosedRound, Numbered, closed_rounds};
use crate::case::Case;
use crate::pool::pooled;
use crate::swaps::{Swaps, swaps};
use sayso_methods::understanding::UnderstandingError;
use sayso_methods::understanding::ladder::{Growth, Ladder, LadderRule, Rung, Verdict, WordBars, WordEvidence, climb};
use sayso_methods::understanding::rounds::{Outcome, Round, word_evidence};
use sayso_methods::understanding::swap::{SwapEvidence, swap_evidence};
use sayso_model::{AnimalId, Moment, Story, WordCard, WordId};
use std::collections::BTreeMap;

/// What may be said about one word, and why.
#[derive(Clone, PartialEq, Debug)]
pub struct Claim {
    /// The word.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// Does the animal ask for the thing by pressing?
    pub asking: Verdict,
    /// Does it know what the spoken word means?
    pub hearing: Verdict,
    /// The evidence behind both.
    pub evidence: WordEvidence,
    /// From what on each kind of it is told.
    pub bars: WordBars,
}

impl Claim {
    /// The verdict that says more, with its ladder.
    #[must_use]
    pub fn best(&self) -> (Ladder, Verdict) {
        if self.hearing.rung > self.asking.rung {
            (Ladder::Hearing, self.hearing)
        } else {
            (Ladder::Asking, self.asking)
        }
    }

    /// The highest rung of either ladder.
    #[must_use]
    pub fn rung(&self) -> Rung {
        self.best().1.rung
    }
}

/// What may be said of the animal over all its words.
#[derive(Clone, PartialEq, Debug)]
pub struct AnimalClaim {
    /// Whether it holds against liking, frequency, habits of place and the clock.
    pub verdict: Verdict,
    /// The drawn answers behind it.
    pub swaps: SwapEvidence,
    /// Until when a time of swaps runs, if one does.
    pub running_until: Option<Moment>,
}

/// Everything that may be said of one animal.
#[derive(Clone, PartialEq, Debug)]
pub struct Claims {
    /// By active word.
    pub words: Vec<Claim>,
    /// The animal.
    pub animal: AnimalClaim,
    /// Rounds begun and closed, and those cut short or with an outcome missing.
    pub rounds: (usize, usize),
}

impl Claims {
    /// The claim of one word.
    #[must_use]
    pub fn of(&self, word: WordId) -> Option<&Claim> {
        self.words.iter().find(|c| c.word == word)
    }
}

/// What may be said about every active word of this animal and of the animal, judged together and valid at whatever moment
/// it is read.
///
/// # Errors
/// [`UnderstandingError`] where the records contradict themselves (for instance a check with a single choice).
pub fn claims(case: &Case<'_>) -> Result<Claims, UnderstandingError> {
    let (words, now) = (case.words(), case.now());
    let first_seen = first_seen(case.story(), case.animal());
    let mut numbered = Numbered::of(words.iter().map(|w| w.word));
    let rounds = closed_rounds(case.log(), &mut numbered, now);
    let swapped = swaps(case, &mut numbered);
    let evidence = words
        .iter()
        .enumerate()
        .map(|(at, card)| of_word(case, card, at, &rounds))
        .collect::<Result<Vec<_>, UnderstandingError>>()?;
    let since: Vec<Moment> = words.iter().map(|w| first_seen.get(&w.word).copied().unwrap_or(now)).collect();
    let (swaps, growth) = of_animal(&swapped);
    let verdicts = climb(&evidence, growth.as_ref(), &since, now, &LadderRule::default());
    Ok(Claims {
        words: words
            .iter()
            .zip(verdicts.words.into_iter().zip(verdicts.bars))
            .zip(evidence)
            .map(|((card, ([asking, hearing], bars)), evidence)| Claim {
                word: card.word,
                says: card.says.to_string(),
                asking,
                hearing,
                evidence,
                bars,
            })
            .collect(),
        animal: AnimalClaim { verdict: verdicts.animal, swaps, running_until: swapped.running_until },
        rounds: (rounds.len(), rounds.iter().filter(|r| !r.whole).count()),
    })
}

/// When each word first came to be known.
fn first_seen(story: &Story, animal: AnimalId) -> BTreeMap<WordId, Moment> {
    let mut first = BTreeMap::new();
    for card in story.everyones::<WordCard>().filter(|c| c.part.is_for(animal)) {
        let at: &mut Moment = first.entry(card.part.word).or_insert(card.at());
        *at = (*at).min(card.at());
    }
    first
}

fn of_word(
    case: &Case<'_>,
    card: &WordCard,
    number: usize,
    rounds: &[ClosedRound],
) -> Result<WordEvidence, UnderstandingError> {
    // Rounds in which the word was not to hand say nothing of it, but rounds with it hold it against all others.
    let mine: Vec<&ClosedRound> = rounds.iter().filter(|r| r.words.contains(&card.word)).collect();
    let called: Vec<Round> = mine.iter().map(|r| r.calls.clone()).collect();
    let most = mine.iter().map(|r| r.words.len()).max().unwrap_or(2);
    let pressed = called.iter().flatten().filter(|c| matches!(c.outcome, Outcome::Pressed(_))).count();
    let of = (case.animal(), card.word);
    let ln = || {
        case.sums().by_round(of, (called, number, most), |(called, number, most)| word_evidence(called, *number, *most))
    };
    let growth =
        (!mine.is_empty()).then(|| Growth { steps: mine.iter().map(|r| r.at).zip(ln()).collect(), n: pressed as u64 });
    let [open, blind] = pooled(case.checks(), card.word)?;
    Ok(WordEvidence { rounds: growth, open, blind })
}

fn of_animal(swaps: &Swaps) -> (SwapEvidence, Option<Growth>) {
    let found = swap_evidence(&swaps.answers);
    let steps = found.blocks.iter().filter_map(|(block, ln)| Some((*swaps.closed.get(block)?, *ln))).collect();
    let growth = (found.answers > 0).then_some(Growth { steps, n: found.answers as u64 });
    (found, growth)
}
