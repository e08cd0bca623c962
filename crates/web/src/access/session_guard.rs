//! What every request passes: names this machine answers to, same-origin writes, paired devices, safe headers.

use crate::error::Error;
use crate::page::cookie;
use crate::reading::locale;
use crate::secure::{Peer, doorstep};
use crate::state::AppState;
use axum::extract::{ConnectInfo, Request, State};
use axum::http::header::{HOST, HeaderName, HeaderValue, ORIGIN, UPGRADE};
use axum::http::{HeaderMap, Uri};
use axum::middleware::Next;
use axum::response::Response;
use sayso_wording::{Words, words};
use std::net::IpAddr;

/// Name of the cookie of a paired device.
pub const PAIRED_COOKIE: &str = "sayso_paired";

/// Middleware: lets in what may come in.
///
/// # Errors
/// [`Error::Forbidden`] for foreign host names and cross-site writes, [`Error::NotPaired`] for unknown devices.
pub async fn guard(State(state): State<AppState>, request: Request, next: Next) -> Result<Response, Error> {
    let lan = state.access.lan();
    let host = host_of(request.headers(), request.uri())
        .filter(|host| known_name(host, lan))
        .ok_or_else(|| Error::Forbidden(wrong_name(lan)))?;
    let path = request.uri().path();
    let asset = path.starts_with("/assets/");
    if let Some(authority) = &state.authority
        && !asset
        && !request.extensions().get::<ConnectInfo<Peer>>().is_some_and(|p| p.0.safe || p.0.ip().is_loopback())
    {
        if !request.method().is_safe() || path.starts_with("/api/") {
            return Err(Error::Forbidden(words!(errors::only_https, host = host.to_owned())));
        }
        return Ok(doorstep(authority, &locale(request.headers(), None), host, path));
    }
    // A web socket starts as a GET that browsers send across sites with cookies.
    let writes = !request.method().is_safe() || request.headers().contains_key(UPGRADE);
    if writes && !same_site(request.headers(), host) {
        return Err(Error::Forbidden(words!(errors::other_site)));
    }
    let open = path == "/pair" || asset;
    if !open && !state.access.admits(cookie(request.headers(), PAIRED_COOKIE), state.now()) {
        return Err(Error::NotPaired);
    }
    Ok(next.run(request).await)
}

/// Middleware: headers on every answer.
pub async fn headers(request: Request, next: Next) -> Response {
    const ALWAYS: [(HeaderName, HeaderValue); 4] = [
        (
            HeaderName::from_static("content-security-policy"),
            HeaderValue::from_static(
                "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; media-src 'self' blob:; \
                 connect-src 'self'; worker-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; \
                 frame-ancestors 'none'",
            ),
        ),
        (HeaderName::from_static("x-content-type-options"), HeaderValue::from_static("nosniff")),
        (HeaderName::from_static("cross-origin-resource-policy"), HeaderValue::from_static("same-origin")),
        (
            HeaderName::from_static("permissions-policy"),
            HeaderValue::from_static("camera=(), geolocation=(), microphone=(self)"),
        ),
    ];
    let mut response = next.run(request).await;
    for (name, value) in ALWAYS {
        response.headers_mut().insert(name, value);
    }
    // Pages and data are about a household; nothing between us and the browser keeps them, and no other site is told where one came
    // from. An answer may be stricter.
    response.headers_mut().entry("cache-control").or_insert(HeaderValue::from_static("no-store"));
    response.headers_mut().entry("referrer-policy").or_insert(HeaderValue::from_static("same-origin"));
    response
}

/// The name a request was made to.
pub fn host_of<'a>(headers: &'a HeaderMap, uri: &'a Uri) -> Option<&'a str> {
    match uri.authority() {
        Some(named) => Some(named.as_str()),
        None => headers.get(HOST)?.to_str().ok(),
    }
}

fn wrong_name(lan: bool) -> Words {
    if lan { words!(errors::other_name) } else { words!(errors::this_machine_only) }
}

/// Against DNS rebinding: a foreign page can make its own domain name point here, but not an address or a name
/// without a public domain.
fn known_name(host: &str, lan: bool) -> bool {
    let (name, port) = match host.rsplit_once(':') {
        Some((name, port)) if !port.ends_with(']') => (name, Some(port)),
        _ => (host, None),
    };
    if port.is_some_and(|p| p.parse::<u16>().is_err()) {
        return false;
    }
    let name = name.to_ascii_lowercase();
    let bare = name.strip_prefix('[').and_then(|n| n.strip_suffix(']')).unwrap_or(&name);
    let address = bare.parse::<IpAddr>().ok().map(|a| a.to_canonical());
    if name == "localhost" || address.is_some_and(|a| a.is_loopback()) {
        return true;
    }
    lan && (address.is_some() || plain_label(&name) || name.strip_suffix(".local").is_some_and(plain_label))
}

/// Whether a name is one a home network gives: a single label of letters, digits and dashes (RFC 1123, 2.1).
pub(crate) fn plain_label(name: &str) -> bool {
    !name.is_empty() && name.len() <= 63 && name.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-')
}

/// Whether a write comes from our own page, or from no page at all (a program sends neither header).
pub fn same_site(headers: &HeaderMap, host: &str) -> bool {
    if let Some(site) = headers.get("sec-fetch-site") {
        return site == "same-origin" || site == "none";
    }
    headers.get(ORIGIN).is_none_or(|origin| {
        origin.to_str().ok().and_then(|o| o.split_once("://")).is_some_and(|(_, from)| from.eq_ignore_ascii_case(host))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn on_this_machine_only_loopback_names_are_known() {
        for good in ["localhost", "localhost:8080", "LOCALHOST:1", "127.0.0.1:80", "[::1]:8080", "[::1]"] {
            assert!(known_name(good, false), "{good}");
        }
        for bad in
            ["", "evil.example", "localhost.evil.example", "192.168.1.5:80", "localhost:x", "localhost:", "[::2]"]
        {
            assert!(!known_name(bad, false), "{bad}");
        }
    }

    #[test]
    fn on_the_home_network_addresses_and_home_names_are_known_but_no_public_name() {
        for good in ["192.168.1.5:8080", "kitchen:8080", "kitchen.local", "[fd00::5]:8080", "localhost"] {
            assert!(known_name(good, true), "{good}");
        }
        for bad in ["evil.example", "a.b.local", ".local", "", "192.168.1.5.evil.example"] {
            assert!(!known_name(bad, true), "{bad}");
        }
    }
}
