//! The same sound in every format that is read. Samples are interleaved, full scale 1.0.
#![allow(dead_code)]

use flacenc::component::BitRepr;
use flacenc::error::Verify;
use mp3lame_encoder::{Bitrate, Builder, FlushNoGap, InterleavedPcm, MonoPcm, Quality};
use std::num::{NonZeroU8, NonZeroU32};

fn whole(samples: &[f32]) -> Vec<i16> {
    samples.iter().map(|v| (v.clamp(-1.0, 1.0) * 32767.0).round() as i16).collect()
}

/// Free lossless coding, 16 bits.
pub fn flac(samples: &[f32], rate: u32, channels: u16) -> Vec<u8> {
    let config = flacenc::config::Encoder::default().into_verified().unwrap();
    let whole: Vec<i32> = whole(samples).into_iter().map(i32::from).collect();
    let source = flacenc::source::MemSource::from_samples(&whole, usize::from(channels), 16, rate as usize);
    let stream = flacenc::encode_with_fixed_block_size(&config, source, config.block_size).unwrap();
    let mut sink = flacenc::bitsink::ByteSink::new();
    stream.write(&mut sink).unwrap();
    let mut out = sink.as_slice().to_vec();
    // The least block size leaves the last block out (RFC 9639, 8.2); this encoder counts it, and readers then look for
    // blocks of varying size.
    out.copy_within(10..12, 8);
    out
}

/// Ogg Vorbis at the encoder's usual quality.
pub fn ogg(samples: &[f32], rate: u32, channels: u16) -> Vec<u8> {
    let channels = usize::from(channels);
    let mut encoder = vorbis_rs::VorbisEncoderBuilder::new_with_serial(
        NonZeroU32::new(rate).unwrap(),
        NonZeroU8::new(channels as u8).unwrap(),
        Vec::new(),
        7,
    );
    let mut encoder = encoder.build().unwrap();
    for block in samples.chunks(4096 * channels) {
        let apart: Vec<Vec<f32>> =
            (0..channels).map(|c| block.iter().skip(c).step_by(channels).copied().collect()).collect();
        encoder.encode_audio_block(&apart).unwrap();
    }
    encoder.finish().unwrap()
}

/// MP3 of 64 kbit/s and channel. With `tag`, its first frame tells the delay and padding of the encoder.
pub fn mp3(samples: &[f32], rate: u32, channels: u16, tag: bool) -> Vec<u8> {
    let brate = if channels == 1 { Bitrate::Kbps64 } else { Bitrate::Kbps128 };
    let builder = Builder::new().unwrap().with_num_channels(channels as u8).unwrap().with_sample_rate(rate).unwrap();
    let builder = builder.with_brate(brate).unwrap().with_quality(Quality::Good).unwrap();
    let mut encoder = builder.with_to_write_vbr_tag(tag).unwrap().build().unwrap();
    let pcm = whole(samples);
    let mut out = Vec::with_capacity(mp3lame_encoder::max_required_buffer_size(pcm.len()) + 16_384);
    if channels == 1 {
        encoder.encode_to_vec(MonoPcm(&pcm), &mut out).unwrap();
    } else {
        encoder.encode_to_vec(InterleavedPcm(&pcm), &mut out).unwrap();
    }
    encoder.flush_to_vec::<FlushNoGap>(&mut out).unwrap();
    if tag {
        // The encoder leaves an empty frame in front for it.
        let mut head = Vec::with_capacity(4096);
        let n = encoder.lame_tag_encode_to_vec(&mut head).unwrap().get();
        out[..n].copy_from_slice(&head[..n]);
    }
    out
}

/// How a WAV file writes its samples.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Wav {
    /// Signed, 16 bits.
    Bits16,
    /// Signed, 24 bits.
    Bits24,
    /// Floating point, 32 bits.
    Float,
}

pub fn wav(samples: &[f32], rate: u32, channels: u16, kind: Wav) -> Vec<u8> {
    let (tag, bits): (u16, u16) = match kind {
        Wav::Bits16 => (1, 16),
        Wav::Bits24 => (1, 24),
        Wav::Float => (3, 32),
    };
    let data: Vec<u8> = match kind {
        Wav::Bits16 => whole(samples).iter().flat_map(|v| v.to_le_bytes()).collect(),
        Wav::Bits24 => samples
            .iter()
            .flat_map(|v| ((v.clamp(-1.0, 1.0) * 8_388_607.0) as i32).to_le_bytes().into_iter().take(3))
            .collect(),
        Wav::Float => samples.iter().flat_map(|v| v.to_le_bytes()).collect(),
    };
    let frame = channels * bits / 8;
    let mut out = b"RIFF".to_vec();
    out.extend((36 + data.len() as u32).to_le_bytes());
    out.extend(b"WAVEfmt ");
    out.extend(16u32.to_le_bytes());
    out.extend(tag.to_le_bytes());
    out.extend(channels.to_le_bytes());
    out.extend(rate.to_le_bytes());
    out.extend((rate * u32::from(frame)).to_le_bytes());
    out.extend(frame.to_le_bytes());
    out.extend(bits.to_le_bytes());
    out.extend(b"data");
    out.extend((data.len() as u32).to_le_bytes());
    out.extend(data);
    out
}
