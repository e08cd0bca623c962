//! The recordings of a word: taken in, checked at once, drawn and played, in use or not.

use super::clip::{FIELD, refused};
use super::picture::drawn;
use super::{known, proof};
use crate::error::Error;
use crate::page::AnimalPage;
use crate::reading::asks_json;
use crate::typed::{Typed, named};
use axum::Json;
use axum::body::Bytes;
use axum::extract::{FromRequest, Multipart, Path, Query, Request};
use axum::http::StatusCode;
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_listen::{Clip, ClipReport, check_clips};
use sayso_model::{ClipCard, ClipId, WordCard};
use sayso_notebook::{NoSound, Recording, Replaces, enrol, recordings};
use sayso_people::Capability;
use sayso_store::MOST_CLIP_BYTES;
use sayso_wording::recording::{advice, make_it_out, measured};
use sayso_wording::{Locale, Message, say, words};
use serde::{Deserialize, Serialize};

/// Largest request that brings a recording: the recording and the frame of a form around it.
pub const MOST_UPLOAD: usize = MOST_CLIP_BYTES + (64 << 10);

/// Name of the field that says what the recording replaces.
const REPLACES: &str = "replaces";
/// Its value for a button beside those there are; else it is the id of a recording, or empty for all of them.
const NONE: &str = "none";

/// What came with a recording.
#[derive(Default, Deserialize)]
pub struct Sent {
    #[serde(skip)]
    sound: Bytes,
    #[serde(default)]
    replaces: String,
}

/// What is told of a recording that was kept, to a script.
#[derive(Serialize)]
struct Told {
    /// Which.
    clip: ClipId,
    /// What the check found, with what to do.
    findings: Vec<String>,
}

/// Takes a recording, as the body itself or as a form's file; answers scripts that ask for JSON with what was found.
pub async fn take(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Sent>,
    request: Request,
) -> Result<Response, Error> {
    let card = known(&page, &id)?;
    let json = asks_json(request.headers());
    let sent = sent(asked, request).await?;
    if sent.sound.is_empty() {
        return Err(Error::refused(FIELD, words!(faults::no_sound_file)));
    }
    if sent.sound.len() > MOST_CLIP_BYTES {
        return Err(Error::TooLarge(MOST_CLIP_BYTES));
    }
    let replaces = replaces(&page, &card, &sent.replaces)?;
    let store = &page.state.store;
    let done = enrol(store, page.home, &page.story, &card, sent.sound.to_vec(), replaces).await;
    let done = done.map_err(|e| refused(e, &page.locale))?;
    let cards = done.cards.into_iter().map(|c| page.about_home(c)).collect();
    page.keep(cards).await?;
    if json {
        let findings = done.report.findings.iter().map(|f| advice(&page.locale, f)).collect();
        return Ok(Json(Told { clip: done.clip, findings }).into_response());
    }
    Ok(Redirect::to(&format!("/a/{}/words/card/{}?kept=recording#recording", page.id, card.word)).into_response())
}

fn replaces(page: &AnimalPage, word: &WordCard, said: &str) -> Result<Replaces, Error> {
    match said {
        "" => Ok(Replaces::All),
        NONE => Ok(Replaces::None),
        id => Ok(Replaces::One(of_word(page, word, id)?.clip)),
    }
}

/// A recording of the word by its id, in use or not.
fn of_word(page: &AnimalPage, word: &WordCard, id: &str) -> Result<ClipCard, Error> {
    let id: ClipId = named(id, "recording")?;
    let card = page.story.clips().get(&id).filter(|c| c.word == word.word).map(|c| (*c).clone());
    card.ok_or_else(|| Error::NotFound(words!(words::no_such_recording)))
}

/// Puts a recording out of use, or back into use beside the others; it stays in the notebook either way.
pub async fn put(
    page: AnimalPage,
    Path((_, id, clip)): Path<(String, String, String)>,
    typed: Typed,
) -> Result<Redirect, Error> {
    let word = known(&page, &id)?;
    let card = of_word(&page, &word, &clip)?;
    let active = typed.only(&["active"])?.ticked("active");
    if active != card.active {
        page.keep(vec![page.about_home(ClipCard { active, ..card })]).await?;
    }
    Ok(Redirect::to(&format!("/a/{}/words/card/{}#recording", page.id, word.word)))
}

async fn sent(asked: Sent, request: Request) -> Result<Sent, Error> {
    let too_large = |status: StatusCode, text: String| match status {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_CLIP_BYTES),
        _ => Error::BadRequest(words!(errors::request_broken, why = text)),
    };
    let kind = request.headers().get(CONTENT_TYPE).and_then(|k| k.to_str().ok()).unwrap_or_default();
    if !kind.to_ascii_lowercase().starts_with("multipart/form-data") {
        let sound = Bytes::from_request(request, &()).await.map_err(|e| too_large(e.status(), e.body_text()))?;
        return Ok(Sent { sound, ..asked });
    }
    let mut form = Multipart::from_request(request, &()).await.map_err(|e| too_large(e.status(), e.body_text()))?;
    let mut sent = asked;
    while let Some(field) = form.next_field().await.map_err(|e| too_large(e.status(), e.body_text()))? {
        match field.name() {
            Some(FIELD) => sent.sound = field.bytes().await.map_err(|e| too_large(e.status(), e.body_text()))?,
            Some(REPLACES) => sent.replaces = field.text().await.map_err(|e| too_large(e.status(), e.body_text()))?,
            _ => {}
        }
    }
    Ok(sent)
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

/// The recordings, their check and picture, the proof of them, and a form for another.
pub async fn section(page: &AnimalPage, card: &WordCard, kept: bool) -> Result<Markup, Error> {
    let all = checked(page, card).await?;
    let to = format!("/a/{}/words/card/{}/recording", page.id, card.word);
    let (l, name) = (&page.locale, page.card.name.as_str());
    let several = all.len() > 1;
    Ok(html! {
        section #recording {
            h2 { (say!(l, words::recording)) }
            p data-test="only-the-button" { (say!(l, enrol::only_the_button)) }
            @if all.is_empty() { p { (say!(l, words::no_recording)) } }
            @else { (proof::section(page, card, kept)) }
            @for (i, c) in all.iter().enumerate() {
                @if several { h3 { (say!(l, enrol::button_of, number = i + 1, of = all.len())) } }
                (shown(l, name, c))
                @if several { (put_form(l, page, &c.recording.card, false)) }
            }
            @if all.is_empty() { (taking(page, &to, &all)) }
            @else { details { summary data-test="record-more" { (say!(l, enrol::record_again)) } (taking(page, &to, &all)) } }
            (former(page, card))
            @if page.may(Capability::ChangeCards) { p { a.link href=(format!("/a/{}/words/record", page.id)) { (say!(l, enrol::all_link)) } } }
            p data-test="make-it-out" { (make_it_out(l)) }
            p.quiet { (say!(l, words::record_softly, name = name)) }
        }
    })
}

/// A recorder and a form for a file, with what the recording replaces where there are others.
fn taking(page: &AnimalPage, to: &str, all: &[Checked]) -> Markup {
    let l = &page.locale;
    html! {
        div data-recorder="recording-form" data-test="recorder" .stack {}
        form #recording-form method="post" action=(to) enctype="multipart/form-data" .stack {
            @if !all.is_empty() {
                fieldset {
                    legend { (say!(l, enrol::which_button)) }
                    @if let [only] = all { (choice(&only.recording.card.clip.to_string(), true, &say!(l, enrol::replaces))) }
                    @else {
                        @for (i, c) in all.iter().enumerate() {
                            (choice(&c.recording.card.clip.to_string(), i == 0, &say!(l, enrol::replaces_button, number = i + 1)))
                        }
                    }
                    (choice(NONE, false, &say!(l, enrol::another_button)))
                }
            }
            div.field {
                label for=(FIELD) { (say!(l, words::sound_file)) }
                span.hint #recording-hint { (say!(l, words::sound_file_hint)) }
                input type="file" id=(FIELD) name=(FIELD) accept="audio/*,.wav,.m4a,.mp4,.aac,.opus,.ogg,.webm,.flac,.mp3,.aif,.aiff,.caf" aria-describedby="recording-hint" required;
            }
            button.wide { (say!(l, words::keep_and_check)) }
        }
    }
}

fn choice(value: &str, chosen: bool, says: &str) -> Markup {
    html! { label { input type="radio" name=(REPLACES) value=(value) checked[chosen] data-test=(format!("replaces-{}", if value == NONE { NONE } else { "one" })); span { (says) } } }
}

/// Recordings that are no longer in use, newest card last known.
fn former(page: &AnimalPage, word: &WordCard) -> Markup {
    let l = &page.locale;
    let mut all: Vec<&ClipCard> =
        page.story.clips().into_values().filter(|c| !c.active && c.word == word.word).collect();
    all.sort_by_key(|c| c.clip);
    html! {
        @if !all.is_empty() {
            details data-test="former" {
                summary { (say!(l, enrol::former, count = all.len())) }
                @for card in all {
                    audio controls preload="none" src=(format!("/clips/{}", card.sha256)) aria-label=(say!(l, words::recording_of, says = &word.says)) {}
                    (put_form(l, page, card, true))
                }
            }
        }
    }
}

fn put_form(l: &Locale, page: &AnimalPage, card: &ClipCard, active: bool) -> Markup {
    html! {
        form method="post" action=(format!("/a/{}/words/card/{}/recording/{}", page.id, card.word, card.clip)) {
            @if active { input type="hidden" name="active" value="yes"; button { (say!(l, enrol::use_again)) } }
            @else { button { (say!(l, enrol::take_out)) } }
        }
    }
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
