//! Short-time spectra, as all three looks use them.

use realfft::{RealFftPlanner, RealToComplex};
use std::sync::Arc;

fn hann(n: usize) -> Vec<f32> {
    (0..n).map(|i| (0.5 - 0.5 * (2.0 * std::f64::consts::PI * i as f64 / n as f64).cos()) as f32).collect()
}

/// Plan and window for frames of one length, and the bins kept.
pub(crate) struct Spectra {
    fft: Arc<dyn RealToComplex<f32>>,
    window: Vec<f32>,
    low: usize,
    bins: usize,
}

impl Spectra {
    pub(crate) fn new(length: usize, low: usize, bins: usize) -> Self {
        Self { fft: RealFftPlanner::new().plan_fft_forward(length), window: hann(length), low, bins }
    }

    /// Complex spectrum of one frame, as `(re, im)` slices filled in place.
    pub(crate) fn frame(&self, x: &[f32], re: &mut [f32], im: &mut [f32]) {
        let mut input: Vec<f32> = x.iter().zip(&self.window).map(|(a, w)| a * w).collect();
        let mut output = self.fft.make_output_vec();
        // Lengths match by construction, the only error this call knows.
        if self.fft.process(&mut input, &mut output).is_err() {
            return;
        }
        for (i, c) in output[self.low..self.low + self.bins].iter().enumerate() {
            re[i] = c.re;
            im[i] = c.im;
        }
    }
}
