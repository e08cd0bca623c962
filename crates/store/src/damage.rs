//! What is damaged in a notebook, as values: said in English here, for the log; the words for people stand in the catalogues.

use sayso_model::{EventId, HomeId};
use std::path::PathBuf;

/// What is wrong with a row of the log.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum RowDamage {
    /// What it holds is no event.
    #[error("its content is no event")]
    NoEvent,
    /// A column contradicts the event.
    #[error("its column {0} says otherwise than its content")]
    Column(&'static str),
}

/// A row of the log that is damaged.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("event {id} (row {seq}): {what}")]
pub struct DamagedRow {
    /// The event's id, as the row has it.
    pub id: EventId,
    /// Its place in the log.
    pub seq: i64,
    /// What is wrong.
    pub what: RowDamage,
}

/// What is wrong with a snapshot.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum SnapshotFault {
    /// It has an event otherwise than the log, or not at all.
    #[error("differs from the log at event {id} (row {seq})")]
    Differs {
        /// The event.
        id: EventId,
        /// Its place in the log.
        seq: i64,
    },
    /// It has an event that the log has not.
    #[error("holds event {0}, which the log does not")]
    More(EventId),
}

/// What is wrong with a clip.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ClipFault {
    /// Its name is none.
    #[error("is not 64 hexadecimal digits")]
    NotAHash,
    /// Nothing, or too much.
    #[error("has {found} bytes, where 1 to {most} are allowed")]
    Size {
        /// Bytes it has.
        found: usize,
        /// Most it may have.
        most: usize,
    },
    /// Its bytes changed.
    #[error("is damaged: its bytes do not have this hash; store the recording again")]
    OtherContent,
}

/// One thing that looking a notebook through found.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum CheckFault {
    /// What the database found wrong with the file's structure.
    #[error("{0}")]
    Structure(String),
    /// A row of the log.
    #[error(transparent)]
    Row(#[from] DamagedRow),
    /// A snapshot.
    #[error(
        "the snapshot of {home} {what}; remove the file {} and start again: the log is the truth, and another one is made \
         from it", file.display()
    )]
    Snapshot {
        /// Whose.
        home: HomeId,
        /// What is wrong with it.
        what: SnapshotFault,
        /// Its file.
        file: PathBuf,
    },
    /// A recording.
    #[error("clip {sha256}: {what}")]
    Clip {
        /// Its hash.
        sha256: String,
        /// What is wrong with it.
        what: ClipFault,
    },
}

/// Why a notebook's file is damaged.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum Damage {
    /// What the database said.
    #[error("{0}")]
    Said(String),
    /// A row of the log.
    #[error(transparent)]
    Row(#[from] DamagedRow),
    /// The file is gone, but not what was to be written into it.
    #[error("it is gone, but {} beside it is not; events may be in there", .0.display())]
    LogLeft(PathBuf),
    /// Its schema has a known number, but is another.
    #[error("its schema {0} is not the one this program made")]
    OtherSchema(i64),
}

impl From<String> for Damage {
    fn from(said: String) -> Self {
        Self::Said(said)
    }
}
