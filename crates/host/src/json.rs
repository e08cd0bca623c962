//! What scripts send.

use axum::Json;
use axum::extract::{FromRequest, Request};
use sayso_web::Error;
use sayso_wording::words;
use serde::Deserialize;
use serde::de::DeserializeOwned;

/// A question with which nothing is sent: who asks is known by the session, or is nobody yet.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Nothing {}

/// A JSON body; one that cannot be read is refused in words.
pub struct Sent<T>(pub T);

impl<T: DeserializeOwned, S: Send + Sync> FromRequest<S> for Sent<T> {
    type Rejection = Error;

    async fn from_request(request: Request, state: &S) -> Result<Self, Error> {
        match Json::<T>::from_request(request, state).await {
            Ok(Json(value)) => Ok(Self(value)),
            Err(why) => Err(Error::BadRequest(words!(errors::request_broken, why = why.body_text()))),
        }
    }
}
