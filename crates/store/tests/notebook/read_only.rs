//! A notebook that may not be written can still be looked at, exported and backed up.
#![cfg(unix)]

use crate::common::disk::SmallDisk;
use crate::common::*;
use sayso_store::{Format, Others, Revision, Store, StoreError};
use std::os::unix::fs::PermissionsExt;
use std::path::Path;

async fn can_be_looked_at(dir: &Path, events: usize) {
    let said = std::sync::Mutex::new(Vec::new());
    let store = Store::open_saying(dir, &|what| said.lock().unwrap().push(what.to_owned())).await.unwrap();
    assert!(store.is_read_only());
    assert!(said.lock().unwrap()[0].contains("only be read"));
    assert_eq!(store.story(home()).await.unwrap().ledger().len(), events);
    assert_eq!(store.check().await.unwrap().fault_count, 0);
    let out = tempfile::tempdir().unwrap();
    assert_eq!(store.export_to(Format::Csv, &out.path().join("all.csv")).await.unwrap(), events);
    let copy = out.path().join("copy.sayso-backup");
    assert_eq!(store.backup(&copy).await.unwrap().events, events);
    // To be sent, they are made where something may be written.
    let (sent, done) = store.held_archive().await.unwrap();
    assert!(!sent.path().starts_with(dir) && std::fs::metadata(sent.path()).unwrap().len() > 0);
    assert_eq!(done.events, events);
    let lines = std::fs::read_to_string(store.held_export(Format::JsonLines).await.unwrap().path()).unwrap();
    assert_eq!(lines.lines().count(), events);
    assert!(matches!(store.hold_file(), Err(StoreError::Unwritable { .. })), "nothing can be taken in");
    let refused = store.append(vec![event(90, "2026-03-01T10:00:00Z", press(7))]).await.unwrap_err();
    assert!(matches!(refused, StoreError::Unwritable { .. }), "{refused}");
    assert!(refused.to_string().contains("only be read"), "{refused}");
    store.close().await.unwrap();
    let other = Store::open(&out.path().join("other")).await.unwrap();
    assert_eq!(other.restore(&copy, Others::Refuse).await.unwrap().new, events);
}

#[tokio::test]
async fn a_file_that_may_not_be_written() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    store.append((0..9).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    store.close().await.unwrap();
    let file = dir.path().join("sayso.db");
    let before = std::fs::read(&file).unwrap();
    std::fs::set_permissions(&file, std::fs::Permissions::from_mode(0o400)).unwrap();
    can_be_looked_at(dir.path(), 9).await;
    assert_eq!(std::fs::read(&file).unwrap(), before);
    std::fs::set_permissions(&file, std::fs::Permissions::from_mode(0o600)).unwrap();
    assert!(!Store::open(dir.path()).await.unwrap().is_read_only());
}

#[tokio::test]
async fn a_folder_that_is_gone_is_named_with_what_would_be_right() {
    let dir = tempfile::tempdir().unwrap();
    let notebook = dir.path().join("notebook");
    let store = Store::open(&notebook).await.unwrap();
    std::fs::rename(&notebook, dir.path().join("moved")).unwrap();
    for refused in [store.hold_file().map(drop), store.held_export(Format::Csv).await.map(drop)] {
        let refused = refused.unwrap_err();
        assert!(matches!(&refused, StoreError::CannotHold { path, .. } if *path == notebook), "{refused}");
        assert!(refused.to_string().contains("write there"), "{refused}");
    }
}

#[tokio::test]
async fn a_disk_that_may_not_be_written_also_with_events_in_the_write_ahead_log() {
    let Some(disk) = SmallDisk::of_kib(4_000) else { return };
    let (whole, killed) = (disk.path().join("whole"), disk.path().join("killed"));
    let store = Store::open(&whole).await.unwrap();
    store.append((0..9).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    // The files as they are while open are what a kill leaves.
    std::fs::create_dir(&killed).unwrap();
    for name in ["sayso.db", "sayso.db-wal"] {
        std::fs::copy(whole.join(name), killed.join(name)).unwrap();
    }
    assert!(std::fs::metadata(killed.join("sayso.db-wal")).unwrap().len() > 0);
    store.close().await.unwrap();
    disk.read_only(true);
    for dir in [&whole, &killed] {
        can_be_looked_at(dir, 9).await;
    }
    let refused = Store::open(&disk.path().join("none")).await.unwrap_err();
    assert!(matches!(refused, StoreError::Unwritable { .. }), "{refused}");
    disk.read_only(false);
    assert_eq!(Store::open(&killed).await.unwrap().events(Revision(0), 99).await.unwrap().len(), 9);
}

#[tokio::test]
async fn what_is_waited_for_is_said() {
    let dir = tempfile::tempdir().unwrap();
    Store::open(dir.path()).await.unwrap().close().await.unwrap();
    let lock = std::fs::File::options().write(true).open(dir.path().join("sayso.lock")).unwrap();
    lock.lock().unwrap();
    let held = std::sync::Mutex::new(Some(lock));
    // Let go once it is said, so nothing here depends on time.
    let say = |what: &str| {
        assert!(what.contains("Waiting for another program that holds the notebook"), "{what}");
        drop(held.lock().unwrap().take());
    };
    Store::open_saying(dir.path(), &say).await.unwrap();
    assert!(held.lock().unwrap().is_none(), "it was said");
}
