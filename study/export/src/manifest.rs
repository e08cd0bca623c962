//! What a folder of tables holds: of what, and which buckets are whole. Written anew after each, by a new file and a rename.

use crate::aside::aside;
use crate::error::ExportError;
use serde::{Deserialize, Serialize};
use std::io::Write;
use std::path::{Path, PathBuf};

const NAME: &str = "manifest.json";
/// Version of the tables' form.
const FORM: u32 = 1;

/// One bucket of households.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Which.
    pub bucket: u16,
    /// Households in it.
    pub households: u32,
    /// Their animals.
    pub animals: u64,
    /// Their events.
    pub events: u64,
    /// Presses left out because nobody said which animal it was.
    pub of_nobody: u64,
    /// Bytes of the events' table.
    pub bytes: u64,
    /// A hash of which households agreed when it was written: one that did since, or no longer does, makes it be written anew.
    pub agreed: String,
}

/// What a folder holds.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Manifest {
    /// Version of the form.
    pub form: u32,
    /// What the tables are of.
    pub of: String,
    /// Buckets there will be.
    pub buckets: u16,
    /// Those that are whole, by number.
    pub whole: Vec<Entry>,
}

impl Manifest {
    pub(crate) const fn new(of: String, buckets: u16) -> Self {
        Self { form: FORM, of, buckets, whole: Vec::new() }
    }

    /// The manifest of a folder; none where there is none yet.
    ///
    /// # Errors
    /// Where it cannot be read, or is of another form.
    pub fn read(dir: &Path) -> Result<Option<Self>, ExportError> {
        let path = dir.join(NAME);
        let bytes = match std::fs::read(&path) {
            Ok(bytes) => bytes,
            Err(none) if none.kind() == std::io::ErrorKind::NotFound => return Ok(None),
            Err(why) => return Err(ExportError::Io { path, why }),
        };
        let bad = |why: String| ExportError::BadManifest { path: path.clone(), why };
        let read: Self = serde_json::from_slice(&bytes).map_err(|why| bad(why.to_string()))?;
        if read.form == FORM { Ok(Some(read)) } else { Err(bad(format!("form {} where {FORM} is known", read.form))) }
    }

    pub(crate) fn write(&self, dir: &Path) -> Result<(), ExportError> {
        let path = dir.join(NAME);
        let text = serde_json::to_string_pretty(self).map_err(|why| ExportError::io(&path)(why.into()))?;
        aside(&path, |file| file.write_all(text.as_bytes()).map_err(ExportError::io(&path)))?;
        Ok(())
    }

    pub(crate) fn put(&mut self, entry: Entry) {
        match self.whole.binary_search_by_key(&entry.bucket, |e| e.bucket) {
            Ok(at) => self.whole[at] = entry,
            Err(at) => self.whole.insert(at, entry),
        }
    }

    /// Events in all.
    #[must_use]
    pub fn events(&self) -> u64 {
        self.sum(|e| e.events)
    }

    /// Households in all.
    #[must_use]
    pub fn households(&self) -> u64 {
        self.sum(|e| u64::from(e.households))
    }

    /// Something of each bucket, added up.
    pub fn sum(&self, of: impl Fn(&Entry) -> u64) -> u64 {
        self.whole.iter().map(of).sum()
    }
}

/// Where a bucket's events lie.
pub(crate) fn events_path(dir: &Path, bucket: u16) -> PathBuf {
    dir.join("events").join(format!("bucket-{bucket:05}.parquet"))
}

/// Where a bucket's animals lie.
pub(crate) fn animals_path(dir: &Path, bucket: u16) -> PathBuf {
    dir.join("animals").join(format!("bucket-{bucket:05}.parquet"))
}
