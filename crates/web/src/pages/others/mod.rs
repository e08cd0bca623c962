//! Others: how it went in other homes, beside this animal's own records. What is usual, never a rank.

mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;
use sayso_wording::say;

pub use view::{of_word, usual};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/others", get(show))
}

async fn show(page: AnimalPage) -> Result<Markup, Error> {
    let summaries = page.state.kept.summaries(page.home, &page.case());
    let title = say!(&page.locale, others::title);
    Ok(layout(&page, Tab::Evidence, &title, view::page(&page, &summaries)))
}
