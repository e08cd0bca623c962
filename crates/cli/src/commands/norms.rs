//! `norms`: rows that homes give, and the release that a notebook keeps.

use super::host::database;
use super::host::restored::people_in_place;
use super::serve::now;
use super::tell::story;
use crate::args::host::AtDatabase;
use crate::args::norms::{Norming, Rows};
use crate::error::CliError;
use crate::out::{note, tell};
use sayso_advisor::summary::summary_rows;
use sayso_host::{RowsKey, norm_rows};
use sayso_norms::{StudyName, write_rows};
use sayso_notebook::{ReadNorms, keep_norms};
use sayso_store::{Database, Server, folder_of, keep_new};
use sayso_wording::{Locale, words};
use std::path::{Path, PathBuf};

/// Connections to the database: it is read by one.
const CONNECTIONS: u32 = 2;

/// Does what was asked.
pub async fn norms(l: &Locale, what: &Norming) -> Result<(), CliError> {
    match what {
        Norming::Rows(asked) => rows(l, asked).await,
        Norming::Import { data, file } => import(l, data, file),
    }
}

async fn rows(l: &Locale, asked: &Rows) -> Result<(), CliError> {
    match (&asked.data, &asked.key_file, &asked.to) {
        (_, Some(key), Some(to)) => of_server(l, asked, key, to).await,
        (Some(dir), ..) => of_notebook(l, dir, &asked.name).await,
        _ => Err(CliError::said(words!(usage::missing, arguments = "--data"))),
    }
}

/// The rows of a notebook, for whoever keeps it to look at.
async fn of_notebook(l: &Locale, dir: &Path, name: &StudyName) -> Result<(), CliError> {
    let rows = summary_rows(&*story(l, dir).await?, name);
    note!(l, command_norms::what_is_in, n = rows.len());
    let text = write_rows(&rows).map_err(CliError::below)?;
    for line in text.lines() {
        tell!("{line}");
    }
    Ok(())
}

/// The rows of the homes of a server that agree, into a file.
async fn of_server(l: &Locale, asked: &Rows, key: &Path, to: &Path) -> Result<(), CliError> {
    let key = key_of(key, to)?;
    let at = AtDatabase { database: asked.database.clone(), database_owner: None };
    let database = Database { connections: CONNECTIONS, ..database(&at)? };
    let server = Server::open(&database).await?;
    // A backup that was brought back would give rows of homes that took their consent back since.
    let people = people_in_place(&database).await?;
    let all = norm_rows(&server, &people, &key, now()).await;
    server.close().await;
    people.close().await;
    let all = all?;
    let text = if asked.only_names {
        all.agreed.iter().map(|name| format!("{}\n", name.as_str())).collect()
    } else {
        write_rows(&all.rows).map_err(CliError::below)?
    };
    keep_new(to, text.as_bytes())?;
    note!(l, command_norms::homes_agreed, agreed = all.agreed.len(), homes = all.homes, rows = all.rows.len());
    Ok(())
}

/// The key in a file, which must not lie in the folder of what is made.
fn key_of(path: &Path, to: &Path) -> Result<RowsKey, CliError> {
    let io = |why: std::io::Error| CliError::file(path, why);
    let real = path.canonicalize().map_err(io)?;
    let folder = folder_of(to);
    let folder: PathBuf = folder.canonicalize().map_err(|why| CliError::file(folder, why))?;
    if real.starts_with(&folder) {
        return Err(CliError::said(words!(command_norms::key_beside, key = path.display().to_string())));
    }
    let bytes = std::fs::read(&real).map_err(io)?;
    let least = RowsKey::LEAST;
    RowsKey::new(&bytes).ok_or_else(|| {
        let key = path.display().to_string();
        CliError::said(words!(command_norms::key_short, key = key, least = least, found = bytes.len()))
    })
}

fn import(l: &Locale, dir: &Path, file: &Path) -> Result<(), CliError> {
    let read = keep_norms(dir, file)?;
    told(l, &read);
    tracing::info!("Kept the release {} ({}) in {}.", read.release.name, read.sha256, dir.display());
    Ok(())
}

fn told(l: &Locale, read: &ReadNorms) {
    let release = &read.release;
    let (name, made) = (release.name.as_str(), l.date(release.made));
    tell!(l, command_norms::imported, release = name, date = made, cells = release.cells.len(), hash = &read.sha256);
    for sentence in sayso_wording::others::source(l, release) {
        tell!("{sentence}");
    }
}
