//! The one task that writes. Callers that come while a transaction is being made durable share the next one,
//! so that many small appends cost few waits for the disk.

use crate::appended::{self, Appended};
use crate::error::StoreError;
use crate::sqlite::db::{Db, Opening};
use crate::sqlite::log;
use crate::sqlite::strangers;
use crate::written::Written;
use sayso_model::HomeId;
use sqlx::Connection;
use std::collections::BTreeSet;
use tokio::sync::{mpsc, oneshot};

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
    let first = appended::first(events, &strangers);
    let mut fresh = log::insert(&mut tx, &first).await.map_err(&sql)?;
    let old = appended::known(events, &fresh);
    let stored = log::contents(&mut tx, &old).await.map_err(&sql)?;
    let outcomes = appended::outcomes(events, &strangers, &mut fresh, &stored);
    if whole && let Some(why) = appended::in_the_way(events, &outcomes) {
        tx.rollback().await.map_err(&sql)?;
        return Err(StoreError::NotImported(why));
    }
    tx.commit().await.map_err(&sql)?;
    Ok(outcomes)
}
