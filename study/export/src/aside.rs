//! Files that appear under their names once they are whole.

use crate::error::ExportError;
use std::fs::File;
use std::path::Path;
use tempfile::Builder;

/// How a file that is not whole yet begins.
pub(crate) const PART: &str = ".part-";

/// Has a file written beside its place, syncs it and puts it there.
pub(crate) fn aside(to: &Path, write: impl FnOnce(&mut File) -> Result<(), ExportError>) -> Result<File, ExportError> {
    let folder = to.parent().unwrap_or(Path::new("."));
    let mut aside = Builder::new().prefix(PART).tempfile_in(folder).map_err(ExportError::io(folder))?;
    write(aside.as_file_mut())?;
    aside.as_file().sync_all().map_err(ExportError::io(to))?;
    aside.persist(to).map_err(|e| ExportError::io(to)(e.error))
}
