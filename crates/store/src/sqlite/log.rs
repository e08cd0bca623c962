//! The table `event`: adding rows and reading them.

use crate::error::StoreError;
use crate::gained::{Gained, joined, understood};
use crate::row::Row;
use crate::sqlite::db::{Db, Files};
use crate::written::{Revision, Written};
use sayso_model::{EventId, HomeId};
use sqlx::{QueryBuilder, Row as _, Sqlite, SqliteConnection};
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use uuid::Uuid;

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

/// Whether the log has any event of a home.
pub(crate) async fn holds(db: &mut SqliteConnection, home: HomeId) -> Result<bool, sqlx::Error> {
    sqlx::query_scalar("SELECT EXISTS (SELECT 1 FROM event WHERE household = $1)").bind(home.0).fetch_one(db).await
}

/// How many events of a home stand after a place.
pub(crate) async fn count_after(db: &mut SqliteConnection, home: HomeId, after: Revision) -> Result<u64, sqlx::Error> {
    let count: i64 = sqlx::query_scalar("SELECT count(*) FROM event WHERE household = $1 AND seq > $2")
        .bind(home.0)
        .bind(after.0)
        .fetch_one(db)
        .await?;
    Ok(u64::try_from(count).unwrap_or(0))
}

/// More rows than this are read by two at once.
const FOR_TWO: i64 = 20_000;
/// Rows read at a time.
const PAGE: usize = 4_096;

/// What the log of a home has gained after a place in it, up to another. A log only grows, so what stands between
/// two places never changes.
pub(crate) async fn gained(
    files: &Files,
    home: HomeId,
    (after, up_to): (Revision, Revision),
) -> Result<Gained, StoreError> {
    if up_to.0 - after.0 < FOR_TWO {
        return stretch(files, home, (after.0, up_to.0)).await;
    }
    let middle = after.0.midpoint(up_to.0);
    let (first, second) =
        tokio::join!(stretch(files, home, (after.0, middle)), stretch(files, home, (middle, up_to.0)));
    let mut gained = first?;
    gained.extend(second?);
    Ok(gained)
}

async fn stretch(files: &Files, home: HomeId, (mut after, up_to): (i64, i64)) -> Result<Gained, StoreError> {
    let mut db = files.reader().await?;
    let (mut gained, mut reading) = (Gained::default(), None);
    loop {
        // While one page is read as JSON, the next one is fetched. The columns beside the content are not needed here.
        let page: Vec<(i64, String)> = sqlx::query_as(
            "SELECT seq, content FROM event WHERE household = $1 AND seq > $2 AND seq <= $3 ORDER BY seq LIMIT $4",
        )
        .bind(home.0)
        .bind(after)
        .bind(up_to)
        .bind(i64::try_from(PAGE).unwrap_or(i64::MAX))
        .fetch_all(&mut *db)
        .await
        .map_err(db.sql())?;
        let more = page.last().map(|(seq, _)| *seq).filter(|_| page.len() == PAGE);
        let (now, later) = match more {
            // Too few to be worth another thread.
            None => (Some(understood(page)), None),
            Some(_) => (None, Some(tokio::task::spawn_blocking(move || understood(page)))),
        };
        for done in [joined(std::mem::replace(&mut reading, later)).await?, now].into_iter().flatten() {
            let (events, unread) = done;
            gained.events.extend(events);
            gained.extend(at(&mut db, &unread).await?);
        }
        match more {
            Some(end) => after = end,
            None => return Ok(gained),
        }
    }
}

/// Rows after a place in the log, of all homes, in order of arrival, at most `limit`.
pub(crate) async fn after(db: &mut Db, after: i64, limit: i64) -> Result<Vec<Row>, StoreError> {
    let sql = db.sql();
    sqlx::query_as("SELECT seq, id, household, kind, amends, content FROM event WHERE seq > $1 ORDER BY seq LIMIT $2")
        .bind(after)
        .bind(limit)
        .fetch_all(&mut **db)
        .await
        .map_err(sql)
}

/// The events at some places in the log, read anew.
pub(crate) async fn at(db: &mut Db, places: &[i64]) -> Result<Gained, StoreError> {
    let mut gained = Gained::default();
    for seq in places {
        for row in after(db, seq - 1, 1).await? {
            match row.event().map_err(|what| db.corrupt(what))? {
                Some(event) => gained.events.push(Arc::new(event)),
                None => gained.later.push((row.seq, row.kind)),
            }
        }
    }
    Ok(gained)
}

/// The ids at some places in the log, those left out where there is no row.
pub(crate) async fn ids_at(db: &mut SqliteConnection, places: &[i64]) -> Result<Vec<(i64, Uuid)>, sqlx::Error> {
    let mut found = Vec::with_capacity(places.len());
    for piece in pieces(places) {
        let mut query = QueryBuilder::<Sqlite>::new("SELECT seq, id FROM event WHERE seq IN (");
        let mut list = query.separated(", ");
        for place in piece {
            list.push_bind(*place);
        }
        query.push(") ORDER BY seq");
        found.extend(query.build_query_as::<(i64, Uuid)>().fetch_all(&mut *db).await?);
    }
    Ok(found)
}
