//! What happened: the append-only log of events, in a file (SQLite) or, of many homes, on a server (PostgreSQL); files in
//! and out, backups, recordings.
//!
//! The set of events is the truth; stories are computed from it. Knows nothing of estimates, advice or pages, and never
//! reads the clock.

mod appended;
mod aside;
mod clips;
mod damage;
mod error;
mod exchange;
mod folder;
mod gained;
mod held;
mod homes;
mod incoming;
mod log;
mod postgres;
mod row;
mod shares;
mod snapshot;
mod snippets;
mod sqlite;
mod store;
mod stories;
mod union;
mod written;

pub use appended::{Appended, MOST_EVENT_BYTES};
pub use aside::{keep_new, keep_private, read_private};
pub use clips::{ClipHash, MOST_CLIP_BYTES};
pub use damage::{CheckFault, ClipFault, Damage, DamagedRow, RowDamage, SnapshotFault};
pub use error::{ArchiveFault, BackupFault, NotImported, OnlyInAFolder, StoreError};
pub use exchange::{
    Archived, ClipsBrought, ColumnHelp, Diary, DiaryPart, FaultKind, Faults, FileKind, Format, ImportOptions, Imported,
    Look, MOST_FILE_BYTES, MOST_LINE_BYTES, MOST_PROBLEMS, Preview, RowProblem, TakenIn, Wanted, columns_of,
    events_of_archive, labelled,
};
pub use folder::folder_of;
pub use held::HeldFile;
pub use incoming::{NotRead, read_event};
pub use postgres::digest::{Digest, Grown};
pub use postgres::server::{Database, Server};
pub use shares::{Others, Share, Shares};
pub use snapshot::WORTH_A_SNAPSHOT;
pub use snippets::{MOST_SNIPPET_BYTES, MOST_SNIPPETS, SNIPPET_DAYS};
pub use sqlite::backup::BackedUp;
pub use sqlite::check::Checked;
pub use sqlite::restore::Restored;
pub use store::Store;
pub use union::{AtOnce, Given, Stands, Taken};
pub use written::{Logged, Revision};
