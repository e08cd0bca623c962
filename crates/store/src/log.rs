//! The table `event`: adding rows and reading them.

use crate::error::StoreError;
use crate::row::{self, Envelope, Row};
use sayso_model::{Event, EventId, HomeId, Problem, Problems};
use sqlx::{QueryBuilder, Row as _, Sqlite, SqliteConnection};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use uuid::Uuid;

/// How far the log has grown: the number of its last row. Grows with every stored event, in every process.
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
    /// Whether it may come from a household that is not here yet.
    pub asked_in: bool,
}

impl Written {
    /// An event of this version.
    pub fn of(event: &Event) -> Result<Self, Problems> {
        let json = serde_json::to_string(event).map_err(|e| {
            Problems(vec![Problem { field: "event".to_owned(), what: format!("cannot be written as JSON: {e}") }])
        })?;
        let kind = event.body.kind().name().to_owned();
        Ok(Self { id: event.id, home: event.home, kind, amends: event.body.amends(), json, asked_in: false })
    }

    /// An event of a later version, as it is written; none where it is no event.
    pub fn unread(json: &str) -> Option<Self> {
        let says = Envelope::of(json).ok()?;
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

/// What a household's log has gained.
#[derive(Default)]
pub(crate) struct Gained {
    pub events: Vec<Logged>,
    /// Events that this version does not understand, by kind.
    pub later: BTreeMap<String, usize>,
}

/// Rows in one INSERT. Only these sizes occur, so that the statements stay prepared.
const CHUNKS: [usize; 3] = [64, 8, 1];

/// Cuts a slice into pieces of 64, 8 or 1.
pub(crate) fn pieces<T>(mut all: &[T]) -> impl Iterator<Item = &[T]> {
    std::iter::from_fn(move || {
        let size = CHUNKS.into_iter().find(|c| *c <= all.len())?;
        let (piece, rest) = all.split_at(size);
        all = rest;
        Some(piece)
    })
}

/// Stores the events whose id is not there yet; answers which those were.
pub(crate) async fn insert(db: &mut SqliteConnection, events: &[&Written]) -> Result<BTreeSet<EventId>, sqlx::Error> {
    let mut new = BTreeSet::new();
    for piece in pieces(events) {
        let mut query = QueryBuilder::<Sqlite>::new("INSERT INTO event (id, household, kind, amends, content) ");
        query.push_values(piece, |mut row, w| {
            row.push_bind(w.id.0)
                .push_bind(w.home.0)
                .push_bind(w.kind.as_str())
                .push_bind(w.amends.map(|of| of.0))
                .push_bind(w.json.as_str());
        });
        query.push(" ON CONFLICT (id) DO NOTHING RETURNING id");
        let ids: Vec<Uuid> = query.build_query_scalar().fetch_all(&mut *db).await?;
        new.extend(ids.into_iter().map(EventId));
    }
    Ok(new)
}

/// The stored JSON of events, by id; unknown ids are left out.
pub(crate) async fn contents(
    db: &mut SqliteConnection,
    ids: &[EventId],
) -> Result<BTreeMap<EventId, String>, sqlx::Error> {
    let mut found = BTreeMap::new();
    for piece in pieces(ids) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT id, content FROM event WHERE id IN (");
        let mut list = query.separated(", ");
        for id in piece {
            list.push_bind(id.0);
        }
        query.push(")");
        for row in query.build().fetch_all(&mut *db).await? {
            found.insert(EventId(row.try_get(0)?), row.try_get(1)?);
        }
    }
    Ok(found)
}

/// How far the log has grown.
pub(crate) async fn revision(db: &mut SqliteConnection) -> Result<Revision, sqlx::Error> {
    sqlx::query_scalar("SELECT coalesce(max(seq), 0) FROM event").fetch_one(db).await.map(Revision)
}

/// What the log of a household has gained after a place in it.
pub(crate) async fn gained(
    db: &mut SqliteConnection,
    path: &Path,
    home: HomeId,
    after: Revision,
) -> Result<Gained, StoreError> {
    let mut gained = Gained::default();
    for row in row::after(db, path, Some(home), after.0, i64::MAX).await? {
        match row.event(path)? {
            Some(event) => gained.events.push(Logged { at: Revision(row.seq), event }),
            None => *gained.later.entry(row.kind).or_default() += 1,
        }
    }
    Ok(gained)
}
