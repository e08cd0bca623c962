//! The first page of a new notebook: names the household, one person and one animal.

mod view;

use crate::error::Error;
use crate::form::{Form, checked};
use crate::layout::Tab;
use crate::state::AppState;
use axum::Router;
use axum::extract::State;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use sayso_model::{
    Body, Event, EventId, HouseholdCard, HouseholdId, Label, LearnerCard, LearnerId, Role, Source, Species,
    TeacherCard, TeacherId, Zone,
};
use serde::Deserialize;
use uuid::Uuid;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/start", get(show).post(begin))
}

async fn show(State(state): State<AppState>) -> Result<Response, Error> {
    Ok(match state.store.household().await? {
        Some(_) => Redirect::to("/").into_response(),
        None => view::view().into_response(),
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Start {
    household: String,
    zone: String,
    you: String,
    learner: String,
    species: Species,
}

async fn begin(State(state): State<AppState>, Form(start): Form<Start>) -> Result<Response, Error> {
    if state.store.household().await?.is_some() {
        return Ok(Redirect::to("/").into_response());
    }
    let zone = checked("zone", Zone::new(start.zone.trim()))?;
    let household = HouseholdId(Uuid::now_v7());
    let (teacher, learner) = (TeacherId(Uuid::now_v7()), LearnerId(Uuid::now_v7()));
    let bodies: [(Option<LearnerId>, Body); 3] = [
        (None, HouseholdCard { name: checked("household", Label::new(&start.household))?, zone: zone.clone() }.into()),
        (
            None,
            TeacherCard { teacher, name: checked("you", Label::new(&start.you))?, role: Role::Household, active: true }
                .into(),
        ),
        (
            Some(learner),
            LearnerCard {
                learner,
                name: checked("learner", Label::new(&start.learner))?,
                species: start.species,
                born: None,
                born_estimated: false,
                weight_kg: None,
                adult_weight_kg: None,
                life_stage: None,
                day_kcal: None,
                reward_share: None,
                limits: None,
                cautions: None,
                active: true,
            }
            .into(),
        ),
    ];
    let now = state.now();
    let events = bodies
        .into_iter()
        .map(|(learner, body)| Event {
            id: EventId(Uuid::now_v7()),
            household,
            learner,
            teacher: Some(teacher),
            happened_at: now,
            zone: zone.clone(),
            recorded_at: now,
            source: Source::Tap,
            body,
        })
        .collect();
    state.store.append(events).await?;
    let to = Redirect::to(&Tab::Today.href(Some(learner)));
    Ok(([(SET_COOKIE, super::who::remembering(teacher))], to).into_response())
}
