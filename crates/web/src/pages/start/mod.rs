//! The first page of a new notebook: who lives here. One form; the home's zone is the browser's guess.

mod view;

use crate::error::Error;
use crate::leave::Leave;
use crate::reading::Reads;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::extract::State;
use axum::http::header::SET_COOKIE;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use axum::{Extension, Router};
use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, HomeCard, HomeId, Label, PersonCard, PersonId, Role, Source, Species,
    Zone,
};
use sayso_wording::{Locale, say};
use uuid::Uuid;

const FIELDS: [&str; 6] = ["you", "others", "animal", "species", "home", "zone"];

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/start", get(show).post(begin))
}

/// On a server, who is signed in and sets the home up.
type Keeper = Option<Extension<Leave>>;

async fn show(State(state): State<AppState>, keeper: Keeper, Reads(locale): Reads) -> Result<Response, Error> {
    if has_begun(&state).await? {
        return Ok(Redirect::to("/").into_response());
    }
    let name = keeper.as_ref().map(|Extension(leave)| leave.name.as_str());
    let typed = Typed::default().with_some("you", name).with("species", "dog");
    Ok(view::view(&locale, &typed, name).into_response())
}

/// Whether anything is written in the notebook. On a server its home has an id before that.
async fn has_begun(state: &AppState) -> Result<bool, Error> {
    Ok(match state.store.home().await? {
        Some(home) => !state.store.story(home).await?.ledger().is_empty(),
        None => false,
    })
}

async fn begin(
    State(state): State<AppState>,
    keeper: Keeper,
    Reads(locale): Reads,
    typed: Typed,
) -> Result<Response, Error> {
    if has_begun(&state).await? {
        return Ok(Redirect::to("/").into_response());
    }
    let mut typed = typed.only(&FIELDS)?;
    let Some(begun) = read(&locale, &mut typed) else {
        let name = keeper.as_ref().map(|Extension(leave)| leave.name.as_str());
        return Ok(again(view::view(&locale, &typed, name)));
    };
    let home = state.store.home().await?.unwrap_or_else(|| HomeId(Uuid::now_v7()));
    let (person, animal) = (PersonId(Uuid::now_v7()), AnimalId(Uuid::now_v7()));
    let mut bodies: Vec<(Option<AnimalId>, Body)> = vec![
        (None, HomeCard { name: begun.home, zone: begun.zone.clone() }.into()),
        (None, PersonCard::new(person, begun.you, Role::Home).into()),
    ];
    for name in begun.others {
        bodies.push((None, PersonCard::new(PersonId(Uuid::now_v7()), name, Role::Home).into()));
    }
    bodies.push((Some(animal), AnimalCard::new(animal, begun.animal, begun.species).into()));
    let now = state.now();
    let events = bodies
        .into_iter()
        .map(|(animal, body)| Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal,
            person: Some(person),
            happened_at: now,
            zone: begun.zone.clone(),
            recorded_at: now,
            source: Source::Tap,
            body,
        })
        .collect();
    state.store.append(events).await?;
    let to = Redirect::to(&crate::pages::people::food_of(animal));
    Ok(([(SET_COOKIE, super::who::remembering(person))], to).into_response())
}

/// What the form says.
struct Begun {
    home: Label,
    zone: Zone,
    you: Label,
    others: Vec<Label>,
    animal: Label,
    species: Species,
}

fn read(locale: &Locale, typed: &mut Typed) -> Option<Begun> {
    let (you, animal) = (typed.label("you"), typed.label("animal"));
    let species = typed.one_of("species", &Species::ALL, Species::name);
    if species.is_none() && typed.problem("species").is_none() {
        typed.wrong("species", say!(locale, start::species_missing));
    }
    let names = typed.text("others").to_owned();
    let others: Vec<Label> = names
        .split([',', ';', '\n'])
        .map(str::trim)
        .filter(|name| !name.is_empty())
        .filter_map(|name| typed.checked("others", Label::new(name)))
        .collect();
    let home = if typed.text("home").is_empty() {
        let usual = you.as_ref().map(|you| Label::new(&say!(locale, start::home_of, name = you)));
        usual.and_then(|home| typed.checked("home", home))
    } else {
        typed.label("home")
    };
    let zone = Zone::new(typed.text("zone"));
    let zone = typed.checked("zone", zone);
    if !typed.right() {
        return None;
    }
    Some(Begun { home: home?, zone: zone?, you: you?, others, animal: animal?, species: species? })
}
