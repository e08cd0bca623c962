//! What the notebook draws, as the pad needs it: the last round, and swaps that are running.

use crate::page::AnimalPage;
use crate::pages::swaps::running::running;
use sayso_model::{Invitation, Moment, Round, RoundId, SwapId, WordId};
use serde::Serialize;

/// A round that is not carried on is over after this long, seconds.
pub const OPEN_FOR_S: f64 = 3600.0;

/// A round that was begun, here or on another device; it may be gone on with while calls are left.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct RoundNow {
    /// Which.
    pub round: RoundId,
    /// Words to hand.
    pub words: Vec<WordId>,
    /// Calls planned.
    pub calls: u16,
    /// When it was begun.
    pub begun: Moment,
    /// When it is over if nobody goes on with it.
    pub until: Moment,
    /// The next call: one more than the last that was noted.
    pub next: u16,
}

/// The last round begun, until it is too old; over already once the next call is beyond those planned.
#[must_use]
pub fn round(page: &AnimalPage) -> Option<RoundNow> {
    let begun = page.story.of::<Round>(page.id).rfind(|r| r.at() <= page.now)?;
    let until = begun.at().plus_seconds(OPEN_FOR_S);
    let calls = page.story.of::<Invitation>(page.id).rev().take_while(|i| i.at() >= begun.at());
    let last = calls.filter_map(|i| i.part.call).filter(|c| c.round == begun.part.round).map(|c| c.number).max();
    let next = last.unwrap_or(0).saturating_add(1);
    (page.now < until).then(|| RoundNow {
        round: begun.part.round,
        words: begun.part.words.clone(),
        calls: begun.part.calls,
        begun: begun.at(),
        until,
        next,
    })
}

/// Swaps that are running.
#[derive(Clone, PartialEq, Debug, Serialize, schemars::JsonSchema)]
pub struct SwapNow {
    /// Which time.
    pub swap: SwapId,
    /// Words taking part.
    pub words: Vec<WordId>,
    /// One answer in this many brings the partner's thing.
    pub one_in: u16,
    /// Its first moment.
    pub begins: Moment,
    /// Its last.
    pub ends: Moment,
}

/// The time of swaps that is running, if one is.
#[must_use]
pub fn swap(page: &AnimalPage) -> Option<SwapNow> {
    let time = running(&page.story, page.id, page.now)?;
    let plan = time.plan;
    Some(SwapNow { swap: plan.swap, words: plan.words, one_in: plan.one_in, begins: time.begins, ends: time.ends })
}
