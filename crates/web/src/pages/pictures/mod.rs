//! Pictures: taken in on the cards of animals, rewards and words, given out by their hash.

mod view;

pub use view::section;

use crate::error::Error;
use crate::page::{AnimalPage, Page};
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::body::Bytes;
use axum::extract::{DefaultBodyLimit, FromRequest, Multipart, Path, Request};
use axum::http::StatusCode;
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use sayso_model::{Event, PictureCard, PictureOf, RewardId, Unfit, WordId};
use sayso_notebook::{NoPicture, look, picture};
use sayso_store::ClipHash;
use sayso_wording::{pictures::unfit, say};

/// Largest request that brings a picture: a photo as a phone takes it is taken in, to be told in words that it is too large.
const MOST_UPLOAD: usize = 16 << 20;

/// Name of the file's field in the form.
pub const FIELD: &str = "picture";

/// Routes of pictures.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/pictures/{hash}", get(give))
        .route("/people/animal/{animal}/picture", post(of_animal))
        .route("/people/animal/{animal}/picture/remove", post(no_animal))
        .route("/people/reward/{reward}/picture", post(of_reward))
        .route("/people/reward/{reward}/picture/remove", post(no_reward))
        .route("/a/{animal}/words/card/{word}/picture", post(of_word))
        .route("/a/{animal}/words/card/{word}/picture/remove", post(no_word))
        .layer(DefaultBodyLimit::max(MOST_UPLOAD))
}

async fn of_animal(page: AnimalPage, request: Request) -> Result<Redirect, Error> {
    take(&page, PictureOf::Animal { animal: page.id }, request).await
}

async fn no_animal(page: AnimalPage) -> Result<Redirect, Error> {
    keep(&page, PictureCard { shows: PictureOf::Animal { animal: page.id }, picture: None }).await
}

fn reward(page: &Page, id: &str) -> Result<PictureOf, Error> {
    let reward: RewardId = named(id, "reward")?;
    if page.story.rewards().contains_key(&reward) { Ok(PictureOf::Reward { reward }) } else { Err(no_such(page)) }
}

async fn of_reward(page: Page, Path(id): Path<String>, request: Request) -> Result<Redirect, Error> {
    take(&page, reward(&page, &id)?, request).await
}

async fn no_reward(page: Page, Path(id): Path<String>) -> Result<Redirect, Error> {
    keep(&page, PictureCard { shows: reward(&page, &id)?, picture: None }).await
}

fn word(page: &Page, id: &str) -> Result<PictureOf, Error> {
    let word: WordId = named(id, "word")?;
    if page.story.words().contains_key(&word) { Ok(PictureOf::Word { word }) } else { Err(no_such(page)) }
}

async fn of_word(page: AnimalPage, Path((_, id)): Path<(String, String)>, request: Request) -> Result<Redirect, Error> {
    take(&page, word(&page, &id)?, request).await
}

async fn no_word(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Redirect, Error> {
    keep(&page, PictureCard { shows: word(&page, &id)?, picture: None }).await
}

fn no_such(page: &Page) -> Error {
    Error::NotFound(say!(&page.locale, pictures::no_such).into())
}

/// Takes a picture in, as the body itself or as a form's file.
async fn take(page: &Page, of: PictureOf, request: Request) -> Result<Redirect, Error> {
    let refused = |why: Unfit| Error::refused(FIELD, unfit(&page.locale, why));
    let bytes = sent(request).await?;
    let card = picture(&page.state.store, of, bytes.to_vec()).await.map_err(|e| match e {
        NoPicture::Unfit(why) => refused(why),
        NoPicture::Store(e) => Error::from(e),
        other => Error::internal(other),
    })?;
    keep(page, card).await
}

async fn keep(page: &Page, card: PictureCard) -> Result<Redirect, Error> {
    let of = card.shows;
    page.keep(vec![Event { animal: of.animal(), ..page.event(card) }]).await?;
    let back = match of {
        PictureOf::Animal { animal } => format!("/people/animal/{animal}"),
        PictureOf::Reward { reward } => format!("/people/reward/{reward}"),
        PictureOf::Word { .. } => page.path.split("/picture").next().unwrap_or("/").to_owned(),
    };
    Ok(Redirect::to(&format!("{back}#picture")))
}

async fn sent(request: Request) -> Result<Bytes, Error> {
    let told = |status: StatusCode, text: String| match status {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_UPLOAD),
        _ => Error::BadRequest(text.into()),
    };
    let kind = request.headers().get(CONTENT_TYPE).and_then(|k| k.to_str().ok()).unwrap_or_default();
    if !kind.to_ascii_lowercase().starts_with("multipart/form-data") {
        return Bytes::from_request(request, &()).await.map_err(|e| told(e.status(), e.body_text()));
    }
    let mut form = Multipart::from_request(request, &()).await.map_err(|e| told(e.status(), e.body_text()))?;
    while let Some(field) = form.next_field().await.map_err(|e| told(e.status(), e.body_text()))? {
        if field.name() == Some(FIELD) {
            return field.bytes().await.map_err(|e| told(e.status(), e.body_text()));
        }
    }
    Ok(Bytes::new())
}

/// A picture that is on a card of this notebook, whichever of its homes that is of.
async fn give(page: Page, Path(hash): Path<String>) -> Result<Response, Error> {
    let hash: ClipHash = hash.parse().map_err(|_| no_such(&page))?;
    let mut known = false;
    for home in &page.state.store.homes().await? {
        let story = page.state.store.story(*home).await?;
        known |= story.pictures().values().any(|p| p.sha256.eq_ignore_ascii_case(hash.as_str()));
    }
    let bytes = if known { page.state.store.clip(&hash).await? } else { None };
    let bytes = bytes.ok_or_else(|| no_such(&page))?;
    // A card may come from a file of somebody else's: what goes out is what the bytes are.
    let media_type = look(&bytes).map_err(|_| no_such(&page))?.media_type;
    let always = [(CONTENT_TYPE, media_type.name()), (CACHE_CONTROL, "private, max-age=31536000, immutable")];
    Ok((always, bytes).into_response())
}
