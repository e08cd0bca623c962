//! What can be heard: clips, the detector that finds them replayed, checks of clips, trends of speed.
//!
//! `io` (files, streams, clips) and `dsp` (resampling, short-time spectra) carry three looks, each seeing fewer candidates
//! at more cost: `search` (template bank on a whitened spectrogram, peak picking), `verify` (coherence with the clip) and
//! `decide` (rejection cascade, logistic classifier, non-maximum suppression, priors). `battery` reads many presses.
//! Around an enrolment stand `clip_check`, `stretches` (several buttons in one sound) and `proof` (one press more).

mod battery;
mod clip_check;
mod clip_spectrogram;
mod decide;
mod detection;
mod detector;
mod dsp;
mod enrolled;
mod error;
#[cfg(feature = "files")]
mod file_detection;
mod io;
mod median;
mod pipeline;
mod proof;
mod search;
mod speeds;
mod stretches;
mod verify;

pub use battery::drift::SpeedAt;
pub use battery::own_speed::{FORGOTTEN_DAYS, speeds_to_listen};
pub use battery::silent::{HeardDays, SilentWord, silent_words};
pub use battery::tired::{TiredBattery, tired_among, tired_batteries, tired_battery};
pub use clip_check::{ADVISED_S, ClipReport, Finding, LOUDNESS_APART, check_clips};
pub use clip_spectrogram::{Picture, picture};
pub use decide::rivals::{BEYOND as RIVAL_BEYOND, rival_leads};
pub use decide::weights::{Cascade, Classifier, FIGURE_NAMES, Provenance, SHORTNESS, StageBound, Weights};
pub use detection::{Candidate, Detection, SURE};
pub use detector::{Config, Detector};
pub use dsp::resampler::RATE as ENGINE_RATE;
pub use enrolled::{Enrolled, Pace};
pub use error::{ListenError, Undecodable};
#[cfg(feature = "files")]
pub use file_detection::{Checkpoint, FileHearing, Progress, hear_file};
pub use io::clip::Clip;
#[cfg(feature = "files")]
pub use io::decode::{SoundBlock, SoundInfo, decode_bytes, decode_file};
#[cfg(feature = "files")]
pub use io::mono::decode_mono;
pub use io::pcm::{PcmFormat, PcmReader, UnknownPcm};
pub use io::wav::wav;
pub use proof::{Evidence, HeardAs, Proof, outcome, prove};
pub use speeds::Speeds;
pub use stretches::{Stretch, Stretches, stretches};
