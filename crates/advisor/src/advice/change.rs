//! What would change an advice.

use super::Because;
use serde::Serialize;

/// What would change an advice.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "change", rename_all = "snake_case")]
pub enum Change {
    /// So many days with at most one day of strong signs.
    CalmDays {
        /// How many.
        days: i32,
    },
    /// A calm start tomorrow: it comes to the board of its own accord.
    CalmStart,
    /// So many days without such a sign.
    DaysWithout {
        /// How many.
        days: i32,
    },
    /// Fewer than half of the next sessions left.
    FewerLeft {
        /// Sessions looked at.
        sessions: usize,
    },
    /// A week with mild signs in clearly fewer sessions than this share.
    FewerMild {
        /// The share.
        share: f64,
    },
    /// Pressing back in its usual range, or a plain cause.
    UsualPresses,
    /// Midnight, or an allowance a veterinarian sets.
    NextDay,
    /// Two or more rewards listed.
    RewardsListed,
    /// A likes test recorded.
    TestRecorded,
    /// A word card made.
    WordMade,
    /// An allowance typed in, or what is missing filled in.
    AllowanceSet,
    /// The card filled in.
    CardFilled,
    /// A word on the card that sounds different, or the word shown all the same.
    SoundsApart,
    /// The card no longer says that the word ends sessions.
    EndsNoSession,
    /// Presses at the usual speed again.
    UsualSpeed,
    /// A press that is heard, or a new recording enrolled.
    HeardAgain,
    /// A test whose ranking agrees with the one before.
    TestAgrees,
    /// So many days after the change with clearly more presses when invited.
    MorePresses {
        /// How many.
        days: i32,
    },
    /// A figure that leads on once it is met, or back once it is not.
    Figure {
        /// The figure, with what is wanted of it.
        figure: Because,
    },
    /// Shown so often, on so many days.
    ShownEnough {
        /// Showings.
        showings: u32,
        /// Days.
        days: u32,
    },
    /// Sessions joined clearly more often than this.
    JoinsMore {
        /// The share.
        share: f64,
    },
    /// Right presses more than chance allows.
    RightMore,
    /// So many sessions in a row at mastery, with so many people.
    Masters {
        /// Share pressed and right a session must reach.
        share: f64,
        /// Sessions in a row.
        sessions: u32,
        /// People.
        people: u32,
    },
    /// More presses when invited and wanting the thing: a share no longer surely below this.
    MoreWhenInvited {
        /// The share.
        share: f64,
    },
    /// Two weeks and more after mastery: presses and right ones no longer surely below this.
    LastsAgain {
        /// The share.
        share: f64,
    },
    /// Two weeks and more after mastery: presses, or right ones, surely below this.
    Fades {
        /// The share.
        share: f64,
    },
    /// Longer waits once calm; back to answering every press at a strong sign, leaving, or presses that do not fall.
    LongerOrBack,
    /// The check planned, or carried out.
    Checked,
}

impl Change {
    /// The figure that is waited for, where it is one.
    #[must_use]
    pub const fn figure(&self) -> Option<&Because> {
        match self {
            Self::Figure { figure } => Some(figure),
            _ => None,
        }
    }
}
