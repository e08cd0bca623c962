//! The notebook that a command is about.

use crate::error::CliError;
use crate::out::note;
use sayso_notebook::Notebook;
use sayso_store::Store;
use sayso_wording::Locale;
use std::path::Path;

/// What the store waits for goes to standard error: a command's answer stays clean.
fn say(what: &str) {
    eprintln!("{what}");
}

/// Opens the store in a folder, made where missing.
pub async fn open_store(dir: &Path) -> Result<Store, CliError> {
    Ok(Store::open_saying(dir, &say).await?)
}

/// Opens the store of a notebook that must be there, however damaged.
pub async fn existing_store(dir: &Path) -> Result<Store, CliError> {
    Ok(sayso_notebook::existing(dir, &say).await?)
}

/// Opens a notebook that must be there and hold a household; says what of it is not understood.
pub async fn open(l: &Locale, dir: &Path) -> Result<Notebook, CliError> {
    let book = Notebook::open(dir, &say).await?;
    for (kind, n) in &book.not_understood {
        note!(l, command::not_understood, n = *n, kind = kind);
    }
    Ok(book)
}
