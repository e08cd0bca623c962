//! What a header tells.

use crate::error::Undecodable;

/// What was found. Nothing of it is certain but what it names.
#[derive(Debug, Default)]
pub(super) struct Header {
    /// Bytes of sound, where fewer are there than it tells.
    pub shortfall: Option<Shortfall>,
    /// Seconds of sound it tells, where the library cannot tell them of a file cut short.
    pub promised_s: Option<f64>,
    /// The part that says what is in it is not there.
    pub part_missing: bool,
    /// Which of the decoded sound counts.
    pub trim: Option<Trim>,
    /// Four letters of its coding.
    pub four: Option<[u8; 4]>,
    /// Its coding, where it is one that is not read.
    pub other_coding: Option<String>,
    /// Lengths to be read as "until the end", by where they stand.
    pub open_ended: Vec<u64>,
    /// Its first bytes are those of a container that is read.
    pub known: bool,
}

/// Bytes of sound there, and promised.
#[derive(Debug, Clone, Copy)]
pub(super) struct Shortfall {
    pub there: u64,
    pub promised: u64,
}

impl Shortfall {
    pub fn of(there: u64, promised: u64) -> Option<Self> {
        (there < promised).then_some(Self { there, promised })
    }

    /// What it says where so many seconds are promised: as large a part of them is there as of the bytes.
    pub fn of_seconds(self, promised_s: f64) -> Undecodable {
        Undecodable::CutShort { there_s: promised_s * self.there as f64 / self.promised as f64, promised_s }
    }
}

/// The stretch of decoded sound that was recorded; the rest a coder added.
#[derive(Debug, Clone, Copy)]
pub(super) struct Trim {
    pub begin_s: f64,
    pub length_s: Option<f64>,
}
