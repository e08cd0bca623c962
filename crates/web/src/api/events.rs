//! Events in and out.

use crate::error::{Error, ProblemJson};
use crate::reading::Reads;
use crate::state::AppState;
use crate::store::{Appended, Revision};
use axum::Json;
use axum::body::Bytes;
use axum::extract::rejection::{BytesRejection, QueryRejection};
use axum::extract::{Query, State};
use axum::http::StatusCode;
use sayso_model::talks::{invites_closing, plan_lines, plans_inviting};
use sayso_model::{Event, Fault, HomeId, Problem, Problems, Story};
use sayso_store::{NotRead, read_event};
use sayso_wording::{Locale, words};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use std::collections::BTreeSet;

/// Most events in one request.
pub const MOST_EVENTS: usize = 500;
/// Most events in one answer.
const MOST_LISTED: usize = 1_000;

/// What came of one event.
#[derive(Debug, Serialize)]
pub struct Outcome {
    /// Its id, where it could be read.
    id: Option<String>,
    /// What came of it.
    result: &'static str,
    /// What is wrong with it, if refused or in conflict.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    problems: Vec<ProblemJson>,
}

/// Takes a JSON array of events. Each is answered for itself, in order, so that one bad event stops no other.
///
/// # Errors
/// [`Error::BadRequest`] where the body is no JSON array of at most [`MOST_EVENTS`], with line and column.
pub async fn append(
    State(state): State<AppState>,
    Reads(locale): Reads,
    body: Result<Bytes, BytesRejection>,
) -> Result<Json<Vec<Outcome>>, Error> {
    let mut brought = Brought::of(&locale, body)?;
    let homes: BTreeSet<HomeId> =
        brought.sound().filter(|event| plans_inviting(&event.body)).map(|event| event.home).collect();
    for home in homes {
        let story = state.store.story(home).await?;
        brought.refuse(&locale, |event| if event.home == home { plan_refused(&story, event) } else { None });
    }
    let appended = state.store.append(brought.sound().cloned().collect()).await?;
    brought.told(&locale, appended).map(Json)
}

/// Events of a request: read, or refused with what is wrong.
#[derive(Debug)]
pub struct Brought(Vec<Result<Event, Outcome>>);

impl Brought {
    /// Reads a JSON array of events.
    ///
    /// # Errors
    /// [`Error::BadRequest`] where the body is no JSON array of at most [`MOST_EVENTS`], with line and column.
    pub fn of(locale: &Locale, body: Result<Bytes, BytesRejection>) -> Result<Self, Error> {
        let body = body.map_err(|e| body_error(&e, crate::MOST_BODY))?;
        let raw: Vec<&RawValue> = serde_json::from_slice(&body)
            .map_err(|e| Error::BadRequest(words!(errors::no_array, line = e.line(), column = e.column().max(1))))?;
        if raw.len() > MOST_EVENTS {
            return Err(Error::BadRequest(words!(errors::too_many_events, most = MOST_EVENTS, got = raw.len())));
        }
        Ok(Self(raw.into_iter().map(|raw| event(locale, raw.get())).collect()))
    }

    /// Those that could be read, in order.
    pub fn sound(&self) -> impl Iterator<Item = &Event> {
        self.0.iter().filter_map(|read| read.as_ref().ok())
    }

    /// Refuses those that could be read and of which something is wrong all the same.
    fn refuse(&mut self, locale: &Locale, wrong: impl Fn(&Event) -> Option<Problems>) {
        for read in &mut self.0 {
            if let Ok(event) = read
                && let Some(problems) = wrong(event)
            {
                *read = Err(outcome(locale, event, Appended::Refused(problems)));
            }
        }
    }

    /// What is answered, by what came of each that could be read, in order.
    ///
    /// # Errors
    /// Where there are too few.
    pub fn told(self, locale: &Locale, appended: impl IntoIterator<Item = Appended>) -> Result<Vec<Outcome>, Error> {
        let mut appended = appended.into_iter();
        let outcomes = self.0.into_iter().map(|read| match read {
            Err(refused) => Ok(refused),
            Ok(event) => appended
                .next()
                .map(|a| outcome(locale, &event, a))
                .ok_or_else(|| Error::internal("the store answered for too few events")),
        });
        outcomes.collect()
    }
}

/// What is wrong with a plan, by the log of its home: it would invite a word that ends sessions.
#[must_use]
pub fn plan_refused(story: &Story, event: &Event) -> Option<Problems> {
    // What stands already is answered as such by the log, whatever was marked since.
    if story.ledger().first(event.id).is_some() {
        return None;
    }
    let place = invites_closing(story, plan_lines(&event.body))?;
    Some(Problems(vec![Problem { field: format!("body.lines.{place}.way"), fault: Fault::InvitesClosing }]))
}

/// A body that could not be read whole, in words.
pub fn body_error(error: &BytesRejection, most: usize) -> Error {
    match error.status() {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(most),
        _ => Error::BadRequest(words!(errors::body_broke)),
    }
}

fn event(l: &Locale, raw: &str) -> Result<Event, Outcome> {
    read_event(raw).map_err(|NotRead(found)| {
        #[derive(Deserialize)]
        struct Named {
            id: String,
        }
        Outcome {
            id: serde_json::from_str::<Named>(raw).ok().map(|n| n.id),
            result: "refused",
            problems: found.iter().map(|p| ProblemJson::of_unread(l, p)).collect(),
        }
    })
}

fn outcome(l: &Locale, event: &Event, appended: Appended) -> Outcome {
    let (result, problems) = match appended {
        Appended::New => ("new", Vec::new()),
        Appended::Duplicate => ("duplicate", Vec::new()),
        Appended::Conflict => ("conflict", vec![Problem { field: "id".into(), fault: Fault::IdTaken }]),
        Appended::Refused(Problems(found)) => ("refused", found),
    };
    let problems = problems.iter().map(|p| ProblemJson::of(l, p)).collect();
    Outcome { id: Some(event.id.to_string()), result, problems }
}

/// Which events to list.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Range {
    #[serde(default)]
    after: i64,
    limit: Option<usize>,
}

/// An event and its place in the order of arrival.
#[derive(Serialize)]
pub struct Listed {
    seq: i64,
    event: Event,
}

/// Events in order of arrival.
#[derive(Serialize)]
pub struct Listing {
    events: Vec<Listed>,
    /// Pass as `after` to go on; none where this is the end for now.
    next: Option<i64>,
}

/// Lists events after a place in the log.
///
/// # Errors
/// [`Error::BadRequest`] for a query that cannot be read.
pub async fn list(
    State(state): State<AppState>,
    range: Result<Query<Range>, QueryRejection>,
) -> Result<Json<Listing>, Error> {
    let Query(range) = range.map_err(|e| Error::BadRequest(words!(errors::request_broken, why = e.body_text())))?;
    let limit = range.limit.unwrap_or(MOST_LISTED);
    if range.after < 0 || !(1..=MOST_LISTED).contains(&limit) {
        return Err(Error::BadRequest(words!(errors::listing_range, most = MOST_LISTED)));
    }
    let found = state.store.events(Revision(range.after), limit).await?;
    let next = (found.len() == limit).then(|| found.last().map(|l| l.at.0)).flatten();
    Ok(Json(Listing { events: found.into_iter().map(|l| Listed { seq: l.at.0, event: l.event }).collect(), next }))
}
