//! The HTTP API: the same actions as the pages, as JSON.

use crate::state::AppState;
use axum::Router;

/// Routes below `/api`.
pub fn router() -> Router<AppState> {
    Router::new().fallback(crate::error::no_such_page)
}
