//! The pages, the HTTP API and the small client for the pad.
//!
//! Reads come from the story the store tells; every write is an event. A page is one folder under `pages` with its
//! own router; `app` merges them and lays access, error pages and headers around all.

pub mod access;
pub mod api;
pub mod assets;
pub mod brought;
pub mod cautions;
pub mod chart;
mod compressing;
pub mod computing;
pub mod connections;
mod cookie;
pub mod device;
pub mod download;
pub mod error;
pub mod fields;
pub mod form;
mod fresh;
pub mod home_label;
pub mod kept;
pub mod layout;
pub mod leave;
pub mod linking;
pub mod listening;
pub mod news;
mod norms;
pub mod page;
pub mod pages;
pub mod picture;
pub mod reading;
pub mod rich;
pub mod secure;
pub mod serve;
pub mod state;
pub mod store;
pub mod told;
pub mod typed;
mod visitor;

pub use error::Error;
pub use layout::{Tab, layout};
pub use page::{AnimalPage, Page};
pub use serve::{Config, Opened, ServeError, address, serve};
pub use state::AppState;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::middleware::{from_fn, from_fn_with_state};

/// Largest body of a request, in bytes, where a route does not say otherwise.
pub const MOST_BODY: usize = 1 << 20;

/// The whole application for one notebook at home.
pub fn app(state: AppState) -> Router {
    let door = from_fn_with_state(state.clone(), access::guard);
    let house = rooms()
        .merge(assets::router())
        .merge(access::router())
        .merge(linking::router())
        .fallback(told::no_such_page)
        .layer(door);
    around(house).with_state(state)
}

/// Pages and API of a notebook, without a door: for whoever puts a door of their own before them.
pub fn rooms() -> Router<AppState> {
    Router::new()
        .merge(pages::router().layer(from_fn(computing::aside)))
        .merge(pages::exchange::router().layer(from_fn(computing::apart)))
        .nest("/api", api::router())
        .layer(DefaultBodyLimit::max(MOST_BODY))
}

/// Pages that hold nothing of any home: lessons, the glossary, how figures are computed, rehearsals. For whoever belongs to none; at
/// home, and in a home, they are among [`rooms`].
pub fn common_rooms() -> Router<AppState> {
    pages::common().layer(from_fn(computing::aside)).layer(DefaultBodyLimit::max(MOST_BODY))
}

/// What every answer gets, whoever gives it: errors in words, headers, compression.
pub fn around<S: Clone + Send + Sync + 'static>(house: Router<S>) -> Router<S> {
    house.layer(from_fn(told::in_words)).layer(from_fn(access::headers)).layer(compressing::layer())
}
