//! A whole sound file as one channel.

use crate::error::ListenError;
use crate::io::decode::decode_bytes;
use crate::io::downmix::mix_down;

/// Decodes a sound file's bytes, channels averaged: samples at full scale 1.0, and how many there are a second. Everything
/// is held; [`crate::decode_bytes`] gives it in blocks.
///
/// # Errors
/// As [`crate::decode_bytes`].
pub fn decode_mono(bytes: Vec<u8>) -> Result<(Vec<f32>, u32), ListenError> {
    let (mut samples, mut partial) = (Vec::new(), Vec::new());
    let info = decode_bytes(bytes, |block| {
        mix_down(block.samples, usize::from(block.channels), &mut partial, &mut samples);
        true
    })?;
    Ok((samples, info.rate))
}
