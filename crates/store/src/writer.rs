//! The one task that writes. Callers that come while a transaction is being made durable share the next one,
//! so that many small appends cost few waits for the disk.

use crate::db::{Db, Opening};
use crate::error::{NotImported, StoreError};
use crate::incoming::hidden_characters;
use crate::log::{self, Written};
use crate::strangers;
use sayso_model::{Event, EventId, Fault, HomeId, Problem, Problems};
use sqlx::Connection;
use std::collections::BTreeSet;
use tokio::sync::{mpsc, oneshot};

/// What came of one event given to [`crate::Store::append`].
#[derive(Clone, PartialEq, Debug)]
pub enum Appended {
    /// It is stored now.
    New,
    /// It was stored already, the same.
    Duplicate,
    /// Another event of this id is stored; that one is kept.
    Conflict,
    /// It cannot stand in a log, and is not stored.
    Refused(Problems),
}

impl Appended {
    /// Why it is not stored; none where it is.
    #[must_use]
    pub fn refusal(self) -> Option<Problems> {
        match self {
            Self::New | Self::Duplicate => None,
            Self::Conflict => Some(Problems(vec![Problem { field: "id".into(), fault: Fault::IdTaken }])),
            Self::Refused(problems) => Some(problems),
        }
    }
}

/// The most bytes one event may take as JSON.
pub const MOST_EVENT_BYTES: usize = 128 * 1024;

/// Events in one transaction, beyond which callers wait for the next.
const MOST_TOGETHER: usize = 4_096;

/// Callers that may wait in line before the next one is held back.
const LINE: usize = 1_024;

type Reply<T> = oneshot::Sender<Result<T, StoreError>>;

pub(crate) enum Order {
    /// Store what is new.
    Append { events: Vec<Written>, reply: Reply<Vec<Appended>> },
    /// Store all or, where any conflicts, nothing.
    AppendWhole { events: Vec<Written>, reply: Reply<Vec<Appended>> },
    /// Finish and close the file.
    Close { reply: Reply<()> },
}

/// The connection that writes, opened anew after it failed.
struct Pen {
    db: Option<Db>,
    /// Homes known to have events here.
    here: BTreeSet<HomeId>,
    opening: Opening,
}

impl Pen {
    async fn write(&mut self, events: &[&Written], whole: bool) -> Result<Vec<Appended>, StoreError> {
        let mut db = match self.db.take() {
            Some(db) => db,
            None => self.opening.connect().await?,
        };
        let done = transact(&mut db, &mut self.here, events, whole).await;
        match done {
            Ok(_) | Err(StoreError::Busy | StoreError::NotImported(_)) => self.db = Some(db),
            // After an error such as a full disk SQLite has ended the transaction by itself, and the connection
            // still believes to be in it: every later write would fail. Closing it cannot lose anything.
            Err(_) => db.give_up().await,
        }
        done
    }

    async fn close(self) -> Result<(), StoreError> {
        match self.db {
            Some(db) => db.close().await,
            None => Ok(()),
        }
    }
}

/// Starts the task; it ends when the last sender is gone.
///
/// # Errors
/// Where the file cannot be opened to be written.
pub(crate) async fn start(opening: Opening) -> Result<mpsc::Sender<Order>, StoreError> {
    let db = Some(opening.connect().await?);
    let (orders, line) = mpsc::channel(LINE);
    tokio::spawn(serve(Pen { db, here: BTreeSet::new(), opening }, line));
    Ok(orders)
}

async fn serve(mut pen: Pen, mut line: mpsc::Receiver<Order>) {
    let mut held: Option<Order> = None;
    loop {
        let next = match held.take() {
            Some(order) => Some(order),
            None => line.recv().await,
        };
        match next {
            None => break,
            Some(Order::Append { events, reply }) => {
                let mut count = events.len();
                let mut together = vec![(events, reply)];
                while count < MOST_TOGETHER && held.is_none() {
                    match line.try_recv() {
                        Ok(Order::Append { events, reply }) => {
                            count += events.len();
                            together.push((events, reply));
                        }
                        Ok(other) => held = Some(other),
                        Err(_) => break,
                    }
                }
                answer_all(&mut pen, together).await;
            }
            Some(Order::AppendWhole { events, reply }) => {
                let events: Vec<&Written> = events.iter().collect();
                // A caller that is gone needs no answer; what was stored stays stored.
                let _ = reply.send(pen.write(&events, true).await);
            }
            Some(Order::Close { reply }) => {
                let _ = reply.send(pen.close().await);
                return;
            }
        }
    }
    // Nobody is left to tell; SQLite recovers the write-ahead log at the next opening if this fails.
    let _ = pen.close().await;
}

async fn answer_all(pen: &mut Pen, together: Vec<(Vec<Written>, Reply<Vec<Appended>>)>) {
    let all: Vec<&Written> = together.iter().flat_map(|(events, _)| events).collect();
    match pen.write(&all, false).await {
        Ok(mut outcomes) => {
            for (events, reply) in together {
                let rest = outcomes.split_off(events.len());
                let _ = reply.send(Ok(std::mem::replace(&mut outcomes, rest)));
            }
        }
        Err(error) => {
            for (_, reply) in together {
                let _ = reply.send(Err(error.clone()));
            }
        }
    }
}

/// Stores events in one transaction. An error leaves nothing behind.
async fn transact(
    db: &mut Db,
    here: &mut BTreeSet<HomeId>,
    events: &[&Written],
    whole: bool,
) -> Result<Vec<Appended>, StoreError> {
    let sql = db.sql();
    // IMMEDIATE: take the write lock before reading, or another process's write in between would fail this one.
    let mut tx = db.begin_with("BEGIN IMMEDIATE").await.map_err(&sql)?;
    let strangers = strangers::among(&mut tx, here, events).await.map_err(&sql)?;
    let mut seen = BTreeSet::new();
    let ours = events.iter().enumerate().filter(|(place, _)| !strangers.contains(place)).map(|(_, w)| *w);
    let first: Vec<&Written> = ours.filter(|w| seen.insert(w.id)).collect();
    let mut fresh = log::insert(&mut tx, &first).await.map_err(&sql)?;
    let old: Vec<EventId> = {
        let mut old: BTreeSet<EventId> = BTreeSet::new();
        let mut once = BTreeSet::new();
        // Known before, or here for the second time.
        old.extend(events.iter().map(|w| w.id).filter(|id| !once.insert(*id) || !fresh.contains(id)));
        old.into_iter().collect()
    };
    let stored = log::contents(&mut tx, &old).await.map_err(&sql)?;
    let mut outcomes = Vec::with_capacity(events.len());
    for (place, w) in events.iter().enumerate() {
        outcomes.push(if strangers.contains(&place) {
            Appended::Refused(strangers::refusal(w.home))
        } else if fresh.remove(&w.id) {
            Appended::New
        } else if stored.get(&w.id).is_some_and(|json| w.is(json)) {
            Appended::Duplicate
        } else {
            Appended::Conflict
        });
    }
    let in_the_way = |(w, o): (&&Written, &Appended)| match o {
        Appended::New | Appended::Duplicate => None,
        Appended::Conflict => Some(NotImported::Taken(w.id)),
        Appended::Refused(problems) => Some(NotImported::Refused(problems.clone())),
    };
    if whole && let Some(why) = events.iter().zip(&outcomes).find_map(in_the_way) {
        tx.rollback().await.map_err(&sql)?;
        return Err(StoreError::NotImported(why));
    }
    tx.commit().await.map_err(&sql)?;
    Ok(outcomes)
}

/// Checks an event and writes it as JSON; one with problems gets these instead.
pub(crate) fn write_down(event: &Event) -> Result<Written, Problems> {
    let written = Written::of(event)?;
    sound(event, &written)?;
    Ok(written)
}

/// Checks an event that is to be new in the log.
pub(crate) fn sound(event: &Event, written: &Written) -> Result<(), Problems> {
    event.check()?;
    let hidden = hidden_characters(&written.json);
    if !hidden.is_empty() {
        return Err(Problems(hidden));
    }
    let long = written.json.len();
    if long > MOST_EVENT_BYTES {
        return Err(Problems::one("event", Fault::TooLong { bytes: long, most: MOST_EVENT_BYTES }));
    }
    Ok(())
}
