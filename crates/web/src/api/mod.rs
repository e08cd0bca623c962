//! The HTTP API: the same actions as the pages, as JSON.

mod events;

use crate::state::AppState;
use axum::Router;
use axum::routing::get;

/// Routes below `/api`.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/events", get(events::list).post(events::append))
        .route("/board/{learner}", get(crate::pages::board::json))
        .fallback(crate::error::no_such_page)
}
