//! Asking another machine over HTTP/1.1: with TLS whose certificate is checked, within a bounded time, no more than so many
//! bytes, and following nothing, so that whoever answers cannot send this program anywhere else.

use http_body_util::{BodyExt, Full, Limited};
use hyper::body::Bytes;
use hyper::client::conn::http1::handshake;
use hyper::header::{HOST, HeaderValue};
use hyper::rt::{Read, Write};
use hyper::{Request, Response, Uri};
use hyper_util::rt::TokioIo;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpStream;
use tokio_rustls::TlsConnector;
use tokio_rustls::rustls::crypto::ring::default_provider;
use tokio_rustls::rustls::pki_types::ServerName;
use tokio_rustls::rustls::{ClientConfig, RootCertStore};
use url::{Host, Url};

type Failed = Box<dyn std::error::Error + Send + Sync>;

/// Why nobody can be asked.
#[derive(Debug, thiserror::Error)]
pub enum NoWire {
    /// The machine's certificates cannot be read.
    #[error("no certificates to tell the other side by: {0}")]
    Roots(String),
    /// The machine trusts nobody at all.
    #[error("this machine trusts no certificates, so the other side cannot be told from anyone else")]
    NoRoots,
}

/// Why nothing came.
#[derive(Debug, thiserror::Error)]
pub enum WireError {
    /// An address that is not safe to open.
    #[error("{0} is not https")]
    Unsafe(Url),
    /// An address that names no host, or no port that is known.
    #[error("an address without a host or port")]
    NoHost,
    /// It took longer than one waits.
    #[error("it took too long")]
    TooSlow,
    /// What the network, TLS or HTTP said.
    #[error("{0}")]
    Failed(Failed),
}

/// How long one waits, and for how much.
#[derive(Clone, Copy, Debug)]
pub struct Bounds {
    /// From connecting to the last byte.
    pub patience: Duration,
    /// Most bytes of an answer.
    pub most: usize,
}

/// The way to others.
#[derive(Clone)]
pub struct Wire {
    tls: TlsConnector,
    /// Whether it is on this machine, where plain HTTP is as good.
    here: bool,
    bounds: Bounds,
}

impl std::fmt::Debug for Wire {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Wire").field("here", &self.here).field("bounds", &self.bounds).finish_non_exhaustive()
    }
}

/// Whether an address is one of this machine, in plain HTTP.
pub fn is_here(url: &Url) -> bool {
    let local = match url.host() {
        Some(Host::Domain(name)) => name == "localhost",
        Some(Host::Ipv4(ip)) => ip.is_loopback(),
        Some(Host::Ipv6(ip)) => ip.is_loopback(),
        None => false,
    };
    url.scheme() == "http" && local
}

impl Wire {
    /// Trusts whom the machine trusts. `here` is for whoever is on this machine.
    ///
    /// # Errors
    /// [`NoWire`] where that is nobody, and TLS is needed.
    pub fn new(here: bool, bounds: Bounds) -> Result<Self, NoWire> {
        let mut roots = RootCertStore::empty();
        let found = rustls_native_certs::load_native_certs();
        let (trusted, _) = roots.add_parsable_certificates(found.certs);
        if trusted == 0 && !here {
            return Err(found.errors.first().map_or(NoWire::NoRoots, |why| NoWire::Roots(why.to_string())));
        }
        let config = ClientConfig::builder_with_provider(Arc::new(default_provider()))
            .with_safe_default_protocol_versions()
            .map_err(|why| NoWire::Roots(why.to_string()))?
            .with_root_certificates(roots)
            .with_no_client_auth();
        Ok(Self { tls: TlsConnector::from(Arc::new(config)), here, bounds })
    }

    /// That an address may be opened or led to: by HTTPS, or on this machine where the other side is.
    ///
    /// # Errors
    /// [`WireError::Unsafe`].
    pub fn admits(&self, url: &Url) -> Result<(), WireError> {
        if url.scheme() == "https" || (self.here && is_here(url)) {
            return Ok(());
        }
        Err(WireError::Unsafe(url.clone()))
    }

    /// Asks once, by a request whose address is whole.
    ///
    /// # Errors
    /// [`WireError`].
    pub async fn ask(&self, request: Request<Vec<u8>>) -> Result<Response<Vec<u8>>, WireError> {
        match tokio::time::timeout(self.bounds.patience, self.asked(request)).await {
            Ok(answer) => answer,
            Err(_) => Err(WireError::TooSlow),
        }
    }

    async fn asked(&self, request: Request<Vec<u8>>) -> Result<Response<Vec<u8>>, WireError> {
        let failed = |why: Failed| WireError::Failed(why);
        let url = Url::parse(&request.uri().to_string()).map_err(|why| failed(why.into()))?;
        self.admits(&url)?;
        let host = url.host_str().ok_or(WireError::NoHost)?.trim_matches(['[', ']']).to_owned();
        let port = url.port_or_known_default().ok_or(WireError::NoHost)?;
        let stream = TcpStream::connect((host.as_str(), port)).await.map_err(|why| failed(why.into()))?;
        let answer = if url.scheme() == "https" {
            let name = ServerName::try_from(host).map_err(|why| failed(why.into()))?;
            let stream = self.tls.connect(name, stream).await.map_err(|why| failed(why.into()))?;
            over(TokioIo::new(stream), &url, request, self.bounds.most).await
        } else {
            over(TokioIo::new(stream), &url, request, self.bounds.most).await
        };
        answer.map_err(failed)
    }
}

/// One question over a connection of its own.
async fn over(
    stream: impl Read + Write + Unpin + Send + 'static,
    url: &Url,
    request: Request<Vec<u8>>,
    most: usize,
) -> Result<Response<Vec<u8>>, Failed> {
    let (mut parts, body) = request.into_parts();
    let host = url.host_str().unwrap_or_default();
    let host = url.port().map_or_else(|| host.to_owned(), |port| format!("{host}:{port}"));
    parts.headers.insert(HOST, HeaderValue::from_str(&host)?);
    parts.uri = match parts.uri.path_and_query() {
        Some(path) => Uri::try_from(path.as_str())?,
        None => Uri::from_static("/"),
    };
    let (mut sender, connection) = handshake(stream).await?;
    // Ends with the sender, at the end of this.
    let connection = tokio::spawn(connection);
    let request = Request::from_parts(parts, Full::new(Bytes::from(body)));
    let answer = async {
        let (parts, body) = sender.send_request(request).await?.into_parts();
        let body = Limited::new(body, most).collect().await?.to_bytes();
        Ok(Response::from_parts(parts, body.to_vec()))
    };
    let answer: Result<Response<Vec<u8>>, Failed> = answer.await;
    connection.abort();
    answer
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[allow(clippy::unwrap_used)]
    fn plain_http_leads_nowhere_but_to_this_machine() {
        let bounds = Bounds { patience: Duration::from_secs(1), most: 1 };
        let near = Wire::new(true, bounds).unwrap();
        let far = Wire { here: false, ..near.clone() };
        let admits = |wire: &Wire, url: &str| wire.admits(&url.parse().unwrap()).is_ok();
        assert!(admits(&far, "https://id.example.org/token") && admits(&near, "http://127.0.0.1:9/token"));
        for url in ["http://id.example.org/token", "http://127.0.0.1:9/token", "file:///etc/hosts"] {
            assert!(!admits(&far, url), "{url}");
        }
        assert!(!admits(&near, "http://192.0.2.1/token"));
    }
}
