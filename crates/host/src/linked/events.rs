//! The events of a home, read by a linked notebook and brought by it. Each that is brought is asked for by itself
//! ([`notebook_may_append`]), and answered for itself.

use super::who::{Refused, Who};
use crate::host::Host;
use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::extract::rejection::BytesRejection;
use sayso_linked::letters::{BringsEvents, Came, GivesEvents, MOST_BYTES, MOST_EVENTS, Outcomes, Spot, Why};
use sayso_model::{Event, EventId, Moment};
use sayso_people::needs::{CLOCKS_AHEAD_S, NotBrought, dated, goes_by, notebook_may_append};
use sayso_store::{Appended, AtOnce, Revision, Stands, Store, read_event};
use sayso_web::Error;
use sayso_web::api::body_error;
use sayso_web::form::Form;
use sayso_wording::words;
use serde::Deserialize;
use serde_json::value::RawValue;
use std::sync::Arc;

/// From which place it is read on.
#[derive(Deserialize)]
pub struct From {
    after: i64,
    is: Option<EventId>,
}

/// Gives what stands after a place.
///
/// # Errors
/// [`Refused`].
pub async fn give(
    State(host): State<Arc<Host>>,
    who: Who,
    Form(from): Form<From>,
) -> Result<Json<GivesEvents>, Refused> {
    let log = who.log(&host);
    let after = Revision(from.after.max(0));
    // A server that was brought back from a copy has another event at that place, or none.
    let anew = after.0 > 0 && log.id_at(after).await? != from.is;
    let after = if anew { Revision(0) } else { after };
    let most = AtOnce { events: MOST_EVENTS, bytes: MOST_BYTES };
    let given = log.given(who.home(), after, who.home(), most).await?;
    let events: Result<Vec<_>, _> = given.events.into_iter().map(|(_, json)| RawValue::from_string(json)).collect();
    let events = events.map_err(Error::internal)?;
    let up_to = Spot::of(&log, given.up_to).await?;
    Ok(Json(GivesEvents { events, up_to, more: given.more, anew }))
}

/// Takes what a notebook brings.
///
/// # Errors
/// [`Refused`]; where the body is none of this, or holds too many: then nothing of it is taken.
pub async fn take(
    State(host): State<Arc<Host>>,
    who: Who,
    body: Result<Bytes, BytesRejection>,
) -> Result<Json<Outcomes>, Refused> {
    let body = body.map_err(|why| body_error(&why, sayso_web::MOST_BODY))?;
    let brought: BringsEvents = serde_json::from_slice(&body)
        .map_err(|why| Error::BadRequest(words!(errors::no_array, line = why.line(), column = why.column())))?;
    let got = brought.events.len();
    if got > MOST_EVENTS {
        return Err(Error::BadRequest(words!(errors::too_many_events, most = MOST_EVENTS, got = got)).into());
    }
    let (log, now) = (who.log(&host), host.now());
    let mut came = vec![Came::Out(Why::Unread); got];
    let mut read = Vec::new();
    for (place, raw) in brought.events.iter().enumerate() {
        if let Ok(event) = read_event(raw.get()) {
            read.push((place, event));
        }
    }
    let events: Vec<Event> = read.iter().map(|(_, event)| event.clone()).collect();
    let stands = log.standing(&events).await?;
    // What goes by another event comes after that one, for which it may have come along.
    let (mut plain, mut on_others) = (Vec::new(), Vec::new());
    for ((place, event), stands) in read.into_iter().zip(stands) {
        let known = match stands {
            Stands::Same => Some(Came::Known),
            Stands::Other => Some(Came::Out(Why::Differs)),
            Stands::Not if is_ahead(&event, now) => Some(Came::Out(Why::Ahead)),
            Stands::Not => None,
        };
        match known {
            Some(known) => put(&mut came, place, known),
            None if goes_by(&event.body).is_some() => on_others.push((place, event)),
            None => plain.push((place, event)),
        }
    }
    let mut bring = Bring { who: &who, log: &log, came: &mut came };
    bring.all(plain, |_| None).await?;
    if !on_others.is_empty() {
        let story = log.story(who.home()).await?;
        bring.all(on_others, |id| story.ledger().first(id)).await?;
    }
    let out = came.iter().filter(|came| matches!(came, Came::Out(_))).count();
    if out > 0 {
        tracing::info!("Of {got} events that a notebook brought to home {}, {out} were not taken.", who.home());
    }
    let up_to = Spot::of(&log, log.revision().await?).await?;
    Ok(Json(Outcomes { came, up_to }))
}

fn put(came: &mut [Came], place: usize, what: Came) {
    if let Some(slot) = came.get_mut(place) {
        *slot = what;
    }
}

/// Whether it is dated later than a clock may be ahead: then it waits at home until that day.
fn is_ahead(event: &Event, now: Moment) -> bool {
    dated(event).chain([event.recorded_at]).any(|at| at.seconds_since(now) > CLOCKS_AHEAD_S)
}

struct Bring<'a> {
    who: &'a Who,
    log: &'a Store,
    came: &'a mut [Came],
}

impl Bring<'_> {
    /// Puts those into the log that may be brought; the others are answered.
    async fn all<'s>(
        &mut self,
        events: Vec<(usize, Event)>,
        first: impl Fn(EventId) -> Option<&'s Event>,
    ) -> Result<(), Refused> {
        let (mut places, mut brought) = (Vec::new(), Vec::new());
        for (place, event) in events {
            match notebook_may_append(self.who.home(), &event, &first) {
                Ok(()) => {
                    places.push(place);
                    brought.push(event);
                }
                Err(why) => put(self.came, place, Came::Out(said(why))),
            }
        }
        if brought.is_empty() {
            return Ok(());
        }
        for (place, outcome) in places.into_iter().zip(self.log.append(brought).await?) {
            let what = match outcome {
                Appended::New => Came::New,
                Appended::Duplicate => Came::Known,
                Appended::Conflict => Came::Out(Why::Differs),
                Appended::Refused(_) => Came::Out(Why::Unsound),
            };
            put(self.came, place, what);
        }
        Ok(())
    }
}

const fn said(why: NotBrought) -> Why {
    match why {
        NotBrought::OtherHome => Why::OtherHome,
        NotBrought::Consent => Why::Consent,
        NotBrought::Coach => Why::Coach,
        NotBrought::Lacks => Why::Lacks,
        NotBrought::Other => Why::Unsound,
    }
}
