//! A file on its way in: written to the notebook's folder piece by piece, never whole in memory.

use crate::brought::Upload;
use crate::error::Error;
use crate::store::{Store, StoreError};
use axum::extract::multipart::{Field, MultipartError};
use axum::extract::{FromRequest, Multipart, Request};
use axum::http::StatusCode;
use axum::http::header::CONTENT_LENGTH;
use sayso_store::{FileKind, Look};

/// Largest file taken here, in bytes; larger ones go in by the command line.
pub const MOST_UPLOAD: usize = 128 << 20;
/// Longest name shown, in characters.
const MOST_NAME: usize = 80;
/// Name of the file's field in the form.
pub const FIELD: &str = "file";

impl Upload {
    /// What it would bring.
    ///
    /// # Errors
    /// [`Error::Refused`] where the file cannot be used.
    pub async fn look(&self, store: &Store) -> Result<Look, Error> {
        store.look_at(self.file.path(), self.kind).await.map_err(|e| self.unfit(e))
    }

    /// What went wrong, where it is about the file by the name that the person knows it by.
    pub fn unfit(&self, error: StoreError) -> Error {
        let what = match &error {
            StoreError::BadBackup { what, .. } => format!("cannot be used as a backup: {what}"),
            StoreError::BadArchive { what, .. } => format!("cannot be read as an archive of a notebook: {what}"),
            StoreError::Newer { path, .. } if path == self.file.path() => {
                "was written by a newer version; update this program".to_owned()
            }
            StoreError::NotOurs(path) if path == self.file.path() => {
                "is a database of another program, and no backup of a notebook".to_owned()
            }
            StoreError::NotADatabase(path) if path == self.file.path() => {
                "is no backup: it is damaged, or another kind of file".to_owned()
            }
            StoreError::Corrupt { path, what } if path == self.file.path() => format!("is damaged: {what}"),
            _ => return error.into(),
        };
        Error::refused(FIELD, format!("\u{201c}{}\u{201d} {what}", self.name))
    }
}

/// Takes the file of a form.
///
/// # Errors
/// [`Error::TooLarge`]; [`Error::Refused`] where there is no file or it is none of ours; [`Error::BadRequest`].
pub async fn received(store: &Store, request: Request) -> Result<Upload, Error> {
    let said = request.headers().get(CONTENT_LENGTH).and_then(|l| l.to_str().ok()?.parse::<usize>().ok());
    if said.is_some_and(|bytes| bytes > MOST_UPLOAD + super::FRAME) {
        return Err(Error::TooLarge(MOST_UPLOAD));
    }
    let mut form = Multipart::from_request(request, &()).await.map_err(|e| Error::BadRequest(e.body_text().into()))?;
    while let Some(field) = form.next_field().await.map_err(|e| broken(&e))? {
        if field.name() == Some(FIELD) {
            return kept(store, field).await;
        }
    }
    Err(Error::refused(FIELD, "is missing; choose one"))
}

async fn kept(store: &Store, mut field: Field<'_>) -> Result<Upload, Error> {
    let name = named(field.file_name().unwrap_or_default());
    let mut file = store.hold_file()?;
    let mut bytes = 0;
    while let Some(piece) = field.chunk().await.map_err(|e| broken(&e))? {
        bytes += piece.len();
        if bytes > MOST_UPLOAD {
            return Err(Error::TooLarge(MOST_UPLOAD));
        }
        file.write(&piece)?;
    }
    if bytes == 0 {
        return Err(Error::refused(FIELD, "is missing or empty; choose one"));
    }
    match FileKind::of(file.path(), &name) {
        Ok(kind) => Ok(Upload::new(name, kind, file)),
        Err(StoreError::UnknownFile(_)) => {
            let what = "is none that can be taken in: a table (.csv), lines of JSON (.jsonl or .ndjson), an archive (.tar) or a backup (.sayso)";
            Err(Error::refused(FIELD, format!("\u{201c}{name}\u{201d} {what}")))
        }
        Err(other) => Err(other.into()),
    }
}

fn broken(error: &MultipartError) -> Error {
    match error.status() {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_UPLOAD),
        _ => Error::BadRequest(error.body_text().into()),
    }
}

/// A file's own name without the folders some browsers put before it.
fn named(given: &str) -> String {
    let own = given.rsplit(['/', '\\']).next().unwrap_or_default().trim();
    let shown: Vec<char> = own.chars().filter(|c| !c.is_control()).collect();
    let end: String = shown.iter().skip(shown.len().saturating_sub(MOST_NAME)).collect();
    if end.is_empty() { "the file".to_owned() } else { end }
}
