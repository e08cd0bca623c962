//! A file on its way in: written to the notebook's folder piece by piece, never whole in memory.

use crate::brought::Upload;
use crate::error::Error;
use crate::store::{Store, StoreError};
use axum::extract::multipart::{Field, MultipartError};
use axum::extract::{FromRequest, Multipart, Request};
use axum::http::StatusCode;
use axum::http::header::CONTENT_LENGTH;
use sayso_model::Body;
use sayso_store::{FileKind, Look};
use sayso_wording::{Locale, Message, say, words};

/// Largest file taken here, in bytes; larger ones go in by the command line.
pub const MOST_UPLOAD: usize = 128 << 20;
/// Longest name shown, in characters.
const MOST_NAME: usize = 80;
/// Name of the file's field in the form.
pub const FIELD: &str = "file";

impl Upload {
    /// What it would bring, of what `admits` lets in.
    ///
    /// # Errors
    /// [`Error::Refused`] where the file cannot be used.
    pub async fn look(&self, store: &Store, l: &Locale, admits: fn(&Body) -> bool) -> Result<Look, Error> {
        store.look_at_only(self.file.path(), self.kind, admits).await.map_err(|e| self.unfit(l, e))
    }

    /// What went wrong, where it is about the file by the name that the person knows it by.
    pub fn unfit(&self, l: &Locale, error: StoreError) -> Error {
        let name = self.name.clone();
        let what = match &error {
            StoreError::BadBackup { what, .. } => words!(faults::file_no_backup_use, name = name, what = what.say(l)),
            StoreError::BadArchive { what, .. } => words!(faults::file_no_archive, name = name, what = what.say(l)),
            StoreError::Newer { path, .. } if path == self.file.path() => words!(faults::file_newer, name = name),
            StoreError::NotOurs(path) if path == self.file.path() => words!(faults::file_not_ours, name = name),
            StoreError::NotADatabase(path) if path == self.file.path() => {
                words!(faults::file_not_a_backup, name = name)
            }
            StoreError::Corrupt { path, what } if path == self.file.path() => {
                words!(faults::file_damaged, name = name, what = what.say(l))
            }
            // What it is is said, not only that it is not for here.
            StoreError::OnlyInAFolder(_) => words!(faults::file_backup_on_server, name = name),
            _ => return error.into(),
        };
        Error::refused(FIELD, what)
    }
}

/// Takes the file of a form.
///
/// # Errors
/// [`Error::TooLarge`]; [`Error::Refused`] where there is no file or it is none of ours; [`Error::BadRequest`].
pub async fn received(store: &Store, l: &Locale, request: Request) -> Result<Upload, Error> {
    let said = request.headers().get(CONTENT_LENGTH).and_then(|l| l.to_str().ok()?.parse::<usize>().ok());
    if said.is_some_and(|bytes| bytes > MOST_UPLOAD + super::FRAME) {
        return Err(Error::TooLarge(MOST_UPLOAD));
    }
    let mut form = Multipart::from_request(request, &())
        .await
        .map_err(|e| Error::BadRequest(words!(errors::request_broken, why = e.body_text())))?;
    while let Some(field) = form.next_field().await.map_err(|e| broken(&e))? {
        if field.name() == Some(FIELD) {
            return kept(store, l, field).await;
        }
    }
    Err(Error::refused(FIELD, words!(faults::file_missing)))
}

async fn kept(store: &Store, l: &Locale, mut field: Field<'_>) -> Result<Upload, Error> {
    let name = named(l, field.file_name().unwrap_or_default());
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
        return Err(Error::refused(FIELD, words!(faults::file_empty)));
    }
    match FileKind::of(file.path(), &name) {
        Ok(kind) => Ok(Upload::new(name, kind, file)),
        Err(StoreError::UnknownFile(_)) => Err(Error::refused(FIELD, words!(faults::file_unknown, name = name))),
        Err(other) => Err(other.into()),
    }
}

fn broken(error: &MultipartError) -> Error {
    match error.status() {
        StatusCode::PAYLOAD_TOO_LARGE => Error::TooLarge(MOST_UPLOAD),
        _ => Error::BadRequest(words!(errors::request_broken, why = error.body_text())),
    }
}

/// A file's own name without the folders some browsers put before it.
fn named(l: &Locale, given: &str) -> String {
    let own = given.rsplit(['/', '\\']).next().unwrap_or_default().trim();
    let shown: Vec<char> = own.chars().filter(|c| !c.is_control()).collect();
    let end: String = shown.iter().skip(shown.len().saturating_sub(MOST_NAME)).collect();
    if end.is_empty() { say!(l, exchange::nameless) } else { end }
}
