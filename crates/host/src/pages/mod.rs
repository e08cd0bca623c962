//! Pages that a notebook at home does not have.

mod account;
mod calendar;
mod club;
mod colleagues;
pub(crate) mod desk;
mod homes;
mod invited;
mod join;
mod letters;
mod notebooks;
mod programmes;
mod said;
mod server;
mod sharing;
pub(crate) mod shut;
mod sign_in;

use crate::host::Host;
use axum::Router;
use std::sync::Arc;

/// All of them.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .merge(sign_in::router())
        .merge(join::router())
        .merge(account::router())
        .merge(homes::router())
        .merge(sharing::router())
        .merge(notebooks::router())
        .merge(server::router())
        .merge(club::router())
        .merge(desk::router())
        .merge(colleagues::router())
        .merge(programmes::router())
        .merge(calendar::router())
        .merge(letters::router())
}
