//! A word recorded through the microphone, for its enrolment.

use crate::error::CliError;
use crate::microphone::{Microphone, Sound};
use crate::out::note;
use sayso_wording::{Locale, say, words};
use std::time::Duration;

/// Length of the windows whose loudness is compared, in seconds.
const WINDOW_S: f64 = 0.01;
/// What is left before and after the sound.
const MARGIN_S: f64 = 0.05;
/// A window belongs to the sound when it is louder than this share of the loudest (26 dB under it).
const LOUD: f32 = 0.05;

/// Records for so many seconds and answers a WAV file of what sounded, silence at both ends cut off.
pub fn word(l: &Locale, seconds: f64) -> Result<Vec<u8>, CliError> {
    if !(0.5..=10.0).contains(&seconds) {
        return Err(CliError::said(words!(command_listen::record_range, least = "0.5", most = "10")));
    }
    let mut microphone = Microphone::open()?;
    let length = say!(l, unit::seconds, value = seconds.to_string());
    note!(l, command_listen::recording, seconds = length, microphone = &microphone.name);
    let channels = usize::from(microphone.channels.max(1));
    let wanted = (seconds * f64::from(microphone.rate)) as usize * channels;
    let mut samples = Vec::with_capacity(wanted);
    while samples.len() < wanted {
        match microphone.next(Duration::from_millis(200))? {
            Sound::Block(block) => samples.extend(block),
            Sound::Missed(_) => {
                return Err(CliError::said(words!(command_listen::sound_lost)));
            }
            Sound::Nothing => {}
        }
    }
    let mono: Vec<f32> = samples.chunks_exact(channels).map(|f| f.iter().sum::<f32>() / channels as f32).collect();
    let sound = trimmed(&mono, microphone.rate).ok_or_else(|| CliError::said(words!(command_listen::nothing_heard)))?;
    Ok(file_of(sound, microphone.rate))
}

/// The part between the first and the last loud window, with a little before and after; none of silence.
fn trimmed(samples: &[f32], rate: u32) -> Option<&[f32]> {
    let window = ((WINDOW_S * f64::from(rate)) as usize).max(1);
    let loudness: Vec<f32> =
        samples.chunks(window).map(|w| (w.iter().map(|v| v * v).sum::<f32>() / w.len() as f32).sqrt()).collect();
    let loudest = loudness.iter().copied().fold(0.0, f32::max);
    if !(loudest > 1e-4) {
        return None;
    }
    let loud = |v: &f32| *v > LOUD * loudest;
    let (first, last) = (loudness.iter().position(loud)?, loudness.iter().rposition(loud)?);
    let margin = (MARGIN_S * f64::from(rate)) as usize;
    samples.get((first * window).saturating_sub(margin)..((last + 1) * window + margin).min(samples.len()))
}

fn file_of(samples: &[f32], rate: u32) -> Vec<u8> {
    sayso_listen::wav(samples.iter().map(|v| (v.clamp(-1.0, 1.0) * 32_767.0) as i16), rate)
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_listen::decode_bytes;

    #[test]
    fn silence_at_both_ends_is_cut_and_the_file_holds_the_rest() {
        let rate = 8000;
        let mut x = vec![0.001f32; 3 * rate as usize];
        for (i, v) in x[rate as usize..2 * rate as usize].iter_mut().enumerate() {
            *v = 0.4 * (i as f32 * 0.3).sin();
        }
        let sound = trimmed(&x, rate).unwrap();
        assert!((1.08..1.13).contains(&(sound.len() as f64 / f64::from(rate))), "{}", sound.len());
        let mut back = Vec::new();
        let info = decode_bytes(file_of(sound, rate), |b| {
            back.extend_from_slice(b.samples);
            true
        })
        .unwrap();
        assert_eq!((info.rate, info.channels, info.frames), (rate, 1, sound.len() as u64));
        assert!(back.iter().zip(sound).all(|(a, b)| (a - b).abs() < 1e-4));
        assert!(trimmed(&[0.0; 800], rate).is_none() && trimmed(&[], rate).is_none());
    }
}
