//! The page on which a device pairs.

use super::Tried;
use super::session_guard::PAIRED_COOKIE;
use super::sessions::LONGEST_NAME;
use crate::error::Error;
use crate::form::Form;
use crate::layout::{bare, bare_with};
use crate::page::cookie;
use crate::reading::Reads;
use crate::secure::Peer;
use crate::state::AppState;
use axum::Router;
use axum::extract::{ConnectInfo, State};
use axum::http::header::{SET_COOKIE, USER_AGENT};
use axum::http::{Extensions, HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_wording::Locale;
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
    let again = |what| (StatusCode::UNPROCESSABLE_ENTITY, ask(&locale, Some(what), safe)).into_response();
    let name = match typed.name.trim() {
        "" => kind_of(&headers),
        name => name,
    };
    Ok(match state.access.pair(&typed.code, name, from, state.now())? {
        Tried::Paired(secret) => {
            let only_safely = if safe { "; Secure" } else { "" };
            let cookie =
                format!("{PAIRED_COOKIE}={secret}; Path=/; Max-Age=34560000; HttpOnly; SameSite=Strict{only_safely}");
            ([(SET_COOKIE, cookie)], Redirect::to("/")).into_response()
        }
        Tried::Wrong => again("That is not the code. It stands where Sayso was started, ten letters and digits."),
        Tried::Expired => again("That code is no longer good. A new one now stands where Sayso was started."),
        Tried::TooMany(seconds) => return Err(Error::TooMany(seconds)),
    })
}

async fn forget(State(state): State<AppState>) -> Result<Redirect, Error> {
    state.access.forget_all()?;
    Ok(Redirect::to("/pair"))
}

/// What kind of device asks, by what its browser says of itself; for people to tell devices apart, nothing more.
fn kind_of(headers: &HeaderMap) -> &'static str {
    let says = headers.get(USER_AGENT).and_then(|v| v.to_str().ok()).unwrap_or("");
    let kinds = [
        ("iPhone", "An iPhone"),
        ("iPad", "An iPad"),
        ("Android", "An Android device"),
        ("Windows", "A Windows computer"),
        ("Macintosh", "A Mac"),
        ("CrOS", "A Chromebook"),
        ("Linux", "A Linux computer"),
    ];
    kinds.iter().find(|(part, _)| says.contains(part)).map_or("A device", |(_, name)| name)
}

fn ask(locale: &Locale, wrong: Option<&str>, safe: bool) -> Markup {
    bare_with(
        locale,
        "Pair this device",
        // What a device keeps of a notebook it may no longer read is cleared here.
        &["client/forgotten.js"],
        html! {
            p { "Sayso was started for the home network. Type the code that stands on the screen where it was started." }
            @if let Some(what) = wrong { p.caution role="alert" { strong { "Not paired. " } (what) } }
            form method="post" action="/pair" .stack {
                label for="code" { "Code" span.hint { "ten letters and digits" } }
                input #code .code name="code" required autocomplete="one-time-code" autocapitalize="characters" spellcheck="false" maxlength="20";
                label for="name" { "Name of this device" span.hint { "if you like, such as Ann's phone" } }
                input #name name="name" maxlength=(LONGEST_NAME) autocomplete="off";
                button.primary.wide { "Pair" }
            }
            div #unsent hidden {}
            p.quiet { "Taps made on this device and not yet sent are safe; they are sent once it is paired." }
            noscript { p.quiet { "Without JavaScript, what this device kept of the notebook is not cleared here; clear this site's data in the browser's settings." } }
            @if !safe { p.quiet { "Over plain HTTP others on the same network could read along. Use it on a network you trust." } }
        },
    )
}

fn settled(locale: &Locale, state: &AppState) -> Markup {
    bare(
        locale,
        "Paired",
        html! {
            @if state.access.lan() {
                p { "This device is paired." }
                p { a.button href="/devices" { "All paired devices" } }
            } @else {
                p { "Sayso was started for this machine alone, so no device needs pairing." }
            }
            p { a.button href="/" { "To the start" } }
        },
    )
}
