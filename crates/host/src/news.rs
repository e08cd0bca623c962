//! What whoever keeps a home, or is of it, has to know before anything else.

use crate::fault::told;
use crate::host::Host;
use crate::stories::opening;
use sayso_model::event::Part as _;
use sayso_model::{Consent, ConsentGiven, ConsentTakenBack, EventId, HomeId, Kind, Moment, Story};
use sayso_people::db::Rescue;
use sayso_people::{Capability, HomeNow};
use sayso_web::Error;
use sayso_web::leave::{Leave, News};

/// Pages that one looks at first.
const FIRST: [&str; 2] = ["/a/{animal}/today", "/a/{animal}/board"];

/// Whether a page is one of those that one looks at first.
pub fn is_first(route: &str) -> bool {
    FIRST.contains(&route)
}

/// What is told of on such a page.
///
/// # Errors
/// Where a database fails.
pub async fn at(host: &Host, leave: &Leave) -> Result<Vec<News>, Error> {
    let (now, home) = (host.now(), leave.known.home);
    let mut all = Vec::new();
    if !leave.may(Capability::SeePeople, now) {
        return Ok(all);
    }
    for one in open_rescues(host, home, now).await? {
        all.push(News::Anew { by: one.made_by, opens_at: one.opens_at });
    }
    if leave.may(Capability::Consent, now)
        && let Some(at) = lately_restored(host, now).await?
        && waits_here(host, home, &leave.known).await?
    {
        all.push(News::Restored { at });
    }
    Ok(all)
}

/// Invitations by which a new keeper, whom a keeper of the server invited, may still come to a home.
///
/// # Errors
/// Where the database fails.
pub async fn open_rescues(host: &Host, home: HomeId, now: Moment) -> Result<Vec<Rescue>, Error> {
    let holds_s = host.people.lifetimes().invitation_s;
    let mut all = host.people.rescues(home).await.map_err(told)?;
    all.retain(|one| one.is_open(now, holds_s));
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

async fn waits_here(host: &Host, home: HomeId, known: &HomeNow) -> Result<bool, Error> {
    let ended = host.people.ended_by_restore(home).await.map_err(told)?;
    if ended.is_empty() {
        return Ok(false);
    }
    let story = opening(&host.server, &[home]).await?.remove(&home).unwrap_or_default();
    Ok(waits(&story, known, &ended))
}

/// Whether one of the consents that ended as the server was brought back was neither given anew nor taken back.
pub fn waits(story: &Story, known: &HomeNow, ended: &[EventId]) -> bool {
    let back: Vec<EventId> = story
        .as_recorded(Kind::ConsentTakenBack)
        .filter_map(|event| Some(ConsentTakenBack::of(&event.body)?.given))
        .collect();
    let waits = |consent: Consent| !known.consents.is_open(consent);
    let given = story.as_recorded(Kind::ConsentGiven).filter(|e| ended.contains(&e.id) && !back.contains(&e.id));
    given.filter_map(|event| Some(ConsentGiven::of(&event.body)?.consent)).any(waits)
}
