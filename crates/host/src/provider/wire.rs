//! Asking the provider over HTTP/1.1: with TLS whose certificate is checked, within a few seconds, no more than so many bytes,
//! and following nothing, so that the provider cannot send this server anywhere else.

use super::ProviderError;
use axum::body::Bytes;
use axum::http::header::HOST;
use axum::http::{HeaderValue, Uri};
use http_body_util::{BodyExt, Full, Limited};
use hyper::client::conn::http1::handshake;
use hyper::rt::{Read, Write};
use hyper_util::rt::TokioIo;
use openidconnect::{AsyncHttpClient, HttpRequest, HttpResponse};
use std::future::Future;
use std::pin::Pin;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpStream;
use tokio_rustls::TlsConnector;
use tokio_rustls::rustls::crypto::ring::default_provider;
use tokio_rustls::rustls::pki_types::ServerName;
use tokio_rustls::rustls::{ClientConfig, RootCertStore};
use url::{Host, Url};

/// How long one question may take, from connecting to the last byte.
const PATIENCE: Duration = Duration::from_secs(5);
/// Most bytes of an answer.
const MOST: usize = 256 * 1024;

type Failed = Box<dyn std::error::Error + Send + Sync>;

/// Why nothing came.
#[derive(Debug, thiserror::Error)]
pub enum WireError {
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

/// The way to a provider.
pub struct Wire {
    tls: TlsConnector,
    /// Whether it is on this machine, where plain HTTP is as good.
    here: bool,
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
    /// Trusts whom the machine trusts.
    ///
    /// # Errors
    /// [`ProviderError::Roots`] where that is nobody, and TLS is needed.
    pub fn new(here: bool) -> Result<Self, ProviderError> {
        let mut roots = RootCertStore::empty();
        let found = rustls_native_certs::load_native_certs();
        let (trusted, _) = roots.add_parsable_certificates(found.certs);
        if trusted == 0 && !here {
            return Err(found
                .errors
                .first()
                .map_or(ProviderError::NoRoots, |why| ProviderError::Roots(why.to_string())));
        }
        let config = ClientConfig::builder_with_provider(Arc::new(default_provider()))
            .with_safe_default_protocol_versions()
            .map_err(|why| ProviderError::Roots(why.to_string()))?
            .with_root_certificates(roots)
            .with_no_client_auth();
        Ok(Self { tls: TlsConnector::from(Arc::new(config)), here })
    }

    /// That an address may be opened or led to: by HTTPS, or on this machine where the provider is.
    ///
    /// # Errors
    /// [`ProviderError::Unsafe`].
    pub fn admits(&self, url: &Url) -> Result<(), ProviderError> {
        if url.scheme() == "https" || (self.here && is_here(url)) {
            return Ok(());
        }
        Err(ProviderError::Unsafe(url.clone()))
    }

    async fn ask(&self, request: HttpRequest) -> Result<HttpResponse, Failed> {
        let url = Url::parse(&request.uri().to_string())?;
        self.admits(&url)?;
        let host = url.host_str().ok_or(WireError::NoHost)?.to_owned();
        let port = url.port_or_known_default().ok_or(WireError::NoHost)?;
        let stream = TcpStream::connect((host.trim_matches(['[', ']']), port)).await?;
        if url.scheme() == "https" {
            let name = ServerName::try_from(host.trim_matches(['[', ']']).to_owned())?;
            over(TokioIo::new(self.tls.connect(name, stream).await?), &url, request).await
        } else {
            over(TokioIo::new(stream), &url, request).await
        }
    }
}

/// One question over a connection of its own.
async fn over(
    stream: impl Read + Write + Unpin + Send + 'static,
    url: &Url,
    request: HttpRequest,
) -> Result<HttpResponse, Failed> {
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
    let request = axum::http::Request::from_parts(parts, Full::new(Bytes::from(body)));
    let answer = async {
        let (parts, body) = sender.send_request(request).await?.into_parts();
        let body = Limited::new(body, MOST).collect().await?.to_bytes();
        Ok(HttpResponse::from_parts(parts, body.to_vec()))
    };
    let answer: Result<HttpResponse, Failed> = answer.await;
    connection.abort();
    answer
}

impl<'c> AsyncHttpClient<'c> for Wire {
    type Error = WireError;
    type Future = Pin<Box<dyn Future<Output = Result<HttpResponse, WireError>> + Send + 'c>>;

    fn call(&'c self, request: HttpRequest) -> Self::Future {
        Box::pin(async move {
            match tokio::time::timeout(PATIENCE, self.ask(request)).await {
                Ok(answer) => answer.map_err(WireError::Failed),
                Err(_) => Err(WireError::TooSlow),
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[allow(clippy::unwrap_used)]
    fn plain_http_leads_nowhere_but_to_this_machine() {
        let (far, near) = (Wire { here: false, ..Wire::new(true).unwrap() }, Wire::new(true).unwrap());
        let admits = |wire: &Wire, url: &str| wire.admits(&url.parse().unwrap()).is_ok();
        assert!(admits(&far, "https://id.example.org/token") && admits(&near, "http://127.0.0.1:9/token"));
        for url in ["http://id.example.org/token", "http://127.0.0.1:9/token", "file:///etc/hosts"] {
            assert!(!admits(&far, url), "{url}");
        }
        assert!(!admits(&near, "http://192.0.2.1/token"));
    }
}
