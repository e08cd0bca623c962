//! Reading forms: unknown fields and wrong values are refused in words, never ignored.

use crate::error::Error;
use axum::extract::rejection::FormRejection;
use axum::extract::{FromRequest, Request};
use axum::http::{Method, StatusCode};
use sayso_wording::{Words, words};
use serde::de::DeserializeOwned;

/// A form (or, on GET, a query) whose type should carry `#[serde(deny_unknown_fields)]`.
///
/// Empty text fields arrive as empty strings; see [`optional`].
#[derive(Clone, Copy, Debug)]
pub struct Form<T>(pub T);

impl<T: DeserializeOwned, S: Send + Sync> FromRequest<S> for Form<T> {
    type Rejection = Error;

    async fn from_request(mut request: Request, state: &S) -> Result<Self, Error> {
        // Whoever asks for the head alone asks as for the page: by the query.
        if request.method() == Method::HEAD {
            *request.method_mut() = Method::GET;
        }
        let by_query = request.method().is_safe();
        match axum::Form::<T>::from_request(request, state).await {
            Ok(axum::Form(value)) => Ok(Self(value)),
            Err(_) if by_query => Err(Error::BadRequest(words!(errors::address_broken))),
            Err(FormRejection::InvalidFormContentType(_)) => Err(Error::BadRequest(words!(faults::form_expected))),
            Err(e) if e.status() == StatusCode::PAYLOAD_TOO_LARGE => Err(Error::TooLarge(crate::MOST_BODY)),
            Err(e) => {
                tracing::debug!("A form could not be read: {}", e.body_text());
                Err(Error::refused("form", words!(faults::form_broken)))
            }
        }
    }
}

/// Reads an optional field: empty means none.
///
/// # Errors
/// [`Error::Refused`] naming `field` where there is text that cannot be read.
pub fn optional<T>(field: &str, text: &str) -> Result<Option<T>, Error>
where
    T: std::str::FromStr,
{
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    text.parse().map(Some).map_err(|_| Error::refused(field, words!(faults::not_read, text = text.to_owned())))
}

/// Reads a needed value through its own checked constructor.
///
/// # Errors
/// [`Error::Refused`] naming `field`.
pub fn checked<T, E: Into<Words>>(field: &str, value: Result<T, E>) -> Result<T, Error> {
    value.map_err(|e| Error::refused(field, e))
}
