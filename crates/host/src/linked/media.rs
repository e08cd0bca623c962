//! Recordings of words and pictures of a home, by hash: only those that its cards name.

use super::who::{Refused, Who};
use crate::host::Host;
use axum::Json;
use axum::body::Bytes;
use axum::extract::rejection::BytesRejection;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::http::header::CONTENT_TYPE;
use axum::response::{IntoResponse, Response};
use sayso_linked::{letters, named};
use sayso_store::{ClipHash, MOST_CLIP_BYTES};
use sayso_web::Error;
use sayso_web::api::body_error;
use sayso_web::told::no_such_page;
use sayso_wording::words;
use std::collections::BTreeSet;
use std::sync::Arc;

/// What cards of the home name.
async fn on_cards(host: &Host, who: &Who) -> Result<BTreeSet<String>, Refused> {
    Ok(named(&*who.log(host).story(who.home()).await?, true, true))
}

/// Which of them are here.
///
/// # Errors
/// [`Refused`].
pub async fn list(State(host): State<Arc<Host>>, who: Who) -> Result<Json<letters::Media>, Refused> {
    let named = on_cards(&host, &who).await?;
    let here = who.log(&host).clips().await?.into_iter().map(|hash| hash.to_string());
    Ok(Json(letters::Media { hashes: here.filter(|hash| named.contains(hash)).collect() }))
}

/// Gives one.
///
/// # Errors
/// [`Refused`]; [`Error::NotFound`] where it is not here, or no card names it.
pub async fn get(State(host): State<Arc<Host>>, who: Who, Path(hash): Path<String>) -> Result<Response, Refused> {
    let hash = asked_for(&host, &who, &hash).await?;
    match who.log(&host).clip(&hash).await? {
        Some(bytes) => Ok(([(CONTENT_TYPE, "application/octet-stream")], bytes).into_response()),
        None => Err(no_such_page().await.into()),
    }
}

/// Takes one.
///
/// # Errors
/// [`Refused`]; [`Error::NotFound`] where no card names it; [`Error::BadRequest`] where the bytes are others.
pub async fn put(
    State(host): State<Arc<Host>>,
    who: Who,
    Path(hash): Path<String>,
    body: Result<Bytes, BytesRejection>,
) -> Result<StatusCode, Refused> {
    let hash = asked_for(&host, &who, &hash).await?;
    let bytes = body.map_err(|why| body_error(&why, MOST_CLIP_BYTES))?;
    if ClipHash::of(&bytes) != hash {
        return Err(Error::BadRequest(words!(errors::body_broke)).into());
    }
    who.log(&host).put_clip(bytes.to_vec()).await?;
    Ok(StatusCode::NO_CONTENT)
}

async fn asked_for(host: &Host, who: &Who, hash: &str) -> Result<ClipHash, Refused> {
    match hash.parse::<ClipHash>() {
        Ok(hash) if on_cards(host, who).await?.contains(hash.as_str()) => Ok(hash),
        _ => Err(no_such_page().await.into()),
    }
}
