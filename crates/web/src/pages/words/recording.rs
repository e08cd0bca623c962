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
use sayso_model::WordCard;
use sayso_notebook::{NoSound, Recording, enrol, recordings};
use sayso_store::{ClipHash, MOST_CLIP_BYTES};
use sayso_wording::Locale;
use sayso_wording::recording::{advice, make_it_out, measured};

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
        return Err(Error::refused(FIELD, "is missing; choose a sound file (WAV, FLAC, Ogg Vorbis or MP3)"));
    }
    if bytes.len() > MOST_CLIP_BYTES {
        return Err(Error::TooLarge(MOST_CLIP_BYTES));
    }
    let store = &page.state.store;
    let done = enrol(store, page.home, &page.story, &card, bytes.to_vec()).await.map_err(|e| match e {
        NoSound::Store(e) => Error::from(e),
        other => Error::refused(FIELD, format!("cannot be used: {other}")),
    })?;
    let cards = done.cards.into_iter().map(|c| page.about_home(c)).collect();
    page.keep(cards).await?;
    Ok(Redirect::to(&format!("/a/{}/words/card/{}?kept=recording#recording", page.id, card.word)).into_response())
}

async fn sent(request: Request) -> Result<Bytes, Error> {
    let too_large = |status: StatusCode, text: String| match status {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_CLIP_BYTES),
        _ => Error::BadRequest(text.into()),
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
    let missing = || Error::NotFound("There is no such recording here.".into());
    let hash: ClipHash = hash.parse().map_err(|_| missing())?;
    if !page.story.clips().values().any(|c| c.sha256.eq_ignore_ascii_case(hash.as_str())) {
        return Err(missing());
    }
    let bytes = page.state.store.clip(&hash).await?.ok_or_else(missing)?;
    let kind = match bytes.get(..4) {
        Some(b"RIFF") => "audio/wav",
        Some(b"fLaC") => "audio/flac",
        Some(b"OggS") => "audio/ogg",
        _ => "audio/mpeg",
    };
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
    Ok(html! {
        section #recording {
            h2 { "Recording" }
            @if all.is_empty() { p { "No recording is kept here. The one on the button is enough to begin: record softly, one word, in a usual voice, away from noise. With the same sound kept here, presses can be heard by a microphone." } }
            @for c in &all { (shown(&page.locale, c)) }
            div data-recorder="recording-form" data-test="recorder" .stack {}
            form #recording-form method="post" action=(to) enctype="multipart/form-data" .stack {
                div.field {
                    label for=(FIELD) { @if all.is_empty() { "Sound file" } @else { "Another sound file in its place" } }
                    span.hint #recording-hint { "WAV, FLAC, Ogg Vorbis or MP3; the very sound that is on the button" }
                    input type="file" id=(FIELD) name=(FIELD) accept="audio/*,.wav,.flac,.ogg,.mp3" aria-describedby="recording-hint" required;
                }
                button.wide { "Keep and check it" }
            }
            p data-test="make-it-out" { (make_it_out(&page.locale)) }
            p.quiet { "A loud replay close to the ear can frighten or harm: record softly and let the animal approach." }
        }
    })
}

fn shown(l: &Locale, c: &Checked) -> Markup {
    let card = &c.recording.card;
    html! {
        @match (&c.recording.sound, &c.report) {
            (Ok(clip), Some(report)) => {
                p { (measured(l, report, c.others)) }
                @if report.findings.is_empty() { p { "Nothing to object to." } }
                @else { div.caution { strong { "The check found:" } ul { @for f in &report.findings { li { (advice(l, f)) } } } } }
                (drawn(clip))
                audio controls preload="none" src=(format!("/clips/{}", card.sha256)) aria-label=(format!("Recording of {}", c.recording.says)) {}
                p.hint { "Play it where the animal does not hear it: a word that sounds and brings nothing teaches that it means nothing." }
            }
            (Err(NoSound::NotStored), _) => p { (format!("{:.1}", card.seconds.get())) " s long"
                @if let Some(lufs) = card.lufs { ", loudness " (format!("{lufs:.0}")) " LUFS" } ". Its sound file is not stored here." },
            (Err(why), _) => p.caution { "Its sound cannot be read: " (why) },
            (Ok(_), None) => {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::range;

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
