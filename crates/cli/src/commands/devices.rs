//! `devices`.

use super::serve::now;
use crate::error::CliError;
use crate::out::tell;
use sayso_web::access::{PAIRED_FILE, SAFELY_PAIRED_FILE, Sessions};
use sayso_wording::{Locale, words};
use std::path::Path;

/// Lists the paired devices of a notebook, after ending those asked for.
pub fn devices(l: &Locale, dir: &Path, end: Option<&str>, end_all: bool) -> Result<(), CliError> {
    if !dir.is_dir() {
        return Err(CliError::said(words!(command_serve::no_folder, dir = dir.display().to_string())));
    }
    let mut ended = false;
    let mut listed = 0;
    for (file, how) in [(PAIRED_FILE, "plain"), (SAFELY_PAIRED_FILE, "safe")] {
        let mut sessions = Sessions::read(&dir.join(file))?;
        if end_all {
            sessions.forget_all()?;
        } else if let Some(id) = end {
            ended |= sessions.end(id)?;
        }
        for d in sessions.devices(now()) {
            tell!(
                l,
                command_serve::device,
                id = &d.id,
                name = &d.name,
                how = how,
                paired = d.paired_at.to_string(),
                seen = d.seen_at.to_string()
            );
            listed += 1;
        }
    }
    if listed == 0 {
        tell!(l, command_serve::no_device);
    }
    match end {
        Some(id) if !ended => Err(CliError::said(words!(command_serve::no_such_device, id = id.to_owned()))),
        _ => Ok(()),
    }
}
