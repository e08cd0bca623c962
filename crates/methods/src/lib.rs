//! What can be computed: pure functions from observations to estimates, each with its uncertainty and its count.
//!
//! No I/O, no clock and no hidden randomness: time and seeds are arguments. One file a method, headed by its source.

pub mod agreement;
pub mod board;
pub mod demand;
pub mod learning;
pub mod likes;
pub mod ration;
pub mod single_case;
pub mod stats;
pub mod understanding;
pub mod words;
