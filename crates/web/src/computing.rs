//! Pages are computed away from the threads that take requests, so that a slow page never keeps a tap waiting.

use crate::error::Error;
use axum::extract::Request;
use axum::middleware::Next;
use axum::response::Response;
use std::sync::LazyLock;
use tokio::runtime::Handle;
use tokio::sync::Semaphore;

/// Pages computed at once: as many as there are processors, for more would only take turns.
static TURNS: LazyLock<Semaphore> =
    LazyLock::new(|| Semaphore::new(std::thread::available_parallelism().map_or(2, usize::from).max(2)));

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
    let here = Handle::current();
    tokio::task::spawn_blocking(move || here.block_on(next.run(request))).await.map_err(Error::internal)
}
