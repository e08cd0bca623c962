//! Standard input: bare samples, as they come.

use super::Run;
use crate::commands::serve::now;
use crate::error::CliError;
use crate::out::note;
use sayso_listen::{Config, Detection, Detector, Pace, PcmReader};
use sayso_model::Moment;
use sayso_wording::words;
use std::io::{ErrorKind, Read};
use std::sync::Arc;

/// Bytes asked for at once; what comes may be less.
const BLOCK: usize = 1 << 14;
/// Name of the sound in what is printed.
const SOUND: &str = "standard input";

pub fn hear(run: &mut Run) -> Result<(), CliError> {
    let Some(format) = run.args.pcm else { return Err(CliError::said(words!(command_listen::input_samples))) };
    let mut config = Config::new(run.args.rate, run.args.channels, Pace::Live);
    if let Some(least) = run.args.least {
        config.least_confidence = least;
    }
    let mut ear = Detector::with(Arc::clone(&run.vocabulary.enrolled), config).map_err(CliError::said)?;
    let (mut reader, mut samples, mut bytes) = (PcmReader::new(format), Vec::new(), vec![0u8; BLOCK]);
    let mut input = std::io::stdin().lock();
    let mut began = run.args.started_at;
    loop {
        let n = match input.read(&mut bytes) {
            Ok(0) => break,
            Ok(n) => n,
            Err(e) if e.kind() == ErrorKind::Interrupted => continue,
            Err(e) => return Err(e.into()),
        };
        // A stream without a time told begins when its first bytes come.
        let began = *began.get_or_insert_with(now);
        samples.clear();
        reader.push(&bytes[..n], &mut samples);
        let heard = ear.push(&samples);
        take(run, SOUND, began, &heard)?;
    }
    if reader.left_over() > 0 {
        note!(run.l, command_listen::cut_off, samples = format.to_string());
    }
    let began = began.unwrap_or_else(now);
    let seconds = ear.position_s();
    let (last, _) = ear.finish();
    take(run, SOUND, began, &last)?;
    run.told.listened(seconds);
    Ok(())
}

/// Prints, logs and counts presses of a stream that began at `began`.
pub(super) fn take(run: &mut Run, sound: &str, began: Moment, heard: &[Detection]) -> Result<(), CliError> {
    if heard.is_empty() {
        return Ok(());
    }
    let shown = run.args.log || run.args.microphone || run.args.started_at.is_some();
    run.print(sound, shown.then_some(began), heard)?;
    if let Some(diary) = &mut run.diary {
        // A stream has no hash before its end; it is known by when it began.
        let kept = diary.keep(&run.vocabulary, &["stream", &began.to_string()].join(" "), began, heard)?;
        run.told.kept(kept);
    }
    run.told.heard(heard);
    Ok(())
}
