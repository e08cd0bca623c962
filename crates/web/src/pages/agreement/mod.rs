//! Do two people see the same? Scores typed or pasted in, figures out; nothing is stored.

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

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/agreement", get(ask).post(judge))
}

async fn ask(page: Page) -> Markup {
    view::page(&page, &Typed::default(), None)
}

async fn judge(page: Page, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["scores", "scale", "headed"])?;
    let scale = typed.checked::<ScoreScale, _>("scale", typed.text("scale").parse());
    let scores = scale.and_then(|s| typed.checked("scores", read(typed.text("scores"), typed.ticked("headed"), s)));
    Ok(match scale.zip(scores) {
        Some((scale, scores)) => view::page(&page, &typed, Some(&agreement(&scores, scale))).into_response(),
        None => again(view::page(&page, &typed, None)),
    })
}
