//! The order of a check's trials: it follows from the plan alone, so that the printed sheet, the page and the reading
//! afterwards agree, and anybody can draw it again.

use crate::body::ProbePlan;
use crate::id::WordId;
use rand_xoshiro::Xoshiro256PlusPlus;
use rand_xoshiro::rand_core::{Rng, SeedableRng};
use std::collections::BTreeSet;
use thiserror::Error;

/// Same word at most this often in a row in the list from which things are laid out.
const LONGEST_RUN: usize = 3;
/// A draw may end in a word that would run too long; then another is drawn.
const ATTEMPTS: usize = 1000;

/// Why there is no order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
#[non_exhaustive]
pub enum OrderError {
    /// Too few words for the choices, or fewer than two choices.
    #[error("{choices} choices a trial from {words} words; from 2 choices up to as many as there are words")]
    Choices {
        /// Choices asked for.
        choices: usize,
        /// Words there are.
        words: usize,
    },
    /// No trials.
    #[error("a check has at least one trial")]
    NoTrials,
    /// A word would stand in two places at once.
    #[error("a word is listed twice")]
    Twice,
    /// None was found.
    #[error("no order without more than {LONGEST_RUN} of one word in a row was found")]
    LongRuns,
}

/// One drawn trial, words by their place in the plan's list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DrawnTrial {
    /// Word that is played (or whose thing is asked for).
    pub word: usize,
    /// Words whose things lie in the places, left to right; the right one is at `right_place`.
    pub laid_out: Vec<usize>,
    /// Place of the right thing.
    pub right_place: usize,
}

/// Draws `trials` trials of `words` words. What is laid out comes from a list in which every word stands equally often,
/// without long runs; which of the things laid out is asked for is drawn last, each with the same chance. The same arguments
/// give the same trials again.
///
/// What is asked for, and where it lies, is on purpose neither balanced nor kept from running: either makes "not what (or
/// where) it was last time" a better guess than chance, and animals do guess like that. Every word is asked for
/// equally often only on average.
///
/// ```
/// use sayso_model::order::draw;
/// let trials = draw(3, 2, 31, 42)?;
/// assert_eq!(trials.len(), 31);
/// assert_eq!(trials, draw(3, 2, 31, 42)?);
/// assert!(trials.iter().all(|t| t.laid_out.len() == 2 && t.laid_out[t.right_place] == t.word));
/// # Ok::<(), sayso_model::order::OrderError>(())
/// ```
pub fn draw(words: usize, choices: usize, trials: usize, seed: u64) -> Result<Vec<DrawnTrial>, OrderError> {
    if choices < 2 || words < choices {
        return Err(OrderError::Choices { choices, words });
    }
    if trials == 0 {
        return Err(OrderError::NoTrials);
    }
    let (order, mut rng) = listed(words, trials, seed)?;
    Ok(order
        .into_iter()
        .map(|first| {
            let mut others: Vec<usize> = (0..words).filter(|other| *other != first).collect();
            let mut shown = vec![first];
            shown.extend((1..choices).map(|_| take_random(&mut others, &mut rng)));
            let laid_out: Vec<usize> = (0..choices).map(|_| take_random(&mut shown, &mut rng)).collect();
            let right_place = below(&mut rng, choices);
            DrawnTrial { word: laid_out[right_place], laid_out, right_place }
        })
        .collect())
}

/// The list of words a draw begins with, every one equally often and without long runs, and the source of chance after it.
fn listed(words: usize, trials: usize, seed: u64) -> Result<(Vec<usize>, Xoshiro256PlusPlus), OrderError> {
    let mut rng = Xoshiro256PlusPlus::seed_from_u64(seed);
    let mut times = vec![trials / words; words];
    let mut others: Vec<usize> = (0..words).collect();
    for _ in 0..trials % words {
        times[take_random(&mut others, &mut rng)] += 1;
    }
    let order = (0..ATTEMPTS).find_map(|_| draw_words(&times, &mut rng)).ok_or(OrderError::LongRuns)?;
    Ok((order, rng))
}

/// A number from 0 to `n - 1` (Lemire 2019, ACM Trans Model Comput Simul 29:3); its bias is at most n / 2^64.
fn below(rng: &mut Xoshiro256PlusPlus, n: usize) -> usize {
    // The upper half of the product is below n.
    usize::try_from((u128::from(rng.next_u64()) * n as u128) >> 64).unwrap_or(0)
}

fn take_random(from: &mut Vec<usize>, rng: &mut Xoshiro256PlusPlus) -> usize {
    let at = below(rng, from.len());
    from.swap_remove(at)
}

/// Draws the word of every trial from what is left, never more than [`LONGEST_RUN`] in a row; `None` if it runs into a
/// dead end.
fn draw_words(times: &[usize], rng: &mut Xoshiro256PlusPlus) -> Option<Vec<usize>> {
    let (mut left, trials) = (times.to_vec(), times.iter().sum());
    let mut order: Vec<usize> = Vec::with_capacity(trials);
    for _ in 0..trials {
        let tail = &order[order.len().saturating_sub(LONGEST_RUN)..];
        let run = (tail.len() == LONGEST_RUN && tail.iter().all(|word| *word == tail[0])).then(|| tail[0]);
        let open = |word: usize, left: usize| if run == Some(word) { 0 } else { left };
        let total: usize = left.iter().enumerate().map(|(word, left)| open(word, *left)).sum();
        if total == 0 {
            return None;
        }
        let mut pick = below(rng, total);
        let word = (0..times.len()).find(|word| {
            let here = open(*word, left[*word]);
            let found = pick < here;
            pick = pick.saturating_sub(here);
            found
        })?;
        left[word] -= 1;
        order.push(word);
    }
    Some(order)
}

/// One planned trial.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PlannedTrial {
    /// Trial, from 1.
    pub number: u16,
    /// The word that is played, or whose thing is hidden.
    pub word: WordId,
    /// What stands in the places, from the animal's left to its right: things laid out, or buttons in their fixed places.
    pub laid_out: Vec<WordId>,
    /// Place of the right one, from 0.
    pub right_place: usize,
}

/// Every trial of a plan, drawn from its seed alone: the same plan gives the same order on any machine, at any time.
/// Where buttons are pressed they stay in their places, in the order of the plan's words.
///
/// # Errors
/// [`OrderError`] for a plan whose fields do not fit together, such as fewer words than choices.
pub fn order(plan: &ProbePlan) -> Result<Vec<PlannedTrial>, OrderError> {
    planned(plan, draw)
}

/// The trials as they were drawn before what is asked for came to be drawn last: the asked-for words are the list itself,
/// without long runs. An animal that guesses "not what it was last time" does better than chance in it, so checks carried
/// out in this order are shown and climb nothing.
///
/// # Errors
/// As [`order`].
pub fn earlier_order(plan: &ProbePlan) -> Result<Vec<PlannedTrial>, OrderError> {
    planned(plan, |words, choices, trials, seed| {
        if choices < 2 || words < choices || trials == 0 {
            return draw(words, choices, trials, seed);
        }
        let (order, mut rng) = listed(words, trials, seed)?;
        let drawn = order.into_iter().map(|word| {
            let right_place = below(&mut rng, choices);
            let mut others: Vec<usize> = (0..words).filter(|other| *other != word).collect();
            let laid_out = (0..choices)
                .map(|place| if place == right_place { word } else { take_random(&mut others, &mut rng) })
                .collect();
            DrawnTrial { word, laid_out, right_place }
        });
        Ok(drawn.collect())
    })
}

fn planned(
    plan: &ProbePlan,
    draw: impl Fn(usize, usize, usize, u64) -> Result<Vec<DrawnTrial>, OrderError>,
) -> Result<Vec<PlannedTrial>, OrderError> {
    let words = plan.words.len();
    let picks = plan.design.places_drawn();
    let choices = if picks { usize::from(plan.choices) } else { words };
    if plan.words.iter().collect::<BTreeSet<_>>().len() != words {
        return Err(OrderError::Twice);
    }
    let drawn = draw(words, choices, usize::from(plan.trials), u64::from(plan.seed))?;
    let named = |places: &[usize]| places.iter().filter_map(|i| plan.words.get(*i).copied()).collect::<Vec<_>>();
    let trials = (1..=u16::MAX).zip(drawn).filter_map(|(number, t)| {
        let (laid_out, right_place) =
            if picks { (named(&t.laid_out), t.right_place) } else { (plan.words.clone(), t.word) };
        Some(PlannedTrial { number, word: *plan.words.get(t.word)?, laid_out, right_place })
    });
    Ok(trials.collect())
}
