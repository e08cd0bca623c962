//! Why the laboratory stopped, in words.

use crate::hearing::kit::error::KitError;
use std::path::{Path, PathBuf};

/// Why the laboratory stopped.
#[derive(Debug, thiserror::Error)]
pub enum LabError {
    /// A method or the simulator refused, or an argument cannot be.
    #[error("{0}")]
    Refused(String),
    /// Recordings of real buttons that are refused.
    #[error(transparent)]
    Kit(#[from] KitError),
    /// A file that could not be read or written.
    #[error("{}: {source}", path.display())]
    File {
        /// Which file.
        path: PathBuf,
        /// What is wrong.
        source: std::io::Error,
    },
    /// A file that holds something else than it should.
    #[error("{}: {reason}", path.display())]
    Content {
        /// Which file.
        path: PathBuf,
        /// What is wrong, and where.
        reason: String,
    },
}

/// A method's error, in its words.
pub(crate) fn told(why: impl std::fmt::Display) -> LabError {
    LabError::Refused(why.to_string())
}

/// An error of the system about this file.
pub(crate) fn at(path: &Path) -> impl FnOnce(std::io::Error) -> LabError {
    let path = path.to_owned();
    move |source| LabError::File { path, source }
}
