//! One port for both: connections that begin a TLS handshake are answered safely, others in plain.

use super::Authority;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;
use tokio::net::TcpStream;
use tokio_rustls::server::TlsStream;

/// First byte of a TLS record that carries a handshake (RFC 8446, 5.1); no HTTP request begins with it.
const HANDSHAKE: u8 = 0x16;

/// What carries a connection's bytes.
pub enum Carrier {
    /// TCP as it is.
    Plain(TcpStream),
    /// TLS.
    Safe(Box<TlsStream<TcpStream>>),
}

/// Who is at the other end, and over what.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Peer {
    /// Its address.
    pub address: SocketAddr,
    /// Whether nobody between can read along.
    pub safe: bool,
}

impl Peer {
    /// The address without the port.
    #[must_use]
    pub fn ip(&self) -> IpAddr {
        self.address.ip().to_canonical()
    }
}

/// Begins a connection: over TLS where there is an authority and the other end begins a handshake.
///
/// # Errors
/// [`io::Error`] where the handshake fails.
pub async fn begin(stream: TcpStream, authority: Option<Arc<Authority>>) -> io::Result<Carrier> {
    let Some(authority) = authority else { return Ok(Carrier::Plain(stream)) };
    let mut first = [0];
    if stream.peek(&mut first).await? == 0 || first[0] != HANDSHAKE {
        return Ok(Carrier::Plain(stream));
    }
    let acceptor = authority.acceptor(stream.local_addr()?.ip()).map_err(io::Error::other)?;
    Ok(Carrier::Safe(Box::new(acceptor.accept(stream).await?)))
}
