//! Pages that a notebook at home does not have.

mod club;
mod homes;
mod invited;
mod said;
mod server;
mod sharing;

use crate::host::Host;
use axum::Router;
use std::sync::Arc;

/// All of them.
pub fn router() -> Router<Arc<Host>> {
    Router::new().merge(homes::router()).merge(sharing::router()).merge(server::router()).merge(club::router())
}
