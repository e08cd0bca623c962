//! The release of norms that pages lay an animal's words beside.

use sayso_norms::Release;
use sayso_notebook::{CURRENT_NORMS, kept_norms};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;

/// What of a file tells that it is another one than before.
type Mark = (SystemTime, u64);

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
    read: Mutex<Option<(Mark, Arc<Release>)>>,
}

impl Norms {
    /// The one that the notebook in this folder keeps.
    #[must_use]
    pub fn kept_in(dir: &Path) -> Self {
        Self::Kept(Arc::new(Folder { dir: dir.to_owned(), read: Mutex::default() }))
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
        let about = std::fs::metadata(self.dir.join(CURRENT_NORMS)).ok();
        let mark = about.and_then(|about| Some((about.modified().ok()?, about.len())));
        // Whoever panicked with it in hand left a whole entry behind.
        let mut read = self.read.lock().unwrap_or_else(PoisonError::into_inner);
        if let (Some(mark), Some((of, release))) = (mark, &*read)
            && mark == *of
        {
            return Ok(Some(Arc::clone(release)));
        }
        let fresh = kept_norms(&self.dir).map_err(|why| why.to_string())?.map(|read| Arc::new(read.release));
        *read = mark.zip(fresh.clone());
        Ok(fresh)
    }
}
