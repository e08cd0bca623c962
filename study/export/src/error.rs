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
    /// A server's database that cannot be asked.
    #[error(transparent)]
    Server(#[from] sayso_store::StoreError),
    /// People of a server that cannot be asked.
    #[error(transparent)]
    People(#[from] sayso_people::Error),
    /// A database that was brought back.
    #[error(
        "the database is not where a server was last opened on it: it may hold consents that were taken back since. Was a backup \
         brought back? First: sayso restored --closings FILE. Was it moved and lacks nothing: sayso restored --nothing-lost"
    )]
    BroughtBack,
    /// No threads to ask a server with.
    #[error("no threads can be had: {0}")]
    Threads(std::io::Error),
    /// The list of homes lies with the tables.
    #[error("the list {0} lies in the folder of the tables: with it, tables of two exports could be joined")]
    ListWithTheTables(PathBuf),
    /// The list of homes is none.
    #[error(
        "{path}, line {line}: a list of homes has one study name a line, 64 hexadecimal digits, each greater than the one before"
    )]
    BadList {
        /// Which file.
        path: PathBuf,
        /// From 1.
        line: usize,
    },
    /// The list of homes is of none of these.
    #[error(
        "{0} names no home of this server under this key: it may be of another key or server. Where all of its homes left, delete the \
         tables"
    )]
    ListOfOthers(PathBuf),
    /// Others agree than when the tables were written.
    #[error(
        "who agrees has changed in {changed} of {all} buckets since {path} was written: publish nothing of it; run the same export \
         without --check, then ask anew"
    )]
    Agreement {
        /// The folder.
        path: PathBuf,
        /// Buckets in which it has.
        changed: usize,
        /// Buckets in all.
        all: usize,
    },
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
