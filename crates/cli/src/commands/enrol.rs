//! `enrol` and `clips`: recordings of words, and what is good or bad about them.

use super::notebook;
use super::serve::now;
use crate::error::CliError;
use crate::out::{note, tell};
use crate::recorded;
use sayso_listen::{Clip, ClipReport, Enrolled, Pace, check_clips};
use sayso_model::{Label, WordCard};
use sayso_notebook::{NotNamed, Notebook, Replaces, recordings, word_named};
use sayso_store::MOST_CLIP_BYTES;
use sayso_wording::recording::{advice, make_it_out, measured};
use sayso_wording::{Locale, Message, say, words};
use std::path::Path;
use std::process::ExitCode;

/// Enrols a sound file, or what the microphone hears for so many seconds, as the recording of a word. Begins a notebook in a
/// folder that holds none, so that words can be enrolled before the pages are ever opened.
pub async fn enrol(
    l: &Locale,
    dir: &Path,
    word: &str,
    file: Option<&Path>,
    record: Option<f64>,
    replaces: Replaces,
) -> Result<ExitCode, CliError> {
    let found = notebook::if_any(l, dir).await?;
    let known = known(l, found.as_ref(), word)?;
    let (name, bytes) = match (file, record) {
        (Some(file), _) => (file.display().to_string(), read(file)?),
        (None, Some(seconds)) => {
            let sound = tokio::task::block_in_place(|| recorded::word(l, seconds))?;
            (say!(l, command_listen::the_recording), sound)
        }
        (None, None) => return Err(CliError::said(words!(command_listen::name_a_file))),
    };
    let refused = |why: &dyn Message| CliError::said(say!(l, sounds::of_file, file = &name, why = why.say(l)));
    let (notebook, card) = match (found, known) {
        (Some(notebook), Some(card)) => (notebook, card),
        (found, _) => {
            // Nothing is begun for a sound that cannot be used.
            let clip = Clip::from_bytes(word, bytes.clone()).map_err(|e| refused(&e))?;
            Enrolled::new(&[clip], Pace::File).map_err(|e| refused(&e))?;
            with_word(l, dir, found, word).await?
        }
    };
    let done = sayso_notebook::enrol(&notebook.store, notebook.home, &notebook.story, &card, bytes, replaces).await;
    let done = done.map_err(|e| refused(&e))?;
    let known = !done.cards.iter().any(|c| c.active);
    let pen = notebook.pen(now());
    let events = done.cards.into_iter().map(|c| pen.event(c)).collect();
    notebook.keep(events).await?;
    if known {
        tell!(l, command_listen::enrolled_before, word = &card.says);
    } else {
        tell!(l, command_listen::enrolled, word = &card.says);
    }
    print(l, &done.report, done.others);
    tell!("  {}", make_it_out(l));
    notebook.store.close().await?;
    Ok(ExitCode::SUCCESS)
}

/// The card of the word, or none where it may be made: in a notebook of no animal yet, which the pages have not set up.
fn known(l: &Locale, notebook: Option<&Notebook>, word: &str) -> Result<Option<WordCard>, CliError> {
    let Some(notebook) = notebook else { return Ok(None) };
    match word_named(&notebook.story, None, word) {
        Ok(card) => Ok(Some(card)),
        Err(NotNamed::Word { .. }) if notebook.story.animals().is_empty() => Ok(None),
        Err(e) => Err(CliError::said(words!(command_listen::add_word, why = CliError::from(e).say(l)))),
    }
}

/// The notebook, begun where there is none, with a new word in it.
async fn with_word(
    l: &Locale,
    dir: &Path,
    found: Option<Notebook>,
    word: &str,
) -> Result<(Notebook, WordCard), CliError> {
    let says = Label::new(word).map_err(|e| CliError::flag("--word", e.say(l)))?;
    let notebook = match found {
        Some(notebook) => notebook,
        None => {
            let notebook = notebook::begin(l, dir, now()).await?;
            note!(l, command_listen::begun, folder = dir.display().to_string());
            notebook
        }
    };
    let card = notebook.add_word(says, now()).await?;
    note!(l, command_listen::added, word = word);
    Ok((notebook, card))
}

fn read(file: &Path) -> Result<Vec<u8>, CliError> {
    let told = |why| CliError::file(file, why);
    let size = std::fs::metadata(file).map_err(told)?.len();
    if size > MOST_CLIP_BYTES as u64 {
        return Err(CliError::said(words!(
            command_listen::clip_too_large,
            file = file.display().to_string(),
            bytes = size,
            most = MOST_CLIP_BYTES
        )));
    }
    std::fs::read(file).map_err(told)
}

fn print(l: &Locale, report: &ClipReport, others: usize) {
    tell!("  {}", measured(l, report, others));
    for finding in &report.findings {
        tell!("  ! {}", advice(l, finding));
    }
    if report.findings.is_empty() {
        tell!("  {}", say!(l, command_listen::no_findings));
    }
}

/// Checks all recordings in use. Answers 2 where something was found.
pub async fn clips(l: &Locale, dir: &Path) -> Result<ExitCode, CliError> {
    let notebook = notebook::open(l, dir).await?;
    let all = recordings(&notebook.store, &notebook.story).await?;
    let mut found = false;
    let mut sound: Vec<Clip> = Vec::new();
    let enrolled: std::collections::BTreeSet<_> = all.iter().map(|r| r.card.word).collect();
    for recording in all {
        match recording.sound {
            Ok(clip) => sound.push(clip),
            Err(why) => {
                found = true;
                let why = why.say(l);
                tell!("{}\n  ! {why}", say!(l, command_listen::quoted, word = &recording.says));
            }
        }
    }
    for report in check_clips(&sound) {
        found |= !report.findings.is_empty();
        tell!(l, command_listen::quoted, word = &report.word);
        print(l, &report, sound.len() - 1);
    }
    let words = notebook.story.words();
    let mut without: Vec<&str> =
        words.values().filter(|w| w.active && !enrolled.contains(&w.word)).map(|w| w.says.as_str()).collect();
    without.sort_unstable();
    if !without.is_empty() {
        tell!(l, command_listen::without, words = without.join(", "));
    }
    notebook.store.close().await?;
    Ok(if found { ExitCode::from(2) } else { ExitCode::SUCCESS })
}
