//! The table `event`: adding rows and reading them.

use crate::error::StoreError;
use sayso_model::{Event, EventId, HouseholdId};
use sqlx::{QueryBuilder, Row, Sqlite, SqliteConnection};
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

/// An event with its JSON, ready to be stored.
#[derive(Clone, Debug)]
pub(crate) struct Written {
    pub event: Event,
    pub json: String,
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
            row.push_bind(w.event.id.0)
                .push_bind(w.event.household.0)
                .push_bind(w.event.body.kind().name())
                .push_bind(w.event.body.amends().map(|of| of.0))
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

/// Events after a place in the log, at most `limit`, of one household or of all.
pub(crate) async fn after(
    db: &mut SqliteConnection,
    path: &Path,
    household: Option<HouseholdId>,
    after: Revision,
    limit: i64,
) -> Result<Vec<Logged>, StoreError> {
    let rows: Vec<(i64, String)> = match household {
        Some(h) => {
            sqlx::query_as("SELECT seq, content FROM event WHERE household = $1 AND seq > $2 ORDER BY seq LIMIT $3")
                .bind(h.0)
                .bind(after.0)
                .bind(limit)
                .fetch_all(db)
                .await
        }
        None => {
            sqlx::query_as("SELECT seq, content FROM event WHERE seq > $1 ORDER BY seq LIMIT $2")
                .bind(after.0)
                .bind(limit)
                .fetch_all(db)
                .await
        }
    }
    .map_err(StoreError::sql(path))?;
    rows.into_iter().map(|(seq, json)| read(&json, path).map(|event| Logged { at: Revision(seq), event })).collect()
}

/// An event from its stored JSON.
pub(crate) fn read(json: &str, path: &Path) -> Result<Event, StoreError> {
    serde_json::from_str(json).map_err(|e| StoreError::Corrupt {
        path: path.to_owned(),
        what: format!("an event cannot be read: {e}; it may stem from a newer version"),
    })
}
