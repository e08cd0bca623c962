//! One folder a page: its handlers and router in `mod.rs`, its markup in `view.rs`. A new page is one line here.

pub mod agreement;
pub mod board;
pub mod checks;
pub mod days;
pub mod designs;
pub mod earlier;
pub mod evidence;
pub mod exchange;
pub mod front;
pub mod glossary;
pub mod heard;
pub mod homes;
pub mod homescreen;
pub mod kit;
pub mod learn;
pub mod likes;
pub mod listen;
pub mod log;
pub mod methods;
pub mod others;
pub mod patterns;
pub mod people;
pub mod pictures;
pub mod rehearse;
pub mod scored;
pub mod sheets;
pub mod start;
pub mod swaps;
pub mod talk;
pub mod today;
pub mod who;
pub mod words;

use crate::state::AppState;
use axum::Router;
use axum::middleware::from_fn;
use axum::routing::get;

/// Those that hold nothing of a home.
pub fn common() -> Router<AppState> {
    Router::new().merge(learn::router()).merge(rehearse::router()).merge(methods::router()).merge(glossary::router())
}

/// All pages, but for those of [`exchange`], which wait for nothing that the others wait for.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/", get(front::front))
        .merge(board::router())
        .merge(start::router())
        .merge(people::router())
        .merge(pictures::router())
        .merge(likes::router())
        .merge(who::router())
        .merge(log::router())
        .merge(today::router())
        .merge(evidence::router())
        .merge(checks::router())
        .merge(designs::router())
        .merge(swaps::router())
        .merge(heard::router())
        .merge(homes::router())
        .merge(kit::router())
        .merge(common())
        .merge(listen::router())
        .merge(agreement::router())
        .merge(days::router())
        .merge(patterns::router())
        .merge(others::router())
        .merge(words::router())
        .merge(talk::router())
        .merge(scored::router())
        .merge(sheets::router())
        .merge(homescreen::router())
        .merge(earlier::router())
        .layer(from_fn(homescreen::remember))
}
