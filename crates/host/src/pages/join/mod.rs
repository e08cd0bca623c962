//! Joining by an invitation: what one is invited to, and in.

mod view;

use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::onward::Onward;
use crate::place::{self, Place};
use crate::reader::Reads;
use crate::signed::{Signed, keeping};
use axum::Router;
use axum::extract::{Extension, Path, State};
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{AppendHeaders, IntoResponse, Redirect, Response};
use axum::routing::get;
use maud::Markup;
use sayso_people::db::{Invited, Joined, Taker};
use sayso_people::{OsSecrets, Secret};
use sayso_web::Error;
use sayso_web::device::kind_of;
use sayso_web::form::Form;
use sayso_web::pages::homes::remembering;
use sayso_web::typed::{Typed, again};
use std::sync::Arc;

/// Routes of the pages.
pub fn router() -> Router<Arc<Host>> {
    Router::new().route("/join/{secret}", get(show).post(join)).route("/welcome", get(welcome))
}

async fn show(State(host): State<Arc<Host>>, Path(secret): Path<String>, reads: Reads) -> Result<Response, Error> {
    let secret = Secret::typed(&secret);
    let (invited, place) = match found(&host, &secret).await? {
        Found::Holds(invited, place) => (invited, place),
        Found::Kept => return Ok((StatusCode::CONFLICT, view::kept(&reads.locale)).into_response()),
        Found::Gone => {
            // Nobody but who took it is told that it was taken.
            if let Some(signed) = &reads.signed
                && let Some(part) = host.people.took(&secret, signed.account.id).await.map_err(told)?
            {
                return Ok(view::yours(&reads.locale, &place::of(&host, &part).await?.begins).into_response());
            }
            return Ok(gone(&reads));
        }
    };
    // Whom it names is likely who came; a home that lost its way in names nobody.
    let named = place.person.as_ref().filter(|_| invited.opens_at.is_none());
    let typed = named.map_or_else(Typed::default, |name| Typed::default().with("name", name));
    Ok(view::invitation(&host, &reads, &typed, &secret, &invited, &place).into_response())
}

/// What became of an invitation.
enum Found {
    /// It holds, with its place.
    Holds(Invited, Place),
    /// It was for a first keeper, and somebody else came first.
    Kept,
    /// Unknown, used, ended and too old are one to whoever asks.
    Gone,
}

async fn found(host: &Host, secret: &Secret) -> Result<Found, Error> {
    match host.people.invitation(secret, host.now()).await {
        Ok(invited) => Ok(Found::Holds(invited, place::of(host, &invited.part).await?)),
        Err(sayso_people::Error::Taken) => Ok(Found::Kept),
        Err(sayso_people::Error::NotValid) => Ok(Found::Gone),
        Err(other) => Err(told(other)),
    }
}

fn gone(reads: &Reads) -> Response {
    (StatusCode::NOT_FOUND, view::gone(&reads.locale)).into_response()
}

async fn join(
    State(host): State<Arc<Host>>,
    Path(secret): Path<String>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    typed: Typed,
) -> Result<Response, Error> {
    let mut typed = typed.only(&["name"])?.read_by(reads.locale);
    let secret = Secret::typed(&secret);
    let name = if reads.signed.is_none() { typed.label("name") } else { None };
    let taker = match (&reads.signed, &name) {
        (Some(signed), _) => Taker::Known(&signed.session),
        (None, Some(name)) => Taker::New { name, language: reads.locale.language },
        (None, None) => {
            let Found::Holds(invited, place) = found(&host, &secret).await? else { return Ok(gone(&reads)) };
            return Ok(again(view::invitation(&host, &reads, &typed, &secret, &invited, &place)));
        }
    };
    let device = kind_of(&headers);
    match host.people.take_invitation(&secret, taker, &from, device, host.now(), &mut OsSecrets).await {
        Ok(joined) => {
            let role = joined.part.role().name();
            tracing::info!("An invitation to be {role} was taken from {from}.");
            onward(&host, joined).await
        }
        Err(sayso_people::Error::NotValid) => {
            tracing::warn!("An invitation that does not hold was tried from {from}.");
            Ok(gone(&reads))
        }
        Err(sayso_people::Error::NotYet) => {
            let Found::Holds(invited, place) = found(&host, &secret).await? else { return Ok(gone(&reads)) };
            let page = view::invitation(&host, &reads, &typed, &secret, &invited, &place);
            Ok((StatusCode::CONFLICT, page).into_response())
        }
        Err(sayso_people::Error::Taken) => Ok((StatusCode::CONFLICT, view::taken(&reads.locale)).into_response()),
        Err(other) => Err(told(other)),
    }
}

/// To where the role begins; whoever is new is offered a passkey on the way.
async fn onward(host: &Host, joined: Joined) -> Result<Response, Error> {
    let begins = place::of(host, &joined.part).await?.begins;
    let home = joined.part.scope().home().map(|home| (SET_COOKIE, remembering(home)));
    let to = if joined.session.is_some() { format!("/welcome?to={begins}") } else { begins };
    let session = joined.session.map(|(_, token)| (SET_COOKIE, keeping(host, &token)));
    let cookies: Vec<_> = session.into_iter().chain(home).collect();
    Ok((AppendHeaders(cookies), Redirect::to(&to)).into_response())
}

async fn welcome(State(host): State<Arc<Host>>, reads: Reads, signed: Signed, Form(onward): Form<Onward>) -> Markup {
    let provider = host.provider.as_ref().map(|provider| &provider.name);
    view::welcome(&reads.locale, signed.account.name.as_str(), &onward.path(), provider)
}
