//! Lines of many homes, brought up to date: only stories of homes that grew are read, the pressing ones first, and at one opening of
//! a desk only for so long. What is kept in memory is what the database holds, and is asked about each time.

use crate::desk::kept::{FORM, Kept};
use crate::fault::told;
use crate::host::Host;
use sayso_model::{HomeId, WordId};
use sayso_store::{Digest, Grown, Revision, StoreError};
use sayso_web::Error;
use std::collections::{BTreeMap, VecDeque};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};
use tokio::sync::{Notify, Semaphore};
use tokio::task::spawn_blocking;

/// Homes whose lines are kept in memory: some 20 kB each.
const MOST: usize = 8_000;
/// Homes read from the database at once.
const BATCH: usize = 500;
/// At one opening so many homes are brought up to date in any case, and more for so long: each takes some milliseconds.
const LEAST: usize = 1;
const WHILE: Duration = Duration::from_millis(120);
/// Homes with signs among what is new come first, and for longer: what is about safety waits for nobody.
const WHILE_SIGNS: Duration = Duration::from_secs(5);
/// Stories that are worked through at once, by all who ask.
const AT_ONCE: usize = 2;

/// What this process holds of desks.
#[derive(Debug)]
pub struct Desks {
    lines: Mutex<Held>,
    working: Semaphore,
    /// Told when an opening left homes behind.
    pub left_behind: Notify,
}

#[derive(Debug, Default)]
struct Held {
    by_home: BTreeMap<HomeId, (Revision, Arc<Kept>)>,
    /// Who came first goes first.
    order: VecDeque<HomeId>,
}

impl Default for Desks {
    fn default() -> Self {
        Self { lines: Mutex::default(), working: Semaphore::new(AT_ONCE), left_behind: Notify::new() }
    }
}

impl Desks {
    fn held(&self, home: HomeId) -> Option<(Revision, Arc<Kept>)> {
        self.lines.lock().unwrap_or_else(PoisonError::into_inner).by_home.get(&home).cloned()
    }

    fn hold(&self, home: HomeId, at: Revision, kept: Arc<Kept>) {
        let mut held = self.lines.lock().unwrap_or_else(PoisonError::into_inner);
        if held.by_home.get(&home).is_some_and(|(known, _)| *known > at) {
            return;
        }
        if held.by_home.insert(home, (at, kept)).is_none() {
            held.order.push_back(home);
        }
        while held.by_home.len() > MOST {
            let Some(first) = held.order.pop_front() else { break };
            held.by_home.remove(&first);
        }
    }

    /// Forgets a home that left.
    pub fn forget(&self, home: HomeId) {
        let mut held = self.lines.lock().unwrap_or_else(PoisonError::into_inner);
        held.by_home.remove(&home);
        held.order.retain(|known| *known != home);
    }
}

/// Lines of homes.
#[derive(Debug, Default)]
pub struct Found {
    /// What is known, up to date or nearly.
    pub kept: BTreeMap<HomeId, Arc<Kept>>,
    /// Homes of which something newer was written.
    pub behind: usize,
    /// Homes of which nothing is worked out yet.
    pub unread: usize,
}

impl Found {
    /// What a home is called; empty where nothing says so.
    #[must_use]
    pub fn home(&self, home: HomeId) -> &str {
        self.kept.get(&home).map_or("", |kept| kept.home.as_str())
    }

    /// What the buttons of a home say; nothing where nothing is worked out yet.
    #[must_use]
    pub fn words(&self, home: HomeId) -> &BTreeMap<WordId, String> {
        static NONE: BTreeMap<WordId, String> = BTreeMap::new();
        self.kept.get(&home).map_or(&NONE, |kept| &kept.words)
    }
}

/// A home of which something newer was written, and why it is more pressing than others.
pub(super) struct Stale {
    pub home: HomeId,
    pub signs: bool,
    unread: bool,
    behind: i64,
}

/// Lines of these homes, who has to be asked for before. What grew is brought up to date, for a while; the rest is told as it was,
/// and left to who goes on with it.
///
/// # Errors
/// Where a database fails.
pub async fn lines(host: &Host, homes: &[HomeId]) -> Result<Found, Error> {
    let (mut kept, mut stale) = look(host, homes).await?;
    // Signs first, then homes of which nothing is known, then those with most that is new.
    stale.sort_by_key(|s| (!s.signs, !s.unread, -s.behind, s.home));
    let begun = Instant::now();
    let (mut behind, mut unread) = (0, 0);
    for (place, one) in stale.iter().enumerate() {
        let time = if one.signs { WHILE_SIGNS } else { WHILE };
        if place < LEAST || begun.elapsed() < time {
            match bring(host, one.home).await? {
                Some(new) => drop(kept.insert(one.home, new)),
                // It left meanwhile.
                None => drop(kept.remove(&one.home)),
            }
        } else if one.unread {
            unread += 1;
        } else {
            behind += 1;
        }
    }
    if behind + unread > 0 {
        host.desks.left_behind.notify_one();
    }
    Ok(Found { kept, behind, unread })
}

/// Lines of these homes, every one brought up to date, however long that takes: for whom nobody waits.
///
/// # Errors
/// Where a database fails.
pub async fn all_lines(host: &Host, homes: &[HomeId]) -> Result<BTreeMap<HomeId, Arc<Kept>>, Error> {
    let (mut kept, stale) = look(host, homes).await?;
    for one in stale {
        match bring(host, one.home).await? {
            Some(new) => drop(kept.insert(one.home, new)),
            None => drop(kept.remove(&one.home)),
        }
    }
    Ok(kept)
}

/// What is kept of homes, from memory where it is as new, and which of them grew since.
///
/// # Errors
/// Where the database fails.
pub(super) async fn look(host: &Host, homes: &[HomeId]) -> Result<(BTreeMap<HomeId, Arc<Kept>>, Vec<Stale>), Error> {
    let grown = host.server.grown(homes).await?;
    let held = |g: &Grown| {
        let (_, stored) = g.kept.filter(|(form, _)| *form == FORM)?;
        host.desks.held(g.home).filter(|(at, _)| *at >= stored)
    };
    let (mut at, mut kept, mut wanted) = (BTreeMap::new(), BTreeMap::new(), Vec::new());
    for g in &grown {
        match held(g) {
            Some((revision, lines)) => {
                at.insert(g.home, revision);
                kept.insert(g.home, lines);
            }
            None if g.kept.is_some_and(|(form, _)| form == FORM) => wanted.push(g.home),
            None => {}
        }
    }
    for batch in wanted.chunks(BATCH) {
        let read: Vec<Digest> = host.server.digests(batch).await?;
        let read = spawn_blocking(move || {
            let one = |d: Digest| Some((d.home, d.at, Arc::new(Kept::read(d.form, &d.bytes)?)));
            read.into_iter().filter_map(one).collect::<Vec<_>>()
        });
        for (home, revision, lines) in read.await.map_err(Error::internal)? {
            host.desks.hold(home, revision, Arc::clone(&lines));
            at.insert(home, revision);
            kept.insert(home, lines);
        }
    }
    let stale = grown.iter().filter_map(|g| {
        let known = at.get(&g.home);
        let behind = g.last.0 - known.map_or(0, |r| r.0);
        (known.is_none() || behind > 0).then_some(Stale {
            home: g.home,
            signs: g.signs,
            unread: known.is_none(),
            behind,
        })
    });
    let stale = stale.collect();
    Ok((kept, stale))
}

/// Brings one home up to date, here and for other processes; none where it left.
///
/// # Errors
/// Where its log cannot be read, or the database fails.
pub(super) async fn bring(host: &Host, home: HomeId) -> Result<Option<Arc<Kept>>, Error> {
    let Ok(_permit) = host.desks.working.acquire().await else { return Ok(None) };
    match brought(host, home).await {
        Err(Brought::Gone) => {
            host.desks.forget(home);
            Ok(None)
        }
        Err(Brought::Failed(why)) => Err(why),
        Ok(kept) => Ok(Some(kept)),
    }
}

enum Brought {
    Gone,
    Failed(Error),
}

impl From<StoreError> for Brought {
    fn from(why: StoreError) -> Self {
        match why {
            StoreError::NoSuchHome(_) | StoreError::HomeLeft(_) => Self::Gone,
            other => Self::Failed(told(sayso_people::Error::Home(other.into()))),
        }
    }
}

async fn brought(host: &Host, home: HomeId) -> Result<Arc<Kept>, Brought> {
    let store = host.server.home(home);
    // Asked before the story is read: that holds this much, or more.
    let at = store.revision().await?;
    let held = host.desks.held(home);
    if let Some((known, kept)) = &held
        && *known >= at
    {
        // Somebody else was quicker.
        return Ok(Arc::clone(kept));
    }
    let (story, now) = (store.story(home).await?, host.now());
    let work = spawn_blocking(move || {
        let kept = Kept::of(&story, now, held.as_ref().map(|(_, kept)| &**kept));
        kept.bytes().map(|bytes| (Arc::new(kept), bytes))
    });
    let failed = |why| Brought::Failed(why);
    let (kept, bytes) =
        work.await.map_err(Error::internal).map_err(failed)?.map_err(Error::internal).map_err(failed)?;
    host.server.keep(&Digest { home, form: FORM, at, bytes }).await?;
    host.desks.hold(home, at, Arc::clone(&kept));
    Ok(kept)
}
