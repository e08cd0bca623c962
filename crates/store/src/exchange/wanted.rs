//! What should stand at a place of a file or an event, as values: said in English here, for the log; the words for people
//! stand in the catalogues.

use sayso_model::Fault;
use sayso_model::text::TextError;
use sayso_model::time::TimeError;
use sayso_model::units::OutOfRange;

/// What should stand there.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum Wanted {
    /// A text.
    #[error("a text")]
    Text,
    /// A number.
    #[error("a number such as 1.5")]
    Number,
    /// A number that is not written with a comma.
    #[error("a number with a point, such as 1.5")]
    Point,
    /// A whole number.
    #[error("a whole number from {low} to {high}")]
    Whole {
        /// Least.
        low: i64,
        /// Most.
        high: i64,
    },
    /// Yes or no.
    #[error("true or false")]
    Flag,
    /// Several of the same.
    #[error("a list")]
    List,
    /// A list within a cell.
    #[error("a JSON list such as [\"walk\",\"food\"]")]
    JsonList,
    /// An object with these fields.
    #[error("an object with {}", .0.join(", "))]
    Object(Vec<String>),
    /// An object whose other fields depend on one.
    #[error("a JSON object with \"{tag}\", one of: {}", names.join(", "))]
    Tagged {
        /// That one.
        tag: String,
        /// Its values.
        names: Vec<String>,
    },
    /// An object, not its values in order.
    #[error("a JSON object, from {{ to }}, not a list")]
    ObjectNotList,
    /// One of these.
    #[error("one of: {}", .0.join(", "))]
    OneOf(Vec<String>),
    /// Anything: it cannot be left out.
    #[error("a value: this is needed")]
    Needed,
    /// One of these: it cannot be left out.
    #[error("a value: this is needed, one of: {}", .0.join(", "))]
    NeededOneOf(Vec<String>),
    /// Nothing: the field is none of these.
    #[error("nothing: there is no such field; there are: {}", .0.join(", "))]
    NoSuchField(Vec<String>),
    /// Nothing: a kind of event does not have the field.
    #[error("an empty cell: {0} has no such field")]
    EmptyCell(String),
    /// Nothing: its parts have columns of their own, such as this.
    #[error("nothing: use columns for its parts, such as {0}")]
    Parts(String),
    /// Nothing: what a correction holds has columns of its own.
    #[error("nothing: use columns that begin with \"body.\"")]
    BodyColumns,
    /// What the field takes, once.
    #[error("a value that fits this field, given once")]
    Fitting,
    /// An id.
    #[error("an id (a UUID such as 0198a2b4-7c11-7000-8000-000000000001)")]
    Id,
    /// The id of a home.
    #[error("the id of a home (a UUID)")]
    HomeId,
    /// The id of a home, where the notebook has none.
    #[error("the id of a home (a UUID): this notebook has none yet; begin with one, or import an export")]
    FirstHomeId,
    /// An id, no name being known.
    #[error("an id: no names are known here yet")]
    NoNameYet,
    /// An id or a name.
    #[error("an id or one of the known names: {}{}", known.join(", "), and_more(*more))]
    Name {
        /// Names that are known.
        known: Vec<String>,
        /// How many more there are.
        more: usize,
    },
    /// One of several ids of one name.
    #[error("an id, because {count} have this name: {}", ids.join(", "))]
    OneOfIds {
        /// How many there are.
        count: usize,
        /// The first of them.
        ids: Vec<String>,
    },
    /// A time.
    #[error("a time such as 2026-03-01 18:30 or 2026-03-01T18:30:00+01:00, in the years 2000 to 2199")]
    Time,
    /// A time with its offset, as no zone is known.
    #[error("an offset from UTC, such as {0}+01:00: this home has no time zone yet")]
    Offset(String),
    /// One of the two times that a clock shows alike.
    #[error("{first} or {second}: clocks go back in {zone}, and this time comes twice")]
    Twice {
        /// Before clocks go back.
        first: String,
        /// After.
        second: String,
        /// Where.
        zone: String,
    },
    /// One of the two times that may be meant by one that no clock shows.
    #[error("{first} or {second}: clocks go forward in {zone}, and this time is skipped")]
    Skipped {
        /// As clocks went before.
        first: String,
        /// As they go after.
        second: String,
        /// Where.
        zone: String,
    },
    /// An event.
    #[error("one event as a JSON object, from {{ to }}")]
    Event,
    /// JSON, which cannot be read on from a column.
    #[error("one event as JSON; it cannot be read from column {column} on")]
    Json {
        /// From 1.
        column: usize,
    },
    /// An id that no other event has.
    #[error("an id of its own: another event has this one; to put an event right, add a correction")]
    OwnId,
    /// Nothing: it is written down by somebody who may, and never read in.
    #[error(
        "no consent: what a file says of it opens nothing; a keeper of the home gives and takes it back on the page"
    )]
    ByHand,
    /// A smaller file.
    #[error("at most {most} bytes: cut it into several files between two lines")]
    SmallerFile {
        /// Most bytes.
        most: usize,
    },
    /// Shorter lines.
    #[error("at most {most} bytes")]
    ShorterLine {
        /// Most bytes.
        most: usize,
    },
    /// Text.
    #[error("UTF-8, not UTF-16, Latin-1 or Windows-1252: save it again as \"UTF-8\" or \"CSV UTF-8\"")]
    Utf8,
    /// Quotation marks in pairs.
    #[error("every \" closed; a \" inside a cell is written twice")]
    ClosedQuotes,
    /// A table.
    #[error("a CSV file")]
    Table,
    /// As many cells as there are columns.
    #[error("{0} cells, as in the first row")]
    Cells(usize),
    /// A first row.
    #[error("a first row with the names of the columns")]
    Header,
    /// A column once.
    #[error("each column once")]
    ColumnOnce,
    /// A column that is known, such as these.
    #[error("a column such as {}, word, by, answer or result.outcome", .0.join(", "))]
    Column(Vec<String>),
    /// This column.
    #[error("a column {0}")]
    ThisColumn(String),
    /// Something else: what is wrong with what stands there.
    #[error(transparent)]
    Other(Fault),
}

fn and_more(more: usize) -> String {
    if more > 0 { format!(" and {more} more") } else { String::new() }
}

macro_rules! other {
    ($($type:ty),*) => { $(
        impl From<$type> for Wanted {
            fn from(what: $type) -> Self {
                Self::Other(what.into())
            }
        }
    )* };
}
other!(Fault, TextError, TimeError, OutOfRange);
