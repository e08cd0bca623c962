//! A file somebody brings, whatever of ours it is: recognised, looked at, then taken in.

use super::diary::Diary;
use super::preview::{ImportOptions, Imported, Preview};
use super::{ClipsBrought, Format, MOST_FILE_BYTES, events_of_archive};
use crate::error::StoreError;
use crate::shares::{self, Others, Shares};
use crate::sqlite::restore::Restored;
use crate::store::Store;
use sayso_model::Body;
use std::fs::File;
use std::io::Read;
use std::path::Path;

/// What a file is.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FileKind {
    /// Events, in one of the two forms.
    Events(Format),
    /// Events and recordings as a tar file.
    Archive,
    /// A backup, which is a database.
    Backup,
}

/// Bytes looked at to tell what a file is: a tar file says so in its first 512.
const HEAD: usize = 512;

impl FileKind {
    /// What a file is: by what it begins with, and, where that says nothing, by how its `name` ends.
    ///
    /// # Errors
    /// [`StoreError::UnknownFile`] where it is none of ours; [`StoreError::Io`].
    pub fn of(path: &Path, name: &str) -> Result<Self, StoreError> {
        let mut head = Vec::new();
        let file = File::open(path).map_err(StoreError::io(path))?;
        file.take(HEAD as u64).read_to_end(&mut head).map_err(StoreError::io(path))?;
        Self::told_by(&head, name).ok_or_else(|| StoreError::UnknownFile(name.to_owned()))
    }

    fn told_by(head: &[u8], name: &str) -> Option<Self> {
        // https://www.sqlite.org/fileformat.html, 1.3; POSIX.1-2001, pax: ustar interchange format.
        if head.starts_with(b"SQLite format 3\0") {
            return Some(Self::Backup);
        }
        if head.get(257..262) == Some(b"ustar") {
            return Some(Self::Archive);
        }
        let ending = Path::new(name).extension().and_then(|e| e.to_str()).unwrap_or_default().to_ascii_lowercase();
        let text = head.strip_prefix(&[0xef, 0xbb, 0xbf]).unwrap_or(head).trim_ascii_start();
        match ending.as_str() {
            "csv" => Some(Self::Events(Format::Csv)),
            "jsonl" | "ndjson" => Some(Self::Events(Format::JsonLines)),
            "tar" => Some(Self::Archive),
            "sayso" => Some(Self::Backup),
            _ if text.starts_with(b"{") => Some(Self::Events(Format::JsonLines)),
            _ => None,
        }
    }
}

/// What a file would bring. Nothing is stored yet.
#[derive(Clone, Debug)]
pub enum Look {
    /// Of a file of events or an archive: what importing it would do, and how many recordings come with them.
    Events {
        /// What importing would do.
        preview: Box<Preview>,
        /// Recordings in the archive.
        recordings: usize,
    },
    /// What restoring a backup would do.
    Backup(Restored),
}

impl Look {
    /// The homes that come in only where somebody says so, in words with counts; empty where there is none.
    #[must_use]
    pub fn others(&self) -> Shares {
        match self {
            Self::Events { preview, .. } => preview.others(),
            Self::Backup(restored) => shares::others(&restored.homes),
        }
    }
}

/// What taking in a file did.
#[derive(Clone, Debug)]
pub enum TakenIn {
    /// Events, and the recordings that came with them.
    Events(Imported, ClipsBrought),
    /// What a backup brought back.
    Backup(Restored),
}

impl Store {
    /// Reads a file and says what taking it in would do. What is wrong with its rows is part of the answer.
    ///
    /// # Errors
    /// [`StoreError::BadArchive`], [`StoreError::BadBackup`], [`StoreError::Newer`] and others where it cannot be used.
    pub async fn look_at(&self, file: &Path, kind: FileKind) -> Result<Look, StoreError> {
        self.look_at_only(file, kind, |_| true).await
    }

    /// The same where not every event may come in from a file ([`Store::preview_only`]).
    ///
    /// # Errors
    /// As [`Store::look_at`].
    pub async fn look_at_only(
        &self,
        file: &Path,
        kind: FileKind,
        admits: fn(&Body) -> bool,
    ) -> Result<Look, StoreError> {
        let (format, bytes, recordings) = match kind {
            FileKind::Backup => return self.look_at_backup(file).await.map(Look::Backup),
            FileKind::Archive => {
                let (events, recordings) = events_of_archive(file)?;
                (Format::JsonLines, events, recordings)
            }
            FileKind::Events(format) => {
                let mut bytes = Vec::new();
                let open = File::open(file).map_err(StoreError::io(file))?;
                // One more than may be, so that the preview says that it is too large.
                open.take(MOST_FILE_BYTES as u64 + 1).read_to_end(&mut bytes).map_err(StoreError::io(file))?;
                (format, bytes, 0)
            }
        };
        let preview = self.preview_as(&bytes, &ImportOptions { format, home: None }, admits, Diary::of).await?;
        Ok(Look::Events { preview: Box::new(preview), recordings })
    }

    /// Takes in a file that was looked at.
    ///
    /// # Errors
    /// As [`Store::commit`], [`Store::take_recordings`] and [`Store::restore`].
    pub async fn take_in(&self, file: &Path, look: Look, others: Others) -> Result<TakenIn, StoreError> {
        Ok(match look {
            Look::Backup(_) => TakenIn::Backup(self.restore(file, others).await?),
            Look::Events { preview, recordings } => {
                let imported = self.commit(*preview, others).await?;
                let clips = match recordings {
                    0 => ClipsBrought::default(),
                    _ => self.take_recordings(file).await?,
                };
                TakenIn::Events(imported, clips)
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_known_by_its_beginning_before_its_name() {
        let tar = {
            let mut head = vec![0; 512];
            head[257..262].copy_from_slice(b"ustar");
            head
        };
        let (csv, json) = (Some(FileKind::Events(Format::Csv)), Some(FileKind::Events(Format::JsonLines)));
        assert_eq!(FileKind::told_by(b"SQLite format 3\0...", "copy.csv"), Some(FileKind::Backup));
        assert_eq!(FileKind::told_by(&tar, "all.jsonl"), Some(FileKind::Archive));
        assert_eq!(FileKind::told_by(b"kind,happened_at\n", "Diary.CSV"), csv);
        assert_eq!(FileKind::told_by(b"\xef\xbb\xbf {\"id\":1}", "log.txt"), json);
        assert_eq!(FileKind::told_by(b"", "log.ndjson"), json);
        assert_eq!(FileKind::told_by(b"\x89PNG\r\n", "a.png"), None);
        assert_eq!(FileKind::told_by(b"", ""), None);
    }
}
