//! The release of norms that a notebook keeps: one file beside its log, put in place whole.

use sayso_norms::{Release, ReleaseFault};
use sayso_store::{ClipHash, Store, StoreError, keep_private};
use std::fs::File;
use std::io::Read;
use std::path::{Path, PathBuf};

/// What the file is called in the notebook's folder.
pub const CURRENT_NORMS: &str = "current.sayso-norms";

/// Why a release cannot be used.
#[derive(Debug, thiserror::Error)]
pub enum NoNorms {
    /// There is no notebook to keep it in.
    #[error("{0}: no notebook")]
    NoNotebook(PathBuf),
    /// The file cannot be read.
    #[error("{path}: {why}")]
    Io {
        /// Which.
        path: PathBuf,
        /// What the system says.
        why: std::io::Error,
    },
    /// It is none, or a damaged one.
    #[error("{path}: {why}")]
    Unusable {
        /// Which.
        path: PathBuf,
        /// Why.
        why: ReleaseFault,
    },
    /// It cannot be put in place.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// A release, and what tells its file from any other.
#[derive(Clone, PartialEq, Debug)]
pub struct ReadNorms {
    /// The release.
    pub release: Release,
    /// SHA-256 of the file, in hexadecimal digits.
    pub sha256: String,
}

/// Reads a release and checks everything in it.
///
/// # Errors
/// [`NoNorms::Io`] and [`NoNorms::Unusable`].
pub fn read_norms(path: &Path) -> Result<ReadNorms, NoNorms> {
    text_of(path).and_then(|text| checked(path, &text))
}

/// The release that a notebook keeps, if it keeps one.
///
/// # Errors
/// As [`read_norms`].
pub fn kept_norms(dir: &Path) -> Result<Option<ReadNorms>, NoNorms> {
    match read_norms(&dir.join(CURRENT_NORMS)) {
        Err(NoNorms::Io { why, .. }) if why.kind() == std::io::ErrorKind::NotFound => Ok(None),
        read => read.map(Some),
    }
}

/// Keeps the release of a file in a notebook's folder, in place of the one before. A file that cannot be used changes nothing.
///
/// # Errors
/// [`NoNorms`].
pub fn keep_norms(dir: &Path, file: &Path) -> Result<ReadNorms, NoNorms> {
    if !Store::is_in(dir) {
        return Err(NoNorms::NoNotebook(dir.to_owned()));
    }
    let text = text_of(file)?;
    let read = checked(file, &text)?;
    // The very bytes that were checked.
    keep_private(&dir.join(CURRENT_NORMS), text.as_bytes())?;
    Ok(read)
}

fn text_of(path: &Path) -> Result<String, NoNorms> {
    let io = |why| NoNorms::Io { path: path.to_owned(), why };
    // One byte more than may be: then it is told that it is too large, and no more is read.
    let most = Release::MOST_BYTES as u64 + 1;
    let mut bytes = Vec::new();
    File::open(path).and_then(|file| file.take(most).read_to_end(&mut bytes)).map_err(io)?;
    let no_text = |_| NoNorms::Unusable { path: path.to_owned(), why: ReleaseFault::NoText };
    String::from_utf8(bytes).map_err(no_text)
}

fn checked(path: &Path, text: &str) -> Result<ReadNorms, NoNorms> {
    let release = Release::read(text).map_err(|why| NoNorms::Unusable { path: path.to_owned(), why })?;
    Ok(ReadNorms { release, sha256: ClipHash::of(text.as_bytes()).to_string() })
}
