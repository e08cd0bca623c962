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
    #[error("{}{reason}", .name.as_ref().map_or_else(String::new, |name| format!("{name}: ")))]
    Decode {
        /// The file; none where its bytes were given.
        name: Option<String>,
        /// Why not.
        reason: Undecodable,
    },
}

/// Why a file's sound cannot be read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Undecodable {
    /// Another kind of file; what the decoder said.
    #[error("not a WAV, FLAC, Ogg Vorbis or MP3 file ({0})")]
    OtherFile(String),
    /// It holds no sound.
    #[error("no sound in it")]
    NoSound,
    /// A kind of sound that is not known here; what the decoder said.
    #[error("its kind of sound cannot be decoded ({0})")]
    OtherSound(String),
    /// What the decoder said.
    #[error("it is damaged ({0})")]
    Damaged(String),
    /// No sample rate or no channels, or too many.
    #[error("it names no sample rate or number of channels that makes sense")]
    NoFormat,
    /// Sample rate or channels change.
    #[error("the sample rate or channel count changes within it")]
    Changes,
}
