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
use crate::way;
use axum::Router;
use axum::middleware::from_fn_with_state;
use std::sync::Arc;

/// All of them.
pub fn router(host: &Arc<Host>) -> Router<Arc<Host>> {
    let of_a_home = Router::new().merge(sharing::router()).merge(notebooks::router()).merge(calendar::router());
    Router::new()
        .merge(sign_in::router())
        .merge(join::router())
        .merge(account::router())
        .merge(homes::router())
        .merge(of_a_home.route_layer(from_fn_with_state(Arc::clone(host), way::to_named)))
        .merge(server::router())
        .merge(club::router())
        .merge(desk::router())
        .merge(colleagues::router())
        .merge(programmes::router())
        .merge(letters::router())
}
