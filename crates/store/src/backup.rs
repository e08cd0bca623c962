//! A backup is one SQLite file: the log and the recordings as they were at one moment.
//! Restoring one is a union: its events are added to what is there, and nothing is taken away.

use crate::aside::{self, Aside};
use crate::clips::{self, ClipHash};
use crate::error::StoreError;
use crate::log::{self, Revision, Written};
use crate::open;
use crate::store::Store;
use crate::writer::Appended;
use sayso_model::{EventId, HouseholdId};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode};
use sqlx::{ConnectOptions, Connection, SqliteConnection};
use std::collections::BTreeSet;
use std::path::Path;

/// Events read at a time while restoring.
const PAGE: i64 = 2_000;

/// What a backup holds.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct BackedUp {
    /// Events in it, counted in the finished file and compared with the log.
    pub events: i64,
    /// Recordings in it.
    pub clips: usize,
    /// Recordings that were damaged and could not be taken along.
    pub damaged_clips: Vec<ClipHash>,
    /// Size of the file.
    pub bytes: u64,
}

/// What restoring a backup did.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Restored {
    /// Events that were missing here, and are stored now.
    pub new: usize,
    /// Events that were here already.
    pub known: usize,
    /// Events whose id stands here for another event. The one here was kept.
    pub conflicts: Vec<EventId>,
    /// Recordings stored now.
    pub clips_new: usize,
    /// Recordings that were here already.
    pub clips_known: usize,
    /// Recordings in the backup that are damaged.
    pub clips_damaged: usize,
    /// The households the backup's events belong to.
    pub households: BTreeSet<HouseholdId>,
}

impl Store {
    /// Writes a backup to a new file while the store is in use, checks it, and counts its events. The file appears
    /// under its name only once it is whole.
    ///
    /// # Errors
    /// [`StoreError::Exists`] where `to` is there already; [`StoreError::DiskFull`], [`StoreError::Unwritable`];
    /// [`StoreError::BadBackup`] where the finished file does not stand up to the check.
    pub async fn backup(&self, to: &Path) -> Result<BackedUp, StoreError> {
        if to.exists() {
            return Err(StoreError::Exists(to.to_owned()));
        }
        let folder = to.parent().filter(|p| !p.as_os_str().is_empty()).unwrap_or_else(|| Path::new("."));
        aside::tidy(folder);
        let aside = Aside::beside(to)?;
        let made = self.make(aside.path()).await?;
        aside.place().map(|bytes| BackedUp { bytes, ..made })
    }

    async fn make(&self, part: &Path) -> Result<BackedUp, StoreError> {
        let (path, text) = (&self.inner.path, part.to_string_lossy().into_owned());
        let sql = StoreError::sql(part);
        let mut live = open::options(path).connect().await.map_err(StoreError::sql(path))?;
        sqlx::query("VACUUM INTO $1").bind(text).execute(&mut live).await.map_err(&sql)?;

        let alone = SqliteConnectOptions::new().filename(part).journal_mode(SqliteJournalMode::Delete);
        let mut copy = alone.connect().await.map_err(&sql)?;
        sqlx::raw_sql("CREATE TABLE clip (sha256 TEXT PRIMARY KEY, bytes BLOB NOT NULL) STRICT")
            .execute(&mut copy)
            .await
            .map_err(&sql)?;
        let (mut clips, mut damaged_clips) = (0, Vec::new());
        for hash in self.clips().await? {
            match self.clip(&hash).await {
                Ok(Some(bytes)) => {
                    sqlx::query("INSERT INTO clip (sha256, bytes) VALUES ($1, $2)")
                        .bind(hash.as_str())
                        .bind(bytes)
                        .execute(&mut copy)
                        .await
                        .map_err(&sql)?;
                    clips += 1;
                }
                Ok(None) => {}
                Err(StoreError::BadClip { .. }) => damaged_clips.push(hash),
                Err(other) => return Err(other),
            }
        }
        let bad = |what: String| StoreError::BadBackup { path: part.to_owned(), what };
        sound(&mut copy, part).await?;
        let (events, last): (i64, i64) = sqlx::query_as("SELECT count(*), coalesce(max(seq), 0) FROM event")
            .fetch_one(&mut copy)
            .await
            .map_err(&sql)?;
        copy.close().await.map_err(&sql)?;
        // The copy is the log as it was at one moment: all that had arrived up to its last event.
        let wanted: i64 = sqlx::query_scalar("SELECT count(*) FROM event WHERE seq <= $1")
            .bind(last)
            .fetch_one(&mut live)
            .await
            .map_err(StoreError::sql(path))?;
        live.close().await.map_err(StoreError::sql(path))?;
        if events != wanted {
            return Err(bad(format!("it holds {events} events, where the log had {wanted}")));
        }
        Ok(BackedUp { events, clips, damaged_clips, bytes: 0 })
    }

    /// Adds the events and recordings of a backup to this store. Nothing stored here is changed or lost, whatever
    /// the backup holds, and doing it twice changes nothing. Other processes may have the store open meanwhile.
    ///
    /// # Errors
    /// [`StoreError::BadBackup`], [`StoreError::Newer`] where the file cannot be used; nothing is stored then.
    pub async fn restore(&self, from: &Path) -> Result<Restored, StoreError> {
        let bad = |what: &str| StoreError::BadBackup { path: from.to_owned(), what: what.to_owned() };
        if !from.is_file() {
            return Err(bad("there is no such file"));
        }
        if from.canonicalize().ok() == self.inner.path.canonicalize().ok() {
            return Err(bad("it is the notebook itself"));
        }
        let mut backup = open_backup(from).await?;
        // All of it is read once before any of it is stored.
        let mut restored = Restored::default();
        let mut after = Revision(0);
        while let Some(page) = next_page(&mut backup, from, &mut after).await? {
            restored.households.extend(page.iter().map(|w| w.event.household));
        }
        after = Revision(0);
        while let Some(page) = next_page(&mut backup, from, &mut after).await? {
            let ids: Vec<EventId> = page.iter().map(|w| w.event.id).collect();
            for (id, outcome) in ids.into_iter().zip(self.append_written(page).await?) {
                match outcome {
                    Appended::New => restored.new += 1,
                    Appended::Duplicate => restored.known += 1,
                    Appended::Conflict | Appended::Refused(_) => restored.conflicts.push(id),
                }
            }
        }
        self.restore_clips(&mut backup, from, &mut restored).await?;
        backup.close().await.map_err(StoreError::sql(from))?;
        Ok(restored)
    }

    async fn restore_clips(
        &self,
        backup: &mut SqliteConnection,
        from: &Path,
        restored: &mut Restored,
    ) -> Result<(), StoreError> {
        let sql = StoreError::sql(from);
        let has: i64 = sqlx::query_scalar("SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = 'clip'")
            .fetch_one(&mut *backup)
            .await
            .map_err(&sql)?;
        if has == 0 {
            return Ok(());
        }
        let names: Vec<String> = sqlx::query_scalar("SELECT sha256 FROM clip ORDER BY sha256")
            .fetch_all(&mut *backup)
            .await
            .map_err(&sql)?;
        for name in names {
            let bytes: Vec<u8> = sqlx::query_scalar("SELECT bytes FROM clip WHERE sha256 = $1")
                .bind(&name)
                .fetch_one(&mut *backup)
                .await
                .map_err(&sql)?;
            let hash = ClipHash::of(&bytes);
            if hash.as_str() != name || bytes.is_empty() || bytes.len() > clips::MOST_CLIP_BYTES {
                restored.clips_damaged += 1;
            } else if matches!(self.clip(&hash).await, Ok(Some(_))) {
                restored.clips_known += 1;
            } else {
                self.put_clip(bytes).await?;
                restored.clips_new += 1;
            }
        }
        Ok(())
    }
}

/// Opens a file to read events from, having checked that it is ours, known and whole.
async fn open_backup(from: &Path) -> Result<SqliteConnection, StoreError> {
    let sql = StoreError::sql(from);
    let reading = SqliteConnectOptions::new().filename(from).read_only(true);
    let mut db = reading.connect().await.map_err(&sql)?;
    let application: i64 = sqlx::query_scalar("PRAGMA application_id").fetch_one(&mut db).await.map_err(&sql)?;
    if application != open::APPLICATION_ID {
        return Err(StoreError::NotOurs(from.to_owned()));
    }
    let found: i64 =
        sqlx::query_scalar("SELECT max(version) FROM _sqlx_migrations").fetch_one(&mut db).await.map_err(&sql)?;
    let known = open::newest_schema();
    if found > known {
        return Err(StoreError::Newer { path: from.to_owned(), found, known });
    }
    sound(&mut db, from).await?;
    Ok(db)
}

/// The thorough check: structure, indexes and references.
async fn sound(db: &mut SqliteConnection, path: &Path) -> Result<(), StoreError> {
    let sql = StoreError::sql(path);
    let found: String = sqlx::query_scalar("PRAGMA integrity_check(1)").fetch_one(&mut *db).await.map_err(&sql)?;
    let loose = sqlx::query("PRAGMA foreign_key_check").fetch_all(&mut *db).await.map_err(&sql)?.len();
    match (found.as_str(), loose) {
        ("ok", 0) => Ok(()),
        ("ok", n) => Err(StoreError::BadBackup { path: path.to_owned(), what: format!("{n} rows refer to nothing") }),
        _ => Err(StoreError::BadBackup { path: path.to_owned(), what: found }),
    }
}

async fn next_page(
    backup: &mut SqliteConnection,
    from: &Path,
    after: &mut Revision,
) -> Result<Option<Vec<Written>>, StoreError> {
    let rows: Vec<(i64, String)> =
        sqlx::query_as("SELECT seq, content FROM event WHERE seq > $1 ORDER BY seq LIMIT $2")
            .bind(after.0)
            .bind(PAGE)
            .fetch_all(backup)
            .await
            .map_err(StoreError::sql(from))?;
    let Some((last, _)) = rows.last() else { return Ok(None) };
    *after = Revision(*last);
    // Not checked again: what once stood in a log may stand in it, even if the rules grew stricter since.
    let page: Result<Vec<Written>, StoreError> =
        rows.into_iter().map(|(_, json)| log::read(&json, from).map(|event| Written { event, json })).collect();
    page.map(Some)
}
