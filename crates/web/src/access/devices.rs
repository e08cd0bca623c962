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
use serde::Deserialize;

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new().route("/devices", get(show)).route("/devices/end", post(end))
}

async fn show(page: Page, headers: HeaderMap) -> Markup {
    let access = &page.state.access;
    let this = access.device(cookie(&headers, PAIRED_COOKIE), page.now);
    let devices = access.devices(page.now);
    let when = |at: Moment| at.local(&page.zone).strftime("%d %b %Y, %H:%M").to_string();
    layout(
        &page,
        Tab::People,
        "Devices",
        html! {
            @if !access.lan() {
                p { "Sayso was started for this machine alone, so no other device may read this notebook." }
            } @else {
                p { "These devices may read this notebook and write in it. End one that was lost, sold or lent." }
                ul.plain.stack {
                    @for d in &devices {
                        li.card data-test="device" {
                            p { strong { (d.name) } @if this.as_deref() == Some(d.id.as_str()) { " (this device)" } }
                            p.quiet { "Paired " (when(d.paired_at)) ". Last seen " (when(d.seen_at)) "." }
                            form method="post" action="/devices/end" {
                                button name="id" value=(d.id) { "End it" span.unseen { ": " (d.name) } }
                            }
                        }
                    }
                }
                p.quiet {
                    "An ended device is refused at once. What it kept for the board is cleared when it next opens the notebook; "
                    "one that never comes back keeps it. Devices not seen for " (IDLE_DAYS) " days are ended by themselves."
                }
                form method="post" action="/pair/forget" .stack {
                    button.wide { "Forget all devices, this one too" }
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
    Err(Error::NotFound("No such device is paired; it may have been ended meanwhile.".into()))
}
