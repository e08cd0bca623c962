//! Events that cannot come to count, because what they replace is dated at the end of all time.

use crate::time::Moment;

/// Why an event cannot count: what it replaces is dated at the end of all time.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
pub enum TooLate {
    /// It is a card.
    #[error("cannot be later than {0}, the date of the card it replaces. Put that card's date right in the log first")]
    Card(Moment),
    /// It is a correction or withdrawal.
    #[error(
        "cannot be later than {0}, when this was last changed, so it can be changed no more. Note it anew, as it should be"
    )]
    Amendment(Moment),
}

impl TooLate {
    /// The field of the event that cannot be set.
    #[must_use]
    pub const fn field(self) -> &'static str {
        match self {
            Self::Card(_) => "happened_at",
            Self::Amendment(_) => "recorded_at",
        }
    }
}
