//! A table as a file: sorted, and saying so, so that nobody sorts it again.

use crate::aside::aside;
use crate::error::ExportError;
use datafusion::arrow::array::RecordBatch;
use datafusion::parquet::arrow::ArrowWriter;
use datafusion::parquet::basic::{Compression, Encoding, ZstdLevel};
use datafusion::parquet::file::metadata::SortingColumn;
use datafusion::parquet::file::properties::{EnabledStatistics, WriterProperties};

use datafusion::parquet::schema::types::ColumnPath;
use std::path::Path;

/// Rows between two places at which a reader can start.
const ROWS: usize = 1 << 20;

fn properties(batch: &RecordBatch, order: &[&str]) -> WriterProperties {
    let place = |name: &&str| batch.schema().index_of(name).ok().and_then(|at| i32::try_from(at).ok());
    let sorted = order.iter().filter_map(place).map(|column_idx| SortingColumn {
        column_idx,
        descending: false,
        nulls_first: false,
    });
    let time = ColumnPath::from("at_s");
    WriterProperties::builder()
        .set_compression(Compression::ZSTD(ZstdLevel::default()))
        .set_sorting_columns(Some(sorted.collect()))
        .set_max_row_group_row_count(Some(ROWS))
        .set_statistics_enabled(EnabledStatistics::Chunk)
        // Times within a home rise: what is between two is small.
        .set_column_dictionary_enabled(time.clone(), false)
        .set_column_encoding(time, Encoding::DELTA_BINARY_PACKED)
        .set_created_by("sayso study".to_owned())
        .build()
}

/// Writes a table that lies sorted by `order`; it appears under its name once it is whole. Its bytes.
pub(crate) fn write(to: &Path, batch: &RecordBatch, order: &[&str]) -> Result<u64, ExportError> {
    let placed = aside(to, |file| {
        let failed = ExportError::table(to);
        let writer = ArrowWriter::try_new(file, batch.schema(), Some(properties(batch, order)));
        let mut writer = writer.map_err(&failed)?;
        writer.write(batch).map_err(&failed)?;
        writer.close().map_err(&failed)?;
        Ok(())
    })?;
    Ok(placed.metadata().map_err(ExportError::io(to))?.len())
}
