//! What the learner likes: scores, choice models, side bias, consistency, what to test next.
//!
//! Items are indices from 0. A trial without a choice is information and is kept; it is never read as "does not know".

mod apart;
mod bradley_terry;
mod draws;
mod drift;
mod fit;
mod hour;
mod logit;
mod next_pair;
mod plackett_luce;
mod posterior;
pub mod schedule;
mod scores;
mod side;
mod stability;
mod tiring;
mod top_set;
mod triads;
mod trial;

pub use bradley_terry::{PairModel, bradley_terry, fit_pairs, fit_sittings};
pub use drift::forgetting_weight;
pub use fit::{ChoiceFit, IntervalMethod, Intervals, Prior, Strength, Term};
pub use hour::{HourFit, HourStrength, HourTrial, fit_pairs_by_hour};
pub use next_pair::{Goal, NextPair, next_pair};
pub use plackett_luce::{RankModel, fit_rankings, fit_weighted_rankings, plackett_luce};
pub use scores::{
    ChoiceScore, FreeAccessScore, FreeAccessSession, SingleItem, free_access_scores, multiple_scores, paired_scores,
    single_item_scores,
};
pub use side::{SideBias, side_bias};
pub use stability::{RankingState, Retest, RetestReason, RetestRule, retest};
pub use top_set::{StopRule, TopSet, Verdict, should_stop, top_set};
pub use triads::{Consistency, Tournament, consistency};
pub use trial::{PairOutcome, PairTrial, Ranking};

use crate::stats::StatsError;
use thiserror::Error;

/// Why likes could not be computed.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum LikesError {
    /// A value or a count is wrong.
    #[error(transparent)]
    Stats(#[from] StatsError),
    /// An item index beyond the items there are.
    #[error("item {item} of {items}")]
    UnknownItem {
        /// The index.
        item: usize,
        /// Items there are.
        items: usize,
    },
    /// One item twice in an offer, or chosen without being offered.
    #[error("item {item} offered twice, chosen twice or chosen without being offered")]
    Repeated {
        /// The item.
        item: usize,
    },
    /// The items fall into groups never compared with each other, so maximum likelihood cannot rank across them.
    #[error("{} groups of items were never compared with each other", groups.len())]
    Disconnected {
        /// The groups.
        groups: Vec<Vec<usize>>,
    },
    /// Some items always won against the others, so maximum likelihood would put them infinitely far ahead.
    #[error("items {ahead:?} never lost to the others: no finite estimate without a prior")]
    Separated {
        /// The items that never lost to the rest.
        ahead: Vec<usize>,
    },
    /// The estimate did not settle (extreme weights or priors).
    #[error("the estimate did not settle")]
    Unsettled,
    /// A pair was decided neither way, so the tournament has no winner there.
    #[error("items {first} and {second}: undecided")]
    Undecided {
        /// One item.
        first: usize,
        /// The other.
        second: usize,
    },
}

/// Most items a model takes: beyond it the tables would not fit in a household's machine.
pub(crate) const MOST_ITEMS: usize = 2000;

pub(crate) fn check_items(items: usize) -> Result<(), LikesError> {
    if items < 2 {
        return Err(StatsError::TooFew { what: "items", needed: 2, got: items }.into());
    }
    if items > MOST_ITEMS {
        return Err(StatsError::OutOfRange { what: "number of items", value: items as f64 }.into());
    }
    Ok(())
}

pub(crate) fn check_item(item: usize, items: usize) -> Result<(), LikesError> {
    if item < items { Ok(()) } else { Err(LikesError::UnknownItem { item, items }) }
}
