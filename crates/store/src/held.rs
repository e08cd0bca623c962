//! A file kept for a while: brought to be looked at, or made to be sent. It is in the notebook's folder, or, made where
//! that may only be read or is on a server, in the system's for temporary files. Nobody else may read it, and it is removed when it is let
//! go.

use crate::aside::Aside;
use crate::error::{OnlyInAFolder, StoreError};
use crate::exchange::{Archived, Format};
use crate::store::Store;
use std::fs::File;
use std::io::{BufWriter, Write};
use std::path::{Path, PathBuf};

/// Such a file. Dropped, it is removed; after a crash it is cleared away when the notebook is opened.
pub struct HeldFile(Aside);

impl std::fmt::Debug for HeldFile {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_tuple("HeldFile").field(&self.path()).finish()
    }
}

impl HeldFile {
    /// Where it is while it is held.
    #[must_use]
    pub fn path(&self) -> &Path {
        self.0.path()
    }

    /// Writes on at its end.
    ///
    /// # Errors
    /// [`StoreError::DiskFull`], [`StoreError::Io`].
    pub fn write(&mut self, bytes: &[u8]) -> Result<(), StoreError> {
        let path = self.0.path().to_owned();
        self.0.file().write_all(bytes).map_err(StoreError::io(&path))
    }

    /// Lets it go, and gives what is in it: where the system can, the name is gone at once.
    ///
    /// # Errors
    /// [`StoreError::Io`].
    pub fn into_file(self) -> Result<File, StoreError> {
        File::open(self.path()).map_err(StoreError::io(self.path()))
    }
}

/// Begins an empty file in a folder.
fn hold_in(folder: &Path) -> Result<HeldFile, StoreError> {
    Aside::beside(&folder.join("held")).map(HeldFile).map_err(|error| cannot_hold(folder, error))
}

/// What was wrong with a folder, and what would be right.
pub(crate) fn cannot_hold(folder: &Path, error: StoreError) -> StoreError {
    match error {
        StoreError::Io { source, .. } => StoreError::CannotHold { path: folder.to_owned(), source },
        other => other,
    }
}

impl Store {
    /// Begins an empty file.
    ///
    /// # Errors
    /// [`StoreError::Unwritable`] where the notebook may only be read; [`StoreError::CannotHold`].
    pub fn hold_file(&self) -> Result<HeldFile, StoreError> {
        if self.is_read_only() {
            let what = "it may only be read here".to_owned();
            return Err(StoreError::Unwritable { path: self.dir().to_owned(), what });
        }
        hold_in(self.dir())
    }

    /// The folder for what is made to be sent.
    pub(crate) fn folder_to_send_from(&self) -> PathBuf {
        if self.is_read_only() { std::env::temp_dir() } else { self.dir().to_owned() }
    }

    /// A backup to be sent, as [`Store::backup`] makes it.
    ///
    /// # Errors
    /// As [`Store::backup`]; [`StoreError::CannotHold`] where no folder for it may be written.
    pub async fn held_backup(&self) -> Result<HeldFile, StoreError> {
        self.log.file(OnlyInAFolder::Backup)?;
        let held = hold_in(&self.folder_to_send_from())?;
        self.make_backup(held.path()).await?;
        Ok(held)
    }

    /// An export to be sent, as [`Store::export`] makes it.
    ///
    /// # Errors
    /// As [`Store::held_backup`] and [`Store::export`].
    pub async fn held_export(&self, format: Format) -> Result<HeldFile, StoreError> {
        let mut held = hold_in(&self.folder_to_send_from())?;
        self.export(format, &mut BufWriter::new(held.0.file())).await?;
        Ok(held)
    }

    /// An archive to be sent, as [`Store::export_archive`] makes it, and what is in it.
    ///
    /// # Errors
    /// As [`Store::held_backup`] and [`Store::export_archive`].
    pub async fn held_archive(&self) -> Result<(HeldFile, Archived), StoreError> {
        let mut held = hold_in(&self.folder_to_send_from())?;
        let path = held.path().to_owned();
        let done = self.write_archive(held.0.file(), &path).await?;
        Ok((held, done))
    }
}
