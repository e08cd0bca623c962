//! What can go wrong between the records and the tables.

use crate::pseudonym::KeyFault;
use std::path::{Path, PathBuf};

/// Why nothing was written, or not all.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ExportError {
    /// A file or folder that cannot be read or written.
    #[error("{path}: {why}")]
    Io {
        /// Which.
        path: PathBuf,
        /// Why.
        why: std::io::Error,
    },
    /// A table that cannot be written.
    #[error("{path}: {why}")]
    Table {
        /// Which.
        path: PathBuf,
        /// Why.
        why: String,
    },
    /// A line that is no event.
    #[error("{path}, line {line}: {why}")]
    NoEvent {
        /// Of which file.
        path: PathBuf,
        /// From 1.
        line: usize,
        /// What is wrong, with its field where there is one.
        why: String,
    },
    /// The folder holds tables of something else.
    #[error("{path} holds tables of \"{there}\", not of \"{asked}\": choose an empty folder")]
    Other {
        /// The folder.
        path: PathBuf,
        /// What it holds.
        there: String,
        /// What was asked for.
        asked: String,
    },
    /// The manifest is none.
    #[error("{path} is no manifest of tables: {why}")]
    BadManifest {
        /// Which file.
        path: PathBuf,
        /// Why.
        why: String,
    },
    /// Not all buckets are there.
    #[error("{path} is not whole: {there} of {all} buckets are there; run the same export again, it goes on")]
    NotWhole {
        /// The folder.
        path: PathBuf,
        /// Buckets written.
        there: usize,
        /// Buckets in all.
        all: usize,
    },
    /// Another export writes there.
    #[error("another export writes into {0}")]
    Busy(PathBuf),
    /// A key that is none, or lies with the tables.
    #[error(transparent)]
    Key(#[from] KeyFault),
    /// A number of households or days that cannot be.
    #[error("{what} must be {wanted}")]
    Range {
        /// Of what.
        what: &'static str,
        /// What would be right.
        wanted: &'static str,
    },
    /// A home that cannot be simulated.
    #[error("an invented home does not hold together: {0}")]
    Simulation(#[from] sayso_sim::ConfigError),
}

impl ExportError {
    pub(crate) fn io(path: &Path) -> impl FnOnce(std::io::Error) -> Self + '_ {
        move |why| Self::Io { path: path.to_owned(), why }
    }

    pub(crate) fn table<E: std::fmt::Display>(path: &Path) -> impl Fn(E) -> Self + '_ {
        move |why| Self::Table { path: path.to_owned(), why: why.to_string() }
    }
}
