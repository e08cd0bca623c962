//! Raw sample streams: bytes in any pieces, to samples.

/// How a sample is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
pub enum PcmFormat {
    /// Signed 16-bit, little-endian.
    S16Le,
    /// 32-bit IEEE float, little-endian, full scale 1.0.
    F32Le,
}

impl PcmFormat {
    /// Bytes a sample takes.
    pub const fn bytes(self) -> usize {
        match self {
            Self::S16Le => 2,
            Self::F32Le => 4,
        }
    }
}

impl std::fmt::Display for PcmFormat {
    /// As it is read from text.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(match self {
            Self::S16Le => "s16le",
            Self::F32Le => "f32le",
        })
    }
}

impl std::str::FromStr for PcmFormat {
    type Err = UnknownPcm;

    fn from_str(s: &str) -> Result<Self, UnknownPcm> {
        match s {
            "s16le" => Ok(Self::S16Le),
            "f32le" => Ok(Self::F32Le),
            other => Err(UnknownPcm(other.to_owned())),
        }
    }
}

/// A sample format this crate does not know.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("unknown sample format \"{0}\" (s16le or f32le)")]
pub struct UnknownPcm(pub String);

/// Turns bytes, cut anywhere, into samples.
///
/// ```
/// use sayso_listen::{PcmFormat, PcmReader};
/// let mut reader = PcmReader::new(PcmFormat::S16Le);
/// let mut samples = Vec::new();
/// reader.push(&[0x00, 0x40, 0x00], &mut samples);
/// reader.push(&[0xc0], &mut samples);
/// assert_eq!(samples, [0.5, -0.5]);
/// assert_eq!(reader.left_over(), 0);
/// ```
#[derive(Debug, Clone)]
pub struct PcmReader {
    format: PcmFormat,
    held: Vec<u8>,
}

impl PcmReader {
    /// A reader for one stream.
    pub fn new(format: PcmFormat) -> Self {
        Self { format, held: Vec::new() }
    }

    /// Appends the samples these bytes complete. Floats that are not finite become silence.
    pub fn push(&mut self, bytes: &[u8], samples: &mut Vec<f32>) {
        let size = self.format.bytes();
        let mut rest = bytes;
        if !self.held.is_empty() {
            let take = (size - self.held.len()).min(rest.len());
            self.held.extend_from_slice(&rest[..take]);
            rest = &rest[take..];
            if self.held.len() < size {
                return;
            }
            samples.push(self.sample(&self.held));
            self.held.clear();
        }
        let whole = rest.chunks_exact(size);
        self.held.extend_from_slice(whole.remainder());
        samples.extend(whole.map(|b| self.sample(b)));
    }

    /// Bytes of an incomplete sample; not 0 at the end of a stream means it was cut off or has another format.
    pub fn left_over(&self) -> usize {
        self.held.len()
    }

    fn sample(&self, b: &[u8]) -> f32 {
        match (self.format, b) {
            (PcmFormat::S16Le, [a, b]) => f32::from(i16::from_le_bytes([*a, *b])) / 32768.0,
            (PcmFormat::F32Le, [a, b, c, d]) => {
                let v = f32::from_le_bytes([*a, *b, *c, *d]);
                if v.is_finite() { v } else { 0.0 }
            }
            _ => 0.0,
        }
    }
}
