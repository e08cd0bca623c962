//! First look: candidates by template matching on a whitened spectrogram.

pub(crate) mod cross_correlation;
pub(crate) mod likeness;
pub(crate) mod peak_picking;
pub(crate) mod template_bank;
pub(crate) mod whitening;
