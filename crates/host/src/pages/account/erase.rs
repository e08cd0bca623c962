//! An account is erased, by whoever showed just now that it is theirs.

use super::view;
use crate::empty;
use crate::fault::told;
use crate::host::Host;
use crate::signed::{Signed, ending};
use crate::stories::name_of;
use axum::extract::State;
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use sayso_people::Scope;
use sayso_web::Error;
use std::sync::Arc;

const FIRST_SIGN_IN: &str = "/sign-in?again=yes&to=/account/erase";

pub async fn show(State(host): State<Arc<Host>>, signed: Signed, headers: HeaderMap) -> Result<Response, Error> {
    if !host.people.is_fresh(&signed.session, host.now()) {
        return Ok(Redirect::to(FIRST_SIGN_IN).into_response());
    }
    page(&host, &signed, &headers).await
}

/// The page, with the places that stand in the way and the ways out of each.
async fn page(host: &Host, signed: &Signed, headers: &HeaderMap) -> Result<Response, Error> {
    let l = signed.locale(headers);
    let who = host.people.who(signed.account.id).await.map_err(told)?;
    let mut alone = Vec::new();
    for place in empty::kept_alone(host, &who, None).await?.into_iter().filter(|place| !place.is_empty) {
        let name = match place.scope {
            Scope::Home(home) => Some(name_of(host, &l, home).await?),
            Scope::Club(club) => host.people.club(club).await.map_err(told)?.map(|name| name.to_string()),
            Scope::Server => None,
        };
        alone.push((place.scope, name));
    }
    Ok(view::erase(&l, signed.account.name.as_str(), host.people.lifetimes(), &alone).into_response())
}

pub async fn erase(State(host): State<Arc<Host>>, signed: Signed, headers: HeaderMap) -> Result<Response, Error> {
    let (l, now) = (signed.locale(&headers), host.now());
    if !host.people.is_fresh(&signed.session, now) {
        return Ok(Redirect::to(FIRST_SIGN_IN).into_response());
    }
    let account = signed.account.id;
    let mut erased = host.people.erase_account(account, now).await;
    if matches!(erased, Err(sayso_people::Error::LastKeeper)) && empty::go_along(&host, account, None).await? {
        erased = host.people.erase_account(account, now).await;
    }
    match erased {
        Ok(()) => Ok(([(SET_COOKIE, ending(&host))], view::erased(&l)).into_response()),
        Err(sayso_people::Error::LastKeeper) => {
            Ok((StatusCode::CONFLICT, page(&host, &signed, &headers).await?).into_response())
        }
        Err(other) => Err(told(other)),
    }
}
