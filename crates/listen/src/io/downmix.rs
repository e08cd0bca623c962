//! Many channels to one.

use crate::error::ListenError;

/// Refuses rates outside 4 000 to 384 000 and channel counts outside 1 to 32.
pub(crate) fn check_format(rate: u32, channels: u16) -> Result<(), ListenError> {
    if (4000..=384_000).contains(&rate) && (1..=32).contains(&channels) {
        Ok(())
    } else {
        Err(ListenError::Format { rate, channels })
    }
}

/// Averages channels; what is left of an incomplete frame waits in `partial`.
pub(crate) fn mix_down(samples: &[f32], channels: usize, partial: &mut Vec<f32>, out: &mut Vec<f32>) {
    let clean = |v: f32| if v.is_finite() { v.clamp(-8.0, 8.0) } else { 0.0 };
    if channels == 1 {
        out.extend(samples.iter().map(|v| clean(*v)));
        return;
    }
    let mut rest = samples;
    if !partial.is_empty() {
        let take = (channels - partial.len()).min(rest.len());
        partial.extend_from_slice(&rest[..take]);
        rest = &rest[take..];
        if partial.len() < channels {
            return;
        }
        out.push(partial.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32);
        partial.clear();
    }
    let frames = rest.chunks_exact(channels);
    partial.extend_from_slice(frames.remainder());
    out.extend(frames.map(|f| f.iter().map(|v| clean(*v)).sum::<f32>() / channels as f32));
}
