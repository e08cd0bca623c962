//! `log`, `import` and `export`.

use crate::args::Form;
use crate::error::CliError;
use crate::out::say;
use sayso_model::Event;
use sayso_store::{Appended, Format, ImportOptions, Preview, Store};
use std::io::{BufWriter, Read, Write};
use std::path::Path;
use std::process::ExitCode;

/// Most bytes read from standard input by `log`.
const MOST_INPUT: u64 = 64 << 20;
/// Problems printed; the rest is counted.
const PRINTED: usize = 40;

/// Puts events from standard input into the log and answers one line an event.
pub async fn log(dir: &Path) -> Result<ExitCode, CliError> {
    let mut text = String::new();
    let read = std::io::stdin().take(MOST_INPUT + 1).read_to_string(&mut text)?;
    if read as u64 > MOST_INPUT {
        return Err(CliError::said("standard input holds more than 64 MiB; use `sayso import` for files"));
    }
    let events = events(&text)?;
    let store = Store::open(dir).await?;
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
    let told = |line: usize, why: serde_json::Error| CliError::said(format!("standard input, line {line}: {why}"));
    if text.trim_start().starts_with('[') {
        return serde_json::from_str(text).map_err(|e| told(e.line(), e));
    }
    text.lines()
        .enumerate()
        .filter(|(_, line)| !line.trim().is_empty())
        .map(|(i, line)| serde_json::from_str(line).map_err(|e| told(i + 1, e)))
        .collect()
}

/// Previews a file and, if told to and nothing is wrong, imports it whole.
pub async fn import(dir: &Path, file: &Path, yes: bool) -> Result<ExitCode, CliError> {
    let bytes = std::fs::read(file).map_err(|source| CliError::File { path: file.to_owned(), source })?;
    let format = match file.extension().and_then(|e| e.to_str()).map(str::to_ascii_lowercase).as_deref() {
        Some("csv") => Format::Csv,
        Some("jsonl" | "ndjson") => Format::JsonLines,
        _ => return Err(CliError::said(format!("{}: the name must end in .csv or .jsonl", file.display()))),
    };
    let store = Store::open(dir).await?;
    let preview = store.preview(&bytes, &ImportOptions { format, household: None }).await?;
    report(file, &preview);
    let code = if preview.problem_count > 0 {
        say!("Nothing was imported. Put these lines right and try again.");
        ExitCode::FAILURE
    } else if yes {
        let done = store.commit(preview).await?;
        say!("Imported {} events; {} were known already.", done.new, done.duplicates);
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
    if let Some((first, last)) = preview.span {
        say!("  from {first} to {last}");
    }
    for problem in preview.problems.iter().take(PRINTED) {
        say!("  {}: {problem}", file.display());
    }
    if preview.problem_count > PRINTED {
        say!("  ... and {} more", preview.problem_count - PRINTED);
    }
}

/// Writes every event.
pub async fn export(dir: &Path, form: Form, to: Option<&Path>) -> Result<(), CliError> {
    let store = Store::open(dir).await?;
    let format = match form {
        Form::Jsonl => Format::JsonLines,
        Form::Csv => Format::Csv,
    };
    let count = match to {
        None => {
            let mut out = BufWriter::new(std::io::stdout());
            let count = store.export(format, &mut out).await?;
            out.flush()?;
            count
        }
        Some(path) => store.export_to(format, path).await?,
    };
    eprintln!("{count} events written.");
    store.close().await?;
    Ok(())
}
