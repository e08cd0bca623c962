//! The recording of a word: taken in, checked at once, drawn and played.

use super::known;
use super::picture::drawn;
use crate::error::Error;
use crate::page::{AnimalPage, Page};
use axum::body::{Body, Bytes};
use axum::extract::{FromRequest, Multipart, Path, Request};
use axum::http::header::{ACCEPT_RANGES, CACHE_CONTROL, CONTENT_RANGE, CONTENT_TYPE, RANGE};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_listen::{Clip, ClipReport, check_clips};
use sayso_model::{ClipCard, WordCard};
use sayso_notebook::{NoSound, Recording, enrol, recordings};
use sayso_store::{ClipHash, MOST_CLIP_BYTES};
use sayso_wording::recording::{advice, make_it_out, measured};
use sayso_wording::{Locale, Message, say, words};

/// Largest request that brings a recording: the recording and the frame of a form around it.
pub const MOST_UPLOAD: usize = MOST_CLIP_BYTES + (64 << 10);

/// Name of the file's field in the form.
const FIELD: &str = "sound";

/// Takes a recording, as the body itself or as a form's file.
pub async fn take(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    request: Request,
) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    let bytes = sent(request).await?;
    if bytes.is_empty() {
        return Err(Error::refused(FIELD, words!(faults::no_sound_file)));
    }
    if bytes.len() > MOST_CLIP_BYTES {
        return Err(Error::TooLarge(MOST_CLIP_BYTES));
    }
    let store = &page.state.store;
    let done = enrol(store, page.home, &page.story, &card, bytes.to_vec()).await.map_err(|e| match e {
        NoSound::Store(e) => Error::from(e),
        other => Error::refused(FIELD, words!(faults::sound_unfit, why = other.say(&page.locale))),
    })?;
    let cards = done.cards.into_iter().map(|c| page.about_home(c)).collect();
    page.keep(cards).await?;
    Ok(Redirect::to(&format!("/a/{}/words/card/{}?kept=recording#recording", page.id, card.word)).into_response())
}

async fn sent(request: Request) -> Result<Bytes, Error> {
    let too_large = |status: StatusCode, text: String| match status {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_CLIP_BYTES),
        _ => Error::BadRequest(words!(errors::request_broken, why = text)),
    };
    let kind = request.headers().get(CONTENT_TYPE).and_then(|k| k.to_str().ok()).unwrap_or_default();
    if !kind.to_ascii_lowercase().starts_with("multipart/form-data") {
        return Bytes::from_request(request, &()).await.map_err(|e| too_large(e.status(), e.body_text()));
    }
    let mut form = Multipart::from_request(request, &()).await.map_err(|e| too_large(e.status(), e.body_text()))?;
    while let Some(field) = form.next_field().await.map_err(|e| too_large(e.status(), e.body_text()))? {
        if field.name() == Some(FIELD) {
            return field.bytes().await.map_err(|e| too_large(e.status(), e.body_text()));
        }
    }
    Ok(Bytes::new())
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

/// A recording of the word with what the check found.
struct Checked {
    recording: Recording,
    report: Option<ClipReport>,
    others: usize,
}

async fn checked(page: &AnimalPage, word: &WordCard) -> Result<Vec<Checked>, Error> {
    let all = recordings(&page.state.store, &page.story).await?;
    let (of_word, others): (Vec<_>, Vec<_>) = all.into_iter().partition(|r| r.card.word == word.word);
    if of_word.is_empty() {
        return Ok(Vec::new());
    }
    let work = tokio::task::spawn_blocking(move || {
        let others: Vec<Clip> = others.into_iter().filter_map(|r| r.sound.ok()).collect();
        of_word
            .into_iter()
            .map(|recording| {
                let report = recording.sound.as_ref().ok().map(|clip| {
                    let clips: Vec<Clip> = std::iter::once(clip).chain(&others).cloned().collect();
                    check_clips(&clips).swap_remove(0)
                });
                Checked { recording, report, others: others.len() }
            })
            .collect()
    });
    work.await.map_err(Error::internal)
}

/// The recording, its check and picture, and a form to replace it.
pub async fn section(page: &AnimalPage, card: &WordCard) -> Result<Markup, Error> {
    let all = checked(page, card).await?;
    let to = format!("/a/{}/words/card/{}/recording", page.id, card.word);
    let (l, name) = (&page.locale, page.card.name.as_str());
    Ok(html! {
        section #recording {
            h2 { (say!(l, words::recording)) }
            @if all.is_empty() { p { (say!(l, words::no_recording)) } }
            @for c in &all { (shown(l, name, c)) }
            div data-recorder="recording-form" data-test="recorder" .stack {}
            form #recording-form method="post" action=(to) enctype="multipart/form-data" .stack {
                div.field {
                    label for=(FIELD) { @if all.is_empty() { (say!(l, words::sound_file)) } @else { (say!(l, words::sound_file_other)) } }
                    span.hint #recording-hint { (say!(l, words::sound_file_hint)) }
                    input type="file" id=(FIELD) name=(FIELD) accept="audio/*,.wav,.m4a,.mp4,.aac,.opus,.ogg,.webm,.flac,.mp3,.aif,.aiff,.caf" aria-describedby="recording-hint" required;
                }
                button.wide { (say!(l, words::keep_and_check)) }
            }
            p data-test="make-it-out" { (make_it_out(l)) }
            p.quiet { (say!(l, words::record_softly, name = name)) }
        }
    })
}

fn shown(l: &Locale, name: &str, c: &Checked) -> Markup {
    let card = &c.recording.card;
    html! {
        @match (&c.recording.sound, &c.report) {
            (Ok(clip), Some(report)) => {
                p { (measured(l, report, c.others)) }
                @if report.findings.is_empty() { p { (say!(l, words::check_nothing)) } }
                @else { div.caution { strong { (say!(l, words::check_found)) } ul { @for f in &report.findings { li { (advice(l, f)) } } } } }
                (drawn(l, clip))
                audio controls preload="none" src=(format!("/clips/{}", card.sha256)) aria-label=(say!(l, words::recording_of, says = &c.recording.says)) {}
                p.hint { (say!(l, words::play_unheard, name = name)) }
            }
            (Err(NoSound::NotStored), _) => p { (not_stored(l, card)) },
            (Err(why), _) => p.caution { (say!(l, words::sound_unreadable, why = why.say(l))) },
            (Ok(_), None) => {}
        }
    }
}

fn not_stored(l: &Locale, card: &ClipCard) -> String {
    let seconds = l.number(card.seconds.get(), 1);
    match card.lufs {
        Some(lufs) => say!(l, words::sound_not_stored_lufs, seconds = seconds, lufs = l.number(lufs, 0)),
        None => say!(l, words::sound_not_stored, seconds = seconds),
    }
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
