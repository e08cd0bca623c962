//! Signing in: by passkey, by a link sent by mail, by a recovery code, by the club's identity provider. And out.

mod passkey;
pub mod provider;
mod view;

use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::mailing;
use crate::noted;
use crate::onward::{self, Onward};
use crate::reader::Reads;
use crate::signed::{Signed, begun, ending, token};
use axum::Router;
use axum::extract::{Extension, Path, State};
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use sayso_model::AccountId;
use sayso_people::db::Linked;
use sayso_people::{Email, OsSecrets, Secret, Session};
use sayso_web::Error;
use sayso_web::device::kind_of;
use sayso_web::form::Form;
use sayso_web::pages::who::own_path;
use sayso_web::typed::{Typed, again};
use sayso_wording::words;
use serde::Deserialize;
use std::sync::Arc;
use view::Ways;

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route("/sign-in", get(show))
        .route("/sign-in/passkey", post(passkey::ask))
        .route("/sign-in/passkey/done", post(passkey::answered))
        .route("/sign-in/link", post(send_link))
        .route("/sign-in/link/{secret}", get(behind_link).post(with_link))
        .route("/sign-in/code", post(with_code))
        .route("/sign-in/provider", get(provider::begin))
        .route(crate::provider::BACK, get(provider::back))
        .route("/sign-out", post(sign_out))
        // Where scripts of the pages lead that are no longer let in.
        .route("/pair", get(|| async { Redirect::to("/sign-in") }))
}

/// The page to open afterwards, and whether someone who is signed in does so once more.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Asked {
    to: Option<String>,
    again: Option<String>,
    /// Whether a form had been sent for which that is needed.
    sent: Option<String>,
}

async fn show(State(host): State<Arc<Host>>, reads: Reads, Form(asked): Form<Asked>) -> Result<Response, Error> {
    let to = own_path(asked.to);
    if let Some(signed) = &reads.signed {
        if asked.again.is_none() {
            return Ok(Redirect::to(&to).into_response());
        }
        if !host.people.has_way_in(signed.account.id).await.map_err(told)? {
            return Ok(view::none_yet(&reads.locale, signed.account.name.as_str()).into_response());
        }
    }
    let provider = host.provider.as_ref().map(|p| &p.name);
    let ways = Ways { provider, wrong: None, sent: asked.again.is_some() && asked.sent.is_some() };
    Ok(view::ways(&reads, &Typed::default(), &to, &ways).into_response())
}

async fn send_link(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    typed: Typed,
) -> Result<Response, Error> {
    let mut typed = typed.only(&["email", "to"])?.read_by(reads.locale);
    let to = own_path(Some(typed.text("to").to_owned()));
    let Ok(email) = Email::new(typed.text("email")) else {
        typed.wrong("email", words!(host::email));
        return Ok(again(ways(&host, &reads, &typed, &to)));
    };
    let before = token(&host, &headers);
    let pending = host.people.ask_link(&email, before.as_ref(), &from, host.now(), &mut OsSecrets).await;
    let pending = pending.map_err(told)?;
    mailing::send(&host, pending, &to);
    Ok(view::sent(&reads, mailing::minutes(&host), typed.text("email").trim(), &to).into_response())
}

/// Mail programs open links by themselves: this does nothing but ask.
async fn behind_link(
    State(host): State<Arc<Host>>,
    Path(secret): Path<String>,
    reads: Reads,
    Form(onward): Form<Onward>,
) -> Result<Response, Error> {
    let secret = Secret::typed(&secret);
    if !host.people.link_holds(&secret, None, host.now()).await.map_err(told)? {
        return Ok((StatusCode::NOT_FOUND, view::link_gone(&reads.locale)).into_response());
    }
    Ok(view::behind_link(&reads.locale, &secret, &onward.path()).into_response())
}

async fn with_link(
    State(host): State<Arc<Host>>,
    Path(secret): Path<String>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    Form(onward): Form<Onward>,
) -> Result<Response, Error> {
    let secret = Secret::typed(&secret);
    let used = host.people.use_link(&secret, kind_of(&headers), host.now(), &mut OsSecrets).await;
    match noted::sign_in("mailed-link", &from, used) {
        Ok((session, token)) => Ok(signed_in(&host, &reads, (&session, &token), &onward.path()).await?),
        Err(sayso_people::Error::NotValid) => {
            Ok((StatusCode::NOT_FOUND, view::link_gone(&reads.locale)).into_response())
        }
        Err(other) => Err(told(other)),
    }
}

async fn with_code(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    typed: Typed,
) -> Result<Response, Error> {
    let mut typed = typed.only(&["code", "to"])?.read_by(reads.locale);
    let to = own_path(Some(typed.text("to").to_owned()));
    let (code, device) = (Secret::typed(typed.text("code")), kind_of(&headers));
    let used = host.people.use_recovery_code(&code, &from, device, host.now(), &mut OsSecrets).await;
    match noted::sign_in("recovery-code", &from, used) {
        Ok((session, token)) => signed_in(&host, &reads, (&session, &token), &to).await,
        Err(sayso_people::Error::NotValid) => {
            typed.wrong("code", words!(sign_in::wrong_code));
            Ok(again(ways(&host, &reads, &typed, &to)))
        }
        Err(other) => Err(told(other)),
    }
}

async fn signed_in(
    host: &Host,
    reads: &Reads,
    (session, token): (&Session, &Secret),
    to: &str,
) -> Result<Response, Error> {
    let to = onward::signed_in(host, session, to).await?;
    let cookie = begun(host, reads.signed.as_ref(), token).await?;
    Ok(([(SET_COOKIE, cookie)], Redirect::to(&to)).into_response())
}

/// Said by whoever signs out though nothing lets them in again; and the own page to open then, in place of the sign-in.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Leaving {
    anyway: Option<String>,
    to: Option<String>,
}

async fn sign_out(
    State(host): State<Arc<Host>>,
    reads: Reads,
    Form(leaving): Form<Leaving>,
) -> Result<Response, Error> {
    let to = leaving.to.map(|to| own_path(Some(to)));
    if let Some(signed) = &reads.signed {
        if leaving.anyway.is_none() && !has_way_back(&host, signed).await? {
            let page = view::no_way_back(&reads.locale, to.as_deref());
            return Ok((StatusCode::CONFLICT, page).into_response());
        }
        host.people.end_session(signed.account.id, signed.session.id, host.now()).await.map_err(told)?;
    }
    Ok(([(SET_COOKIE, ending(&host))], Redirect::to(to.as_deref().unwrap_or("/sign-in"))).into_response())
}

fn ways(host: &Host, reads: &Reads, typed: &Typed, to: &str) -> Markup {
    view::ways(reads, typed, to, &Ways { provider: host.provider.as_ref().map(|p| &p.name), wrong: None, sent: false })
}

/// Whether an account is linked with the identity provider that this server has now.
///
/// # Errors
/// Where the database fails.
pub async fn linked(host: &Host, account: AccountId) -> Result<Option<Linked>, Error> {
    let Some(provider) = &host.provider else { return Ok(None) };
    host.people.identity(account, provider.issuer()).await.map_err(told)
}

/// Whether anything but this browser's session lets the account in.
async fn has_way_back(host: &Host, signed: &Signed) -> Result<bool, Error> {
    let (people, account) = (&host.people, &signed.account);
    let passkeys = people.passkeys(account.id).await.map_err(told)?;
    let linked = linked(host, account.id).await?.is_some();
    Ok(account.has_way_back(&passkeys, people.recovery_codes_left(account.id).await.map_err(told)?, linked))
}
