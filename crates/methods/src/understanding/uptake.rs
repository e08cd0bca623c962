//! Uptake: how often the learner takes what is delivered, by word, and whether it depends on the delivery fitting the word.
//!
//! Sources: exact intervals (Clopper & Pearson 1934); exact tests with each stratum's margins kept (Gart 1970), see
//! [`super::exact`]. Page: `docs/methods/understanding.md`.
//!
//! That uptake differs by word shows at most that some things are liked better. What counts is whether the *same* thing
//! is taken more often when it was asked for than when it came by mistake or by design under another word.

use super::exact::{StratifiedTest, stratified_exact};
use super::{UnderstandingError, sessions};
use crate::stats::{Interval, Level, Proportion, Tail, TwoByTwo, benjamini_hochberg};
use std::collections::BTreeMap;

/// A press that was answered with something.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AnsweredPress {
    /// Session (sitting) number; presses of a session stand together.
    pub session: usize,
    /// Word pressed.
    pub word: usize,
    /// Thing delivered.
    pub item: usize,
    /// Whether the thing is what the word means.
    pub fits: bool,
    /// Whether the learner took it (ate, played, went out) rather than ignoring it or leaving.
    pub took: bool,
}

/// Uptake of one word.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WordUptake {
    /// Word.
    pub word: usize,
    /// Taken, of delivered, whatever was delivered.
    pub took: Proportion,
    /// 95 % interval of the share.
    pub interval: Interval,
    /// Uptake after this word against the other words of the same session, two-sided. Liking explains a difference too.
    pub against_others: StratifiedTest,
    /// p of that, adjusted over words.
    pub adjusted_p: f64,
    /// Uptake of the same thing when it fitted this word against when it came under this word's or another's press
    /// without fitting, within sessions of one stretch; one-sided (fitting is taken more).
    pub fitting: StratifiedTest,
    /// p of that, adjusted over words.
    pub fitting_adjusted_p: f64,
}

/// Uptake by word, in order of the words' numbers. A run of presses of one word in a session counts once (its first press),
/// because runs of one button would otherwise be taken for many independent choices.
///
/// `stretch_of` maps a session to the stretch of time (say a month) within which fitting and unfitting deliveries of a thing
/// are compared: wrong deliveries are too rare to be compared within a sitting.
///
/// # Errors
/// [`UnderstandingError::NoObservations`], [`UnderstandingError::SessionsMixed`].
///
/// ```
/// use sayso_methods::understanding::uptake::{AnsweredPress, uptake_by_word};
/// // Thing 0 is taken when word 0 asked for it, never when it came under word 1.
/// let presses: Vec<AnsweredPress> = (0..40)
///     .map(|k| AnsweredPress { session: k / 4, word: k % 2, item: 0, fits: k % 2 == 0, took: k % 2 == 0 })
///     .collect();
/// let uptake = uptake_by_word(&presses, |_| 0)?;
/// assert!(uptake[0].fitting.p < 1e-6);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn uptake_by_word(
    presses: &[AnsweredPress],
    stretch_of: impl Fn(usize) -> usize,
) -> Result<Vec<WordUptake>, UnderstandingError> {
    if presses.is_empty() {
        return Err(UnderstandingError::NoObservations);
    }
    let ranges = sessions(presses.iter().map(|press| press.session))?;
    let mut firsts: Vec<&AnsweredPress> = Vec::new();
    for range in ranges {
        firsts.extend(presses[range].chunk_by(|a, b| a.word == b.word).map(|run| &run[0]));
    }
    // Per session: taken and not, by word; per stretch and thing: taken and not, fitting (by word) and not.
    let mut by_session: BTreeMap<usize, BTreeMap<usize, [u64; 2]>> = BTreeMap::new();
    let mut by_thing: BTreeMap<(usize, usize), Thing> = BTreeMap::new();
    let mut totals: BTreeMap<usize, [u64; 2]> = BTreeMap::new();
    for press in firsts {
        let column = usize::from(!press.took);
        by_session.entry(press.session).or_default().entry(press.word).or_default()[column] += 1;
        totals.entry(press.word).or_default()[column] += 1;
        let thing = by_thing.entry((stretch_of(press.session), press.item)).or_default();
        if press.fits {
            thing.fitting.entry(press.word).or_default()[column] += 1;
        } else {
            thing.unfitting[column] += 1;
        }
    }
    let mut words = Vec::with_capacity(totals.len());
    for (&word, &[took, left]) in &totals {
        let tables: Vec<TwoByTwo> = by_session
            .values()
            .filter_map(|session| {
                let own = *session.get(&word)?;
                let all = session.values().fold([0, 0], |sum, row| [sum[0] + row[0], sum[1] + row[1]]);
                Some(TwoByTwo([own, [all[0] - own[0], all[1] - own[1]]]))
            })
            .collect();
        let things: Vec<TwoByTwo> = by_thing
            .values()
            .filter_map(|thing| Some(TwoByTwo([*thing.fitting.get(&word)?, thing.unfitting])))
            .collect();
        let took = Proportion::new(took, took + left)?;
        words.push(WordUptake {
            word,
            took,
            interval: took.clopper_pearson(Level::P95),
            against_others: stratified_exact(&tables, Tail::TwoSided)?,
            adjusted_p: 1.0,
            fitting: stratified_exact(&things, Tail::Greater)?,
            fitting_adjusted_p: 1.0,
        });
    }
    let raw: Vec<f64> = words.iter().map(|word| word.against_others.p).collect();
    let fitting: Vec<f64> = words.iter().map(|word| word.fitting.p).collect();
    let adjusted = benjamini_hochberg(&raw, 0.05)?.adjusted;
    let fitting = benjamini_hochberg(&fitting, 0.05)?.adjusted;
    for ((word, p), fitting) in words.iter_mut().zip(adjusted).zip(fitting) {
        word.adjusted_p = p;
        word.fitting_adjusted_p = fitting;
    }
    Ok(words)
}

/// Deliveries of one thing in one stretch: taken and not.
#[derive(Default)]
struct Thing {
    /// Asked for, by word.
    fitting: BTreeMap<usize, [u64; 2]>,
    /// Came under another word.
    unfitting: [u64; 2],
}
