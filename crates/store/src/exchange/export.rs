//! Everything in the log as a file, amendments among it.

use super::Format;
use super::cells::{self, ENVELOPE, WHOLE, column};
use crate::aside::{self, Aside};
use crate::damage::Damage;
use crate::error::StoreError;
use crate::folder::folder_of;
use crate::row::Row;
use crate::store::Store;
use crate::written::Revision;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::io::{BufWriter, Write};
use std::path::Path;

/// Events read at a time.
const PAGE: i64 = 2_000;

impl Store {
    /// Writes every event of every home as it was first recorded, corrections and withdrawals among them, in
    /// order of arrival; answers how many. Reading the file back into an empty notebook gives the same events.
    ///
    /// # Errors
    /// [`StoreError::Io`] where `out` cannot be written; [`StoreError::Corrupt`] where an event cannot be read.
    pub async fn export(&self, format: Format, out: &mut (dyn Write + Send)) -> Result<usize, StoreError> {
        // Up to here: what arrives meanwhile belongs to the next export.
        let end = self.revision().await?;
        match format {
            Format::JsonLines => self.export_json(end, out).await,
            Format::Csv => self.export_csv(end, out).await,
        }
    }

    /// Writes an export to a new file, readable by its owner alone, which appears under its name once it is whole.
    ///
    /// # Errors
    /// [`StoreError::Exists`] where `to` is there already; [`StoreError::DiskFull`]; otherwise as [`Store::export`].
    pub async fn export_to(&self, format: Format, to: &Path) -> Result<usize, StoreError> {
        if to.exists() {
            return Err(StoreError::Exists(to.to_owned()));
        }
        let folder = folder_of(to);
        aside::tidy(folder);
        let mut aside = Aside::beside(to)?;
        let mut out = BufWriter::new(aside.file());
        let count = self.export(format, &mut out).await?;
        out.into_inner().map_err(|e| StoreError::io(to)(e.into_error()))?;
        aside.place()?;
        Ok(count)
    }

    async fn page(&self, after: &mut Revision, end: Revision) -> Result<Vec<Row>, StoreError> {
        let page = self.rows(*after, PAGE).await?;
        *after = page.last().map_or(end, |row| Revision(row.seq));
        Ok(page.into_iter().filter(|row| row.seq <= end.0).collect())
    }

    async fn export_json(&self, end: Revision, out: &mut (dyn Write + Send)) -> Result<usize, StoreError> {
        let (mut after, mut count) = (Revision(0), 0);
        while after < end {
            for row in self.page(&mut after, end).await? {
                // As it is stored, whether this version understands it or not; JSON has line breaks only between values.
                writeln!(out, "{}", row.content.replace(['\n', '\r'], " ")).map_err(written)?;
                count += 1;
            }
        }
        out.flush().map_err(written)?;
        Ok(count)
    }

    async fn export_csv(&self, end: Revision, out: &mut (dyn Write + Send)) -> Result<usize, StoreError> {
        let flat = |row: &Row| flat(row).map_err(|what| self.log.corrupt(what));
        // Only the columns that are used, so that the table stays readable; hence two passes.
        let (mut after, mut used) = (Revision(0), BTreeSet::new());
        while after < end {
            for row in self.page(&mut after, end).await? {
                used.extend(flat(&row)?.into_keys());
            }
        }
        let mut columns: Vec<String> = ENVELOPE.into_iter().map(str::to_owned).collect();
        columns.extend(used.into_iter().filter(|c| !ENVELOPE.contains(&c.as_str())));
        let mut table = csv::WriterBuilder::new().from_writer(&mut *out);
        table.write_record(&columns).map_err(csv_written)?;
        let (mut after, mut count) = (Revision(0), 0);
        while after < end {
            for row in self.page(&mut after, end).await? {
                let cells = flat(&row)?;
                let row = columns.iter().map(|c| cells.get(c).map_or("", String::as_str));
                table.write_record(row).map_err(csv_written)?;
                count += 1;
            }
        }
        table.flush().map_err(written)?;
        Ok(count)
    }
}

fn written(error: std::io::Error) -> StoreError {
    StoreError::io(Path::new("export"))(error)
}

fn csv_written(error: csv::Error) -> StoreError {
    match error.into_kind() {
        csv::ErrorKind::Io(e) => written(e),
        other => written(std::io::Error::other(format!("{other:?}"))),
    }
}

/// The cells of an event by column. One that this version does not understand is one cell, as it is stored.
///
/// # Errors
/// What is wrong with the row.
fn flat(row: &Row) -> Result<BTreeMap<String, String>, Damage> {
    let mut cells = BTreeMap::new();
    match row.event()? {
        Some(event) => {
            let value = serde_json::to_value(&event).map_err(|e| Damage::Said(e.to_string()))?;
            spread(event.body.kind().name(), "", &value, &mut cells);
        }
        None => {
            cells.insert("kind".to_owned(), row.kind.clone());
            cells.insert(WHOLE.to_owned(), cells::guard(&row.content));
        }
    }
    Ok(cells)
}

fn spread(kind: &str, path: &str, value: &Value, cells: &mut BTreeMap<String, String>) {
    match value {
        Value::Object(fields) => {
            for (name, value) in fields {
                let below = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
                spread(kind, &below, value, cells);
            }
        }
        other => {
            cells.insert(column(kind, path), cells::write(other));
        }
    }
}
