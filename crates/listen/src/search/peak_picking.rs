//! Local maxima of the first look's score: the candidates worth a second look.

use crate::dsp::frame_buffer::FrameBuffer;

/// Least first-look score that is examined further.
const LEAST_SCORE: f32 = 2.7;
/// Frames on each side within which a candidate must be the highest.
const HALF_WIDTH: u64 = 6;

/// One word's scores, and how far they have been looked through.
pub(crate) struct PeakPicker {
    /// Score and index of its speed, a row a frame.
    scores: FrameBuffer,
    checked: u64,
}

/// A local maximum.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Peak {
    pub(crate) frame: u64,
    pub(crate) score: f32,
    /// Index of the speed that scored best.
    pub(crate) speed: usize,
}

impl PeakPicker {
    /// From a frame on.
    pub(crate) fn new(first: u64) -> Self {
        Self { scores: FrameBuffer::new(2, first), checked: first }
    }

    /// Frames before this one have been looked through.
    pub(crate) fn checked(&self) -> u64 {
        self.checked
    }

    /// The next frame's score.
    pub(crate) fn push(&mut self, score: f32, speed: u8) {
        self.scores.push(&[score, f32::from(speed)]);
    }

    /// The maxima that are certain by now and were not given before.
    pub(crate) fn pick(&mut self, mut found: impl FnMut(Peak)) {
        while self.checked + HALF_WIDTH < self.scores.end() {
            let frame = self.checked;
            self.checked += 1;
            let (score, speed) = (self.scores.row(frame)[0], self.scores.row(frame)[1] as usize);
            if score < LEAST_SCORE {
                continue;
            }
            let from = frame.saturating_sub(HALF_WIDTH).max(self.scores.first());
            let highest = (from..frame).all(|u| self.scores.row(u)[0] < score)
                && (frame + 1..=frame + HALF_WIDTH).all(|u| self.scores.row(u)[0] <= score);
            if highest {
                found(Peak { frame, score, speed });
            }
        }
        self.scores.forget_before(self.checked.saturating_sub(HALF_WIDTH));
    }
}
