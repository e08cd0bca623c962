//! The two logs side by side, in one run: how long an append takes under load, and how long a story takes to be there. On
//! PostgreSQL a home's rows lie scattered among those of others, as arrival leaves them. `--quick` for as small as it goes.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../../../tests/postgres/cluster.rs"]
mod cluster;
#[path = "../tests/common/mod.rs"]
mod common;

use cluster::Cluster;
use common::{at, event, press};
use sayso_model::{Event, HomeId};
use sayso_store::{Database, Server, Store};
use sqlx::{AssertSqlSafe, Connection, PgConnection};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};
use uuid::Uuid;

/// Rows of other homes between two of one home: each of its rows then lies on a page of its own.
const OTHERS: usize = 12;

fn ms(d: Duration) -> f64 {
    d.as_secs_f64() * 1_000.0
}

/// One event a call from so many callers, each on the store it is given, `each` times.
async fn load(name: &str, stores: &[(Store, HomeId)], callers: usize, each: usize) {
    let number = Arc::new(AtomicU64::new(0));
    let begun = Instant::now();
    let running: Vec<_> = (0..callers)
        .map(|caller| {
            let (store, home) = stores[caller % stores.len()].clone();
            let number = Arc::clone(&number);
            tokio::spawn(async move {
                let mut took = Vec::with_capacity(each);
                for _ in 0..each {
                    let n = (u128::from(Uuid::now_v7().as_u128() as u64) << 20)
                        + u128::from(number.fetch_add(1, Ordering::Relaxed));
                    let event = Event { home, ..event(n, "2026-03-01T10:00:00Z", press(n % 9)) };
                    let begun = Instant::now();
                    store.append(vec![event]).await.unwrap();
                    took.push(begun.elapsed());
                }
                took
            })
        })
        .collect();
    let mut took = Vec::new();
    for caller in running {
        took.extend(caller.await.unwrap());
    }
    let all = begun.elapsed();
    took.sort();
    let share = |q: f64| ms(took[((took.len() - 1) as f64 * q) as usize]);
    println!(
        "append, {name}: {:.0} events/s; p50 {:.1} ms, p99 {:.1} ms, most {:.1} ms",
        took.len() as f64 / all.as_secs_f64(),
        share(0.5),
        share(0.99),
        share(1.0)
    );
}

fn a_home_of(count: usize, home: HomeId) -> Vec<Event> {
    let mut events = sayso_sim::scale(1, count / 2, at("2026-11-01T00:00:00Z")).events;
    events.truncate(count);
    assert_eq!(events.len(), count);
    events.iter_mut().for_each(|e| e.home = home);
    events
}

/// Rows of others among a home's, in an order that has nothing to do with whose they are.
async fn scattered(cluster: &Cluster, home: HomeId, count: usize) {
    let mut db = PgConnection::connect(&cluster.address("postgres", "postgres")).await.unwrap();
    let others = HomeId(Uuid::now_v7());
    let sql = format!(
        "INSERT INTO sayso.home (id, last) VALUES ('{others}', {n}); \
         INSERT INTO sayso.event (home, seq, id, kind, content) \
             SELECT '{others}', i, gen_random_uuid(), 'press', (SELECT content FROM sayso.event WHERE home = '{home}' LIMIT 1) \
             FROM generate_series(1, {n}) i; \
         CREATE TEMP TABLE all_of_it AS SELECT * FROM sayso.event ORDER BY random(); \
         TRUNCATE sayso.event; INSERT INTO sayso.event SELECT * FROM all_of_it; DROP TABLE all_of_it; ANALYZE sayso.event",
        n = count * OTHERS
    );
    sqlx::raw_sql(AssertSqlSafe(sql)).execute(&mut db).await.unwrap();
}

async fn stories(cluster: &Cluster, count: usize) {
    let home = HomeId(Uuid::now_v7());
    let events = a_home_of(count, home);
    let dir = tempfile::tempdir().unwrap();
    let (file, server) = (
        Store::open(dir.path()).await.unwrap(),
        Server::open(&Database::at(cluster.address("postgres", "postgres"))).await.unwrap(),
    );
    let on_server = server.found(home).await.unwrap();
    for part in events.chunks(2_000) {
        file.append(part.to_vec()).await.unwrap();
        on_server.append(part.to_vec()).await.unwrap();
    }
    drop((on_server, file, events));
    server.close().await;
    scattered(cluster, home, count).await;
    for snapshot in [false, true] {
        let with = if snapshot { "from a snapshot" } else { "from the log alone" };
        cluster.crash();
        cluster.up();
        let server = Server::open(&Database::at(cluster.address("postgres", "postgres"))).await.unwrap();
        let cold = Instant::now();
        let store = server.home(home);
        let story = store.story(home).await.unwrap();
        let cold = cold.elapsed();
        let warm = Instant::now();
        for _ in 0..100 {
            store.story(home).await.unwrap();
        }
        println!(
            "story of {count}, server, {with}: cold {:.1} ms, warm {:.3} ms",
            ms(cold),
            ms(warm.elapsed()) / 100.0
        );
        drop(story);
        server.close().await;

        let file = Store::open(dir.path()).await.unwrap();
        let cold = Instant::now();
        let story = file.story(home).await.unwrap();
        let cold = cold.elapsed();
        let warm = Instant::now();
        for _ in 0..100 {
            file.story(home).await.unwrap();
        }
        println!(
            "story of {count}, file, {with} (where it is large enough for one): cold {:.1} ms, warm {:.3} ms",
            ms(cold),
            ms(warm.elapsed()) / 100.0
        );
        drop(story);
        file.close().await.unwrap();
    }
}

async fn all(quick: bool) {
    let cluster = Cluster::start(true);
    let dir = tempfile::tempdir().unwrap();
    let file = Store::open(dir.path()).await.unwrap();
    let server = Server::open(&Database::at(cluster.address("postgres", "postgres"))).await.unwrap();
    let mut homes = Vec::new();
    for _ in 0..64 {
        let home = HomeId(Uuid::now_v7());
        homes.push((server.found(home).await.unwrap(), home));
    }
    let one = [(file, HomeId(Uuid::now_v7()))];
    let each = if quick { 2 } else { 200 };
    for callers in [1, 8, 64] {
        load(&format!("file, {callers} callers on one home"), &one, callers, each).await;
        load(&format!("server, {callers} callers on one home"), &homes[..1], callers, each).await;
        load(&format!("server, {callers} callers, each on a home"), &homes, callers, each).await;
    }
    server.close().await;
    for count in if quick { [100, 400] } else { [1_500, 20_000] } {
        stories(&cluster, count).await;
    }
}

fn main() {
    let quick = std::env::args().any(|a| a == "--quick" || a == "--test");
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    runtime.block_on(all(quick));
}
