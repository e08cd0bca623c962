//! Sound files, block by block: WAV, FLAC, Ogg Vorbis and MP3.

use crate::error::{ListenError, Undecodable};
use std::fs::File;
use std::io::{Cursor, Read};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;
use symphonia::core::codecs::audio::AudioDecoderOptions;
use symphonia::core::errors::Error;
use symphonia::core::formats::probe::Hint;
use symphonia::core::formats::{FormatOptions, TrackType};
use symphonia::core::io::{MediaSource, MediaSourceStream};
use symphonia::core::meta::MetadataOptions;

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

/// Counts what the decoder has read, for progress.
struct Counted<R> {
    inner: R,
    read: std::sync::Arc<std::sync::atomic::AtomicU64>,
    length: Option<u64>,
}

impl<R: Read> Read for Counted<R> {
    fn read(&mut self, buf: &mut [u8]) -> std::io::Result<usize> {
        let n = self.inner.read(buf)?;
        self.read.fetch_add(n as u64, std::sync::atomic::Ordering::Relaxed);
        Ok(n)
    }
}

impl<R: std::io::Seek> std::io::Seek for Counted<R> {
    fn seek(&mut self, to: std::io::SeekFrom) -> std::io::Result<u64> {
        self.inner.seek(to)
    }
}

impl<R: Read + std::io::Seek + Send + Sync> MediaSource for Counted<R> {
    fn is_seekable(&self) -> bool {
        true
    }
    fn byte_len(&self) -> Option<u64> {
        self.length
    }
}

/// Decodes a file and hands over its sound block by block, until the end or until `each` answers false.
///
/// # Errors
/// [`ListenError::File`] when it cannot be opened, [`ListenError::Decode`] when it is not sound this crate can read.
pub fn decode_file(path: &Path, each: impl FnMut(SoundBlock) -> bool) -> Result<SoundInfo, ListenError> {
    let file = File::open(path).map_err(|source| ListenError::File { path: path.to_owned(), source })?;
    let length = file.metadata().ok().map(|m| m.len());
    let name = path.display().to_string();
    let mut hint = Hint::new();
    if let Some(ext) = path.extension().and_then(|e| e.to_str()) {
        hint.with_extension(ext);
    }
    decode(file, length, Some(name), &hint, each)
}

/// Decodes a file's bytes held in memory; as [`decode_file`].
///
/// # Errors
/// [`ListenError::Decode`] when they are not sound this crate can read.
pub fn decode_bytes(bytes: Vec<u8>, each: impl FnMut(SoundBlock) -> bool) -> Result<SoundInfo, ListenError> {
    let length = Some(bytes.len() as u64);
    decode(Cursor::new(bytes), length, None, &Hint::new(), each)
}

/// Runs one step of the decoders, which panic on some damaged headers (a sum that overflows in 0.6.1): for whoever listens
/// that is a damaged file like any other. Nothing of the decoder may be used after an error.
fn guarded<T>(step: impl FnOnce() -> T) -> Result<T, Undecodable> {
    catch_unwind(AssertUnwindSafe(step)).map_err(|_| Undecodable::Damaged("its decoder does not survive it".to_owned()))
}

fn decode(
    source: impl Read + std::io::Seek + Send + Sync + 'static,
    length: Option<u64>,
    name: Option<String>,
    hint: &Hint,
    mut each: impl FnMut(SoundBlock) -> bool,
) -> Result<SoundInfo, ListenError> {
    let fail = |reason| ListenError::Decode { name: name.clone(), reason };
    let read = std::sync::Arc::new(std::sync::atomic::AtomicU64::new(0));
    let counted = Counted { inner: source, read: std::sync::Arc::clone(&read), length };
    let stream = MediaSourceStream::new(Box::new(counted), Default::default());
    let probe = symphonia::default::get_probe();
    let mut format = guarded(|| probe.probe(hint, stream, FormatOptions::default(), MetadataOptions::default()))
        .map_err(fail)?
        .map_err(|e| fail(Undecodable::OtherFile(e.to_string())))?;
    let track = format.default_track(TrackType::Audio).ok_or_else(|| fail(Undecodable::NoSound))?;
    let id = track.id;
    let params = track.codec_params.as_ref().and_then(|p| p.audio()).ok_or_else(|| fail(Undecodable::NoSound))?;
    let codecs = symphonia::default::get_codecs();
    let mut decoder = guarded(|| codecs.make_audio_decoder(params, &AudioDecoderOptions::default()))
        .map_err(fail)?
        .map_err(|e| fail(Undecodable::OtherSound(e.to_string())))?;
    let mut samples: Vec<f32> = Vec::new();
    let mut info: Option<SoundInfo> = None;
    let mut damaged = 0u64;
    loop {
        let packet = match guarded(|| format.next_packet()).map_err(fail)? {
            Ok(Some(p)) => p,
            Ok(None) => break,
            // A recording cut off by a power failure ends like this: what came before still counts.
            Err(Error::IoError(e)) if e.kind() == std::io::ErrorKind::UnexpectedEof => break,
            Err(e) if info.is_some() => {
                damaged += 1;
                if damaged > 1000 {
                    return Err(fail(Undecodable::Damaged(e.to_string())));
                }
                if matches!(e, Error::DecodeError(_)) {
                    continue;
                }
                break;
            }
            Err(e) => return Err(fail(Undecodable::Damaged(e.to_string()))),
        };
        if packet.track_id != id {
            continue;
        }
        let sound = match guarded(|| decoder.decode(&packet)).map_err(fail)? {
            Ok(s) => s,
            Err(Error::DecodeError(_)) => {
                damaged += 1;
                continue;
            }
            Err(e) => return Err(fail(Undecodable::Damaged(e.to_string()))),
        };
        let (rate, channels) = (sound.spec().rate(), sound.spec().channels().count());
        if channels == 0 || rate == 0 {
            return Err(fail(Undecodable::NoFormat));
        }
        let channels = u16::try_from(channels).map_err(|_| fail(Undecodable::NoFormat))?;
        samples.resize(sound.samples_interleaved(), 0.0);
        sound.copy_to_slice_interleaved(&mut samples);
        let seen = info.get_or_insert(SoundInfo { rate, channels, frames: 0, damaged: 0 });
        if (seen.rate, seen.channels) != (rate, channels) {
            return Err(fail(Undecodable::Changes));
        }
        seen.frames += samples.len() as u64 / u64::from(channels);
        let done = read.load(std::sync::atomic::Ordering::Relaxed) as f64;
        let progress = length.map_or(0.0, |n| (done / n.max(1) as f64).min(1.0));
        if !each(SoundBlock { samples: &samples, rate, channels, progress }) {
            break;
        }
    }
    let mut info = info.ok_or_else(|| fail(Undecodable::NoSound))?;
    info.damaged = damaged;
    Ok(info)
}
