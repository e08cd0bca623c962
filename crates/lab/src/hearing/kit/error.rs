//! Why an archive of recordings of real buttons is refused: which file, what is wrong, and what would be right.

use std::path::PathBuf;

/// Why an archive is refused.
#[derive(Debug, thiserror::Error)]
pub enum KitError {
    /// It cannot be read as a tar archive to its end.
    #[error("{}: no whole tar archive ({source}). Save it again from the page that recorded it", path.display())]
    Archive {
        /// Which archive.
        path: PathBuf,
        /// What is wrong.
        source: std::io::Error,
    },
    /// A file that has to be in it is not.
    #[error("{}: {entry} is missing, {named_by}. Save the archive again from the page that recorded it", path.display())]
    Missing {
        /// Which archive.
        path: PathBuf,
        /// Which file of it.
        entry: String,
        /// What asks for it.
        named_by: &'static str,
    },
    /// A file that nothing in the manifest names.
    #[error("{}: {entry} is in the archive, but its manifest does not name it", path.display())]
    Unnamed {
        /// Which archive.
        path: PathBuf,
        /// Which file of it.
        entry: String,
    },
    /// The manifest is no manifest.
    #[error("{}: manifest.json, {field}: {reason}", path.display())]
    Manifest {
        /// Which archive.
        path: PathBuf,
        /// Which field.
        field: String,
        /// What is wrong.
        reason: String,
    },
    /// A manifest of another version.
    #[error("{}: a kit of version {found}; this laboratory reads version {reads}", path.display())]
    Version {
        /// Which archive.
        path: PathBuf,
        /// Its version.
        found: u64,
        /// The version that is read.
        reads: u64,
    },
    /// A value that cannot be.
    #[error("{}: manifest.json, {field} is {found}; it should be {wanted}", path.display())]
    Value {
        /// Which archive.
        path: PathBuf,
        /// Which field.
        field: String,
        /// What stands there.
        found: String,
        /// What would be right.
        wanted: &'static str,
    },
    /// A file whose bytes are others than those that were saved.
    #[error("{}: {entry} has changed since it was recorded: its SHA-256 is {found}, the manifest says {told}", path.display())]
    Changed {
        /// Which archive.
        path: PathBuf,
        /// Which file of it.
        entry: String,
        /// Its hash.
        found: String,
        /// The hash told.
        told: String,
    },
    /// A file that cannot be heard.
    #[error("{}: {entry}: {reason}", path.display())]
    Sound {
        /// Which archive.
        path: PathBuf,
        /// Which file of it.
        entry: String,
        /// What is wrong.
        reason: String,
    },
}
