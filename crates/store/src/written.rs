//! An event as it is stored, and its place in the log.

use crate::row::{Envelope, Row};
use sayso_model::{Event, EventId, Fault, HomeId, Problems};

/// How far a log has grown: the number of its last row. Grows with every stored event, in every process. Of a notebook in
/// a folder it counts all its homes, on a server one.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub struct Revision(pub i64);

/// An event and its place in the order of arrival.
#[derive(Clone, PartialEq, Debug)]
pub struct Logged {
    /// Its place; later arrivals have larger ones.
    pub at: Revision,
    /// The event as first recorded.
    pub event: Event,
}

/// An event as JSON with its columns, ready to be stored.
#[derive(Clone, Debug)]
pub(crate) struct Written {
    pub id: EventId,
    pub home: HomeId,
    /// The kind's name, which this version may not know.
    pub kind: String,
    pub amends: Option<EventId>,
    pub json: String,
    /// Whether it may come from a home that is not here yet.
    pub asked_in: bool,
}

impl Written {
    /// An event of this version.
    pub fn of(event: &Event) -> Result<Self, Problems> {
        let json = serde_json::to_string(event).map_err(|_| Problems::one("event", Fault::NotWritten))?;
        let kind = event.body.kind().name().to_owned();
        Ok(Self { id: event.id, home: event.home, kind, amends: event.body.amends(), json, asked_in: false })
    }

    /// An event of a later version, as it is written; none where it is no event.
    pub fn unread(json: &str) -> Option<Self> {
        let says = Envelope::of(json)?;
        let (kind, amends) = (says.kind().to_owned(), says.amends().map(EventId));
        Some(Self {
            id: EventId(says.id),
            home: HomeId(says.home),
            kind,
            amends,
            json: json.to_owned(),
            asked_in: false,
        })
    }

    /// Whether `stored` is the same event: letter for letter, or as far as its meaning goes.
    pub fn is(&self, stored: &str) -> bool {
        fn equal<T: serde::de::DeserializeOwned + PartialEq>(a: &str, b: &str) -> bool {
            matches!((serde_json::from_str::<T>(a), serde_json::from_str::<T>(b)), (Ok(a), Ok(b)) if a == b)
        }
        self.json == stored || equal::<Event>(&self.json, stored) || equal::<serde_json::Value>(&self.json, stored)
    }
}

impl From<Row> for Written {
    /// A row of another log, unchanged.
    fn from(row: Row) -> Self {
        let (id, home, amends) = (EventId(row.id), HomeId(row.home), row.amends.map(EventId));
        Self { id, home, kind: row.kind, amends, json: row.content, asked_in: false }
    }
}
