//! The notebook on a phone's home screen: what the phone is told of it, and where it opens.

mod offline;

use crate::Error;
use crate::assets::asset;
use crate::layout::{THEMES, Tab};
use crate::page::{Page, cookie};
use crate::pages::front::front;
use crate::reading::Reads;
use crate::state::AppState;
use axum::extract::Request;
use axum::http::header::{CONTENT_TYPE, SET_COOKIE};
use axum::http::{HeaderMap, HeaderValue, Method};
use axum::middleware::Next;
use axum::response::{IntoResponse, Redirect, Response};
use axum::{Json, Router, routing::get};
use sayso_model::AnimalId;
use sayso_wording::say;
use serde_json::json;

/// Name of the cookie with the address of the Board or Today that was open last on this device.
const LAST_COOKIE: &str = "sayso_last";

/// Routes of the home screen.
pub fn router() -> Router<AppState> {
    Router::new()
        .route("/manifest.webmanifest", get(manifest))
        .route("/last", get(last))
        .route("/offline", get(offline::offline))
}

/// The web app manifest (W3C, Web Application Manifest) in the language of whoever asks.
async fn manifest(page: Result<Page, Error>, Reads(device): Reads) -> Response {
    let locale = page.map_or(device, |page| page.locale);
    let icon = |file: &str, side: u16, purpose: &str| json!({ "src": asset(file), "sizes": format!("{side}x{side}"), "type": "image/png", "purpose": purpose });
    let told = json!({
        "id": "/",
        "name": "Sayso",
        "short_name": "Sayso",
        "description": say!(&locale, homescreen::description),
        "lang": locale.tag(),
        "dir": locale.direction().name(),
        "start_url": "/last",
        "scope": "/",
        "display": "standalone",
        // The light page's; pages tell the dark one's themselves.
        "background_color": "#faf8f4",
        "theme_color": THEMES[0].1,
        "icons": [
            icon("assets/icon-192.png", 192, "any"),
            icon("assets/icon-512.png", 512, "any"),
            icon("assets/maskable-192.png", 192, "maskable"),
            icon("assets/maskable-512.png", 512, "maskable"),
        ],
    });
    ([(CONTENT_TYPE, "application/manifest+json")], Json(told)).into_response()
}

/// The Board or Today that was open last on this device, as long as its animal takes part.
async fn last(page: Page, headers: HeaderMap) -> Result<Redirect, Error> {
    if let Some(path) = cookie(&headers, LAST_COOKIE)
        && let Some(animal) = animal_of(path)
    {
        // On a server the others stand in logs of their own.
        let homes = if page.leave.is_some() { std::slice::from_ref(&page.home) } else { &page.homes[..] };
        for home in homes {
            let story = page.state.store.story(*home).await?;
            if story.animals().get(&animal).is_some_and(|a| a.active) {
                return Ok(Redirect::to(path));
            }
        }
    }
    Ok(front(page).await)
}

/// The animal of an address that is opened again: its Board or its Today.
fn animal_of(path: &str) -> Option<AnimalId> {
    let animal: AnimalId = path.strip_prefix("/a/")?.split('/').next()?.parse().ok()?;
    [Tab::Board, Tab::Today].iter().any(|tab| tab.href(Some(animal)) == path).then_some(animal)
}

/// Middleware: remembers on the device which Board or Today was open last.
pub async fn remember(request: Request, next: Next) -> Response {
    let path = request.uri().path();
    let opened = request.method() == Method::GET && animal_of(path).is_some();
    let new = opened && cookie(request.headers(), LAST_COOKIE) != Some(path);
    let set = new.then(|| format!("{LAST_COOKIE}={path};Path=/;Max-Age=31536000;HttpOnly;SameSite=Strict"));
    let mut response = next.run(request).await;
    if let Some(value) = set.and_then(|set| HeaderValue::from_str(&set).ok())
        && response.status().is_success()
    {
        response.headers_mut().append(SET_COOKIE, value);
    }
    response
}

#[cfg(test)]
mod tests {
    use super::animal_of;

    #[test]
    fn only_an_own_board_or_today_is_opened_again() {
        let id = "0197a1b2-0000-7000-8000-000000000001";
        for good in ["board", "today"] {
            assert_eq!(animal_of(&format!("/a/{id}/{good}")).map(|a| a.to_string()).as_deref(), Some(id));
        }
        for bad in [format!("/a/{id}/log"), format!("/a/{id}/board/x"), format!("//a/{id}/board"), "/a/x/board".into()]
        {
            assert_eq!(animal_of(&bad), None, "{bad}");
        }
    }
}
