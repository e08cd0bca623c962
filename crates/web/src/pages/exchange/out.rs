//! Everything as one file, made when it is asked for and sent piece by piece.

use crate::computing::file_turn;
use crate::download::sent;
use crate::error::Error;
use crate::reading::Reads;
use crate::state::AppState;
use axum::extract::State;
use axum::http::header::{CONTENT_DISPOSITION, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use sayso_wording::say;

/// Every event and every recording, in a form any system unpacks.
pub async fn archive(State(state): State<AppState>) -> Result<Response, Error> {
    let _turn = file_turn().await;
    let (file, done) = state.store.held_archive().await?;
    if done.damaged_clips > 0 {
        tracing::error!("An archive was made without {} recordings, which are damaged.", done.damaged_clips);
    }
    sent(file, "application/x-tar", "sayso.tar")
}

/// A backup with its digest.
pub async fn backup(State(state): State<AppState>) -> Result<Response, Error> {
    let _turn = file_turn().await;
    sent(state.store.held_backup().await?, "application/octet-stream", "copy.sayso")
}

/// A diary of two days, in the reader's language, to begin one with.
pub async fn diary(Reads(locale): Reads) -> Response {
    let head = [(CONTENT_TYPE, "text/csv; charset=utf-8"), (CONTENT_DISPOSITION, "attachment; filename=\"diary.csv\"")];
    (head, format!("{}\n", say!(&locale, exchange::example))).into_response()
}
