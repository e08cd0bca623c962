//! The microphone of this machine, until it is told to stop or is lost.

use super::{Run, stream};
use crate::commands::serve::now;
use crate::error::CliError;
use crate::microphone::{Microphone, Sound};
use crate::out::note;
use sayso_listen::{Config, Detector, Pace};
use sayso_wording::Locale;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

/// Name of the sound in what is printed.
const SOUND: &str = "microphone";

pub fn hear(run: &mut Run) -> Result<(), CliError> {
    let mut microphone = Microphone::open()?;
    let mut config = Config::new(microphone.rate, microphone.channels, Pace::Live);
    config.least_confidence = run.args.least.unwrap_or(config.least_confidence);
    let mut ear = Detector::with(Arc::clone(&run.vocabulary.enrolled), config).map_err(CliError::said)?;
    let stop = stopped(*run.l);
    note!(
        run.l,
        command_listen::listening,
        microphone = &microphone.name,
        rate = microphone.rate,
        channels = microphone.channels,
        n = run.vocabulary.enrolled.words().len()
    );
    let sample_s = 1.0 / (f64::from(microphone.rate) * f64::from(microphone.channels.max(1)));
    let (mut began, mut missed, mut lost) = (None, 0, None);
    while !stop.load(Ordering::Relaxed) {
        let heard = match microphone.next(Duration::from_millis(200)) {
            Ok(Sound::Block(block)) => {
                // The first block ends now.
                began.get_or_insert_with(|| now().plus_seconds(-sample_s * block.len() as f64));
                ear.push(&block)
            }
            Ok(Sound::Missed(n)) => {
                missed += n;
                ear.gap(n)
            }
            Ok(Sound::Nothing) => continue,
            Err(why) => {
                lost = Some(why);
                break;
            }
        };
        stream::take(run, SOUND, began.unwrap_or_else(now), &heard)?;
    }
    let seconds = ear.position_s();
    let (last, _) = ear.finish();
    stream::take(run, SOUND, began.unwrap_or_else(now), &last)?;
    run.told.listened(seconds);
    if missed > 0 {
        let s = missed as f64 / f64::from(microphone.rate);
        note!(run.l, command_listen::missed, seconds = run.l.number(s, 1));
    }
    lost.map_or(Ok(()), Err)
}

/// Turns true at Ctrl-C.
fn stopped(l: Locale) -> Arc<AtomicBool> {
    let stop = Arc::new(AtomicBool::new(false));
    let told = Arc::clone(&stop);
    tokio::runtime::Handle::current().spawn(async move {
        match tokio::signal::ctrl_c().await {
            Ok(()) => told.store(true, Ordering::Relaxed),
            Err(e) => note!(&l, command_listen::no_ctrl_c, why = e.to_string()),
        }
    });
    stop
}
