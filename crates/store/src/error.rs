//! What can go wrong with the store, in words a person can act on.

use crate::damage::{ClipFault, Damage, DamagedRow};
use crate::exchange::problem::RowProblem;
use crate::folder::folder_of;
use crate::shares::{Shares, in_words};
use sayso_model::{EventId, HomeId, Problems};
use std::io::Write;
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
        what: Damage,
    },
    /// The folder or file cannot be written.
    #[error("cannot write to {}: {what}", path.display())]
    Unwritable {
        /// The file or folder.
        path: PathBuf,
        /// What the system said.
        what: String,
    },
    /// No room left, or no more than this program may take.
    #[error("the notebook's disk is full; nothing of this was stored. Make room, then try again")]
    DiskFull,
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
        what: BackupFault,
    },
    /// The file to be read is no archive of a notebook.
    #[error("{} cannot be read as an archive of a notebook: {what}", path.display())]
    BadArchive {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        what: ArchiveFault,
    },
    /// The file is nothing that can be taken in.
    #[error(
        "{0} is none of the files that can be taken in: a table (.csv), lines of JSON (.jsonl or .ndjson), an archive (.tar) or a backup (.sayso)"
    )]
    UnknownFile(String),
    /// The file would make the notebook hold several homes, and nobody said so.
    #[error("{} would make this notebook hold several homes. It brings {}. Nothing was stored; to keep several in one notebook, for good, say so", path.display(), in_words(who))]
    OtherHome {
        /// The file.
        path: PathBuf,
        /// The homes it would bring, with counts.
        who: Shares,
    },
    /// A clip's bytes do not match its name.
    #[error("clip {sha256}: {what}")]
    BadClip {
        /// Its hash.
        sha256: String,
        /// What is wrong with it.
        what: ClipFault,
    },
    /// An import that still has problems, or met a conflict while it was written. Nothing of it was stored.
    #[error("nothing was imported: {0}")]
    NotImported(NotImported),
    /// A file that is brought, or made to be sent, cannot be kept for a while.
    #[error(
        "cannot write to {}: {source}. A file that is brought, or made to be sent, is kept in this folder for a while: \
         let the user that runs this program write there", path.display()
    )]
    CannotHold {
        /// The folder.
        path: PathBuf,
        /// What the system said.
        source: Arc<std::io::Error>,
    },
    /// Reading or writing a file failed.
    #[error("{}: {source}", path.display())]
    Io {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: Arc<std::io::Error>,
    },
    /// The database server does not answer.
    #[error(
        "the database cannot be reached ({what}); nothing of this is known to be stored. Check its address and that it runs, then try again"
    )]
    Unreachable {
        /// What was said.
        what: String,
    },
    /// The database server is of a version that is too old.
    #[error("the database server is PostgreSQL {found}; this program needs {least} or later")]
    OldDatabase {
        /// Its version.
        found: i32,
        /// The oldest that serves.
        least: i32,
    },
    /// The schema on the server was made by a newer version.
    #[error(
        "the database was made by a newer version (schema {found}; this version knows up to {known}); update this program"
    )]
    NewerDatabase {
        /// Its schema.
        found: i64,
        /// The newest schema this version knows.
        known: i64,
    },
    /// The role that connects lacks a right.
    #[error(
        "the database refuses this program ({what}); let its owner grant the role sayso_server to the user that connects"
    )]
    NoRights {
        /// What the server said.
        what: String,
    },
    /// The database lets nobody of this name and password in.
    #[error("the database does not let this user in ({what}); check name and password in the address of the database")]
    NotLetIn {
        /// What the server said.
        what: String,
    },
    /// The tables are missing or of an earlier version, and whoever connects may not make them.
    #[error(
        "the tables are not there yet or of an earlier version, and the user that connects may not make them ({what}); give the one who owns them by --database-owner or in the variable SAYSO_DATABASE_OWNER"
    )]
    NeedsOwner {
        /// What the server said.
        what: String,
    },
    /// What the database server holds is damaged.
    #[error("the database is damaged ({0}); keep a copy of it, and bring back its latest backup")]
    DatabaseDamaged(Damage),
    /// There is no such home on this server.
    #[error("there is no home {0} here")]
    NoSuchHome(HomeId),
    /// The home was erased; nothing of it is taken any more.
    #[error("this home has left: all of it was erased here, and nothing more of it is kept")]
    HomeLeft(HomeId),
    /// It is there for a notebook in a folder, not for a home on a server.
    #[error("{0}")]
    OnlyInAFolder(OnlyInAFolder),
    /// The database said no, for a reason that should not happen.
    #[error("database: {0}")]
    Database(Arc<sqlx::Error>),
}

/// What a home on a server lacks, and what to do instead.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum OnlyInAFolder {
    /// A backup as a database file.
    #[error("a home on a server has no backup file of its own; take an archive of it instead")]
    Backup,
    /// Taking in a backup.
    #[error(
        "a backup file cannot be brought to a server; restore it into a folder, take an archive there and bring that"
    )]
    Restore,
    /// The check of the database file.
    #[error("a home on a server has no file to be checked; take an archive of it and check it in a folder")]
    Check,
    /// Pieces of sound that wait to be judged.
    #[error("sound around presses is not kept on a server; listen with a notebook in a folder to judge presses by ear")]
    Snippets,
}

/// What is wrong with a backup.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum BackupFault {
    /// It is not there.
    #[error("there is no such file")]
    NoFile,
    /// It is the notebook that would be restored.
    #[error("it is the notebook itself")]
    Itself,
    /// Its content changed.
    #[error("it is damaged: its content does not have the digest it states")]
    OtherDigest,
    /// Its digest is gone.
    #[error("it is damaged: its digest is missing")]
    NoDigest,
    /// A row is no event, or its columns contradict it.
    #[error("it is damaged: {0}")]
    Row(DamagedRow),
    /// As it was written, it is not what the log holds.
    #[error("it does not hold what the log holds; the disk it is on may be failing")]
    NotTheLog,
    /// So many rows refer to nothing.
    #[error("{0} rows refer to nothing")]
    Loose(usize),
    /// What the database found wrong with the file's structure.
    #[error("{0}")]
    Structure(String),
}

/// What is wrong with an archive.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ArchiveFault {
    /// The file of events is not in it.
    #[error("there is no {0} in it")]
    Lacks(&'static str),
    /// What the system said.
    #[error("{0}")]
    Unreadable(String),
}

/// Why an import was not stored.
#[derive(Clone, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NotImported {
    /// The file has faults.
    #[error("{count} problems, the first: {first}")]
    Faults {
        /// How many.
        count: usize,
        /// The first of them.
        first: Box<RowProblem>,
    },
    /// It brings homes that nobody asked in.
    #[error("the file would make this notebook hold several homes. It brings {}. To keep several in one notebook, for good, say so", in_words(.0))]
    OtherHomes(Shares),
    /// It brings homes beside the one that this log is of, on a server.
    #[error("a home on a server takes in a file of one home alone. This one brings {}", in_words(.0))]
    NotItsOwn(Shares),
    /// It is another home's notebook, and records of this one are here already.
    #[error(
        "the file is of another home ({0}), and this one holds records already: another home's notebook moves only into one in which nothing is written yet"
    )]
    NotEmpty(HomeId),
    /// Another event with its id was stored since.
    #[error("another event with the id {0} is stored already")]
    Taken(EventId),
    /// The log refused an event.
    #[error(transparent)]
    Refused(Problems),
}

impl StoreError {
    /// An error of a file.
    pub(crate) fn io(path: &Path) -> impl FnOnce(std::io::Error) -> Self + '_ {
        move |source| match source.kind() {
            kind if full(kind) => Self::DiskFull,
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
                Some(13) => Self::DiskFull,
                // Input, output and opening fail in their own way where a file cannot grow.
                Some(10 | 14) if no_room_beside(&path) => Self::DiskFull,
                Some(8 | 14) => Self::Unwritable { path, what: error.to_string() },
                Some(11) => Self::Corrupt { path, what: Damage::Said(error.to_string()) },
                Some(26) => Self::NotADatabase(path),
                _ => Self::Database(Arc::new(error)),
            }
        }
    }
}

/// Whether this is the system's way to say that there is no room.
const fn full(kind: std::io::ErrorKind) -> bool {
    matches!(kind, std::io::ErrorKind::StorageFull | std::io::ErrorKind::QuotaExceeded)
}

/// Bytes that any disk with room takes.
static LITTLE: [u8; 65_536] = [0; 65_536];

/// Whether the disk of a file takes nothing more. Asked by writing to a file without a name: what the system counts as
/// free leaves out quotas and what is kept back.
fn no_room_beside(path: &Path) -> bool {
    let folder = folder_of(path);
    let tried = tempfile::tempfile_in(folder).and_then(|mut file| {
        file.write_all(&LITTLE)?;
        file.sync_all()
    });
    tried.is_err_and(|e| full(e.kind()))
}
