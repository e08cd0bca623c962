//! Identities of what this crate keeps. Those that stand in events (homes, persons, accounts, clubs) are the model's.

use crate::secret::Secrets;
use sayso_model::Moment;
use serde::{Deserialize, Serialize};
use std::fmt;
use uuid::{Builder, Uuid};

macro_rules! id {
    ($($(#[$doc:meta])* $name:ident),+ $(,)?) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub Uuid);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }
    )+};
}

id! {
    /// An invitation. No secret: that is in its link alone.
    InvitationId,
    /// A role of an account in one place.
    MembershipId,
    /// One signed-in browser. No secret: that is in its cookie alone.
    SessionId,
    /// A notebook at home that is linked. No secret: that is in the notebook's folder alone.
    NotebookId,
    /// A coach who stands in for another one.
    CoverId,
    /// A passkey being registered or asked for.
    CeremonyId,
}

/// A new UUID of version 7.
pub(crate) fn new_id(now: Moment, secrets: &mut impl Secrets) -> Uuid {
    let mut tail = [0; 10];
    secrets.fill(&mut tail);
    Builder::from_unix_timestamp_millis(u64::try_from(now.millis()).unwrap_or(0), &tail).into_uuid()
}
