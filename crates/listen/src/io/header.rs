//! What a file's header tells and the decoders' library does not: how long it should be, where its sound begins and ends,
//! how its sound is coded where that cannot be read. Memory does not grow with what a header claims.

use super::told::{Header, Shortfall};
use super::{kinds, mp4};
use std::io::{Read, Result, Seek, SeekFrom};

/// Reads what the first bytes announce. Leaves the source at its start.
pub(super) fn read(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let head: [u8; 12] = at(source, 0)?.unwrap_or_default();
    let header = match (&head[..4], &head[4..8], &head[8..]) {
        (b"RIFF", size, b"WAVE") => wave(source, length, u32::from_le_bytes([size[0], size[1], size[2], size[3]]))?,
        (b"FORM", _, b"AIFF" | b"AIFC") => aiff(source, length)?,
        (b"caff", ..) => caf(source, length)?,
        (_, b"ftyp", _) => mp4::read(source, length)?,
        (b"\x1a\x45\xdf\xa3", ..) => matroska(source, length)?,
        (b"fLaC" | b"OggS", ..) => Header { known: true, ..Header::default() },
        _ => mpeg(source, length)?,
    };
    source.seek(SeekFrom::Start(0))?;
    Ok(header)
}

/// The bytes at a place, if so many are there.
fn at<const N: usize>(source: &mut (impl Read + Seek), place: u64) -> Result<Option<[u8; N]>> {
    source.seek(SeekFrom::Start(place))?;
    let mut bytes = Vec::with_capacity(N);
    source.take(N as u64).read_to_end(&mut bytes)?;
    Ok(bytes.try_into().ok())
}

/// Lengths that recorders write who do not know yet, as they write into a pipe or have not finished: all ones, nothing, and
/// those near 2 GiB of the usual tools (measured on files of theirs and from memory, no source).
fn unknown(length: u32) -> bool {
    length == 0 || length >= 0xffff_0000 || (0x7fff_0000..=0x8000_0100).contains(&length)
}

fn wave(source: &mut (impl Read + Seek), length: u64, whole: u32) -> Result<Header> {
    let mut header = Header { known: true, ..Header::default() };
    let mut place = 12;
    while let Some([a, b, c, d, size @ ..]) = at::<8>(source, place)? {
        let size = u32::from_le_bytes(size);
        match &[a, b, c, d] {
            b"fmt " => {
                let tag = at::<2>(source, place + 8)?.map_or(1, u16::from_le_bytes);
                header.other_coding = kinds::wave_coding(tag);
            }
            b"data" => {
                let there = length.saturating_sub(place + 8);
                if there < u64::from(size) && unknown(size) || size == 0 && there > 0 && unknown(whole) {
                    header.open_ended = vec![4, place + 4];
                } else {
                    header.shortfall = Shortfall::of(there, u64::from(size));
                }
                return Ok(header);
            }
            _ => {}
        }
        place += 8 + u64::from(size) + u64::from(size & 1);
    }
    header.part_missing = u64::from(whole) + 8 > length && !unknown(whole);
    Ok(header)
}

fn aiff(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let mut header = Header { part_missing: true, known: true, ..Header::default() };
    let mut place = 12;
    while let Some([a, b, c, d, size @ ..]) = at::<8>(source, place)? {
        let size = u32::from_be_bytes(size);
        match &[a, b, c, d] {
            b"COMM" => {
                if size >= 22 {
                    header.four = at(source, place + 26)?;
                }
                header.promised_s = at(source, place + 10)?.and_then(common_s);
            }
            b"SSND" => {
                header.part_missing = false;
                header.shortfall = Shortfall::of(length.saturating_sub(place + 8), u64::from(size));
            }
            _ => {}
        }
        place += 8 + u64::from(size) + u64::from(size & 1);
    }
    Ok(header)
}

/// Seconds of an AIFF file: frames at 0, bits at 4, rate at 6 as an extended float of 80 bits.
fn common_s(bytes: [u8; 16]) -> Option<f64> {
    let [a, b, c, d, _, _, sign, exponent, fraction @ ..] = bytes;
    let exponent = i32::from(u16::from_be_bytes([sign & 0x7f, exponent])) - 16_383 - 63;
    let rate = u64::from_be_bytes(fraction) as f64 * 2f64.powi(exponent);
    let seconds = f64::from(u32::from_be_bytes([a, b, c, d])) / rate;
    (seconds.is_finite() && seconds > 0.0).then_some(seconds)
}

fn caf(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let mut header = Header { part_missing: true, known: true, ..Header::default() };
    let (mut place, mut byte_s) = (8, None);
    while let Some([a, b, c, d, size @ ..]) = at::<12>(source, place)? {
        // Less than nothing: until the end.
        let Ok(size) = u64::try_from(i64::from_be_bytes(size)) else {
            header.part_missing = &[a, b, c, d] != b"data";
            break;
        };
        match &[a, b, c, d] {
            b"desc" => {
                header.four = at(source, place + 20)?;
                byte_s = at(source, place + 12)?.and_then(byte_of_caf_s);
            }
            b"data" => {
                header.part_missing = false;
                header.promised_s = byte_s.map(|s| s * size as f64);
                header.shortfall = Shortfall::of(length.saturating_sub(place + 12), size);
            }
            _ => {}
        }
        place = place.saturating_add(12).saturating_add(size);
    }
    Ok(header)
}

/// Seconds that a byte of a CAF file lasts: rate at 0, bytes of a packet at 16, its frames at 20; none where they differ.
fn byte_of_caf_s(bytes: [u8; 24]) -> Option<f64> {
    let number = |i: usize| bytes.get(i..i + 4)?.try_into().ok().map(u32::from_be_bytes).map(f64::from);
    let seconds = number(20)? / (number(16)? * f64::from_be_bytes(bytes.get(..8)?.try_into().ok()?));
    (seconds.is_finite() && seconds > 0.0).then_some(seconds)
}

/// Matroska and WebM (RFC 9559): the head, then one segment that tells its length, if it was known.
fn matroska(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let mut header = Header { known: true, ..Header::default() };
    let Some((_, head)) = element(source, 0)? else { return Ok(header) };
    let Some((0x1853_8067, segment)) = element(source, head.end)? else { return Ok(header) };
    if segment.unknown {
        return Ok(header);
    }
    header.shortfall = Shortfall::of(length.saturating_sub(segment.begin), segment.end - segment.begin);
    let (mut ticks, mut ns) = (None, 1_000_000);
    let mut place = segment.begin;
    while let Some((id, part)) = element(source, place)? {
        match id {
            // Information: gone into. A cluster: sound, before which information stands.
            0x1549_a966 => {
                place = part.begin;
                continue;
            }
            0x1f43_b675 => break,
            0x002a_d7b1 => ns = part.number(source)?,
            0x4489 if part.end - part.begin == 4 => {
                ticks = at(source, part.begin)?.map(|b| f64::from(f32::from_be_bytes(b)));
            }
            0x4489 => ticks = at(source, part.begin)?.map(f64::from_be_bytes),
            _ => {}
        }
        place = part.end;
    }
    header.promised_s = ticks.map(|t| t * ns as f64 * 1e-9).filter(|s| s.is_finite() && *s > 0.0);
    Ok(header)
}

/// Where an element's content stands.
struct Element {
    begin: u64,
    end: u64,
    unknown: bool,
}

impl Element {
    /// The content as a number.
    fn number(&self, source: &mut (impl Read + Seek)) -> Result<u64> {
        let bytes: [u8; 8] = at(source, self.begin)?.unwrap_or_default();
        let n = (self.end - self.begin).min(8);
        Ok(if n == 0 { 0 } else { u64::from_be_bytes(bytes) >> (64 - 8 * n) })
    }
}

/// The element that begins at a place (RFC 8794): a number with its mark of length, a length, content.
fn element(source: &mut (impl Read + Seek), place: u64) -> Result<Option<(u64, Element)>> {
    let Some(bytes) = at::<8>(source, place)? else { return Ok(None) };
    let Some((_, digits)) = vint(bytes) else { return Ok(None) };
    let id = u64::from_be_bytes(bytes) >> (64 - 8 * digits);
    let Some((size, more)) = at(source, place + digits)?.and_then(vint) else { return Ok(None) };
    let begin = place + digits + more;
    let unknown = size == (1 << (7 * more)) - 1;
    Ok(Some((id, Element { begin, end: begin.saturating_add(size), unknown })))
}

/// A number of variable length, and how many bytes it takes (RFC 8794, section 4).
fn vint(bytes: [u8; 8]) -> Option<(u64, u64)> {
    let digits = bytes[0].leading_zeros() + 1;
    let all = u64::from_be_bytes(bytes);
    (digits <= 8).then(|| ((all >> (64 - 8 * digits)) & ((1 << (7 * digits)) - 1), u64::from(digits)))
}

/// MP3: a first frame may tell the bytes of all.
fn mpeg(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let mut header = Header::default();
    let begin = match at::<10>(source, 0)? {
        // Tags before it, whose length is written in sevens of bits.
        Some([b'I', b'D', b'3', _, _, _, size @ ..]) => {
            10 + size.iter().fold(0, |sum, b| (sum << 7) | u64::from(b & 0x7f))
        }
        _ => 0,
    };
    let Some(first) = at::<64>(source, begin)? else { return Ok(header) };
    if first[0] != 0xff || first[1] & 0xe0 != 0xe0 {
        return Ok(header);
    }
    // After the frame's head and side information.
    for place in [13, 21, 36] {
        let (Some(b"Xing" | b"Info"), Some(rest)) = (first.get(place..place + 4), first.get(place + 4..)) else {
            continue;
        };
        let number = |i: usize| rest.get(i..i + 4).and_then(|b| b.try_into().ok()).map(u32::from_be_bytes);
        let flags = number(0).unwrap_or_default();
        if flags & 2 != 0
            && let Some(bytes) = number(if flags & 1 == 0 { 4 } else { 8 })
        {
            header.shortfall = Shortfall::of(length.saturating_sub(begin), u64::from(bytes));
        }
    }
    Ok(header)
}
