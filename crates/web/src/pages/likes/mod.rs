//! What an animal likes: tests held at its side, and what they tell so far.

mod begin;
mod history;
mod noted;
mod ranking;
mod test;
mod trial;
mod view;

pub use begin::address;
pub use ranking::ranking;
pub use test::answered;

use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::{get, post};
use maud::Markup;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/likes", get(show))
        .route("/a/{animal}/likes/new", get(begin::ask).post(begin::begin))
        .route("/a/{animal}/likes/pair", post(begin::pair))
        .route("/a/{animal}/likes/test/{assessment}", get(test::show))
        .route("/a/{animal}/likes/test/{assessment}/trial", post(trial::note))
        .route("/a/{animal}/likes/test/{assessment}/undo", post(trial::undo))
}

async fn show(page: AnimalPage) -> Markup {
    view::view(&page)
}
