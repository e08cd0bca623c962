//! The whitened narrow-band spectrogram that templates are correlated with.
//!
//! Logarithmic magnitudes in 25 Hz bins, less their own recent mean in each bin and less their mean over
//! neighbouring bins: what is left is the fine pattern of harmonics and noise bursts, which loudness, room colour and
//! steady noise touch little, and in which the same word said by anyone differs from the recording.

use crate::dsp::frame_buffer::FrameBuffer;
use crate::dsp::simd::{ln, wide};
use crate::dsp::stft::Stft;

pub(crate) const HOP: usize = 80;
pub(crate) const WINDOW: usize = 320;
pub(crate) const LOW: usize = 12;
/// Bins looked at: 300 to 2 900 Hz.
pub(crate) const BINS: usize = 104;
pub(crate) const AROUND: usize = 8;
pub(crate) const WIDE: usize = BINS + 2 * AROUND;
/// The running mean is kept per group of frames, so that it depends on nothing older than its reach.
const GROUP: u64 = 8;
const GROUPS_BEFORE: u64 = 5;
const GROUPS_AFTER: u64 = 1;
const LIMIT: f32 = 3.0;
const FLOOR: f32 = 1e-3;

/// Subtracts from each bin the mean of its neighbours: `WIDE` values in, `BINS` out.
pub(crate) fn flatten_neighbours(row: &[f32], out: &mut [f32]) {
    let mut sum: f32 = row[..2 * AROUND].iter().sum();
    for i in 0..BINS {
        sum += row[i + 2 * AROUND];
        out[i] = row[i + AROUND] - sum / (2 * AROUND + 1) as f32;
        sum -= row[i];
    }
}

/// Turns engine-rate sound into whitened rows, one each [`HOP`] samples.
pub(crate) struct Whitener {
    spectra: Stft,
    logs: FrameBuffer,
    groups: FrameBuffer,
    pub(crate) rows: FrameBuffer,
    first: u64,
}

impl Whitener {
    /// `first` is the frame to begin with, a multiple of the group length.
    pub(crate) fn new(first: u64) -> Self {
        debug_assert!(first.is_multiple_of(GROUP));
        Self {
            spectra: Stft::new(WINDOW, LOW - AROUND, WIDE),
            logs: FrameBuffer::new(WIDE, first),
            groups: FrameBuffer::new(WIDE, first / GROUP),
            rows: FrameBuffer::new(BINS, first),
            first,
        }
    }

    /// Next frame wanted, so `frame * HOP` is the first sample still needed.
    pub(crate) fn next_frame(&self) -> u64 {
        self.logs.end()
    }

    /// Takes the [`WINDOW`] samples of the next frame.
    pub(crate) fn push(&mut self, x: &[f32]) {
        let (mut re, mut im) = ([0.0f32; WIDE], [0.0f32; WIDE]);
        self.spectra.frame(x, &mut re, &mut im);
        wide(|| {
            for (a, b) in re.iter_mut().zip(&im) {
                *a = 0.5 * ln(*a * *a + b * b + FLOOR * FLOOR);
            }
        });
        self.logs.push(&re);
        if self.logs.end().is_multiple_of(GROUP) {
            self.close_group();
        }
    }

    fn close_group(&mut self) {
        let group = self.groups.end();
        let mut sum = [0.0f32; WIDE];
        for t in group * GROUP..(group + 1) * GROUP {
            sum.iter_mut().zip(self.logs.row(t)).for_each(|(s, v)| *s += v);
        }
        self.groups.push(&sum);
        if group >= self.first / GROUP + GROUPS_AFTER {
            self.whiten(group - GROUPS_AFTER);
        }
    }

    fn whiten(&mut self, group: u64) {
        let from = group.saturating_sub(GROUPS_BEFORE).max(self.first / GROUP);
        let mut mean = [0.0f32; WIDE];
        for g in from..=group + GROUPS_AFTER {
            mean.iter_mut().zip(self.groups.row(g)).for_each(|(s, v)| *s += v);
        }
        let share = 1.0 / ((group + GROUPS_AFTER + 1 - from) * GROUP) as f32;
        let (mut row, mut out) = ([0.0f32; WIDE], [0.0f32; BINS]);
        for t in group * GROUP..(group + 1) * GROUP {
            for (i, v) in self.logs.row(t).iter().enumerate() {
                row[i] = v - mean[i] * share;
            }
            flatten_neighbours(&row, &mut out);
            out.iter_mut().for_each(|v| *v = v.clamp(-LIMIT, LIMIT));
            self.rows.push(&out);
        }
        self.logs.forget_before(group * GROUP);
        self.groups.forget_before(group.saturating_sub(GROUPS_BEFORE));
    }
}
