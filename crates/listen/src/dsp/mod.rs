//! Signal processing: change of rate, short-time spectra, buffers, vector loops.

pub(crate) mod frame_buffer;
pub(crate) mod resampler;
pub(crate) mod simd;
pub(crate) mod stft;
