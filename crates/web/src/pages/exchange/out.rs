//! Everything as one file, made when it is asked for and sent piece by piece.

use crate::error::Error;
use crate::state::AppState;
use axum::body::Body;
use axum::extract::State;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_LENGTH, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use sayso_store::HeldFile;
use tokio_util::io::ReaderStream;

/// Every event and every recording, in a form any system unpacks.
pub async fn archive(State(state): State<AppState>) -> Result<Response, Error> {
    let (file, done) = state.store.held_archive().await?;
    if done.damaged_clips > 0 {
        tracing::error!("An archive was made without {} recordings, which are damaged.", done.damaged_clips);
    }
    sent(file, "application/x-tar", "sayso.tar")
}

/// A backup with its digest.
pub async fn backup(State(state): State<AppState>) -> Result<Response, Error> {
    sent(state.store.held_backup().await?, "application/octet-stream", "copy.sayso")
}

fn sent(file: HeldFile, kind: &'static str, name: &str) -> Result<Response, Error> {
    let file = file.into_file()?;
    let length = file.metadata().map_err(Error::internal)?.len();
    let head = [
        (CONTENT_TYPE, kind.to_owned()),
        (CONTENT_LENGTH, length.to_string()),
        (CONTENT_DISPOSITION, format!("attachment; filename=\"{name}\"")),
    ];
    Ok((head, Body::from_stream(ReaderStream::new(tokio::fs::File::from_std(file)))).into_response())
}
