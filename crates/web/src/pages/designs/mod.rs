//! Trials of a change (single-case designs): planned, drawn by chance, followed day by day, read at the end.

mod act;
pub mod beside;
mod plan;
mod result;
mod view;

use crate::error::Error;
use crate::page::AnimalPage;
use crate::rich;
use crate::state::AppState;
use crate::typed::named;
use axum::Router;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_advisor::designs::{Trial, trial};
use sayso_model::DesignId;
use sayso_wording::designs::refused;
use sayso_wording::{say, words};

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/designs", get(view::list))
        .route("/a/{animal}/designs/new", get(plan::ask).post(plan::begin))
        .route("/a/{animal}/designs/{trial}", get(view::one))
        .route("/a/{animal}/designs/{trial}/note", post(act::note))
        .route("/a/{animal}/designs/{trial}/stop", post(act::stop))
}

/// A trial that concerns this animal, by the id in its address.
fn known<'a>(page: &'a AnimalPage, id: &str) -> Result<Trial<'a>, Error> {
    let id: DesignId = named(id, "trial")?;
    let found = trial(&page.story, page.id, id).ok_or_else(|| Error::NotFound(words!(designs::no_such)))?;
    found.map_err(|why| Error::NotFound(words!(designs::cannot_draw, why = refused(&page.locale, why))))
}

fn address(page: &AnimalPage, id: DesignId) -> String {
    format!("/a/{}/designs/{id}", page.id)
}

/// What keeps the animal well, on every page of a trial.
fn kindly(page: &AnimalPage) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let lead = html! { strong { (say!(l, designs::kindly_lead, name = name)) } };
    html! { p.caution { (rich!(l, designs::kindly, lead = lead, name = name)) } }
}
