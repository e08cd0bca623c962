//! Looking a notebook through: what is right is called right, and each thing wrong is found.

use crate::common::*;
use sayso_store::Store;
use sqlx::sqlite::SqliteConnectOptions;
use sqlx::{ConnectOptions, Connection};
use std::path::Path;

/// Changes the file as only a fault or a stranger could: the log's own triggers are taken off first.
async fn meddle(dir: &Path, statement: &'static str) {
    let mut db = SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap();
    sqlx::query("DROP TRIGGER IF EXISTS event_is_never_changed").execute(&mut db).await.unwrap();
    let hit = sqlx::query(statement).execute(&mut db).await.unwrap().rows_affected();
    assert!(hit > 0, "{statement}");
    db.close().await.unwrap();
}

#[tokio::test]
async fn a_sound_notebook_has_no_faults() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let events = sayso_sim::samples();
    let many = events.len();
    let amending = events.iter().filter(|e| e.body.amends().is_some()).count();
    store.append(events).await.unwrap();
    store.put_clip(b"a recording".to_vec()).await.unwrap();
    // About an event that has not arrived: no fault, but told.
    let absent = event(77, "2026-03-01T10:00:00Z", press(7));
    let early = event(78, "2026-03-01T10:00:00Z", withdrawal(&absent));
    store.append(vec![sayso_model::Event { home: store.home().await.unwrap().unwrap(), ..early }]).await.unwrap();
    let found = store.check().await.unwrap();
    assert_eq!((found.faults, found.fault_count), (Vec::new(), 0));
    assert_eq!((found.events, found.amendments, found.clips), (many + 1, amending + 1, 1));
    assert!(found.waiting >= 1, "{}", found.waiting);
}

#[tokio::test]
async fn every_column_that_says_otherwise_than_the_content_is_found() {
    for (column, statement) in [
        ("id", "UPDATE event SET id = randomblob(16) WHERE seq = 2"),
        ("home", "UPDATE event SET household = randomblob(16) WHERE seq = 2"),
        ("kind", "UPDATE event SET kind = 'look' WHERE seq = 2"),
        ("amends", "UPDATE event SET amends = randomblob(16) WHERE seq = 2"),
        ("no event", "UPDATE event SET content = substr(content, 2) WHERE seq = 2"),
        ("id", "UPDATE event SET content = replace(content, '000100000002', '000100000009') WHERE seq = 2"),
    ] {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        store.append((1..4).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
        assert_eq!(store.check().await.unwrap().fault_count, 0);
        meddle(dir.path(), statement).await;
        let found = store.check().await.unwrap();
        assert_eq!(found.fault_count, 1, "{statement}: {found:?}");
        let told = found.faults[0].to_string();
        assert!(told.contains("(row 2)") && told.contains(column), "{statement}: {found:?}");
    }
}

#[tokio::test]
async fn a_damaged_recording_is_found() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let hash = store.put_clip(b"sound".to_vec()).await.unwrap();
    std::fs::write(dir.path().join("clips").join(hash.as_str()), b"s0und").unwrap();
    let found = store.check().await.unwrap();
    assert_eq!((found.clips, found.fault_count), (0, 1));
    assert!(found.faults[0].to_string().contains(hash.as_str()), "{found:?}");
}
