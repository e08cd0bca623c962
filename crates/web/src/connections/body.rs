//! Bodies of requests and answers, which tell what their connection is at. A request whose body stops coming breaks off.

use super::Patience;
use super::connection_limiter::{Phase, Place};
use axum::body::{Body, Bytes, HttpBody};
use hyper::body::{Frame, Incoming, SizeHint};
use std::future::Future;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll, ready};
use tokio::time::{Instant, Sleep};

/// Why a body broke off.
#[derive(Debug, thiserror::Error)]
pub enum BrokenOff {
    /// The connection failed.
    #[error(transparent)]
    Connection(#[from] hyper::Error),
    /// Nothing came for too long, or all of it took too long.
    #[error("the body came too slowly")]
    TooSlow,
}

/// A request's body.
pub struct Received {
    body: Incoming,
    patience: Patience,
    pause: Option<Pin<Box<Sleep>>>,
    whole: Option<Pin<Box<Sleep>>>,
    place: Arc<Place>,
}

impl Received {
    /// The body of a request on this place.
    pub fn new(body: Incoming, patience: Patience, place: Arc<Place>) -> Self {
        place.comes_to(if body.is_end_stream() { Phase::Working } else { Phase::Receiving });
        Self { body, patience, pause: None, whole: None, place }
    }

    fn too_slow(&mut self, cx: &mut Context<'_>) -> bool {
        let Patience { pause, body, .. } = self.patience;
        let pause = self.pause.get_or_insert_with(|| Box::pin(tokio::time::sleep(pause)));
        let whole = self.whole.get_or_insert_with(|| Box::pin(tokio::time::sleep(body)));
        pause.as_mut().poll(cx).is_ready() | whole.as_mut().poll(cx).is_ready()
    }
}

impl HttpBody for Received {
    type Data = Bytes;
    type Error = BrokenOff;

    fn poll_frame(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<Option<Result<Frame<Bytes>, BrokenOff>>> {
        let this = self.get_mut();
        let Poll::Ready(frame) = Pin::new(&mut this.body).poll_frame(cx) else {
            return if this.too_slow(cx) { Poll::Ready(Some(Err(BrokenOff::TooSlow))) } else { Poll::Pending };
        };
        if let Some(pause) = &mut this.pause {
            pause.as_mut().reset(Instant::now() + this.patience.pause);
        }
        if this.body.is_end_stream() || frame.is_none() {
            this.place.comes_to(Phase::Working);
        }
        Poll::Ready(frame.map(|f| f.map_err(BrokenOff::from)))
    }

    fn is_end_stream(&self) -> bool {
        self.body.is_end_stream()
    }

    fn size_hint(&self) -> SizeHint {
        self.body.size_hint()
    }
}

/// An answer's body. When it has gone, the connection waits for the next request.
pub struct Answered {
    body: Body,
    place: Arc<Place>,
    /// A web socket goes on after its answer.
    goes_on: bool,
}

impl Answered {
    /// The body of an answer on this place.
    pub fn new(body: Body, place: Arc<Place>, goes_on: bool) -> Self {
        place.comes_to(Phase::Working);
        Self { body, place, goes_on }
    }
}

impl HttpBody for Answered {
    type Data = Bytes;
    type Error = axum::Error;

    fn poll_frame(self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<Option<Result<Frame<Bytes>, axum::Error>>> {
        Poll::Ready(ready!(Pin::new(&mut self.get_mut().body).poll_frame(cx)))
    }

    fn is_end_stream(&self) -> bool {
        self.body.is_end_stream()
    }

    fn size_hint(&self) -> SizeHint {
        self.body.size_hint()
    }
}

impl Drop for Answered {
    fn drop(&mut self) {
        if !self.goes_on {
            self.place.comes_to(Phase::Waiting);
        }
    }
}
