//! Today: what to do now and why.

pub mod advice;
mod coach;
mod ration;
mod rows;
mod trial;
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
    Router::new().route("/a/{animal}/today", get(show))
}

async fn show(page: AnimalPage) -> Result<Markup, Error> {
    let kept = page.state.kept.today(page.home, &page.case());
    let today = (*kept).as_ref().ok_or_else(|| Error::NotFound(words!(errors::no_such_animal)))?;
    let title = say!(&page.locale, today::title, name = page.card.name.as_str());
    Ok(layout(&page, Tab::Today, &title, view::page(&page, today)))
}
