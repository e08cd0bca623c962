//! Rehearse: teaching practised on a simulated animal. Every answer follows from its address (exercise, character, seed, acts), so
//! nothing is kept, and the log is never touched.

mod asked;
mod captions;
mod drawn;
mod lessons;
mod line;
mod list;
mod moments;
mod stage;
mod stuck;
mod went;

pub use asked::{REHEARSE, link};
pub use lessons::for_lesson;

use crate::error::Error;
use crate::page::Page;
use crate::state::AppState;
use asked::{Asked, Query, address};
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use axum::{Json, Router};
use maud::Markup;
use sayso_sim::rehearsal::Setup;

/// Routes of the pages.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/rehearse", get(all))
        .route("/rehearse/{exercise}", get(show))
        .route("/rehearse/{exercise}/moments", get(moments))
        .route("/rehearse/{exercise}/went", get(went))
}

async fn all(page: Page) -> Markup {
    list::view(&page)
}

/// The exercise; one without a seed gets one, so that its address leads to the same again.
async fn show(page: Page, Path(exercise): Path<String>, query: Query) -> Result<Response, Error> {
    let exercise = asked::exercise(&exercise)?;
    let (seed, character) = (query.seed()?, query.character()?);
    let Some(seed) = seed else {
        // Any will do: those of the same millisecond rehearse the same.
        let seed = u64::try_from(page.now.millis()).unwrap_or(0) % 1_000_000;
        let to = address(&page, Setup { seed, character, exercise }, "", &[]);
        return Ok(Redirect::to(&to).into_response());
    };
    Ok(stage::view(&page, Setup { seed, character, exercise }).into_response())
}

/// What happens, given all acts so far and none after them.
async fn moments(page: Page, Path(exercise): Path<String>, query: Query) -> Result<Json<moments::Moments>, Error> {
    Ok(Json(moments::of(&page.locale, &Asked::read(&exercise, &query)?.run())))
}

async fn went(page: Page, Path(exercise): Path<String>, query: Query) -> Result<Markup, Error> {
    let asked = Asked::read(&exercise, &query)?;
    // What held the word up is told once something was named.
    let hides = asked.setup.hides().is_some();
    Ok(match query.named()? {
        None if hides => stuck::question(&page, &asked),
        named => went::view(&page, &asked, named),
    })
}
