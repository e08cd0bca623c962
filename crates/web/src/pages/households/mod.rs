//! The households of a notebook that holds several, told apart; one is chosen on each device.

mod view;

pub use view::name;

use crate::error::Error;
use crate::form::Form;
use crate::layout::Tab;
use crate::page::{HOUSEHOLD_COOKIE, Page};
use crate::state::AppState;
use axum::Router;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::Markup;
use sayso_model::{HouseholdId, Story};
use serde::Deserialize;
use std::sync::Arc;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/households", get(show).post(choose))
}

async fn show(page: Page) -> Result<Markup, Error> {
    let mut all: Vec<(HouseholdId, Arc<Story>)> = Vec::new();
    for household in &page.households {
        all.push((*household, page.state.store.story(*household).await?));
    }
    Ok(view::view(&page, &all))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Chosen {
    household: HouseholdId,
}

async fn choose(page: Page, Form(chosen): Form<Chosen>) -> Result<Response, Error> {
    if !page.households.contains(&chosen.household) {
        return Err(Error::refused("household", "is none of this notebook's"));
    }
    let story = page.state.store.story(chosen.household).await?;
    let first = story.learners().into_values().find(|l| l.active).map(|l| l.learner);
    let cookie =
        format!("{HOUSEHOLD_COOKIE}={}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict", chosen.household);
    Ok(([(SET_COOKIE, cookie)], Redirect::to(&Tab::Today.href(first))).into_response())
}
