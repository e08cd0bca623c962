//! Packets to samples: Opus by its own decoder, all else by the library's.

use super::kinds;
use crate::error::Undecodable;
use opus_decoder::OpusDecoder;
use std::panic::{AssertUnwindSafe, catch_unwind};
use symphonia::core::codecs::audio::well_known::CODEC_ID_OPUS;
use symphonia::core::codecs::audio::{AudioCodecParameters, AudioDecoder, AudioDecoderOptions};
use symphonia::core::errors::Error;
use symphonia::core::packet::Packet;

/// Rate Opus is decoded at, and its times are counted in.
const OPUS_RATE: u32 = 48_000;

/// A decoder of one track.
pub(super) enum Codec {
    Library(Box<dyn AudioDecoder>),
    Opus { decoder: Box<OpusDecoder>, channels: usize, gain: f32 },
}

/// Why a packet gave no samples.
pub(super) enum NoSamples {
    /// It is damaged; the next may be whole.
    Damaged,
    /// Nothing after it can be decoded.
    Lost,
}

/// Runs one step of the decoders, which panic on some damaged headers (a sum that overflows in symphonia 0.6.1): for whoever
/// listens that is a damaged file like any other. Nothing of the decoder may be used after an error.
pub(super) fn guarded<T>(step: impl FnOnce() -> T) -> Option<T> {
    catch_unwind(AssertUnwindSafe(step)).ok()
}

impl Codec {
    pub(super) fn new(params: &AudioCodecParameters) -> Result<Self, Undecodable> {
        let unread = || match kinds::coding(params.codec) {
            Some(name) => Undecodable::OtherSound(name.to_owned()),
            None => Undecodable::OtherSound(format!("number {} of its container", params.codec)),
        };
        if params.codec != CODEC_ID_OPUS {
            let made = guarded(|| {
                symphonia::default::get_codecs().make_audio_decoder(params, &AudioDecoderOptions::default())
            });
            return Ok(Self::Library(made.ok_or(Undecodable::Damaged { after_s: 0.0 })?.map_err(|_| unread())?));
        }
        let channels = params.channels.as_ref().map_or(1, |c| c.count());
        let decoder = Box::new(OpusDecoder::new(OPUS_RATE, channels).map_err(|_| unread())?);
        // Output gain in 1/256 dB, which is part of the sound (RFC 7845, section 5.1).
        let gain = head(params, 16).map_or(0, i16::from_le_bytes);
        Ok(Self::Opus { decoder, channels, gain: 10f32.powf(f32::from(gain) / (20.0 * 256.0)) })
    }

    /// Puts the packet's samples into `samples`, interleaved; answers their rate and channels.
    pub(super) fn decode(&mut self, packet: &Packet, samples: &mut Vec<f32>) -> Result<(u32, usize), NoSamples> {
        samples.clear();
        match self {
            Self::Library(decoder) => {
                let sound = guarded(|| decoder.decode(packet)).ok_or(NoSamples::Lost)?.map_err(|e| match e {
                    Error::DecodeError(_) | Error::IoError(_) => NoSamples::Damaged,
                    _ => NoSamples::Lost,
                })?;
                samples.resize(sound.samples_interleaved(), 0.0);
                sound.copy_to_slice_interleaved(&mut *samples);
                Ok((sound.spec().rate(), sound.spec().channels().count()))
            }
            Self::Opus { decoder, channels, gain } => {
                samples.resize(OpusDecoder::MAX_FRAME_SIZE_48K * *channels, 0.0);
                let decoded = guarded(|| decoder.decode_float(&packet.data, samples, false)).ok_or(NoSamples::Lost)?;
                let frames = decoded.map_err(|_| NoSamples::Damaged)?;
                let padding = usize::try_from(packet.trim_end.get()).unwrap_or(usize::MAX);
                samples.truncate(frames.saturating_sub(padding) * *channels);
                samples.iter_mut().for_each(|v| *v *= *gain);
                Ok((OPUS_RATE, *channels))
            }
        }
    }

    /// Samples before the sound that Opus needs to begin; other codings tell theirs with the file or the packets.
    pub(super) fn pre_skip(&self, params: &AudioCodecParameters) -> Option<u64> {
        matches!(self, Self::Opus { .. }).then(|| head(params, 10).map(u16::from_le_bytes).map(u64::from))?
    }
}

/// Two bytes of the head of Opus, which files carry along (RFC 7845, section 5.1).
fn head(params: &AudioCodecParameters, at: usize) -> Option<[u8; 2]> {
    params.extra_data.as_ref()?.get(at..at + 2)?.try_into().ok()
}
