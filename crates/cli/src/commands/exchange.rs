//! `log`, `import` and `export`.

use super::notebook::{existing_store, open_store};
use crate::args::Form;
use crate::error::CliError;
use crate::out::say;
use sayso_model::{Event, Problems};
use sayso_store::{
    Appended, FileKind, Format, Look, Others, Preview, StoreError, TakenIn, WORTH_A_SNAPSHOT, read_event,
};
use serde_json::value::RawValue;
use std::io::{BufWriter, ErrorKind, Read};
use std::path::Path;
use std::process::ExitCode;

/// Most bytes read from standard input by `log`.
const MOST_INPUT: u64 = 64 << 20;
/// Kinds of problems printed; the rest is counted.
const PRINTED: usize = 40;

/// Puts events from standard input into the log and answers one line an event.
pub async fn log(dir: &Path) -> Result<ExitCode, CliError> {
    let mut text = String::new();
    let read = std::io::stdin().take(MOST_INPUT + 1).read_to_string(&mut text)?;
    if read as u64 > MOST_INPUT {
        return Err(CliError::said("standard input holds more than 64 MiB; use `sayso import` for files"));
    }
    let events = events(&text)?;
    let store = open_store(dir).await?;
    let ids: Vec<_> = events.iter().map(|e| e.id).collect();
    let mut refused = false;
    for (id, outcome) in ids.iter().zip(store.append(events).await?) {
        match outcome {
            Appended::New => say!("{id} kept"),
            Appended::Duplicate => say!("{id} known already"),
            Appended::Conflict => {
                refused = true;
                say!("{id} refused: another event has this id; to put it right, send a correction");
            }
            Appended::Refused(problems) => {
                refused = true;
                say!("{id} refused: {problems}");
            }
        }
    }
    store.close().await?;
    Ok(if refused { ExitCode::FAILURE } else { ExitCode::SUCCESS })
}

/// A JSON array, or one event a line.
fn events(text: &str) -> Result<Vec<Event>, CliError> {
    if text.trim_start().starts_with('[') {
        let all: Vec<Box<RawValue>> = serde_json::from_str(text)
            .map_err(|e| CliError::said(format!("standard input, line {}: {e}", e.line())))?;
        let told = |i: usize, why: Problems| CliError::said(format!("standard input, event {}: {why}", i + 1));
        return all.iter().enumerate().map(|(i, one)| read_event(one.get()).map_err(|e| told(i, e))).collect();
    }
    let told = |i: usize, why: Problems| CliError::said(format!("standard input, line {}: {why}", i + 1));
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
    lines.map(|(i, line)| read_event(line).map_err(|e| told(i, e))).collect()
}

/// Previews a file and, if told to and nothing is wrong, imports it whole.
pub async fn import(dir: &Path, file: &Path, yes: bool, others: Others) -> Result<ExitCode, CliError> {
    let backup = || CliError::said(format!("{} is a backup; use `sayso restore`", file.display()));
    let kind = FileKind::of(file, &file.display().to_string())?;
    if kind == FileKind::Backup {
        return Err(backup());
    }
    let store = open_store(dir).await?;
    let look = store.look_at(file, kind).await?;
    let Look::Events { preview, recordings } = &look else { return Err(backup()) };
    report(file, preview);
    if *recordings > 0 {
        say!("  and {recordings} recordings");
    }
    let code = if preview.problem_count > 0 {
        say!("Nothing was imported. Put these lines right and try again.");
        ExitCode::FAILURE
    } else if !preview.others().is_empty() && others == Others::Refuse {
        say!(
            "Nothing was imported: this notebook would then hold several homes. The file brings {}.",
            preview.others()
        );
        say!("To keep several homes in this notebook, for good, add --take-in-other-home.");
        ExitCode::FAILURE
    } else if yes {
        let recordings = *recordings;
        let TakenIn::Events(done, clips) = store.take_in(file, look, others).await? else { return Err(backup()) };
        say!("Imported {} events; {} were known already.", done.new, done.duplicates);
        if done.new >= WORTH_A_SNAPSHOT {
            store.read_ahead().await?;
        }
        if recordings > 0 {
            say!(
                "{} recordings stored; {} were here already; {} damaged, left out.",
                clips.new,
                clips.known,
                clips.damaged
            );
        }
        ExitCode::SUCCESS
    } else {
        say!("Nothing was imported yet. To do it, run the same command with --yes.");
        ExitCode::SUCCESS
    };
    store.close().await?;
    Ok(code)
}

fn report(file: &Path, preview: &Preview) {
    say!(
        "{}: {} rows, {} new, {} known already, {} with problems.",
        file.display(),
        preview.rows,
        preview.new,
        preview.duplicates,
        preview.bad_rows
    );
    for (kind, n) in &preview.kinds {
        say!("  {n} new of kind {kind}");
    }
    for (kind, n) in &preview.later {
        say!("  {n} new of kind {kind}, not understood: a later version wrote them. They are kept, not shown.");
    }
    for (id, share) in &preview.homes {
        let name = share.name.as_deref().unwrap_or("a home without a name");
        say!(
            "  {} of {name} ({id}){}",
            share.events,
            if share.other { ", which this notebook does not hold" } else { "" }
        );
    }
    if let Some((first, last)) = preview.span {
        say!("  from {first} to {last}");
    }
    let kinds = preview.faults.kinds();
    for kind in kinds.iter().take(PRINTED) {
        say!("  {}: {kind}", file.display());
    }
    let told: usize = kinds.iter().take(PRINTED).map(|kind| kind.count).sum();
    if preview.problem_count > told {
        say!("  ... and {} more", preview.problem_count - told);
    }
}

/// Writes every event.
pub async fn export(dir: &Path, form: Form, to: Option<&Path>) -> Result<ExitCode, CliError> {
    let store = existing_store(dir).await?;
    let format = match form {
        Form::Jsonl => Format::JsonLines,
        Form::Csv => Format::Csv,
        Form::Tar => {
            let to = to.ok_or_else(|| CliError::said("an archive goes into a file: add --to all.tar"))?;
            let done = store.export_archive(to).await?;
            eprintln!("{} events and {} recordings written.", done.events, done.clips);
            if done.damaged_clips > 0 {
                eprintln!("{} recordings are damaged and were left out.", done.damaged_clips);
            }
            store.close().await?;
            return Ok(ExitCode::SUCCESS);
        }
    };
    let written = match to {
        None => {
            let mut out = BufWriter::new(std::io::stdout());
            store.export(format, &mut out).await
        }
        Some(path) => store.export_to(format, path).await,
    };
    let count = match written {
        // Whoever was to read it is gone, as in `sayso export | head`: nothing to say, but it is not whole.
        Err(StoreError::Io { source, .. }) if source.kind() == ErrorKind::BrokenPipe => return Ok(ExitCode::FAILURE),
        written => written?,
    };
    eprintln!("{count} events written.");
    store.close().await?;
    Ok(ExitCode::SUCCESS)
}
