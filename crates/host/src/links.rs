//! Links as people get them. Those that carry a secret are shown once, mailed or printed, never logged.

use sayso_people::Secret;
use url::Url;

/// An address of the server, from its path.
#[must_use]
pub fn page(public_url: &Url, path: &str) -> String {
    format!("{}/{path}", public_url.as_str().trim_end_matches('/'))
}

fn at(public_url: &Url, path: &str, secret: &Secret) -> String {
    page(public_url, &format!("{path}/{}", secret.reveal()))
}

/// How the address of a calendar ends, as programs expect it.
pub const CALENDAR: &str = ".ics";

/// To read a calendar.
#[must_use]
pub fn calendar(public_url: &Url, secret: &Secret) -> String {
    format!("{}{CALENDAR}", at(public_url, "calendar", secret))
}

/// To take an invitation.
#[must_use]
pub fn join(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "join", secret)
}

/// To link a notebook at home: its code stands behind `#`, which a browser that opens it sends nowhere.
#[must_use]
pub fn notebook(public_url: &Url, code: &Secret) -> String {
    format!("{}#{}", page(public_url, sayso_linked::SHOWN_AT.trim_start_matches('/')), code.reveal())
}

/// To sign in by a mailed link.
#[must_use]
pub fn sign_in(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "sign-in/link", secret)
}

/// To stop letters that tell that something is new.
#[must_use]
pub fn stop(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "letters/stop", secret)
}

/// To prove an e-mail address.
#[must_use]
pub fn prove(public_url: &Url, secret: &Secret) -> String {
    at(public_url, "account/email", secret)
}
