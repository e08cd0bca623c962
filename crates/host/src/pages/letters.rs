//! An end to letters that nobody waits for, by the secret of one of them, without signing in.
//!
//! Opening the address only asks: programs that look at mail open links by themselves. Sending the form stops them, and so does a mail
//! program's own button (RFC 8058), which sends a form of its own to the same address.

use crate::fault::told;
use crate::host::Host;
use crate::reader::Reads;
use axum::Router;
use axum::extract::{Path, State};
use axum::http::header::REFERRER_POLICY;
use axum::http::{HeaderValue, StatusCode};
use axum::middleware::map_response;
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use maud::{Markup, html};
use sayso_people::Secret;
use sayso_web::Error;
use sayso_web::layout::bare;
use sayso_wording::{Locale, say};
use std::sync::Arc;

/// Routes of the page.
pub fn router() -> Router<Arc<Host>> {
    Router::new().route("/letters/stop/{secret}", get(ask).post(stop)).layer(map_response(tells_nobody))
}

/// Its address is told to no other page.
async fn tells_nobody(mut response: Response) -> Response {
    response.headers_mut().insert(REFERRER_POLICY, HeaderValue::from_static("no-referrer"));
    response
}

async fn ask(State(host): State<Arc<Host>>, Path(secret): Path<String>, reads: Reads) -> Result<Response, Error> {
    let l = &reads.locale;
    if !host.people.stops_tidings(&Secret::typed(&secret)).await.map_err(told)? {
        return Ok(unknown(l));
    }
    let page = html! {
        p { (say!(l, letters::stop_what)) }
        form method="post" .stack { button.primary.wide data-test="stop" { (say!(l, letters::stop)) } }
    };
    Ok(bare(l, &say!(l, letters::stop), page).into_response())
}

async fn stop(State(host): State<Arc<Host>>, Path(secret): Path<String>, reads: Reads) -> Result<Response, Error> {
    let l = &reads.locale;
    if !host.people.stop_tidings(&Secret::typed(&secret)).await.map_err(told)? {
        return Ok(unknown(l));
    }
    let page = html! {
        p data-test="stopped" { (say!(l, letters::stopped)) }
        (to_account(l))
    };
    Ok(bare(l, &say!(l, letters::stopped_title), page).into_response())
}

/// A letter so old that its link is none any more, or no letter's.
fn unknown(l: &Locale) -> Response {
    let page = html! { p { (say!(l, letters::stop_unknown)) } (to_account(l)) };
    (StatusCode::NOT_FOUND, bare(l, &say!(l, letters::stop), page)).into_response()
}

fn to_account(l: &Locale) -> Markup {
    html! { p { a.button href="/account#news" { (say!(l, account::title)) } } }
}
