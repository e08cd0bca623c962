//! What someone is told whose role does not open a page of a home at this moment, with the ways out.

use super::said::days;
use crate::signed::Signed;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Response};
use maud::html;
use sayso_people::Part;
use sayso_web::layout::{bare, doors};
use sayso_wording::{Words, say, words};

/// The home that this browser was about is not open to them any more: which one it was, nobody is told.
pub fn lost(signed: &Signed, headers: &HeaderMap) -> Response {
    let l = &signed.locale(headers);
    let page = bare(
        l,
        &say!(l, errors::title_forbidden),
        html! {
            p data-test="lost" { (say!(l, homes::lost)) }
            p { a.button.primary href="/homes" { (say!(l, sharing::to_homes)) } }
            (doors(l, signed.account.name.as_str()))
        },
    );
    (StatusCode::NOT_FOUND, page).into_response()
}

/// Outside the days agreed a sitter is told them; others are told what is in the way.
pub fn out(signed: &Signed, headers: &HeaderMap, part: Option<Part>, why: Words) -> Response {
    let l = &signed.locale(headers);
    let today = words!(host::not_today);
    let agreed = part.and_then(|part| part.days()).filter(|_| why.kind() == today.kind());
    let page = bare(
        l,
        &say!(l, errors::title_forbidden),
        html! {
            @match agreed {
                Some(agreed) => {
                    p data-test="not-today" { (say!(l, host::not_today_days, days = days(l, agreed))) }
                    p { (say!(l, host::not_today_what)) }
                }
                None => p { (why.say(l)) }
            }
            p.row { a.button href="/" { (say!(l, errors::to_start)) } a.button href="/homes" { (say!(l, sharing::to_homes)) } }
            (doors(l, signed.account.name.as_str()))
        },
    );
    (StatusCode::FORBIDDEN, page).into_response()
}
