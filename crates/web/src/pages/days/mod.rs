//! Days: what happened when.

mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::LearnerPage;
use crate::state::AppState;
use axum::Router;
use axum::extract::Query;
use axum::routing::get;
use maud::Markup;
use sayso_advisor::days::days;
use serde::Deserialize;

/// Lengths a person may choose, in days.
const LENGTHS: [u16; 4] = [7, 28, 70, 365];

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{learner}/days", get(show))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Span {
    days: Option<u16>,
}

async fn show(page: LearnerPage, Query(span): Query<Span>) -> Result<Markup, Error> {
    let length = span.days.unwrap_or(28);
    if !LENGTHS.contains(&length) {
        let allowed = LENGTHS.map(|l| l.to_string()).join(", ");
        return Err(Error::BadRequest(format!("days must be one of {allowed}, not {length}.")));
    }
    let days = days(&page.story, page.id, page.now, length);
    Ok(layout(&page, Tab::Days, "Days", view::page(&page, &days, length, &LENGTHS)))
}
