//! What the store says when the file is not what it should be, or cannot grow.

use crate::common::*;
use sayso_model::Remark;
use sayso_store::{Appended, Revision, Store, StoreError};
use sqlx::sqlite::SqliteConnectOptions;
use sqlx::{ConnectOptions, Connection, SqliteConnection};
use std::path::Path;

/// A plain connection to the file, as another program would open it.
async fn stranger(dir: &Path) -> SqliteConnection {
    SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap()
}

#[tokio::test]
async fn the_log_refuses_change_removal_and_replacement() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let one = event(1, "2026-03-01T10:00:00Z", press(7));
    store.append(vec![one.clone()]).await.unwrap();
    let mut db = stranger(dir.path()).await;
    for statement in ["UPDATE event SET content = '{}'", "DELETE FROM event", "UPDATE event SET seq = 9"] {
        let refused = sqlx::query(statement).execute(&mut db).await.unwrap_err();
        assert!(refused.to_string().contains("append-only"), "{statement}: {refused}");
    }
    for seq in ["", "seq, "] {
        let statement = format!(
            "INSERT OR REPLACE INTO event ({seq}id, household, kind, content) \
             SELECT {seq}id, household, kind, '{{}}' FROM event"
        );
        sqlx::query(sqlx::AssertSqlSafe(statement)).execute(&mut db).await.unwrap();
    }
    assert_eq!(store.events(Revision(0), 9).await.unwrap()[0].event, one);
}

#[tokio::test]
async fn a_file_of_a_newer_version_is_left_alone() {
    let dir = tempfile::tempdir().unwrap();
    Store::open(dir.path()).await.unwrap().close().await.unwrap();
    let mut db = stranger(dir.path()).await;
    sqlx::query(
        "INSERT INTO _sqlx_migrations (version, description, success, checksum, execution_time) \
         VALUES (999, 'later', 1, x'00', 0)",
    )
    .execute(&mut db)
    .await
    .unwrap();
    db.close().await.unwrap();
    let refused = Store::open(dir.path()).await.unwrap_err();
    assert!(matches!(refused, StoreError::Newer { found: 999, .. }), "{refused}");
    assert!(refused.to_string().contains("update this program"));
}

#[tokio::test]
async fn what_is_no_notebook_is_refused_and_not_touched() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("sayso.db");
    let text = "a shopping list, and a long one, for it has to fill more than a header. ".repeat(20);
    std::fs::write(&path, &text).unwrap();
    let refused = Store::open(dir.path()).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotADatabase(_)), "{refused}");
    assert_eq!(std::fs::read_to_string(&path).unwrap(), text);

    std::fs::remove_file(&path).unwrap();
    let other = SqliteConnectOptions::new().filename(&path).create_if_missing(true);
    let mut db = other.connect().await.unwrap();
    sqlx::query("CREATE TABLE recipes (name TEXT)").execute(&mut db).await.unwrap();
    db.close().await.unwrap();
    let before = std::fs::read(&path).unwrap();
    let refused = Store::open(dir.path()).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotOurs(_)), "{refused}");
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[tokio::test]
async fn a_damaged_file_is_told_at_opening() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    store.append((0..500).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    store.close().await.unwrap();
    let path = dir.path().join("sayso.db");
    let mut bytes = std::fs::read(&path).unwrap();
    let middle = bytes.len() / 2 / 4096 * 4096;
    bytes[middle..middle + 4096].fill(0x5a);
    std::fs::write(&path, bytes).unwrap();
    let refused = Store::open(dir.path()).await.unwrap_err();
    assert!(matches!(refused, StoreError::Corrupt { .. }), "{refused}");
    assert!(refused.to_string().contains("restore"), "{refused}");
}

#[tokio::test]
async fn a_folder_that_cannot_be_made_is_told() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("file");
    std::fs::write(&file, "x").unwrap();
    let refused = Store::open(&file.join("below")).await.unwrap_err();
    assert!(matches!(refused, StoreError::Unwritable { .. }), "{refused}");
}

#[tokio::test]
async fn a_full_disk_is_an_error_loses_nothing_acknowledged_and_can_be_overcome() {
    let dir = tempfile::tempdir().unwrap();
    Store::open(dir.path()).await.unwrap().close().await.unwrap();
    // A bound on the size of the file stands in for the end of the disk: the same result code.
    let store = Store::open_up_to(dir.path(), 800_000, &|_| {}).await.unwrap();
    let text = "x".repeat(1_900);
    let mut stored = Vec::new();
    let full = loop {
        let n = stored.len() as u128;
        let remark = Remark { text: sayso_model::Note::new(&text).unwrap() };
        let one = event(n, "2026-03-01T10:00:00Z", remark);
        match store.append(vec![one.clone()]).await {
            Ok(out) => {
                assert_eq!(out, [Appended::New]);
                stored.push(one);
            }
            Err(error) => break error,
        }
        assert!(stored.len() < 2_000, "the bound was never met");
    };
    assert!(matches!(full, StoreError::DiskFull), "{full}");
    assert!(stored.len() > 50);
    // Still readable, and still refusing rather than failing in another way.
    assert!(matches!(
        store.append(vec![event(5_000, "2026-03-01T10:00:00Z", press(7))]).await,
        Ok(_) | Err(StoreError::DiskFull)
    ));
    store.close().await.unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let found: Vec<_> = store.events(Revision(0), 5_000).await.unwrap().into_iter().map(|l| l.event).collect();
    assert_eq!(found[..stored.len()], stored);
    assert_eq!(store.append(vec![event(6_000, "2026-03-01T10:00:00Z", press(7))]).await.unwrap(), [Appended::New]);
    assert_eq!(store.check().await.unwrap().fault_count, 0);
}
