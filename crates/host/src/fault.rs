//! Why serving could not begin or go on, and how what goes wrong with people is told.

use crate::provider::ProviderError;
use sayso_people::mail::MailError;
use sayso_store::{Appended, StoreError};
use sayso_web::Error;
use sayso_wording::{Locale, Message, say, words};
use std::net::SocketAddr;

/// Why a server could not begin or go on.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum HostError {
    /// The port cannot be had.
    #[error("{at} cannot be opened: {source}; choose another port or address")]
    Port {
        /// Address and port.
        at: SocketAddr,
        /// Why.
        source: std::io::Error,
    },
    /// The public address has no host that passkeys can be bound to, or is not safe.
    #[error("the public address {0} must be https, or http on localhost")]
    PublicUrl(String),
    /// The database of homes cannot be opened.
    #[error("the database cannot be opened: {0}")]
    Store(#[from] StoreError),
    /// The database of people cannot be opened.
    #[error(transparent)]
    People(#[from] sayso_people::Error),
    /// The tables stand in another place than when a server was last opened on them.
    #[error(
        "the database is not where a server was last opened on it. Was a backup brought back? First: sayso restored --closings FILE. Was it moved and lacks nothing: sayso restored --nothing-lost"
    )]
    Elsewhere,
    /// Mail cannot be sent so.
    #[error("mail cannot be sent: {0}")]
    Mail(#[from] MailError),
    /// The identity provider cannot be used so.
    #[error(transparent)]
    Provider(#[from] ProviderError),
    /// Reading or writing failed.
    #[error("{0}")]
    Io(#[from] std::io::Error),
}

impl Message for HostError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Port { at, source } => {
                say!(l, command_serve::port_taken, at = at.to_string(), why = source.to_string())
            }
            Self::PublicUrl(url) => say!(l, host::public_url, url = url),
            Self::Store(why) => say!(l, host::cannot_open, why = why.say(l)),
            Self::People(why) => say!(l, host::cannot_open, why = why.to_string()),
            Self::Elsewhere => say!(l, host::elsewhere),
            Self::Mail(why) => say!(l, host::no_mail, why = why.to_string()),
            Self::Provider(ProviderError::Issuer(url)) => say!(l, host::provider_issuer, url = url),
            Self::Provider(why) => say!(l, host::provider_cannot, why = why.to_string()),
            // What the system said.
            Self::Io(why) => why.to_string(),
        }
    }
}

/// What goes wrong with people, as an answer. `Result::map_err(told)`.
pub fn told(error: sayso_people::Error) -> Error {
    use sayso_people::Error as E;
    match error {
        E::Denied(why) => why.into(),
        E::NotValid | E::Passkey(_) => Error::Forbidden(words!(host::not_valid)),
        E::NotFresh => Error::NotFresh,
        E::TooOften => {
            tracing::warn!("Something was tried too often, and is held off.");
            Error::TooMany(900)
        }
        E::LastKeeper => Error::refused("role", words!(host::last_keeper)),
        E::Taken => Error::refused("role", words!(host::taken)),
        E::NotYet => Error::Forbidden(words!(host::not_yet)),
        E::Left => Error::Forbidden(words!(host::left)),
        E::Part(_) => Error::refused("role", words!(host::part)),
        E::Email => Error::refused("email", words!(host::email)),
        E::Home(why) => match why.downcast::<StoreError>() {
            Ok(why) => (*why).into(),
            Err(other) => Error::internal(other),
        },
        E::Database(sqlx) => unreachable_or_failed(sqlx),
        other => Error::internal(other),
    }
}

/// The same about a role that was to be ended or changed: one that is not there, or not theirs to end.
pub fn told_of_role(error: sayso_people::Error) -> Error {
    match error {
        sayso_people::Error::NotValid => Error::Forbidden(words!(host::no_such_role)),
        other => told(other),
    }
}

/// That an event made here just now came into a log. `None` where it told nothing.
///
/// # Errors
/// [`Error::Refused`] where the log refused it.
pub fn came_new(outcome: Option<Appended>) -> Result<(), Error> {
    match outcome {
        Some(Appended::New) => Ok(()),
        Some(Appended::Refused(problems)) => Err(Error::Refused(problems.into())),
        // Its id was made here just now: nobody else has it.
        Some(Appended::Duplicate | Appended::Conflict) | None => Err(Error::internal("a new event was known")),
    }
}

/// A database that is away for a while is not a fault of ours.
fn unreachable_or_failed(error: impl std::error::Error + Send + Sync + 'static) -> Error {
    tracing::error!("The database of people: {error}");
    Error::Unavailable(words!(host::away))
}
