//! Restoring a backup is a union: its events and recordings are added to what is there, and nothing is taken away.

use crate::appended::Appended;
use crate::clips::{self, ClipHash};
use crate::damage::DamagedRow;
use crate::error::{BackupFault, OnlyInAFolder, StoreError};
use crate::row::Row;
use crate::shares::{self, Others, Shares};
use crate::sqlite::backup::sound;
use crate::sqlite::db::{Db, Opening};
use crate::sqlite::digest::{self, Digest};
use crate::sqlite::{log, open};
use crate::store::Store;
use crate::written::Written;
use sayso_model::{EventId, HomeId};
use sqlx::sqlite::SqliteConnectOptions;
use std::path::Path;

/// Events read at a time while restoring.
const PAGE: i64 = 2_000;

/// The first schema whose backups carry a digest.
const DIGEST_SINCE: i64 = 3;

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
    /// The homes in the backup.
    pub homes: Shares,
    /// Whether the backup carried a digest, and stood up to it. Those of earlier versions carry none.
    pub digest: bool,
    /// Events that were unsound in the notebook already when it was backed up, in words; left out.
    pub faults: Vec<DamagedRow>,
}

impl Store {
    /// Adds the events and recordings of a backup to this store. Nothing stored here is changed or lost, whatever
    /// the backup holds, and doing it twice changes nothing. Other processes may have the store open meanwhile.
    ///
    /// # Errors
    /// [`StoreError::BadBackup`], [`StoreError::Newer`] where the file cannot be used, [`StoreError::OtherHome`]
    /// where it would make this notebook hold several homes and `others` refuses that; nothing is stored then.
    pub async fn restore(&self, from: &Path, others: Others) -> Result<Restored, StoreError> {
        self.read_backup(from, Some(others)).await
    }

    /// Says what [`Store::restore`] would do, from the same reading. Nothing is stored.
    ///
    /// # Errors
    /// As [`Store::restore`], other homes aside: they are part of the answer.
    pub async fn look_at_backup(&self, from: &Path) -> Result<Restored, StoreError> {
        self.read_backup(from, None).await
    }

    /// Reads a backup, and stores what is missing here where `store` says whose.
    async fn read_backup(&self, from: &Path, store: Option<Others>) -> Result<Restored, StoreError> {
        let bad = |what| StoreError::BadBackup { path: from.to_owned(), what };
        let several = |homes: &Shares| StoreError::OtherHome { path: from.to_owned(), who: shares::others(homes) };
        let file = self.log.file(OnlyInAFolder::Restore)?;
        if !from.is_file() {
            return Err(bad(BackupFault::NoFile));
        }
        if from.canonicalize().ok() == file.files.path().canonicalize().ok() {
            return Err(bad(BackupFault::Itself));
        }
        let (mut backup, schema) = open_backup(from).await?;
        // All of it is read and compared with its digest before any of it is stored, and in one view.
        let mut restored = Restored::default();
        backup.hold_still().await?;
        restored.digest = verify(&mut backup, schema, &mut restored).await?;
        self.mark_others(&mut restored.homes).await?;
        if store == Some(Others::Refuse) && restored.homes.values().any(|share| share.other) {
            return Err(several(&restored.homes));
        }
        let mut after = 0;
        loop {
            let page = log::after(&mut backup, after, PAGE).await?;
            let Some(last) = page.last() else { break };
            after = last.seq;
            // Not checked against today's rules: what once stood in a log may stand in it.
            let sound = page.into_iter().filter(|row| row.fault().is_none());
            let asked_in = store == Some(Others::TakeIn);
            let page: Vec<Written> = sound.map(|row| Written { asked_in, ..Written::from(row) }).collect();
            let ids: Vec<EventId> = page.iter().map(|w| w.id).collect();
            let outcomes = match store {
                Some(_) => self.append_written(page).await?,
                None => self.outcomes(&page, &ids).await?,
            };
            for (id, outcome) in ids.into_iter().zip(outcomes) {
                match outcome {
                    Appended::New => restored.new += 1,
                    Appended::Duplicate => restored.known += 1,
                    Appended::Conflict => restored.conflicts.push(id),
                    // Somebody began this notebook with another home meanwhile: all of this backup is refused.
                    Appended::Refused(_) => {
                        self.mark_others(&mut restored.homes).await?;
                        return Err(several(&restored.homes));
                    }
                }
            }
        }
        self.restore_clips(&mut backup, store.is_some(), &mut restored).await?;
        backup.close().await?;
        Ok(restored)
    }

    /// What storing events would answer, from what is stored.
    async fn outcomes(&self, page: &[Written], ids: &[EventId]) -> Result<Vec<Appended>, StoreError> {
        let stored = self.log.contents(ids).await?;
        let outcome = |written: &Written| match stored.get(&written.id) {
            None => Appended::New,
            Some(known) if written.is(known) => Appended::Duplicate,
            Some(_) => Appended::Conflict,
        };
        Ok(page.iter().map(outcome).collect())
    }

    async fn restore_clips(&self, backup: &mut Db, store: bool, restored: &mut Restored) -> Result<(), StoreError> {
        let sql = backup.sql();
        for name in clip_names(backup).await? {
            let bytes: Vec<u8> = sqlx::query_scalar("SELECT bytes FROM clip WHERE sha256 = $1")
                .bind(&name)
                .fetch_one(&mut **backup)
                .await
                .map_err(&sql)?;
            let hash = ClipHash::of(&bytes);
            if hash.as_str() != name || bytes.is_empty() || bytes.len() > clips::MOST_CLIP_BYTES {
                restored.clips_damaged += 1;
            } else if matches!(self.clip(&hash).await, Ok(Some(_))) {
                restored.clips_known += 1;
            } else {
                if store {
                    self.put_clip(bytes).await?;
                }
                restored.clips_new += 1;
            }
        }
        Ok(())
    }
}

/// Opens a file to read events from, having checked that it is ours, known and whole; answers its schema too.
async fn open_backup(from: &Path) -> Result<(Db, i64), StoreError> {
    let reading = SqliteConnectOptions::new().filename(from).read_only(true);
    let mut db = Opening::new(from, reading).connect().await?;
    let schema = open::known(&mut db).await?;
    sound(&mut db).await?;
    Ok((db, schema))
}

async fn has_table(db: &mut Db, name: &str) -> Result<bool, StoreError> {
    sqlx::query_scalar("SELECT EXISTS (SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = $1)")
        .bind(name)
        .fetch_one(&mut **db)
        .await
        .map_err(db.sql())
}

async fn clip_names(db: &mut Db) -> Result<Vec<String>, StoreError> {
    if !has_table(db, "clip").await? {
        return Ok(Vec::new());
    }
    sqlx::query_scalar("SELECT sha256 FROM clip ORDER BY sha256").fetch_all(&mut **db).await.map_err(db.sql())
}

/// Reads every row: all of them must have the digest the backup states, or, where it states none, each must say the
/// same in its columns and its content. Answers whether there is a digest.
async fn verify(db: &mut Db, schema: i64, restored: &mut Restored) -> Result<bool, StoreError> {
    let from = db.path().to_owned();
    let bad = |what| StoreError::BadBackup { path: from.clone(), what };
    let mut digest = Digest::new();
    let mut each = |row: Row| {
        match row.named_fault() {
            None => {
                let share = restored.homes.entry(HomeId(row.home)).or_default();
                share.events += 1;
                share.name = shares::named_by(&row.kind, &row.content).or(share.name.take());
            }
            Some(fault) => restored.faults.push(fault),
        }
        Ok(())
    };
    digest::rows(db, i64::MAX, &mut digest, &mut each).await?;
    for name in clip_names(db).await? {
        digest.clip(&name);
    }
    if has_table(db, "digest").await? {
        let stated: Vec<String> =
            sqlx::query_scalar("SELECT sha256 FROM digest").fetch_all(&mut **db).await.map_err(db.sql())?;
        return match stated.as_slice() {
            [one] if *one == digest.finish() => Ok(true),
            _ => Err(bad(BackupFault::OtherDigest)),
        };
    }
    // A copy of a notebook's own file has no digest either, but no recordings in it.
    if schema >= DIGEST_SINCE && has_table(db, "clip").await? {
        return Err(bad(BackupFault::NoDigest));
    }
    match restored.faults.first() {
        None => Ok(false),
        Some(fault) => Err(bad(BackupFault::Row(*fault))),
    }
}
