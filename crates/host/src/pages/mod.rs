//! Pages that a notebook at home does not have.

use crate::host::Host;
use axum::Router;
use std::sync::Arc;

/// All of them.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
}
