//! What can be heard: clips, the engine that finds them replayed, checks of clips, trends of speed.

mod clip;
mod coherence;
mod decode;
mod ear;
mod error;
mod judge;
mod lanes;
mod settle;
mod sinc;
mod sketch;

pub use clip::Clip;
pub use decode::{SoundBlock, SoundInfo, decode_bytes, decode_file};
pub use ear::{Config, Ear, Enrolled, Glimpse, Heard, Pace};
pub use error::ListenError;
