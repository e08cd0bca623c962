//! The sound of a recording: as browsers play it, and why one that was sent is refused.

use crate::error::Error;
use crate::page::Page;
use axum::body::{Body, Bytes};
use axum::extract::Path;
use axum::http::header::{ACCEPT_RANGES, CACHE_CONTROL, CONTENT_RANGE, CONTENT_TYPE, RANGE};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use sayso_notebook::NoSound;
use sayso_store::ClipHash;
use sayso_wording::{Locale, Message, words};

/// Name of the field that brings a sound.
pub const FIELD: &str = "sound";

/// A sound that cannot be taken, in words.
pub fn refused(why: NoSound, l: &Locale) -> Error {
    match why {
        NoSound::Store(e) => Error::from(e),
        other => Error::refused(FIELD, words!(faults::sound_unfit, why = other.say(l))),
    }
}

/// The sound of a recording that is on a card of this notebook.
pub async fn sound(page: Page, Path(hash): Path<String>, headers: HeaderMap) -> Result<Response, Error> {
    let missing = || Error::NotFound(words!(words::no_such_recording));
    let hash: ClipHash = hash.parse().map_err(|_| missing())?;
    if !page.story.clips().values().any(|c| c.sha256.eq_ignore_ascii_case(hash.as_str())) {
        return Err(missing());
    }
    let bytes = page.state.store.clip(&hash).await?.ok_or_else(missing)?;
    let kind = kind_of(&bytes);
    // The address is the hash of the content, so what it holds never changes.
    let always =
        [(CONTENT_TYPE, kind), (CACHE_CONTROL, "private, max-age=31536000, immutable"), (ACCEPT_RANGES, "bytes")];
    let asked = headers.get(RANGE).and_then(|r| r.to_str().ok()).and_then(|r| range(r, bytes.len()));
    Ok(match asked {
        // Some browsers play nothing that cannot be had in parts.
        Some((from, to)) => {
            let told = format!("bytes {from}-{to}/{}", bytes.len());
            let part = Bytes::from(bytes).slice(from..=to);
            (StatusCode::PARTIAL_CONTENT, always, [(CONTENT_RANGE, told)], Body::from(part)).into_response()
        }
        None => (always, bytes).into_response(),
    })
}

/// Media type by the first bytes.
fn kind_of(bytes: &[u8]) -> &'static str {
    match (bytes.get(..4), bytes.get(4..8)) {
        (Some(b"RIFF"), _) => "audio/wav",
        (Some(b"fLaC"), _) => "audio/flac",
        (Some(b"OggS"), _) => "audio/ogg",
        (Some(b"FORM"), _) => "audio/aiff",
        (Some(b"caff"), _) => "audio/x-caf",
        (Some(b"\x1a\x45\xdf\xa3"), _) => "audio/webm",
        (_, Some(b"ftyp")) => "audio/mp4",
        // Bare AAC begins like MP3, but names no layer.
        (Some([0xff, second, ..]), _) if second & 0xf6 == 0xf0 => "audio/aac",
        _ => "audio/mpeg",
    }
}

/// First and last byte of a single range that can be met (RFC 9110, section 14); any other is answered whole.
fn range(text: &str, length: usize) -> Option<(usize, usize)> {
    let (from, to) = text.strip_prefix("bytes=")?.split_once('-')?;
    let last = length.checked_sub(1)?;
    let (from, to) = match (from.trim(), to.trim()) {
        ("", n) => (length.saturating_sub(n.parse().ok()?), last),
        (from, "") => (from.parse().ok()?, last),
        (from, to) => (from.parse().ok()?, to.parse::<usize>().ok()?.min(last)),
    };
    (from <= to && from <= last).then_some((from, to))
}

#[cfg(test)]
mod tests {
    use super::{kind_of, range};

    #[test]
    fn browsers_are_told_what_a_recording_is() {
        for (bytes, kind) in [
            (&b"RIFF\x24\0\0\0WAVE"[..], "audio/wav"),
            (b"\0\0\0\x20ftypM4A ", "audio/mp4"),
            (b"\x1a\x45\xdf\xa3\x9f", "audio/webm"),
            (b"\xff\xf1\x60\x40", "audio/aac"),
            (b"\xff\xfb\x90\x64", "audio/mpeg"),
            (b"ID3\x04", "audio/mpeg"),
        ] {
            assert_eq!(kind_of(bytes), kind);
        }
    }

    #[test]
    fn only_ranges_that_can_be_met_are_cut() {
        assert_eq!(range("bytes=0-", 10), Some((0, 9)));
        assert_eq!(range("bytes=2-3", 10), Some((2, 3)));
        assert_eq!(range("bytes=-4", 10), Some((6, 9)));
        assert_eq!(range("bytes=5-99", 10), Some((5, 9)));
        for bad in ["bytes=10-", "bytes=4-2", "bytes=-", "bytes=a-b", "items=0-1", "bytes=0-1,3-4"] {
            assert_eq!(range(bad, 10), None, "{bad}");
        }
        assert_eq!(range("bytes=0-", 0), None);
    }
}
