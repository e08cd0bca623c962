//! Third look: the few candidates left, at their exact speed, with windows of three lengths.
//!
//! Short windows follow quick sounds, long ones hold more of the room's reply; bins count once by energy and once each
//! alike, and the phase a bin had in the clip's first half is compared with that in its second. A chance match may do
//! well in one of these and seldom in all.

use crate::dsp::resampler::{RATE, SpeedResampler};
use crate::dsp::simd::wide;
use crate::dsp::stft::Stft;
use crate::verify::whitened_stft::Segment;

/// Window lengths looked through.
pub(crate) const WINDOWS: [usize; 3] = [256, 512, 1024];
/// Lags tried, in hops of a quarter window, the first one hop early.
const LAGS: usize = 4;
const LOW_HZ: usize = 312;
const HIGH_HZ: usize = 3562;
const CLAMP: f32 = 4.0;
const SMOOTH_FRAMES: usize = 2;

/// Evidence at one window length, means over the lags.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Coherence {
    /// Coherent energy over that of random phases, all bins together.
    pub(crate) ratio: f32,
    /// The same per bin, averaged over bins.
    pub(crate) per_bin: f32,
    /// Agreement of phase between the first half and the second.
    pub(crate) halves: f32,
}

/// Fourier plans and interpolation taps.
pub(crate) struct MultiResolution {
    spectra: Vec<Stft>,
    resampler: SpeedResampler,
}

struct Frames {
    bins: usize,
    re: Vec<f32>,
    im: Vec<f32>,
}

impl Frames {
    fn count(&self) -> usize {
        self.re.len() / self.bins
    }
}

fn frames(spectra: &mut Stft, x: &[f32], window: usize, bins: usize) -> Frames {
    let hop = window / 4;
    let count = (x.len().saturating_sub(window)) / hop + 1;
    let mut f = Frames { bins, re: vec![0.0; count * bins], im: vec![0.0; count * bins] };
    for t in 0..count {
        if let Some(part) = x.get(t * hop..t * hop + window) {
            let (re, im) = (&mut f.re[t * bins..(t + 1) * bins], &mut f.im[t * bins..(t + 1) * bins]);
            spectra.frame(part, re, im);
        }
    }
    f
}

/// Smoothed power: over five frames and over bins of about 70 Hz on each side.
fn smooth(f: &Frames, half: usize) -> Vec<f32> {
    let (n, bins) = (f.count(), f.bins);
    let mut across = vec![0.0f32; n * bins];
    let mut power = vec![0.0f32; bins];
    for t in 0..n {
        for k in 0..bins {
            power[k] = f.re[t * bins + k].powi(2) + f.im[t * bins + k].powi(2);
        }
        let mut run: f32 = power[..half.min(bins)].iter().sum();
        for k in 0..bins {
            if k + half < bins {
                run += power[k + half];
            }
            if k > half {
                run -= power[k - half - 1];
            }
            let width = (k + half).min(bins - 1) - k.saturating_sub(half) + 1;
            across[t * bins + k] = run.max(0.0) / width as f32;
        }
    }
    let mut out = vec![0.0f32; n * bins];
    for t in 0..n {
        let range = t.saturating_sub(SMOOTH_FRAMES)..(t + SMOOTH_FRAMES + 1).min(n);
        let share = 1.0 / range.len() as f32;
        let row = &mut out[t * bins..(t + 1) * bins];
        for u in range {
            row.iter_mut().zip(&across[u * bins..(u + 1) * bins]).for_each(|(o, v)| *o += v * share);
        }
        row.iter_mut().for_each(|v| *v = 1.0 / (*v + 1e-9).sqrt());
    }
    out
}

impl MultiResolution {
    pub(crate) fn new() -> Self {
        let spectra = WINDOWS.iter().map(|w| Stft::new(*w, LOW_HZ * w / RATE, Self::bins(*w))).collect();
        Self { spectra, resampler: SpeedResampler::new() }
    }

    fn bins(window: usize) -> usize {
        (HIGH_HZ - LOW_HZ) * window / RATE
    }

    /// Looks at `clip`, its first `share`, played at `speed` from engine-rate sample `onset`; no sound at or after
    /// sample `until` is read.
    pub(crate) fn look(
        &mut self,
        sound: &Segment,
        clip: &[f32],
        share: f64,
        speed: f64,
        onset: f64,
        until: u64,
    ) -> [Coherence; WINDOWS.len()] {
        let kept = ((clip.len() as f64 * share) as usize).min(clip.len());
        let played = self.resampler.resample(&clip[..kept], speed);
        let mut views = [Coherence::default(); WINDOWS.len()];
        for ((view, window), spectra) in views.iter_mut().zip(WINDOWS).zip(&mut self.spectra) {
            let (hop, bins) = (window / 4, Self::bins(window));
            let mut x = vec![0.0f32; window / 2];
            x.extend_from_slice(&played);
            x.extend(std::iter::repeat_n(0.0, window / 2 + hop));
            let clip_frames = frames(spectra, &x, window, bins);
            let n = clip_frames.count();
            let start = onset.round() as i64 - (window / 2 + hop) as i64;
            let heard: Vec<f32> = (0..((n + LAGS - 2) * hop + window) as i64)
                .map(|i| {
                    let s = start + i;
                    if s < sound.at as i64 || s >= until as i64 {
                        return 0.0;
                    }
                    sound.samples.get((s - sound.at as i64) as usize).copied().unwrap_or(0.0)
                })
                .collect();
            let sound_frames = frames(spectra, &heard, window, bins);
            let scale = smooth(&sound_frames, (4 * window / 512).max(2));
            for lag in 0..LAGS {
                let v = compare(&clip_frames, &sound_frames, &scale, lag);
                view.ratio += v.ratio / LAGS as f32;
                view.per_bin += v.per_bin / LAGS as f32;
                view.halves += v.halves / LAGS as f32;
            }
        }
        views
    }
}

fn compare(clip: &Frames, sound: &Frames, scale: &[f32], lag: usize) -> Coherence {
    let (n, bins) = (clip.count(), clip.bins);
    wide(
        #[inline(always)]
        || {
            let mut mean = 0.0f32;
            for t in 0..n {
                let q = &scale[(t + lag) * bins..(t + lag + 1) * bins];
                let (xr, xi) = (&clip.re[t * bins..(t + 1) * bins], &clip.im[t * bins..(t + 1) * bins]);
                let mut row = 0.0f32;
                for k in 0..bins {
                    row += (xr[k] * xr[k] + xi[k] * xi[k]) * q[k] * q[k];
                }
                mean += row;
            }
            let limit = CLAMP * mean / (n * bins) as f32 + 1e-12;
            let mut sums = [vec![0.0f32; bins], vec![0.0f32; bins], vec![0.0f32; bins], vec![0.0f32; bins]];
            let mut random = vec![0.0f32; bins];
            for t in 0..n {
                let half = 2 * usize::from(t >= n / 2);
                let q = &scale[(t + lag) * bins..(t + lag + 1) * bins];
                let (yr, yi) = (
                    &sound.re[(t + lag) * bins..(t + lag + 1) * bins],
                    &sound.im[(t + lag) * bins..(t + lag + 1) * bins],
                );
                let (xr, xi) = (&clip.re[t * bins..(t + 1) * bins], &clip.im[t * bins..(t + 1) * bins]);
                let (first, rest) = sums.split_at_mut(half + 1);
                let (sr, si) = (&mut first[half][..bins], &mut rest[0][..bins]);
                for k in 0..bins {
                    let a2 = (xr[k] * xr[k] + xi[k] * xi[k]) * q[k] * q[k];
                    let g = q[k] * q[k] * (a2.min(limit) / (a2 + 1e-12)).sqrt();
                    let (zr, zi) = (g * (yr[k] * xr[k] + yi[k] * xi[k]), g * (yi[k] * xr[k] - yr[k] * xi[k]));
                    sr[k] += zr;
                    si[k] += zi;
                    random[k] += zr * zr + zi * zi;
                }
            }
            let mut v = Coherence::default();
            let mut all = 0.0f32;
            for k in 0..bins {
                let (r, i) = (sums[0][k] + sums[2][k], sums[1][k] + sums[3][k]);
                let energy = r * r + i * i;
                v.ratio += energy;
                v.per_bin += energy / (random[k] + 1e-12);
                v.halves += sums[0][k] * sums[2][k] + sums[1][k] * sums[3][k];
                all += random[k];
            }
            v.ratio /= all + 1e-9;
            v.halves /= all + 1e-9;
            v.per_bin /= bins as f32;
            v
        },
    )
}
