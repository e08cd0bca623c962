//! A backup is one SQLite file: the log and the recordings as they were at one moment, and a digest over both.

use crate::aside::{self, Aside};
use crate::clips::ClipHash;
use crate::error::{BackupFault, OnlyInAFolder, StoreError};
use crate::folder::folder_of;
use crate::sqlite::db::{Db, Opening};
use crate::sqlite::digest::{self, Digest};
use crate::store::Store;
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode};
use std::path::Path;

/// What a backup holds.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct BackedUp {
    /// Events in it, read from the finished file and compared with the log.
    pub events: usize,
    /// Recordings in it.
    pub clips: usize,
    /// Recordings that were damaged and could not be taken along.
    pub damaged_clips: Vec<ClipHash>,
    /// Size of the file.
    pub bytes: u64,
}

impl Store {
    /// Writes a backup to a new file while the store is in use, checks it, and counts its events. The file appears
    /// under its name only once it is whole.
    ///
    /// # Errors
    /// [`StoreError::Exists`] where `to` is there already; [`StoreError::DiskFull`], [`StoreError::Unwritable`];
    /// [`StoreError::BadBackup`] where the finished file does not stand up to the check.
    pub async fn backup(&self, to: &Path) -> Result<BackedUp, StoreError> {
        self.log.file(OnlyInAFolder::Backup)?;
        if to.exists() {
            return Err(StoreError::Exists(to.to_owned()));
        }
        let folder = folder_of(to);
        aside::tidy(folder);
        let aside = Aside::beside(to)?;
        let made = self.make_backup(aside.path()).await?;
        aside.place().map(|bytes| BackedUp { bytes, ..made })
    }

    pub(crate) async fn make_backup(&self, part: &Path) -> Result<BackedUp, StoreError> {
        let text = part.to_string_lossy().into_owned();
        let sql = StoreError::sql(part);
        let mut live = self.log.file(OnlyInAFolder::Backup)?.files.alone.connect().await?;
        sqlx::query("VACUUM INTO $1").bind(text).execute(&mut *live).await.map_err(&sql)?;

        let alone = SqliteConnectOptions::new().filename(part).journal_mode(SqliteJournalMode::Delete);
        let mut copy = Opening::new(part, alone).connect().await?;
        sqlx::raw_sql(
            "CREATE TABLE clip (sha256 TEXT PRIMARY KEY, bytes BLOB NOT NULL) STRICT; \
             CREATE TABLE digest (sha256 TEXT NOT NULL) STRICT",
        )
        .execute(&mut *copy)
        .await
        .map_err(&sql)?;
        let (mut clips, mut damaged_clips) = (Vec::new(), Vec::new());
        for hash in self.clips().await? {
            match self.clip(&hash).await {
                Ok(Some(bytes)) => {
                    sqlx::query("INSERT INTO clip (sha256, bytes) VALUES ($1, $2)")
                        .bind(hash.as_str())
                        .bind(bytes)
                        .execute(&mut *copy)
                        .await
                        .map_err(&sql)?;
                    clips.push(hash);
                }
                Ok(None) => {}
                Err(StoreError::BadClip { .. }) => damaged_clips.push(hash),
                Err(other) => return Err(other),
            }
        }
        sound(&mut copy).await?;
        // The copy is the log as it was at one moment: all that had arrived up to its last event. Read from both.
        let mut digest = Digest::new();
        let (events, last) = digest::rows(&mut copy, i64::MAX, &mut digest, &mut |_| Ok(())).await?;
        let mut wanted = Digest::new();
        digest::rows(&mut live, last, &mut wanted, &mut |_| Ok(())).await?;
        live.close().await?;
        for clip in &clips {
            digest.clip(clip.as_str());
            wanted.clip(clip.as_str());
        }
        let digest = digest.finish();
        if digest != wanted.finish() {
            return Err(StoreError::BadBackup { path: part.to_owned(), what: BackupFault::NotTheLog });
        }
        sqlx::query("INSERT INTO digest (sha256) VALUES ($1)").bind(digest).execute(&mut *copy).await.map_err(&sql)?;
        copy.close().await?;
        Ok(BackedUp { events, clips: clips.len(), damaged_clips, bytes: 0 })
    }
}

/// The thorough check: structure, indexes and references.
pub(crate) async fn sound(db: &mut Db) -> Result<(), StoreError> {
    let sql = db.sql();
    let found: String = sqlx::query_scalar("PRAGMA integrity_check(1)").fetch_one(&mut **db).await.map_err(&sql)?;
    let loose = sqlx::query("PRAGMA foreign_key_check").fetch_all(&mut **db).await.map_err(&sql)?.len();
    let bad = |what| StoreError::BadBackup { path: db.path().to_owned(), what };
    match (found.as_str(), loose) {
        ("ok", 0) => Ok(()),
        ("ok", n) => Err(bad(BackupFault::Loose(n))),
        _ => Err(bad(BackupFault::Structure(found))),
    }
}
