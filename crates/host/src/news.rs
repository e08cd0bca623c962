//! What whoever keeps a home, or is of it, has to know before anything else.

use crate::fault::told;
use crate::host::Host;
use crate::stories::opening;
use sayso_model::event::Part as _;
use sayso_model::{Consent, ConsentGiven, ConsentTakenBack, EventId, HomeId, Kind, Moment};
use sayso_people::{Capability, HomeNow};
use sayso_web::Error;
use sayso_web::leave::{Leave, News};

/// Pages that one looks at first.
const FIRST: [&str; 2] = ["/a/{animal}/today", "/a/{animal}/board"];

/// What is told of on a page; nothing on others than those that one looks at first.
///
/// # Errors
/// Where a database fails.
pub async fn at(host: &Host, route: &str, leave: &Leave) -> Result<Vec<News>, Error> {
    let (now, home) = (host.now(), leave.known.home);
    let mut all = Vec::new();
    if !FIRST.contains(&route) || !leave.may(Capability::SeePeople, now) {
        return Ok(all);
    }
    let lifetimes = host.people.lifetimes();
    let rescues = host.people.rescues(home).await.map_err(told)?;
    for one in rescues.into_iter().filter(|one| one.is_open(now, lifetimes.invitation_s)) {
        all.push(News::Anew { by: one.made_by, opens_at: one.opens_at });
    }
    if leave.may(Capability::Consent, now)
        && let Some(at) = lately_restored(host, now).await?
        && waits(host, home, &leave.known).await?
    {
        all.push(News::Restored { at });
    }
    Ok(all)
}

/// When the server was brought back from a backup, where that was in the last weeks.
///
/// # Errors
/// Where the database fails.
pub async fn lately_restored(host: &Host, now: Moment) -> Result<Option<Moment>, Error> {
    Ok(host.people.restored_at().await.map_err(told)?.filter(|at| is_lately(host, *at, now)))
}

/// Whether something is so few weeks ago that people are still told of it.
pub fn is_lately(host: &Host, at: Moment, now: Moment) -> bool {
    now < at.plus_seconds(f64::from(host.people.lifetimes().kept_days) * 86_400.0)
}

/// Whether a consent that ended as the server was brought back was neither given anew nor taken back.
async fn waits(host: &Host, home: HomeId, known: &HomeNow) -> Result<bool, Error> {
    let ended = host.people.ended_by_restore(home).await.map_err(told)?;
    if ended.is_empty() {
        return Ok(false);
    }
    let story = opening(&host.server, &[home]).await?.remove(&home).unwrap_or_default();
    let back: Vec<EventId> = story
        .as_recorded(Kind::ConsentTakenBack)
        .filter_map(|event| Some(ConsentTakenBack::of(&event.body)?.given))
        .collect();
    let waits = |consent: Consent| !known.consents.is_open(consent);
    let given = story.as_recorded(Kind::ConsentGiven).filter(|e| ended.contains(&e.id) && !back.contains(&e.id));
    Ok(given.filter_map(|event| Some(ConsentGiven::of(&event.body)?.consent)).any(waits))
}
