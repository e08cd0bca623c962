//! The HTTP API: the same actions as the pages, as JSON.

mod events;
mod evidence;
mod exchange;
pub mod openapi;
mod view;

pub use events::{Brought, MOST_EVENTS, Outcome, body_error, plan_refused};

use crate::state::AppState;
use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware::from_fn;
use axum::routing::{any, get, post};

/// Routes below `/api`.
pub fn router() -> Router<AppState> {
    let imports = Router::new()
        .route("/import/preview", post(exchange::preview))
        .route("/import/commit", post(exchange::commit))
        .layer(DefaultBodyLimit::max(exchange::MOST_IMPORT));
    let exports =
        Router::new().route("/export.jsonl", get(exchange::json_lines)).route("/export.csv", get(exchange::csv));
    Router::new()
        .route("/", get(view::show))
        .route("/openapi.json", get(openapi::show))
        .route("/events", get(events::list).post(events::append))
        .route("/board/{animal}", get(crate::pages::board::json).layer(from_fn(crate::computing::aside)))
        // Any method: over HTTP/2 a web socket is opened by CONNECT (RFC 8441).
        .route("/listen/{animal}", any(crate::listening::open))
        .route("/evidence/{animal}", get(evidence::show).layer(from_fn(crate::computing::aside)))
        .merge(imports.merge(exports).layer(from_fn(crate::computing::apart)))
        .fallback(crate::told::no_such_page)
}
