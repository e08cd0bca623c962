//! A server of many homes: the door (who asks, and may they?), the way to each home's rooms, and the pages that a notebook at
//! home does not have (signing in, joining, the account, who sees what, the server).
//!
//! The rooms themselves are those of `web`: a home on a server has the same pages as one in a folder. Every address of
//! theirs stands in one table with what it takes ([`asked`]); what does not stand there is closed.

pub mod asked;
mod asker;
mod config;
mod door;
mod events;
mod fault;
mod gate;
mod host;
mod inside;
mod json;
mod mailing;
pub mod pages;
mod place;
mod qr;
mod reader;
mod rooms;
mod serve;
mod signed;
mod stories;
mod sweep;
mod to_home;
mod way;

pub use config::{HostConfig, HostOpened, Mail};
pub use fault::HostError;
pub use host::Host;
pub use serve::host;
pub use signed::{SESSION_COOKIE, Signed};

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware::from_fn_with_state;
use axum::routing::post;
use std::sync::Arc;

/// The whole application of a server.
pub fn app(host: Arc<Host>) -> Router {
    let house = Router::new()
        .merge(pages::router())
        .route("/api/events", post(events::append).fallback(way::home))
        .fallback(way::home)
        .layer(DefaultBodyLimit::max(sayso_web::MOST_BODY))
        .layer(from_fn_with_state(Arc::clone(&host), door::guard))
        .merge(sayso_web::assets::router());
    sayso_web::around(house).with_state(host)
}
