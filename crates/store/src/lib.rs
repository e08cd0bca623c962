//! What happened: the append-only log of events in SQLite, files in and out, backups, recordings.
//!
//! The set of events is the truth; stories are computed from it. Knows nothing of estimates, advice or pages, and never
//! reads the clock.

mod aside;
mod backup;
mod check;
mod clips;
mod damage;
mod db;
mod digest;
mod error;
mod exchange;
mod held;
mod homes;
mod incoming;
mod log;
mod open;
mod restore;
mod row;
mod shares;
mod snapshot;
mod snippets;
mod store;
mod stories;
mod strangers;
mod writer;

pub use backup::BackedUp;
pub use check::Checked;
pub use clips::{ClipHash, MOST_CLIP_BYTES};
pub use damage::{CheckFault, ClipFault, Damage, DamagedRow, RowDamage, SnapshotFault};
pub use error::{ArchiveFault, BackupFault, NotImported, StoreError};
pub use exchange::{
    Archived, ClipsBrought, ColumnHelp, FaultKind, Faults, FileKind, Format, ImportOptions, Imported, Look,
    MOST_FILE_BYTES, MOST_LINE_BYTES, MOST_PROBLEMS, Preview, RowProblem, TakenIn, Wanted, columns_of,
    events_of_archive, labelled,
};
pub use held::HeldFile;
pub use incoming::{NotRead, read_event};
pub use log::{Logged, Revision};
pub use restore::Restored;
pub use shares::{Others, Share, Shares};
pub use snippets::{MOST_SNIPPET_BYTES, MOST_SNIPPETS, SNIPPET_DAYS};
pub use store::Store;
pub use stories::WORTH_A_SNAPSHOT;
pub use writer::{Appended, MOST_EVENT_BYTES};
