//! Stories kept in memory, each brought up to date by what the log has gained since; after a start from a snapshot.

use crate::db::Files;
use crate::error::StoreError;
use crate::log::{self, Revision};
use crate::snapshot::{self, Landmark, Snapshot};
use sayso_model::{Event, HomeId, Story};
use std::collections::{BTreeMap, HashMap};
use std::sync::Arc;
use tokio::sync::Mutex;
use tokio::task::{JoinHandle, spawn_blocking};

/// More new events than this, and a story is put together anew rather than event by event.
const ANEW: usize = 20_000;
/// More than this, and they are added on a thread where no other task waits.
const ASIDE: usize = 200;
/// Fewer events than this are read from the log quickly enough; no snapshot is made of them.
pub const WORTH_A_SNAPSHOT: usize = 5_000;
/// A snapshot is made anew once so many events came since, and one in [`SHARE`] of all.
const GAINED: usize = 2_000;
const SHARE: usize = 50;
/// At an orderly stop it is made anew once so many came.
const GAINED_AT_STOP: usize = 500;
/// Places in the log that tell it from another one, spread over all of it; and so many at its end.
const SPREAD: i64 = 48;
const AT_END: i64 = 16;

#[derive(Default)]
struct Kept {
    at: Revision,
    story: Arc<Story>,
    /// Places and kinds of events that are not understood.
    later: Vec<(i64, String)>,
    /// Events that the last snapshot held, or was to hold.
    saved: usize,
    saving: Option<JoinHandle<()>>,
}

/// The stories of the homes asked for.
#[derive(Default)]
pub(crate) struct Stories {
    // One lock a home: loading one does not hold up the others, and is done once for all who wait.
    kept: std::sync::Mutex<HashMap<HomeId, Arc<Mutex<Kept>>>>,
}

impl Stories {
    /// Where a home's story is kept; none where the log holds nothing of it, so that asking for invented ones takes
    /// no room.
    async fn slot(&self, from: &Files, home: HomeId) -> Result<Option<Arc<Mutex<Kept>>>, StoreError> {
        let kept = || self.kept.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        if let Some(slot) = kept().get(&home) {
            return Ok(Some(Arc::clone(slot)));
        }
        let mut db = from.reader().await?;
        let held = log::holds(&mut db, home).await.map_err(db.sql())?;
        Ok(held.then(|| Arc::clone(kept().entry(home).or_default())))
    }

    /// The story of a home as of the log's present state, whoever wrote it.
    pub(crate) async fn story(&self, from: &Files, home: HomeId) -> Result<Arc<Story>, StoreError> {
        let Some(slot) = self.slot(from, home).await? else { return Ok(Arc::default()) };
        let mut kept = slot.lock().await;
        kept.bring_up_to_date(from, home).await?;
        Ok(Arc::clone(&kept.story))
    }

    /// By kind, how many of its events are not understood.
    pub(crate) async fn not_understood(
        &self,
        from: &Files,
        home: HomeId,
    ) -> Result<BTreeMap<String, usize>, StoreError> {
        let mut later = BTreeMap::new();
        let Some(slot) = self.slot(from, home).await? else { return Ok(later) };
        let mut kept = slot.lock().await;
        kept.bring_up_to_date(from, home).await?;
        for (_, kind) in &kept.later {
            *later.entry(kind.clone()).or_default() += 1;
        }
        Ok(later)
    }

    /// Makes a snapshot of every story that gained much since its last, and waits until they are written.
    pub(crate) async fn save(&self, from: &Files) {
        let slots: Vec<_> = {
            let kept = self.kept.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
            kept.iter().map(|(home, slot)| (*home, Arc::clone(slot))).collect()
        };
        for (home, slot) in slots {
            let mut kept = slot.lock().await;
            kept.saved().await;
            if kept.story.ledger().len() >= kept.saved + GAINED_AT_STOP {
                kept.save(from, home);
                kept.saved().await;
            }
        }
    }
}

/// How far the log has grown.
pub(crate) async fn revision(from: &Files) -> Result<Revision, StoreError> {
    let mut db = from.reader().await?;
    log::revision(&mut db).await.map_err(db.sql())
}

impl Kept {
    async fn bring_up_to_date(&mut self, from: &Files, home: HomeId) -> Result<(), StoreError> {
        let now = revision(from).await?;
        if self.at == Revision(0) && now > self.at {
            self.begin(from, home).await?;
        }
        if now > self.at {
            self.catch_up(from, home, now).await?;
            if self.story.ledger().len().saturating_sub(self.saved) >= GAINED.max(self.saved / SHARE) {
                self.save(from, home);
            }
        }
        Ok(())
    }

    /// Begins with the snapshot, if there is one of this log.
    async fn begin(&mut self, from: &Files, home: HomeId) -> Result<(), StoreError> {
        let Some(Snapshot { at, mut events, unread, .. }) = trusted(from, home).await? else { return Ok(()) };
        let saved = events.len();
        // What an older version could not read, this one may.
        let again = log::at(&mut from.reader().await?, &unread).await?;
        events.extend(again.events);
        let story = put_together(events).await?;
        // All at once and last: whoever waits may stop waiting at any await, and what is kept must stay true.
        (self.at, self.saved, self.later, self.story) = (at, saved, again.later, story);
        Ok(())
    }

    async fn catch_up(&mut self, from: &Files, home: HomeId, now: Revision) -> Result<(), StoreError> {
        let log::Gained { events, later } = log::gained(from, home, (self.at, now)).await?;
        if events.len() > ANEW {
            let known = self.story.ledger().all_shared().cloned();
            self.story = put_together(known.chain(events).collect()).await?;
        } else if events.len() > ASIDE {
            // A copy grows, so that the one kept is as it was where nobody waits for this any more.
            let mut grown = Arc::clone(&self.story);
            let grow = move || {
                grow(&mut grown, events);
                grown
            };
            self.story = spawn_blocking(grow).await.map_err(|_| StoreError::Closed)?;
        } else if !events.is_empty() {
            grow(&mut self.story, events);
        }
        self.later.extend(later);
        self.at = now;
        Ok(())
    }

    /// Begins to write a snapshot, if that is worth it. Nothing waits for it, and nothing stops where it fails.
    fn save(&mut self, from: &Files, home: HomeId) {
        let busy = self.saving.as_ref().is_some_and(|s| !s.is_finished());
        if !from.writable || busy || self.story.ledger().len() < WORTH_A_SNAPSHOT {
            return;
        }
        let (story, at) = (Arc::clone(&self.story), self.at);
        let unread: Vec<i64> = self.later.iter().map(|(seq, _)| *seq).collect();
        let files = from.clone();
        // Also where it fails: it is tried again when as many have come again.
        self.saved = story.ledger().len();
        self.saving = Some(tokio::spawn(async move {
            let landmarks = match landmarks(&files, &spread_to(at)).await {
                Ok(landmarks) => landmarks,
                Err(error) => return tracing::warn!("No snapshot was made: {error}. Nothing is lost."),
            };
            let write = move || snapshot::write(&files.dir, home, (at, unread, landmarks), story.ledger().all());
            if let Ok(Err(error)) = spawn_blocking(write).await {
                tracing::warn!("No snapshot was made: {error}. Nothing is lost; the next start takes longer.");
            }
        }));
    }

    /// Waits until a snapshot that is being written is.
    async fn saved(&mut self) {
        if let Some(saving) = self.saving.take() {
            // Whatever went wrong was told.
            let _ = saving.await;
        }
    }
}

/// The snapshot of a home, if it is whole and of this log.
pub(crate) async fn trusted(from: &Files, home: HomeId) -> Result<Option<Snapshot>, StoreError> {
    let dir = from.dir.clone();
    let read = spawn_blocking(move || snapshot::read(&dir, home)).await.map_err(|_| StoreError::Closed)?;
    let found = match read {
        Ok(None) => return Ok(None),
        Ok(Some(found)) => found,
        Err(why) => {
            passed_over(home, &why.to_string());
            return Ok(None);
        }
    };
    let places: Vec<i64> = found.landmarks.iter().map(|(seq, _)| *seq).collect();
    let here = landmarks(from, &places).await?;
    let ours = places.contains(&found.at.0) && found.landmarks == here;
    if !ours {
        passed_over(home, "it is of another notebook, or of another state of this one");
    }
    Ok(ours.then_some(found))
}

/// What the log has at some places.
async fn landmarks(from: &Files, places: &[i64]) -> Result<Vec<Landmark>, StoreError> {
    let mut db = from.reader().await?;
    log::ids_at(&mut db, places).await.map_err(db.sql())
}

fn passed_over(home: HomeId, why: &str) {
    tracing::warn!("The snapshot of {home} is passed over: {why}. All is read from the log, and a new one is made.");
}

/// Adds events. Where somebody still reads the story as it was, what it holds is shared with it.
fn grow(story: &mut Arc<Story>, events: Vec<Arc<Event>>) {
    let story = Arc::make_mut(story);
    for event in events {
        story.add(event);
    }
}

async fn put_together(events: Vec<Arc<Event>>) -> Result<Arc<Story>, StoreError> {
    spawn_blocking(|| Arc::new(Story::from_events(events))).await.map_err(|_| StoreError::Closed)
}

/// Places over all of a log up to a place, and at its end.
fn spread_to(at: Revision) -> Vec<i64> {
    let spread =
        (1..=SPREAD).map(|n| (i128::from(at.0) * i128::from(n) / i128::from(SPREAD)).try_into().unwrap_or(at.0));
    let mut places: Vec<i64> = spread.chain(at.0 - AT_END..=at.0).filter(|seq| *seq > 0).collect();
    places.sort_unstable();
    places.dedup();
    places
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::store::Store;
    use uuid::Uuid;

    #[tokio::test]
    async fn asking_for_invented_homes_keeps_nothing() {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        let event = sayso_sim::samples().remove(0);
        let home = event.home;
        store.append(vec![event]).await.unwrap();
        let (stories, files) = (Stories::default(), &store.inner.files);
        for n in 0..20 {
            let invented = HomeId(Uuid::from_u128(n));
            let story = stories.story(files, invented).await.unwrap();
            let later = stories.not_understood(files, invented).await.unwrap();
            assert!(story.ledger().is_empty() && later.is_empty());
        }
        assert_eq!(stories.kept.lock().unwrap().len(), 0);
        assert_eq!(stories.story(files, home).await.unwrap().ledger().len(), 1);
        assert_eq!(stories.kept.lock().unwrap().len(), 1);
    }
}
