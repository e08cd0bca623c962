//! The coach's desk: whose home needs me first and why, and what changed since we last spoke. It shows lines, never stories, and of
//! no home whose consent to figures is not open at that moment.

mod act;
mod asked;
mod begun;
mod figures;
mod followed;
pub(crate) mod open;
mod row;
mod view;
mod week;

pub use asked::PATH;
pub use open::has_one;
pub use row::called;

use crate::asker::Asker;
use crate::host::Host;
use asked::{Asked, CHANGES, Chosen, WEEK};
use axum::Router;
use axum::extract::Query;
use axum::routing::{get, post};
use maud::Markup;
use sayso_web::Error;
use std::sync::Arc;

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route(PATH, get(show))
        .route(WEEK, get(week))
        .route(CHANGES, get(followed::show))
        .route("/desk/aside", post(act::put_aside))
        .route("/desk/back", post(act::bring_back))
        .route("/desk/mark", post(act::mark))
        .route("/desk/spoken", post(act::spoken))
}

async fn show(asker: Asker, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let opened = open::open(&asker, &who).await?;
    let chosen = Chosen::of(&asker, &opened, asked).await?;
    Ok(view::view(&asker, &opened, &chosen))
}

async fn week(asker: Asker, Query(asked): Query<Asked>) -> Result<Markup, Error> {
    let who = asker.coach().await?;
    let opened = open::open(&asker, &who).await?;
    week::show(&asker, &opened, asked).await
}
