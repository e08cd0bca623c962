//! The release of norms that pages lay an animal's words beside.

use crate::fresh::Fresh;
use sayso_norms::Release;
use sayso_notebook::{CURRENT_NORMS, kept_norms};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Where the release comes from.
#[derive(Clone)]
pub enum Norms {
    /// The one that the server was given, read at its start; the same for every home of it.
    Given(Option<Arc<Release>>),
    /// The one that a notebook keeps in its folder; another one counts as soon as it is there.
    Kept(Arc<Folder>),
}

/// A notebook's folder, and what was read there.
pub struct Folder {
    dir: PathBuf,
    read: Fresh<Result<Option<Arc<Release>>, String>>,
}

impl Norms {
    /// The one that the notebook in this folder keeps.
    #[must_use]
    pub fn kept_in(dir: &Path) -> Self {
        Self::Kept(Arc::new(Folder { dir: dir.to_owned(), read: Fresh::default() }))
    }

    /// The release, if there is one.
    ///
    /// # Errors
    /// Why the one that is there cannot be read.
    pub fn current(&self) -> Result<Option<Arc<Release>>, String> {
        match self {
            Self::Given(release) => Ok(release.clone()),
            Self::Kept(folder) => folder.current(),
        }
    }
}

impl Folder {
    fn current(&self) -> Result<Option<Arc<Release>>, String> {
        let read = || match kept_norms(&self.dir) {
            Ok(kept) => Ok(kept.map(|read| Arc::new(read.release))),
            Err(why) => Err(why.to_string()),
        };
        self.read.of(&self.dir.join(CURRENT_NORMS), read).unwrap_or(Ok(None))
    }
}
