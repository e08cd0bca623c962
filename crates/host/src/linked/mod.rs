//! Notebooks at home that are linked to a home here: their side of the talk is `sayso_linked`. Each request names its key, which is
//! bound to one home and asked anew each time. Nothing that comes so is witnessed: a notebook has no account.

mod events;
mod key;
mod media;
mod who;

use crate::fault::told;
use crate::host::Host;
use crate::stories::opening;
use axum::Json;
use axum::Router;
use axum::extract::{DefaultBodyLimit, State};
use axum::http::StatusCode;
use axum::routing::{get, post};
pub use key::holds_records;
use sayso_linked::letters;
use sayso_people::may::who_can_see;
use sayso_people::{HomeNow, Role};
use sayso_store::MOST_CLIP_BYTES;
use sayso_web::Error;
use std::collections::BTreeSet;
use std::sync::Arc;
use who::{Refused, Who};

/// Routes that notebooks ask.
pub fn router() -> Router<Arc<Host>> {
    let one = post(media::put).get(media::get).layer(DefaultBodyLimit::max(MOST_CLIP_BYTES));
    Router::new()
        .route(letters::KEY, post(key::give))
        .route(letters::EVENTS, get(events::give).post(events::take))
        .route(letters::ABOUT, get(about))
        .route(letters::MEDIA, get(media::list))
        .route("/linked/media/{hash}", one)
        .route(letters::END, post(end))
}

/// What the home is called here, and who of a club sees something of it at this moment: so that whoever sends knows to whom.
async fn about(State(host): State<Arc<Host>>, who: Who) -> Result<Json<letters::About>, Refused> {
    let (home, now) = (who.home(), host.now());
    let witnessed = host.people.witnessed(home).await.map_err(told)?;
    let story = opening(&host.server, &[home]).await.map_err(Error::from)?.remove(&home).unwrap_or_default();
    let known = HomeNow::of(home, &story, &witnessed, now);
    let around = host.people.all_around(home).await.map_err(told)?;
    let seen = who_can_see(&known, &around, now);
    let coaches: BTreeSet<_> = seen.iter().filter(|sees| sees.role == Role::Coach).map(|sees| sees.account).collect();
    let mut names = Vec::new();
    for account in coaches {
        names.extend(host.people.account(account).await.map_err(told)?.map(|account| account.name.to_string()));
    }
    names.sort();
    let name = story.home().map(|card| card.name.to_string()).unwrap_or_default();
    let records = u64::try_from(who.log(&host).revision().await?.0).unwrap_or(0);
    Ok(Json(letters::About { name, coaches: names, witnessed: witnessed.into_iter().collect(), records }))
}

/// A notebook goes.
async fn end(State(host): State<Arc<Host>>, who: Who) -> Result<StatusCode, Refused> {
    host.people.notebook_goes(&who.0, host.now()).await.map_err(told)?;
    tracing::info!("A notebook unlinked itself from home {}.", who.home());
    Ok(StatusCode::NO_CONTENT)
}
