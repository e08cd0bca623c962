//! The store as its callers see it.

use crate::appended::{self, Appended};
use crate::clips::ClipHash;
use crate::error::{OnlyInAFolder, StoreError};
use crate::log::Log;
use crate::row::Row;
use crate::sqlite::notebook::Notebook;
use crate::sqlite::open;
use crate::stories::{MOST_STORY_BYTES, Stories};
use crate::written::{Logged, Revision, Written};
use sayso_model::{Event, HomeId, Story};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

/// An open notebook: one in a folder, or a home's on a server. A clone is another handle on the same one.
#[derive(Clone)]
pub struct Store {
    pub(crate) log: Log,
    stories: Arc<Stories>,
}

impl std::fmt::Debug for Store {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Store").field("of", &self.log.name()).finish_non_exhaustive()
    }
}

impl Store {
    /// Whether a folder holds a notebook, readable or not.
    #[must_use]
    pub fn is_in(dir: &Path) -> bool {
        open::database_in(dir).exists()
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
        let log = Log::File(Arc::new(Notebook::open(dir, most_bytes, look, say).await?));
        Ok(Self { log, stories: Arc::new(Stories::up_to(MOST_STORY_BYTES)) })
    }

    /// A handle on a log whose stories are kept with those of others.
    pub(crate) fn on(log: Log, stories: Arc<Stories>) -> Self {
        Self { log, stories }
    }

    /// Whether nothing can be kept here: the folder or the file may only be read.
    #[must_use]
    pub fn is_read_only(&self) -> bool {
        self.log.is_read_only()
    }

    /// The folder the notebook is in; of a home on a server the system's for temporary files.
    #[must_use]
    pub fn dir(&self) -> &Path {
        self.log.dir()
    }

    /// Stores events; one outcome each, in their order. What is answered `New` is durable when this returns, and
    /// storing it again answers `Duplicate`. An event of a home that the notebook does not hold is refused, unless
    /// the notebook is empty: the first event says whose it is. Dropping the future does not undo what was already on its way;
    /// on a server it may. There a connection that was lost may make what is new be answered as a duplicate, never the other
    /// way round.
    ///
    /// # Errors
    /// [`StoreError::DiskFull`], [`StoreError::Busy`] and others; then nothing of this call is stored.
    pub async fn append(&self, events: Vec<Event>) -> Result<Vec<Appended>, StoreError> {
        let mut outcomes: Vec<Option<Appended>> = Vec::with_capacity(events.len());
        let mut sound = Vec::with_capacity(events.len());
        for event in events {
            match appended::write_down(&event) {
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
        let outcomes = self.log.append(events, false).await?;
        self.stories.count(&outcomes);
        Ok(outcomes)
    }

    pub(crate) async fn append_whole(&self, events: Vec<Written>) -> Result<Vec<Appended>, StoreError> {
        let outcomes = self.log.append(events, true).await?;
        self.stories.count(&outcomes);
        Ok(outcomes)
    }

    /// Finishes what is in line and closes the file. Other handles on this store answer [`StoreError::Closed`] then. On a
    /// server this only saves snapshots: its connections are closed by [`crate::Server::close`].
    ///
    /// # Errors
    /// What went wrong while closing; what was acknowledged is stored all the same.
    pub async fn close(&self) -> Result<(), StoreError> {
        self.stories.save().await;
        self.log.close().await
    }

    /// Looks the structure of the file through while it is in use. Where it is damaged nothing more is written to it:
    /// every later append answers what this does.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`], naming what was found.
    pub async fn look_through(&self) -> Result<(), StoreError> {
        self.log.file(OnlyInAFolder::Check)?.look_through().await
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

    /// The home whose notebook this is: in a folder that of the first event stored, none while it is empty; on a server
    /// the one asked for.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn home(&self) -> Result<Option<HomeId>, StoreError> {
        self.log.home().await
    }

    /// Every home that has events here, the notebook's own first, the others by id.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn homes(&self) -> Result<Vec<HomeId>, StoreError> {
        self.log.homes().await
    }

    /// How many of a home's events this version does not understand, by the name of their kind. A later version
    /// wrote them; they are kept, exported and backed up as they are, and no story holds them.
    ///
    /// # Errors
    /// As [`Store::story`].
    pub async fn not_understood(&self, home: HomeId) -> Result<BTreeMap<String, usize>, StoreError> {
        self.stories.not_understood(&self.log, home).await
    }

    /// All that is known of a home, as of now; empty for an unknown one. Kept in memory and brought up to date
    /// by what was stored since, also by other processes. What was answered before stays as it was.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] where a stored event cannot be read.
    pub async fn story(&self, home: HomeId) -> Result<Arc<Story>, StoreError> {
        self.stories.story(&self.log, home).await
    }

    /// How far the log has grown: in all homes of a folder, or in the one home on a server.
    ///
    /// # Errors
    /// [`StoreError::Database`] and others where the file cannot be read.
    pub async fn revision(&self) -> Result<Revision, StoreError> {
        self.log.revision().await
    }

    /// Events of all homes after a place in the log, in order of arrival, at most `limit`. Those that this
    /// version does not understand are passed over.
    ///
    /// # Errors
    /// [`StoreError::Corrupt`] where a stored event cannot be read.
    pub async fn events(&self, after: Revision, limit: usize) -> Result<Vec<Logged>, StoreError> {
        let (mut found, mut last) = (Vec::new(), after);
        while found.len() < limit {
            let wanted = i64::try_from(limit - found.len()).unwrap_or(i64::MAX);
            let rows = self.log.rows(last, wanted).await?;
            let Some(end) = rows.last() else { break };
            last = Revision(end.seq);
            for row in rows {
                let event = row.event().map_err(|what| self.log.corrupt(what))?;
                found.extend(event.map(|event| Logged { at: Revision(row.seq), event }));
            }
        }
        Ok(found)
    }

    /// Rows after a place in the log, at most `limit`, understood or not.
    pub(crate) async fn rows(&self, after: Revision, limit: i64) -> Result<Vec<Row>, StoreError> {
        self.log.rows(after, limit).await
    }

    /// Stores a recording under the hash of its bytes; durable when this returns.
    ///
    /// # Errors
    /// [`StoreError::BadClip`] where it is empty or too large; [`StoreError::Io`], [`StoreError::DiskFull`].
    pub async fn put_clip(&self, bytes: Vec<u8>) -> Result<ClipHash, StoreError> {
        self.log.put_clip(bytes).await
    }

    /// A recording by its hash, compared with it; none if it is not stored.
    ///
    /// # Errors
    /// [`StoreError::BadClip`] where its bytes are damaged; [`StoreError::Io`].
    pub async fn clip(&self, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
        self.log.clip(hash).await
    }

    /// The hashes of all stored recordings.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub async fn clips(&self) -> Result<Vec<ClipHash>, StoreError> {
        self.log.clips().await
    }
}
