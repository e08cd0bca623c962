//! The latest frames of a stream: pushed at one end, forgotten at the other.

/// Rows of equal width in the order of time, of which old ones are forgotten.
#[derive(Debug, Clone)]
pub(crate) struct FrameBuffer {
    width: usize,
    first: u64,
    data: Vec<f32>,
}

impl FrameBuffer {
    pub(crate) fn new(width: usize, first: u64) -> Self {
        Self { width, first, data: Vec::new() }
    }

    pub(crate) fn first(&self) -> u64 {
        self.first
    }

    pub(crate) fn end(&self) -> u64 {
        self.first + (self.data.len() / self.width) as u64
    }

    pub(crate) fn row(&self, index: u64) -> &[f32] {
        let at = (index - self.first) as usize * self.width;
        &self.data[at..at + self.width]
    }

    pub(crate) fn push(&mut self, row: &[f32]) {
        self.data.extend_from_slice(row);
    }

    /// Forgets rows before `index`, in lumps so that the copying stays small.
    pub(crate) fn forget_before(&mut self, index: u64) {
        let old = (index.min(self.end()).saturating_sub(self.first)) as usize;
        if old * 2 * self.width > self.data.len() {
            self.data.drain(..old * self.width);
            self.first += old as u64;
        }
    }
}
