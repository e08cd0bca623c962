//! How one signs in: passkeys, an address that was proved, recovery codes. All of it changes only after a fresh sign-in, but
//! for the first of them: who has none cannot sign in anew.

use super::{HERE, Shown, back, led, view};
use crate::door::From;
use crate::fault::told;
use crate::host::Host;
use crate::json::{Nothing, Sent};
use crate::mailing;
use crate::onward::Led;
use crate::reader::Reads;
use crate::signed::Signed;
use crate::stories::opening;
use axum::Json;
use axum::extract::{Extension, Path, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use sayso_model::{HomeId, Label};
use sayso_people::db::KeyName;
use sayso_people::{CeremonyId, Email, OsSecrets, Role, Secret};
use sayso_web::Error;
use sayso_web::device::kind_of;
use sayso_web::form::{Form, checked};
use sayso_web::typed::{Typed, again};
use sayso_wording::events::home_name;
use sayso_wording::words;
use serde::{Deserialize, Serialize};
use std::sync::Arc;
use webauthn_rs_proto::{PublicKeyCredentialCreationOptions, RegisterPublicKeyCredential};

/// What the device is asked to make.
#[derive(Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Wanted {
    ceremony: CeremonyId,
    public_key: PublicKeyCredentialCreationOptions,
}

pub async fn begin_passkey(
    State(host): State<Arc<Host>>,
    signed: Signed,
    Sent(Nothing {}): Sent<Nothing>,
) -> Result<Json<Wanted>, Error> {
    let begun = host.people.begin_passkey(&host.passkeys, &signed.session, host.now(), &mut OsSecrets).await;
    let (ceremony, asked) = begun.map_err(told)?;
    Ok(Json(Wanted { ceremony, public_key: asked.public_key }))
}

/// What it made, what it is to be called, and where to go then.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Made {
    ceremony: CeremonyId,
    answer: RegisterPublicKeyCredential,
    #[serde(default)]
    label: String,
    to: Option<String>,
}

pub async fn finish_passkey(
    State(host): State<Arc<Host>>,
    signed: Signed,
    headers: HeaderMap,
    Sent(made): Sent<Made>,
) -> Result<Json<Led>, Error> {
    let name = match made.label.trim() {
        "" => KeyName::Device(kind_of(&headers).to_owned()),
        label => KeyName::Own(checked("label", Label::new(label))?),
    };
    let (ceremony, now) = (made.ceremony, host.now());
    let kept = host.people.finish_passkey(&host.passkeys, &signed.session, ceremony, &made.answer, &name, now).await;
    kept.map_err(told)?;
    Ok(Json(Led::to(made.to)))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Which {
    credential: String,
}

pub async fn forget_passkey(
    State(host): State<Arc<Host>>,
    signed: Signed,
    Form(Which { credential }): Form<Which>,
) -> Result<Response, Error> {
    let kept = host.people.passkeys(signed.account.id).await.map_err(told)?;
    // One that was forgotten meanwhile is forgotten.
    let Some(key) = kept.into_iter().find(|key| view::hex(&key.credential) == credential) else { return Ok(back()) };
    match host.people.forget_passkey(&signed.session, &key.credential, host.now()).await {
        Ok(_) => Ok(back()),
        Err(why) => led(why),
    }
}

pub async fn ask_proof(
    State(host): State<Arc<Host>>,
    Extension(From(from)): Extension<From>,
    signed: Signed,
    headers: HeaderMap,
    typed: Typed,
) -> Result<Response, Error> {
    let locale = signed.locale(&headers);
    let mut typed = typed.only(&["email"])?.read_by(locale);
    let Ok(email) = Email::new(typed.text("email")) else {
        typed.wrong("email", words!(host::email));
        return Ok(again(view::page(&Shown::of(&host, signed, &headers, typed).await?)));
    };
    let pending = match host.people.ask_proof(&signed.session, &email, &from, host.now(), &mut OsSecrets).await {
        Ok(pending) => pending,
        Err(why) => return led(why),
    };
    // A letter goes to the address whoever has it, so that it did not go tells nothing of anybody.
    if !mailing::sent(&host, pending, HERE).await {
        let page = view::proof_not_sent(&locale, email.as_str());
        return Ok((StatusCode::SERVICE_UNAVAILABLE, page).into_response());
    }
    Ok(view::proof_sent(&locale, email.as_str(), mailing::minutes(&host)).into_response())
}

pub async fn forget_email(State(host): State<Arc<Host>>, signed: Signed) -> Result<Response, Error> {
    match host.people.forget_email(&signed.session, host.now()).await {
        Ok(()) => Ok(back()),
        Err(why) => led(why),
    }
}

pub async fn forget_provider(State(host): State<Arc<Host>>, signed: Signed) -> Result<Response, Error> {
    let Some(provider) = &host.provider else { return Ok(back()) };
    match host.people.forget_identity(&signed.session, provider.issuer(), host.now()).await {
        Ok(()) => Ok(back()),
        Err(why) => led(why),
    }
}

/// Mail programs open links by themselves: this does nothing but ask. Whoever is not signed in is not led to the sign-in, for the
/// address of that page would hold the link's secret.
pub async fn behind_proof(
    State(host): State<Arc<Host>>,
    Path(secret): Path<String>,
    reads: Reads,
) -> Result<Response, Error> {
    let (l, secret) = (&reads.locale, Secret::typed(&secret));
    let Some(signed) = &reads.signed else {
        return Ok((StatusCode::UNAUTHORIZED, view::proof_signed_out(l)).into_response());
    };
    if !host.people.link_holds(&secret, Some(signed.account.id), host.now()).await.map_err(told)? {
        return Ok((StatusCode::NOT_FOUND, view::proof_gone(l)).into_response());
    }
    Ok(view::behind_proof(l, &secret).into_response())
}

pub async fn prove(State(host): State<Arc<Host>>, Path(secret): Path<String>, reads: Reads) -> Result<Response, Error> {
    let l = &reads.locale;
    let Some(signed) = &reads.signed else {
        return Ok((StatusCode::UNAUTHORIZED, view::proof_signed_out(l)).into_response());
    };
    match host.people.prove_email(&signed.session, &Secret::typed(&secret), host.now()).await {
        Ok(_) => Ok(back()),
        Err(sayso_people::Error::NotValid) => Ok((StatusCode::NOT_FOUND, view::proof_gone(l)).into_response()),
        Err(sayso_people::Error::Taken) => Ok((StatusCode::CONFLICT, view::email_taken(l)).into_response()),
        // Not back to this address, which holds the link's secret.
        Err(other) => led(other),
    }
}

/// The codes stand in this one answer, which no browser keeps.
pub async fn new_codes(State(host): State<Arc<Host>>, signed: Signed, headers: HeaderMap) -> Result<Response, Error> {
    let host_name = host.public_url.host_str().unwrap_or_default();
    let who = host.people.who(signed.account.id).await.map_err(told)?;
    let kept = who.memberships.iter().filter(|m| m.part.role() == Role::Keeper).filter_map(|m| m.part.scope().home());
    let l = signed.locale(&headers);
    let kept: Vec<HomeId> = kept.collect();
    let mut logs = opening(&host.server, &kept).await?;
    let mut name = |home: &HomeId| home_name(&l, &logs.remove(home).unwrap_or_default());
    let mut ids: Vec<_> = kept.iter().map(|home| (Some(name(home)), home.to_string())).collect();
    ids.push((None, signed.account.id.to_string()));
    match host.people.new_recovery_codes(&signed.session, host.now(), &mut OsSecrets).await {
        Ok(codes) => Ok(view::codes(&l, host_name, &codes, &ids).into_response()),
        Err(why) => led(why),
    }
}
