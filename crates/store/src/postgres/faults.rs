//! What the database server says, as errors a person can act on.

use crate::error::StoreError;
use sqlx::Error;
use std::sync::Arc;

/// An error of the server, told by its SQLSTATE (<https://www.postgresql.org/docs/current/errcodes-appendix.html>).
pub(crate) fn told(error: Error) -> StoreError {
    // What it says, without the line of its own source at which it said so.
    let what = match &error {
        Error::Database(said) => said.message().to_owned(),
        other => other.to_string(),
    };
    match &error {
        Error::PoolClosed => StoreError::Closed,
        // Nothing was answered: it is away, or went away meanwhile.
        Error::Io(_) | Error::Tls(_) | Error::Protocol(_) | Error::PoolTimedOut | Error::WorkerCrashed => {
            StoreError::Unreachable { what }
        }
        Error::Configuration(_) => StoreError::Unreachable { what },
        Error::Database(said) => match said.code().as_deref().unwrap_or_default() {
            // Connections lost or refused, a server that stops or starts, too many connections, no such database.
            "57P01" | "57P02" | "57P03" | "53300" | "3D000" => StoreError::Unreachable { what },
            code if code.starts_with("08") => StoreError::Unreachable { what },
            // No right to it, a server that only follows another.
            "42501" | "25006" => StoreError::NoRights { what },
            // A wrong name or password.
            code if code.starts_with("28") => StoreError::NotLetIn { what },
            // Deadlock, waited too long for a lock or for an answer.
            "40001" | "40P01" | "55P03" | "57014" => StoreError::Busy,
            "53100" => StoreError::DiskFull,
            "XX001" | "XX002" => StoreError::DatabaseDamaged(what.into()),
            _ => StoreError::Database(Arc::new(error)),
        },
        _ => StoreError::Database(Arc::new(error)),
    }
}
