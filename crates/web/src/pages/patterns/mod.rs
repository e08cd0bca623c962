//! Patterns: whether presses grow or fade, what changed with them, what follows what, slips, likes by the hour.

mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;
use sayso_wording::{say, words};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/patterns", get(show))
}

async fn show(page: AnimalPage) -> Result<Markup, Error> {
    let kept = page.state.kept.patterns(page.home, &page.case());
    let found = kept.as_ref().as_ref().ok_or_else(|| Error::NotFound(words!(patterns::no_animal)))?;
    let title = say!(&page.locale, patterns::of_animal, name = &found.name);
    Ok(layout(&page, Tab::Days, &title, view::page(&page, found)))
}
