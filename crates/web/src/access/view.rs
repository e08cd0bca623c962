//! The page on which a device pairs.

use super::Tried;
use super::session_guard::PAIRED_COOKIE;
use super::sessions::LONGEST_NAME;
use crate::device::kind_of;
use crate::error::Error;
use crate::form::Form;
use crate::layout::{bare, bare_with};
use crate::page::cookie;
use crate::reading::Reads;
use crate::secure::Peer;
use crate::state::AppState;
use axum::Router;
use axum::extract::{ConnectInfo, State};
use axum::http::header::SET_COOKIE;
use axum::http::{Extensions, HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_wording::{Locale, Words, say, words};
use serde::Deserialize;
use std::net::{IpAddr, Ipv4Addr};

/// Routes of pairing.
pub fn router() -> Router<AppState> {
    Router::new().route("/pair", get(show).post(pair)).route("/pair/forget", post(forget))
}

async fn show(
    State(state): State<AppState>,
    extensions: Extensions,
    headers: HeaderMap,
    Reads(locale): Reads,
) -> Result<Markup, Error> {
    if state.access.lan() && !state.access.admits(cookie(&headers, PAIRED_COOKIE), state.now()) {
        state.access.offer_code(state.now()).map_err(Error::internal)?;
        let safe = extensions.get::<ConnectInfo<Peer>>().is_some_and(|c| c.0.safe);
        return Ok(ask(&locale, None, safe));
    }
    Ok(settled(&locale, &state))
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Typed {
    code: String,
    #[serde(default)]
    name: String,
}

async fn pair(
    State(state): State<AppState>,
    extensions: Extensions,
    headers: HeaderMap,
    Reads(locale): Reads,
    Form(typed): Form<Typed>,
) -> Result<Response, Error> {
    let peer = extensions.get::<ConnectInfo<Peer>>().map(|c| c.0);
    let from = peer.map_or(IpAddr::V4(Ipv4Addr::UNSPECIFIED), |p| p.ip());
    let safe = peer.is_some_and(|p| p.safe);
    let again = |what: Words| (StatusCode::UNPROCESSABLE_ENTITY, ask(&locale, Some(&what), safe)).into_response();
    let name = match typed.name.trim() {
        "" => say!(&locale, pairing::kind, kind = kind_of(&headers)),
        name => name.to_owned(),
    };
    Ok(match state.access.pair(&typed.code, &name, from, state.now())? {
        Tried::Paired(secret) => {
            let only_safely = if safe { "; Secure" } else { "" };
            let cookie =
                format!("{PAIRED_COOKIE}={secret}; Path=/; Max-Age=34560000; HttpOnly; SameSite=Strict{only_safely}");
            ([(SET_COOKIE, cookie)], Redirect::to("/")).into_response()
        }
        Tried::Wrong => again(words!(pairing::wrong)),
        Tried::Expired => again(words!(pairing::expired)),
        Tried::TooMany(seconds) => return Err(Error::TooMany(seconds)),
    })
}

async fn forget(State(state): State<AppState>) -> Result<Redirect, Error> {
    state.access.forget_all()?;
    Ok(Redirect::to("/pair"))
}

fn ask(locale: &Locale, wrong: Option<&Words>, safe: bool) -> Markup {
    bare_with(
        locale,
        &say!(locale, pairing::title),
        // What a device keeps of a notebook it may no longer read is cleared here.
        &["client/forgotten.js"],
        html! {
            p { (say!(locale, pairing::intro)) }
            @if let Some(what) = wrong { p.caution role="alert" { strong { (say!(locale, pairing::not_paired)) } " " (what.say(locale)) } }
            form method="post" action="/pair" .stack {
                label for="code" { (say!(locale, pairing::code)) span.hint { (say!(locale, pairing::code_hint)) } }
                input #code .code name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck="false" maxlength="20";
                label for="name" { (say!(locale, pairing::name)) span.hint { (say!(locale, pairing::name_hint)) } }
                input #name name="name" maxlength=(LONGEST_NAME) autocomplete="off";
                button.primary.wide { (say!(locale, pairing::pair)) }
            }
            div #unsent hidden {}
            p.quiet { (say!(locale, pairing::taps_safe)) }
            noscript { p.quiet { (say!(locale, pairing::no_script)) } }
            @if !safe { p.quiet { (say!(locale, pairing::plain_http)) } }
        },
    )
}

fn settled(locale: &Locale, state: &AppState) -> Markup {
    bare(
        locale,
        &say!(locale, pairing::paired_title),
        html! {
            @if state.access.lan() {
                p { (say!(locale, pairing::paired)) }
                p { a.button href="/devices" { (say!(locale, pairing::all_devices)) } }
            } @else {
                p { (say!(locale, pairing::machine_alone)) }
            }
            p { a.button href="/" { (say!(locale, errors::to_start)) } }
        },
    )
}
