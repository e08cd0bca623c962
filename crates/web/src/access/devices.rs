//! The page of paired devices: who may read the notebook, and an end to it for one or all.

use super::IDLE_DAYS;
use super::session_guard::PAIRED_COOKIE;
use crate::error::Error;
use crate::form::Form;
use crate::layout::{Tab, layout};
use crate::page::{Page, cookie};
use crate::state::AppState;
use axum::Router;
use axum::http::HeaderMap;
use axum::response::Redirect;
use axum::routing::{get, post};
use maud::{Markup, html};
use sayso_model::Moment;
use sayso_wording::{say, words};
use serde::Deserialize;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/devices", get(show)).route("/devices/end", post(end))
}

async fn show(page: Page, headers: HeaderMap) -> Markup {
    let access = &page.state.access;
    let this = access.device(cookie(&headers, PAIRED_COOKIE), page.now);
    let devices = access.devices(page.now);
    let l = &page.locale;
    let when = |at: Moment| format!("{} {}", l.date(at.day(&page.zone)), l.time(at, &page.zone));
    layout(
        &page,
        Tab::People,
        &say!(l, pairing::devices),
        html! {
            @if !access.lan() {
                p { (say!(l, pairing::devices_alone)) }
            } @else {
                p { (say!(l, pairing::devices_intro)) }
                ul.plain.stack {
                    @for d in &devices {
                        @let name = if d.name.is_empty() { say!(l, pairing::unnamed) } else { d.name.clone() };
                        li.card data-test="device" {
                            p { strong { (name) } @if this.as_deref() == Some(d.id.as_str()) { " " (say!(l, pairing::this_device)) } }
                            p.quiet { (say!(l, pairing::device_times, paired = when(d.paired_at), seen = when(d.seen_at))) }
                            form method="post" action="/devices/end" {
                                button name="id" value=(d.id) { (say!(l, pairing::end)) span.unseen { ": " (name) } }
                            }
                        }
                    }
                }
                p.quiet { (say!(l, pairing::devices_note, days = IDLE_DAYS)) }
                form method="post" action="/pair/forget" .stack {
                    button.wide { (say!(l, pairing::forget_all)) }
                }
            }
        },
    )
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Which {
    id: String,
}

async fn end(page: Page, Form(which): Form<Which>) -> Result<Redirect, Error> {
    if page.state.access.end(&which.id)? {
        return Ok(Redirect::to("/devices"));
    }
    Err(Error::NotFound(words!(pairing::no_such_device)))
}
