//! What a desk keeps of many homes: bytes of a form, worked out from each home's log by someone who knows how. And the two things
//! asked of many homes at once beside them: how far each has grown, and to whom it is open.

use crate::error::StoreError;
use crate::postgres::faults::told;
use crate::postgres::home::{READ_PATIENCE, tried};
use crate::postgres::server::Server;
use crate::row::Row;
use crate::written::Revision;
use sayso_model::{Event, HomeId};
use std::collections::BTreeMap;
use uuid::Uuid;

/// How far a home has grown, and what is kept of it.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Grown {
    /// Which home.
    pub home: HomeId,
    /// The place of its last event.
    pub last: Revision,
    /// The form of what is kept, and the place up to which events are in it, at least; none where nothing is kept.
    pub kept: Option<(i32, Revision)>,
    /// Whether signs are among what came after that, or something put right, which may have become one.
    pub signs: bool,
}

/// What is kept of a home.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Digest {
    /// Which home.
    pub home: HomeId,
    /// The form of the bytes.
    pub form: i32,
    /// The place up to which events are in it, at least.
    pub at: Revision,
    /// The bytes.
    pub bytes: Vec<u8>,
}

/// A row of `sayso.grown`.
type GrownRow = (Uuid, i64, Option<i32>, Option<i64>, bool);

impl Server {
    /// How far homes have grown and what is kept of each, by id; those that are not here are left out. Whoever asks has to know
    /// that the homes are theirs.
    ///
    /// # Errors
    /// [`StoreError::Unreachable`] and others.
    pub async fn grown(&self, homes: &[HomeId]) -> Result<Vec<Grown>, StoreError> {
        let rows: Vec<GrownRow> = tried(READ_PATIENCE, || async {
            let query = sqlx::query_as("SELECT home, last, form, at, signs FROM sayso.grown($1)").bind(ids(homes));
            query.fetch_all(self.pool()).await.map_err(told)
        })
        .await?;
        let of = |(home, last, form, at, signs): GrownRow| Grown {
            home: HomeId(home),
            last: Revision(last),
            kept: form.zip(at.map(Revision)),
            signs,
        };
        Ok(rows.into_iter().map(of).collect())
    }

    /// What is kept of homes, in no order. Whoever asks has to know that the homes are theirs.
    ///
    /// # Errors
    /// [`StoreError::Unreachable`] and others.
    pub async fn digests(&self, homes: &[HomeId]) -> Result<Vec<Digest>, StoreError> {
        let rows: Vec<(Uuid, i32, i64, Vec<u8>)> = tried(READ_PATIENCE, || async {
            let query = sqlx::query_as("SELECT home, form, at, bytes FROM sayso.digests($1)").bind(ids(homes));
            query.fetch_all(self.pool()).await.map_err(told)
        })
        .await?;
        let of = |(home, form, at, bytes)| Digest { home: HomeId(home), form, at: Revision(at), bytes };
        Ok(rows.into_iter().map(of).collect())
    }

    /// Keeps what was worked out of a home, unless what is kept in this form holds more of its events.
    ///
    /// # Errors
    /// [`StoreError::NoSuchHome`], [`StoreError::HomeLeft`] where it was erased meanwhile; [`StoreError::Unreachable`] and others.
    pub async fn keep(&self, digest: &Digest) -> Result<(), StoreError> {
        let in_place = || {
            sqlx::query(
                "INSERT INTO sayso.digest AS d (home, form, at, bytes) VALUES ($1, $2, $3, $4) \
                 ON CONFLICT (home) DO UPDATE SET form = excluded.form, at = excluded.at, bytes = excluded.bytes \
                 WHERE d.form <> excluded.form OR d.at <= excluded.at",
            )
            .bind(digest.home.0)
            .bind(digest.form)
            .bind(digest.at.0)
            .bind(&digest.bytes)
        };
        self.log(digest.home).put(READ_PATIENCE, in_place).await
    }

    /// All of homes' logs that decides to whom they are open, without the rest: the events by which consent is given and taken back,
    /// the home's card, and what amends them. A home without any is left out; those that a later version wrote are passed over, as in
    /// a story. Whoever asks has to know that the homes are theirs.
    ///
    /// # Errors
    /// [`StoreError::DatabaseDamaged`] where a stored event is none; [`StoreError::Unreachable`] and others.
    pub async fn opens(&self, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Vec<Event>>, StoreError> {
        let rows: Vec<Row> = tried(READ_PATIENCE, || async {
            let query = sqlx::query_as("SELECT * FROM sayso.opens($1)").bind(ids(homes));
            query.fetch_all(self.pool()).await.map_err(told)
        })
        .await?;
        let mut found: BTreeMap<HomeId, Vec<Event>> = BTreeMap::new();
        for row in rows {
            let event = row.event().map_err(|what| StoreError::DatabaseDamaged(what.into()))?;
            found.entry(HomeId(row.home)).or_default().extend(event);
        }
        Ok(found)
    }
}

fn ids(homes: &[HomeId]) -> Vec<Uuid> {
    homes.iter().map(|home| home.0).collect()
}
