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
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Undecodable {
    /// No bytes, or a header without sound after it.
    #[error("it is empty: there is no sound in it")]
    Empty,
    /// A file that holds something else than sound, such as a film without a sound track.
    #[error("there is no sound in it")]
    NoSound,
    /// A known kind of file that is not read; its name.
    #[error("{0} files are not read; save it as WAV or m4a")]
    OtherFile(&'static str),
    /// No kind of file that is known here.
    #[error("it is no sound file that can be read (WAV, AIFF, CAF, FLAC, Ogg, MP3, m4a or WebM)")]
    Unknown,
    /// The file can be read, what its sound is coded as cannot; its name.
    #[error("its sound is coded as {0}, which is not read; save it as WAV or m4a")]
    OtherSound(String),
    /// It ends before the length its header tells.
    #[error("it is cut short: {there_s:.1} s of {promised_s:.1} s are there; copy it again")]
    CutShort {
        /// Seconds of sound that are there.
        there_s: f64,
        /// Seconds its header tells.
        promised_s: f64,
    },
    /// It ends before the part that tells what is in it, which some recorders write last.
    #[error("it is cut short: the part that tells what is in it is missing; copy it again")]
    PartMissing,
    /// It cannot be read beyond some moment.
    #[error("it is damaged after {after_s:.1} s")]
    Damaged {
        /// Seconds of sound before.
        after_s: f64,
    },
    /// No sample rate or no channels, or too many.
    #[error("it names no sample rate or number of channels that makes sense")]
    NoFormat,
    /// Sample rate or channels change.
    #[error("the sample rate or channel count changes within it")]
    Changes,
}
