//! Signing in with a passkey: the script asks for a challenge, and brings the device's answer to it.

use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::json::{Nothing, Sent};
use crate::noted;
use crate::onward::Led;
use crate::reader::Reads;
use crate::signed::begun;
use axum::Json;
use axum::extract::{Extension, State};
use axum::http::HeaderMap;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Response};
use sayso_people::{CeremonyId, OsSecrets};
use sayso_web::Error;
use sayso_web::device::kind_of;
use sayso_wording::words;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use webauthn_rs_proto::{PublicKeyCredential, PublicKeyCredentialRequestOptions};

/// What the device is asked.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Question {
    ceremony: CeremonyId,
    public_key: PublicKeyCredentialRequestOptions,
}

pub async fn ask(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    Sent(Nothing {}): Sent<Nothing>,
) -> Result<Json<Question>, Error> {
    let begun = host.people.begin_sign_in(&host.passkeys, &from, host.now(), &mut OsSecrets).await;
    let (ceremony, asked) = begun.map_err(told)?;
    Ok(Json(Question { ceremony, public_key: asked.public_key }))
}

/// What it answered, and where to go then.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Answer {
    ceremony: CeremonyId,
    answer: PublicKeyCredential,
    to: Option<String>,
}

pub async fn answered(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    Sent(Answer { ceremony, answer, to }): Sent<Answer>,
) -> Result<Response, Error> {
    let (passkeys, device, now) = (&host.passkeys, kind_of(&headers), host.now());
    let finished = host.people.finish_sign_in(passkeys, ceremony, &answer, device, now, &mut OsSecrets).await;
    // Whichever it is, a key that was removed, one that was copied (its count went back) or a question too long ago: nothing else is told.
    let known = |why| match why {
        sayso_people::Error::NotValid => Error::Forbidden(words!(sign_in::passkey_unknown)),
        other => told(other),
    };
    let (session, token) = noted::sign_in("passkey", &from, finished).map_err(known)?;
    let cookie = begun(&host, reads.signed.as_ref(), &token).await?;
    Ok(([(SET_COOKIE, cookie)], Json(Led::signed_in(&host, &session, to).await?)).into_response())
}
