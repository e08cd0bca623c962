//! Identities. Every id is a UUID made by the device that first needed it (version 7, RFC 9562), so that
//! offline devices never collide and ids sort by time.

use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;
use uuid::Uuid;

macro_rules! id {
    ($($(#[$doc:meta])* $name:ident),+ $(,)?) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }

        impl FromStr for $name {
            type Err = uuid::Error;
            fn from_str(s: &str) -> Result<Self, Self::Err> {
                Uuid::from_str(s).map(Self)
            }
        }
    )+};
}

id! {
    /// One fact in the log.
    EventId,
    /// A household: the people and animals that share a board.
    HomeId,
    /// An animal that learns.
    AnimalId,
    /// A person who shows or answers.
    PersonId,
    /// What one button says.
    WordId,
    /// A thing the animal may want: food, play, touch, training, exploring, rest.
    RewardId,
    /// A stretch of time at the board that the animal may leave.
    SessionId,
    /// A likes test (preference assessment): one set of rewards, one format, one or more rounds.
    AssessmentId,
    /// A planned check of understanding.
    ProbeId,
    /// A trial of a change by a single-case design.
    DesignId,
    /// A recording.
    ClipId,
    /// A rule of the house.
    RuleId,
    /// What one microphone heard without a break, on one clock.
    StreamId,
    /// A round of invitations whose words are drawn.
    RoundId,
    /// A time in which answers are now and then swapped.
    SwapId,
    /// An account: a person who signs in on a server of many homes.
    AccountId,
    /// A course of weeks that a coach lays out.
    ProgrammeId,
    /// A club: coaches, and homes that share with them.
    ClubId,
}

impl StreamId {
    /// No other sorts before it.
    pub(crate) const LEAST: Self = Self(Uuid::nil());
}
