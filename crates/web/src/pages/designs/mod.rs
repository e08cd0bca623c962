//! Trials of a change (single-case designs): planned, drawn by chance, followed day by day, read at the end.

mod act;
mod plan;
mod result;
mod view;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_advisor::designs::{Trial, trial};
use sayso_model::DesignId;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/l/{animal}/designs", get(view::list))
        .route("/l/{animal}/designs/new", get(plan::ask).post(plan::begin))
        .route("/l/{animal}/designs/{trial}", get(view::one))
        .route("/l/{animal}/designs/{trial}/note", post(act::note))
        .route("/l/{animal}/designs/{trial}/stop", post(act::stop))
}

/// A trial that concerns this animal, by the id in its address.
fn known<'a>(page: &'a AnimalPage, id: &str) -> Result<Trial<'a>, Error> {
    let id: DesignId = named(id, "trial")?;
    let found = trial(&page.story, page.id, id)
        .ok_or_else(|| Error::NotFound("This notebook knows no such trial of this animal.".into()))?;
    found
        .map_err(|why| Error::NotFound(format!("The order of this trial cannot be drawn from its plan: {why}.").into()))
}

fn address(page: &AnimalPage, id: DesignId) -> String {
    format!("/l/{}/designs/{id}", page.id)
}

/// What keeps the animal well, on every page of a trial.
fn kindly(page: &AnimalPage) -> Markup {
    html! {
        p.caution { strong { "A trial is for " (page.card.name.as_str()) ", not the other way round." }
            " Only the surroundings and what people do are changed: it may leave at any time, nothing is held back that it asks for, and no day needs a press. A strong sign of stress under the change ends the trial. Try nothing that hurts, frightens or withholds; ask a veterinarian or a qualified behaviour professional where you are not sure." }
    }
}
