//! Adding to a home's log: the home's row is locked, what is new gets the next places, and both are committed together. So
//! places are visible in their order, and a process that follows by place misses none.

use crate::appended::{self, Appended};
use crate::error::StoreError;
use crate::postgres::faults::told;
use crate::postgres::home::{HomeLog, Tx, WRITE_PATIENCE, contents, tried};
use crate::written::Written;
use sayso_model::EventId;
use std::collections::BTreeSet;
use uuid::Uuid;

impl HomeLog {
    /// Stores events; one outcome each, in their order. With `whole` all of them or, where any conflicts, none. Where the
    /// connection was lost before the answer it is done again: what the first try had stored after all is then answered
    /// as a duplicate.
    pub async fn append(&self, events: &[Written], whole: bool) -> Result<Vec<Appended>, StoreError> {
        tried(WRITE_PATIENCE, || self.append_once(events, whole)).await
    }

    async fn append_once(&self, events: &[Written], whole: bool) -> Result<Vec<Appended>, StoreError> {
        let events: Vec<&Written> = events.iter().collect();
        let mut tx = self.begin().await?;
        // A statement of its own: the next one then sees all that whoever held the lock before has committed.
        let last = self.last(&mut tx, "SELECT last, gone FROM sayso.home WHERE id = $1 FOR NO KEY UPDATE").await?;
        // Whoever asked them in: nothing of another home is stored as this one's.
        let strangers: BTreeSet<usize> =
            events.iter().enumerate().filter(|(_, w)| w.home != self.home).map(|(place, _)| place).collect();
        let first = appended::first(&events, &strangers);
        // Nobody else adds to this home until the commit: what is not there now is new.
        let ids: Vec<EventId> = first.iter().map(|w| w.id).collect();
        let mut stored = contents(&mut tx, self.home, &ids).await?;
        let new: Vec<&Written> = first.into_iter().filter(|w| !stored.contains_key(&w.id)).collect();
        self.insert(&mut tx, last, &new).await?;
        let mut fresh: BTreeSet<EventId> = new.iter().map(|w| w.id).collect();
        if new.len() < events.len() {
            // Some may be here for the second time.
            stored.extend(new.iter().map(|w| (w.id, w.json.clone())));
        }
        let outcomes = appended::outcomes(&events, &strangers, &mut fresh, &stored);
        if whole && let Some(why) = appended::in_the_way(&events, &outcomes) {
            tx.rollback().await.map_err(told)?;
            return Err(StoreError::NotImported(why));
        }
        tx.commit().await.map_err(told)?;
        Ok(outcomes)
    }

    /// Stores events that are not there yet, at the places after `last`.
    async fn insert(&self, tx: &mut Tx, last: i64, events: &[&Written]) -> Result<(), StoreError> {
        if events.is_empty() {
            return Ok(());
        }
        let ids: Vec<Uuid> = events.iter().map(|w| w.id.0).collect();
        let kinds: Vec<&str> = events.iter().map(|w| w.kind.as_str()).collect();
        let amends: Vec<Option<Uuid>> = events.iter().map(|w| w.amends.map(|of| of.0)).collect();
        let contents: Vec<&str> = events.iter().map(|w| w.json.as_str()).collect();
        sqlx::query(
            "WITH counted AS (UPDATE sayso.home SET last = $2 + cardinality($3::uuid[]) WHERE id = $1) \
             INSERT INTO sayso.event (home, seq, id, kind, amends, content) \
             SELECT $1, $2 + place, id, kind, amends, content \
             FROM unnest($3::uuid[], $4::text[], $5::uuid[], $6::text[]) WITH ORDINALITY \
                 AS new (id, kind, amends, content, place)",
        )
        .bind(self.home.0)
        .bind(last)
        .bind(ids)
        .bind(kinds)
        .bind(amends)
        .bind(contents)
        .execute(&mut **tx)
        .await
        .map(drop)
        .map_err(told)
    }
}
