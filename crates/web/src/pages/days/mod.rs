//! Days: what happened when.

mod demand;
mod view;

use crate::error::Error;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::state::AppState;
use axum::Router;
use axum::extract::Query;
use axum::routing::get;
use maud::{Markup, html};
use sayso_advisor::days::days;
use sayso_advisor::demand::demand as demand_of;
use sayso_advisor::readiness::readiness;
use serde::Deserialize;

/// Lengths a person may choose, in days.
const LENGTHS: [u16; 4] = [7, 28, 70, 365];

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{animal}/days", get(show))
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
        return Err(Error::BadRequest(format!("days must be one of {allowed}, not {length}.").into()));
    }
    let case = page.case();
    let (days, demand, ready) = (days(&case, length), demand_of(&case, length), readiness(&case));
    let body = html! {
        (view::page(&page, &days, length, &LENGTHS))
        (demand::readiness(&page, ready.as_ref()))
        (demand::demand(&page, &demand))
    };
    Ok(layout(&page, Tab::Days, "Days", body))
}
