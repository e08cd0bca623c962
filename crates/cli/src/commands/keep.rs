//! `backup`, `restore` and `check`.

use super::notebook::{existing_store, open_store};
use crate::error::CliError;
use crate::out::say;
use sayso_store::{Others, StoreError};
use std::path::Path;
use std::process::ExitCode;

/// Copies the notebook to one file.
pub async fn backup(dir: &Path, file: &Path) -> Result<(), CliError> {
    let store = existing_store(dir).await?;
    let done = store.backup(file).await?;
    say!("{} events and {} recordings are in {} ({} bytes).", done.events, done.clips, file.display(), done.bytes);
    for clip in &done.damaged_clips {
        say!("A recording is damaged and was not taken along: {clip}");
    }
    store.close().await?;
    Ok(())
}

/// Brings back what the notebook lacks.
pub async fn restore(dir: &Path, file: &Path, others: Others) -> Result<(), CliError> {
    let store = open_store(dir).await?;
    let done = match store.restore(file, others).await {
        Err(why @ StoreError::OtherHome { .. }) => {
            return Err(CliError::said(format!("{why}: add --take-in-other-home")));
        }
        done => done?,
    };
    for (id, share) in &done.homes {
        let name = share.name.as_deref().unwrap_or("A home without a name");
        say!("{name} ({id}): {} events in the backup.", share.events);
    }
    if !done.digest {
        say!("It was made by an earlier version and carries no digest: damage may have gone unnoticed.");
    }
    say!("{} events brought back; {} were here already.", done.new, done.known);
    say!("{} recordings brought back; {} were here already.", done.clips_new, done.clips_known);
    for fault in &done.faults {
        say!("Left out, it was unsound when it was backed up: {fault}");
    }
    for id in &done.conflicts {
        say!("Event {id} stands here with another content; the one here was kept.");
    }
    if done.clips_damaged > 0 {
        say!("{} recordings in the backup are damaged and were left out.", done.clips_damaged);
    }
    let (dir, file) = (dir.display(), file.display());
    tracing::info!("Restored {file} into {dir}: {} events, {} recordings brought back.", done.new, done.clips_new);
    store.close().await?;
    Ok(())
}

/// Looks the notebook through and says what is wrong with it.
pub async fn check(dir: &Path) -> Result<ExitCode, CliError> {
    let store = existing_store(dir).await?;
    let found = store.check().await?;
    say!("{} events, {} recordings looked at.", found.events, found.clips);
    if found.snapshots > 0 {
        say!("{} snapshots hold what the log holds.", found.snapshots);
    }
    for (kind, n) in &found.later {
        say!("{n} of kind {kind} are not understood: a later version wrote them. They are kept, not shown.");
    }
    if found.amendments > 0 {
        say!(
            "{} put other events right or take them back; {} of them are about events not here.",
            found.amendments,
            found.waiting
        );
    }
    for fault in &found.faults {
        say!("Wrong: {fault}");
    }
    if found.fault_count > found.faults.len() {
        say!("... and {} more", found.fault_count - found.faults.len());
    }
    store.close().await?;
    if found.fault_count == 0 {
        say!("All of it is as it was written.");
        return Ok(ExitCode::SUCCESS);
    }
    if found.fault_count == found.snapshot_faults {
        say!(
            "Every event and recording is as it was written: there is nothing to restore. Stop the program where it \
             still runs, remove what is named above and start it again."
        );
    } else {
        say!("Keep a copy of this folder, then restore the latest backup into a new one.");
    }
    Ok(ExitCode::from(2))
}
