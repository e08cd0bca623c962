//! The newest events of one animal; each can be taken back, brought back or put right, and the first record stays.

mod ahead;
mod fix;
mod line;
mod view;

pub use ahead::ahead;

use crate::error::Error;
use crate::form::Form;
use crate::page::AnimalPage;
use crate::state::AppState;
use crate::typed::{Typed, again};
use axum::Router;
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use sayso_model::{AnimalId, Body, Correction, Event, EventId, Key, Moment, Withdrawal};
use serde::Deserialize;
use std::sync::Arc;
use uuid::Uuid;

/// Events on one page.
const MOST: usize = 60;
/// Newer events on the page of one event.
const AROUND: usize = 10;

/// Whether an event names a word that can be put right.
pub const fn word_can_be_put_right(body: &Body) -> bool {
    fix::Fixable::of(body).word().is_some()
}

/// The address of an event in an animal's log.
#[must_use]
pub fn address(animal: AnimalId, event: EventId) -> String {
    format!("/l/{animal}/log?event={event}#e{event}")
}

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/l/{animal}/log", get(show))
        .route("/l/{animal}/log/withdraw", post(withdraw))
        .route("/l/{animal}/log/bring-back", post(bring_back))
        .route("/l/{animal}/log/{event}", get(open).post(correct))
}

/// Which page of the log: from a time back, or from an event at that time back; or the one with an event.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Upto {
    before: Option<Moment>,
    id: Option<EventId>,
    event: Option<EventId>,
}

async fn show(page: AnimalPage, Form(upto): Form<Upto>) -> Result<Markup, Error> {
    let story = &page.story;
    if upto.id.is_some() && upto.before.is_none() {
        return Err(Error::BadRequest(
            "The address names an id, but not before which time: ?before=<time>&id=<id>".into(),
        ));
    }
    // Without an id before everything that happened then: no id comes before the nil one.
    let mut to: Option<Key> = upto.before.map(|at| (at, upto.id.unwrap_or(EventId(Uuid::nil()))));
    let (mut newer, mut shown, mut first) = (false, None, Vec::new());
    if let Some(asked) = upto.event {
        // An amendment stands with what it amends.
        let asked = story.ledger().first(asked).and_then(|e| e.body.amends()).unwrap_or(asked);
        let none = || Error::NotFound("The log of this animal has no such event.".into());
        let at = story.ledger().first(asked).map(|e| (e.happened_at, e.id)).ok_or_else(none)?;
        let before = |e: &&Event| to.is_none_or(|to| (e.happened_at, e.id) < to);
        let mut around: Vec<&Event> = story.records_from(page.id, at).take(AROUND + 2).take_while(before).collect();
        if around.first().is_none_or(|e| e.id != asked) {
            return Err(none());
        }
        newer = around.len() > AROUND + 1;
        around.truncate(AROUND + 1);
        first.extend(around.into_iter().rev());
        (to, shown) = (Some(at), Some(asked));
    }
    first.extend(story.records_before(page.id, to).take(MOST + 1 - first.len()));
    let more = (first.len() > MOST).then(|| first.get(MOST - 1).map(|e| (e.happened_at, e.id))).flatten();
    first.truncate(MOST);
    Ok(view::view(&page, &first, &view::Part { newer, more, shown }))
}

/// Which event.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Which {
    of: EventId,
}

fn to_log(animal: AnimalId, event: EventId) -> Redirect {
    Redirect::to(&address(animal, event))
}

fn known(page: &AnimalPage, id: EventId) -> Result<Event, Error> {
    let first = page.story.ledger().first(id).filter(|e| e.body.amends().is_none() && e.home == page.home);
    first.cloned().ok_or_else(|| Error::NotFound("The log has no such event.".into()))
}

async fn withdraw(page: AnimalPage, Form(which): Form<Which>) -> Result<Redirect, Error> {
    let of = known(&page, which.of)?;
    page.keep(vec![Event { animal: of.animal, ..page.event(Withdrawal { of: of.id, because: None }) }]).await?;
    Ok(to_log(page.id, of.id))
}

async fn bring_back(page: AnimalPage, Form(which): Form<Which>) -> Result<Redirect, Error> {
    let of = known(&page, which.of)?;
    let body = Correction { of: of.id, happened_at: None, animal: None, body: Box::new(of.body.clone()) };
    page.keep(vec![Event { animal: of.animal, ..page.event(body) }]).await?;
    Ok(to_log(page.id, of.id))
}

/// The path of a page about one event.
#[derive(Deserialize)]
struct At {
    #[allow(dead_code)]
    animal: AnimalId,
    event: EventId,
}

/// As it stands, or as it was before it was taken back.
fn standing(page: &AnimalPage, at: &At) -> Result<Event, Error> {
    let first = known(page, at.event)?;
    Ok(page.story.ledger().standing(first.id).map_or(first, Arc::unwrap_or_clone))
}

async fn open(page: AnimalPage, Path(at): Path<At>) -> Result<Markup, Error> {
    let event = standing(&page, &at)?;
    Ok(view::edit(&page, &event, &fix::filled(&page, &event)))
}

async fn correct(page: AnimalPage, Path(at): Path<At>, typed: Typed) -> Result<Response, Error> {
    let event = standing(&page, &at)?;
    let mut typed = typed.only(&fix::FIELDS)?;
    let Some((happened_at, body)) = fix::read(&page, &event, &mut typed) else {
        return Ok(again(view::edit(&page, &event, &typed)));
    };
    let correction = Correction { of: event.id, happened_at: Some(happened_at), animal: None, body: Box::new(body) };
    let kept = page.keep(vec![Event { animal: event.animal, ..page.event(correction) }]).await;
    if typed.kept(kept)? {
        Ok(to_log(page.id, event.id).into_response())
    } else {
        Ok(again(view::edit(&page, &event, &typed)))
    }
}
