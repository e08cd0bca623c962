//! Band-limited interpolation: from any sample rate to the engine's own, and replay at another speed.
//!
//! Source: J. O. Smith, "Digital Audio Resampling" (windowed-sinc interpolation), with the Kaiser window of
//! J. F. Kaiser (1974). Both directions are plain finite sums, so a sample depends on its neighbours only and
//! never on how the sound was cut into blocks.

use crate::dsp::simd::wide;
use std::f64::consts::PI;

/// Samples per second inside the engine. Small buttons keep little above 4 kHz, so half of that rate would lose
/// voice and twice would double the work for nothing.
pub const RATE: usize = 8000;

/// Half-width of the interpolation kernel, in samples of the slower of the two rates.
const HALF: usize = 16;
/// Kaiser shape for about 70 dB of stop-band.
const BETA: f64 = 7.0;

fn bessel_i0(x: f64) -> f64 {
    let (mut sum, mut term, mut k) = (1.0, 1.0, 1.0);
    while term > 1e-12 * sum {
        term *= (x / (2.0 * k)) * (x / (2.0 * k));
        sum += term;
        k += 1.0;
    }
    sum
}

fn kernel(x: f64, half: f64, cutoff: f64) -> f64 {
    let u = x / half;
    if u.abs() >= 1.0 {
        return 0.0;
    }
    let sinc = if x.abs() < 1e-9 { 1.0 } else { (PI * cutoff * x).sin() / (PI * cutoff * x) };
    cutoff * sinc * bessel_i0(BETA * (1.0 - u * u).sqrt()) / bessel_i0(BETA)
}

fn gcd(a: usize, b: usize) -> usize {
    if b == 0 { a } else { gcd(b, a % b) }
}

/// Streaming change of rate to [`RATE`]; output sample `n` stands at input time `n * rate / RATE`.
#[derive(Debug, Clone)]
pub(crate) struct Resampler {
    up: usize,
    down: usize,
    half: usize,
    /// One row of `2 * half` taps per phase.
    taps: Vec<f32>,
    /// Input not yet used up; `held[0]` is input sample `held_at - half` (zeros before the start).
    held: Vec<f32>,
    held_at: u64,
    next_out: u64,
    seen: u64,
}

impl Resampler {
    pub(crate) fn new(rate: usize) -> Self {
        let g = gcd(rate, RATE);
        let (up, down) = (RATE / g, rate / g);
        let narrow = (RATE as f64 / rate as f64).min(1.0);
        let half = (HALF as f64 / narrow).ceil() as usize;
        let mut taps = Vec::with_capacity(up * 2 * half);
        for phase in 0..up {
            let frac = phase as f64 / up as f64;
            // Tap j weighs input sample floor(position) - half + 1 + j.
            let row: Vec<f64> = (0..2 * half)
                .map(|j| kernel(j as f64 - half as f64 + 1.0 - frac, half as f64, 0.97 * narrow))
                .collect();
            let sum: f64 = row.iter().sum();
            taps.extend(row.iter().map(|t| (t / sum) as f32));
        }
        Self { up, down, half, taps, held: vec![0.0; half], held_at: 0, next_out: 0, seen: 0 }
    }

    /// Takes input and appends every output sample whose neighbourhood is complete.
    pub(crate) fn push(&mut self, input: &[f32], out: &mut Vec<f32>) {
        self.seen += input.len() as u64;
        if self.up == 1 && self.down == 1 {
            out.extend_from_slice(input);
            self.next_out = self.seen;
            return;
        }
        self.held.extend_from_slice(input);
        self.drain(self.seen, out);
    }

    /// Ends the input: the last outputs see silence after it.
    pub(crate) fn finish(&mut self, out: &mut Vec<f32>) {
        if self.up == 1 && self.down == 1 {
            return;
        }
        self.held.extend(std::iter::repeat_n(0.0, self.half + 1));
        let until = self.seen + self.half as u64 + 1;
        self.drain(until, out);
    }

    fn drain(&mut self, available: u64, out: &mut Vec<f32>) {
        wide(
            #[inline(always)]
            || self.drain_wide(available, out),
        );
    }

    #[inline(always)]
    fn drain_wide(&mut self, available: u64, out: &mut Vec<f32>) {
        let (up, down, half) = (self.up as u64, self.down as u64, self.half as u64);
        loop {
            let place = self.next_out * down;
            let (at, phase) = (place / up, (place % up) as usize);
            // Rightmost sample needed is at + half; the time itself must lie within the input.
            if at + half >= available || at >= self.seen {
                break;
            }
            let first = (at + 1 - self.held_at) as usize;
            let row = &self.taps[phase * 2 * self.half..(phase + 1) * 2 * self.half];
            out.push(dot(row, &self.held[first..first + 2 * self.half]));
            self.next_out += 1;
        }
        let used = ((self.next_out * down / up).saturating_sub(self.held_at) as usize).min(self.held.len());
        if used > 8192 {
            self.held.drain(..used);
            self.held_at += used as u64;
        }
    }
}

#[inline(always)]
fn dot(a: &[f32], b: &[f32]) -> f32 {
    let mut acc = [0.0f32; 8];
    let (ca, cb) = (a.chunks_exact(8), b.chunks_exact(8));
    let tail: f32 = ca.remainder().iter().zip(cb.remainder()).map(|(x, y)| x * y).sum();
    for (x, y) in ca.zip(cb) {
        for i in 0..8 {
            acc[i] += x[i] * y[i];
        }
    }
    acc.iter().sum::<f32>() + tail
}

/// Whole-signal change of rate to [`RATE`].
pub(crate) fn to_engine_rate(samples: &[f32], rate: usize) -> Vec<f32> {
    let mut r = Resampler::new(rate);
    let mut out = Vec::with_capacity(samples.len() * RATE / rate + 2);
    r.push(samples, &mut out);
    r.finish(&mut out);
    out
}

/// A table of interpolation taps for [`SpeedResampler::resample`]: 512 fractions of a sample.
pub(crate) struct SpeedResampler {
    taps: Vec<f32>,
}

const FRACTIONS: usize = 512;

impl SpeedResampler {
    pub(crate) fn new() -> Self {
        let mut taps = Vec::with_capacity((FRACTIONS + 1) * 2 * HALF);
        for f in 0..=FRACTIONS {
            let frac = f as f64 / FRACTIONS as f64;
            taps.extend((0..2 * HALF).map(|j| kernel(j as f64 - HALF as f64 + 1.0 - frac, HALF as f64, 0.97) as f32));
        }
        Self { taps }
    }

    /// The sound replayed at `speed` (1.04 = 4 % fast, so shorter and higher), at the same sample rate.
    pub(crate) fn resample(&self, x: &[f32], speed: f64) -> Vec<f32> {
        let n = (x.len() as f64 / speed) as usize;
        let mut padded = vec![0.0; HALF];
        padded.extend_from_slice(x);
        padded.extend(std::iter::repeat_n(0.0, HALF + 1));
        let mut out = vec![0.0f32; n];
        wide(
            #[inline(always)]
            || {
                for (i, v) in out.iter_mut().enumerate() {
                    let t = i as f64 * speed;
                    let at = t as usize;
                    let f = ((t - at as f64) * FRACTIONS as f64 + 0.5) as usize;
                    *v = dot(&self.taps[f * 2 * HALF..(f + 1) * 2 * HALF], &padded[at + 1..at + 1 + 2 * HALF]);
                }
            },
        );
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tone(hz: f64, rate: usize, n: usize) -> Vec<f32> {
        (0..n).map(|i| (2.0 * PI * hz * i as f64 / rate as f64).sin() as f32).collect()
    }

    #[test]
    fn a_tone_keeps_its_time_and_pitch_at_every_rate() {
        for rate in [8000, 11025, 16000, 22050, 44100, 48000] {
            let y = to_engine_rate(&tone(1000.0, rate, rate), rate);
            assert!((y.len() as i64 - RATE as i64).abs() <= 1, "{rate}: {}", y.len());
            let want = tone(1000.0, RATE, RATE);
            let worst = (200..7800).map(|i| (y[i] - want[i]).abs()).fold(0.0, f32::max);
            assert!(worst < 2e-3, "{rate}: {worst}");
        }
    }

    #[test]
    fn what_the_engine_cannot_hold_is_removed_not_folded() {
        let y = to_engine_rate(&tone(6000.0, 16000, 16000), 16000);
        assert!(y[500..7500].iter().all(|v| v.abs() < 2e-3));
    }

    #[test]
    fn block_size_changes_nothing() {
        let x: Vec<f32> = (0..50_000u32).map(|i| (i.wrapping_mul(2_654_435_761) >> 8) as f32 / 1.7e7 - 0.5).collect();
        let whole = to_engine_rate(&x, 44100);
        for block in [1usize, 7, 441, 30_000] {
            let (mut r, mut out) = (Resampler::new(44100), Vec::new());
            x.chunks(block).for_each(|c| r.push(c, &mut out));
            r.finish(&mut out);
            assert_eq!(out, whole, "block {block}");
        }
    }

    #[test]
    fn a_faster_replay_is_shorter_and_higher() {
        let y = SpeedResampler::new().resample(&tone(1000.0, RATE, RATE), 1.02);
        let want = tone(1020.0, RATE, RATE);
        assert_eq!(y.len(), 7843);
        assert!((100..7700).all(|i| (y[i] - want[i]).abs() < 5e-3));
    }
}
