//! Small pieces of signal processing, made apart from the detector's own so that neither can share the other's mistake.

use realfft::RealFftPlanner;
use std::f64::consts::PI;

/// Samples a second of every scene.
pub(crate) const RATE: usize = 16_000;

/// A second-order filter (R. Bristow-Johnson, "Cookbook formulae for audio equalizer biquad filter coefficients").
#[derive(Debug, Clone, Copy)]
pub(crate) struct Biquad {
    b: [f64; 3],
    a: [f64; 2],
    state: [f64; 2],
}

impl Biquad {
    fn normal(b: [f64; 3], a: [f64; 3]) -> Self {
        Self { b: b.map(|v| v / a[0]), a: [a[1] / a[0], a[2] / a[0]], state: [0.0; 2] }
    }

    fn angle(hz: f64, q: f64) -> (f64, f64) {
        let w = 2.0 * PI * hz.clamp(1.0, 0.49 * RATE as f64) / RATE as f64;
        (w.cos(), w.sin() / (2.0 * q))
    }

    pub(crate) fn lowpass(hz: f64) -> Self {
        let (c, alpha) = Self::angle(hz, std::f64::consts::FRAC_1_SQRT_2);
        Self::normal([(1.0 - c) / 2.0, 1.0 - c, (1.0 - c) / 2.0], [1.0 + alpha, -2.0 * c, 1.0 - alpha])
    }

    pub(crate) fn highpass(hz: f64) -> Self {
        let (c, alpha) = Self::angle(hz, std::f64::consts::FRAC_1_SQRT_2);
        Self::normal([(1.0 + c) / 2.0, -1.0 - c, (1.0 + c) / 2.0], [1.0 + alpha, -2.0 * c, 1.0 - alpha])
    }

    /// A resonance or a notch of so many decibels.
    pub(crate) fn peak(hz: f64, q: f64, db: f64) -> Self {
        let ((c, alpha), a) = (Self::angle(hz, q), 10f64.powf(db / 40.0));
        Self::normal([1.0 + alpha * a, -2.0 * c, 1.0 - alpha * a], [1.0 + alpha / a, -2.0 * c, 1.0 - alpha / a])
    }

    /// A band of unit gain at its middle.
    pub(crate) fn band(hz: f64, q: f64) -> Self {
        let (c, alpha) = Self::angle(hz, q);
        Self::normal([alpha, 0.0, -alpha], [1.0 + alpha, -2.0 * c, 1.0 - alpha])
    }

    pub(crate) fn step(&mut self, x: f64) -> f64 {
        let y = self.b[0] * x + self.state[0];
        self.state = [self.b[1] * x - self.a[0] * y + self.state[1], self.b[2] * x - self.a[1] * y];
        y
    }

    pub(crate) fn over(mut self, x: &mut [f32]) {
        x.iter_mut().for_each(|v| *v = self.step(f64::from(*v)) as f32);
    }
}

pub(crate) fn rms(x: &[f32]) -> f64 {
    (x.iter().map(|v| f64::from(*v).powi(2)).sum::<f64>() / x.len().max(1) as f64 + 1e-20).sqrt()
}

pub(crate) fn peak(x: &[f32]) -> f32 {
    x.iter().fold(1e-9, |m, v| m.max(v.abs()))
}

/// Scales to this root mean square.
pub(crate) fn level(x: &mut [f32], to: f64) {
    let gain = (to / rms(x)) as f32;
    x.iter_mut().for_each(|v| *v *= gain);
}

/// What of a sound lies in 300 to 5 000 Hz, in which signal-to-noise ratios are meant.
pub(crate) fn speech_band(x: &[f32]) -> Vec<f32> {
    let mut y = x.to_vec();
    Biquad::highpass(300.0).over(&mut y);
    Biquad::lowpass(5000.0).over(&mut y);
    y
}

/// Where the middle 90 % of a sound's energy lies.
pub(crate) fn loud_part(x: &[f32]) -> std::ops::Range<usize> {
    let total: f64 = x.iter().map(|v| f64::from(*v).powi(2)).sum();
    let (mut sum, mut from, mut to) = (0.0, 0, x.len());
    for (i, v) in x.iter().enumerate() {
        sum += f64::from(*v).powi(2);
        if sum < 0.05 * total {
            from = i;
        }
        if sum > 0.95 * total {
            to = i + 1;
            break;
        }
    }
    from..to.max(from + 1).min(x.len().max(from + 1))
}

pub(crate) fn convolve(x: &[f32], h: &[f32]) -> Vec<f32> {
    if x.is_empty() || h.is_empty() {
        return Vec::new();
    }
    let n = (x.len() + h.len() - 1).next_power_of_two();
    let mut planner = RealFftPlanner::<f32>::new();
    let (forward, inverse) = (planner.plan_fft_forward(n), planner.plan_fft_inverse(n));
    let spectrum = |y: &[f32]| {
        let mut input = forward.make_input_vec();
        input[..y.len()].copy_from_slice(y);
        let mut output = forward.make_output_vec();
        // Lengths match by construction, the only error this call knows.
        let done = forward.process(&mut input, &mut output);
        debug_assert!(done.is_ok());
        output
    };
    let (mut a, b) = (spectrum(x), spectrum(h));
    a.iter_mut().zip(&b).for_each(|(p, q)| *p *= *q);
    let mut out = inverse.make_output_vec();
    let done = inverse.process(&mut a, &mut out);
    debug_assert!(done.is_ok());
    out.truncate(x.len() + h.len() - 1);
    out.iter_mut().for_each(|v| *v /= n as f32);
    out
}

/// Adds a sound into a scene; what hangs over its end is left out.
pub(crate) fn add(scene: &mut [f32], sound: &[f32], at: usize, gain: f64) {
    for (o, v) in scene.iter_mut().skip(at).zip(sound) {
        *o += gain as f32 * v;
    }
}

/// Half-width of the interpolation kernel, in samples.
const HALF: usize = 24;
const FRACTIONS: usize = 256;

/// Plays a sound at another speed (1.03 is 3 % fast, so shorter and higher): Hann-windowed sinc, its taps taken linearly
/// between 256 fractions of a sample.
pub(crate) fn at_speed(x: &[f32], speed: f64) -> Vec<f32> {
    let cut = (1.0 / speed).min(1.0) * 0.98;
    let tap = |t: f64| {
        let sinc = if t.abs() < 1e-9 { cut } else { (PI * cut * t).sin() / (PI * t) };
        sinc * (0.5 + 0.5 * (PI * t / (HALF as f64 + 1.0)).cos())
    };
    let table: Vec<Vec<f64>> = (0..=FRACTIONS)
        .map(|f| (0..2 * HALF).map(|j| tap(j as f64 + 1.0 - HALF as f64 - f as f64 / FRACTIONS as f64)).collect())
        .collect();
    (0..(x.len() as f64 / speed) as usize)
        .map(|i| {
            let t = i as f64 * speed;
            let (at, f) = (t.floor(), (t - t.floor()) * FRACTIONS as f64);
            let (row, part) = (f as usize, f - f.floor());
            (0..2 * HALF)
                .map(|j| {
                    let k = at as i64 + j as i64 + 1 - HALF as i64;
                    let v = usize::try_from(k).ok().and_then(|k| x.get(k)).copied().unwrap_or(0.0);
                    f64::from(v) * (table[row][j] * (1.0 - part) + table[row + 1][j] * part)
                })
                .sum::<f64>() as f32
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn tone(hz: f64, n: usize) -> Vec<f32> {
        (0..n).map(|i| (2.0 * PI * hz * i as f64 / RATE as f64).sin() as f32).collect()
    }

    #[test]
    fn speed_moves_pitch_and_length() {
        let (y, want) = (at_speed(&tone(1000.0, RATE), 0.97), tone(970.0, RATE));
        assert_eq!(y.len(), (RATE as f64 / 0.97) as usize);
        assert!((100..15_000).all(|i| (y[i] - want[i]).abs() < 2e-3));
    }

    #[test]
    fn convolution_is_the_plain_sum() {
        let (x, h) = ([1.0f32, 2.0, -1.0, 0.5], [0.5f32, 0.0, -2.0]);
        let y = convolve(&x, &h);
        for (n, v) in y.iter().enumerate() {
            let sum: f32 = (0..=n).filter(|k| *k < 4 && n - k < 3).map(|k| x[k] * h[n - k]).sum();
            assert!((v - sum).abs() < 1e-5);
        }
        assert_eq!(y.len(), 6);
    }

    #[test]
    fn filters_pass_and_stop_what_they_should() {
        let gain = |mut f: Biquad, hz: f64| {
            let y: Vec<f32> = tone(hz, RATE).iter().map(|v| f.step(f64::from(*v)) as f32).collect();
            rms(&y[4000..]) * std::f64::consts::SQRT_2
        };
        assert!(gain(Biquad::lowpass(1000.0), 200.0) > 0.99 && gain(Biquad::lowpass(1000.0), 5000.0) < 0.05);
        assert!(gain(Biquad::highpass(1000.0), 200.0) < 0.05 && gain(Biquad::highpass(1000.0), 5000.0) > 0.98);
        assert!((gain(Biquad::band(1000.0, 2.0), 1000.0) - 1.0).abs() < 0.01);
        assert!((gain(Biquad::peak(1000.0, 2.0, 6.0), 1000.0) - 1.995).abs() < 0.02);
    }
}
