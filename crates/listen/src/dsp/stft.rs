//! Short-time spectra, as all three looks use them.

use realfft::num_complex::Complex;
use realfft::{RealFftPlanner, RealToComplex};
use std::sync::Arc;

fn hann(n: usize) -> Vec<f32> {
    (0..n).map(|i| (0.5 - 0.5 * (2.0 * std::f64::consts::PI * i as f64 / n as f64).cos()) as f32).collect()
}

/// Plan, window and working room for frames of one length, and the bins kept.
pub(crate) struct Stft {
    fft: Arc<dyn RealToComplex<f32>>,
    window: Vec<f32>,
    low: usize,
    bins: usize,
    input: Vec<f32>,
    output: Vec<Complex<f32>>,
    scratch: Vec<Complex<f32>>,
}

impl Stft {
    pub(crate) fn new(length: usize, low: usize, bins: usize) -> Self {
        let fft = RealFftPlanner::new().plan_fft_forward(length);
        let (input, output, scratch) = (fft.make_input_vec(), fft.make_output_vec(), fft.make_scratch_vec());
        Self { fft, window: hann(length), low, bins, input, output, scratch }
    }

    /// Complex spectrum of one frame, as `(re, im)` slices filled in place.
    pub(crate) fn frame(&mut self, x: &[f32], re: &mut [f32], im: &mut [f32]) {
        for ((v, a), w) in self.input.iter_mut().zip(x).zip(&self.window) {
            *v = a * w;
        }
        // Lengths match by construction, the only error this call knows.
        if self.fft.process_with_scratch(&mut self.input, &mut self.output, &mut self.scratch).is_err() {
            return;
        }
        for (i, c) in self.output[self.low..self.low + self.bins].iter().enumerate() {
            re[i] = c.re;
            im[i] = c.im;
        }
    }
}
