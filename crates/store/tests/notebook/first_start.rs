//! Whatever a first start was killed in, the folder opens afterwards; and what is not ours is still refused.

use crate::common::*;
use sayso_store::{Appended, Store, StoreError};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode};
use sqlx::{ConnectOptions, Connection, SqliteConnection};
use std::path::Path;

/// The list of changes to the schema, as the migrator makes it first of all.
const LIST: &str = "CREATE TABLE _sqlx_migrations (version BIGINT PRIMARY KEY, description TEXT NOT NULL, \
                    installed_on TIMESTAMP NOT NULL DEFAULT CURRENT_TIMESTAMP, success BOOLEAN NOT NULL, \
                    checksum BLOB NOT NULL, execution_time BIGINT NOT NULL)";

async fn file(dir: &Path, journal: SqliteJournalMode) -> SqliteConnection {
    let options = SqliteConnectOptions::new().filename(dir.join("sayso.db")).create_if_missing(true);
    options.journal_mode(journal).connect().await.unwrap()
}

async fn opens(dir: &Path) {
    let store = Store::open(dir).await.unwrap();
    assert_eq!(store.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap(), [Appended::New]);
    assert_eq!(store.check().await.unwrap().fault_count, 0);
    store.close().await.unwrap();
    let names: Vec<_> = std::fs::read_dir(dir).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert!(names.iter().all(|n| n == "sayso.db" || n == "sayso.lock"), "{names:?}");
}

#[tokio::test]
async fn every_state_a_killed_first_start_can_leave_is_finished() {
    let id = uuid::Uuid::now_v7();
    for state in
        ["folder", "lock", "aside, empty", "aside, half", "empty file", "list", "list in the journal", "first change"]
    {
        let dir = tempfile::tempdir().unwrap();
        let at = |name: &str| dir.path().join(name);
        match state {
            "lock" => std::fs::write(at("sayso.lock"), "").unwrap(),
            "aside, empty" => std::fs::write(at(&format!(".sayso.db.{id}.sayso-part")), "").unwrap(),
            "aside, half" => {
                std::fs::write(at(&format!(".sayso.db.{id}.sayso-part")), [7; 5_000]).unwrap();
                std::fs::write(at(&format!(".sayso.db.{id}.sayso-part-journal")), [7; 512]).unwrap();
            }
            // As earlier versions left it, which made the file under its name from the start.
            "empty file" => std::fs::write(at("sayso.db"), "").unwrap(),
            "list" => {
                let mut db = file(dir.path(), SqliteJournalMode::Delete).await;
                sqlx::raw_sql(LIST).execute(&mut db).await.unwrap();
                db.close().await.unwrap();
            }
            "list in the journal" => {
                let mut db = file(dir.path(), SqliteJournalMode::Wal).await;
                sqlx::raw_sql(LIST).execute(&mut db).await.unwrap();
                // A copy of the files as they are while open is what a kill leaves.
                let copy = tempfile::tempdir().unwrap();
                for name in ["sayso.db", "sayso.db-wal"] {
                    std::fs::copy(at(name), copy.path().join(name)).unwrap();
                }
                assert!(std::fs::metadata(at("sayso.db-wal")).unwrap().len() > 0);
                opens(copy.path()).await;
                db.close().await.unwrap();
            }
            "first change" => {
                Store::open(dir.path()).await.unwrap().close().await.unwrap();
                let mut db = file(dir.path(), SqliteJournalMode::Delete).await;
                // Back to where only the first change had been made.
                let back = "DELETE FROM _sqlx_migrations WHERE version > 1";
                sqlx::query(back).execute(&mut db).await.unwrap();
                db.close().await.unwrap();
            }
            _ => {}
        }
        println!("{state}");
        opens(dir.path()).await;
    }
}

#[tokio::test]
async fn a_file_of_another_program_that_keeps_such_a_list_is_refused() {
    for more in
        ["CREATE TABLE recipes (name TEXT)", "INSERT INTO _sqlx_migrations VALUES (1, 'recipes', 0, 1, x'00', 0)"]
    {
        let dir = tempfile::tempdir().unwrap();
        let mut db = file(dir.path(), SqliteJournalMode::Delete).await;
        sqlx::raw_sql(LIST).execute(&mut db).await.unwrap();
        sqlx::query(more).execute(&mut db).await.unwrap();
        db.close().await.unwrap();
        let before = std::fs::read(dir.path().join("sayso.db")).unwrap();
        let refused = Store::open(dir.path()).await.unwrap_err();
        assert!(matches!(refused, StoreError::NotOurs(_)), "{more}: {refused}");
        assert_eq!(std::fs::read(dir.path().join("sayso.db")).unwrap(), before);
    }
}

#[tokio::test]
async fn a_notebook_whose_file_is_gone_is_not_begun_anew_over_what_is_left_of_it() {
    let dir = tempfile::tempdir().unwrap();
    std::fs::write(dir.path().join("sayso.db-wal"), [7; 4_096]).unwrap();
    let refused = Store::open(dir.path()).await.unwrap_err();
    assert!(refused.to_string().contains("sayso.db-wal"), "{refused}");
    assert!(dir.path().join("sayso.db-wal").exists() && !dir.path().join("sayso.db").exists());
}
