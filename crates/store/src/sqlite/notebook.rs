//! The log in a folder as its callers see it: the file that is read, the line to the one task that writes, and recordings and
//! snapshots as files beside it.

use crate::appended::Appended;
use crate::clips::{self, ClipHash};
use crate::error::StoreError;
use crate::gained::Gained;
use crate::row::Row;
use crate::snapshot::{self, Landmark, Snapshot};
use crate::sqlite::db::{Files, Opening};
use crate::sqlite::writer::{self, Order};
use crate::sqlite::{log, open};
use crate::written::{Revision, Written};
use sayso_model::{EventId, HomeId};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::OnceLock;
use tokio::sync::{mpsc, oneshot};
use tokio::task::spawn_blocking;
use uuid::Uuid;

/// A notebook in a folder, open.
pub(crate) struct Notebook {
    pub files: Files,
    /// To the writer; none where the notebook may only be read.
    orders: Option<mpsc::Sender<Order>>,
    /// What is wrong with the file, once that was found while it was in use.
    damage: OnceLock<StoreError>,
    // What is read where the notebook itself cannot be; removed with the last handle.
    _copy: Option<tempfile::TempDir>,
}

impl Notebook {
    /// Opens the notebook in a folder; the file takes at most so many bytes.
    pub async fn open(
        dir: &Path,
        most_bytes: u64,
        look: open::Look,
        say: &(dyn Fn(&str) + Sync),
    ) -> Result<Self, StoreError> {
        let path = open::database_in(dir);
        let (alone, orders, copy) = match open::prepare(dir, look, say).await? {
            open::Found::Writable => {
                let bound = open::options(&path).pragma("max_page_count", open::pages(most_bytes).to_string());
                let orders = writer::start(Opening::new(&path, bound)).await?;
                (Opening::new(&path, open::options(&path)), Some(orders), None)
            }
            open::Found::ReadOnly { opening, copy } => {
                say(&format!("{} may only be read here: nothing new can be kept.", dir.display()));
                (opening, None, copy)
            }
        };
        let files = Files::open(dir, alone).await?;
        Ok(Self { files, orders, damage: OnceLock::new(), _copy: copy })
    }

    pub fn is_read_only(&self) -> bool {
        self.orders.is_none()
    }

    pub async fn append(&self, events: Vec<Written>, whole: bool) -> Result<Vec<Appended>, StoreError> {
        self.order(|reply| match whole {
            false => Order::Append { events, reply },
            true => Order::AppendWhole { events, reply },
        })
        .await
    }

    async fn order<T>(
        &self,
        order: impl FnOnce(oneshot::Sender<Result<T, StoreError>>) -> Order,
    ) -> Result<T, StoreError> {
        let Some(orders) = &self.orders else {
            let what = "it may only be read here; copy the folder to where it may be written".to_owned();
            return Err(StoreError::Unwritable { path: self.files.path().to_owned(), what });
        };
        if let Some(damage) = self.damage.get() {
            return Err(damage.clone());
        }
        let (reply, answer) = oneshot::channel();
        orders.send(order(reply)).await.map_err(|_| StoreError::Closed)?;
        answer.await.map_err(|_| StoreError::Closed)?
    }

    pub async fn close(&self) -> Result<(), StoreError> {
        self.files.close().await;
        if self.is_read_only() {
            return Ok(());
        }
        self.order(|reply| Order::Close { reply }).await
    }

    pub async fn look_through(&self) -> Result<(), StoreError> {
        let mut db = self.files.alone.connect().await?;
        let found = open::whole(&mut db).await;
        if let Err(damage @ StoreError::Corrupt { .. }) = &found {
            // The first finding stands.
            let _ = self.damage.set(damage.clone());
        }
        db.close().await?;
        found
    }

    /// That of the first event stored.
    pub async fn home(&self) -> Result<Option<HomeId>, StoreError> {
        let mut db = self.files.reader().await?;
        let id: Option<Uuid> = sqlx::query_scalar("SELECT household FROM event ORDER BY seq LIMIT 1")
            .fetch_optional(&mut *db)
            .await
            .map_err(db.sql())?;
        Ok(id.map(HomeId))
    }

    /// The notebook's own first, the others by id.
    pub async fn homes(&self) -> Result<Vec<HomeId>, StoreError> {
        let home = self.home().await?;
        let mut db = self.files.reader().await?;
        // From one to the next by the index; DISTINCT would go through all events.
        let ids: Vec<Uuid> = sqlx::query_scalar(
            "WITH RECURSIVE one (h) AS (SELECT min(household) FROM event UNION ALL \
             SELECT (SELECT min(household) FROM event WHERE household > one.h) FROM one WHERE one.h IS NOT NULL) \
             SELECT h FROM one WHERE h IS NOT NULL",
        )
        .fetch_all(&mut *db)
        .await
        .map_err(db.sql())?;
        let others = ids.into_iter().map(HomeId).filter(|h| Some(*h) != home);
        Ok(home.into_iter().chain(others).collect())
    }

    pub async fn holds(&self, home: HomeId) -> Result<bool, StoreError> {
        let mut db = self.files.reader().await?;
        log::holds(&mut db, home).await.map_err(db.sql())
    }

    pub async fn revision(&self) -> Result<Revision, StoreError> {
        let mut db = self.files.reader().await?;
        log::revision(&mut db).await.map_err(db.sql())
    }

    pub async fn rows(&self, after: Revision, limit: i64) -> Result<Vec<Row>, StoreError> {
        log::after(&mut self.files.reader().await?, after.0, limit).await
    }

    pub async fn count_after(&self, home: HomeId, after: Revision) -> Result<u64, StoreError> {
        let mut db = self.files.reader().await?;
        log::count_after(&mut db, home, after).await.map_err(db.sql())
    }

    pub async fn gained(&self, home: HomeId, between: (Revision, Revision)) -> Result<Gained, StoreError> {
        log::gained(&self.files, home, between).await
    }

    pub async fn contents(&self, ids: &[EventId]) -> Result<BTreeMap<EventId, String>, StoreError> {
        let mut db = self.files.reader().await?;
        log::contents(&mut db, ids).await.map_err(db.sql())
    }

    pub async fn at(&self, places: &[i64]) -> Result<Gained, StoreError> {
        log::at(&mut self.files.reader().await?, places).await
    }

    pub async fn landmarks(&self, places: &[i64]) -> Result<Vec<Landmark>, StoreError> {
        let mut db = self.files.reader().await?;
        log::ids_at(&mut db, places).await.map_err(db.sql())
    }

    pub async fn put_clip(&self, bytes: Vec<u8>) -> Result<ClipHash, StoreError> {
        let dir = self.files.dir.clone();
        spawn_blocking(move || clips::put(&dir, &bytes)).await.map_err(|_| StoreError::Closed)?
    }

    pub async fn clip(&self, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
        let (dir, hash) = (self.files.dir.clone(), hash.clone());
        spawn_blocking(move || clips::get(&dir, &hash)).await.map_err(|_| StoreError::Closed)?
    }

    pub async fn clips(&self) -> Result<Vec<ClipHash>, StoreError> {
        let dir = self.files.dir.clone();
        spawn_blocking(move || clips::list(&dir)).await.map_err(|_| StoreError::Closed)?
    }

    /// The snapshot of a home, or in words why it cannot be used.
    pub async fn snapshot(&self, home: HomeId) -> Result<Result<Option<Snapshot>, String>, StoreError> {
        let dir = self.files.dir.clone();
        let read = spawn_blocking(move || snapshot::read_file(&dir, home)).await.map_err(|_| StoreError::Closed)?;
        Ok(read.map_err(|why| why.to_string()))
    }

    pub async fn put_snapshot(&self, home: HomeId, bytes: Vec<u8>) -> Result<(), StoreError> {
        let dir = self.files.dir.clone();
        spawn_blocking(move || snapshot::write_file(&dir, home, &bytes)).await.map_err(|_| StoreError::Closed)?
    }
}
