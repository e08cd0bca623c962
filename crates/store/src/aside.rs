//! Files are written aside and get their name only once they are whole, flushed, and readable by their owner alone.
//! What a killed process left aside is known by its name and by nobody holding it, and is cleared away.

use crate::error::StoreError;
use crate::folder::folder_of;
use std::fs::{File, OpenOptions, TryLockError};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use uuid::Uuid;

/// How the name of a file written aside ends: `.name.<uuid>.sayso-part`, beside the file it is to become.
const ENDING: &str = ".sayso-part";
/// How it ended in earlier versions, which held no lock on it.
const OLD_ENDING: &str = ".part";
/// An old one is a leftover once its name was made so long ago, in seconds.
const OLD_AFTER_S: u64 = 86_400;
/// What SQLite adds to the name of a database for files of its own.
const COMPANIONS: [&str; 3] = ["-journal", "-wal", "-shm"];

/// A file on its way to a name. Dropped before it has it, it is removed.
pub(crate) struct Aside {
    path: PathBuf,
    to: PathBuf,
    // Locked while it is open: so it is told from a leftover.
    file: File,
}

impl Aside {
    /// Begins an empty file beside `to`, readable and writable by its owner alone.
    pub fn beside(to: &Path) -> Result<Self, StoreError> {
        let name = to.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
        loop {
            let path = to.with_file_name(format!(".{name}.{}{ENDING}", Uuid::now_v7()));
            let file = private().read(true).write(true).create_new(true).open(&path).map_err(StoreError::io(to))?;
            if cfg!(unix) {
                // Where the file system knows no locks, nothing clears it away either.
                let _ = file.lock();
            }
            // Another process may have taken it for a leftover before it was locked.
            if path.exists() {
                return Ok(Self { path, to: to.to_owned(), file });
            }
        }
    }

    /// Where it is for now.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// To write to it.
    pub fn file(&mut self) -> &mut File {
        &mut self.file
    }

    /// Gives it its name, never over another file; answers its size in bytes.
    pub fn place(self) -> Result<u64, StoreError> {
        let io = || StoreError::io(&self.to);
        self.file.sync_all().map_err(io())?;
        let bytes = self.file.metadata().map_err(io())?.len();
        match std::fs::hard_link(&self.path, &self.to) {
            Ok(()) => {}
            Err(e) if e.kind() == io::ErrorKind::AlreadyExists => return Err(StoreError::Exists(self.to.clone())),
            // Memory sticks often know no hard links.
            Err(_) if self.to.exists() => return Err(StoreError::Exists(self.to.clone())),
            Err(_) => std::fs::rename(&self.path, &self.to).map_err(io())?,
        }
        sync_folder_of(&self.to)?;
        Ok(bytes)
    }

    /// Gives it its name, in place of whatever had it.
    pub fn replace(self) -> Result<(), StoreError> {
        self.file.sync_all().and_then(|()| std::fs::rename(&self.path, &self.to)).map_err(StoreError::io(&self.to))?;
        sync_folder_of(&self.to)
    }

    /// Writes these bytes and gives them the name, in place of whatever had it.
    pub fn replace_by(to: &Path, bytes: &[u8]) -> Result<(), StoreError> {
        let mut aside = Self::beside(to)?;
        aside.file().write_all(bytes).map_err(StoreError::io(to))?;
        aside.replace()
    }
}

impl Drop for Aside {
    fn drop(&mut self) {
        remove(&self.path);
    }
}

/// Removes a file written aside and what SQLite put beside it. That they may be gone already is fine, and one that
/// cannot be removed is cleared away another time.
fn remove(path: &Path) {
    let _ = std::fs::remove_file(path);
    for companion in COMPANIONS {
        let mut name = path.as_os_str().to_owned();
        name.push(companion);
        let _ = std::fs::remove_file(name);
    }
}

/// A new name is safe only once its folder is.
fn sync_folder_of(path: &Path) -> Result<(), StoreError> {
    let folder = folder_of(path);
    File::open(folder).and_then(|f| f.sync_all()).map_err(StoreError::io(folder))
}

/// Clears away what killed processes left aside in a folder. Nothing there, or a folder that cannot be read, is no
/// fault: whoever needs the folder says so.
pub(crate) fn tidy(folder: &Path) {
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        let (path, name) = (entry.path(), entry.file_name());
        let Some(name) = name.to_str() else { continue };
        // A companion goes with its file, or by itself where that is gone.
        if let Some(main) = COMPANIONS.iter().find_map(|c| name.strip_suffix(c)) {
            if is_part(main) && !path.with_file_name(main).exists() {
                remove(&path.with_file_name(main));
            }
        } else if is_part(name) && !is_held(&path) {
            remove(&path);
        }
    }
}

/// Whether a name is one that only this program gives to files written aside.
fn is_part(name: &str) -> bool {
    let made = |rest: &str| rest.rsplit_once('.').and_then(|(_, id)| id.parse::<Uuid>().ok()?.get_timestamp());
    if let Some(rest) = name.strip_suffix(ENDING) {
        return made(rest).is_some();
    }
    let made = name.strip_suffix(OLD_ENDING).and_then(made).map(|at| at.to_unix().0);
    let now = Uuid::now_v7().get_timestamp().map_or(0, |at| at.to_unix().0);
    made.is_some_and(|made| made.saturating_add(OLD_AFTER_S) < now)
}

/// Whether a process is still writing it. Where that cannot be found out: yes.
fn is_held(path: &Path) -> bool {
    if !cfg!(unix) {
        return true;
    }
    match File::open(path).map(|file| file.try_lock()) {
        Ok(Ok(())) => false,
        Ok(Err(TryLockError::WouldBlock | TryLockError::Error(_))) | Err(_) => true,
    }
}

/// Keeps a secret or a choice beside the notebook's database: a file for its owner alone, whole or as it was before.
///
/// # Errors
/// [`StoreError::Io`], [`StoreError::DiskFull`].
pub fn keep_private(file: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    Aside::replace_by(file, bytes)
}

/// The same under a new name.
///
/// # Errors
/// [`StoreError::Exists`] where there is one of that name; [`StoreError::Io`], [`StoreError::DiskFull`].
pub fn keep_new(file: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let mut aside = Aside::beside(file)?;
    aside.file().write_all(bytes).map_err(StoreError::io(file))?;
    aside.place().map(drop)
}

/// Reads such a file, none where there is none; one that others could read, such as one brought back from a copy, is closed to them.
///
/// # Errors
/// [`StoreError::Io`].
pub fn read_private(file: &Path) -> Result<Option<Vec<u8>>, StoreError> {
    match std::fs::read(file) {
        Ok(bytes) => {
            only_for_owner(file);
            Ok(Some(bytes))
        }
        Err(why) if why.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(why) => Err(StoreError::io(file)(why)),
    }
}

/// Options to open a file that, if made, only its owner may read.
pub(crate) fn private() -> OpenOptions {
    let mut options = OpenOptions::new();
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    options
}

/// Makes a folder and those above it where missing; only its owner may look into a new one.
pub(crate) fn private_folder(dir: &Path) -> io::Result<()> {
    let mut builder = std::fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(dir)
}

/// Takes from all but the owner the right to read or write a file or folder of ours that an earlier version made. Where
/// the file system knows no owners, or it is another's, it stays as it is.
pub(crate) fn only_for_owner(path: &Path) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        if let Ok(found) = std::fs::metadata(path)
            && found.permissions().mode() & 0o077 != 0
        {
            let mode = found.permissions().mode() & 0o700;
            let _ = std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode));
        }
    }
}

/// Whether a folder holds nothing that others may read, `ours` aside. One that does is shared on purpose.
pub(crate) fn holds_nothing_for_others(dir: &Path, ours: &[&str]) -> bool {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let closed = |entry: io::Result<std::fs::DirEntry>| {
            let entry = entry?;
            let name = entry.file_name();
            Ok(ours.iter().any(|n| name == *n) || entry.metadata()?.permissions().mode() & 0o077 == 0)
        };
        std::fs::read_dir(dir).is_ok_and(|all| all.map(closed).all(|c: io::Result<bool>| c.unwrap_or(false)))
    }
    #[cfg(not(unix))]
    {
        let _ = (dir, ours);
        false
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn only_our_own_leftovers_that_nobody_holds_are_cleared_away() {
        let dir = tempfile::tempdir().unwrap();
        let id = "019ca8d7-2d00-756e-ac2b-9fc93370a992"; // the first of March 2026
        let fresh = Uuid::now_v7();
        let mut ours = vec![
            format!(".copy.sayso-backup.{id}.sayso-part"),
            format!(".copy.sayso-backup.{id}.part"),
            format!("{}.{id}.part", "a".repeat(64)),
            format!(".gone.{id}.sayso-part-journal"),
        ];
        let theirs = [
            "film.mp4.part".to_owned(),
            ".x.sayso-part".to_owned(),
            format!("notes.{}.part", Uuid::from_u128(7)),
            // Of an earlier version, and perhaps still at work.
            format!(".copy.{fresh}.part"),
        ];
        for name in ours.iter().chain(&theirs) {
            std::fs::write(dir.path().join(name), "x").unwrap();
        }
        let held = Aside::beside(&dir.path().join("one")).unwrap();
        tidy(dir.path());
        let exists = |name: &String| dir.path().join(name).exists();
        ours.retain(exists);
        assert_eq!(ours, Vec::<String>::new());
        assert!(theirs.iter().all(exists));
        assert!(held.path().exists());
        held.place().unwrap();
        assert_eq!(std::fs::read_dir(dir.path()).unwrap().count(), theirs.len() + 1);
    }

    #[test]
    fn nothing_is_ever_put_over_another_file() {
        let dir = tempfile::tempdir().unwrap();
        let to = dir.path().join("all.csv");
        let mut aside = Aside::beside(&to).unwrap();
        aside.file().write_all(b"new").unwrap();
        std::fs::write(&to, "old").unwrap();
        assert!(matches!(aside.place(), Err(StoreError::Exists(_))));
        assert_eq!(std::fs::read(&to).unwrap(), b"old");
        Aside::replace_by(&to, b"newer").unwrap();
        assert_eq!(std::fs::read(&to).unwrap(), b"newer");
        assert_eq!(std::fs::read_dir(dir.path()).unwrap().count(), 1);
    }
}
