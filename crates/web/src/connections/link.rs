//! A connection's bytes. One whose other end takes nothing for too long is given up.

use super::connection_limiter::Place;
use crate::secure::Carrier;
use std::future::Future;
use std::io;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::Sleep;

/// A connection, with its place as long as it is open, also as a web socket.
pub struct Link {
    carrier: Carrier,
    patience: Duration,
    stalled: Option<Pin<Box<Sleep>>>,
    _place: Arc<Place>,
}

impl Link {
    /// A connection that is given up where nothing can be written for `patience`.
    #[must_use]
    pub fn new(carrier: Carrier, patience: Duration, place: Arc<Place>) -> Self {
        Self { carrier, patience, stalled: None, _place: place }
    }

    fn patiently<T>(
        &mut self,
        cx: &mut Context<'_>,
        poll: impl FnOnce(&mut Carrier, &mut Context<'_>) -> Poll<io::Result<T>>,
    ) -> Poll<io::Result<T>> {
        if let Poll::Ready(done) = poll(&mut self.carrier, cx) {
            self.stalled = None;
            return Poll::Ready(done);
        }
        let patience = self.patience;
        let stalled = self.stalled.get_or_insert_with(|| Box::pin(tokio::time::sleep(patience)));
        stalled.as_mut().poll(cx).map(|()| Err(io::ErrorKind::TimedOut.into()))
    }
}

impl AsyncRead for Link {
    fn poll_read(self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &mut ReadBuf<'_>) -> Poll<io::Result<()>> {
        match &mut self.get_mut().carrier {
            Carrier::Plain(s) => Pin::new(s).poll_read(cx, buf),
            Carrier::Safe(s) => Pin::new(s).poll_read(cx, buf),
        }
    }
}

impl AsyncWrite for Link {
    fn poll_write(self: Pin<&mut Self>, cx: &mut Context<'_>, buf: &[u8]) -> Poll<io::Result<usize>> {
        self.get_mut().patiently(cx, |carrier, cx| match carrier {
            Carrier::Plain(s) => Pin::new(s).poll_write(cx, buf),
            Carrier::Safe(s) => Pin::new(s).poll_write(cx, buf),
        })
    }

    fn poll_flush(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        self.get_mut().patiently(cx, |carrier, cx| match carrier {
            Carrier::Plain(s) => Pin::new(s).poll_flush(cx),
            Carrier::Safe(s) => Pin::new(s).poll_flush(cx),
        })
    }

    fn poll_shutdown(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        self.get_mut().patiently(cx, |carrier, cx| match carrier {
            Carrier::Plain(s) => Pin::new(s).poll_shutdown(cx),
            Carrier::Safe(s) => Pin::new(s).poll_shutdown(cx),
        })
    }
}
