//! Files in and out: JSON Lines and CSV. What a file may hold follows from the schema of the model, so that a new
//! field needs no change here.

mod archive;
mod brought;
mod cells;
mod derive;
mod diary;
mod earlier;
mod export;
mod faults;
mod fields;
mod help;
mod local_time;
mod names;
mod preview;
pub(crate) mod problem;
mod resolve;
mod rows;
mod wanted;

pub use archive::{Archived, ClipsBrought, events_of_archive};
pub use brought::{FileKind, Look, TakenIn};
pub use derive::labelled;
pub use diary::{Diary, DiaryPart};
pub use faults::{FaultKind, Faults};
pub(crate) use fields::is_note;
pub use help::{ColumnHelp, columns_of};
pub use preview::{ImportOptions, Imported, MOST_PROBLEMS, Preview};
pub use problem::RowProblem;
pub(crate) use resolve::{misfits, unfit};
pub use rows::{MOST_FILE_BYTES, MOST_LINE_BYTES};
pub use wanted::Wanted;

/// The two forms of a file.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Format {
    /// One event a line, as JSON.
    JsonLines,
    /// One event a row, its fields in columns.
    Csv,
}
