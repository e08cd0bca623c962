//! The first page of a new notebook: names the home, one person and one animal.

mod view;

use crate::error::Error;
use crate::form::{Form, checked};
use crate::layout::Tab;
use crate::reading::Reads;
use crate::state::AppState;
use axum::Router;
use axum::extract::State;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, HomeCard, HomeId, Label, PersonCard, PersonId, Role, Source, Species,
    Zone,
};
use serde::Deserialize;
use uuid::Uuid;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/start", get(show).post(begin))
}

async fn show(State(state): State<AppState>, Reads(locale): Reads) -> Result<Response, Error> {
    Ok(match state.store.home().await? {
        Some(_) => Redirect::to("/").into_response(),
        None => view::view(&locale).into_response(),
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Start {
    home: String,
    zone: String,
    you: String,
    animal: String,
    species: Species,
}

async fn begin(State(state): State<AppState>, Form(start): Form<Start>) -> Result<Response, Error> {
    if state.store.home().await?.is_some() {
        return Ok(Redirect::to("/").into_response());
    }
    let zone = checked("zone", Zone::new(start.zone.trim()))?;
    let home = HomeId(Uuid::now_v7());
    let (person, animal) = (PersonId(Uuid::now_v7()), AnimalId(Uuid::now_v7()));
    let bodies: [(Option<AnimalId>, Body); 3] = [
        (None, HomeCard { name: checked("home", Label::new(&start.home))?, zone: zone.clone() }.into()),
        (None, PersonCard::new(person, checked("you", Label::new(&start.you))?, Role::Home).into()),
        (Some(animal), AnimalCard::new(animal, checked("animal", Label::new(&start.animal))?, start.species).into()),
    ];
    let now = state.now();
    let events = bodies
        .into_iter()
        .map(|(animal, body)| Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal,
            person: Some(person),
            happened_at: now,
            zone: zone.clone(),
            recorded_at: now,
            source: Source::Tap,
            body,
        })
        .collect();
    state.store.append(events).await?;
    let to = Redirect::to(&Tab::Today.href(Some(animal)));
    Ok(([(SET_COOKIE, super::who::remembering(person))], to).into_response())
}
