//! The files of a release: rows, those who agree, the budget, and what is published. The one module that touches a disk.

use crate::ledger::{Ledger, LedgerFault};
use crate::loss::Loss;
use sayso_model::Day;
use sayso_norms::{RowFault, StudyName, SummaryRow, read_rows};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use std::fs::{File, OpenOptions};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

/// What is wrong with a file.
#[derive(Debug, thiserror::Error)]
pub enum FileFault {
    /// It cannot be read or written.
    #[error("{path}: {why}")]
    Io {
        /// Which.
        path: PathBuf,
        /// Why.
        why: std::io::Error,
    },
    /// A row that is none.
    #[error("{path}, {why}")]
    Row {
        /// Which.
        path: PathBuf,
        /// Line, field and what would be right.
        why: RowFault,
    },
    /// A line of those who agree that is no name.
    #[error("{path}, line {line}: {why}")]
    Name {
        /// Which.
        path: PathBuf,
        /// From 1.
        line: usize,
        /// Why.
        why: String,
    },
    /// The budget.
    #[error("{path}: {why}")]
    Budget {
        /// Which.
        path: PathBuf,
        /// Why.
        why: LedgerFault,
    },
    /// Something of that name is there.
    #[error("{0} is there already: a release is not written over")]
    There(PathBuf),
}

impl FileFault {
    fn io(path: &Path) -> impl Fn(std::io::Error) -> Self + '_ {
        move |why| Self::Io { path: path.to_owned(), why }
    }
}

/// The rows of all files.
///
/// # Errors
/// [`FileFault`].
pub fn rows(paths: &[PathBuf]) -> Result<Vec<SummaryRow>, FileFault> {
    let mut all = Vec::new();
    for path in paths {
        let text = std::fs::read_to_string(path).map_err(FileFault::io(path))?;
        all.extend(read_rows(&text).map_err(|why| FileFault::Row { path: path.clone(), why })?);
    }
    Ok(all)
}

/// Study names of households that agree now, a line each.
///
/// # Errors
/// [`FileFault`].
pub fn agreed(path: &Path) -> Result<BTreeSet<StudyName>, FileFault> {
    let text = std::fs::read_to_string(path).map_err(FileFault::io(path))?;
    let name = |(line, number): (&str, usize)| {
        let fault = |why: String| FileFault::Name { path: path.to_owned(), line: number, why };
        StudyName::new(line.trim()).map_err(|why| fault(why.to_string()))
    };
    text.lines().zip(1..).filter(|(line, _)| !line.trim().is_empty()).map(name).collect()
}

/// Enters a release into the budget's file before it is made, or refuses. The line is on the disk when this returns.
///
/// # Errors
/// [`FileFault`], among it a budget that would be gone over.
pub fn enter(
    budget: &Path,
    (made, name): (Day, &str),
    epsilon: Option<Loss>,
    club: Option<&str>,
) -> Result<(), FileFault> {
    let io = FileFault::io(budget);
    let fault = |why| FileFault::Budget { path: budget.to_owned(), why };
    let mut file = OpenOptions::new().read(true).append(true).create(true).open(budget).map_err(&io)?;
    // Two releases at once would both find room.
    file.lock().map_err(&io)?;
    let mut text = String::new();
    file.read_to_string(&mut text).map_err(&io)?;
    let line = Ledger::read(&text).and_then(|ledger| ledger.enter(made, name, epsilon, club)).map_err(fault)?;
    file.write_all(line.as_bytes()).and_then(|()| file.sync_all()).map_err(&io)?;
    // A file that is new must still be in its folder after the power went.
    let folder = budget.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    File::open(folder).and_then(|folder| folder.sync_all()).map_err(FileFault::io(folder))
}

/// Refuses a place where something is: best before a budget is spent.
///
/// # Errors
/// [`FileFault::There`].
pub fn free(to: &Path) -> Result<(), FileFault> {
    if to.exists() { Err(FileFault::There(to.to_owned())) } else { Ok(()) }
}

/// Writes a file that appears under its name once it is whole, and never over another.
///
/// # Errors
/// [`FileFault`].
pub fn write(to: &Path, bytes: &[u8]) -> Result<(), FileFault> {
    let folder = to.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let mut aside = tempfile::Builder::new().prefix(".part-").tempfile_in(folder).map_err(FileFault::io(folder))?;
    aside.write_all(bytes).and_then(|()| aside.as_file().sync_all()).map_err(FileFault::io(to))?;
    match aside.persist_noclobber(to) {
        Ok(_) => Ok(()),
        Err(e) if e.error.kind() == std::io::ErrorKind::AlreadyExists => Err(FileFault::There(to.to_owned())),
        Err(e) => Err(FileFault::io(to)(e.error)),
    }
}

/// SHA-256 of bytes, in hexadecimal digits.
#[must_use]
pub fn sha256(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}
