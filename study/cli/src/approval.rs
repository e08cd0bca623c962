//! Under which approval of an ethics board tables were written. Homes agreed to studies that one has approved: the folder says which,
//! and nobody here can check it.

use crate::failed::Failed;
use std::fs::File;
use std::io::{ErrorKind, Write};
use std::path::Path;
use std::str::FromStr;

/// The file beside the tables.
const NAME: &str = "approval.txt";
const MOST: usize = 200;

/// Whose approval, and its number: one line.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Approval(String);

impl FromStr for Approval {
    type Err = &'static str;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let text = text.trim();
        if text.is_empty() || text.chars().count() > MOST || text.chars().any(char::is_control) {
            return Err("which board approved the study, and the number of its approval, in one line of at most 200 letters");
        }
        Ok(Self(text.to_owned()))
    }
}

impl Approval {
    /// Has it stand beside the tables of a folder.
    ///
    /// # Errors
    /// [`Failed::OtherApproval`] where the folder is of another; [`Failed::Approval`] where it cannot be read or written.
    pub fn stand_in(&self, tables: &Path) -> Result<(), Failed> {
        let path = tables.join(NAME);
        let failed = |why| Failed::Approval { path: path.clone(), why };
        std::fs::create_dir_all(tables).map_err(failed)?;
        match File::create_new(&path) {
            Ok(mut file) => writeln!(file, "{}", self.0).and_then(|()| file.sync_all()).map_err(failed),
            Err(there) if there.kind() == ErrorKind::AlreadyExists => {
                let there = std::fs::read_to_string(&path).map_err(failed)?.trim_end().to_owned();
                if there == self.0 { Ok(()) } else { Err(Failed::OtherApproval { path, there }) }
            }
            Err(why) => Err(failed(why)),
        }
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_is_of_one_approval() {
        let dir = tempfile::tempdir().unwrap();
        let tables = dir.path().join("tables");
        let one: Approval = " Board of the Meadow Institute, 12/2026 ".parse().unwrap();
        one.stand_in(&tables).unwrap();
        one.stand_in(&tables).unwrap();
        let said = std::fs::read_to_string(tables.join(NAME)).unwrap();
        assert_eq!(said, "Board of the Meadow Institute, 12/2026\n");
        let other: Approval = "Another board, 3".parse().unwrap();
        let refused = other.stand_in(&tables).unwrap_err().to_string();
        assert!(refused.contains("approval.txt") && refused.contains("12/2026"), "{refused}");
        assert_eq!(std::fs::read_to_string(tables.join(NAME)).unwrap(), said, "as it was");
    }

    #[test]
    fn an_approval_is_one_line_that_says_something() {
        let long = "a".repeat(201);
        for wrong in ["", "  ", "two\nlines", &long] {
            assert!(wrong.parse::<Approval>().is_err(), "{wrong}");
        }
    }
}
