//! An account is erased, by whoever showed just now that it is theirs.

use super::view;
use crate::empty;
use crate::fault::told;
use crate::host::Host;
use crate::signed::{Signed, ending};
use axum::extract::State;
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use sayso_web::Error;
use std::sync::Arc;

const FIRST_SIGN_IN: &str = "/sign-in?again=yes&to=/account/erase";

pub async fn show(State(host): State<Arc<Host>>, signed: Signed, headers: HeaderMap) -> Response {
    if !host.people.is_fresh(&signed.session, host.now()) {
        return Redirect::to(FIRST_SIGN_IN).into_response();
    }
    let l = signed.locale(&headers);
    view::erase(&l, signed.account.name.as_str(), host.people.lifetimes(), false).into_response()
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
            let page = view::erase(&l, signed.account.name.as_str(), host.people.lifetimes(), true);
            Ok((StatusCode::CONFLICT, page).into_response())
        }
        Err(other) => Err(told(other)),
    }
}
