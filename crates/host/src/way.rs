//! The way from a request to a home's rooms: which of the account's homes is it about?

use crate::fault::told;
use crate::host::Host;
use crate::inside;
use crate::pages::shut;
use crate::signed::Signed;
use crate::stories::story;
use crate::to_home::ToHome;
use axum::extract::{MatchedPath, Request, State};
use axum::http::header::{ACCEPT, SET_COOKIE};
use axum::http::{HeaderMap, HeaderValue, Uri};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use sayso_model::{AnimalId, HomeId, Story};
use sayso_people::{HomeNow, Who};
use sayso_web::Error;
use sayso_web::leave::Leave;
use sayso_web::page::{HOME_COOKIE, HOME_QUERY, OfNoHome, cookie, is_common};
use sayso_web::pages::homes::remembering;
use sayso_web::reading::{Reader, asks_json};
use sayso_wording::words;
use std::collections::BTreeSet;
use std::sync::Arc;
use tower::ServiceExt;
use uuid::Uuid;

/// The page on which one of several homes is chosen, or that says there is none.
pub const CHOOSE: &str = "/homes";

/// Hands a request to the rooms of the home it is about. The gate there asks for leave.
///
/// # Errors
/// [`Error::NotSignedIn`]; [`Error::NotFound`] where the address names a home that is not, or no longer, one of the account's: what
/// was meant for one home never goes to another; where the database fails.
pub async fn home(State(host): State<Arc<Host>>, mut request: Request) -> Result<Response, Error> {
    let signed = request.extensions().get::<Signed>().cloned().ok_or(Error::NotSignedIn)?;
    let Some(ToHome { who, home: first, homes }) = chosen(&host, &signed, request.headers()).await? else {
        return homeless(&host, signed, request).await;
    };
    let own = |id: Option<HomeId>| id.filter(|id| homes.contains(id)).ok_or_else(not_among);
    let named = home_in(request.uri()).map(own).transpose()?;
    let animals = match animal_in(request.uri().path()) {
        Some(animal) => home_of(&host, animal, named.unwrap_or(first), &homes).await?,
        None => None,
    };
    let home = animals.or(named).unwrap_or(first);
    // What this browser was about is theirs no more: nobody is put into another home without a word.
    if named.is_none() && animals.is_none() && was_lost(request.headers(), &homes) {
        if !request.method().is_safe() || asks_json(request.headers()) {
            return Err(not_among());
        }
        if is_page(request.headers()) {
            let mut response = shut::lost(&signed, request.headers());
            let forgets = HeaderValue::from_str(&remembering(first)).map_err(Error::internal)?;
            response.headers_mut().append(SET_COOKIE, forgets);
            return Ok(response);
        }
    }
    // The rooms are a house of their own: an address matched on the way would be put before theirs.
    request.extensions_mut().remove::<MatchedPath>();
    request.extensions_mut().insert(ToHome { who, home, homes });
    if request.uri().path().starts_with("/api/") {
        // The notebook's own API does not know it.
        *request.uri_mut() = without_home(request.uri())?;
    }
    let mut response = match inside::of(&host, home).oneshot(request).await {
        Ok(response) => response,
        Err(never) => match never {},
    };
    // From here on this browser is about the home that was named: where the answer leads, too.
    if let Some(named) = named.filter(|named| *named != first) {
        let cookie = HeaderValue::from_str(&remembering(named)).map_err(Error::internal)?;
        response.headers_mut().append(SET_COOKIE, cookie);
    }
    Ok(response)
}

/// What whoever belongs to no home is answered: what holds nothing of any; else the page that says there is none, and to programs an
/// error.
async fn homeless(host: &Arc<Host>, signed: Signed, mut request: Request) -> Result<Response, Error> {
    if is_common(request.method(), request.uri().path()) {
        let (nowhere, now) = (HomeId(Uuid::nil()), host.now());
        let known = HomeNow::of(nowhere, &Story::default(), &BTreeSet::new(), now);
        let who = Who { account: signed.account.id, memberships: Vec::new() };
        let name = signed.account.name.clone();
        let locale = signed.locale(request.headers());
        if let Some(reader) = request.extensions().get::<Reader>() {
            reader.is(locale);
        }
        let leave = Leave {
            who,
            name,
            locale,
            known,
            person: None,
            fresh: false,
            homes: Vec::new(),
            news: Vec::new(),
            unread: BTreeSet::new(),
        };
        request.extensions_mut().remove::<MatchedPath>();
        request.extensions_mut().insert(leave);
        request.extensions_mut().insert(OfNoHome);
        return match inside::common(host).oneshot(request).await {
            Ok(response) => Ok(response),
            Err(never) => match never {},
        };
    }
    if asks_json(request.headers()) || request.uri().path().starts_with("/api/") {
        return Err(Error::Forbidden(words!(homes::none_for_programs)));
    }
    Ok(Redirect::to(CHOOSE).into_response())
}

/// The home that a browser is about: as it chose, else the account's first; none where there is none.
///
/// # Errors
/// Where the database fails.
pub async fn chosen(host: &Host, signed: &Signed, headers: &HeaderMap) -> Result<Option<ToHome>, Error> {
    let who = host.people.who(signed.account.id).await.map_err(told)?;
    let homes = homes_of(host, &who).await?;
    let home = remembered(headers).filter(|id| homes.contains(id)).or(homes.first().copied());
    Ok(home.map(|home| ToHome { who, home, homes }))
}

/// A page of the server about the home that its address names: the browser is about that home from there on, as after choosing
/// it, whichever it was about before.
///
/// # Errors
/// [`Error::NotFound`] where the address names a home that is not, or no longer, one of the account's; where the database fails.
pub async fn to_named(State(host): State<Arc<Host>>, request: Request, next: Next) -> Result<Response, Error> {
    let signed = request.extensions().get::<Signed>().cloned();
    let (Some(named), Some(signed), true) = (home_in(request.uri()), signed, request.method().is_safe()) else {
        return Ok(next.run(request).await);
    };
    let homes = chosen(&host, &signed, request.headers()).await?.map_or_else(Vec::new, |to| to.homes);
    let home = named.filter(|id| homes.contains(id)).ok_or_else(not_among)?;
    let to = without_home(request.uri())?.to_string();
    Ok(([(SET_COOKIE, remembering(home))], Redirect::to(&to)).into_response())
}

fn not_among() -> Error {
    Error::NotFound(words!(sharing::not_among))
}

/// Whether a browser was about a home that is not one of these.
pub fn was_lost(headers: &HeaderMap, homes: &[HomeId]) -> bool {
    remembered(headers).is_some_and(|id| !homes.contains(&id))
}

/// The home that a browser was about last, whether it is one's own or not.
fn remembered(headers: &HeaderMap) -> Option<HomeId> {
    cookie(headers, HOME_COOKIE)?.parse().ok()
}

/// Whether a browser asks for a page, to be shown.
fn is_page(headers: &HeaderMap) -> bool {
    headers.get(ACCEPT).is_some_and(|accept| accept.as_bytes().starts_with(b"text/html"))
}

/// The homes an account belongs to, then those that may share something with it.
///
/// # Errors
/// Where the database fails.
pub async fn homes_of(host: &Host, who: &Who) -> Result<Vec<HomeId>, Error> {
    let mut homes: Vec<HomeId> = who.memberships.iter().filter_map(|m| m.part.scope().home()).collect();
    for shared in host.people.may_share_with(who).await.map_err(told)? {
        if !homes.contains(&shared) {
            homes.push(shared);
        }
    }
    Ok(homes)
}

/// Whether an address names a home, and which, if that is a home's id at all.
fn home_in(uri: &Uri) -> Option<Option<HomeId>> {
    let mut pairs = uri.query()?.split('&').filter_map(|pair| pair.split_once('='));
    pairs.find(|(name, _)| *name == HOME_QUERY).map(|(_, id)| id.parse().ok())
}

/// An address without the home it names.
fn without_home(uri: &Uri) -> Result<Uri, Error> {
    let pairs = uri.query().unwrap_or_default().split('&');
    let named = |pair: &&str| pair.split_once('=').is_none_or(|(name, _)| name != HOME_QUERY) && !pair.is_empty();
    let kept: Vec<&str> = pairs.filter(named).collect();
    let path = uri.path();
    let to = if kept.is_empty() { path.to_owned() } else { format!("{path}?{}", kept.join("&")) };
    to.parse().map_err(Error::internal)
}

/// The animal that an address is about: `/a/{animal}/…`, `/sheets/{animal}/…`, `/people/animal/{animal}`, `/api/…/{animal}`.
fn animal_in(path: &str) -> Option<AnimalId> {
    let mut parts = path.split('/').skip(1);
    let id = match (parts.next()?, parts.next()?) {
        ("a" | "sheets", id) => id,
        ("people", "animal") | ("api", "board" | "evidence" | "listen") => parts.next()?,
        _ => return None,
    };
    id.parse().ok()
}

/// The home that an animal lives in, of those of the account, the chosen one before others.
async fn home_of(host: &Host, animal: AnimalId, chosen: HomeId, homes: &[HomeId]) -> Result<Option<HomeId>, Error> {
    for home in std::iter::once(chosen).chain(homes.iter().copied().filter(|id| *id != chosen)) {
        if story(host, home).await?.is_some_and(|story| story.animals().contains_key(&animal)) {
            return Ok(Some(home));
        }
    }
    Ok(None)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_about_an_animal_are_known() {
        let id = "01890000-0000-7000-8000-000000000001";
        for path in ["/a/{}/board", "/sheets/{}/progress", "/people/animal/{}", "/api/board/{}", "/api/evidence/{}"] {
            assert_eq!(animal_in(&path.replace("{}", id)).map(|a| a.to_string()).as_deref(), Some(id), "{path}");
        }
        for path in ["/", "/people", "/a", "/sheets/rules", "/people/animal/new", "/api/events", "/log"] {
            assert_eq!(animal_in(path), None, "{path}");
        }
    }
}
