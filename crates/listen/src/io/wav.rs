//! Sound as a WAV file.

/// A WAV file of one channel and 16 bits a sample, `rate` samples a second.
///
/// ```
/// assert_eq!(sayso_listen::wav([0, 1, -1].into_iter(), 16_000).len(), 44 + 6);
/// ```
pub fn wav(samples: impl ExactSizeIterator<Item = i16>, rate: u32) -> Vec<u8> {
    let length = u32::try_from(2 * samples.len()).unwrap_or(u32::MAX - 36);
    let mut bytes = Vec::with_capacity(44 + 2 * samples.len());
    bytes.extend(b"RIFF");
    bytes.extend((36 + length).to_le_bytes());
    bytes.extend(b"WAVEfmt ");
    bytes.extend(16_u32.to_le_bytes());
    bytes.extend([1, 0, 1, 0]);
    bytes.extend(rate.to_le_bytes());
    bytes.extend((2 * rate).to_le_bytes());
    bytes.extend([2, 0, 16, 0]);
    bytes.extend(b"data");
    bytes.extend(length.to_le_bytes());
    bytes.extend(samples.flat_map(i16::to_le_bytes));
    bytes
}
