//! Second and third look: is it the recording itself? Coherence of the sound with the clip.

pub(crate) mod coherence;
pub(crate) mod coherent_sum;
pub(crate) mod multi_resolution;
pub(crate) mod phase_ramp;
pub(crate) mod sounding;
pub(crate) mod whitened_stft;
