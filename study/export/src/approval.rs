//! Under which approval of an ethics board tables were written. Homes agreed to studies that one has approved: the folder says which,
//! and nobody here can check it.

use crate::aside::aside;
use crate::error::ExportError;
use std::io::{ErrorKind, Write};
use std::path::Path;
use std::str::FromStr;

/// The file beside the tables.
const NAME: &str = "approval.txt";
const MOST: usize = 200;

/// Whose approval, and its number: one line.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Approval(String);

/// What an approval must say.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("which board approved the study, and the number of its approval, in one line of at most {most} letters", most = MOST)]
pub struct NoApproval;

impl FromStr for Approval {
    type Err = NoApproval;

    fn from_str(text: &str) -> Result<Self, NoApproval> {
        let text = text.trim();
        let is_one_line = !text.is_empty() && text.chars().count() <= MOST && !text.chars().any(char::is_control);
        if is_one_line { Ok(Self(text.to_owned())) } else { Err(NoApproval) }
    }
}

impl Approval {
    /// Has it stand beside the tables of a folder, which is made where it is missing.
    ///
    /// # Errors
    /// [`ExportError::Other`] where the folder is of another; [`ExportError::Io`].
    pub fn stand_in(&self, tables: &Path) -> Result<(), ExportError> {
        std::fs::create_dir_all(tables).map_err(ExportError::io(tables))?;
        let path = tables.join(NAME);
        match std::fs::read_to_string(&path) {
            Ok(there) if there.trim_end() == self.0 => Ok(()),
            Ok(there) => Err(ExportError::Other {
                path: tables.to_owned(),
                there: there.trim_end().to_owned(),
                asked: self.0.clone(),
            }),
            Err(none) if none.kind() == ErrorKind::NotFound => {
                aside(&path, |file| writeln!(file, "{}", self.0).map_err(ExportError::io(&path))).map(drop)
            }
            Err(why) => Err(ExportError::io(&path)(why)),
        }
    }
}
