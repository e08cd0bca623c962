//! Who asks for a page that an empty notebook has, too: what comes into it begins it.

use crate::error::Error;
use crate::layout::{Tab, bare, layout};
use crate::page::Page;
use crate::reading::locale;
use crate::state::AppState;
use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use maud::Markup;
use sayso_model::Zone;
use sayso_wording::Locale;

/// A page of a home, or, in an empty notebook, no page yet.
pub struct Visitor {
    /// The notebook.
    pub state: AppState,
    /// How whoever asks reads.
    pub locale: Locale,
    /// What a page of its home knows.
    pub page: Option<Box<Page>>,
}

impl FromRequestParts<AppState> for Visitor {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &AppState) -> Result<Self, Error> {
        let page = match Page::from_request_parts(parts, state).await {
            Ok(page) => Some(Box::new(page)),
            Err(Error::NoHome) => None,
            Err(other) => return Err(other),
        };
        let locale = page.as_ref().map_or_else(|| locale(&parts.headers, None), |page| page.locale);
        Ok(Self { state: state.clone(), locale, page })
    }
}

impl Visitor {
    /// A page of these words.
    pub fn framed(&self, title: &str, body: Markup) -> Markup {
        match &self.page {
            Some(page) => layout(page, Tab::People, title, body),
            None => bare(&self.locale, title, body),
        }
    }

    /// The home's zone, where there is one.
    pub fn zone(&self) -> Zone {
        self.page.as_ref().map_or_else(Zone::utc, |page| page.zone.clone())
    }
}
