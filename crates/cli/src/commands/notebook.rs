//! The notebook that a command is about.

use crate::error::CliError;
use crate::out::note;
use sayso_model::{HomeCard, Label, Moment, Zone};
use sayso_notebook::{NoNotebook, Notebook};
use sayso_store::Store;
use sayso_wording::{Locale, say};
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

/// Opens a notebook that must be there and hold a home; says what of it is not understood.
pub async fn open(l: &Locale, dir: &Path) -> Result<Notebook, CliError> {
    Ok(told(l, Notebook::open(dir, &say).await?))
}

/// As [`open`], or none where the folder holds no notebook.
pub async fn if_any(l: &Locale, dir: &Path) -> Result<Option<Notebook>, CliError> {
    match Notebook::open(dir, &say).await {
        Ok(book) => Ok(Some(told(l, book))),
        Err(NoNotebook::None(_)) => Ok(None),
        Err(why) => Err(why.into()),
    }
}

/// Begins a notebook in a folder that holds none.
pub async fn begin(l: &Locale, dir: &Path, now: Moment) -> Result<Notebook, CliError> {
    let name = Label::new(&say!(l, command_listen::home)).map_err(CliError::below)?;
    Ok(Notebook::begin(dir, HomeCard { name, zone: Zone::utc() }, now, &say).await?)
}

fn told(l: &Locale, book: Notebook) -> Notebook {
    for (kind, n) in &book.not_understood {
        note!(l, command::not_understood, n = *n, kind = kind);
    }
    book
}
