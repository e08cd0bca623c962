//! Days: what happened when.

mod calendar;
mod demand;
mod minis;
mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::extract::Query;
use axum::routing::get;
use maud::Markup;
use sayso_advisor::days::days;
use sayso_advisor::demand::demand as demand_of;
use sayso_advisor::readiness::readiness;
use sayso_wording::{say, words};
use serde::Deserialize;

/// Lengths a person may choose, in days.
const LENGTHS: [u16; 4] = [7, 28, 70, 365];

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/a/{animal}/days", get(show))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Span {
    days: Option<u16>,
}

async fn show(page: AnimalPage, Query(span): Query<Span>) -> Result<Markup, Error> {
    let length = span.days.unwrap_or(28);
    if !LENGTHS.contains(&length) {
        let allowed = LENGTHS.map(|l| l.to_string()).join(", ");
        let given = length.to_string();
        return Err(Error::BadRequest(words!(days::length_wrong, allowed = allowed, given = given)));
    }
    let case = page.case();
    let found = view::Found { days: days(&case, length), demand: demand_of(&case, length), ready: readiness(&case) };
    let title = say!(&page.locale, days::title);
    Ok(layout(&page, Tab::Days, &title, view::page(&page, &found, length, &LENGTHS)))
}
