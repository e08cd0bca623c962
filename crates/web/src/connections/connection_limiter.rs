//! How many connections there may be, in all and from one address, and which gives way when there is no room.

use crate::access::network;
use std::collections::BTreeMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::watch;
use tokio::task::AbortHandle;

/// Most connections in all, where the system gives handles for as many.
const MOST: usize = 256;
/// Most from one address (one /64 of IPv6). A browser opens six, and one for each web socket.
const MOST_OF_ONE: usize = 48;
/// File handles kept free for the notebook itself: its database, recordings, exports and backups.
#[cfg(unix)]
const KEPT_FREE: usize = 64;

/// What a connection is at.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Phase {
    /// Nothing has been asked yet, or not for now: it may go at any time.
    Waiting,
    /// A request is coming in.
    Receiving,
    /// It is being answered, or is a web socket.
    Working,
}

/// How many connections there may be.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Bounds {
    /// In all.
    pub in_all: usize,
    /// From one address.
    pub of_one: usize,
}

impl Bounds {
    /// As many as this process has file handles for.
    #[must_use]
    pub fn of_this_process() -> Self {
        #[cfg(unix)]
        let handles = rustix::process::getrlimit(rustix::process::Resource::Nofile)
            .current
            .and_then(|n| usize::try_from(n).ok())
            .map_or(MOST, |n| n.saturating_sub(KEPT_FREE));
        #[cfg(not(unix))]
        let handles = MOST;
        let in_all = handles.clamp(8, MOST);
        // Of the room there is, a quarter stays for others.
        Self { in_all, of_one: MOST_OF_ONE.min(in_all * 3 / 4) }
    }

    /// The same where all come from one proxy, which bounds those of one address itself.
    #[must_use]
    pub fn behind_proxy() -> Self {
        let all = Self::of_this_process();
        Self { of_one: all.in_all, ..all }
    }
}

struct Held {
    network: IpAddr,
    phase: Phase,
    /// When it came to its phase, counted in changes of all connections.
    since: u64,
    task: Option<AbortHandle>,
}

#[derive(Default)]
struct Table {
    held: BTreeMap<u64, Held>,
    changes: u64,
}

/// All connections.
pub struct ConnectionLimiter {
    bounds: Bounds,
    table: Mutex<Table>,
    count: watch::Sender<usize>,
}

impl ConnectionLimiter {
    /// No connection yet.
    #[must_use]
    pub fn new(bounds: Bounds) -> Arc<Self> {
        Arc::new(Self { bounds, table: Mutex::default(), count: watch::Sender::new(0) })
    }

    /// A place for a connection from this address. Where there is no room, the one that has waited longest gives way,
    /// of the same address if that has too many. None where all are being answered.
    #[must_use]
    pub fn take(self: &Arc<Self>, from: IpAddr) -> Option<Arc<Place>> {
        let network = network(from);
        let mut table = self.lock();
        if table.held.values().filter(|h| h.network == network).count() >= self.bounds.of_one {
            table.give_way(|h| h.network == network)?;
        }
        if table.held.len() >= self.bounds.in_all {
            table.give_way(|_| true)?;
        }
        table.changes += 1;
        let number = table.changes;
        table.held.insert(number, Held { network, phase: Phase::Waiting, since: number, task: None });
        self.count.send_replace(table.held.len());
        Some(Arc::new(Place { places: Arc::clone(self), number }))
    }

    /// Makes the one that has waited longest give way; for when the system has no handle left.
    pub fn make_room(&self) {
        // Where none can go, those that are answered end by themselves.
        let _ = self.lock().give_way(|_| true);
    }

    /// Resolves once no connection is left.
    pub async fn emptied(&self) {
        // The sender lives as long as this.
        let _ = self.count.subscribe().wait_for(|n| *n == 0).await;
    }

    fn lock(&self) -> MutexGuard<'_, Table> {
        // Each change is one insert or removal, whole even if a thread panicked beside it.
        self.table.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Table {
    fn give_way(&mut self, which: impl Fn(&Held) -> bool) -> Option<()> {
        let first = self
            .held
            .iter()
            .filter(|(_, h)| h.phase != Phase::Working && h.task.is_some() && which(h))
            .min_by_key(|(_, h)| (h.phase, h.since))
            .map(|(number, _)| *number)?;
        if let Some(Held { task: Some(task), .. }) = self.held.remove(&first) {
            task.abort();
        }
        Some(())
    }
}

/// The place of one connection, given up when dropped.
pub struct Place {
    places: Arc<ConnectionLimiter>,
    number: u64,
}

impl Place {
    /// Says which task serves it, so that it can be ended.
    pub fn served_by(&self, task: AbortHandle) {
        if let Some(held) = self.places.lock().held.get_mut(&self.number) {
            held.task = Some(task);
        }
    }

    /// Says what the connection is at.
    pub fn comes_to(&self, phase: Phase) {
        let mut table = self.places.lock();
        table.changes += 1;
        let since = table.changes;
        if let Some(held) = table.held.get_mut(&self.number) {
            (held.phase, held.since) = (phase, since);
        }
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        let mut table = self.places.lock();
        table.held.remove(&self.number);
        self.places.count.send_replace(table.held.len());
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn at(last: u8) -> IpAddr {
        IpAddr::from([192, 168, 1, last])
    }

    async fn served(
        places: &Arc<ConnectionLimiter>,
        from: IpAddr,
    ) -> Option<(Arc<Place>, tokio::task::JoinHandle<()>)> {
        let place = places.take(from)?;
        let task = tokio::spawn(std::future::pending());
        place.served_by(task.abort_handle());
        Some((place, task))
    }

    #[tokio::test]
    async fn the_longest_waiting_gives_way_and_what_is_answered_stays() {
        let places = ConnectionLimiter::new(Bounds { in_all: 3, of_one: 2 });
        let (answered, kept) = served(&places, at(1)).await.unwrap();
        answered.comes_to(Phase::Working);
        let (_first, gone) = served(&places, at(1)).await.unwrap();
        // A third of the same address: its own waiting one goes.
        let (third, third_task) = served(&places, at(1)).await.unwrap();
        assert!(gone.await.unwrap_err().is_cancelled());
        let (_other, _task) = served(&places, at(2)).await.unwrap();
        // Full in all: the one that has waited longest goes, whosever it is.
        let (_late, _task) = served(&places, at(3)).await.unwrap();
        assert!(third_task.await.unwrap_err().is_cancelled());
        drop(third);
        assert!(!kept.is_finished());
    }

    #[tokio::test]
    async fn where_all_are_answered_there_is_no_room_and_a_place_given_up_is_free() {
        let places = ConnectionLimiter::new(Bounds { in_all: 2, of_one: 2 });
        let mut held = Vec::new();
        for from in [at(1), at(2)] {
            let (place, task) = served(&places, from).await.unwrap();
            place.comes_to(Phase::Working);
            held.push((place, task));
        }
        assert!(places.take(at(3)).is_none());
        drop(held.pop());
        assert!(places.take(at(3)).is_some());
        held.clear();
        places.emptied().await;
    }
}
