//! Pages, scripts and JSON are compressed on the way, where the browser takes it. Files that are compressed in themselves, or
//! that are sent piece by piece for minutes, are not: it would cost time and save nothing.
//!
//! Compressing what holds a secret beside what a stranger chose can tell the secret by its length; no page here holds one: who
//! asks is known by a cookie, and forms carry no token.

use axum::http::{HeaderMap, header::CONTENT_TYPE};
use tower_http::compression::CompressionLayer;
use tower_http::compression::predicate::{Predicate, SizeAbove};

/// Below so many bytes an answer fits one packet anyway.
const LEAST_BYTES: u64 = 1_000;

/// What is worth compressing.
#[derive(Clone, Copy, Debug)]
pub struct Text;

impl Predicate for Text {
    fn should_compress<B>(&self, response: &axum::http::Response<B>) -> bool
    where
        B: axum::body::HttpBody,
    {
        text(response.headers())
    }
}

fn text(headers: &HeaderMap) -> bool {
    let kind = headers.get(CONTENT_TYPE).and_then(|value| value.to_str().ok()).unwrap_or_default();
    let kind = kind.split(';').next().unwrap_or_default();
    [
        "text/html",
        "text/css",
        "text/javascript",
        "application/json",
        "application/manifest+json",
        "application/wasm",
        "image/svg+xml",
    ]
    .contains(&kind)
}

/// The layer that does it.
pub fn layer() -> CompressionLayer<tower_http::compression::predicate::And<SizeAbove, Text>> {
    CompressionLayer::new().compress_when(SizeAbove::new(LEAST_BYTES).and(Text))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pages_are_compressed_and_files_are_not() {
        let of = |kind: &str| {
            let mut headers = HeaderMap::new();
            headers.extend(axum::http::HeaderValue::from_str(kind).ok().map(|value| (CONTENT_TYPE, value)));
            text(&headers)
        };
        assert!(of("text/html; charset=utf-8") && of("application/json"));
        assert!(!of("audio/wav") && !of("application/x-tar") && !of("image/webp") && !text(&HeaderMap::new()));
    }
}
