//! The live pad.

pub mod drawn;
pub mod label;
mod mat;
pub mod now;
mod view;

use crate::page::AnimalPage;
use crate::state::AppState;
use axum::routing::get;
use axum::{Json, Router};
use maud::Markup;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/board", get(show))
}

async fn show(page: AnimalPage) -> Markup {
    view::view(&page)
}

/// The state of the pad as JSON, for a page that stays open.
pub async fn json(page: AnimalPage) -> Json<now::Now> {
    Json(now::now(&page))
}
