//! Does one word follow another more often than habit explains?

use super::board::Board;
use super::{says, sittings};
use crate::observe::Answered;
use sayso_methods::understanding::sequences::{SequenceRule, TimedPress, sequences};
use sayso_methods::understanding::{MonteCarlo, UnderstandingError};
use sayso_model::{Moment, Story, WordId};
use std::collections::BTreeSet;

/// The latest presses looked at.
const MOST_PRESSES: usize = 2000;
/// Fixed, so that the same records give the same words.
const SEED: u64 = 1;
/// False share accepted among the pairs told to stand out.
const FALSE_SHARE: f64 = 0.05;
/// Pairs listed.
const LISTED: usize = 8;

/// One word after another.
#[derive(Clone, PartialEq, Debug)]
pub struct Follows {
    /// Pressed first.
    pub first: String,
    /// Pressed next.
    pub second: String,
    /// How often.
    pub times: u64,
    /// How often habits alone would give.
    pub expected: f64,
    /// p adjusted over all pairs of words in use.
    pub adjusted_p: f64,
    /// Whether the buttons lie side by side, so that a slip of the paw would look the same.
    pub side_by_side: bool,
}

impl Follows {
    /// Whether habits do not explain it.
    #[must_use]
    pub fn stands_out(&self) -> bool {
        self.adjusted_p <= FALSE_SHARE
    }
}

/// Words pressed one after another.
#[derive(Clone, PartialEq, Debug)]
pub struct Order {
    /// Pairs seen at least three times, the least expected first.
    pub pairs: Vec<Follows>,
    /// Pairs of presses close enough in time, repeats of a word included.
    pub n: u64,
    /// Own presses looked at.
    pub presses: usize,
    /// Words in use, over whose pairs is adjusted.
    pub words: usize,
    /// From when on; nothing where there is no board.
    pub since: Option<Moment>,
    /// Why there is nothing to tell where there is a board.
    pub lacking: Option<UnderstandingError>,
}

/// Pairs of own presses within ten seconds, since the buttons have lain where they lie.
pub(super) fn order(story: &Story, own: &[Answered<'_>], board: Option<&Board>) -> Order {
    let nothing = |since, lacking| Order { pairs: Vec::new(), n: 0, presses: 0, words: 0, since, lacking };
    let Some(board) = board else {
        return nothing(None, None);
    };
    let since: Vec<_> = own.iter().filter(|a| a.press.at() >= board.since).collect();
    let used = &since[since.len().saturating_sub(MOST_PRESSES)..];
    let at: Vec<Moment> = used.iter().map(|a| a.press.at()).collect();
    let words: Vec<WordId> = used.iter().map(|a| a.press.part.word).collect::<BTreeSet<_>>().into_iter().collect();
    let kinds = words.len();
    let from = at.first().copied().unwrap_or(board.since);
    let presses: Vec<TimedPress> = sittings(&at)
        .into_iter()
        .zip(used)
        .map(|(session, a)| TimedPress {
            session,
            word: words.partition_point(|w| *w < a.press.part.word),
            time: a.press.at().seconds_since(from),
        })
        .collect();
    let distance: Vec<Vec<u8>> = words.iter().map(|a| words.iter().map(|b| board.steps(*a, *b)).collect()).collect();
    // Enough rearrangements that the rarest pair can pass the correction over all pairs.
    let most = (40 * kinds * kinds.saturating_sub(1)).clamp(999, 9_999) as u64;
    let draws = MonteCarlo { most, ..MonteCarlo::seeded(SEED) };
    let found = match sequences(&presses, &distance, &SequenceRule::default(), draws) {
        Ok(found) => found,
        Err(why) => return nothing(Some(board.since), Some(why)),
    };
    let pairs: Vec<Follows> = found
        .pairs
        .iter()
        .take(LISTED)
        .map(|p| Follows {
            first: says(story, words[p.first]),
            second: says(story, words[p.second]),
            times: p.observed,
            expected: p.expected,
            adjusted_p: p.adjusted_p,
            side_by_side: p.neighbours,
        })
        .collect();
    Order { pairs, n: found.n, presses: presses.len(), words: kinds, since: Some(board.since), lacking: None }
}
