//! Who listens to which board: one page a home at a time.

use super::hearing::Hearing;
use sayso_model::{HomeId, Moment};
use std::collections::HashMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use tokio::sync::{Mutex as AsyncMutex, watch};
use uuid::Uuid;

/// The place of the page that listens to a board.
pub struct Seat {
    /// Its stream.
    pub stream: Uuid,
    since: Moment,
    /// What is heard; none once it is over.
    pub hearing: AsyncMutex<Option<Hearing>>,
    turn: watch::Sender<Turn>,
}

/// Which connection of the page speaks.
#[derive(Clone, Copy, PartialEq, Eq, Default)]
struct Turn {
    number: u64,
    connected: bool,
    /// Another page has the board now.
    taken: bool,
}

/// A connection's right to speak for a seat.
pub struct Ticket {
    /// The seat.
    pub seat: Arc<Seat>,
    number: u64,
    turn: watch::Receiver<Turn>,
}

/// Why a connection must stop.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Over {
    /// Another page listens now.
    Taken,
    /// The same page came with another connection.
    Replaced,
}

/// What came of asking for a board.
pub enum Asked {
    /// Granted; the seat of another page that must be brought to its end first, if there was one.
    Granted(Ticket, Option<Arc<Seat>>),
    /// Another page listens since then.
    Busy(Moment),
}

/// All seats.
#[derive(Default)]
pub struct Seats {
    taken: Mutex<HashMap<HomeId, Arc<Seat>>>,
}

impl Seats {
    /// Asks for a home's board, for a stream that begins or goes on. `take` takes it from another page.
    pub fn ask(&self, home: HomeId, stream: Uuid, take: bool, now: Moment) -> Asked {
        let mut taken = self.lock();
        let former = taken.get(&home).cloned();
        match former {
            Some(seat) if seat.stream == stream => Asked::Granted(Ticket::new(seat), None),
            Some(seat) if seat.turn.borrow().connected && !take => Asked::Busy(seat.since),
            former => {
                if let Some(seat) = &former {
                    seat.turn.send_modify(|t| t.taken = true);
                }
                let (turn, _) = watch::channel(Turn::default());
                let seat = Arc::new(Seat { stream, since: now, hearing: AsyncMutex::new(None), turn });
                taken.insert(home, Arc::clone(&seat));
                Asked::Granted(Ticket::new(seat), former)
            }
        }
    }

    /// Gives a seat up, if it is still the home's.
    pub fn leave(&self, home: HomeId, seat: &Arc<Seat>) {
        let mut taken = self.lock();
        if taken.get(&home).is_some_and(|s| Arc::ptr_eq(s, seat)) {
            taken.remove(&home);
        }
    }

    /// Every seat that is taken.
    pub fn all(&self) -> Vec<(HomeId, Arc<Seat>)> {
        self.lock().iter().map(|(home, seat)| (*home, Arc::clone(seat))).collect()
    }

    fn lock(&self) -> MutexGuard<'_, HashMap<HomeId, Arc<Seat>>> {
        // Each change is one insert or removal, whole even if a thread panicked beside it.
        self.taken.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Ticket {
    fn new(seat: Arc<Seat>) -> Self {
        seat.turn.send_modify(|t| *t = Turn { number: t.number + 1, connected: true, taken: t.taken });
        let turn = seat.turn.subscribe();
        let number = turn.borrow().number;
        Self { seat, number, turn }
    }

    /// Why this connection must stop, if so.
    pub fn over(&self) -> Option<Over> {
        let turn = *self.turn.borrow();
        if turn.taken {
            Some(Over::Taken)
        } else if turn.number != self.number {
            Some(Over::Replaced)
        } else {
            None
        }
    }

    /// Waits until this connection must stop.
    pub async fn until_over(&mut self) -> Over {
        loop {
            if let Some(over) = self.over() {
                return over;
            }
            if self.turn.changed().await.is_err() {
                return Over::Replaced;
            }
        }
    }

    /// The connection is lost; the seat stays for the page to come back to.
    pub fn lost(&self) {
        let mine = self.number;
        self.seat.turn.send_modify(|t| {
            if t.number == mine {
                t.connected = false;
            }
        });
    }

    /// Whether the page has not come back since.
    pub fn still_lost(&self) -> bool {
        let turn = *self.turn.borrow();
        turn.number == self.number && !turn.connected && !turn.taken
    }
}
