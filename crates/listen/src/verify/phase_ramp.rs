//! How the phase of each bin turns over the length of a clip when the speed is a little off.

use crate::dsp::resampler::RATE;
use crate::dsp::simd::LANES;
use crate::verify::whitened_stft::{BINS, LOW, WINDOW};

/// Speeds on each side of a prepared one, and their step.
pub(crate) const PAIRS: usize = 5;
pub(crate) const STEP: f64 = 0.0005;
/// All speeds near a prepared one, the prepared one in the middle.
pub(crate) const TURNS: usize = 2 * PAIRS + 1;
/// Turns of the phase: per group, pair and window, cosines and sines.
pub(crate) struct PhaseRamps {
    windows: usize,
    pairs: usize,
    cells: Vec<f32>,
}

impl PhaseRamps {
    /// For so many windows `hop` samples apart, and so many pairs.
    pub(crate) fn new(windows: usize, hop: usize, pairs: usize) -> Self {
        let mut cells = Vec::with_capacity(windows * BINS * 2 * pairs);
        for k in (0..BINS).step_by(LANES) {
            for pair in 1..=pairs {
                for m in 0..windows {
                    let t = (m * hop) as f64 / RATE as f64;
                    let angle = |i: usize| {
                        let hz = ((LOW + k + i) * RATE) as f64 / WINDOW as f64;
                        2.0 * std::f64::consts::PI * STEP * pair as f64 * t * hz
                    };
                    cells.extend((0..LANES).map(|i| angle(i).cos() as f32));
                    cells.extend((0..LANES).map(|i| angle(i).sin() as f32));
                }
            }
        }
        Self { windows, pairs, cells }
    }

    pub(crate) fn pair(&self, group: usize, pair: usize) -> &[f32] {
        let at = (group * self.pairs + pair) * self.windows;
        &self.cells[at * 2 * LANES..(at + self.windows) * 2 * LANES]
    }
}
