//! What a file beside the notebook says, read anew only where it changed.

use std::io::ErrorKind;
use std::path::Path;
use std::sync::{Mutex, PoisonError};
use std::time::SystemTime;

/// What of a file tells that it is another one than before.
type Mark = (SystemTime, u64);

/// What was read last, and of which file; what could not be read as well, so that it is not tried again at every page.
#[derive(Debug)]
pub struct Fresh<T>(Mutex<Option<(Mark, T)>>);

impl<T> Default for Fresh<T> {
    fn default() -> Self {
        Self(Mutex::default())
    }
}

impl<T: Clone> Fresh<T> {
    /// What a file says; none where there is no file.
    pub fn of(&self, file: &Path, read: impl FnOnce() -> T) -> Option<T> {
        let mark = match std::fs::metadata(file) {
            Ok(about) => about.modified().ok().map(|at| (at, about.len())),
            Err(why) if why.kind() == ErrorKind::NotFound => return None,
            Err(_) => None,
        };
        // Whoever panicked with it in hand left a whole entry behind.
        let mut kept = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let (Some(mark), Some((of, said))) = (mark, &*kept)
            && mark == *of
        {
            return Some(said.clone());
        }
        let said = read();
        *kept = mark.map(|mark| (mark, said.clone()));
        Some(said)
    }
}
