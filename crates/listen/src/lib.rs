//! What can be heard: clips, the engine that finds them replayed, checks of clips, trends of speed.

mod check;
mod clip;
mod closer;
mod coherence;
mod correlate;
mod decode;
mod drift;
mod ear;
mod error;
mod file;
mod judge;
mod lanes;
mod listener;
mod pcm;
mod phases;
mod picture;
mod settle;
mod sinc;
mod sketch;
mod spectra;
mod trends;
mod turns;
mod wav;
mod whitened;

pub use check::{ADVISED_S, ClipReport, Finding, LOUDNESS_APART, check_clips};
pub use clip::Clip;
pub use decode::{SoundBlock, SoundInfo, decode_bytes, decode_file};
pub use ear::{Config, Ear, Enrolled, Glimpse, Heard, Pace};
pub use error::ListenError;
pub use file::{Checkpoint, FileHearing, Progress, hear_file};
pub use pcm::{PcmFormat, PcmReader, UnknownPcm};
pub use picture::{Picture, picture};
pub use trends::{
    HeardDays, SilentWord, SpeedAt, TiredBattery, silent_words, tired_among, tired_batteries, tired_battery,
};
pub use wav::wav;
