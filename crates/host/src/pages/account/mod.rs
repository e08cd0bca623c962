//! One's own account: name, how one signs in, where one is signed in, roles, and an end to it.

mod erase;
mod proofs;
mod tidings;
mod view;

use crate::empty;
use crate::fault::{told, told_of_role};
use crate::host::Host;
use crate::pages::sign_in::linked;
use crate::place::{self, Place};
use crate::signed::Signed;
use axum::Router;
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use sayso_model::{Label, Language, Zone};
use sayso_people::db::{KeptPasskey, Linked};
use sayso_people::{Membership, MembershipId, Session, SessionId};
use sayso_web::Error;
use sayso_web::typed::{Typed, again, named};
use sayso_wording::{Locale, Words, words};
use std::sync::Arc;
use uuid::Uuid;

const HERE: &str = "/account";

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new()
        .route(HERE, get(show).post(set))
        .route("/account/passkey", post(proofs::begin_passkey))
        .route("/account/passkey/done", post(proofs::finish_passkey))
        .route("/account/passkey/forget", post(proofs::forget_passkey))
        .route("/account/email", post(proofs::ask_proof))
        .route("/account/email/forget", post(proofs::forget_email))
        .route("/account/email/{secret}", get(proofs::behind_proof).post(proofs::prove))
        .route("/account/provider", get(crate::pages::sign_in::provider::link))
        .route("/account/provider/forget", post(proofs::forget_provider))
        .route("/account/codes", post(proofs::new_codes))
        .route("/account/news", post(choose_tidings))
        .route("/account/session/end", post(end_session))
        .route("/account/session/others", post(end_others))
        .route("/account/role/leave", post(leave_role))
        .route("/account/erase", get(erase::show).post(erase::erase))
}

/// What the page shows.
struct Shown {
    signed: Signed,
    locale: Locale,
    zone: Zone,
    passkeys: Vec<KeptPasskey>,
    codes_left: i64,
    /// The identity provider, where there is one, and whether the account is linked with it.
    provider: Option<(Label, Option<Linked>)>,
    sessions: Vec<Session>,
    roles: Vec<(Membership, Place)>,
    /// What was chosen of letters about what is new, where there is a choice.
    tidings: Option<tidings::Offered>,
    /// What stands in the way of what was just asked.
    wrong: Option<Words>,
    typed: Typed,
}

impl Shown {
    async fn of(host: &Host, signed: Signed, headers: &HeaderMap, typed: Typed) -> Result<Self, Error> {
        let (people, account) = (&host.people, signed.account.id);
        let who = people.who(account).await.map_err(told)?;
        let mut roles = Vec::new();
        for membership in &who.memberships {
            roles.push((*membership, place::of(host, &membership.part).await?));
        }
        let locale = signed.locale(headers);
        let zone = place::zone_of(host, &who).await?;
        let tidings = tidings::Offered::of(host, &who, &zone).await?;
        // What was typed stands before what is filled in.
        let typed =
            typed.read_by(locale).with("name", &signed.account.name).with("language", signed.account.language.tag());
        let typed = match &tidings {
            Some(offered) => offered.fill(typed),
            None => typed,
        };
        Ok(Self {
            locale,
            zone,
            tidings,
            passkeys: people.passkeys(account).await.map_err(told)?,
            provider: match &host.provider {
                Some(provider) => Some((provider.name.clone(), linked(host, account).await?)),
                None => None,
            },
            codes_left: people.recovery_codes_left(account).await.map_err(told)?,
            sessions: people.sessions(account, host.now()).await.map_err(told)?,
            roles,
            wrong: None,
            typed,
            signed,
        })
    }
}

async fn show(State(host): State<Arc<Host>>, signed: Signed, headers: HeaderMap) -> Result<Markup, Error> {
    Ok(view::page(&Shown::of(&host, signed, &headers, Typed::default()).await?))
}

async fn set(
    State(host): State<Arc<Host>>,
    signed: Signed,
    headers: HeaderMap,
    typed: Typed,
) -> Result<Response, Error> {
    let mut typed = typed.only(&["name", "language"])?.read_by(signed.locale(&headers));
    let (name, language) = (typed.label("name"), typed.one_of("language", &Language::ALL, Language::tag));
    if let (Some(name), Some(language), true) = (name, language, typed.right()) {
        host.people.set_account(signed.account.id, &name, language).await.map_err(told)?;
        return Ok(back());
    }
    Ok(again(view::page(&Shown::of(&host, signed, &headers, typed).await?)))
}

/// Takes whether and when somebody wants to be told what is new.
async fn choose_tidings(
    State(host): State<Arc<Host>>,
    signed: Signed,
    headers: HeaderMap,
    typed: Typed,
) -> Result<Response, Error> {
    let mut typed = typed.only(&tidings::FIELDS)?.read_by(signed.locale(&headers));
    let Some(chosen) = tidings::read(&mut typed) else {
        return Ok(again(view::page(&Shown::of(&host, signed, &headers, typed).await?)));
    };
    host.people.choose_tidings(signed.account.id, chosen.as_ref(), host.now()).await.map_err(told)?;
    Ok(back())
}

fn back() -> Response {
    Redirect::to(HERE).into_response()
}

/// What needs a fresh sign-in leads to one, and back to the page.
fn led(error: sayso_people::Error) -> Result<Response, Error> {
    match error {
        sayso_people::Error::NotFresh => Ok(Redirect::to("/sign-in?again=yes&to=/account").into_response()),
        other => Err(told(other)),
    }
}

/// The id that a form is about.
fn which(typed: Typed, what: &'static str) -> Result<Uuid, Error> {
    named(typed.only(&["id"])?.text("id"), what)
}

async fn end_session(State(host): State<Arc<Host>>, signed: Signed, typed: Typed) -> Result<Response, Error> {
    let id = which(typed, "session")?;
    // One that has ended meanwhile is ended: nothing to tell.
    if host.people.end_session(signed.account.id, SessionId(id), host.now()).await.map_err(told)? {
        return Ok(back());
    }
    Err(Error::NotFound(words!(errors::no_such, what = "session")))
}

async fn end_others(State(host): State<Arc<Host>>, signed: Signed) -> Result<Response, Error> {
    host.people.end_other_sessions(&signed.session, host.now()).await.map_err(told)?;
    Ok(back())
}

async fn leave_role(
    State(host): State<Arc<Host>>,
    signed: Signed,
    headers: HeaderMap,
    typed: Typed,
) -> Result<Response, Error> {
    let (account, role) = (signed.account.id, MembershipId(which(typed, "role")?));
    match host.people.end_own_membership(account, role, host.now()).await {
        Ok(()) => Ok(back()),
        Err(sayso_people::Error::LastKeeper) if empty::go_along(&host, account, Some(role)).await? => Ok(back()),
        Err(sayso_people::Error::LastKeeper) => {
            let mut shown = Shown::of(&host, signed, &headers, Typed::default()).await?;
            shown.wrong = Some(words!(account::last_keeper));
            Ok((StatusCode::CONFLICT, view::page(&shown)).into_response())
        }
        Err(other) => Err(told_of_role(other)),
    }
}
