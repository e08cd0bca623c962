//! How whoever asks reads, signed in or not.

use crate::host::Host;
use crate::signed::Signed;
use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use sayso_web::reading::{self, Reader};
use sayso_wording::Locale;
use std::convert::Infallible;
use std::sync::Arc;

/// A reader, and who it is where someone is signed in.
pub struct Reads {
    /// How.
    pub locale: Locale,
    /// Who.
    pub signed: Option<Signed>,
}

impl FromRequestParts<Arc<Host>> for Reads {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &Arc<Host>) -> Result<Self, Infallible> {
        let signed = parts.extensions.get::<Signed>().cloned();
        let locale = match &signed {
            Some(signed) => signed.locale(&parts.headers),
            None => reading::locale(&parts.headers, None),
        };
        if let Some(reader) = parts.extensions.get::<Reader>() {
            reader.is(locale);
        }
        Ok(Self { locale, signed })
    }
}
