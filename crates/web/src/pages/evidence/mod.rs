//! Evidence: what the records say of each word, and what they do not.

mod overview;
mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::extract::{Path, State};
use axum::routing::get;
use maud::Markup;
use sayso_model::WordId;
use sayso_wording::{say, words};
use std::collections::HashMap;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/evidence", get(list)).route("/a/{animal}/evidence/{word}", get(word))
}

async fn list(State(state): State<AppState>, page: AnimalPage) -> Result<Markup, Error> {
    let case = page.case();
    let (rows, words) = (state.kept.overview(page.home, &case), state.kept.standings(page.home, &case));
    let title = say!(&page.locale, evidence::title);
    Ok(layout(&page, Tab::Evidence, &title, overview::overview(&page, &rows, &words)))
}

async fn word(
    State(state): State<AppState>,
    page: AnimalPage,
    Path(path): Path<HashMap<String, String>>,
) -> Result<Markup, Error> {
    let missing = || Error::NotFound(words!(evidence::no_such_word, name = page.card.name.to_string()));
    let id: WordId = path.get("word").and_then(|w| w.parse().ok()).ok_or_else(missing)?;
    let kept = state.kept.evidence(page.home, &page.case(), id);
    let (Some(found), causes) = &*kept else { return Err(missing()) };
    let title = say!(&page.locale, evidence::of_word, word = &found.standing.says);
    Ok(layout(&page, Tab::Evidence, &title, view::word(&page, found, causes)))
}
