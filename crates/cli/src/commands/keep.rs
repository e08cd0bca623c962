//! `backup`, `restore` and `rebuild`.

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

/// Builds the projections anew and says whether they equal the live ones.
pub async fn rebuild(dir: &Path) -> Result<ExitCode, CliError> {
    let store = Store::open(dir).await?;
    let done = store.rebuild_projections().await?;
    say!("{} events read, {} facts stand.", done.events, done.facts);
    for t in &done.tables {
        say!("{:<16} live {:>8}, anew {:>8}, missing {:>4}, extra {:>4}", t.table, t.live, t.anew, t.missing, t.extra);
    }
    let equal = done.all_equal();
    say!(
        "{}",
        if equal { "The live tables were right." } else { "The live tables were wrong; the new ones are in place." }
    );
    store.close().await?;
    Ok(if equal { ExitCode::SUCCESS } else { ExitCode::from(2) })
}
