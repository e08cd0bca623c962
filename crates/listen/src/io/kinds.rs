//! Names of the kinds of files and codings that are not read, for whoever has to save them as another.

use symphonia::core::codecs::audio::AudioCodecId;
use symphonia::core::codecs::audio::well_known as id;

/// What a file is that begins with these bytes, where that is known and not read here.
pub(super) fn other_file(head: &[u8]) -> Option<&'static str> {
    let at = |from: usize, mark: &[u8]| head.get(from..).is_some_and(|rest| rest.starts_with(mark));
    let known: [(usize, &[u8], &'static str); 19] = [
        (0, b"#!AMR-WB", "AMR-WB"),
        (0, b"#!AMR", "AMR"),
        (0, b"\x30\x26\xb2\x75\x8e\x66\xcf\x11", "WMA"),
        (0, b"wvpk", "WavPack"),
        (0, b"MAC ", "Monkey's Audio"),
        (0, b"MPCK", "Musepack"),
        (0, b"MP+", "Musepack"),
        (0, b".snd", "AU"),
        (0, b"DSD ", "DSD"),
        (0, b"FRM8", "DSD"),
        (0, b"MThd", "MIDI"),
        (0, b".RMF", "RealAudio"),
        (0, b"TTA1", "TTA"),
        (8, b"AVI ", "AVI"),
        (0, b"%PDF", "PDF"),
        (0, b"PK\x03\x04", "ZIP"),
        (0, b"\x89PNG", "PNG"),
        (0, b"\xff\xd8\xff", "JPEG"),
        (0, b"GIF8", "GIF"),
    ];
    known.into_iter().find(|(from, mark, _)| at(*from, mark)).map(|(_, _, name)| name)
}

/// What a WAV file's number for a coding means, where it is one that is not read. Numbers of the registry of RFC 2361.
pub(super) fn wave_coding(tag: u16) -> Option<String> {
    let name = match tag {
        // PCM, Microsoft's ADPCM, floating point, A-law, mu-law, IMA ADPCM, and one told by a longer code.
        1 | 2 | 3 | 6 | 7 | 0x11 | 0xfffe => return None,
        0x31 => "GSM 6.10",
        0x20 => "Yamaha ADPCM",
        0x40 | 0x41 | 0x45 | 0x64 => "G.726 ADPCM",
        0x50 | 0x55 => "MP3 in WAV",
        0x22 => "TrueSpeech",
        0x42 => "G.723",
        0x83 => "G.729",
        0xff | 0x1600..=0x1602 => "AAC in WAV",
        0x160..=0x163 => "WMA",
        0x92 | 0x2000 => "AC-3",
        other => return Some(format!("number {other} of WAV")),
    };
    Some(name.to_owned())
}

/// What four letters in an MP4, CAF or AIFF-C file say of a coding.
pub(super) fn four_letters(code: [u8; 4]) -> String {
    let name = match &code {
        b"samr" => "AMR",
        b"sawb" => "AMR-WB",
        b"ac-3" => "AC-3",
        b"ec-3" => "E-AC-3",
        b"ac-4" => "AC-4",
        b"dtsc" | b"dtsh" | b"dtsl" => "DTS",
        b"QDM2" | b"QDMC" => "QDesign",
        b"Qclp" | b"sqcp" => "QCELP",
        b"MAC3" | b"MAC6" => "MACE",
        b"ilbc" => "iLBC",
        b"agsm" | b"GSM " => "GSM 6.10",
        b"aach" | b"aacp" => "HE-AAC",
        b"enca" => "AAC under copy protection",
        // Microsoft's numbers, carried over.
        [b'm', b's', high, low] => {
            let tag = u16::from_be_bytes([*high, *low]);
            return wave_coding(tag).unwrap_or_else(|| format!("number {tag} of WAV"));
        }
        other => {
            return other.iter().map(|b| if (0x20..0x7f).contains(b) { char::from(*b) } else { '?' }).collect();
        }
    };
    name.to_owned()
}

/// What the library's number for a coding means.
pub(super) fn coding(codec: AudioCodecId) -> Option<&'static str> {
    let known = [
        (id::CODEC_ID_AAC, "AAC of another kind than LC, such as HE-AAC"),
        (id::CODEC_ID_OPUS, "Opus in more than two channels"),
        (id::CODEC_ID_SPEEX, "Speex"),
        (id::CODEC_ID_MUSEPACK, "Musepack"),
        (id::CODEC_ID_MP1, "MPEG layer I"),
        (id::CODEC_ID_MP2, "MPEG layer II"),
        (id::CODEC_ID_AC3, "AC-3"),
        (id::CODEC_ID_EAC3, "E-AC-3"),
        (id::CODEC_ID_AC4, "AC-4"),
        (id::CODEC_ID_DCA, "DTS"),
        (id::CODEC_ID_WMA, "WMA"),
        (id::CODEC_ID_WAVPACK, "WavPack"),
        (id::CODEC_ID_MONKEYS_AUDIO, "Monkey's Audio"),
        (id::CODEC_ID_TTA, "TTA"),
        (id::CODEC_ID_TRUEHD, "TrueHD"),
        (id::CODEC_ID_SBC, "SBC"),
        (id::CODEC_ID_FLAC, "FLAC of an unusual kind"),
        (id::CODEC_ID_ALAC, "ALAC of an unusual kind"),
        (id::CODEC_ID_VORBIS, "Vorbis of an unusual kind"),
    ];
    known.into_iter().find(|(known, _)| *known == codec).map(|(_, name)| name)
}
