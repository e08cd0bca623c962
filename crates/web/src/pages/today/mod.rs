//! Today: what to do now and why.

pub mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{animal}/today", get(show))
}

async fn show(page: AnimalPage) -> Result<Markup, Error> {
    let kept = page.state.kept.today(page.home, &page.case());
    let today = (*kept).as_ref().ok_or_else(|| Error::NotFound("This notebook knows no such animal.".into()))?;
    let title = format!("Today with {}", page.card.name);
    Ok(layout(&page, Tab::Today, &title, view::page(&page, today)))
}
