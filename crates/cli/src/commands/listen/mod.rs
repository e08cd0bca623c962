//! `listen`: presses from files or a stream of samples, printed one JSON object a line and, if told to, logged.

mod diary;
mod files;
mod live;
mod stream;
mod told;
mod vocabulary;

use super::notebook;
use crate::args::Listening;
use crate::error::CliError;
use crate::out::tell;
use diary::Diary;
use sayso_listen::{Detection, Pace};
use sayso_model::Moment;
use sayso_wording::{Locale, words};
use serde::Serialize;
use std::path::Path;
use std::process::ExitCode;
use told::Told;
use vocabulary::Vocabulary;

/// One press, as printed.
#[derive(Serialize)]
struct Line<'a> {
    sound: &'a str,
    word: &'a str,
    onset_s: f64,
    confidence: f64,
    speed: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    happened_at: Option<Moment>,
}

/// What one run needs everywhere.
struct Run<'a> {
    l: &'a Locale,
    args: &'a Listening,
    vocabulary: Vocabulary,
    diary: Option<Diary<'a>>,
    told: Told,
}

impl Run<'_> {
    fn print(&self, sound: &str, began: Option<Moment>, heard: &[Detection]) -> Result<(), CliError> {
        for h in heard {
            let line = Line {
                sound,
                word: self.vocabulary.says(&h.word),
                onset_s: (h.onset_s * 1e4).round() / 1e4,
                confidence: (h.confidence * 1e4).round() / 1e4,
                speed: (h.speed * 1e5).round() / 1e5,
                happened_at: began.map(|b| b.plus_seconds(h.onset_s)),
            };
            tell!("{}", serde_json::to_string(&line).map_err(CliError::below)?);
        }
        Ok(())
    }
}

/// Listens to what the arguments name. Answers 1 where a file could not be heard; the others are heard all the same.
pub async fn listen(l: &Locale, args: &Listening) -> Result<ExitCode, CliError> {
    check(args)?;
    let pace = if streams(args) || args.microphone { Pace::Live } else { Pace::File };
    let notebook = match &args.data {
        Some(dir) => Some(notebook::open(l, dir).await?),
        None => None,
    };
    let vocabulary = match (&notebook, &args.clips) {
        (Some(notebook), _) => Vocabulary::of_notebook(l, notebook, pace).await?,
        (None, Some(dir)) => Vocabulary::of_folder(dir, pace)?,
        (None, None) => return Err(CliError::said(words!(command_listen::give_what))),
    };
    let diary = match &notebook {
        Some(notebook) if args.log => Some(Diary::new(notebook, args.animal.as_deref())?),
        _ => None,
    };
    let mut run = Run { l, args, vocabulary, diary, told: Told::default() };
    // Hearing keeps the processor busy for long; the runtime is told so.
    let wrong = tokio::task::block_in_place(|| {
        let mut wrong = false;
        if args.microphone
            && let Err(why) = live::hear(&mut run)
        {
            wrong = true;
            refuse(l, &why);
        }
        for file in &args.files {
            let heard = if is_stream(file) { stream::hear(&mut run) } else { files::hear(&mut run, file) };
            if let Err(why) = heard {
                wrong = true;
                refuse(l, &why);
            }
        }
        wrong
    });
    let history = match (&notebook, args.log) {
        (Some(notebook), true) => Some(notebook.store.story(notebook.home).await?),
        _ => None,
    };
    run.told.at_the_end(l, &run.vocabulary, history.as_deref());
    if let Some(notebook) = &notebook {
        notebook.store.close().await?;
    }
    Ok(if wrong { ExitCode::FAILURE } else { ExitCode::SUCCESS })
}

/// Says what could not be heard; the rest goes on.
fn refuse(l: &Locale, why: &CliError) {
    let why = why.say(l);
    eprintln!("sayso: {why}");
}

fn is_stream(file: &Path) -> bool {
    file.as_os_str() == "-"
}

fn streams(args: &Listening) -> bool {
    args.files.iter().any(|f| is_stream(f))
}

/// What the arguments cannot mean together.
fn check(args: &Listening) -> Result<(), CliError> {
    if streams(args) && args.files.len() > 1 {
        return Err(CliError::said(words!(command_listen::input_alone)));
    }
    if streams(args) && args.pcm.is_none() {
        return Err(CliError::said(words!(command_listen::input_samples)));
    }
    if !streams(args) && args.pcm.is_some() {
        return Err(CliError::said(words!(command_listen::pcm_for_input)));
    }
    if args.log && args.files.len() > 1 {
        return Err(CliError::said(words!(command_listen::one_file)));
    }
    if args.log && args.started_at.is_none() && !streams(args) {
        return Err(CliError::said(words!(command_listen::when_began)));
    }
    if args.checkpoint.is_some() && (streams(args) || args.files.len() > 1) {
        return Err(CliError::said(words!(command_listen::checkpoint_one)));
    }
    if args.least.is_some_and(|l| !(0.0..=1.0).contains(&l)) {
        return Err(CliError::said(words!(command_listen::least_range)));
    }
    Ok(())
}
