//! A code is exchanged for a key, where notebook and server hold records of one home.

use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::json::Sent;
use crate::stories::opening;
use axum::Json;
use axum::extract::{Extension, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use sayso_linked::letters::{AsksForKey, GivesKey, MOST_KNOWN, NoKey, NoKeyFor};
use sayso_model::{Body, Event, HomeId, Story};
use sayso_people::{OsSecrets, Secret};
use sayso_store::Revision;
use sayso_web::Error;
use std::sync::Arc;

/// Most that joining writes, by far.
const MOST_JOINING: Revision = Revision(500);

/// Gives the key, once.
///
/// # Errors
/// Where a database fails; too many tries.
pub async fn give(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    Sent(asks): Sent<AsksForKey>,
) -> Result<Response, Error> {
    let (code, now) = (Secret::typed(&asks.code), host.now());
    let home = match host.people.notebook_code(&code, &from, now).await {
        Ok(home) => home,
        Err(sayso_people::Error::NotValid) => {
            tracing::warn!("A code for a notebook that does not hold was tried from {from}.");
            return Ok(no_key(NoKeyFor::Code));
        }
        Err(other) => return Err(told(other)),
    };
    if !is_one_home(&host, home, &asks).await? {
        // The code still holds: the notebook of the right home may come yet.
        return Ok(no_key(NoKeyFor::OtherHome));
    }
    match host.people.link_notebook(&code, &asks.name, now, &mut OsSecrets).await {
        Ok((notebook, key)) => {
            tracing::info!("A notebook was linked to home {} from {from}.", notebook.home);
            let story = opening(&host.server, &[home]).await?.remove(&home).unwrap_or_default();
            let name = story.home().map(|card| card.name.to_string()).unwrap_or_default();
            Ok(Json(GivesKey { key: key.reveal().to_owned(), home, name }).into_response())
        }
        Err(sayso_people::Error::NotValid) => Ok(no_key(NoKeyFor::Code)),
        Err(other) => Err(told(other)),
    }
}

fn no_key(why: NoKeyFor) -> Response {
    let status = match why {
        NoKeyFor::Code => StatusCode::NOT_FOUND,
        NoKeyFor::OtherHome => StatusCode::CONFLICT,
    };
    (status, Json(NoKey { no_key: why })).into_response()
}

/// Two homes are not mixed: one of the logs is empty, or the notebook came from here, or moved in here before.
async fn is_one_home(host: &Host, home: HomeId, asks: &AsksForKey) -> Result<bool, Error> {
    let log = host.server.home(home);
    let grown = log.revision().await?;
    if asks.home == Some(home) || asks.known.is_empty() {
        return Ok(true);
    }
    if log.knows_any(asks.known.get(..MOST_KNOWN).unwrap_or(&asks.known)).await? {
        return Ok(true);
    }
    // Empty as it is, it is the home of the notebook that was linked first, and has sent nothing yet.
    if !host.people.notebooks(home, host.now()).await.map_err(told)?.is_empty() {
        return Ok(false);
    }
    if grown == Revision(0) {
        return Ok(true);
    }
    // A long log holds more than that, and is not read for it; so does one of which this version does not understand everything.
    if grown > MOST_JOINING || !log.not_understood(home).await?.is_empty() {
        return Ok(false);
    }
    Ok(!holds_records(&*log.story(home).await?))
}

/// Whether a home holds more than joining writes: consents, cards of people who were invited, and what coach and home said of the whole
/// home. These mix with nothing.
#[must_use]
pub fn holds_records(story: &Story) -> bool {
    let of_joining = |event: &Event| match &event.body {
        Body::ConsentGiven(_) | Body::ConsentTakenBack(_) | Body::PersonCard(_) => true,
        Body::Proposal(_) | Body::ProposalAnswer(_) => event.animal.is_none(),
        _ => false,
    };
    story.ledger().all().any(|event| !of_joining(event))
}
