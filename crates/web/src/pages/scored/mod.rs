//! What one scored oneself, for whoever scores without seeing what others scored, and what there is to score now.

mod under_way;
mod view;

pub use under_way::under_way;

use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/scored", get(view::view))
}

/// Its address.
fn address(page: &AnimalPage) -> String {
    format!("/a/{}/scored", page.id)
}
