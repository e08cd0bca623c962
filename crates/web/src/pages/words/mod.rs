//! The words of an animal: which, what they mean here, how everyone answers them, how far they have come, where they are.

mod board;
mod card;
mod clip;
mod first;
mod layout_form;
mod picture;
mod places;
mod proof;
mod record_all;
mod recording;
mod sounds;
mod stage;
mod view;

pub use layout_form::drawn;
pub use sounds::too_alike;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::routing::{get, post};
use maud::Markup;
use sayso_model::{Story, WordCard, WordId};
use sayso_wording::words;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/words", get(show))
        .route("/a/{animal}/words/new", get(card::new).post(card::add))
        .route("/a/{animal}/words/card/{word}", get(card::edit).post(card::change))
        .route("/a/{animal}/words/card/{word}/stage", post(stage::choose))
        .route(
            "/a/{animal}/words/card/{word}/recording",
            post(recording::take).layer(DefaultBodyLimit::max(recording::MOST_UPLOAD)),
        )
        .route("/a/{animal}/words/card/{word}/recording/{clip}", post(recording::put))
        .route("/a/{animal}/words/record", get(record_all::show))
        .route("/a/{animal}/words/cut", post(proof::cut).layer(DefaultBodyLimit::max(recording::MOST_UPLOAD)))
        .route(
            "/a/{animal}/words/prove/{word}",
            post(proof::prove).layer(DefaultBodyLimit::max(recording::MOST_UPLOAD)),
        )
        .route("/clips/{hash}", get(clip::sound))
        .route("/a/{animal}/words/first", post(first::accept))
        .route("/a/{animal}/words/board", get(board::show).post(board::save))
}

/// The active word of the home that says this, whoever's it is: one label is on one button.
pub fn saying(story: &Story, says: &str) -> Option<WordCard> {
    let same = |card: &&WordCard| card.active && card.says.as_str().to_lowercase() == says.trim().to_lowercase();
    story.words().into_values().find(same).cloned()
}

async fn show(page: AnimalPage) -> Markup {
    view::view(&page)
}

/// A word by the id in its address.
fn known(page: &AnimalPage, id: &str) -> Result<WordCard, Error> {
    let id: WordId = named(id, "word")?;
    let card = page.story.words().get(&id).map(|c| (*c).clone());
    card.ok_or_else(|| Error::NotFound(words!(words::no_such)))
}
