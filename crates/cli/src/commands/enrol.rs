//! `enrol` and `clips`: recordings of words, and what is good or bad about them.

use super::notebook;
use super::serve::now;
use crate::error::CliError;
use crate::out::say;
use crate::recorded;
use sayso_listen::{Clip, ClipReport, check_clips};
use sayso_notebook::{recordings, word_named};
use sayso_store::MOST_CLIP_BYTES;
use sayso_wording::Locale;
use sayso_wording::recording::{advice, make_it_out, measured};
use std::path::Path;
use std::process::ExitCode;

/// Enrols a sound file, or what the microphone hears for so many seconds, as the recording of a word.
pub async fn enrol(dir: &Path, word: &str, file: Option<&Path>, record: Option<f64>) -> Result<ExitCode, CliError> {
    let notebook = notebook::open(dir).await?;
    let card = word_named(&notebook.story, None, word)
        .map_err(|e| CliError::said(format!("{e}. Add it on the page Words first")))?;
    let (name, bytes) = match (file, record) {
        (Some(file), _) => (file.display().to_string(), read(file)?),
        (None, Some(seconds)) => ("the recording".to_owned(), tokio::task::block_in_place(|| recorded::word(seconds))?),
        (None, None) => return Err(CliError::said("name a sound file, or say --record SECONDS")),
    };
    let done = sayso_notebook::enrol(&notebook.store, notebook.home, &notebook.story, &card, bytes)
        .await
        .map_err(|e| CliError::said(format!("{name}: {e}")))?;
    let known = done.cards.is_empty();
    let pen = notebook.pen(now());
    let events = done.cards.into_iter().map(|c| pen.event(c)).collect();
    notebook.keep(events).await?;
    say!("\"{}\": {}", card.says, if known { "this very recording was enrolled already." } else { "enrolled." });
    print(&done.report, done.others);
    say!("  {}", make_it_out(&Locale::ENGLISH));
    notebook.store.close().await?;
    Ok(ExitCode::SUCCESS)
}

fn read(file: &Path) -> Result<Vec<u8>, CliError> {
    let told = |source| CliError::File { path: file.to_owned(), source };
    let size = std::fs::metadata(file).map_err(told)?.len();
    if size > MOST_CLIP_BYTES as u64 {
        return Err(CliError::said(format!(
            "{}: {size} bytes; a recording of one word may have {MOST_CLIP_BYTES}",
            file.display()
        )));
    }
    std::fs::read(file).map_err(told)
}

fn print(report: &ClipReport, others: usize) {
    say!("  {}", measured(&Locale::ENGLISH, report, others));
    for finding in &report.findings {
        say!("  ! {}", advice(&Locale::ENGLISH, finding));
    }
    if report.findings.is_empty() {
        say!("  Nothing to object to.");
    }
}

/// Checks all recordings in use. Answers 2 where something was found.
pub async fn clips(dir: &Path) -> Result<ExitCode, CliError> {
    let notebook = notebook::open(dir).await?;
    let all = recordings(&notebook.store, &notebook.story).await?;
    let mut found = false;
    let mut sound: Vec<Clip> = Vec::new();
    let enrolled: std::collections::BTreeSet<_> = all.iter().map(|r| r.card.word).collect();
    for recording in all {
        match recording.sound {
            Ok(clip) => sound.push(clip),
            Err(why) => {
                found = true;
                say!("\"{}\"\n  ! {why}", recording.says);
            }
        }
    }
    for report in check_clips(&sound) {
        found |= !report.findings.is_empty();
        say!("\"{}\"", report.word);
        print(&report, sound.len() - 1);
    }
    let words = notebook.story.words();
    let mut without: Vec<&str> =
        words.values().filter(|w| w.active && !enrolled.contains(&w.word)).map(|w| w.says.as_str()).collect();
    without.sort_unstable();
    if !without.is_empty() {
        say!("Without a recording, so not listened for: {}.", without.join(", "));
    }
    notebook.store.close().await?;
    Ok(if found { ExitCode::from(2) } else { ExitCode::SUCCESS })
}
