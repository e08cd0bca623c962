//! What an MP4 file tells beside its sound (ISO/IEC 14496-12): whether its parts are all there, where its sound begins and
//! ends among what the coder added, and four letters for its coding.

use super::told::{Header, Shortfall, Trim};
use std::io::{Read, Result, Seek, SeekFrom};

/// Largest table of contents that is read. One of a day of AAC takes some 16 MB.
const MOST_CONTENTS: u64 = 256 << 20;

pub(super) fn read(source: &mut (impl Read + Seek), length: u64) -> Result<Header> {
    let (mut at, mut header, mut contents) = (0, Header { known: true, ..Header::default() }, false);
    let mut sound: Option<Shortfall> = None;
    while let Some((kind, head, size)) = top_level(source, at, length)? {
        let end = at.saturating_add(size);
        match &kind {
            b"moov" if end <= length && size - head <= MOST_CONTENTS => {
                contents = true;
                let mut moov = vec![0; usize::try_from(size - head).unwrap_or_default()];
                source.seek(SeekFrom::Start(at + head))?;
                source.read_exact(&mut moov)?;
                (header.trim, header.four) = of_movie(&moov).unwrap_or_default();
            }
            b"mdat" if end > length => sound = Some(Shortfall { there: length - at - head, promised: size - head }),
            _ => {}
        }
        if end >= length {
            break;
        }
        at = end;
    }
    header.part_missing = !contents;
    header.shortfall = sound;
    Ok(header)
}

/// Kind, length of head, and length of the part that begins at `at`.
fn top_level(source: &mut (impl Read + Seek), at: u64, length: u64) -> Result<Option<([u8; 4], u64, u64)>> {
    if length.saturating_sub(at) < 8 {
        return Ok(None);
    }
    source.seek(SeekFrom::Start(at))?;
    let (mut size, mut kind) = ([0; 4], [0; 4]);
    source.read_exact(&mut size)?;
    source.read_exact(&mut kind)?;
    let (head, size) = match u32::from_be_bytes(size) {
        // To the end of the file.
        0 => (8, length - at),
        1 if length - at >= 16 => {
            let mut long = [0; 8];
            source.read_exact(&mut long)?;
            (16, u64::from_be_bytes(long))
        }
        size => (8, u64::from(size)),
    };
    Ok((size >= head && length - at >= head).then_some((kind, head, size)))
}

/// What of the samples counts, and the coding, of the first sound track.
fn of_movie(moov: &[u8]) -> Option<(Option<Trim>, Option<[u8; 4]>)> {
    let track = parts(moov)
        .filter(|(kind, _)| *kind == b"trak")
        .map(|(_, track)| track)
        .find(|track| within(track, &[b"mdia", b"hdlr"]).and_then(|h| h.get(8..12)) == Some(b"soun"))?;
    let coding = within(track, &[b"mdia", b"minf", b"stbl", b"stsd"]).and_then(|s| s.get(12..16)?.try_into().ok());
    Some((edit(moov, track), coding))
}

/// The first edit that shows sound.
fn edit(moov: &[u8], track: &[u8]) -> Option<Trim> {
    let list = within(track, &[b"edts", b"elst"])?;
    let long = *list.first()? == 1;
    let entry = if long { 20 } else { 12 };
    let (duration, begin) = list.get(8..)?.chunks_exact(entry).find_map(|e| {
        let (duration, begin) = if long {
            (u64::from_be_bytes(e[..8].try_into().ok()?), i64::from_be_bytes(e[8..16].try_into().ok()?))
        } else {
            let begin = i32::from_be_bytes(e[4..8].try_into().ok()?);
            (u64::from(u32::from_be_bytes(e[..4].try_into().ok()?)), i64::from(begin))
        };
        Some((duration, u64::try_from(begin).ok()?))
    })?;
    let (movie, media) = (ticks(within(moov, &[b"mvhd"])?)?, ticks(within(track, &[b"mdia", b"mdhd"])?)?);
    Some(Trim {
        begin_s: begin as f64 / media,
        // Whole ticks of the movie's clock: the sound may last nearly one more.
        length_s: (duration > 0).then(|| (duration + 1) as f64 / movie),
    })
}

/// Ticks a second of a header of times, not 0.
fn ticks(header: &[u8]) -> Option<f64> {
    let at = if *header.first()? == 1 { 20 } else { 12 };
    let ticks = u32::from_be_bytes(header.get(at..at + 4)?.try_into().ok()?);
    (ticks > 0).then_some(f64::from(ticks))
}

fn within<'a>(mut bytes: &'a [u8], path: &[&[u8; 4]]) -> Option<&'a [u8]> {
    for step in path {
        bytes = parts(bytes).find(|(kind, _)| kind == step)?.1;
    }
    Some(bytes)
}

/// Kinds and contents of the parts that lie one after the other, as far as they are whole.
fn parts(mut bytes: &[u8]) -> impl Iterator<Item = (&[u8; 4], &[u8])> {
    std::iter::from_fn(move || {
        let (size, rest) = bytes.split_first_chunk::<4>()?;
        let (kind, _) = rest.split_first_chunk::<4>()?;
        let (content, after) = (bytes.get(8..usize::try_from(u32::from_be_bytes(*size)).ok()?)?, bytes);
        bytes = &after[8 + content.len()..];
        Some((kind, content))
    })
}
