//! A log behind one small interface: append with outcomes, read since a place, homes, recordings by hash, snapshots.
//!
//! An enum and not a trait: there are these two, faces hold one `Store` whatever is below it, and what one of them lacks
//! the compiler asks for here ([why](../../../docs/decisions/two-stores.md)).

use crate::appended::Appended;
use crate::clips::ClipHash;
use crate::damage::Damage;
use crate::error::{OnlyInAFolder, StoreError};
use crate::gained::Gained;
use crate::postgres::home::HomeLog;
use crate::row::Row;
use crate::snapshot::{IN_A_FILE, Landmark, ON_A_SERVER, Pace, Snapshot, spread_to};
use crate::sqlite::notebook::Notebook;
use crate::written::{Revision, Written};
use sayso_model::{EventId, HomeId};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::{Arc, OnceLock};

/// A log. A clone is another handle on the same one.
#[derive(Clone)]
pub(crate) enum Log {
    /// A notebook in a folder.
    File(Arc<Notebook>),
    /// A home's on a server.
    Home(Arc<HomeLog>),
}

impl Log {
    /// What it is of, for the programmer.
    pub fn name(&self) -> String {
        match self {
            Self::File(file) => file.files.dir.display().to_string(),
            Self::Home(home) => home.home.to_string(),
        }
    }

    /// The notebook in a folder, for what only such a one has.
    ///
    /// # Errors
    /// What `lacks` on a server, and what to do instead.
    pub fn file(&self, lacks: OnlyInAFolder) -> Result<&Notebook, StoreError> {
        match self {
            Self::File(file) => Ok(file),
            Self::Home(_) => Err(StoreError::OnlyInAFolder(lacks)),
        }
    }

    pub fn is_read_only(&self) -> bool {
        match self {
            Self::File(file) => file.is_read_only(),
            Self::Home(_) => false,
        }
    }

    /// When a snapshot of a home is made.
    pub fn pace(&self) -> &'static Pace {
        match self {
            Self::File(_) => &IN_A_FILE,
            Self::Home(_) => &ON_A_SERVER,
        }
    }

    pub fn dir(&self) -> &Path {
        match self {
            Self::File(file) => &file.files.dir,
            Self::Home(_) => temporary(),
        }
    }

    /// Places that tell the log from another one, grown up to here.
    pub fn marks(&self, at: Revision) -> Vec<i64> {
        match self {
            Self::File(_) => spread_to(at),
            // Each place is a page of the disk; snapshot and log are of one database.
            Self::Home(_) => vec![at.0],
        }
    }

    /// What is wrong with what it holds.
    pub fn corrupt(&self, what: impl Into<Damage>) -> StoreError {
        match self {
            Self::File(file) => StoreError::Corrupt { path: file.files.path().to_owned(), what: what.into() },
            Self::Home(_) => StoreError::DatabaseDamaged(what.into()),
        }
    }

    /// Stores events; one outcome each, in their order. With `whole` all of them or, where any conflicts, none.
    pub async fn append(&self, events: Vec<Written>, whole: bool) -> Result<Vec<Appended>, StoreError> {
        match self {
            Self::File(file) => file.append(events, whole).await,
            Self::Home(home) => home.append(&events, whole).await,
        }
    }

    pub async fn close(&self) -> Result<(), StoreError> {
        match self {
            Self::File(file) => file.close().await,
            // The connections are all homes'.
            Self::Home(_) => Ok(()),
        }
    }

    pub async fn home(&self) -> Result<Option<HomeId>, StoreError> {
        match self {
            Self::File(file) => file.home().await,
            Self::Home(home) => home.revision().await.map(|_| Some(home.home)),
        }
    }

    /// The one home that it is of and can ever be of: none of a notebook in a folder, which may hold several.
    pub fn only_home(&self) -> Option<HomeId> {
        match self {
            Self::File(_) => None,
            Self::Home(home) => Some(home.home),
        }
    }

    pub async fn homes(&self) -> Result<Vec<HomeId>, StoreError> {
        match self {
            Self::File(file) => file.homes().await,
            Self::Home(home) => home.revision().await.map(|_| vec![home.home]),
        }
    }

    /// Whether there is anything of a home.
    pub async fn holds(&self, home: HomeId) -> Result<bool, StoreError> {
        match self {
            Self::File(file) => file.holds(home).await,
            Self::Home(log) => log.only(home).map(|()| true),
        }
    }

    /// How far it has grown.
    pub async fn revision(&self) -> Result<Revision, StoreError> {
        match self {
            Self::File(file) => file.revision().await,
            Self::Home(home) => home.revision().await,
        }
    }

    /// Rows after a place, in order of arrival, at most `limit`.
    pub async fn rows(&self, after: Revision, limit: i64) -> Result<Vec<Row>, StoreError> {
        match self {
            Self::File(file) => file.rows(after, limit).await,
            Self::Home(home) => home.rows(after, limit).await,
        }
    }

    /// How many events of a home stand after a place.
    pub async fn count_after(&self, home: HomeId, after: Revision) -> Result<u64, StoreError> {
        match self {
            Self::File(file) => file.count_after(home, after).await,
            Self::Home(log) => {
                log.only(home)?;
                log.count_after(after).await
            }
        }
    }

    /// What a home has gained after one place, up to another. A log only grows, so what stands between two never changes.
    pub async fn gained(&self, home: HomeId, between: (Revision, Revision)) -> Result<Gained, StoreError> {
        match self {
            Self::File(file) => file.gained(home, between).await,
            Self::Home(log) => {
                log.only(home)?;
                log.gained(between).await
            }
        }
    }

    /// The stored JSON of events, by id; unknown ids are left out.
    pub async fn contents(&self, ids: &[EventId]) -> Result<BTreeMap<EventId, String>, StoreError> {
        match self {
            Self::File(file) => file.contents(ids).await,
            Self::Home(home) => home.contents(ids).await,
        }
    }

    /// The events at some places, read anew.
    pub async fn at(&self, places: &[i64]) -> Result<Gained, StoreError> {
        match self {
            Self::File(file) => file.at(places).await,
            Self::Home(home) => home.at(places).await,
        }
    }

    /// The ids at some places, those left out where there is no row.
    pub async fn landmarks(&self, places: &[i64]) -> Result<Vec<Landmark>, StoreError> {
        match self {
            Self::File(file) => file.landmarks(places).await,
            Self::Home(home) => home.landmarks(places).await,
        }
    }

    pub async fn put_clip(&self, bytes: Vec<u8>) -> Result<ClipHash, StoreError> {
        match self {
            Self::File(file) => file.put_clip(bytes).await,
            Self::Home(home) => home.put_clip(&bytes).await,
        }
    }

    pub async fn clip(&self, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
        match self {
            Self::File(file) => file.clip(hash).await,
            Self::Home(home) => home.clip(hash).await,
        }
    }

    pub async fn clips(&self) -> Result<Vec<ClipHash>, StoreError> {
        match self {
            Self::File(file) => file.clips().await,
            Self::Home(home) => home.clips().await,
        }
    }

    /// The snapshot of a home, or in words why it cannot be used.
    pub async fn snapshot(&self, home: HomeId) -> Result<Result<Option<Snapshot>, String>, StoreError> {
        match self {
            Self::File(file) => file.snapshot(home).await,
            Self::Home(log) => {
                log.only(home)?;
                log.snapshot().await
            }
        }
    }

    /// Puts a snapshot in place of the one before; `at` is how far the log had grown.
    pub async fn put_snapshot(&self, home: HomeId, at: Revision, bytes: Vec<u8>) -> Result<(), StoreError> {
        match self {
            Self::File(file) => file.put_snapshot(home, bytes).await,
            Self::Home(log) => {
                log.only(home)?;
                log.put_snapshot(at, &bytes).await
            }
        }
    }
}

/// Where files of a server are held for a while.
fn temporary() -> &'static Path {
    static TEMPORARY: OnceLock<PathBuf> = OnceLock::new();
    TEMPORARY.get_or_init(std::env::temp_dir)
}
