//! A file that was made to be sent, piece by piece, never whole in memory.

use crate::error::Error;
use axum::body::Body;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_LENGTH, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use sayso_store::HeldFile;
use tokio_util::io::ReaderStream;

/// Sends a file to be saved under a name. It is gone from the notebook's folder once it was sent, or was given up.
///
/// # Errors
/// [`Error::Internal`] where it cannot be read.
pub fn sent(file: HeldFile, kind: &'static str, name: &str) -> Result<Response, Error> {
    let file = file.into_file()?;
    let length = file.metadata().map_err(Error::internal)?.len();
    let head = [
        (CONTENT_TYPE, kind.to_owned()),
        (CONTENT_LENGTH, length.to_string()),
        (CONTENT_DISPOSITION, format!("attachment; filename=\"{name}\"")),
    ];
    Ok((head, Body::from_stream(ReaderStream::new(tokio::fs::File::from_std(file)))).into_response())
}
