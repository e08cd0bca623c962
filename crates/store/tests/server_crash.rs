//! Crashes a database server under load and looks at what was acknowledged. With `-- --kills 1000` so many times instead
//! of a few. Written to disk as in use: this cluster waits for it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

#[path = "../../../tests/postgres/cluster.rs"]
mod cluster;
mod common;

use cluster::Cluster;
use common::{event, press};
use sayso_model::{Event, HomeId};
use sayso_store::{Appended, Database, Revision, Server};
use std::collections::BTreeSet;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::{Arc, Mutex};
use std::time::Duration;
use uuid::Uuid;

const HOMES: usize = 5;
const CALLERS: usize = 10;
/// Events acknowledged between two crashes, at least.
const BETWEEN: usize = 25;

/// What was promised, by home.
#[derive(Default)]
struct Promised(Vec<Mutex<BTreeSet<u64>>>);

fn numbered(home: HomeId, n: u64) -> Event {
    Event { home, ..event(u128::from(n), "2026-03-01T10:00:00Z", press(u128::from(n % 7))) }
}

async fn crashes(cluster: &Arc<Cluster>, kills: u32) {
    let open = || async {
        Server::open(&Database { connections: 6, ..Database::at(cluster.address("postgres", "postgres")) })
            .await
            .unwrap()
    };
    // Two programs.
    let servers = [open().await, open().await];
    let mut homes = Vec::new();
    for _ in 0..HOMES {
        let home = HomeId(Uuid::now_v7());
        servers[0].found(home).await.unwrap();
        homes.push(home);
    }
    let promised = Arc::new(Promised((0..HOMES).map(|_| Mutex::default()).collect()));
    let (stop, next) = (Arc::new(AtomicBool::new(false)), Arc::new(AtomicU64::new(0)));
    let callers: Vec<_> = (0..CALLERS)
        .map(|caller| {
            let (home, of) = (homes[caller % HOMES], caller % HOMES);
            let store = servers[caller % 2].home(home);
            let (promised, stop, next) = (Arc::clone(&promised), Arc::clone(&stop), Arc::clone(&next));
            tokio::spawn(async move {
                while !stop.load(Ordering::Relaxed) {
                    let n = next.fetch_add(1, Ordering::Relaxed);
                    // An error is no promise; the number is not given again.
                    if let Ok(out) = store.append(vec![numbered(home, n)]).await {
                        assert!(matches!(out[0], Appended::New | Appended::Duplicate), "{out:?}");
                        promised.0[of].lock().unwrap().insert(n);
                    }
                }
            })
        })
        .collect();
    let kept = || promised.0.iter().map(|of| of.lock().unwrap().len()).sum::<usize>();
    for kill in 1..=kills {
        let before = kept();
        while kept() < before + BETWEEN {
            tokio::time::sleep(Duration::from_millis(2)).await;
        }
        let cluster = Arc::clone(cluster);
        tokio::task::spawn_blocking(move || {
            cluster.crash();
            cluster.up();
        })
        .await
        .unwrap();
        if kill % 50 == 0 {
            println!("{kill} crashes, {} acknowledged", kept());
        }
    }
    stop.store(true, Ordering::Relaxed);
    for caller in callers {
        caller.await.unwrap();
    }
    let mut stored = 0;
    for (home, promised) in homes.iter().zip(&promised.0) {
        let all = open().await.home(*home).events(Revision(0), usize::MAX).await.unwrap();
        let ids: BTreeSet<Uuid> = all.iter().map(|l| l.event.id.0).collect();
        assert_eq!(ids.len(), all.len(), "doubled");
        assert!(all.iter().zip(1..).all(|(l, place)| l.at == Revision(place)), "places without gaps");
        let lost: Vec<u64> =
            promised.lock().unwrap().iter().copied().filter(|n| !ids.contains(&numbered(*home, *n).id.0)).collect();
        assert!(lost.is_empty(), "acknowledged and lost: {lost:?}");
        stored += all.len();
    }
    println!("{kills} crashes, {} acknowledged, {stored} stored: none lost or doubled", kept());
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    if args.iter().any(|a| a == "--list") {
        return println!("server_crash: test");
    }
    let kills = args.iter().position(|a| a == "--kills").and_then(|i| args.get(i + 1));
    let kills = kills.map_or(6, |n| n.parse().expect("--kills and a number"));
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build().unwrap();
    let cluster = Arc::new(Cluster::start(true));
    runtime.block_on(crashes(&cluster, kills));
}
