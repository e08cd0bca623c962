//! What every request passes: this server's name, same-origin writes, and who is signed in.

use crate::fault::told;
use crate::host::Host;
use crate::signed::{Signed, keeping, sets_session, token};
use axum::extract::{ConnectInfo, Request, State};
use axum::http::header::{ACCEPT, SET_COOKIE, UPGRADE};
use axum::http::{Extensions, HeaderMap, HeaderValue};
use axum::middleware::Next;
use axum::response::Response;
use sayso_people::{OsSecrets, Secret};
use sayso_web::Error;
use sayso_web::access::{host_of, network, same_site};
use sayso_web::reading::Reader;
use sayso_web::secure::Peer;
use sayso_wording::words;
use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;

/// The network address that a request came from, for counting tries.
#[derive(Clone, Debug)]
pub struct From(pub String);

impl From {
    fn of(host: &Host, extensions: &Extensions, headers: &HeaderMap) -> Self {
        let peer = extensions.get::<ConnectInfo<Peer>>().map(|c| c.0.ip());
        // The last one is written by our own proxy; those before it by whoever asked.
        let proxied = || headers.get_all("x-forwarded-for").iter().next_back()?.to_str().ok()?.rsplit(',').next();
        let told = if host.behind_proxy { proxied().and_then(address) } else { None };
        // Of IPv6 one network: whoever has one has more addresses than can be counted.
        Self(told.or(peer).map(|ip| network(ip).to_string()).unwrap_or_default())
    }
}

/// An address with or without a port.
fn address(text: &str) -> Option<IpAddr> {
    let text = text.trim();
    text.parse().ok().or_else(|| text.parse::<SocketAddr>().ok().map(|a| a.ip()))
}

/// Middleware: lets in what comes under this server's name, and finds out who is signed in.
///
/// # Errors
/// [`Error::Forbidden`] for other names and cross-site writes.
pub async fn guard(State(host): State<Arc<Host>>, mut request: Request, next: Next) -> Result<Response, Error> {
    let Some(name) = host_of(request.headers(), request.uri()).filter(|name| is_ours(&host, name)) else {
        tracing::warn!("A request under a name that is not this server's was refused.");
        return Err(Error::Forbidden(words!(host::other_name, url = host.public_url.to_string())));
    };
    // A web socket starts as a GET that browsers send across sites with cookies.
    let writes = !request.method().is_safe() || request.headers().contains_key(UPGRADE);
    if writes && !same_site(request.headers(), name) {
        tracing::warn!("A write from another site's page was refused.");
        return Err(Error::Forbidden(words!(errors::other_site)));
    }
    let from = From::of(&host, request.extensions(), request.headers());
    request.extensions_mut().insert(from);
    let token = token(&host, request.headers());
    let now = host.now();
    let mut renew = None;
    if let Some(token) = token
        && let Some(session) = host.people.session(&token, now).await.map_err(told)?
        && let Some(account) = host.people.account(session.account).await.map_err(told)?
    {
        // Of requests under way at once with one token only one gets the new one: so only with a page.
        let page = request.headers().get(ACCEPT).is_some_and(|a| a.as_bytes().starts_with(b"text/html"));
        renew = (session.renew && page && request.method().is_safe()).then_some(token);
        if let Some(reader) = request.extensions().get::<Reader>() {
            reader.is_signed_in(account.name.as_str());
        }
        request.extensions_mut().insert(Signed { session, account });
    }
    let mut response = next.run(request).await;
    if let Some(old) = renew {
        renewed(&host, &old, &mut response).await?;
    }
    Ok(response)
}

/// Roles changed: the answer carries a new token, unless it carries a session already.
async fn renewed(host: &Host, old: &Secret, response: &mut Response) -> Result<(), Error> {
    if sets_session(host, response.headers()) {
        return Ok(());
    }
    match host.people.renew(old, host.now(), &mut OsSecrets).await {
        Ok((_, new)) => {
            let cookie = HeaderValue::from_str(&keeping(host, &new)).map_err(Error::internal)?;
            response.headers_mut().append(SET_COOKIE, cookie);
            Ok(())
        }
        // Another request was quicker.
        Err(sayso_people::Error::NotValid) => Ok(()),
        Err(error) => Err(told(error)),
    }
}

fn is_ours(host: &Host, named: &str) -> bool {
    let url = &host.public_url;
    let with_port = url.host_str().map(|name| match url.port() {
        Some(port) => format!("{name}:{port}"),
        None => name.to_owned(),
    });
    with_port.is_some_and(|ours| named.eq_ignore_ascii_case(&ours))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_proxy_may_write_the_port_too() {
        for (text, read) in [
            (" 192.0.2.7", Some("192.0.2.7")),
            ("192.0.2.7:443", Some("192.0.2.7")),
            ("2001:db8::1", Some("2001:db8::1")),
            ("[2001:db8::1]:443", Some("2001:db8::1")),
            ("unknown", None),
            ("", None),
        ] {
            assert_eq!(address(text).map(|a| a.to_string()).as_deref(), read, "{text}");
        }
    }
}
