//! The households of a notebook that holds several, told apart; one is chosen on each device.

mod view;

use crate::error::Error;
use crate::form::Form;
use crate::layout::Tab;
use crate::page::{HOME_COOKIE, Page};
use crate::state::AppState;
use axum::Router;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::Markup;
use sayso_model::{HomeId, Story};
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/homes", get(show).post(choose))
}

async fn show(page: Page) -> Result<Markup, Error> {
    let mut all: Vec<(HomeId, Arc<Story>)> = Vec::new();
    for home in &page.homes {
        all.push((*home, page.state.store.story(*home).await?));
    }
    Ok(view::view(&page, &all))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Chosen {
    home: HomeId,
}

async fn choose(page: Page, Form(chosen): Form<Chosen>) -> Result<Response, Error> {
    if !page.homes.contains(&chosen.home) {
        return Err(Error::refused("home", words!(faults::not_our_home)));
    }
    let story = page.state.store.story(chosen.home).await?;
    let first = story.animals().into_values().find(|l| l.active).map(|l| l.animal);
    Ok(([(SET_COOKIE, remembering(chosen.home))], Redirect::to(&Tab::Today.href(first))).into_response())
}

/// The cookie that keeps which home this device is about, for a year.
#[must_use]
pub fn remembering(home: HomeId) -> String {
    format!("{HOME_COOKIE}={home}; Path=/; Max-Age=31536000; HttpOnly; SameSite=Strict")
}
