//! What kind of device asks.

use axum::http::HeaderMap;
use axum::http::header::USER_AGENT;

/// The kind of device by what its browser says of itself, as `pairing-kind` says it; for people to tell devices apart, nothing more.
#[must_use]
pub fn kind_of(headers: &HeaderMap) -> &'static str {
    let says = headers.get(USER_AGENT).and_then(|v| v.to_str().ok()).unwrap_or("");
    let kinds = [
        ("iPhone", "iphone"),
        ("iPad", "ipad"),
        ("Android", "android"),
        ("Windows", "windows"),
        ("Macintosh", "mac"),
        ("CrOS", "chromebook"),
        ("Linux", "linux"),
    ];
    kinds.iter().find(|(part, _)| says.contains(part)).map_or("other", |(_, name)| name)
}
