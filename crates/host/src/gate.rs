//! The gate before each room: what its address takes, and whether the account has it.

use crate::asked::{self, AnyOf};
use crate::desk;
use crate::fault::told;
use crate::host::Host;
use crate::news;
use crate::pages::shut;
use crate::signed::Signed;
use crate::stories::Stories;
use crate::to_home::ToHome;
use axum::extract::{MatchedPath, Request, State};
use axum::http::{HeaderName, HeaderValue};
use axum::middleware::Next;
use axum::response::Response;
use sayso_model::HomeId;
use sayso_people::db::TALK;
use sayso_people::{Allowed, Capability};
use sayso_web::Error;
use sayso_web::leave::{Leave, NewProposal};
use sayso_web::reading::asks_json;
use sayso_web::told::no_such_page;
use sayso_wording::Locale;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Says to the browser's worker for which home it may keep a page (`client/worker.js`).
const KEEP: HeaderName = HeaderName::from_static("sayso-keep");

/// Middleware on every route of a home: closed unless the table opens it for this account, now. Of what a coach proposed there it
/// is remembered who wrote it.
///
/// # Errors
/// [`Error::NotFound`] for a home that the account has nothing to do with, as for an address that is not there;
/// [`Error::Forbidden`], [`Error::NotFresh`].
pub async fn guard(State(host): State<Arc<Host>>, mut request: Request, next: Next) -> Result<Response, Error> {
    let extensions = request.extensions();
    let (Some(path), Some(to)) = (extensions.get::<MatchedPath>(), extensions.get::<ToHome>().cloned()) else {
        return Err(no_such_page().await);
    };
    let signed = extensions.get::<Signed>().cloned().ok_or(Error::NotSignedIn)?;
    let Some(any_of) = asked::of(request.method(), path.as_str()) else { return Err(no_such_page().await) };
    let home = to.home;
    let role = to.who.memberships.iter().find(|m| m.part.scope().home() == Some(to.home)).map(|m| m.part);
    let locale = signed.locale(request.headers());
    let page = (asked::page_of(path.as_str()), request.method().is_safe(), locale);
    let tells = page.1 && news::is_first(path.as_str());
    let (by, mut leave) = match visit(&host, &signed, any_of, page, to).await {
        Ok(found) => found,
        // A page is told with the ways out; scripts get the error as it is.
        Err(Error::Forbidden(why)) if !asks_json(request.headers()) && request.method().is_safe() => {
            return Ok(shut::out(&signed, request.headers(), role, why));
        }
        Err(other) => return Err(other),
    };
    // Where one writes, pages are kept for the time without a network; where one only looks, nothing is.
    let kept = if leave.may(Capability::Record, host.now()) { home.to_string() } else { "no".to_owned() };
    if tells {
        leave.news = news::at(&host, &leave).await?;
    }
    request.extensions_mut().insert(leave);
    let mut response = next.run(request).await;
    response.headers_mut().insert(KEEP, HeaderValue::from_str(&kept).map_err(Error::internal)?);
    if let Some(NewProposal(event)) = response.extensions_mut().remove() {
        host.people.witness_proposal(&by, &event, host.now()).await.map_err(told)?;
    }
    Ok(response)
}

/// Whether it only writes down what happens, and shows nothing.
fn writes_only(leave: &Allowed, reads: bool) -> bool {
    !reads && leave.capability == Capability::Record
}

/// Asks for one of several capabilities in a home, for a page of that name, read or written to, and by whoever reads it so: by which leave,
/// and what pages go by.
///
/// # Errors
/// As [`guard`].
pub async fn visit(
    host: &Host,
    signed: &Signed,
    any_of: AnyOf,
    (page, reads, locale): (&str, bool, Locale),
    to: ToHome,
) -> Result<(Allowed, Leave), Error> {
    let (now, stories) = (host.now(), Stories(&host.server));
    let visit = host.people.visit(&signed.session, to.who, any_of, to.home, &stories, now).await;
    let visit = visit.inspect_err(|error| note(error, signed, to.home)).map_err(told)?;
    // Before this look is noted: an answer is new to whoever has not looked since it came.
    let (mut unread, mut looked_at) = (BTreeSet::new(), now);
    if page == TALK && reads && visit.leave.capability == Capability::Advise {
        unread = desk::unread(host, visit.leave.account, to.home).await?;
        looked_at = host.now();
    }
    if !asked::is_frame(any_of) && !writes_only(&visit.leave, reads) {
        host.people.looked(&visit, page, looked_at).await.map_err(told)?;
    }
    let leave = Leave {
        who: visit.who,
        name: signed.account.name.clone(),
        locale,
        known: visit.known,
        person: visit.leave.person,
        fresh: host.people.is_fresh(&signed.session, now),
        homes: to.homes,
        news: Vec::new(),
        unread,
    };
    Ok((visit.leave, leave))
}

/// A refusal stands in the log: who, where, why; nothing of what was asked for.
fn note(error: &sayso_people::Error, signed: &Signed, home: HomeId) {
    if let sayso_people::Error::Denied(why) = error {
        tracing::warn!("Account {} was denied something in home {home}: {why}.", signed.account.id);
    }
}
