//! One home's log on the server. Every transaction says first whose it is.

use crate::error::StoreError;
use crate::gained::Gained;
use crate::postgres::faults::told;
use crate::row::Row;
use crate::snapshot::{self, Landmark, Snapshot};
use crate::written::Revision;
use sayso_model::{EventId, HomeId};
use sqlx::postgres::{PgArguments, PgRow};
use sqlx::query::{Query, QueryAs};
use sqlx::{AssertSqlSafe, FromRow, PgPool, Postgres, Transaction};
use std::collections::BTreeMap;
use std::time::{Duration, Instant};
use tokio::task::spawn_blocking;
use uuid::Uuid;

/// How long a read, and how long a write, is tried again while the server is away: it may only be started anew.
pub(crate) const READ_PATIENCE: Duration = Duration::from_secs(5);
pub(crate) const WRITE_PATIENCE: Duration = Duration::from_secs(20);
/// Before it is tried again: at first, and at most.
const FIRST_PAUSE: Duration = Duration::from_millis(20);
const LONGEST_PAUSE: Duration = Duration::from_millis(300);

/// Rows read at a time.
const PAGE: i64 = 4_096;

/// A transaction, which a home's log begins by saying whose it is.
pub(crate) type Tx = Transaction<'static, Postgres>;

/// A home's log. A clone is another handle on the same one.
#[derive(Clone, Debug)]
pub(crate) struct HomeLog {
    pub home: HomeId,
    pub pool: PgPool,
}

/// What is to be done, tried again while the server is away. Only for what may be done twice.
pub(crate) async fn tried<T, F: Future<Output = Result<T, StoreError>>>(
    patience: Duration,
    work: impl Fn() -> F,
) -> Result<T, StoreError> {
    let (begun, mut pause) = (Instant::now(), FIRST_PAUSE);
    loop {
        match work().await {
            Err(StoreError::Unreachable { .. }) if begun.elapsed() + pause < patience => {
                tokio::time::sleep(pause).await;
                pause = (pause * 2).min(LONGEST_PAUSE);
            }
            done => return done,
        }
    }
}

impl HomeLog {
    /// Begins a transaction of this home.
    pub async fn begin(&self) -> Result<Tx, StoreError> {
        // In one message. The id is letters, digits and hyphens.
        let begin =
            format!("BEGIN ISOLATION LEVEL READ COMMITTED; SELECT set_config('sayso.home', '{}', true)", self.home.0);
        self.pool.begin_with(AssertSqlSafe(begin)).await.map_err(told)
    }

    /// What a query finds, asked again while the server is away.
    pub async fn found<'q, T>(
        &self,
        query: impl Fn() -> QueryAs<'q, Postgres, T, PgArguments>,
    ) -> Result<Vec<T>, StoreError>
    where
        T: Send + Unpin + for<'r> FromRow<'r, PgRow>,
    {
        tried(READ_PATIENCE, || async {
            let mut tx = self.begin().await?;
            let found = query().fetch_all(&mut *tx).await.map_err(told)?;
            tx.commit().await.map_err(told)?;
            Ok(found)
        })
        .await
    }

    /// Writes by a query that may be done twice, while the home is kept from being erased.
    pub async fn put<'q>(
        &self,
        patience: Duration,
        query: impl Fn() -> Query<'q, Postgres, PgArguments>,
    ) -> Result<(), StoreError> {
        tried(patience, || async {
            let mut tx = self.begin().await?;
            self.hold(&mut tx).await?;
            query().execute(&mut *tx).await.map_err(told)?;
            tx.commit().await.map_err(told)
        })
        .await
    }

    /// How far it has grown; by the way, whether it is there.
    pub async fn revision(&self) -> Result<Revision, StoreError> {
        tried(READ_PATIENCE, || async {
            let mut tx = self.begin().await?;
            let last = self.last(&mut tx, "SELECT last, gone FROM sayso.home WHERE id = $1").await?;
            tx.commit().await.map_err(told)?;
            Ok(Revision(last))
        })
        .await
    }

    /// The place of its last event, by a query of its row; refuses a home that is not here, or not any more.
    pub async fn last(&self, tx: &mut Tx, query: &'static str) -> Result<i64, StoreError> {
        let row: Option<(i64, bool)> =
            sqlx::query_as(query).bind(self.home.0).fetch_optional(&mut **tx).await.map_err(told)?;
        match row {
            None => Err(StoreError::NoSuchHome(self.home)),
            Some((_, true)) => Err(StoreError::HomeLeft(self.home)),
            Some((last, false)) => Ok(last),
        }
    }

    /// Refuses what is asked of another home.
    pub fn only(&self, home: HomeId) -> Result<(), StoreError> {
        if home == self.home { Ok(()) } else { Err(StoreError::NoSuchHome(home)) }
    }

    pub async fn rows(&self, after: Revision, limit: i64) -> Result<Vec<Row>, StoreError> {
        self.stretch((after.0, i64::MAX), limit).await
    }

    /// How many events stand after a place: places are without gaps.
    pub async fn count_after(&self, after: Revision) -> Result<u64, StoreError> {
        let last = self.revision().await?;
        Ok(u64::try_from(last.0 - after.0).unwrap_or(0))
    }

    async fn stretch(&self, (after, up_to): (i64, i64), limit: i64) -> Result<Vec<Row>, StoreError> {
        let stretch = || {
            sqlx::query_as(
                "SELECT seq, id, home AS household, kind, amends, content FROM sayso.event \
                 WHERE home = $1 AND seq > $2 AND seq <= $3 ORDER BY seq LIMIT $4",
            )
            .bind(self.home.0)
            .bind(after)
            .bind(up_to)
            .bind(limit)
        };
        self.found(stretch).await
    }

    pub async fn gained(&self, (after, up_to): (Revision, Revision)) -> Result<Gained, StoreError> {
        let (mut gained, mut after, mut reading) = (Gained::default(), after.0, None);
        loop {
            // While one page is read as JSON, the next one is fetched.
            let page = self.stretch((after, up_to.0), PAGE).await?;
            let more = page.last().map(|row| row.seq).filter(|seq| *seq < up_to.0);
            let earlier = reading.replace(spawn_blocking(move || understood(page)));
            for reading in earlier.into_iter().chain(if more.is_none() { reading.take() } else { None }) {
                gained.extend(reading.await.map_err(|_| StoreError::Closed)??);
            }
            match more {
                Some(last) => after = last,
                None => return Ok(gained),
            }
        }
    }

    pub async fn contents(&self, ids: &[EventId]) -> Result<BTreeMap<EventId, String>, StoreError> {
        tried(READ_PATIENCE, || async {
            let mut tx = self.begin().await?;
            let found = contents(&mut tx, self.home, ids).await?;
            tx.commit().await.map_err(told)?;
            Ok(found)
        })
        .await
    }

    pub async fn at(&self, places: &[i64]) -> Result<Gained, StoreError> {
        let at = || {
            sqlx::query_as(
                "SELECT seq, id, home AS household, kind, amends, content FROM sayso.event \
                 WHERE home = $1 AND seq = ANY($2) ORDER BY seq",
            )
            .bind(self.home.0)
            .bind(places)
        };
        let rows: Vec<Row> = self.found(at).await?;
        understood(rows)
    }

    pub async fn landmarks(&self, places: &[i64]) -> Result<Vec<Landmark>, StoreError> {
        let at = || {
            sqlx::query_as("SELECT seq, id FROM sayso.event WHERE home = $1 AND seq = ANY($2) ORDER BY seq")
                .bind(self.home.0)
                .bind(places)
        };
        self.found(at).await
    }

    pub async fn snapshot(&self) -> Result<Result<Option<Snapshot>, String>, StoreError> {
        let of_home = || sqlx::query_as("SELECT bytes FROM sayso.snapshot WHERE home = $1").bind(self.home.0);
        let bytes = self.found(of_home).await?.pop().map(|(bytes,): (Vec<u8>,)| bytes);
        let (Some(bytes), home) = (bytes, self.home) else { return Ok(Ok(None)) };
        let read = spawn_blocking(move || snapshot::read(&bytes, home)).await.map_err(|_| StoreError::Closed)?;
        Ok(read.map(Some).map_err(|why| why.to_string()))
    }

    /// Puts a snapshot in place of the one before, whoever made that: one that holds less may still be one this version
    /// can read.
    pub async fn put_snapshot(&self, at: Revision, bytes: &[u8]) -> Result<(), StoreError> {
        let in_place = || {
            sqlx::query(
                "INSERT INTO sayso.snapshot (home, at, bytes) VALUES ($1, $2, $3) \
                 ON CONFLICT (home) DO UPDATE SET at = excluded.at, bytes = excluded.bytes",
            )
            .bind(self.home.0)
            .bind(at.0)
            .bind(bytes)
        };
        self.put(READ_PATIENCE, in_place).await
    }

    /// Keeps the home from being erased until the transaction ends; refuses where it is.
    pub async fn hold(&self, tx: &mut Tx) -> Result<(), StoreError> {
        self.last(tx, "SELECT last, gone FROM sayso.home WHERE id = $1 FOR KEY SHARE").await.map(drop)
    }
}

/// The stored JSON of events, by id; unknown ids are left out.
pub(crate) async fn contents(
    tx: &mut Tx,
    home: HomeId,
    ids: &[EventId],
) -> Result<BTreeMap<EventId, String>, StoreError> {
    if ids.is_empty() {
        return Ok(BTreeMap::new());
    }
    let ids: Vec<Uuid> = ids.iter().map(|id| id.0).collect();
    let found: Vec<(Uuid, String)> =
        sqlx::query_as("SELECT id, content FROM sayso.event WHERE home = $1 AND id = ANY($2)")
            .bind(home.0)
            .bind(ids)
            .fetch_all(&mut **tx)
            .await
            .map_err(told)?;
    Ok(found.into_iter().map(|(id, content)| (EventId(id), content)).collect())
}

/// Reads rows as events, those apart that this version does not understand.
fn understood(rows: Vec<Row>) -> Result<Gained, StoreError> {
    let mut gained = Gained::default();
    for row in rows {
        match row.event().map_err(|what| StoreError::DatabaseDamaged(what.into()))? {
            Some(event) => gained.events.push(event.into()),
            None => gained.later.push((row.seq, row.kind)),
        }
    }
    Ok(gained)
}
