//! Pages are computed away from the threads that take requests, so that a slow page never keeps a tap waiting.

use crate::error::Error;
use axum::extract::Request;
use axum::middleware::Next;
use axum::response::Response;
use std::sync::LazyLock;
use tokio::runtime::Handle;
use tokio::sync::{Semaphore, SemaphorePermit};

/// Pages computed at once: as many as there are processors, for more would only take turns.
static TURNS: LazyLock<Semaphore> =
    LazyLock::new(|| Semaphore::new(std::thread::available_parallelism().map_or(2, usize::from).max(2)));

/// Whole files made or read at once: each costs the disk and the memory of many pages. One, so that no file is taken in twice.
static FILE_TURN: Semaphore = Semaphore::const_new(1);

/// Waits until no other whole file is made or read. Apart from the turns of pages: a slow download keeps no page waiting.
pub async fn file_turn() -> Option<SemaphorePermit<'static>> {
    // The semaphore is never closed.
    FILE_TURN.acquire().await.ok()
}

/// Middleware: runs the handler on a thread of its own. Reading waits for its turn; writing does not.
///
/// # Errors
/// [`Error::Internal`] where the handler panicked.
pub async fn aside(request: Request, next: Next) -> Result<Response, Error> {
    let _turn = match request.method().is_safe() {
        // The semaphore is never closed.
        true => TURNS.acquire().await.ok(),
        false => None,
    };
    apart(request, next).await
}

/// Middleware: runs the handler on a thread of its own at once. What costs much there takes its [`file_turn`].
///
/// # Errors
/// [`Error::Internal`] where the handler panicked.
pub async fn apart(request: Request, next: Next) -> Result<Response, Error> {
    let here = Handle::current();
    tokio::task::spawn_blocking(move || here.block_on(next.run(request))).await.map_err(Error::internal)
}
