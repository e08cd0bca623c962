//! Do two people see the same? What both noted in the log, or scores typed or pasted in; nothing is stored.

mod picked;
mod view;

use crate::error::Error;
use crate::page::Page;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use maud::Markup;
use sayso_advisor::agreement::{ScoreScale, agreement, read};
use sayso_wording::agreement::{person, wrong};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/agreement", get(ask).post(judge))
}

async fn ask(page: Page, asked: Typed) -> Result<Markup, Error> {
    let asked = asked.only(&picked::FIELDS)?;
    let picked = picked::read(&page, &asked)?;
    Ok(view::page(&page, &Typed::default(), picked.as_ref(), None))
}

async fn judge(page: Page, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["scores", "scale", "headed"])?;
    let scale = typed.checked::<ScoreScale, _>("scale", typed.text("scale").parse());
    let scores = scale.and_then(|s| {
        let read = read(typed.text("scores"), typed.ticked("headed"), s, |i| person(&page.locale, i));
        typed.checked("scores", read.map_err(|why| wrong(&page.locale, &why)))
    });
    Ok(match scale.zip(scores) {
        Some((scale, scores)) => view::page(&page, &typed, None, Some(&agreement(&scores, scale))).into_response(),
        None => again(view::page(&page, &typed, None, None)),
    })
}
