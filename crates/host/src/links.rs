//! Links that carry a secret: shown once, mailed or printed, never logged.

use sayso_people::Secret;
use url::Url;

fn at(public_url: &Url, path: &str, secret: &Secret) -> String {
    format!("{}/{path}/{}", public_url.as_str().trim_end_matches('/'), secret.reveal())
}

/// To take an invitation.
#[must_use]
pub fn join(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "join", secret)
}

/// To sign in by a mailed link.
#[must_use]
pub fn sign_in(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "sign-in/link", secret)
}

/// To prove an e-mail address.
#[must_use]
pub fn prove(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "account/email", secret)
}
