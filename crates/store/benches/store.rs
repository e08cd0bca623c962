//! Appends with 1, 8 and 64 callers beside a plain reference that commits each event by itself, and the time to a
//! story of 100 000 events.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../tests/common/mod.rs"]
mod common;

use common::{at, event, press};
use divan::Bencher;
use divan::counter::ItemsCount;
use sayso_model::Event;
use sayso_store::{Revision, Store};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode, SqliteSynchronous};
use sqlx::{ConnectOptions, Connection, SqliteConnection};
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use tokio::runtime::Runtime;
use tokio::sync::Mutex;

const TOGETHER: u64 = 1_024;

fn main() {
    divan::main();
}

fn runtime() -> Runtime {
    tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap()
}

fn next(number: &AtomicU64) -> Event {
    let n = u128::from(number.fetch_add(1, Ordering::Relaxed));
    event(n, "2026-03-01T10:00:00Z", press(n % 9))
}

/// `TOGETHER` events from so many callers, each waiting for its own before it gives the next.
async fn from_callers<F>(callers: u64, number: &Arc<AtomicU64>, append: impl Fn(Event) -> F + Clone + Send + 'static)
where
    F: Future<Output = ()> + Send + 'static,
{
    let running: Vec<_> = (0..callers)
        .map(|_| {
            let (append, number) = (append.clone(), Arc::clone(number));
            tokio::spawn(async move {
                for _ in 0..TOGETHER / callers {
                    append(next(&number)).await;
                }
            })
        })
        .collect();
    for caller in running {
        caller.await.unwrap();
    }
}

/// One event a call, acknowledged when durable.
#[divan::bench(args = [1, 8, 64], sample_count = 8, sample_size = 1)]
fn append(bencher: Bencher<'_, '_>, callers: u64) {
    let (runtime, dir) = (runtime(), tempfile::tempdir().unwrap());
    let store = runtime.block_on(Store::open(dir.path())).unwrap();
    let number = Arc::new(AtomicU64::new(0));
    bencher.counter(ItemsCount::new(TOGETHER)).bench_local(|| {
        let store = store.clone();
        runtime.block_on(from_callers(callers, &number, move |event| {
            let store = store.clone();
            async move {
                store.append(vec![event]).await.unwrap();
            }
        }));
    });
}

/// The yardstick: the same row, the same durability, a transaction an event.
#[divan::bench(args = [1, 8, 64], sample_count = 8, sample_size = 1)]
fn reference_one_transaction_an_event(bencher: Bencher<'_, '_>, callers: u64) {
    let (runtime, dir) = (runtime(), tempfile::tempdir().unwrap());
    let db = runtime.block_on(plain(dir.path()));
    let db = Arc::new(Mutex::new(db));
    let number = Arc::new(AtomicU64::new(0));
    bencher.counter(ItemsCount::new(TOGETHER)).bench_local(|| {
        let db = Arc::clone(&db);
        runtime.block_on(from_callers(callers, &number, move |event| {
            let db = Arc::clone(&db);
            async move {
                let json = serde_json::to_string(&event).unwrap();
                sqlx::query("INSERT INTO event (id, household, kind, content) VALUES ($1, $2, $3, $4)")
                    .bind(event.id.0)
                    .bind(event.home.0)
                    .bind(event.body.kind().name())
                    .bind(json)
                    .execute(&mut *db.lock().await)
                    .await
                    .unwrap();
            }
        }));
    });
}

async fn plain(dir: &Path) -> SqliteConnection {
    Store::open(dir).await.unwrap().close().await.unwrap();
    let options = SqliteConnectOptions::new()
        .filename(dir.join("sayso.db"))
        .journal_mode(SqliteJournalMode::Wal)
        .synchronous(SqliteSynchronous::Full);
    let mut db = options.connect().await.unwrap();
    db.ping().await.unwrap();
    db
}

/// A notebook of 100 000 events of an animal that converses.
fn large(runtime: &Runtime) -> (tempfile::TempDir, Store, sayso_model::HomeId, Event) {
    let dir = tempfile::tempdir().unwrap();
    let mut events = sayso_sim::scale(1, 45_000, at("2026-11-01T00:00:00Z")).events;
    events.truncate(100_000);
    assert_eq!(events.len(), 100_000);
    let (home, last) = (events[0].home, events[99_999].clone());
    let store = runtime.block_on(async {
        let store = Store::open(dir.path()).await.unwrap();
        for part in events.chunks(5_000) {
            store.append(part.to_vec()).await.unwrap();
        }
        store
    });
    (dir, store, home, last)
}

/// Opening the file and reading the whole story.
#[divan::bench(sample_count = 5, sample_size = 1)]
fn story_cold(bencher: Bencher<'_, '_>) {
    let runtime = runtime();
    let (dir, _store, home, _) = large(&runtime);
    bencher.counter(ItemsCount::new(100_000_u64)).bench_local(|| {
        runtime.block_on(async {
            let store = Store::open(dir.path()).await.unwrap();
            store.story(home).await.unwrap()
        })
    });
}

/// Opening alone, the check of the file included.
#[divan::bench(sample_count = 5, sample_size = 1)]
fn open_only(bencher: Bencher<'_, '_>) {
    let runtime = runtime();
    let (dir, ..) = large(&runtime);
    bencher.bench_local(|| runtime.block_on(Store::open(dir.path())).unwrap());
}

/// Asking again when nothing has changed.
#[divan::bench(sample_count = 100)]
fn story_warm(bencher: Bencher<'_, '_>) {
    let runtime = runtime();
    let (_dir, store, home, _) = large(&runtime);
    runtime.block_on(store.story(home)).unwrap();
    bencher.bench_local(|| runtime.block_on(store.story(home)).unwrap());
}

/// Asking again after one more event. With `true` another reader still holds the story as it was.
#[divan::bench(args = [false, true], sample_count = 20, sample_size = 1)]
fn story_after_one_more(bencher: Bencher<'_, '_>, held: bool) {
    let runtime = runtime();
    let (_dir, store, home, last) = large(&runtime);
    let number = AtomicU64::new(0);
    let mut holder = runtime.block_on(store.story(home)).unwrap();
    bencher
        .with_inputs(|| {
            let n = number.fetch_add(1, Ordering::Relaxed);
            let mut one = last.clone();
            one.id = sayso_model::EventId(common::id(0xF000_0000 + u128::from(n)));
            one.happened_at = one.happened_at.plus_seconds(n as f64 + 1.0);
            runtime.block_on(store.append(vec![one])).unwrap();
        })
        .bench_local_values(|()| {
            if !held {
                holder = Arc::default();
            }
            holder = runtime.block_on(store.story(home)).unwrap();
        });
}

/// Storing 100 000 events in calls of 5 000, as an import does.
#[divan::bench(sample_count = 2, sample_size = 1)]
fn append_in_bulk(bencher: Bencher<'_, '_>) {
    let runtime = runtime();
    let mut events = sayso_sim::scale(1, 45_000, at("2026-11-01T00:00:00Z")).events;
    events.truncate(100_000);
    bencher.counter(ItemsCount::new(100_000_u64)).bench_local(|| {
        let dir = tempfile::tempdir().unwrap();
        runtime.block_on(async {
            let store = Store::open(dir.path()).await.unwrap();
            for part in events.chunks(5_000) {
                store.append(part.to_vec()).await.unwrap();
            }
            assert!(store.revision().await.unwrap() >= Revision(100_000));
        });
    });
}
