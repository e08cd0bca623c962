//! One port for both: connections that begin a TLS handshake are answered safely, others in plain.

use super::Authority;
use axum::extract::connect_info::Connected;
use axum::serve::IncomingStream;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::mpsc;
use tokio_rustls::server::TlsStream;

/// First byte of a TLS record that carries a handshake (RFC 8446, 5.1); no HTTP request begins with it.
const HANDSHAKE: u8 = 0x16;
/// How long a device may take to begin.
const PATIENCE: Duration = Duration::from_secs(20);
/// How long to wait when the system has no more room for connections.
const PAUSE: Duration = Duration::from_millis(200);
/// Connections that have begun and wait to be served.
const WAITING: usize = 64;

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

impl Connected<IncomingStream<'_, Gate>> for Peer {
    fn connect_info(stream: IncomingStream<'_, Gate>) -> Self {
        Self { address: *stream.remote_addr(), safe: matches!(stream.io(), Link::Safe(_)) }
    }
}

/// A connection.
pub enum Link {
    /// Over TCP as it is.
    Plain(TcpStream),
    /// Over TLS.
    Safe(Box<TlsStream<TcpStream>>),
}

/// Where connections come in.
pub struct Gate {
    begun: mpsc::Receiver<(Link, SocketAddr)>,
    local: SocketAddr,
}

impl Gate {
    /// Begins to accept; with an authority, also over TLS.
    ///
    /// # Errors
    /// [`io::Error`] where the socket does not tell its address.
    pub fn new(listener: TcpListener, authority: Option<Arc<Authority>>) -> io::Result<Self> {
        let local = listener.local_addr()?;
        let (send, begun) = mpsc::channel(WAITING);
        tokio::spawn(accept(listener, authority, send));
        Ok(Self { begun, local })
    }
}

async fn accept(listener: TcpListener, authority: Option<Arc<Authority>>, send: mpsc::Sender<(Link, SocketAddr)>) {
    loop {
        let arrived = tokio::select! {
            arrived = listener.accept() => arrived,
            () = send.closed() => return,
        };
        let (stream, from) = match arrived {
            Ok(pair) => pair,
            Err(error) => {
                tracing::warn!(%error, "a connection could not be accepted");
                tokio::time::sleep(PAUSE).await;
                continue;
            }
        };
        let (send, authority) = (send.clone(), authority.clone());
        // A device that dawdles over its handshake keeps nobody else waiting.
        tokio::spawn(async move {
            match tokio::time::timeout(PATIENCE, begin(stream, authority)).await {
                // A closed receiver means that serving has ended.
                Ok(Ok(link)) => drop(send.send((link, from)).await),
                Ok(Err(error)) => tracing::debug!(%error, %from, "a connection did not begin"),
                Err(_) => tracing::debug!(%from, "a connection took too long to begin"),
            }
        });
    }
}

async fn begin(stream: TcpStream, authority: Option<Arc<Authority>>) -> io::Result<Link> {
    let Some(authority) = authority else { return Ok(Link::Plain(stream)) };
    let mut first = [0];
    if stream.peek(&mut first).await? == 0 || first[0] != HANDSHAKE {
        return Ok(Link::Plain(stream));
    }
    let acceptor = authority.acceptor(stream.local_addr()?.ip()).map_err(io::Error::other)?;
    Ok(Link::Safe(Box::new(acceptor.accept(stream).await?)))
}

impl axum::serve::Listener for Gate {
    type Io = Link;
    type Addr = SocketAddr;

    async fn accept(&mut self) -> (Link, SocketAddr) {
        match self.begun.recv().await {
            Some(pair) => pair,
            // The accepting task ends only with this gate.
            None => std::future::pending().await,
        }
    }

    fn local_addr(&self) -> io::Result<SocketAddr> {
        Ok(self.local)
    }
}

impl AsyncRead for Link {
    fn poll_read(self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &mut ReadBuf<'_>) -> Poll<io::Result<()>> {
        match self.get_mut() {
            Self::Plain(s) => Pin::new(s).poll_read(cx, buf),
            Self::Safe(s) => Pin::new(s).poll_read(cx, buf),
        }
    }
}

impl AsyncWrite for Link {
    fn poll_write(self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &[u8]) -> Poll<io::Result<usize>> {
        match self.get_mut() {
            Self::Plain(s) => Pin::new(s).poll_write(cx, buf),
            Self::Safe(s) => Pin::new(s).poll_write(cx, buf),
        }
    }

    fn poll_flush(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        match self.get_mut() {
            Self::Plain(s) => Pin::new(s).poll_flush(cx),
            Self::Safe(s) => Pin::new(s).poll_flush(cx),
        }
    }

    fn poll_shutdown(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        match self.get_mut() {
            Self::Plain(s) => Pin::new(s).poll_shutdown(cx),
            Self::Safe(s) => Pin::new(s).poll_shutdown(cx),
        }
    }
}
