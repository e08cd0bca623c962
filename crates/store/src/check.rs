//! Looking the whole notebook through: the file, every row of the log, every recording.

use crate::error::StoreError;
use crate::row;
use crate::store::Store;
use sqlx::Connection;
use std::collections::{BTreeMap, BTreeSet};
use uuid::Uuid;

/// Rows read at a time.
const PAGE: i64 = 2_000;
/// Faults told in full; the rest is counted.
const MOST_TOLD: usize = 100;

/// What looking a notebook through found.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Checked {
    /// Events in the log.
    pub events: usize,
    /// Corrections and withdrawals among them.
    pub amendments: usize,
    /// Of these, how many are about an event that is not here. It may still arrive, so this is no fault.
    pub waiting: usize,
    /// Events that this version does not understand, by kind; no fault either.
    pub later: BTreeMap<String, usize>,
    /// Recordings that are whole.
    pub clips: usize,
    /// What is wrong, in words, the first of it.
    pub faults: Vec<String>,
    /// How many faults there are in all.
    pub fault_count: usize,
}

impl Checked {
    fn fault(&mut self, what: String) {
        self.fault_count += 1;
        if self.faults.len() < MOST_TOLD {
            self.faults.push(what);
        }
    }
}

impl Store {
    /// Looks the notebook through and changes nothing: the database's structure, indexes and references; every row of
    /// the log, its columns against its content; what every correction and withdrawal is about; every recording
    /// against its hash. All of the log as it is at one moment.
    ///
    /// # Errors
    /// [`StoreError`] where the file cannot be read at all; faults that leave it readable are in the answer.
    pub async fn check(&self) -> Result<Checked, StoreError> {
        let path = &self.inner.path;
        let sql = StoreError::sql(path);
        let mut checked = Checked::default();
        let mut db = self.inner.readers.acquire().await.map_err(&sql)?;
        let mut view = db.begin().await.map_err(&sql)?;
        let structure: Vec<String> =
            sqlx::query_scalar("PRAGMA integrity_check").fetch_all(&mut *view).await.map_err(&sql)?;
        for what in structure.into_iter().filter(|what| what != "ok") {
            checked.fault(what);
        }
        let (mut seen, mut amended) = (BTreeSet::new(), BTreeMap::<Uuid, usize>::new());
        let mut after = 0;
        loop {
            let rows = row::after(&mut view, path, None, after, PAGE).await?;
            let Some(last) = rows.last() else { break };
            after = last.seq;
            for row in rows {
                checked.events += 1;
                seen.insert(row.id);
                if let Some(of) = row.amends {
                    checked.amendments += 1;
                    *amended.entry(of).or_default() += 1;
                }
                match row.fault() {
                    Some(fault) => checked.fault(format!("event {} (row {}): {fault}", row.id, row.seq)),
                    None if row.event(path)?.is_none() => *checked.later.entry(row.kind).or_default() += 1,
                    None => {}
                }
            }
        }
        view.commit().await.map_err(&sql)?;
        checked.waiting = amended.iter().filter(|(of, _)| !seen.contains(*of)).map(|(_, n)| n).sum();
        for hash in self.clips().await? {
            match self.clip(&hash).await {
                Ok(_) => checked.clips += 1,
                Err(fault @ StoreError::BadClip { .. }) => checked.fault(fault.to_string()),
                Err(other) => return Err(other),
            }
        }
        Ok(checked)
    }
}
