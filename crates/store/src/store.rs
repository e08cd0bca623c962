//! The store as its callers see it.

use crate::clips::{self, ClipHash};
use crate::db::{Files, Opening};
use crate::error::StoreError;
use crate::log::{Logged, Revision, Written};
use crate::open;
use crate::row::{self, Row};
use crate::stories::{self, Stories};
use crate::writer::{self, Appended, Order};
use sayso_model::{Event, HomeId, Story};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, OnceLock};
use tokio::sync::{mpsc, oneshot};

/// An open notebook. A clone is another handle on the same one.
#[derive(Clone)]
pub struct Store {
    pub(crate) inner: Arc<Inner>,
}

pub(crate) struct Inner {
    pub files: Files,
    /// To the writer; none where the notebook may only be read.
    orders: Option<mpsc::Sender<Order>>,
    stories: Stories,
    /// What is wrong with the file, once that was found while it was in use.
    damage: OnceLock<StoreError>,
    // What is read where the notebook itself cannot be; removed with the last handle.
    _copy: Option<tempfile::TempDir>,
}

impl std::fmt::Debug for Store {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Store").field("dir", &self.inner.files.dir).finish_non_exhaustive()
    }
}

impl Store {
    /// Whether a folder holds a notebook, readable or not.
    #[must_use]
    pub fn is_in(dir: &Path) -> bool {
        crate::open::database_in(dir).exists()
    }

    /// Opens the notebook in a folder: creates `dir` and `dir/sayso.db` where missing, checks the file and brings
    /// its schema up to date. Several processes may have the same notebook open. One that may only be read is opened to
    /// be looked at, exported and backed up; see [`Store::is_read_only`].
    ///
    /// # Errors
    /// [`StoreError::Newer`], [`StoreError::NotADatabase`], [`StoreError::NotOurs`], [`StoreError::Corrupt`],
    /// [`StoreError::Unwritable`], each naming the file and what to do.
    pub async fn open(dir: &Path) -> Result<Self, StoreError> {
        Self::open_as(dir, u64::MAX, open::Look::First, &|_| {}).await
    }

    /// Opens like [`Store::open`], and says by `say` what is waited for, such as another program that holds the
    /// notebook just now.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub async fn open_saying(dir: &Path, say: &(dyn Fn(&str) + Sync)) -> Result<Self, StoreError> {
        Self::open_as(dir, u64::MAX, open::Look::First, say).await
    }

    /// Opens like [`Store::open_saying`], but looks at the structure of a large file only at its edges: for a program
    /// that serves while it calls [`Store::look_through`].
    ///
    /// # Errors
    /// As [`Store::open`].
    pub async fn open_at_once(dir: &Path, say: &(dyn Fn(&str) + Sync)) -> Result<Self, StoreError> {
        Self::open_as(dir, u64::MAX, open::Look::LaterIfLarge, say).await
    }

    /// Opens like [`Store::open`], with a bound on the size of the database file in bytes. A file that would outgrow
    /// it answers [`StoreError::DiskFull`], as a full disk does. For a machine whose disk must keep room for other things.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub async fn open_up_to(dir: &Path, most_bytes: u64, say: &(dyn Fn(&str) + Sync)) -> Result<Self, StoreError> {
        Self::open_as(dir, most_bytes, open::Look::First, say).await
    }

    async fn open_as(
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
        let files = Files::open(dir, alone, orders.is_some()).await?;
        let (stories, damage) = (Stories::default(), OnceLock::new());
        let inner = Inner { files, orders, stories, damage, _copy: copy };
        Ok(Self { inner: Arc::new(inner) })
    }

    /// Whether nothing can be kept here: the folder or the file may only be read.
    #[must_use]
    pub fn is_read_only(&self) -> bool {
        self.inner.orders.is_none()
    }

    /// The folder the notebook is in.
    #[must_use]
    pub fn dir(&self) -> &Path {
        &self.inner.files.dir
    }

    /// Stores events; one outcome each, in their order. What is answered `New` is durable when this returns, and
    /// storing it again answers `Duplicate`. An event of a home that the notebook does not hold is refused, unless
    /// the notebook is empty: the first event says whose it is. Dropping the future does not undo what was already on its way.
    ///
    /// # Errors
    /// [`StoreError::DiskFull`], [`StoreError::Busy`] and others; then nothing of this call is stored.
    pub async fn append(&self, events: Vec<Event>) -> Result<Vec<Appended>, StoreError> {
        let mut outcomes: Vec<Option<Appended>> = Vec::with_capacity(events.len());
        let mut sound = Vec::with_capacity(events.len());
        for event in events {
            match writer::write_down(&event) {
                Ok(written) => {
                    sound.push(written);
                    outcomes.push(None);
                }
                Err(problems) => outcomes.push(Some(Appended::Refused(problems))),
            }
        }
        let stored = if sound.is_empty() { Vec::new() } else { self.append_written(sound).await? };
        let mut stored = stored.into_iter();
        // As many answers come back as events went in; a missing one would be an error of ours, told as such.
        outcomes.into_iter().map(|o| o.or_else(|| stored.next()).ok_or(StoreError::Closed)).collect()
    }

    pub(crate) async fn append_written(&self, events: Vec<Written>) -> Result<Vec<Appended>, StoreError> {
        self.order(|reply| Order::Append { events, reply }).await
    }

    pub(crate) async fn append_whole(&self, events: Vec<Written>) -> Result<Vec<Appended>, StoreError> {
        self.order(|reply| Order::AppendWhole { events, reply }).await
    }

    async fn order<T>(
        &self,
        order: impl FnOnce(oneshot::Sender<Result<T, StoreError>>) -> Order,
    ) -> Result<T, StoreError> {
        let Some(orders) = &self.inner.orders else {
            let what = "it may only be read here; copy the folder to where it may be written".to_owned();
            return Err(StoreError::Unwritable { path: self.inner.files.path().to_owned(), what });
        };
        if let Some(damage) = self.inner.damage.get() {
            return Err(damage.clone());
        }
        let (reply, answer) = oneshot::channel();
        orders.send(order(reply)).await.map_err(|_| StoreError::Closed)?;
        answer.await.map_err(|_| StoreError::Closed)?
    }

    /// Finishes what is in line and closes the file. Other handles on this store answer [`StoreError::Closed`] then.
    ///
    /// # Errors
    /// What went wrong while closing; what was acknowledged is stored all the same.
    pub async fn close(&self) -> Result<(), StoreError> {
        self.inner.stories.save(&self.inner.files).await;
        self.inner.files.close().await;
        if self.is_read_only() {
            return Ok(());
        }
        self.order(|reply| Order::Close { reply }).await
    }

    /// Looks the structure of the file through while it is in use. Where it is damaged nothing more is written to it:
    /// every later append answers what this does.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`], naming what was found.
    pub async fn look_through(&self) -> Result<(), StoreError> {
        let mut db = self.inner.files.alone.connect().await?;
        let found = open::whole(&mut db).await;
        if let Err(damage @ StoreError::Corrupt { .. }) = &found {
            // The first finding stands.
            let _ = self.inner.damage.set(damage.clone());
        }
        db.close().await?;
        found
    }

    /// Reads the story of every home now, so that closing leaves snapshots and the next start is quick.
    ///
    /// # Errors
    /// As [`Store::story`].
    pub async fn read_ahead(&self) -> Result<(), StoreError> {
        for home in self.homes().await? {
            self.story(home).await?;
        }
        Ok(())
    }

    /// The home whose notebook this is: that of the first event stored. None while the notebook is empty.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn home(&self) -> Result<Option<HomeId>, StoreError> {
        let mut db = self.inner.files.reader().await?;
        let id: Option<uuid::Uuid> = sqlx::query_scalar("SELECT household FROM event ORDER BY seq LIMIT 1")
            .fetch_optional(&mut *db)
            .await
            .map_err(db.sql())?;
        Ok(id.map(HomeId))
    }

    /// Every home that has events here, the notebook's own first, the others by id.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn homes(&self) -> Result<Vec<HomeId>, StoreError> {
        let home = self.home().await?;
        let mut db = self.inner.files.reader().await?;
        // From one to the next by the index; DISTINCT would go through all events.
        let ids: Vec<uuid::Uuid> = sqlx::query_scalar(
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

    /// How many of a home's events this version does not understand, by the name of their kind. A later version
    /// wrote them; they are kept, exported and backed up as they are, and no story holds them.
    ///
    /// # Errors
    /// As [`Store::story`].
    pub async fn not_understood(&self, home: HomeId) -> Result<BTreeMap<String, usize>, StoreError> {
        self.inner.stories.not_understood(&self.inner.files, home).await
    }

    /// All that is known of a home, as of now; empty for an unknown one. Kept in memory and brought up to date
    /// by what was stored since, also by other processes. What was answered before stays as it was.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] where a stored event cannot be read.
    pub async fn story(&self, home: HomeId) -> Result<Arc<Story>, StoreError> {
        self.inner.stories.story(&self.inner.files, home).await
    }

    /// How far the log has grown, in all homes.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn revision(&self) -> Result<Revision, StoreError> {
        stories::revision(&self.inner.files).await
    }

    /// Events of all homes after a place in the log, in order of arrival, at most `limit`. Those that this
    /// version does not understand are passed over.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] where a stored event cannot be read.
    pub async fn events(&self, after: Revision, limit: usize) -> Result<Vec<Logged>, StoreError> {
        let mut db = self.inner.files.reader().await?;
        let (mut found, mut last) = (Vec::new(), after.0);
        while found.len() < limit {
            let wanted = i64::try_from(limit - found.len()).unwrap_or(i64::MAX);
            let rows = row::after(&mut db, last, wanted).await?;
            let Some(end) = rows.last() else { break };
            last = end.seq;
            for row in rows {
                let event = row.event().map_err(|what| db.corrupt(what))?;
                found.extend(event.map(|event| Logged { at: Revision(row.seq), event }));
            }
        }
        Ok(found)
    }

    /// Rows after a place in the log, at most `limit`, understood or not.
    pub(crate) async fn rows(&self, after: Revision, limit: i64) -> Result<Vec<Row>, StoreError> {
        let mut db = self.inner.files.reader().await?;
        row::after(&mut db, after.0, limit).await
    }

    /// Stores a recording under the hash of its bytes; durable when this returns.
    ///
    /// # Errors
    /// [`StoreError::BadClip`] where it is empty or too large; [`StoreError::Io`], [`StoreError::DiskFull`].
    pub async fn put_clip(&self, bytes: Vec<u8>) -> Result<ClipHash, StoreError> {
        let dir = self.dir().to_owned();
        tokio::task::spawn_blocking(move || clips::put(&dir, &bytes)).await.map_err(|_| StoreError::Closed)?
    }

    /// A recording by its hash, compared with it; none if it is not stored.
    ///
    /// # Errors
    /// [`StoreError::BadClip`] where its bytes are damaged; [`StoreError::Io`].
    pub async fn clip(&self, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
        let (dir, hash) = (self.dir().to_owned(), hash.clone());
        tokio::task::spawn_blocking(move || clips::get(&dir, &hash)).await.map_err(|_| StoreError::Closed)?
    }

    /// The hashes of all stored recordings.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub async fn clips(&self) -> Result<Vec<ClipHash>, StoreError> {
        let dir = self.dir().to_owned();
        tokio::task::spawn_blocking(move || clips::list(&dir)).await.map_err(|_| StoreError::Closed)?
    }
}
