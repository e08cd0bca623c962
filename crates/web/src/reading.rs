//! In whose language a page is written.

use crate::cookie::cookie;
use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::header::ACCEPT_LANGUAGE;
use axum::http::request::Parts;
use sayso_model::{Language, PersonCard};
use sayso_wording::Locale;
use std::convert::Infallible;

/// Name of the cookie that says which language this device is read in, for whoever has not chosen on their own card.
pub const LANGUAGE_COOKIE: &str = "sayso_language";

/// The value of the cookie that stands for the stand-in language of the layout's tests.
const PSEUDO: &str = "pseudo";

/// How whoever asks reads: as their card says, else the device, else the browser.
#[must_use]
pub fn locale(headers: &HeaderMap, person: Option<&PersonCard>) -> Locale {
    let device = cookie(headers, LANGUAGE_COOKIE);
    if device == Some(PSEUDO) {
        return Locale::PSEUDO;
    }
    let browser = headers.get(ACCEPT_LANGUAGE).and_then(|value| value.to_str().ok());
    // A language that the device was given comes before the browser's.
    let known = device.and_then(Language::of_tag).map(Language::tag);
    Locale::chosen(person, known.or(browser))
}

/// How whoever asks reads, on pages without a home.
pub struct Reads(pub Locale);

impl<S: Send + Sync> FromRequestParts<S> for Reads {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Self(locale(&parts.headers, None)))
    }
}
