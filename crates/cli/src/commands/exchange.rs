//! `log`, `import` and `export`.

use super::notebook::{existing_store, open_store};
use crate::args::Form;
use crate::error::CliError;
use crate::out::{note, tell};
use sayso_model::Event;
use sayso_store::{
    Appended, FileKind, Format, Look, NotRead, Others, Preview, StoreError, TakenIn, WORTH_A_SNAPSHOT, read_event,
};
use sayso_wording::errors::homes;
use sayso_wording::wanted::{place_of, read_as, told};
use sayso_wording::{Locale, Message, say, words};
use serde_json::value::RawValue;
use std::io::{BufWriter, ErrorKind, Read};
use std::path::Path;
use std::process::ExitCode;

/// Most bytes read from standard input by `log`.
const MOST_INPUT: u64 = 64 << 20;
/// Kinds of problems printed; the rest is counted.
const PRINTED: usize = 40;

/// Puts events from standard input into the log and answers one line an event.
pub async fn log(l: &Locale, dir: &Path) -> Result<ExitCode, CliError> {
    let mut text = String::new();
    let read = std::io::stdin().take(MOST_INPUT + 1).read_to_string(&mut text)?;
    if read as u64 > MOST_INPUT {
        return Err(CliError::said(words!(command_keep::input_too_large, most = MOST_INPUT >> 20)));
    }
    let events = events(l, &text)?;
    let store = open_store(dir).await?;
    let ids: Vec<_> = events.iter().map(|e| e.id).collect();
    let mut refused = false;
    for (id, outcome) in ids.iter().zip(store.append(events).await?) {
        match outcome {
            Appended::New => tell!(l, command_keep::kept, id = id.to_string()),
            Appended::Duplicate => tell!(l, command_keep::known, id = id.to_string()),
            Appended::Conflict => {
                refused = true;
                tell!(l, command_keep::other_id, id = id.to_string());
            }
            Appended::Refused(problems) => {
                refused = true;
                tell!(l, command_keep::refused, id = id.to_string(), why = problems.say(l));
            }
        }
    }
    store.close().await?;
    Ok(if refused { ExitCode::FAILURE } else { ExitCode::SUCCESS })
}

/// A JSON array, or one event a line.
fn events(l: &Locale, text: &str) -> Result<Vec<Event>, CliError> {
    if text.trim_start().starts_with('[') {
        let all: Vec<Box<RawValue>> = serde_json::from_str(text)
            .map_err(|e| CliError::said(words!(command_keep::input_no_array, line = e.line(), column = e.column())))?;
        let told = |i: usize, why: NotRead| {
            CliError::said(words!(command_keep::input_event, number = i + 1, why = why.say(l)))
        };
        return all.iter().enumerate().map(|(i, one)| read_event(one.get()).map_err(|e| told(i, e))).collect();
    }
    let told =
        |i: usize, why: NotRead| CliError::said(words!(command_keep::input_line, line = i + 1, why = why.say(l)));
    let lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
    lines.map(|(i, line)| read_event(line).map_err(|e| told(i, e))).collect()
}

/// Previews a file and, if told to and nothing is wrong, imports it whole.
pub async fn import(l: &Locale, dir: &Path, file: &Path, yes: bool, others: Others) -> Result<ExitCode, CliError> {
    let backup = || CliError::said(words!(command_keep::is_backup, file = file.display().to_string()));
    let kind = FileKind::of(file, &file.display().to_string())?;
    if kind == FileKind::Backup {
        return Err(backup());
    }
    let store = open_store(dir).await?;
    let look = store.look_at(file, kind).await?;
    let Look::Events { preview, recordings } = &look else { return Err(backup()) };
    report(l, file, preview);
    if *recordings > 0 {
        tell!("  {}", say!(l, command_keep::and_recordings, n = *recordings));
    }
    let code = if preview.problem_count > 0 {
        tell!(l, command_keep::not_imported_faults);
        ExitCode::FAILURE
    } else if !preview.others().is_empty() && others == Others::Refuse {
        tell!(l, command_keep::not_imported_homes, homes = homes(l, &preview.others()));
        ExitCode::FAILURE
    } else if yes {
        let recordings = *recordings;
        let TakenIn::Events(done, clips) = store.take_in(file, look, others).await? else { return Err(backup()) };
        tell!(l, command_keep::imported, n = done.new, known = done.duplicates);
        if done.new >= WORTH_A_SNAPSHOT {
            store.read_ahead().await?;
        }
        if recordings > 0 {
            tell!(l, command_keep::clips_stored, n = clips.new, known = clips.known, damaged = clips.damaged);
        }
        ExitCode::SUCCESS
    } else {
        tell!(l, command_keep::not_imported_yet);
        ExitCode::SUCCESS
    };
    store.close().await?;
    Ok(code)
}

fn report(l: &Locale, file: &Path, preview: &Preview) {
    let name = file.display().to_string();
    tell!(
        l,
        command_keep::preview,
        file = &name,
        rows = preview.rows,
        new = preview.new,
        known = preview.duplicates,
        faults = preview.bad_rows
    );
    if let Some(diary) = &preview.diary {
        tell!(l, exchange::diary_intro);
        read_as(l, diary).iter().for_each(|line| tell!("  {line}"));
    }
    for (kind, n) in &preview.kinds {
        tell!("  {}", say!(l, command_keep::new_of_kind, n = *n, kind = *kind));
    }
    for (kind, n) in &preview.later {
        tell!("  {}", say!(l, command_keep::later, n = *n, kind = kind));
    }
    for (id, share) in &preview.homes {
        let (n, home) = (share.events, home_name(l, share.name.as_deref(), &id.to_string()));
        if share.other {
            tell!("  {}", say!(l, command_keep::of_other_home, n = n, home = home));
        } else {
            tell!("  {}", say!(l, command_keep::of_home, n = n, home = home));
        }
    }
    if let Some((first, last)) = preview.span {
        tell!("  {}", say!(l, command_keep::from_to, first = first.to_string(), last = last.to_string()));
    }
    let kinds = preview.faults.kinds();
    for kind in kinds.iter().take(PRINTED) {
        tell!("  {name}: {}, {}", place_of(l, kind), told(l, kind));
    }
    let told: usize = kinds.iter().take(PRINTED).map(|kind| kind.count).sum();
    if preview.problem_count > told {
        tell!("  {}", say!(l, command_keep::more, n = preview.problem_count - told));
    }
}

/// A home by its name and id.
pub fn home_name(l: &Locale, name: Option<&str>, id: &str) -> String {
    match name {
        Some(name) => format!("{name} ({id})"),
        None => say!(l, command_keep::unnamed_home, id = id),
    }
}

/// Writes every event.
pub async fn export(l: &Locale, dir: &Path, form: Form, to: Option<&Path>) -> Result<ExitCode, CliError> {
    let store = existing_store(dir).await?;
    let format = match form {
        Form::Jsonl => Format::JsonLines,
        Form::Csv => Format::Csv,
        Form::Tar => {
            let to = to.ok_or_else(|| CliError::said(words!(command_keep::archive_to)))?;
            let done = store.export_archive(to).await?;
            note!(l, command_keep::archive_written, n = done.events, recordings = done.clips);
            if done.damaged_clips > 0 {
                note!(l, command_keep::damaged_left_out, n = done.damaged_clips);
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
    note!(l, command_keep::written, n = count);
    store.close().await?;
    Ok(ExitCode::SUCCESS)
}
