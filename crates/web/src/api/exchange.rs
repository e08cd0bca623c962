//! The whole log as a file, and files of events into the log.

use super::events::body_error;
use crate::computing::file_turn;
use crate::download::sent;
use crate::error::{Error, kind_of};
use crate::leave::{Leave, admits};
use crate::reading::Reads;
use crate::state::AppState;
use axum::body::Bytes;
use axum::extract::rejection::{BytesRejection, QueryRejection};
use axum::extract::{Query, State};
use axum::response::Response;
use axum::{Extension, Json};
use sayso_model::{HomeId, Moment};
use sayso_store::{Format, ImportOptions, Others, Preview};
use sayso_wording::errors::homes;
use sayso_wording::{Message, words};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Largest file for import over HTTP, in bytes; larger ones go in by the command line.
pub const MOST_IMPORT: usize = 64 << 20;

/// Every event as first recorded, one a line.
///
/// # Errors
/// Where the log cannot be read.
pub async fn json_lines(State(state): State<AppState>) -> Result<Response, Error> {
    file(&state, Format::JsonLines, "application/x-ndjson", "sayso.jsonl").await
}

/// The same as a table.
///
/// # Errors
/// Where the log cannot be read.
pub async fn csv(State(state): State<AppState>) -> Result<Response, Error> {
    file(&state, Format::Csv, "text/csv; charset=utf-8", "sayso.csv").await
}

async fn file(state: &AppState, format: Format, kind: &'static str, name: &str) -> Result<Response, Error> {
    let _turn = file_turn().await;
    sent(state.store.held_export(format).await?, kind, name)
}

/// How to read a file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Options {
    format: FormatName,
    #[serde(alias = "household")]
    home: Option<HomeId>,
    #[serde(default)]
    skip_bad_rows: bool,
    #[serde(default, alias = "take_in_other_household")]
    take_in_other_home: bool,
}

/// Forms of a file on the wire.
#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
enum FormatName {
    Jsonl,
    Csv,
}

/// What an import would do.
#[derive(Serialize)]
pub struct PreviewJson {
    rows: usize,
    new: usize,
    duplicates: usize,
    bad_rows: usize,
    problem_count: usize,
    problems: Vec<RowProblemJson>,
    kinds: BTreeMap<&'static str, usize>,
    not_understood: BTreeMap<String, usize>,
    homes: Vec<HomeJson>,
    first: Option<Moment>,
    last: Option<Moment>,
}

/// What a home has in a file.
#[derive(Serialize)]
struct HomeJson {
    id: HomeId,
    name: Option<String>,
    new: usize,
    other: bool,
}

/// One thing wrong with a file.
#[derive(Serialize)]
struct RowProblemJson {
    line: u64,
    field: String,
    found: String,
    kind: &'static str,
    wanted: String,
}

/// What an import did.
#[derive(Serialize)]
pub struct ImportedJson {
    new: usize,
    duplicates: usize,
}

type Asked = Result<Query<Options>, QueryRejection>;
type Sent = Result<Bytes, BytesRejection>;

/// Says what importing the file in the body would do. Stores nothing.
///
/// # Errors
/// [`Error::BadRequest`] for a query that cannot be read; what is wrong with the file is part of the answer.
pub async fn preview(
    State(state): State<AppState>,
    Reads(locale): Reads,
    leave: Option<Extension<Leave>>,
    asked: Asked,
    sent: Sent,
) -> Result<Json<PreviewJson>, Error> {
    let _turn = file_turn().await;
    let (found, _, _) = look(&state, leave, asked, sent).await?;
    Ok(Json(PreviewJson {
        rows: found.rows,
        new: found.new,
        duplicates: found.duplicates,
        bad_rows: found.bad_rows,
        problem_count: found.problem_count,
        problems: found
            .problems
            .iter()
            .map(|p| RowProblemJson {
                line: p.line,
                field: p.field.clone(),
                found: p.found.clone(),
                kind: kind_of(p),
                wanted: p.wanted.say(&locale),
            })
            .collect(),
        kinds: found.kinds.clone(),
        not_understood: found.later.clone(),
        homes: found
            .homes
            .iter()
            .map(|(id, s)| HomeJson { id: *id, name: s.name.clone(), new: s.events, other: s.other })
            .collect(),
        first: found.span.map(|s| s.0),
        last: found.span.map(|s| s.1),
    }))
}

/// Imports the file in the body: all of it or nothing. With `skip_bad_rows`, all sound rows.
///
/// # Errors
/// [`Error::Refused`] while the file has problems.
pub async fn commit(
    State(state): State<AppState>,
    Reads(locale): Reads,
    leave: Option<Extension<Leave>>,
    asked: Asked,
    sent: Sent,
) -> Result<Json<ImportedJson>, Error> {
    let _turn = file_turn().await;
    let (found, skip, others) = look(&state, leave, asked, sent).await?;
    let found = if skip { found.without_bad_rows() } else { found };
    let unwanted = found.others();
    if others == Others::Refuse && !unwanted.is_empty() {
        return Err(Error::refused("home", words!(faults::take_in_home, homes = homes(&locale, &unwanted))));
    }
    let imported = state.store.commit(found, others).await?;
    tracing::info!("Imported a file: {} new events, {} known ones.", imported.new, imported.duplicates);
    Ok(Json(ImportedJson { new: imported.new, duplicates: imported.duplicates }))
}

async fn look(
    state: &AppState,
    leave: Option<Extension<Leave>>,
    asked: Asked,
    body: Sent,
) -> Result<(Preview, bool, Others), Error> {
    let Query(options) = asked.map_err(|e| Error::BadRequest(words!(errors::request_broken, why = e.body_text())))?;
    let bytes = body.map_err(|e| body_error(&e, MOST_IMPORT))?;
    let format = match options.format {
        FormatName::Jsonl => Format::JsonLines,
        FormatName::Csv => Format::Csv,
    };
    let (how, admits) = (ImportOptions { format, home: options.home }, admits(leave.as_deref()));
    let found = state.store.preview_only(&bytes, &how, admits).await?;
    let others = if options.take_in_other_home { Others::TakeIn } else { Others::Refuse };
    Ok((found, options.skip_bad_rows, others))
}
