//! Stories kept in memory, each brought up to date by what the log has gained since; after a start from a snapshot. They take
//! so many bytes at most: beyond, the one asked for longest ago is let go, unless somebody still reads it.

use crate::appended::Appended;
use crate::error::StoreError;
use crate::gained::Gained;
use crate::log::Log;
use crate::snapshot::{self, Landmark, Snapshot};
use crate::written::Revision;
use sayso_model::{Event, HomeId, Story};
use std::collections::{BTreeMap, HashMap};
use std::path::Path;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, MutexGuard, PoisonError};
use tokio::sync::Mutex;
use tokio::task::{JoinHandle, spawn_blocking};

/// More new events than this, and a story is put together anew rather than event by event.
const ANEW: usize = 20_000;
/// More than this, and they are added on a thread where no other task waits.
const ASIDE: usize = 200;
/// What an event takes in a story, in bytes, about: an estimate, to bound what all stories take together.
const EVENT_BYTES: usize = 1_100;
/// What the stories of a notebook in a folder may take, in bytes.
pub(crate) const MOST_STORY_BYTES: usize = 1 << 30;

struct Kept {
    log: Log,
    home: HomeId,
    at: Revision,
    story: Arc<Story>,
    /// Places and kinds of events that are not understood.
    later: Vec<(i64, String)>,
    /// Events that the last snapshot held, or was to hold.
    saved: usize,
    saving: Option<JoinHandle<()>>,
}

/// A story and when it was asked for last.
struct Slot {
    // One lock a home: loading one does not hold up the others, and is done once for all who wait.
    kept: Arc<Mutex<Kept>>,
    asked: u64,
    bytes: usize,
}

#[derive(Default)]
struct Slots {
    of: HashMap<HomeId, Slot>,
    /// Grows with every question.
    asked: u64,
}

/// The stories of the homes asked for.
pub(crate) struct Stories {
    slots: std::sync::Mutex<Slots>,
    most_bytes: usize,
    /// Events stored by the logs they are of.
    stored: AtomicU64,
}

impl Stories {
    /// None yet; they will take so many bytes at most.
    pub fn up_to(most_bytes: usize) -> Self {
        Self { slots: std::sync::Mutex::default(), most_bytes, stored: AtomicU64::new(0) }
    }

    /// Counts what was stored.
    pub fn count(&self, outcomes: &[Appended]) {
        let new = outcomes.iter().filter(|came| **came == Appended::New).count();
        self.stored.fetch_add(u64::try_from(new).unwrap_or(u64::MAX), Ordering::Relaxed);
    }

    /// How many events were stored.
    pub fn stored(&self) -> u64 {
        self.stored.load(Ordering::Relaxed)
    }

    fn slots(&self) -> MutexGuard<'_, Slots> {
        self.slots.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// What they take, in bytes.
    pub fn bytes(&self) -> usize {
        self.slots().of.values().map(|slot| slot.bytes).sum()
    }

    /// Where a home's story is kept; none where the log holds nothing of it, so that asking for invented ones takes
    /// no room.
    async fn slot(&self, log: &Log, home: HomeId) -> Result<Option<Arc<Mutex<Kept>>>, StoreError> {
        let known = |slots: &mut Slots| {
            slots.asked += 1;
            let asked = slots.asked;
            slots.of.get_mut(&home).map(|slot| {
                slot.asked = asked;
                Arc::clone(&slot.kept)
            })
        };
        if let Some(kept) = known(&mut self.slots()) {
            return Ok(Some(kept));
        }
        if !log.holds(home).await? {
            return Ok(None);
        }
        let mut slots = self.slots();
        if let Some(kept) = known(&mut slots) {
            return Ok(Some(kept));
        }
        let kept = Arc::new(Mutex::new(Kept::none_yet(log.clone(), home)));
        let asked = slots.asked;
        slots.of.insert(home, Slot { kept: Arc::clone(&kept), asked, bytes: 0 });
        Ok(Some(kept))
    }

    /// A home's story, brought up to date, and what was asked of it.
    async fn ask<T>(&self, log: &Log, home: HomeId, of: impl FnOnce(&Kept) -> T) -> Result<Option<T>, StoreError> {
        let Some(kept) = self.slot(log, home).await? else { return Ok(None) };
        let mut kept = kept.lock().await;
        match kept.bring_up_to_date().await {
            Ok(()) => {}
            Err(gone @ (StoreError::HomeLeft(_) | StoreError::NoSuchHome(_))) => {
                self.slots().of.remove(&home);
                return Err(gone);
            }
            Err(other) => return Err(other),
        }
        let (answer, bytes) = (of(&kept), kept.bytes());
        drop(kept);
        self.took(home, bytes);
        Ok(Some(answer))
    }

    /// Notes what a home's story takes, and lets others go where all take too much.
    fn took(&self, home: HomeId, bytes: usize) {
        let mut slots = self.slots();
        if let Some(slot) = slots.of.get_mut(&home) {
            slot.bytes = bytes;
        }
        let mut all: usize = slots.of.values().map(|slot| slot.bytes).sum();
        if all <= self.most_bytes {
            return;
        }
        let mut by_age: Vec<(u64, HomeId)> = slots.of.iter().map(|(home, slot)| (slot.asked, *home)).collect();
        by_age.sort_unstable_by_key(|(asked, _)| *asked);
        for (_, other) in by_age {
            if all <= self.most_bytes {
                break;
            }
            let let_go = other != home && slots.of.get(&other).is_some_and(|slot| slot.nobody_reads());
            if let_go && let Some(slot) = slots.of.remove(&other) {
                all -= slot.bytes;
            }
        }
    }

    /// Whose they are.
    pub fn homes(&self) -> Vec<HomeId> {
        self.slots().of.keys().copied().collect()
    }

    /// Forgets a home.
    pub fn forget(&self, home: HomeId) {
        self.slots().of.remove(&home);
    }

    /// The story of a home as of the log's present state, whoever wrote it.
    pub(crate) async fn story(&self, log: &Log, home: HomeId) -> Result<Arc<Story>, StoreError> {
        Ok(self.ask(log, home, |kept| Arc::clone(&kept.story)).await?.unwrap_or_default())
    }

    /// By kind, how many of its events are not understood.
    pub(crate) async fn not_understood(&self, log: &Log, home: HomeId) -> Result<BTreeMap<String, usize>, StoreError> {
        let count = |kept: &Kept| {
            let mut later = BTreeMap::new();
            for (_, kind) in &kept.later {
                *later.entry(kind.clone()).or_default() += 1;
            }
            later
        };
        Ok(self.ask(log, home, count).await?.unwrap_or_default())
    }

    /// Makes a snapshot of every story that gained much since its last, and waits until they are written.
    pub(crate) async fn save(&self) {
        let all: Vec<_> = self.slots().of.values().map(|slot| Arc::clone(&slot.kept)).collect();
        for kept in all {
            let mut kept = kept.lock().await;
            kept.saved().await;
            kept.save_what_came();
            kept.saved().await;
        }
    }
}

impl Slot {
    /// Whether nobody holds the story: only then does letting it go make room. A snapshot is begun where that is due.
    fn nobody_reads(&self) -> bool {
        let Ok(mut kept) = self.kept.try_lock() else { return false };
        let idle = Arc::strong_count(&kept.story) == 1;
        if idle {
            kept.save_what_came();
        }
        idle
    }
}

impl Kept {
    fn none_yet(log: Log, home: HomeId) -> Self {
        let (story, later) = (Arc::default(), Vec::new());
        Self { log, home, at: Revision(0), story, later, saved: 0, saving: None }
    }

    /// What it takes, in bytes.
    fn bytes(&self) -> usize {
        EVENT_BYTES * (1 + self.story.ledger().len())
    }

    async fn bring_up_to_date(&mut self) -> Result<(), StoreError> {
        let now = self.log.revision().await?;
        if now < self.at {
            // Another log stands in its place, such as an earlier state of this one brought back.
            *self = Self::none_yet(self.log.clone(), self.home);
        }
        if self.at == Revision(0) && now > self.at {
            self.begin().await?;
        }
        if now > self.at {
            self.catch_up(now).await?;
            let pace = self.log.pace();
            if self.story.ledger().len().saturating_sub(self.saved) >= pace.gained.max(self.saved / pace.share) {
                self.save();
            }
        }
        Ok(())
    }

    /// Begins a snapshot where enough came since the last one for this to be the time.
    fn save_what_came(&mut self) {
        if self.story.ledger().len() >= self.saved + self.log.pace().gained_at_stop {
            self.save();
        }
    }

    /// Begins with the snapshot, if there is one of this log.
    async fn begin(&mut self) -> Result<(), StoreError> {
        let Some(Snapshot { at, mut events, unread, .. }) = trusted(&self.log, self.home).await? else { return Ok(()) };
        let saved = events.len();
        // What an older version could not read, this one may.
        let again = self.log.at(&unread).await?;
        events.extend(again.events);
        let story = put_together(events).await?;
        // All at once and last: whoever waits may stop waiting at any await, and what is kept must stay true.
        (self.at, self.saved, self.later, self.story) = (at, saved, again.later, story);
        Ok(())
    }

    async fn catch_up(&mut self, now: Revision) -> Result<(), StoreError> {
        let Gained { events, later } = self.log.gained(self.home, (self.at, now)).await?;
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
    fn save(&mut self) {
        let busy = self.saving.as_ref().is_some_and(|s| !s.is_finished());
        if self.log.is_read_only() || busy || self.story.ledger().len() < self.log.pace().worth {
            return;
        }
        let (log, home, story, at) = (self.log.clone(), self.home, Arc::clone(&self.story), self.at);
        let unread: Vec<i64> = self.later.iter().map(|(seq, _)| *seq).collect();
        // Also where it fails: it is tried again when as many have come again.
        self.saved = story.ledger().len();
        self.saving = Some(tokio::spawn(async move {
            if let Err(error) = put_snapshot(&log, home, story, (at, unread)).await {
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

async fn put_snapshot(
    log: &Log,
    home: HomeId,
    story: Arc<Story>,
    (at, unread): (Revision, Vec<i64>),
) -> Result<(), StoreError> {
    let landmarks = log.landmarks(&log.marks(at)).await?;
    let write = move || snapshot::write(home, (at, unread, landmarks), story.ledger().all());
    let written = spawn_blocking(write).await.map_err(|_| StoreError::Closed)?;
    let bytes = written.map_err(StoreError::io(Path::new("snapshot")))?;
    log.put_snapshot(home, at, bytes).await
}

/// The snapshot of a home, if it is whole and of this log.
pub(crate) async fn trusted(log: &Log, home: HomeId) -> Result<Option<Snapshot>, StoreError> {
    let found = match log.snapshot(home).await? {
        Ok(None) => return Ok(None),
        Ok(Some(found)) => found,
        Err(why) => {
            passed_over(home, &why);
            return Ok(None);
        }
    };
    let places: Vec<i64> = found.landmarks.iter().map(|(seq, _)| *seq).collect();
    let here: Vec<Landmark> = log.landmarks(&places).await?;
    let ours = places.contains(&found.at.0) && found.landmarks == here;
    if !ours {
        passed_over(home, "it is of another notebook, or of another state of this one");
    }
    Ok(ours.then_some(found))
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
        let (stories, log) = (Stories::up_to(MOST_STORY_BYTES), &store.log);
        for n in 0..20 {
            let invented = HomeId(Uuid::from_u128(n));
            let story = stories.story(log, invented).await.unwrap();
            let later = stories.not_understood(log, invented).await.unwrap();
            assert!(story.ledger().is_empty() && later.is_empty());
        }
        assert_eq!(stories.slots().of.len(), 0);
        assert_eq!(stories.story(log, home).await.unwrap().ledger().len(), 1);
        assert_eq!(stories.slots().of.len(), 1);
    }
}
