//! Connections: accepted up to a bound, given up where they dawdle, ended in order when the notebook is closed.
//!
//! The figures are habits of such servers (common practice, no source); `docs/decisions/connections.md` says why each.

mod body;
mod connection_limiter;
mod link;

pub use connection_limiter::{Bounds, ConnectionLimiter};

use crate::secure::{Authority, Carrier, Peer, begin};
use axum::Router;
use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, Response, StatusCode};
use body::{Answered, Received};
use connection_limiter::Place;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use link::Link;
use std::convert::Infallible;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::watch;
use tokio::task::JoinSet;
use tower::ServiceExt;

/// How long to wait when the system has no more room for connections.
const PAUSE: Duration = Duration::from_millis(200);

/// How long the other end may take.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Patience {
    /// To send the head of a request; also how long a connection may stay with nothing asked.
    pub head: Duration,
    /// Between two pieces of a body.
    pub pause: Duration,
    /// For a whole body. An import of 64 MiB comes in this time at 110 kB a second.
    pub body: Duration,
    /// To take some of an answer.
    pub write: Duration,
    /// For what is being answered when the notebook is closed.
    pub stop: Duration,
}

impl Default for Patience {
    fn default() -> Self {
        Self {
            head: Duration::from_secs(20),
            pause: Duration::from_secs(20),
            body: Duration::from_secs(600),
            write: Duration::from_secs(60),
            stop: Duration::from_secs(5),
        }
    }
}

/// What every connection needs.
#[derive(Clone)]
struct House {
    app: Router,
    authority: Option<Arc<Authority>>,
    patience: Patience,
    closing: watch::Receiver<bool>,
}

/// Serves `app` on a port until `stop` resolves; then accepts nothing more, lets what is being answered finish for
/// as long as [`Patience::stop`], and ends the rest. With an authority, also over TLS.
pub async fn run(
    listener: TcpListener,
    app: Router,
    authority: Option<Arc<Authority>>,
    (patience, bounds): (Patience, Bounds),
    stop: impl Future<Output = ()>,
) {
    let places = ConnectionLimiter::new(bounds);
    let (close, closing) = watch::channel(false);
    let house = House { app, authority, patience, closing };
    let mut served = JoinSet::new();
    let mut full = false;
    tokio::pin!(stop);
    loop {
        let arrived = tokio::select! {
            biased;
            () = &mut stop => break,
            Some(_) = served.join_next() => continue,
            arrived = listener.accept() => arrived,
        };
        let (stream, from) = match arrived {
            Ok(pair) => pair,
            Err(error) => {
                tracing::warn!("A connection could not be accepted: {error}. The one that waited longest is closed.");
                places.make_room();
                tokio::time::sleep(PAUSE).await;
                continue;
            }
        };
        let Some(place) = places.take(from.ip()) else {
            if !std::mem::replace(&mut full, true) {
                tracing::warn!("{from} was turned away: all {} places are being answered.", bounds.in_all);
            }
            continue;
        };
        full = false;
        let task = served.spawn(connection(stream, from, Arc::clone(&place), house.clone()));
        place.served_by(task);
    }
    drop(listener);
    // Nobody may be left to hear it.
    let _ = close.send(true);
    let ended = async {
        while served.join_next().await.is_some() {}
        places.emptied().await;
    };
    if tokio::time::timeout(patience.stop, ended).await.is_err() {
        tracing::warn!(
            "Some requests were not finished {} seconds after the stop; they were cut off.",
            patience.stop.as_secs()
        );
    }
    served.shutdown().await;
}

async fn connection(stream: TcpStream, from: SocketAddr, place: Arc<Place>, house: House) {
    let House { app, authority, patience, mut closing } = house;
    // Small answers go at once; where the system refuses, they only come later.
    let _ = stream.set_nodelay(true);
    let carrier = match tokio::time::timeout(patience.head, begin(stream, authority)).await {
        Ok(Ok(carrier)) => carrier,
        Ok(Err(error)) => return tracing::debug!("A connection from {from} did not begin: {error}"),
        Err(_) => return tracing::debug!("A connection from {from} took too long to begin."),
    };
    let peer = Peer { address: from, safe: matches!(carrier, Carrier::Safe(_)) };
    let link = Link::new(carrier, patience.write, Arc::clone(&place));
    let service = service_fn(move |request| answer(request, app.clone(), peer, patience, Arc::clone(&place)));
    let served = http1::Builder::new()
        .timer(TokioTimer::new())
        .header_read_timeout(patience.head)
        .serve_connection(TokioIo::new(link), service)
        .with_upgrades();
    tokio::pin!(served);
    let ended = tokio::select! {
        ended = served.as_mut() => ended,
        // An error means that the sender is gone: closing all the same. Its guard may not be kept over an await.
        () = async { drop(closing.wait_for(|c| *c).await) } => {
            served.as_mut().graceful_shutdown();
            served.await
        }
    };
    if let Err(error) = ended {
        tracing::debug!("A connection from {from} broke off: {error}");
    }
}

async fn answer(
    request: Request<Incoming>,
    app: Router,
    peer: Peer,
    patience: Patience,
    place: Arc<Place>,
) -> Result<Response<Answered>, Infallible> {
    let mut request = request.map(|body| Body::new(Received::new(body, patience, Arc::clone(&place))));
    request.extensions_mut().insert(ConnectInfo(peer));
    let response = app.oneshot(request).await?;
    let goes_on = response.status() == StatusCode::SWITCHING_PROTOCOLS;
    Ok(response.map(|body| Answered::new(body, place, goes_on)))
}
