//! When a sound begins, found without the engine: where its level first rises. It is what onsets heard are compared with,
//! since a person's mark is off by their own reaction.

/// Length of the frames whose levels are looked at.
const FRAME_S: f64 = 0.005;
/// A sound begins where it comes within so much of its loudest frame (20 dB).
const UNDER_PEAK: f64 = 0.1;
/// So much over what sounded before it must be there (14 dB), or its beginning cannot be told.
const OVER_BEFORE: f64 = 5.0;

/// Seconds at which the level rises between `from_s` and `to_s`; none where what sounds beside it is too loud to tell.
pub(super) fn rise_s(samples: &[f32], rate: u32, from_s: f64, to_s: f64) -> Option<f64> {
    let size = ((FRAME_S * f64::from(rate)) as usize).max(1);
    let first = (from_s.max(0.0) * f64::from(rate)) as usize / size;
    let last = ((to_s.max(0.0) * f64::from(rate)) as usize).min(samples.len()) / size;
    let levels: Vec<f64> = (first..last)
        .map(|k| {
            let frame = &samples[k * size..(k + 1) * size];
            (frame.iter().map(|v| f64::from(*v).powi(2)).sum::<f64>() / size as f64).sqrt()
        })
        .collect();
    let peak = levels.iter().copied().fold(0.0, f64::max);
    let at = levels.iter().position(|l| *l >= UNDER_PEAK * peak)?;
    let before = levels[..at].iter().copied().fold(0.0, f64::max);
    let mut sorted = levels[..at].to_vec();
    sorted.sort_by(f64::total_cmp);
    let usual = sorted.get(sorted.len() / 2).copied().unwrap_or(0.0);
    // It begins within the stretch, and out of quiet.
    (peak > 0.0 && at > 0 && usual * OVER_BEFORE / UNDER_PEAK <= peak && before < UNDER_PEAK * peak)
        .then(|| (first + at) as f64 * size as f64 / f64::from(rate))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn noise(n: usize, level: f32) -> Vec<f32> {
        (0..n).map(|i| level * ((i as f32 * 12.9898).sin() * 43_758.547).fract()).collect()
    }

    #[test]
    fn a_tone_out_of_quiet_is_found_and_one_under_noise_is_not() {
        let mut x = noise(32_000, 0.001);
        for i in 16_000..20_000 {
            x[i] += 0.3 * (i as f32 * 0.3).sin();
        }
        let found = rise_s(&x, 16_000, 0.2, 1.9).unwrap_or(f64::NAN);
        assert!((found - 1.0).abs() <= FRAME_S, "{found}");
        let loud: Vec<f32> = x.iter().zip(noise(32_000, 0.3)).map(|(a, b)| a + b).collect();
        assert_eq!(rise_s(&loud, 16_000, 0.2, 1.9), None);
        // It sounds from the first moment on: where it began is not in here.
        assert_eq!(rise_s(&x, 16_000, 1.1, 1.2), None);
        assert_eq!(rise_s(&[], 16_000, 0.0, 1.0), None);
    }
}
