//! Opening a database of many homes, what keeps it from being used, and connections that are cut.

use crate::common::press;
use crate::server::{CLUSTER, count, of, open, raw, say, some_home};
use sayso_store::{Appended, Database, Revision, Server, StoreError};
use std::collections::BTreeSet;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::Duration;

#[tokio::test]
async fn a_new_database_may_be_opened_by_several_at_once() {
    let mut root = raw("postgres", "postgres").await;
    say(&mut root, "CREATE DATABASE begun").await.unwrap();
    let opening: Vec<_> = (0..6)
        .map(|_| {
            tokio::spawn(async {
                Server::open(&Database { connections: 1, ..Database::at(CLUSTER.address("postgres", "begun")) }).await
            })
        })
        .collect();
    for server in opening {
        let (server, home) = (server.await.unwrap().unwrap(), some_home());
        let store = server.found(home).await.unwrap();
        assert_eq!(store.append(vec![of(home, 1, press(1))]).await.unwrap(), [Appended::New]);
    }
}

#[tokio::test]
async fn what_keeps_a_database_from_being_used_is_told_by_its_kind() {
    let mut root = raw("postgres", "postgres").await;
    say(&mut root, "CREATE DATABASE later").await.unwrap();
    say(&mut root, "CREATE DATABASE closed").await.unwrap();
    say(&mut root, "CREATE ROLE anybody LOGIN").await.unwrap();
    Server::open(&Database::at(CLUSTER.address("postgres", "later"))).await.unwrap();
    let mut later = raw("postgres", "later").await;
    let newer = "INSERT INTO sayso._sqlx_migrations (version, description, success, checksum, execution_time) \
                 VALUES (9000, 'later', true, '', 0)";
    say(&mut later, newer).await.unwrap();
    let refused = Server::open(&Database::at(CLUSTER.address("postgres", "later"))).await.unwrap_err();
    assert!(matches!(refused, StoreError::NewerDatabase { found: 9000, .. }), "{refused}");
    open().await;
    let refused = Server::open(&Database::at(CLUSTER.address("anybody", "postgres"))).await.unwrap_err();
    assert!(matches!(refused, StoreError::NoRights { .. }), "{refused}");
    let refused = Server::open(&Database::at(CLUSTER.address("nobody_of_that_name", "postgres"))).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotLetIn { .. }), "{refused}");
    // Where there is something to make, it is told who may, empty or of an earlier version.
    let refused = Server::open(&Database::at(CLUSTER.address("anybody", "closed"))).await.unwrap_err();
    assert!(matches!(refused, StoreError::NeedsOwner { .. }), "{refused}");
    say(&mut root, "CREATE DATABASE earlier").await.unwrap();
    say(&mut root, "CREATE ROLE web LOGIN IN ROLE sayso_server").await.unwrap();
    Server::open(&Database::at(CLUSTER.address("postgres", "earlier"))).await.unwrap();
    let mut earlier = raw("postgres", "earlier").await;
    let older = "DELETE FROM sayso._sqlx_migrations WHERE version = (SELECT max(version) FROM sayso._sqlx_migrations)";
    say(&mut earlier, older).await.unwrap();
    let serving = Database::at(CLUSTER.address("web", "earlier"));
    let refused = Server::open(&serving).await.unwrap_err();
    assert!(matches!(refused, StoreError::NeedsOwner { .. }), "{refused}");
    for away in [CLUSTER.address("postgres", "nowhere"), "postgres://a@localhost/b?host=/no/such/folder".to_owned()] {
        let refused = Server::open(&Database::at(away)).await.unwrap_err();
        assert!(matches!(refused, StoreError::Unreachable { .. }), "{refused}");
    }
    assert!(matches!(Server::open(&Database::at("no address")).await, Err(StoreError::Unreachable { .. })));
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn connections_that_are_cut_lose_and_double_nothing() {
    let mut root = raw("postgres", "postgres").await;
    say(&mut root, "CREATE DATABASE cut").await.unwrap();
    let server =
        Server::open(&Database { connections: 4, ..Database::at(CLUSTER.address("postgres", "cut")) }).await.unwrap();
    let home = some_home();
    server.found(home).await.unwrap();
    // Acknowledged so far.
    static KEPT: AtomicUsize = AtomicUsize::new(0);
    const ALL: usize = 600;
    let cutter = tokio::spawn(async move {
        // One that is at work, then no other until some more got through.
        let sql = "SELECT count(pg_terminate_backend(pid)) FROM (SELECT pid FROM pg_stat_activity \
                   WHERE datname = 'cut' AND state <> 'idle' AND query LIKE '%sayso.%' LIMIT 1) one";
        let (mut cut, mut from) = (0, 0);
        while from + 30 < ALL {
            cut += count(&mut root, sql).await;
            if cut > 0 {
                from = KEPT.load(Ordering::Relaxed).max(from + 10);
                while KEPT.load(Ordering::Relaxed) < (from + 10).min(ALL) {
                    tokio::time::sleep(Duration::from_millis(1)).await;
                }
            }
        }
        cut
    });
    let callers: Vec<_> = (0..4_u128)
        .map(|caller| {
            let store = server.home(home);
            tokio::spawn(async move {
                for n in 0..ALL as u128 / 4 {
                    let out = store.append(vec![of(home, caller * 1_000 + n, press(1))]).await.unwrap();
                    assert!(matches!(out[0], Appended::New | Appended::Duplicate), "{out:?}");
                    KEPT.fetch_add(1, Ordering::Relaxed);
                }
            })
        })
        .collect();
    for caller in callers {
        caller.await.unwrap();
    }
    let cut = cutter.await.unwrap();
    let all = server.home(home).events(Revision(0), usize::MAX).await.unwrap();
    assert!(cut > 0, "none was cut");
    assert_eq!(all.len(), ALL);
    assert_eq!(all.iter().map(|l| l.event.id).collect::<BTreeSet<_>>().len(), ALL);
    assert!(all.iter().zip(1..).all(|(l, place)| l.at == Revision(place)), "places without gaps");
}
