//! `backup`, `restore` and `check`.

use super::exchange::home_name;
use super::notebook::{existing_store, open_store};
use crate::error::CliError;
use crate::out::tell;
use sayso_store::{Others, StoreError};
use sayso_wording::{Locale, Message, words};
use std::path::Path;
use std::process::ExitCode;

/// Copies the notebook to one file.
pub async fn backup(l: &Locale, dir: &Path, file: &Path) -> Result<(), CliError> {
    let store = existing_store(dir).await?;
    let done = store.backup(file).await?;
    tell!(
        l,
        command_keep::backed_up,
        n = done.events,
        recordings = done.clips,
        file = file.display().to_string(),
        bytes = done.bytes
    );
    for clip in &done.damaged_clips {
        tell!(l, command_keep::damaged_clip, clip = clip.to_string());
    }
    store.close().await?;
    Ok(())
}

/// Brings back what the notebook lacks.
pub async fn restore(l: &Locale, dir: &Path, file: &Path, others: Others) -> Result<(), CliError> {
    let store = open_store(dir).await?;
    let done = match store.restore(file, others).await {
        Err(why @ StoreError::OtherHome { .. }) => {
            return Err(CliError::said(words!(command_keep::take_in, why = why.say(l))));
        }
        done => done?,
    };
    for (id, share) in &done.homes {
        let home = home_name(l, share.name.as_deref(), &id.to_string());
        tell!(l, command_keep::in_the_backup, home = home, n = share.events);
    }
    if !done.digest {
        tell!(l, exchange::no_digest);
    }
    tell!(l, command_keep::brought_back, n = done.new, known = done.known);
    tell!(l, command_keep::clips_brought_back, n = done.clips_new, known = done.clips_known);
    for fault in &done.faults {
        tell!(l, command_keep::unsound, fault = fault.say(l));
    }
    for id in &done.conflicts {
        tell!(l, command_keep::conflict, id = id.to_string());
    }
    if done.clips_damaged > 0 {
        tell!(l, command_keep::damaged_left_out, n = done.clips_damaged);
    }
    let (dir, file) = (dir.display(), file.display());
    tracing::info!("Restored {file} into {dir}: {} events, {} recordings brought back.", done.new, done.clips_new);
    store.close().await?;
    Ok(())
}

/// Looks the notebook through and says what is wrong with it.
pub async fn check(l: &Locale, dir: &Path) -> Result<ExitCode, CliError> {
    let store = existing_store(dir).await?;
    let found = store.check().await?;
    tell!(l, command_keep::looked_at, n = found.events, recordings = found.clips);
    if found.snapshots > 0 {
        tell!(l, command_keep::snapshots, n = found.snapshots);
    }
    for (kind, n) in &found.later {
        tell!(l, command_keep::later, n = *n, kind = kind);
    }
    if found.amendments > 0 {
        tell!(l, command_keep::amendments, n = found.amendments, waiting = found.waiting);
    }
    for fault in &found.faults {
        tell!(l, command_keep::wrong, fault = fault.say(l));
    }
    if found.fault_count > found.faults.len() {
        tell!(l, command_keep::more, n = found.fault_count - found.faults.len());
    }
    store.close().await?;
    if found.fault_count == 0 {
        tell!(l, command_keep::all_well);
        return Ok(ExitCode::SUCCESS);
    }
    if found.fault_count == found.snapshot_faults {
        tell!(l, command_keep::snapshots_wrong);
    } else {
        tell!(l, command_keep::restore_latest);
    }
    Ok(ExitCode::from(2))
}
