//! Where a file lies.

use std::path::Path;

/// The folder of a file: the current one of a name alone.
#[must_use]
pub fn folder_of(file: &Path) -> &Path {
    file.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or_else(|| Path::new("."))
}
