//! Who is signed in.

use crate::fault::told;
use crate::host::Host;
use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::header::SET_COOKIE;
use axum::http::request::Parts;
use sayso_people::db::Account;
use sayso_people::{Secret, Session};
use sayso_web::Error;
use sayso_web::page::cookie;
use sayso_web::reading::of_account;
use sayso_wording::Locale;
use std::sync::Arc;

/// Name of the cookie of a session. Over HTTPS it carries the prefix that keeps other hosts from setting it (RFC 6265bis).
pub const SESSION_COOKIE: &str = "sayso_session";

/// Its name here.
#[must_use]
pub fn name(host: &Host) -> String {
    if host.is_safe() { format!("__Host-{SESSION_COOKIE}") } else { SESSION_COOKIE.to_owned() }
}

/// Over HTTPS each cookie is marked so on its way out.
fn set(host: &Host, token: &str, seconds: f64) -> String {
    format!("{}={token}; Path=/; Max-Age={seconds}; HttpOnly; SameSite=Lax", name(host))
}

/// The cookie that keeps a session.
#[must_use]
pub fn keeping(host: &Host, token: &Secret) -> String {
    set(host, token.reveal(), host.people.lifetimes().session_s.round())
}

/// The cookie that ends it.
#[must_use]
pub fn ending(host: &Host) -> String {
    set(host, "", 0.0)
}

/// The cookie of a session just begun. The one that the browser had before ends: whoever signs in anew does not leave the old one
/// behind.
///
/// # Errors
/// Where the database fails.
pub async fn begun(host: &Host, before: Option<&Signed>, token: &Secret) -> Result<String, Error> {
    if let Some(before) = before {
        host.people.end_session(before.account.id, before.session.id, host.now()).await.map_err(told)?;
    }
    Ok(keeping(host, token))
}

/// Whether an answer begins or ends a session.
pub fn sets_session(host: &Host, headers: &HeaderMap) -> bool {
    let name = name(host);
    headers.get_all(SET_COOKIE).iter().any(|cookie| cookie.as_bytes().starts_with(name.as_bytes()))
}

/// The token that a request carries.
pub fn token(host: &Host, headers: &HeaderMap) -> Option<Secret> {
    cookie(headers, &name(host)).map(Secret::typed)
}

/// A signed-in account.
#[derive(Clone, Debug)]
pub struct Signed {
    /// The browser's session.
    pub session: Session,
    /// Whose.
    pub account: Account,
}

impl Signed {
    /// How the person reads: as the device was told, else as the account says.
    #[must_use]
    pub fn locale(&self, headers: &HeaderMap) -> Locale {
        of_account(headers, self.account.language)
    }
}

impl FromRequestParts<Arc<Host>> for Signed {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, _: &Arc<Host>) -> Result<Self, Error> {
        parts.extensions.get::<Self>().cloned().ok_or(Error::NotSignedIn)
    }
}
