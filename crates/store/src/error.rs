//! What can go wrong with the store, in words a person can act on.

use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Why the store could not do what was asked. Cheap to clone: one failed transaction answers many callers.
#[derive(Clone, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum StoreError {
    /// The file is no SQLite database.
    #[error("{} is not a notebook: it is no database at all", .0.display())]
    NotADatabase(PathBuf),
    /// The file is a database of another program.
    #[error("{} is a database, but not a notebook of this program", .0.display())]
    NotOurs(PathBuf),
    /// The file was written by a newer version.
    #[error("{} was written by a newer version (schema {found}; this version knows up to {known}); update this program", path.display())]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its schema.
        found: i64,
        /// The newest schema this version knows.
        known: i64,
    },
    /// The file is damaged.
    #[error("{} is damaged ({what}); keep a copy of it, and restore the latest backup into a new folder", path.display())]
    Corrupt {
        /// The file.
        path: PathBuf,
        /// What was found.
        what: String,
    },
    /// The folder or file cannot be written.
    #[error("cannot write to {}: {what}", path.display())]
    Unwritable {
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        what: String,
    },
    /// No room left.
    #[error("no room left on the disk; nothing was stored by this call")]
    Full,
    /// Another process kept the file locked for too long.
    #[error("the notebook is busy: another process kept it locked; try again")]
    Busy,
    /// The store was closed.
    #[error("the store was closed")]
    Closed,
    /// The file to be written is there already.
    #[error("{} is there already; choose another name", .0.display())]
    Exists(PathBuf),
    /// The file to be read is no sound backup.
    #[error("{} cannot be used as a backup: {what}", path.display())]
    BadBackup {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        what: String,
    },
    /// A clip's bytes do not match its name.
    #[error("clip {sha256}: {what}")]
    BadClip {
        /// Its hash.
        sha256: String,
        /// What is wrong with it.
        what: String,
    },
    /// An import that still has problems, or met a conflict while it was written. Nothing of it was stored.
    #[error("nothing was imported: {0}")]
    NotImported(String),
    /// Reading or writing a file failed.
    #[error("{}: {source}", path.display())]
    Io {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: Arc<std::io::Error>,
    },
    /// The database said no, for a reason that should not happen.
    #[error("database: {0}")]
    Database(Arc<sqlx::Error>),
}

impl StoreError {
    /// An error of a file.
    pub(crate) fn io(path: &Path) -> impl FnOnce(std::io::Error) -> Self + '_ {
        move |source| match source.kind() {
            std::io::ErrorKind::StorageFull => Self::Full,
            _ => Self::Io { path: path.to_owned(), source: Arc::new(source) },
        }
    }

    /// An error of the database file at `path`, told by its SQLite result code.
    pub(crate) fn sql(path: &Path) -> impl Fn(sqlx::Error) -> Self + '_ {
        move |error| {
            if matches!(error, sqlx::Error::PoolClosed) {
                return Self::Closed;
            }
            let code = error.as_database_error().and_then(|e| e.code()).and_then(|c| c.parse::<i32>().ok());
            let path = path.to_owned();
            // The low byte is the primary result code: https://www.sqlite.org/rescode.html
            match code.map(|c| c & 0xff) {
                Some(5 | 6) => Self::Busy,
                Some(8 | 14) => Self::Unwritable { path, what: error.to_string() },
                Some(11) => Self::Corrupt { path, what: error.to_string() },
                Some(13) => Self::Full,
                Some(26) => Self::NotADatabase(path),
                _ => Self::Database(Arc::new(error)),
            }
        }
    }
}
