//! A small file of a notebook beside its log: of others' making, so it is neither an event nor part of a backup.

use crate::aside::Aside;
use crate::error::StoreError;
use std::io::Write;
use std::path::Path;

/// Writes a file in a notebook's folder whole or not at all, in place of the one before it, for its owner alone.
///
/// # Errors
/// Where it cannot be written; the one before it then stands.
pub fn write_beside(dir: &Path, name: &str, bytes: &[u8]) -> Result<(), StoreError> {
    Aside::replace_by(&dir.join(name), bytes)
}

/// Writes a new file whole or not at all, for its owner alone.
///
/// # Errors
/// [`StoreError::Exists`] where there is one of that name; where it cannot be written.
pub fn write_new(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let mut aside = Aside::beside(path)?;
    aside.file().write_all(bytes).map_err(StoreError::io(path))?;
    aside.place().map(drop)
}
