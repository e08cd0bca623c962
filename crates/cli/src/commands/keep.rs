//! `backup`, `restore` and `check`.

use super::notebook::Notebook;
use crate::error::CliError;
use crate::out::say;
use sayso_store::Store;
use std::path::Path;
use std::process::ExitCode;

/// Copies the notebook to one file.
pub async fn backup(dir: &Path, file: &Path) -> Result<(), CliError> {
    let store = Store::open(dir).await?;
    let done = store.backup(file).await?;
    say!("{} events and {} recordings are in {} ({} bytes).", done.events, done.clips, file.display(), done.bytes);
    for clip in &done.damaged_clips {
        say!("A recording is damaged and was not taken along: {clip}");
    }
    store.close().await?;
    Ok(())
}

/// Brings back what the notebook lacks.
pub async fn restore(dir: &Path, file: &Path) -> Result<(), CliError> {
    let store = Store::open(dir).await?;
    let done = store.restore(file).await?;
    say!("{} events brought back; {} were here already.", done.new, done.known);
    say!("{} recordings brought back; {} were here already.", done.clips_new, done.clips_known);
    for id in &done.conflicts {
        say!("Event {id} stands here with another content; the one here was kept.");
    }
    if done.clips_damaged > 0 {
        say!("{} recordings in the backup are damaged and were left out.", done.clips_damaged);
    }
    store.close().await?;
    Ok(())
}

/// Looks the notebook through and says what is wrong with it.
pub async fn check(dir: &Path) -> Result<ExitCode, CliError> {
    let store = Notebook::open(dir).await?.store;
    let found = store.check().await?;
    say!("{} events, {} recordings looked at.", found.events, found.clips);
    if found.amendments > 0 {
        say!("{} put other events right or take them back; {} of them are about events not here.", found.amendments, found.waiting);
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
    say!("Keep a copy of this folder, then restore the latest backup into a new one.");
    Ok(ExitCode::from(2))
}
