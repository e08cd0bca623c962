//! Short pieces of sound around presses heard without certainty, kept for a person to judge, and not for long.
//!
//! They are no part of the notebook: no event names them, no backup takes them along.

use crate::aside::{self, Aside};
use crate::damage::ClipFault;
use crate::error::{OnlyInAFolder, StoreError};
use crate::log::Log;
use crate::store::Store;
use sayso_model::{EventId, Moment};
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

/// The most bytes a piece may have: some seconds of 16-bit sound.
pub const MOST_SNIPPET_BYTES: usize = 1 << 20;
/// The oldest are dropped beyond this many.
pub const MOST_SNIPPETS: usize = 300;
/// They are dropped after so many days.
pub const SNIPPET_DAYS: f64 = 14.0;

fn folder(dir: &Path) -> PathBuf {
    dir.join("snippets")
}

fn file(dir: &Path, press: EventId) -> PathBuf {
    folder(dir).join(format!("{press}.wav"))
}

/// Pieces that are kept, with the file's last change, oldest first.
fn list(dir: &Path) -> Result<Vec<(Moment, EventId)>, StoreError> {
    let folder = folder(dir);
    let told = |e| StoreError::io(&folder)(e);
    let entries = match std::fs::read_dir(&folder) {
        Ok(entries) => entries,
        Err(e) if e.kind() == ErrorKind::NotFound => return Ok(Vec::new()),
        Err(e) => return Err(told(e)),
    };
    let mut found = Vec::new();
    for entry in entries {
        let entry = entry.map_err(told)?;
        let name = entry.file_name();
        let press = name.to_str().and_then(|n| n.strip_suffix(".wav")).and_then(|n| n.parse::<EventId>().ok());
        let Some(press) = press else { continue };
        let changed = entry.metadata().and_then(|m| m.modified()).map_err(told)?;
        let millis = changed.duration_since(std::time::UNIX_EPOCH).map_or(0, |d| d.as_millis());
        found.push((Moment::clamped(i64::try_from(millis).unwrap_or(i64::MAX)), press));
    }
    found.sort();
    Ok(found)
}

fn remove(dir: &Path, press: EventId) -> Result<(), StoreError> {
    let path = file(dir, press);
    match std::fs::remove_file(&path) {
        Ok(()) => Ok(()),
        Err(e) if e.kind() == ErrorKind::NotFound => Ok(()),
        Err(e) => Err(StoreError::io(&path)(e)),
    }
}

/// Drops what is too old or too much, so that at most `most` remain.
fn tidy(dir: &Path, now: Moment, most: usize) -> Result<(), StoreError> {
    let all = list(dir)?;
    let surplus = all.len().saturating_sub(most);
    for (i, (kept_at, press)) in all.into_iter().enumerate() {
        if i < surplus || now.seconds_since(kept_at) > SNIPPET_DAYS * 86_400.0 {
            remove(dir, press)?;
        }
    }
    Ok(())
}

impl Store {
    /// Keeps the sound around a press (a WAV file) and drops those that are too old at `now` or too many.
    ///
    /// # Errors
    /// [`StoreError::BadClip`] where it is empty or too large; [`StoreError::OnlyInAFolder`] on a server; [`StoreError::Io`].
    pub async fn put_snippet(&self, press: EventId, wav: Vec<u8>, now: Moment) -> Result<(), StoreError> {
        if wav.is_empty() || wav.len() > MOST_SNIPPET_BYTES {
            let what = ClipFault::Size { found: wav.len(), most: MOST_SNIPPET_BYTES };
            return Err(StoreError::BadClip { sha256: press.to_string(), what });
        }
        self.log.file(OnlyInAFolder::Snippets)?;
        self.with_dir(move |dir| {
            tidy(dir, now, MOST_SNIPPETS - 1)?;
            let (folder, path) = (folder(dir), file(dir, press));
            aside::private_folder(&folder).map_err(StoreError::io(&folder))?;
            Aside::replace_by(&path, &wav)
        })
        .await
    }

    /// The sound around a press, if it is kept.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub async fn snippet(&self, press: EventId) -> Result<Option<Vec<u8>>, StoreError> {
        self.with_dir(move |dir| {
            let path = file(dir, press);
            match std::fs::read(&path) {
                Ok(bytes) => Ok(Some(bytes)),
                Err(e) if e.kind() == ErrorKind::NotFound => Ok(None),
                Err(e) => Err(StoreError::io(&path)(e)),
            }
        })
        .await
    }

    /// The presses whose sound is kept; those too old at `now` are dropped first.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub async fn snippets(&self, now: Moment) -> Result<Vec<EventId>, StoreError> {
        self.with_dir(move |dir| {
            tidy(dir, now, MOST_SNIPPETS)?;
            Ok(list(dir)?.into_iter().map(|(_, press)| press).collect())
        })
        .await
    }

    /// Drops the sound around a press, as once it is judged.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub async fn drop_snippet(&self, press: EventId) -> Result<(), StoreError> {
        self.with_dir(move |dir| remove(dir, press)).await
    }

    /// On a server none is kept, so that there is nothing to be done.
    async fn with_dir<T: Default + Send + 'static>(
        &self,
        work: impl FnOnce(&Path) -> Result<T, StoreError> + Send + 'static,
    ) -> Result<T, StoreError> {
        let Log::File(file) = &self.log else { return Ok(T::default()) };
        let dir = file.files.dir.clone();
        tokio::task::spawn_blocking(move || work(&dir)).await.map_err(|_| StoreError::Closed)?
    }
}
