//! The newest events of one animal; each can be taken back, brought back or put right, and the first record stays.

mod ahead;
mod filter;
mod fix;
mod line;
mod view;

pub use ahead::ahead;
pub use line::address;

use self::filter::{Asked, Filter};
use self::view::Part;
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
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;

/// Events on one page.
const MOST: usize = 60;
/// Newer events on the page of one event.
const AROUND: usize = 10;

/// Whether an event names a word that can be put right.
pub const fn word_can_be_put_right(body: &Body) -> bool {
    fix::Fixable::of(body).word().is_some()
}

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/a/{animal}/log", get(show))
        .route("/a/{animal}/log/withdraw", post(withdraw))
        .route("/a/{animal}/log/bring-back", post(bring_back))
        .route("/a/{animal}/log/{event}", get(open).post(correct))
}

/// Which page of the log: from a place back, from a place on, or the one with an event; and which of the events.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Which {
    before: Option<Moment>,
    after: Option<Moment>,
    id: Option<EventId>,
    event: Option<EventId>,
    #[serde(default)]
    day: String,
    #[serde(default)]
    kind: String,
    #[serde(default)]
    word: String,
    #[serde(default)]
    person: String,
}

async fn show(page: AnimalPage, Form(which): Form<Which>) -> Result<Markup, Error> {
    if which.id.is_some() && which.before.is_none() && which.after.is_none() {
        return Err(Error::BadRequest(words!(log::id_without_time)));
    }
    let Which { before, after, id, event, day, kind, word, person } = which;
    let filter = Asked { day, kind, word, person }.read()?;
    let place = |at: Moment| (at, id.unwrap_or(filter::FIRST_ID));
    let part = match (event, after) {
        (Some(asked), _) => around(&page, asked, before.map(place))?,
        (None, Some(after)) => newer(&page, &filter, place(after)),
        (None, None) => older(&page, &filter, before.map(place)),
    };
    Ok(view::view(&page, &filter, &part))
}

/// Events before a place, newest first.
fn older<'a>(page: &'a AnimalPage, filter: &Filter, to: Option<Key>) -> Part<'a> {
    let to = [to, filter.end(page)].into_iter().flatten().min();
    let mut events: Vec<&Event> = back(page, filter, to).take(MOST + 1).collect();
    let more = events.len() > MOST;
    events.truncate(MOST);
    let newer = events.first().is_some_and(|e| on(page, filter, (e.happened_at, e.id)).nth(1).is_some());
    Part { events, newer, older: more, shown: None }
}

/// Events from behind a place on: as many as a page holds, those nearest to it.
fn newer<'a>(page: &'a AnimalPage, filter: &Filter, from: Key) -> Part<'a> {
    let mut events: Vec<&Event> =
        on(page, filter, from).filter(|e| (e.happened_at, e.id) > from).take(MOST + 1).collect();
    let newer = events.len() > MOST;
    events.truncate(MOST);
    events.reverse();
    let older = events.last().is_some_and(|e| back(page, filter, Some((e.happened_at, e.id))).next().is_some());
    Part { events, newer, older, shown: None }
}

/// An event with a few newer and many older ones.
fn around(page: &AnimalPage, asked: EventId, to: Option<Key>) -> Result<Part<'_>, Error> {
    let (story, all) = (&page.story, Filter::default());
    // An amendment stands with what it amends.
    let asked = story.ledger().first(asked).and_then(|e| e.body.amends()).unwrap_or(asked);
    let none = || Error::NotFound(words!(log::no_such_event));
    let at = story.ledger().first(asked).map(|e| (e.happened_at, e.id)).ok_or_else(none)?;
    let before = |e: &&Event| to.is_none_or(|to| (e.happened_at, e.id) < to);
    let mut around: Vec<&Event> = story.records_from(page.id, at).take(AROUND + 2).take_while(before).collect();
    if around.first().is_none_or(|e| e.id != asked) {
        return Err(none());
    }
    let newer = around.len() > AROUND + 1;
    around.truncate(AROUND + 1);
    around.reverse();
    let mut events = around;
    events.extend(back(page, &all, Some(at)).take(MOST + 1 - events.len()));
    let older = events.len() > MOST;
    events.truncate(MOST);
    Ok(Part { events, newer, older, shown: Some(asked) })
}

/// Events before a place that are asked for, newest first.
fn back<'a>(page: &'a AnimalPage, filter: &Filter, to: Option<Key>) -> impl Iterator<Item = &'a Event> {
    let (filter, begin) = (*filter, filter.begin(page));
    let all = page.story.records_before(page.id, to);
    all.take_while(move |e| begin.is_none_or(|b| (e.happened_at, e.id) >= b)).filter(move |e| filter.takes(page, e))
}

/// Events from a place on that are asked for, oldest first.
fn on<'a>(page: &'a AnimalPage, filter: &Filter, from: Key) -> impl Iterator<Item = &'a Event> {
    let (filter, begin, end) = (*filter, filter.begin(page), filter.end(page));
    let all = page.story.records_from(page.id, begin.map_or(from, |b| b.max(from)));
    all.take_while(move |e| end.is_none_or(|end| (e.happened_at, e.id) < end)).filter(move |e| filter.takes(page, e))
}

/// One event.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct One {
    of: EventId,
}

fn to_log(animal: AnimalId, event: EventId) -> Redirect {
    Redirect::to(&address(animal, event))
}

fn known(page: &AnimalPage, id: EventId) -> Result<Event, Error> {
    let first = page.story.ledger().first(id).filter(|e| e.body.amends().is_none() && e.home == page.home);
    let first = first.cloned().ok_or_else(|| Error::NotFound(words!(log::no_such_event)))?;
    if view::mends(&first) { Ok(first) } else { Err(Error::refused("of", words!(log::on_its_own_page))) }
}

async fn withdraw(page: AnimalPage, Form(which): Form<One>) -> Result<Redirect, Error> {
    let of = known(&page, which.of)?;
    page.keep(vec![Event { animal: of.animal, ..page.event(Withdrawal { of: of.id, because: None }) }]).await?;
    Ok(to_log(page.id, of.id))
}

async fn bring_back(page: AnimalPage, Form(which): Form<One>) -> Result<Redirect, Error> {
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
