//! A disk that is really full: told as such, nothing acknowledged is lost, and once there is room all goes on.

use crate::common::disk::SmallDisk;
use crate::common::*;
use sayso_model::{Event, Note, Remark};
use sayso_store::{Appended, Revision, Store, StoreError};

fn remark(n: u128) -> Event {
    event(n, "2026-03-01T10:00:00Z", Remark { text: Note::new(&"x".repeat(1_900)).unwrap() })
}

/// Appends one event a call until the disk is full; answers what was acknowledged.
async fn until_full(store: &Store, from: u128) -> Vec<Event> {
    let mut acknowledged = Vec::new();
    loop {
        let one = remark(from + acknowledged.len() as u128);
        match store.append(vec![one.clone()]).await {
            Ok(out) => assert_eq!(out, [Appended::New]),
            Err(error) => {
                assert!(matches!(error, StoreError::DiskFull), "{error:?}");
                return acknowledged;
            }
        }
        acknowledged.push(one);
        assert!(acknowledged.len() < 5_000, "the disk never filled");
    }
}

#[tokio::test]
async fn a_full_disk_stops_nothing_for_good() {
    let Some(disk) = SmallDisk::of_kib(3_000) else { return };
    std::fs::write(disk.path().join("ballast"), vec![1; 600_000]).unwrap();
    let store = Store::open(&disk.path().join("notebook")).await.unwrap();
    let mut acknowledged = until_full(&store, 0).await;
    assert!(acknowledged.len() > 50, "{}", acknowledged.len());
    disk.fill("more");
    // Full again and again is still full, never some other error, and what is there can be read.
    for n in 0..5 {
        let error = store.append(vec![remark(10_000 + n)]).await.unwrap_err();
        assert!(matches!(error, StoreError::DiskFull), "{error:?}");
        assert_eq!(store.story(home()).await.unwrap().ledger().len(), acknowledged.len());
    }
    assert!(matches!(store.put_clip(vec![3; 50_000]).await, Err(StoreError::DiskFull)));
    // A little room: the same handle goes on, without being opened anew.
    std::fs::remove_file(disk.path().join("ballast")).unwrap();
    let more = until_full(&store, 20_000).await;
    assert!(more.len() > 20, "{}", more.len());
    acknowledged.extend(more);
    store.close().await.unwrap();
    std::fs::remove_file(disk.path().join("more")).unwrap();
    let store = Store::open(&disk.path().join("notebook")).await.unwrap();
    let found: Vec<Event> = store.events(Revision(0), 9_999).await.unwrap().into_iter().map(|l| l.event).collect();
    assert_eq!(found, acknowledged, "every acknowledged event, once, and no other");
    assert_eq!(store.check().await.unwrap().fault_count, 0);
}

#[tokio::test]
async fn a_backup_onto_a_full_disk_says_so_and_leaves_nothing() {
    let Some(disk) = SmallDisk::of_kib(200) else { return };
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    store.append((0..300).map(remark).collect()).await.unwrap();
    let error = store.backup(&disk.path().join("copy.sayso-backup")).await.unwrap_err();
    assert!(matches!(error, StoreError::DiskFull), "{error:?}");
    assert_eq!(std::fs::read_dir(disk.path()).unwrap().count(), 0);
}
