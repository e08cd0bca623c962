//! Errors told: as JSON under `/api` and to scripts that ask for it, as a page elsewhere.

use crate::access::host_of;
use crate::error::{Error, FROM, SENT, Told};
use crate::layout::{bare, doors};
use crate::pages::who::{as_field, own_path};
use crate::reading::{Reader, asks_json};
use axum::Json;
use axum::extract::Request;
use axum::http::{StatusCode, header};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use maud::html;
use sayso_wording::{Locale, faults, say, words};

/// The answer for addresses nothing is at.
pub async fn no_such_page() -> Error {
    Error::NotFound(words!(errors::no_such_page))
}

/// Middleware: tells errors as JSON under `/api` and where JSON is asked for, as a page elsewhere. Also puts words to answers
/// the framework itself gives without any, such as 405 and 413.
pub async fn in_words(mut request: Request, next: Next) -> Response {
    let reader = Reader::default();
    request.extensions_mut().insert(reader.clone());
    let of_device = crate::reading::locale(request.headers(), None);
    let json = asks_json(request.headers()) || request.uri().path().starts_with("/api");
    let asked = format!("{} {}", request.method(), without_secrets(request.uri().path()));
    // What was sent is not sent again by whoever is led back: they come to the page whose form it was.
    let sent = !request.method().is_safe();
    let from = if sent {
        own_path(form_of(&request))
    } else {
        let whole = request.uri().path_and_query().map(|all| own_path(Some(all.to_string())));
        whole.filter(|whole| whole != "/").unwrap_or_else(|| request.uri().path().to_owned())
    };
    let mut response = next.run(request).await;
    let status = response.status();
    if !status.is_client_error() && !status.is_server_error() {
        return response;
    }
    let told = match response.extensions_mut().remove::<Told>() {
        Some(told) => told,
        None if status == StatusCode::METHOD_NOT_ALLOWED => {
            Told { error: words!(errors::not_that_method), problems: Vec::new(), leads: None, log: None }
        }
        None if status == StatusCode::PAYLOAD_TOO_LARGE => {
            Told { error: words!(errors::too_large_here), problems: Vec::new(), leads: None, log: None }
        }
        // A query or a part of the path that cannot be read: wherever it is asked for, its refusal passes here.
        None if status == StatusCode::BAD_REQUEST => {
            Told { error: words!(errors::address_broken), problems: Vec::new(), leads: None, log: None }
        }
        None if status.is_server_error() => {
            tracing::error!("{asked} was answered {status}.");
            return response;
        }
        None => return response,
    };
    if let Some(what) = &told.log {
        tracing::error!("{asked}: {what}");
    }
    let locale = reader.known().unwrap_or(of_device);
    let mut answer = if json {
        (status, Json(told.json(&locale))).into_response()
    } else if let Some(to) = told.leads {
        // Where one shows once more who one is it is told that what was sent was not kept.
        let to = to.replace(SENT, if sent { "&sent=yes" } else { "" }).replace(FROM, &as_field(&from));
        return axum::response::Redirect::to(&to).into_response();
    } else {
        (status, page(&locale, status, &told, reader.account())).into_response()
    };
    for name in [header::RETRY_AFTER, header::ALLOW] {
        if let Some(value) = response.headers().get(&name) {
            answer.headers_mut().insert(name, value.clone());
        }
    }
    answer
}

/// The path of the page here whose form was sent, as far as the browser says it.
fn form_of(request: &Request) -> Option<String> {
    let here = host_of(request.headers(), request.uri())?;
    let (_, rest) = request.headers().get(header::REFERER)?.to_str().ok()?.split_once("://")?;
    let (host, path) = rest.split_at(rest.find('/')?);
    let path = path.split(['?', '#']).next()?;
    host.eq_ignore_ascii_case(here).then(|| path.to_owned())
}

/// A path for the log: links of a server hold a secret of 64 characters, and whoever reads the log shall not come in by it.
fn without_secrets(path: &str) -> String {
    let told = |part| if str::len(part) < 64 { part } else { "\u{2026}" };
    path.split('/').map(told).collect::<Vec<_>>().join("/")
}

fn page(locale: &Locale, status: StatusCode, told: &Told, account: Option<&str>) -> maud::Markup {
    let title = match status {
        StatusCode::NOT_FOUND => say!(locale, errors::title_not_here),
        StatusCode::UNPROCESSABLE_ENTITY => say!(locale, errors::title_check),
        StatusCode::FORBIDDEN => say!(locale, errors::title_forbidden),
        StatusCode::TOO_MANY_REQUESTS => say!(locale, errors::title_wait),
        StatusCode::INSUFFICIENT_STORAGE => say!(locale, errors::title_full),
        StatusCode::SERVICE_UNAVAILABLE => say!(locale, errors::title_unavailable),
        _ => say!(locale, errors::title_failed),
    };
    bare(
        locale,
        &title,
        html! {
            @if told.problems.is_empty() { p { (told.error.say(locale)) } }
            @else {
                p { (say!(locale, errors::nothing_kept)) }
                ul { @for p in &told.problems { li { (faults::at(locale, &p.field, &p.what)) } } }
            }
            p { a.button href="/" { (say!(locale, errors::to_start)) } }
            @if let Some(account) = account { (doors(locale, account)) }
        },
    )
}

#[cfg(test)]
mod tests {
    use super::without_secrets;

    #[test]
    fn the_log_names_addresses_and_no_secrets() {
        assert_eq!(without_secrets(&format!("/join/{}", "a1".repeat(32))), "/join/\u{2026}");
        assert_eq!(
            without_secrets("/a/01890000-0000-7000-8000-000000000001/board"),
            "/a/01890000-0000-7000-8000-000000000001/board"
        );
    }
}
