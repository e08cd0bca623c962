//! Listening through this device's microphone: the switch, on a page of its own and on the Board.

mod ear;
mod last;
mod view;

pub use last::recorded;
pub use view::switch;

use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::routing::get;
use maud::Markup;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/listen", get(show))
        .route("/a/{animal}/ear", get(ear::vocabulary))
        .route("/a/{animal}/ear/last", get(last::json))
        .route("/a/{animal}/ear/{clip}", get(ear::clip))
}

async fn show(page: AnimalPage) -> Markup {
    view::view(&page)
}
