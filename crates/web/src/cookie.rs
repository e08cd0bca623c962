//! Cookies of a request.

use axum::http::HeaderMap;
use axum::http::header;

/// The value of one cookie.
#[must_use]
pub fn cookie<'a>(headers: &'a HeaderMap, name: &str) -> Option<&'a str> {
    headers
        .get_all(header::COOKIE)
        .iter()
        .filter_map(|v| v.to_str().ok())
        .flat_map(|v| v.split(';'))
        .find_map(|pair| pair.trim().split_once('=').filter(|(n, _)| *n == name).map(|(_, v)| v))
}
