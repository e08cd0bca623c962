//! `devices`.

use super::serve::now;
use crate::error::CliError;
use crate::out::say;
use sayso_web::access::{PAIRED_FILE, SAFELY_PAIRED_FILE, Sessions};
use std::path::Path;

/// Lists the paired devices of a notebook, after ending those asked for.
pub fn devices(dir: &Path, end: Option<&str>, end_all: bool) -> Result<(), CliError> {
    if !dir.is_dir() {
        return Err(CliError::said(format!("{} is no folder; give that of the notebook", dir.display())));
    }
    let mut ended = false;
    let mut listed = 0;
    for (file, how) in [(PAIRED_FILE, "over plain HTTP"), (SAFELY_PAIRED_FILE, "over HTTPS")] {
        let mut sessions = Sessions::read(&dir.join(file))?;
        if end_all {
            sessions.forget_all()?;
        } else if let Some(id) = end {
            ended |= sessions.end(id)?;
        }
        for d in sessions.devices(now()) {
            say!("{}  {} ({how}), paired {}, last seen {}", d.id, d.name, d.paired_at, d.seen_at);
            listed += 1;
        }
    }
    if listed == 0 {
        say!("No device is paired.");
    }
    match end {
        Some(id) if !ended => {
            Err(CliError::said(format!("no paired device has the id {id}; the list shows which there are")))
        }
        _ => Ok(()),
    }
}
