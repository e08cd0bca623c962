//! Sound files, block by block: WAV, AIFF, CAF, FLAC, MP3, and Ogg, MP4 and WebM with the codings phones write into them.

use super::codec::{Codec, NoSamples, guarded};
use super::downmix::check_format;
use super::header;
use super::kinds;
use super::told::{Header, Shortfall};
use crate::error::{ListenError, Undecodable};
use std::fs::File;
use std::io::{Cursor, ErrorKind, Read, Seek, SeekFrom};
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use symphonia::core::codecs::audio::AudioCodecParameters;
use symphonia::core::codecs::audio::well_known::CODEC_ID_FLAC;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::well_known::FORMAT_ID_CAF;
use symphonia::core::formats::{FormatOptions, FormatReader, Track, TrackType};
use symphonia::core::io::{MediaSource, MediaSourceStream};
use symphonia::core::meta::MetadataOptions;

/// Packets of no use after which a file is given up.
const MOST_DAMAGED: u64 = 1000;

/// A block of decoded sound.
#[derive(Debug, Clone, Copy)]
pub struct SoundBlock<'a> {
    /// Interleaved samples, full scale 1.0.
    pub samples: &'a [f32],
    /// Samples per second and channel.
    pub rate: u32,
    /// Channels.
    pub channels: u16,
    /// Share of the file's bytes read so far, 0 to 1.
    pub progress: f64,
}

/// What a file held.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SoundInfo {
    /// Samples per second and channel.
    pub rate: u32,
    /// Channels.
    pub channels: u16,
    /// Frames decoded.
    pub frames: u64,
    /// Packets that could not be decoded and were replaced by nothing.
    pub damaged: u64,
}

/// Decodes a file and hands over its sound block by block, until the end or until `each` answers false. A file that is
/// shorter than its header tells is refused before the first block; a length told as unknown is none.
///
/// # Errors
/// [`ListenError::File`] when it cannot be opened, [`ListenError::Decode`] when it is not sound this crate can read or is not
/// whole, [`ListenError::Format`] for a rate or channels out of range.
pub fn decode_file(path: &Path, each: impl FnMut(SoundBlock) -> bool) -> Result<SoundInfo, ListenError> {
    let open = || File::open(path).map_err(|source| ListenError::File { path: path.to_owned(), source });
    let length = open()?.metadata().map_err(|source| ListenError::File { path: path.to_owned(), source })?.len();
    decode(open, length, Some(path), each)
}

/// Decodes a file's bytes held in memory; as [`decode_file`].
///
/// # Errors
/// As [`decode_file`], but for opening.
pub fn decode_bytes(bytes: Vec<u8>, each: impl FnMut(SoundBlock) -> bool) -> Result<SoundInfo, ListenError> {
    let bytes: Arc<[u8]> = bytes.into();
    decode(|| Ok(Cursor::new(Arc::clone(&bytes))), bytes.len() as u64, None, each)
}

/// Where the decoders read: counts for progress, and shows lengths that are not known as all ones.
struct Source<R> {
    inner: R,
    at: u64,
    read: Arc<AtomicU64>,
    length: u64,
    open_ended: Vec<u64>,
}

impl<R: Read> Read for Source<R> {
    fn read(&mut self, buf: &mut [u8]) -> std::io::Result<usize> {
        let n = self.inner.read(buf)?;
        for field in &self.open_ended {
            for place in *field..field + 4 {
                if let Some(byte) = place.checked_sub(self.at).and_then(|i| buf[..n].get_mut(i as usize)) {
                    *byte = 0xff;
                }
            }
        }
        self.at += n as u64;
        self.read.fetch_add(n as u64, Ordering::Relaxed);
        Ok(n)
    }
}

impl<R: Seek> Seek for Source<R> {
    fn seek(&mut self, to: SeekFrom) -> std::io::Result<u64> {
        self.at = self.inner.seek(to)?;
        Ok(self.at)
    }
}

impl<R: Read + Seek + Send + Sync> MediaSource for Source<R> {
    fn is_seekable(&self) -> bool {
        true
    }
    fn byte_len(&self) -> Option<u64> {
        Some(self.length)
    }
}

fn decode<R: Read + Seek + Send + Sync + 'static>(
    open: impl Fn() -> Result<R, ListenError>,
    length: u64,
    path: Option<&Path>,
    mut each: impl FnMut(SoundBlock) -> bool,
) -> Result<SoundInfo, ListenError> {
    let fail = |reason| ListenError::Decode { name: path.map(|p| p.display().to_string()), reason };
    if length == 0 {
        return Err(fail(Undecodable::Empty));
    }
    let header = header::read(&mut open()?, length).map_err(|_| fail(Undecodable::Damaged { after_s: 0.0 }))?;
    let mut hint = Hint::new();
    if let Some(ending) = path.and_then(Path::extension).and_then(|e| e.to_str()) {
        hint.with_extension(ending);
    }
    let read = Arc::new(AtomicU64::new(0));
    let reader = |read| -> Result<Box<dyn FormatReader>, ListenError> {
        let source = Source { inner: open()?, at: 0, read, length, open_ended: header.open_ended.clone() };
        let stream = MediaSourceStream::new(Box::new(source), Default::default());
        let (formats, metadata) = (FormatOptions::default(), MetadataOptions::default());
        match guarded(|| symphonia::default::get_probe().probe(&hint, stream, formats, metadata)) {
            Some(Ok(reader)) => Ok(reader),
            _ => {
                let mut head = Vec::new();
                open()?.take(16).read_to_end(&mut head).map_err(|_| fail(Undecodable::Unknown))?;
                Err(fail(unreadable(&header, &head)))
            }
        }
    };
    let mut format = reader(Arc::clone(&read))?;
    let silent = || match header.four {
        // A track of sound in a coding that the library has no number for.
        Some(four) => fail(Undecodable::OtherSound(kinds::four_letters(four))),
        None => fail(Undecodable::NoSound),
    };
    let track = format.default_track(TrackType::Audio).ok_or_else(silent)?.clone();
    let params = track.codec_params.as_ref().and_then(|p| p.audio()).ok_or_else(silent)?;
    if let Some(short) = header.shortfall {
        return Err(fail(cut_short(&track, params, format.as_ref(), short)));
    }
    let mut codec = Codec::new(params).map_err(|why| match header.four {
        // Four letters say more than that it is not known.
        Some(four) if kinds::coding(params.codec).is_none() => fail(Undecodable::OtherSound(kinds::four_letters(four))),
        _ => fail(why),
    })?;
    if params.codec == CODEC_ID_FLAC
        && let (Some(promised), Some(rate)) = (track.num_frames, params.sample_rate)
    {
        // Its frames alone tell how many there are.
        let there = frames_told(reader(Arc::default())?.as_mut(), track.id);
        if there < promised {
            let seconds = |frames| frames as f64 / f64::from(rate.max(1));
            return Err(fail(Undecodable::CutShort { there_s: seconds(there), promised_s: seconds(promised) }));
        }
    }
    let caf = format.format_info().format == FORMAT_ID_CAF;
    let mut samples: Vec<f32> = Vec::new();
    let mut info: Option<(SoundInfo, Trimmer)> = None;
    let mut damaged = 0u64;
    loop {
        let after_s = info.as_ref().map_or(0.0, |(i, _)| i.frames as f64 / f64::from(i.rate));
        let broken = || fail(Undecodable::Damaged { after_s });
        let packet = match guarded(|| format.next_packet()).ok_or_else(broken)? {
            Ok(Some(packet)) => packet,
            Ok(None) => break,
            // The end of a file whose length is not told.
            Err(Error::IoError(e)) if e.kind() == ErrorKind::UnexpectedEof => break,
            Err(Error::DecodeError(_)) if info.is_some() && damaged < MOST_DAMAGED => {
                damaged += 1;
                continue;
            }
            Err(_) => return Err(broken()),
        };
        if packet.track_id != track.id {
            continue;
        }
        let (rate, channels) = match codec.decode(&packet, &mut samples) {
            Ok(format) => format,
            Err(NoSamples::Damaged) if damaged < MOST_DAMAGED => {
                damaged += 1;
                continue;
            }
            Err(_) => return Err(broken()),
        };
        let channels = u16::try_from(channels).unwrap_or(u16::MAX);
        if channels == 0 || rate == 0 {
            return Err(fail(Undecodable::NoFormat));
        }
        check_format(rate, channels)?;
        let (seen, trimmer) = info.get_or_insert_with(|| {
            let skip = codec.pre_skip(params).or(track.delay.filter(|_| caf).map(u64::from));
            let most = track.num_frames.filter(|_| caf && (track.delay, track.padding) != (None, None));
            (SoundInfo { rate, channels, frames: 0, damaged: 0 }, Trimmer::new(&header, rate, skip, most))
        });
        if (seen.rate, seen.channels) != (rate, channels) {
            return Err(fail(Undecodable::Changes));
        }
        let samples = trimmer.take(&samples, usize::from(channels));
        if samples.is_empty() {
            continue;
        }
        seen.frames += samples.len() as u64 / u64::from(channels);
        let progress = (read.load(Ordering::Relaxed) as f64 / length as f64).min(1.0);
        if !each(SoundBlock { samples, rate, channels, progress }) {
            break;
        }
    }
    match info {
        Some((info, _)) if info.frames > 0 => Ok(SoundInfo { damaged, ..info }),
        _ if damaged > 0 => Err(fail(Undecodable::Damaged { after_s: 0.0 })),
        _ => Err(fail(Undecodable::Empty)),
    }
}

/// Why a file is none that the library knows.
fn unreadable(header: &Header, head: &[u8]) -> Undecodable {
    if let Some(name) = &header.other_coding {
        Undecodable::OtherSound(name.clone())
    } else if let (Some(short), Some(promised_s)) = (header.shortfall, header.promised_s) {
        short.of_seconds(promised_s)
    } else if header.part_missing || header.shortfall.is_some() {
        Undecodable::PartMissing
    } else if let Some(name) = kinds::other_file(head) {
        Undecodable::OtherFile(name)
    } else if let Some(four) = header.four {
        Undecodable::OtherSound(kinds::four_letters(four))
    } else if header.known {
        Undecodable::Damaged { after_s: 0.0 }
    } else {
        Undecodable::Unknown
    }
}

/// How much is there, by bytes: exact where each second takes as many.
fn cut_short(track: &Track, params: &AudioCodecParameters, format: &dyn FormatReader, short: Shortfall) -> Undecodable {
    let whole = format.media_info();
    let told = match (track.num_frames, params.sample_rate) {
        (Some(frames), Some(rate)) if rate > 0 => Some(frames as f64 / f64::from(rate)),
        _ => (track.time_base.zip(track.duration))
            .or(whole.time_base.zip(whole.duration))
            .map(|(base, ticks)| ticks.get() as f64 * f64::from(base.numer.get()) / f64::from(base.denom.get())),
    };
    match told {
        Some(promised_s) if promised_s > 0.0 => short.of_seconds(promised_s),
        _ => Undecodable::PartMissing,
    }
}

/// Frames up to the end of the last whole packet.
fn frames_told(format: &mut dyn FormatReader, id: u32) -> u64 {
    let mut last = 0;
    while let Some(Ok(Some(packet))) = guarded(|| format.next_packet()) {
        if packet.track_id == id {
            last = last.max(u64::try_from(packet.pts.get()).unwrap_or_default() + packet.dur.get());
        }
    }
    last
}

/// Leaves out what a coder put before and after the sound.
struct Trimmer {
    skip: u64,
    left: u64,
}

impl Trimmer {
    /// `skip` and `most` frames where the file's list of edits tells nothing.
    fn new(header: &Header, rate: u32, skip: Option<u64>, most: Option<u64>) -> Self {
        let frames = |s: f64| (s * f64::from(rate)).round() as u64;
        match header.trim {
            Some(trim) => Self { skip: frames(trim.begin_s), left: trim.length_s.map_or(u64::MAX, frames) },
            None => Self { skip: skip.unwrap_or_default(), left: most.unwrap_or(u64::MAX) },
        }
    }

    fn take<'a>(&mut self, samples: &'a [f32], channels: usize) -> &'a [f32] {
        let frames = (samples.len() / channels) as u64;
        let from = self.skip.min(frames);
        self.skip -= from;
        let to = from + (frames - from).min(self.left);
        self.left -= to - from;
        &samples[from as usize * channels..to as usize * channels]
    }
}
