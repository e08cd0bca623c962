//! A server of many homes: the door (who asks, and may they?), the way to each home's rooms, and the pages that a notebook at
//! home does not have (signing in, joining, the account, who sees what, the server).
//!
//! The rooms themselves are those of `web`: a home on a server has the same pages as one in a folder. Every address of
//! theirs stands in one table with what it takes ([`asked`]); what does not stand there is closed.

// A handler waits for permission, which waits for a story, which waits for the database: optimised, the compiler looks through all.
#![recursion_limit = "256"]

mod answers;
pub mod asked;
mod asker;
mod config;
mod desk;
mod door;
mod empty;
mod events;
mod fault;
mod gate;
mod health;
mod host;
mod inside;
mod json;
mod linked;
pub mod links;
mod mailing;
mod news;
mod norm_rows;
mod noted;
mod onward;
pub mod pages;
mod place;
mod provider;
mod qr;
mod reader;
mod rooms;
mod serve;
mod signed;
mod stories;
mod sweep;
mod tidings;
mod to_home;
mod way;

pub use config::{HostConfig, HostOpened, Mail};
pub use desk::go_on as keep_desks;
pub use fault::HostError;
pub use host::Host;
pub use norm_rows::{NormRows, RowsKey, norm_rows};
pub use provider::ProviderConfig;
pub use serve::host;
pub use signed::{SESSION_COOKIE, Signed};
pub use stories::Stories;
pub use tidings::round as send_tidings;

use axum::Router;
use axum::extract::DefaultBodyLimit;
use axum::http::HeaderValue;
use axum::http::header::{SET_COOKIE, STRICT_TRANSPORT_SECURITY};
use axum::middleware::{from_fn, from_fn_with_state, map_response};
use axum::response::Response;
use axum::routing::post;
use std::sync::Arc;

/// The whole application of a server.
pub fn app(host: Arc<Host>) -> Router {
    let house = Router::new()
        .merge(pages::router(&host))
        .merge(linked::router())
        .route("/api/events", post(events::append).fallback(way::home))
        .fallback(way::home)
        .layer(DefaultBodyLimit::max(sayso_web::MOST_BODY))
        .layer(from_fn_with_state(Arc::clone(&host), door::guard))
        .merge(sayso_web::assets::router());
    let safe = host.is_safe();
    let house = sayso_web::around(house);
    let house = if safe { house.layer(map_response(over_https)) } else { house };
    // Outside the door: whoever asks how it does is nobody, and knows no name of the server.
    let counted = from_fn_with_state(Arc::clone(&host), health::count);
    house.merge(health::router().layer(from_fn(sayso_web::access::headers))).layer(counted).with_state(host)
}

/// Browsers come back over HTTPS only (RFC 6797), and keep no cookie that could go out in plain.
async fn over_https(mut response: Response) -> Response {
    let headers = response.headers_mut();
    headers.insert(STRICT_TRANSPORT_SECURITY, HeaderValue::from_static("max-age=31536000"));
    let cookies: Vec<HeaderValue> = headers.get_all(SET_COOKIE).iter().cloned().collect();
    headers.remove(SET_COOKIE);
    for cookie in cookies {
        let is_safe = cookie.to_str().is_ok_and(|c| c.to_ascii_lowercase().contains("; secure"));
        let marked = [cookie.as_bytes(), b"; Secure"].concat();
        // A cookie that was a header is one with more letters, too.
        headers.append(SET_COOKIE, if is_safe { cookie } else { HeaderValue::from_bytes(&marked).unwrap_or(cookie) });
    }
    response
}
