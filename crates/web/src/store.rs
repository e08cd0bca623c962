//! The store as this crate uses it, in one place.

use crate::error::Error;
use sayso_notebook::NotKept;
use sayso_wording::{Words, words};

pub use sayso_store::{Appended, Logged, Revision, Store, StoreError};

impl From<StoreError> for Error {
    fn from(error: StoreError) -> Self {
        match error {
            // These pass by or can be put right by the person; the words say how.
            StoreError::Busy | StoreError::Closed | StoreError::Unwritable { .. } | StoreError::CannotHold { .. } => {
                Self::Unavailable(error.into())
            }
            // Addresses and roles of a database are for whoever runs the server.
            StoreError::Unreachable { .. }
            | StoreError::NoRights { .. }
            | StoreError::NotLetIn { .. }
            | StoreError::NeedsOwner { .. } => {
                tracing::error!("{error}");
                Self::Unavailable(words!(host::away))
            }
            // Erased, or not there for a home on a server: asking again changes nothing.
            StoreError::HomeLeft(_) | StoreError::OnlyInAFolder(_) => Self::Forbidden(Words::from(error).sentence()),
            StoreError::NoSuchHome(_) => Self::NotFound(Words::from(error).sentence()),
            StoreError::DiskFull => Self::DiskFull,
            // The words name the file and the remedy, for the person at the page as well as in the log.
            StoreError::Corrupt { .. }
            | StoreError::NotADatabase(_)
            | StoreError::NotOurs(_)
            | StoreError::Newer { .. }
            | StoreError::OldDatabase { .. }
            | StoreError::NewerDatabase { .. }
            | StoreError::DatabaseDamaged(_)
            | StoreError::BadClip { .. } => Self::Damaged(Words::from(error).sentence()),
            StoreError::NotImported(what) => Self::refused("file", what),
            other => Self::internal(other),
        }
    }
}

impl From<NotKept> for Error {
    fn from(why: NotKept) -> Self {
        match why {
            NotKept::Late(late) => Self::refused(late.field(), late),
            NotKept::Refused(problems) => Self::Refused(problems.into()),
            NotKept::Store(error) => error.into(),
            other => Self::internal(other),
        }
    }
}
