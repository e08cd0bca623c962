//! The way to the club's identity provider and back: to sign in, or to link the account of whoever is signed in.

use super::view::{self, Ways};
use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::noted;
use crate::onward::{self, Onward};
use crate::provider::{Named, Provider, ProviderError};
use crate::reader::Reads;
use crate::signed::Signed;
use axum::extract::{Extension, Query, State};
use axum::http::header::SET_COOKIE;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{AppendHeaders, IntoResponse, Redirect, Response};
use sayso_model::Moment;
use sayso_people::db::Returned;
use sayso_people::{OsSecrets, Secret};
use sayso_web::Error;
use sayso_web::access::same_site;
use sayso_web::device::kind_of;
use sayso_web::form::Form;
use sayso_web::page::cookie;
use sayso_web::pages::who::own_path;
use sayso_web::told::no_such_page;
use sayso_web::typed::Typed;
use sayso_wording::{Words, words};
use serde::Deserialize;
use std::sync::Arc;

/// Name of the cookie that the browser brings back: a secret, and behind it the own page to go on to. It comes back from another
/// site's page, so it is Lax.
const ERRAND: &str = "sayso_errand";
/// Characters of the secret in it.
const SECRET: usize = 64;

fn name(host: &Host) -> String {
    if host.is_safe() { format!("__Host-{ERRAND}") } else { ERRAND.to_owned() }
}

fn kept(host: &Host, secret: &str, to: &str, seconds: f64) -> String {
    format!("{}={secret}{to}; Path=/; Max-Age={seconds}; HttpOnly; SameSite=Lax", name(host))
}

/// Sets out to sign in. Nobody is sent there by another site's page.
pub async fn begin(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    Form(onward): Form<Onward>,
) -> Result<Response, Error> {
    set_out(&host, &from, &headers, &reads, None, &onward.path()).await
}

/// Sets out to link the account of whoever is signed in.
pub async fn link(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    signed: Signed,
    Form(onward): Form<Onward>,
) -> Result<Response, Error> {
    match host.people.may_add_way(&signed.session, host.now()).await {
        Ok(()) => {}
        Err(sayso_people::Error::NotFresh) => {
            return Ok(Redirect::to("/sign-in?again=yes&to=/account").into_response());
        }
        Err(other) => return Err(told(other)),
    }
    set_out(&host, &from, &headers, &reads, Some(&signed), &onward.path()).await
}

async fn set_out(
    host: &Host,
    from: &str,
    headers: &HeaderMap,
    reads: &Reads,
    links: Option<&Signed>,
    to: &str,
) -> Result<Response, Error> {
    let Some(provider) = &host.provider else { return Err(no_such_page().await) };
    if !same_site(headers, host.public_url.authority()) {
        return Err(Error::Forbidden(words!(errors::other_site)));
    }
    let (people, links) = (&host.people, links.map(|signed| &signed.session));
    let errand = people.set_out(links, from, host.now(), &mut OsSecrets).await.map_err(told)?;
    // Once more for whoever shows that it is them, or is about to link.
    let leads = provider.leads(&errand, people.lifetimes().fresh_s, reads.signed.is_some()).await;
    match leads {
        Ok(url) => {
            let cookie = kept(host, errand.browser.reveal(), to, people.lifetimes().link_s);
            Ok(([(SET_COOKIE, cookie)], Redirect::to(url.as_str())).into_response())
        }
        Err(why) => Ok(failed(provider, reads, to, &why)),
    }
}

/// What the provider sends along; of more it takes no notice.
#[derive(Deserialize)]
pub struct Brought {
    state: Option<String>,
    code: Option<String>,
    error: Option<String>,
    /// Who sent the browser back, where it says so (RFC 9207).
    iss: Option<String>,
}

pub async fn back(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    headers: HeaderMap,
    reads: Reads,
    Query(brought): Query<Brought>,
) -> Result<Response, Error> {
    let Some(provider) = &host.provider else { return Err(no_such_page().await) };
    let cookie = cookie(&headers, &name(&host)).unwrap_or_default();
    let (browser, to) = cookie.split_at_checked(SECRET).unwrap_or_default();
    let to = own_path(Some(to.to_owned()));
    let state = Secret::typed(brought.state.as_deref().unwrap_or_default());
    let errand = match host.people.come_back(&state, &Secret::typed(browser), host.now()).await {
        Ok(errand) => errand,
        Err(sayso_people::Error::NotValid) => {
            tracing::warn!("Someone from {from} came back from the identity provider without having set out.");
            return Ok(again(&host, provider, &reads, &to, StatusCode::FORBIDDEN, words!(sign_in::provider_lost)));
        }
        Err(other) => return Err(told(other)),
    };
    let named = match (brought.code, brought.iss) {
        (_, Some(other)) if other != provider.issuer() => Err(ProviderError::Elsewhere(other)),
        (Some(code), _) if brought.error.is_none() => provider.named(code, &errand.nonce, &errand.verifier).await,
        _ => Err(ProviderError::SaidNo(brought.error)),
    };
    match named {
        Ok(named) => arrived(&host, provider, &from, &headers, &reads, (&errand, &named, &to)).await,
        Err(why) => Ok(over(&host, failed(provider, &reads, &to, &why))),
    }
}

/// Someone whom the provider named.
async fn arrived(
    host: &Host,
    provider: &Provider,
    from: &str,
    headers: &HeaderMap,
    reads: &Reads,
    (errand, named, to): (&Returned, &Named, &str),
) -> Result<Response, Error> {
    let (people, now, there) = (&host.people, host.now(), (provider.issuer(), named.subject.as_str()));
    if let Some(session) = errand.links {
        // Whoever set out is who comes back, and still signed in.
        let signed = reads.signed.as_ref().filter(|signed| signed.session.id == session).ok_or(Error::NotSignedIn)?;
        return match people.link_identity(&signed.session, there, now).await {
            Ok(()) => {
                tracing::info!("Account {} was linked with the identity provider from {from}.", signed.account.id);
                Ok(over(host, Redirect::to(to).into_response()))
            }
            Err(sayso_people::Error::Taken) => Ok(over(
                host,
                (StatusCode::CONFLICT, view::provider_taken(&reads.locale, &provider.name)).into_response(),
            )),
            Err(sayso_people::Error::NotFresh) => Err(Error::NotFresh),
            Err(other) => Err(told(other)),
        };
    }
    let proved_at = named.proved_at.unwrap_or(Moment::clamped(0));
    let begun = people.sign_in_by(there, proved_at, kind_of(headers), now, &mut OsSecrets).await;
    match noted::sign_in("identity-provider", from, begun) {
        // Asked to prove it once more, and it was not.
        Ok((session, token)) if reads.signed.is_some() && !people.is_fresh(&session, now) => {
            let cookie = crate::signed::begun(host, reads.signed.as_ref(), &token).await?;
            let told = words!(sign_in::provider_not_fresh, name = provider.name.to_string());
            let mut page = again(host, provider, reads, to, StatusCode::FORBIDDEN, told);
            page.headers_mut().append(SET_COOKIE, cookie.parse().map_err(Error::internal)?);
            Ok(page)
        }
        Ok((session, token)) => {
            let to = &onward::signed_in(host, &session, to).await?;
            let cookie = crate::signed::begun(host, reads.signed.as_ref(), &token).await?;
            let cookies = AppendHeaders([(SET_COOKIE, cookie), (SET_COOKIE, kept(host, "", "", 0.0))]);
            Ok((cookies, Redirect::to(to)).into_response())
        }
        Err(sayso_people::Error::NotValid) => {
            let told = words!(sign_in::provider_unknown, name = provider.name.to_string());
            Ok(again(host, provider, reads, to, StatusCode::FORBIDDEN, told))
        }
        Err(other) => Err(told(other)),
    }
}

/// The ways in once more, with what stood in the way; the errand is over.
fn again(
    host: &Host,
    provider: &Provider,
    reads: &Reads,
    to: &str,
    status: StatusCode,
    what: impl Into<Words>,
) -> Response {
    over(host, (status, ways(provider, reads, to, what.into())).into_response())
}

fn ways(provider: &Provider, reads: &Reads, to: &str, what: Words) -> maud::Markup {
    let ways = Ways { provider: Some(&provider.name), wrong: Some(what), sent: false };
    view::ways(reads, &Typed::default(), to, &ways)
}

/// The provider is away, or what it said does not hold: the other ways in are as good as ever.
fn failed(provider: &Provider, reads: &Reads, to: &str, why: &ProviderError) -> Response {
    let name = provider.name.to_string();
    let (status, what) = match why {
        ProviderError::Away(_) | ProviderError::NoTokens => {
            (StatusCode::SERVICE_UNAVAILABLE, words!(sign_in::provider_away, name = name))
        }
        _ => (StatusCode::FORBIDDEN, words!(sign_in::provider_refused, name = name)),
    };
    tracing::warn!("A sign-in by the identity provider failed: {why}.");
    (status, ways(provider, reads, to, what)).into_response()
}

fn over(host: &Host, mut answer: Response) -> Response {
    if let Ok(cookie) = kept(host, "", "", 0.0).parse() {
        answer.headers_mut().append(SET_COOKIE, cookie);
    }
    answer
}
