//! Sound files, with progress, and a checkpoint to go on from.

use super::Run;
use crate::error::CliError;
use crate::out::note;
use sayso_listen::{Checkpoint, Detection, FileHearing, Progress, hear_file};
use sayso_wording::words;
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::fs::File;
use std::path::Path;
use std::time::{Duration, Instant};

/// Time between lines of progress.
const QUIET: Duration = Duration::from_secs(5);

/// Where hearing a file stood, as stored.
#[derive(Serialize, Deserialize)]
struct Stored {
    /// Hash of the sound file.
    sound: String,
    /// Hash of what was listened for, and how.
    ears: String,
    checkpoint: Checkpoint,
}

pub fn hear(run: &mut Run, path: &Path) -> Result<(), CliError> {
    let name = path.file_stem().map(|s| s.to_string_lossy().into_owned()).unwrap_or_default();
    let mut how = FileHearing::default();
    how.least_confidence = run.args.least.unwrap_or(how.least_confidence);
    how.threads = run.args.threads.map_or(how.threads, |n| usize::from(n.get()));
    let hash = if run.args.log || run.args.checkpoint.is_some() { Some(hash_of(path)?) } else { None };
    let ears = ears(run, how.least_confidence);
    if let (Some(file), Some(sound)) = (&run.args.checkpoint, &hash)
        && let Some(stored) = read(file)?
    {
        if (&stored.sound, &stored.ears) != (sound, &ears) {
            let file = file.display().to_string();
            return Err(CliError::said(words!(command_listen::other_checkpoint, file = file)));
        }
        let at = run.l.number(stored.checkpoint.done_s(), 0);
        note!(run.l, command_listen::going_on, file = &name, seconds = at);
        how.resume = Some(stored.checkpoint);
    }
    let (began, l) = (run.args.started_at, run.l);
    let enrolled = std::sync::Arc::clone(&run.vocabulary.enrolled);
    let (mut printed, mut wrong, mut last_line) = (0, None, None::<Instant>);
    let heard = hear_file(path, &enrolled, &how, |news: Progress| {
        let took = (|| {
            run.print(&name, began, news.heard)?;
            printed += news.heard.len();
            if let (Some(file), Some(sound)) = (&run.args.checkpoint, &hash) {
                // The log first: what a checkpoint has passed is never heard again.
                log(run, sound, news.heard)?;
                write(file, &Stored { sound: sound.clone(), ears: ears.clone(), checkpoint: news.checkpoint.clone() })?;
            }
            if last_line.is_none_or(|l| l.elapsed() >= QUIET) {
                last_line = Some(Instant::now());
                let (share, examined) = (l.percent(news.share), l.number(news.checkpoint.done_s(), 0));
                note!(l, command_listen::progress, file = &name, share = share, seconds = examined, n = printed);
            }
            Ok::<(), CliError>(())
        })();
        wrong = took.err();
        wrong.is_none()
    });
    if let Some(why) = wrong {
        return Err(why);
    }
    let (heard, info) = heard.map_err(CliError::said)?;
    if info.damaged > 0 {
        note!(l, command_listen::damaged_parts, file = &name, n = info.damaged);
    }
    let rest = heard.get(printed..).unwrap_or_default();
    run.print(&name, began, rest)?;
    if let Some(sound) = &hash {
        // Without a checkpoint nothing is logged before the whole file was heard.
        log(run, sound, if run.args.checkpoint.is_some() { rest } else { &heard })?;
    }
    if let Some(file) = &run.args.checkpoint
        && file.exists()
    {
        std::fs::remove_file(file).map_err(|why| CliError::file(file, why))?;
    }
    run.told.listened(info.frames as f64 / f64::from(info.rate.max(1)));
    run.told.heard(&heard);
    run.told.batteries(&run.vocabulary, &heard);
    Ok(())
}

fn log(run: &mut Run, sound: &str, heard: &[Detection]) -> Result<(), CliError> {
    if let (Some(diary), Some(began)) = (&mut run.diary, run.args.started_at) {
        let kept = diary.keep(&run.vocabulary, sound, began, heard)?;
        run.told.kept(kept);
    }
    Ok(())
}

/// What a checkpoint depends on besides the sound.
fn ears(run: &Run, least: f64) -> String {
    let words = run.vocabulary.enrolled.words().join("\n");
    hex(&Sha256::digest(format!("{words}\n{least}\n{}", env!("CARGO_PKG_VERSION"))))
}

fn hash_of(path: &Path) -> Result<String, CliError> {
    let told = |why| CliError::file(path, why);
    let mut hash = Sha256::new();
    std::io::copy(&mut File::open(path).map_err(told)?, &mut hash).map_err(told)?;
    Ok(hex(&hash.finalize()))
}

fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|b| format!("{b:02x}")).collect()
}

fn read(file: &Path) -> Result<Option<Stored>, CliError> {
    let text = match std::fs::read(file) {
        Ok(text) => text,
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return Ok(None),
        Err(why) => return Err(CliError::file(file, why)),
    };
    serde_json::from_slice(&text).map(Some).map_err(|e| {
        let file = file.display().to_string();
        CliError::said(words!(command_listen::no_checkpoint, file = file, why = e.to_string()))
    })
}

/// Writes beside and renames, so that an interruption leaves the former one.
fn write(file: &Path, stored: &Stored) -> Result<(), CliError> {
    let told = |why| CliError::file(file, why);
    let text = serde_json::to_vec(stored).map_err(CliError::below)?;
    let mut beside = file.as_os_str().to_owned();
    beside.push(".part");
    std::fs::write(&beside, text).map_err(told)?;
    std::fs::rename(&beside, file).map_err(told)
}
