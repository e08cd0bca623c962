//! Recordings of words, and pictures, each stored once under the hash of its bytes. What is which, the cards say; here both are
//! clips.

use crate::aside::{self, Aside};
use crate::damage::ClipFault;
use crate::error::StoreError;
use sha2::{Digest, Sha256};
use std::fmt;
use std::path::{Path, PathBuf};

/// The most bytes a recording may have.
pub const MOST_CLIP_BYTES: usize = 16 * 1024 * 1024;

/// SHA-256 of a recording, as 64 lower-case hexadecimal digits: its name in the store.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct ClipHash(String);

impl ClipHash {
    /// The hash of these bytes.
    #[must_use]
    pub fn of(bytes: &[u8]) -> Self {
        let mut hex = String::with_capacity(64);
        for byte in Sha256::digest(bytes) {
            hex.push_str(&format!("{byte:02x}"));
        }
        Self(hex)
    }

    /// The 64 digits.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl std::str::FromStr for ClipHash {
    type Err = StoreError;
    fn from_str(s: &str) -> Result<Self, StoreError> {
        let lower = s.to_ascii_lowercase();
        // Nothing but hexadecimal digits: a name of a file never holds a path.
        if lower.len() == 64 && lower.bytes().all(|b| b.is_ascii_hexdigit()) {
            Ok(Self(lower))
        } else {
            Err(StoreError::BadClip { sha256: s.chars().take(80).collect(), what: ClipFault::NotAHash })
        }
    }
}

impl fmt::Display for ClipHash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

fn folder(dir: &Path) -> PathBuf {
    dir.join("clips")
}

/// The name of a recording that is neither empty nor too large.
pub(crate) fn sized(bytes: &[u8]) -> Result<ClipHash, StoreError> {
    let hash = ClipHash::of(bytes);
    if bytes.is_empty() || bytes.len() > MOST_CLIP_BYTES {
        let what = ClipFault::Size { found: bytes.len(), most: MOST_CLIP_BYTES };
        return Err(StoreError::BadClip { sha256: hash.0, what });
    }
    Ok(hash)
}

/// Stores a recording; one that is there already is left alone, a damaged one is written anew.
pub(crate) fn put(dir: &Path, bytes: &[u8]) -> Result<ClipHash, StoreError> {
    let hash = sized(bytes)?;
    if matches!(get(dir, &hash), Ok(Some(_))) {
        return Ok(hash);
    }
    let folder = folder(dir);
    aside::private_folder(&folder).map_err(StoreError::io(&folder))?;
    Aside::replace_by(&folder.join(hash.as_str()), bytes)?;
    Ok(hash)
}

/// Reads a recording and compares it with its name.
pub(crate) fn get(dir: &Path, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
    let path = folder(dir).join(hash.as_str());
    let bytes = match std::fs::read(&path) {
        Ok(bytes) => bytes,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(None),
        Err(e) => return Err(StoreError::io(&path)(e)),
    };
    if ClipHash::of(&bytes) == *hash {
        Ok(Some(bytes))
    } else {
        Err(StoreError::BadClip { sha256: hash.0.clone(), what: ClipFault::OtherContent })
    }
}

/// The names of all stored recordings.
pub(crate) fn list(dir: &Path) -> Result<Vec<ClipHash>, StoreError> {
    let folder = folder(dir);
    let entries = match std::fs::read_dir(&folder) {
        Ok(entries) => entries,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(Vec::new()),
        Err(e) => return Err(StoreError::io(&folder)(e)),
    };
    let mut found = Vec::new();
    for entry in entries {
        let name = entry.map_err(StoreError::io(&folder))?.file_name();
        // Part files and strangers are no clips.
        if let Some(hash) = name.to_str().and_then(|n| n.parse::<ClipHash>().ok()) {
            found.push(hash);
        }
    }
    found.sort();
    Ok(found)
}
