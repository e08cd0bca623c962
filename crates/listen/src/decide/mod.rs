//! From evidence to presses: early rejection, calibrated confidence, non-maximum suppression, priors.

pub(crate) mod cascade;
pub(crate) mod classifier;
pub(crate) mod decider;
pub(crate) mod hypothesis;
pub(crate) mod prior;
pub(crate) mod rivals;
pub(crate) mod weights;
