//! Looking the whole notebook through: the file, every row of the log, every recording.

use crate::damage::{CheckFault, SnapshotFault};
use crate::error::{OnlyInAFolder, StoreError};
use crate::snapshot::{self, Snapshot};
use crate::sqlite::log;
use crate::store::Store;
use crate::stories;
use sayso_model::{Event, EventId, HomeId};
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::sync::Arc;
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
    /// Snapshots that hold what the log holds. One that is not used is not counted, and no fault: it is made anew.
    pub snapshots: usize,
    /// Recordings that are whole.
    pub clips: usize,
    /// What is wrong, the first of it.
    pub faults: Vec<CheckFault>,
    /// How many faults there are in all.
    pub fault_count: usize,
    /// How many of these are of snapshots alone, which are made anew from the log: nothing recorded is wrong there.
    pub snapshot_faults: usize,
}

impl Checked {
    fn fault(&mut self, what: CheckFault) {
        self.fault_count += 1;
        if self.faults.len() < MOST_TOLD {
            self.faults.push(what);
        }
    }
}

/// A snapshot that is compared with the log, row by row.
struct Compared {
    at: i64,
    events: HashMap<EventId, Arc<Event>>,
    /// Places of events that were not understood when it was made; it does not hold them, whatever they are now.
    unread: BTreeSet<i64>,
    fault: Option<SnapshotFault>,
}

impl Compared {
    /// What is damaged or not understood is told of the log itself.
    fn compare(&mut self, seq: i64, event: &Event) {
        if seq > self.at || self.unread.contains(&seq) {
            return;
        }
        if self.events.remove(&event.id).is_none_or(|known| *known != *event) {
            self.fault.get_or_insert(SnapshotFault::Differs { id: event.id, seq });
        }
    }

    /// What is wrong with it.
    fn finish(self) -> Option<SnapshotFault> {
        let more = self.events.into_keys().next().map(SnapshotFault::More);
        self.fault.or(more)
    }
}

impl Store {
    /// Every snapshot that a start would read.
    async fn snapshots(&self) -> Result<BTreeMap<HomeId, Compared>, StoreError> {
        let mut all = BTreeMap::new();
        for home in self.homes().await? {
            if let Some(Snapshot { at, events, unread, .. }) = stories::trusted(&self.log, home).await? {
                let events = events.into_iter().map(|e| (e.id, e)).collect();
                all.insert(home, Compared { at: at.0, events, unread: unread.into_iter().collect(), fault: None });
            }
        }
        Ok(all)
    }

    /// Looks the notebook through and changes nothing: the database's structure, indexes and references; every row of
    /// the log, its columns against its content; what every correction and withdrawal is about; the snapshots against the
    /// log; every recording against its hash. All of the log as it is at one moment.
    ///
    /// # Errors
    /// [`StoreError`] where the file cannot be read at all; faults that leave it readable are in the answer.
    pub async fn check(&self) -> Result<Checked, StoreError> {
        let mut checked = Checked::default();
        // Before the log is looked at: it only grows, so that it then holds all that they do.
        let mut snapshots = self.snapshots().await?;
        let files = &self.log.file(OnlyInAFolder::Check)?.files;
        let mut view = files.alone.connect().await?;
        view.hold_still().await?;
        let structure: Vec<String> =
            sqlx::query_scalar("PRAGMA integrity_check").fetch_all(&mut *view).await.map_err(view.sql())?;
        for what in structure.into_iter().filter(|what| what != "ok") {
            checked.fault(CheckFault::Structure(what));
        }
        let (mut seen, mut amended) = (BTreeSet::new(), BTreeMap::<Uuid, usize>::new());
        let mut after = 0;
        loop {
            let rows = log::after(&mut view, after, PAGE).await?;
            let Some(last) = rows.last() else { break };
            after = last.seq;
            for row in rows {
                checked.events += 1;
                seen.insert(row.id);
                if let Some(of) = row.amends {
                    checked.amendments += 1;
                    *amended.entry(of).or_default() += 1;
                }
                if let Some(fault) = row.named_fault() {
                    checked.fault(fault.into());
                    continue;
                }
                match (row.event().map_err(|what| view.corrupt(what))?, snapshots.get_mut(&HomeId(row.home))) {
                    (None, _) => *checked.later.entry(row.kind).or_default() += 1,
                    (Some(event), Some(snapshot)) => snapshot.compare(row.seq, &event),
                    (Some(_), None) => {}
                }
            }
        }
        view.close().await?;
        for (home, compared) in snapshots {
            match compared.finish() {
                None => checked.snapshots += 1,
                Some(what) => {
                    checked.snapshot_faults += 1;
                    let file = snapshot::path_in(&files.dir, home);
                    checked.fault(CheckFault::Snapshot { home, what, file });
                }
            }
        }
        checked.waiting = amended.iter().filter(|(of, _)| !seen.contains(*of)).map(|(_, n)| n).sum();
        for hash in self.clips().await? {
            match self.clip(&hash).await {
                Ok(_) => checked.clips += 1,
                Err(StoreError::BadClip { sha256, what }) => checked.fault(CheckFault::Clip { sha256, what }),
                Err(other) => return Err(other),
            }
        }
        Ok(checked)
    }
}
