//! Evidence: what the records say of each word, and what they do not.

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
use std::collections::HashMap;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{animal}/evidence", get(list)).route("/l/{animal}/evidence/{word}", get(word))
}

async fn list(State(state): State<AppState>, page: AnimalPage) -> Result<Markup, Error> {
    let words = state.kept.standings(page.home, &page.case());
    Ok(layout(&page, Tab::Evidence, "Evidence", view::list(page.id, &words)))
}

async fn word(
    State(state): State<AppState>,
    page: AnimalPage,
    Path(path): Path<HashMap<String, String>>,
) -> Result<Markup, Error> {
    let missing = || Error::NotFound("This animal is taught no such word.".into());
    let id: WordId = path.get("word").and_then(|w| w.parse().ok()).ok_or_else(missing)?;
    let kept = state.kept.evidence(page.home, &page.case(), id);
    let (Some(found), causes) = &*kept else { return Err(missing()) };
    let title = format!("Evidence: {}", found.standing.says);
    Ok(layout(&page, Tab::Evidence, &title, view::word(&page, found, causes)))
}
