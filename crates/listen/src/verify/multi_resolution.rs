//! Third look: the few candidates left, at their exact speed, with windows of three lengths.
//!
//! Short windows follow quick sounds, long ones hold more of the room's reply; bins count once by energy and once each
//! alike, and the phase a bin had in the clip's first half is compared with that in its second. A chance match may do
//! well in one of these and seldom in all. A held note or a bark in the place of the clip's strongest vowel fits in a few bins
//! ([`trimmed`]), and as well some hundredths of a second sooner; a press fits in most, and not before it began.

use crate::dsp::resampler::{RATE, SpeedResampler};
use crate::dsp::simd::wide;
use crate::dsp::stft::Stft;
use crate::verify::whitened_stft::Segment;

/// Window lengths looked through.
pub(crate) const WINDOWS: [usize; 3] = [256, 512, 1024];
/// Lags tried, in hops of a quarter window, the first one hop early.
const LAGS: usize = 4;
/// The window length for which coherence before the onset is told, and the lags: so many hops before the onset.
const EARLIER: (usize, [usize; 3]) = (WINDOWS[1], [8, 6, 4]);
/// One bin in so many, the strongest, is left out of the trimmed coherence.
const TRIMMED: usize = 20;
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
    /// The ratio of all bins but the strongest ([`trimmed`]).
    pub(crate) trimmed: f32,
    /// The ratio at lags before the onset, where a press has not begun; 0 at the other window lengths.
    pub(crate) before: f32,
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
            // Hops from the first frame of the sound to the onset.
            let lead = if window == EARLIER.0 { EARLIER.1[0] } else { 1 };
            let start = onset.round() as i64 - (window / 2 + lead * hop) as i64;
            let heard: Vec<f32> = (0..((n + lead + LAGS - 3) * hop + window) as i64)
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
                let v = compare(&clip_frames, &sound_frames, &scale, lead - 1 + lag);
                view.ratio += v.ratio / LAGS as f32;
                view.per_bin += v.per_bin / LAGS as f32;
                view.halves += v.halves / LAGS as f32;
                view.trimmed += v.trimmed / LAGS as f32;
            }
            if window == EARLIER.0 {
                let ratio = |hops: usize| compare(&clip_frames, &sound_frames, &scale, lead - hops).ratio;
                view.before = EARLIER.1.map(ratio).iter().sum::<f32>() / EARLIER.1.len() as f32;
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
            let mut energies = vec![0.0f32; bins];
            for k in 0..bins {
                let (r, i) = (sums[0][k] + sums[2][k], sums[1][k] + sums[3][k]);
                let energy = r * r + i * i;
                energies[k] = energy;
                v.ratio += energy;
                v.per_bin += energy / (random[k] + 1e-12);
                v.halves += sums[0][k] * sums[2][k] + sums[1][k] * sums[3][k];
                all += random[k];
            }
            v.ratio /= all + 1e-9;
            v.halves /= all + 1e-9;
            v.per_bin /= bins as f32;
            v.trimmed = trimmed(&energies, &random);
            v
        },
    )
}

/// Trimmed coherence: coherent energy over that of random phases, each summed over all bins but the twentieth with the greatest
/// coherent energy (one-sided trimmed sums: Huber and Ronchetti 2009, Robust Statistics, from memory). `energies` and `random` hold one value a
/// bin, not negative. Bins as strong as the strongest left in stay in; 0 where there are none.
fn trimmed(energies: &[f32], random: &[f32]) -> f32 {
    let mut sorted = energies.to_vec();
    let Some(last) = sorted.len().checked_sub(1 + sorted.len() / TRIMMED) else { return 0.0 };
    let greatest = *sorted.select_nth_unstable_by(last, f32::total_cmp).1;
    let left_in = energies.iter().zip(random).filter(|(energy, _)| **energy <= greatest);
    let (sum, all) = left_in.fold((0.0f32, 0.0f32), |(sum, all), (energy, random)| (sum + energy, all + random));
    sum / (all + 1e-9)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_strongest_twentieth_alone_is_left_out() {
        let even = vec![3.0f32; 40];
        assert!((trimmed(&even, &[1.5; 40]) - 2.0).abs() < 1e-5);
        // Two of forty bins, however strong, say nothing; a third does.
        let mut strong = even.clone();
        (strong[7], strong[31]) = (1e6, 2e6);
        assert!((trimmed(&strong, &[1.5; 40]) - 2.0).abs() < 1e-5);
        strong[8] = 1e5;
        assert!(trimmed(&strong, &[1.5; 40]) > 1e3);
        // Their random energy goes with them.
        let random: Vec<f32> = (0..40).map(|k| if k == 7 || k == 31 { 1e9 } else { 1.5 }).collect();
        (strong[7], strong[8]) = (1e6, 3.0);
        assert!((trimmed(&strong, &random) - 2.0).abs() < 1e-5);
        assert_eq!((trimmed(&[], &[]), trimmed(&[0.0; 9], &[0.0; 9])), (0.0, 0.0));
    }

    /// Noise, the same for the same seed (xorshift, Marsaglia 2003).
    fn noise(seed: u64, n: usize) -> Vec<f32> {
        let mut state = seed;
        let mut next = || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 40) as f32 / (1 << 24) as f32 - 0.5
        };
        (0..n).map(|_| next()).collect()
    }

    /// What is seen of a clip of a loud note in noise where `sound` is heard from a second before it.
    fn middle(sound: impl Fn(&[f32]) -> Vec<f32>) -> Coherence {
        let note = |i: usize| (0.7 * i as f32).sin();
        let clip: Vec<f32> = noise(1, RATE).iter().enumerate().map(|(i, v)| v + note(i)).collect();
        let samples = sound(&clip);
        let heard = Segment { samples: &samples, at: 0 };
        MultiResolution::new().look(&heard, &clip, 1.0, 1.0, RATE as f64, samples.len() as u64)[1]
    }

    #[test]
    fn a_note_alone_fits_before_the_onset_and_not_without_its_bins() {
        let hiss = noise(2, 3 * RATE);
        let replay = middle(|clip| {
            let mut sound: Vec<f32> = hiss.iter().map(|v| 0.3 * v).collect();
            sound[RATE..2 * RATE].iter_mut().zip(clip).for_each(|(s, c)| *s += c);
            sound
        });
        let note = middle(|_| hiss.iter().enumerate().map(|(i, v)| v + (0.7 * i as f32).sin()).collect());
        assert!(replay.trimmed > 0.5 * replay.ratio && replay.before < 0.5 * replay.ratio, "{replay:?}");
        assert!(note.trimmed < 0.25 * replay.trimmed && note.before > 0.9 * note.ratio, "{note:?} {replay:?}");
    }
}
