//! What can go wrong when listening.

use std::path::PathBuf;

/// Errors of this crate.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ListenError {
    /// Nothing was enrolled.
    #[error("no clips were given, so there is nothing to listen for")]
    NoClips,
    /// A clip that cannot be enrolled.
    #[error("the clip of \"{word}\" lasts {seconds:.2} s; between 0.15 s and 4 s can be listened for")]
    ClipLength {
        /// What the button says.
        word: String,
        /// Length of its clip.
        seconds: f64,
    },
    /// A clip without sound.
    #[error("the clip of \"{word}\" is silent")]
    Silent {
        /// What the button says.
        word: String,
    },
    /// A sample rate or channel count outside the range.
    #[error(
        "sound of {rate} samples a second in {channels} channels cannot be listened to (4 000 to 384 000, 1 to 32)"
    )]
    Format {
        /// Samples per second.
        rate: u32,
        /// Channels.
        channels: u16,
    },
    /// A file that could not be opened or read.
    #[error("{path}: {source}")]
    File {
        /// The file.
        path: PathBuf,
        /// What the system said.
        source: std::io::Error,
    },
    /// A file that is not sound this crate can read.
    #[error("{name}: {reason}")]
    Decode {
        /// The file.
        name: String,
        /// Why not.
        reason: String,
    },
}
