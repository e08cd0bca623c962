//! The one hint that matters for a word now.

use crate::estimate::Estimate;
use serde::Serialize;

/// The one hint that matters for a word now.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "hint", rename_all = "snake_case")]
pub enum Hint {
    /// Give faster: have the thing at the board.
    GiveFaster {
        /// Middle seconds from press to delivery lately.
        seconds: Estimate,
        /// What to aim for.
        aim_s: f64,
    },
    /// Press it yourself, say it, give it; wait for nothing.
    ShowOnly,
    /// Offer, wait, then show it and give it, whatever comes.
    WaitThenShow {
        /// How long to wait, in seconds.
        wait_s: f64,
    },
    /// Show it when the thing is wanted, or change what it brings.
    WhenWanted,
    /// A little every day.
    LittleEveryDay,
    /// All of you answer alike, at once.
    AnswerAlike,
    /// At the hours it joins, in a quiet place.
    GoodHours,
    /// Let it come to the button by itself.
    LetItCome,
    /// Last in the session.
    AtTheEnd,
    /// Answer every press, also with "not now".
    AnswerEvery,
}
