//! What the next press does after each kind of answer: does a word survive being declined?
//!
//! Sources: piecewise-constant hazard, events over time at risk in each piece (Holford 1980, Biometrics 36:299), with
//! Garwood's exact interval (1936); common rate ratio over pieces by Mantel and Haenszel with the variance of Greenland &
//! Robins 1985, Biometrics 41:55. That a burst may come first when requests go unanswered: Lerman & Iwata 1995, J Appl
//! Behav Anal 28:93 (24 % of cases). Page: `docs/methods/demand.md`.

use super::DemandError;
use crate::stats::{Count, Interval, Level, Proportion, RateComparison, Tail, compare_rates};

/// How a press was answered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Answer {
    /// The thing was given.
    Yes,
    /// Declined, and said so.
    No,
    /// Something else was offered.
    Alternative,
    /// Nobody answered.
    Missed,
}

impl Answer {
    /// Every kind, in the order of the results.
    pub const ALL: [Self; 4] = [Self::Yes, Self::No, Self::Alternative, Self::Missed];
}

/// One answered (or missed) press and what followed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AnsweredPress {
    /// How it was answered.
    pub answer: Answer,
    /// Seconds until the same word was pressed again, or until nobody was watching any more (session over, horizon reached).
    pub seconds: f64,
    /// Whether it ended with the word pressed again (else the wait was cut off, which is not a "never").
    pub pressed_again: bool,
}

/// Hazard in one piece of time after the answer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PieceHazard {
    /// Seconds after the answer at which the piece begins.
    pub from: f64,
    /// Seconds at which it ends.
    pub to: f64,
    /// Presses and seconds at risk; `None` if nothing was watched that long.
    pub count: Option<Count>,
    /// Exact 95 % interval of the hazard, presses a second.
    pub interval: Option<Interval>,
}

/// What follows one kind of answer.
#[derive(Debug, Clone, PartialEq)]
pub struct AfterAnswer {
    /// The kind of answer.
    pub answer: Answer,
    /// Answers of this kind.
    pub n: usize,
    /// Of those, how many were followed by the same word within the last boundary while watched. A plain share: it
    /// takes no account of waits that were cut off; the hazards do.
    pub again: Proportion,
    /// Hazard by piece.
    pub pieces: Vec<PieceHazard>,
    /// Each piece against the same piece after yes; `None` for yes itself and where a side was not watched.
    pub against_yes: Vec<Option<RateComparison>>,
    /// Hazard over all pieces against yes.
    pub ratio_to_yes: Option<HazardRatio>,
}

/// A hazard ratio over all pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HazardRatio {
    /// Ratio; above 1 the word comes back sooner than after a yes.
    pub ratio: f64,
    /// 95 % interval (large samples).
    pub interval: Interval,
    /// Presses behind it, on both sides.
    pub n: u64,
}

/// Default boundaries of the pieces, seconds.
pub const PIECES: [f64; 5] = [0.0, 10.0, 30.0, 120.0, 600.0];

/// Hazards of pressing the same word again after each kind of answer, always in the order of [`Answer::ALL`].
///
/// `boundaries` rise from 0, at least two. Waits longer than the last boundary are cut off there. Answers given to one
/// learner follow each other, so they are not quite independent; the intervals take them as such.
///
/// # Errors
/// [`DemandError::OutOfRange`] for boundaries that do not rise from 0 or a time that is negative or not finite.
///
/// ```
/// use sayso_methods::demand::answers::{Answer, AnsweredPress, PIECES, after_answers};
/// let again = AnsweredPress { answer: Answer::No, seconds: 4.0, pressed_again: true };
/// let quiet = AnsweredPress { answer: Answer::Yes, seconds: 300.0, pressed_again: false };
/// let found = after_answers(&[again, quiet], &PIECES)?;
/// assert_eq!(found[1].pieces[0].count.map(|c| c.events()), Some(1));
/// # Ok::<(), sayso_methods::demand::DemandError>(())
/// ```
pub fn after_answers(presses: &[AnsweredPress], boundaries: &[f64]) -> Result<Vec<AfterAnswer>, DemandError> {
    if boundaries.len() < 2 || boundaries[0] != 0.0 {
        return Err(DemandError::OutOfRange {
            what: "first boundary",
            value: boundaries.first().copied().unwrap_or(0.0),
        });
    }
    if let Some(pair) = boundaries.windows(2).find(|pair| !(pair[1].is_finite() && pair[1] > pair[0])) {
        return Err(DemandError::OutOfRange { what: "boundary", value: pair[1] });
    }
    if let Some(press) = presses.iter().find(|press| !(press.seconds.is_finite() && press.seconds >= 0.0)) {
        return Err(DemandError::OutOfRange { what: "seconds after an answer", value: press.seconds });
    }
    let horizon = boundaries[boundaries.len() - 1];
    let tables: Vec<Vec<(u64, f64)>> =
        Answer::ALL.iter().map(|answer| tabulate(presses, *answer, boundaries)).collect();
    let yes = &tables[0];
    Answer::ALL
        .iter()
        .zip(&tables)
        .map(|(&answer, table)| {
            let of_kind = || presses.iter().filter(move |press| press.answer == answer);
            let n = of_kind().count();
            let again = of_kind().filter(|press| press.pressed_again && press.seconds <= horizon).count();
            let pieces = boundaries
                .windows(2)
                .zip(table)
                .map(|(piece, &(events, time))| {
                    let count = Count::new(events, time).ok();
                    let interval = count.map(|count| count.interval(Level::P95));
                    PieceHazard { from: piece[0], to: piece[1], count, interval }
                })
                .collect();
            let other = answer != Answer::Yes;
            let against_yes = table
                .iter()
                .zip(yes)
                .map(|(here, yes)| if other { compare(*here, *yes) } else { Ok(None) })
                .collect::<Result<_, _>>()?;
            Ok(AfterAnswer {
                answer,
                n,
                again: Proportion::new(again as u64, n as u64)?,
                pieces,
                against_yes,
                ratio_to_yes: if other { common_ratio(table, yes) } else { None },
            })
        })
        .collect()
}

/// Presses and seconds at risk in each piece.
fn tabulate(presses: &[AnsweredPress], answer: Answer, boundaries: &[f64]) -> Vec<(u64, f64)> {
    let mut table = vec![(0u64, 0.0f64); boundaries.len() - 1];
    for press in presses.iter().filter(|press| press.answer == answer) {
        // A press in the same second as the answer (times are often rounded) was still at risk for a moment.
        let seconds =
            if press.seconds == 0.0 && press.pressed_again { 0.5_f64.min(boundaries[1]) } else { press.seconds };
        for (slot, piece) in table.iter_mut().zip(boundaries.windows(2)) {
            slot.1 += (seconds.min(piece[1]) - piece[0]).max(0.0);
            if press.pressed_again && seconds > piece[0] && seconds <= piece[1] {
                slot.0 += 1;
            }
        }
    }
    table
}

fn compare(here: (u64, f64), yes: (u64, f64)) -> Result<Option<RateComparison>, DemandError> {
    match (Count::new(here.0, here.1), Count::new(yes.0, yes.1)) {
        (Ok(here), Ok(yes)) => Ok(Some(compare_rates(here, yes, Tail::TwoSided, Level::P95)?)),
        _ => Ok(None),
    }
}

/// Mantel-Haenszel rate ratio over pieces watched on both sides; `None` when a side had no press at all.
fn common_ratio(here: &[(u64, f64)], yes: &[(u64, f64)]) -> Option<HazardRatio> {
    let (mut top, mut bottom, mut variance, mut n) = (0.0, 0.0, 0.0, 0);
    for (&(a, time_a), &(b, time_b)) in here.iter().zip(yes) {
        let time = time_a + time_b;
        if time_a > 0.0 && time_b > 0.0 {
            top += a as f64 * time_b / time;
            bottom += b as f64 * time_a / time;
            variance += (a + b) as f64 * time_a * time_b / (time * time);
            n += a + b;
        }
    }
    if top <= 0.0 || bottom <= 0.0 {
        return None;
    }
    let level = Level::P95;
    let ratio = top / bottom;
    let factor = (level.z() * (variance / (top * bottom)).sqrt()).exp();
    Some(HazardRatio { ratio, interval: Interval { low: ratio / factor, high: ratio * factor, level }, n })
}
