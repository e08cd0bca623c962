//! What can go wrong with people.

use crate::may::Denied;
use crate::membership::PartError;

/// What went wrong. Said in English, for logs; pages say it in their reader's words.
#[derive(Debug, thiserror::Error)]
pub enum Error {
    /// Not allowed.
    #[error(transparent)]
    Denied(#[from] Denied),
    /// A link, an invitation, a code, a token or an answer of a passkey that is unknown, used or too old: which of these is not told.
    #[error("this is not valid, or not any more")]
    NotValid,
    /// The sign-in is too old to change how one signs in.
    #[error("this needs a fresh sign-in")]
    NotFresh,
    /// Too many attempts for one account, address or network address.
    #[error("too many attempts; wait a while")]
    TooOften,
    /// The last keeper of a home, a club or the server would be gone.
    #[error("someone else must be a keeper first")]
    LastKeeper,
    /// The account has a role in the place already, or another account has the address.
    #[error("this is taken already")]
    Taken,
    /// An invitation that lets nobody in yet.
    #[error("this opens later")]
    NotYet,
    /// The home has left this server and is not taken in again.
    #[error("this home has left")]
    Left,
    /// A role that cannot be had so.
    #[error(transparent)]
    Part(#[from] PartError),
    /// A text that is no e-mail address.
    #[error("is no e-mail address")]
    Email,
    /// The passkey library refused.
    #[cfg(feature = "passkeys")]
    #[error("the passkey was refused: {0}")]
    Passkey(#[from] webauthn_rs::prelude::WebauthnError),
    /// The database failed.
    #[error("the database of people: {0}")]
    Database(#[from] sqlx::Error),
    /// The database could not be brought up to date.
    #[error("the database of people cannot be brought up to date: {0}")]
    Migrate(#[from] sqlx::migrate::MigrateError),
    /// A row that this version cannot read.
    #[error("a row of people.{0} cannot be read")]
    Stored(&'static str),
    /// The log of a home could not be read.
    #[error("a home's log: {0}")]
    Home(Box<dyn std::error::Error + Send + Sync>),
}
