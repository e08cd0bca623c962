//! How alike two clips are: what the first look would make of one, played where the other is listened for.

use crate::dsp::resampler::SpeedResampler;
use crate::dsp::simd::wide;
use crate::search::template_bank::{template, template_speeds};
use crate::search::whitening::BINS;
use crate::speeds::Speeds;

/// Likeness of fine spectra above which two clips may be mistaken for each other (our own choice: different words in
/// one voice reach 0.65, the same recording 1).
pub(crate) const TOO_ALIKE: f64 = 0.7;

/// A clip as the first look sees it: near its own speed, and at every usual one.
pub(crate) struct Fingerprint {
    own: usize,
    all: Vec<Vec<f32>>,
}

impl Fingerprint {
    /// Of a clip at the engine's rate.
    pub(crate) fn of(clip: &[f32]) -> Self {
        let resampler = SpeedResampler::new();
        let speeds = template_speeds(Speeds::USUAL);
        let own = (0..speeds.len()).min_by(|a, b| (speeds[*a] - 1.0).abs().total_cmp(&(speeds[*b] - 1.0).abs()));
        let all = speeds.iter().map(|s| template(clip, *s, &resampler)).collect();
        Self { own: own.unwrap_or(0), all }
    }

    /// Highest correlation of this clip near its own speed with another at every usual one, 0 to 1.
    pub(crate) fn likeness(&self, other: &Self) -> f64 {
        other.all.iter().map(|r| highest(&self.all[self.own], r)).fold(0.0, f64::max)
    }
}

/// Highest correlation of two templates over shifts of up to 0.2 s.
fn highest(a: &[f32], b: &[f32]) -> f64 {
    let (m, n) = ((a.len() / BINS) as i64, (b.len() / BINS) as i64);
    let mut best = 0.0f32;
    for shift in -20i64..=20 {
        let (from, to) = (shift.max(0), m.min(n + shift));
        if from >= to {
            continue;
        }
        let x = &a[from as usize * BINS..to as usize * BINS];
        let y = &b[(from - shift) as usize * BINS..(to - shift) as usize * BINS];
        best = best.max(wide(
            #[inline(always)]
            || {
                let mut acc = [0.0f32; 8];
                for (p, q) in x.chunks_exact(8).zip(y.chunks_exact(8)) {
                    for i in 0..8 {
                        acc[i] += p[i] * q[i];
                    }
                }
                acc.iter().sum::<f32>()
            },
        ));
    }
    f64::from(best.clamp(0.0, 1.0))
}
