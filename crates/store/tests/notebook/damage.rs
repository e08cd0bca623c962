//! A damaged backup is never taken for a sound one: not with one bit turned over, not cut short.

use crate::common::*;
use sayso_store::{Others, Revision, Store, StoreError};
use sqlx::sqlite::{SqliteConnectOptions, SqliteJournalMode};
use sqlx::{ConnectOptions, Connection};
use std::path::{Path, PathBuf};

const EVENTS: u128 = 24;
/// Bytes from one turned bit to the next; odd, so that over the file every bit of a byte has its turn.
const STRIDE: usize = 23;

/// A store and a backup of it.
async fn backed_up(dir: &Path) -> (Store, PathBuf) {
    let store = Store::open(&dir.join("live")).await.unwrap();
    store.append((0..EVENTS).map(|n| event(n, "2026-03-01T10:00:00Z", press(n % 5))).collect()).await.unwrap();
    store.put_clip(b"one recording".to_vec()).await.unwrap();
    store.put_clip(vec![9; 3_000]).await.unwrap();
    let file = dir.join("good.sayso-backup");
    store.backup(&file).await.unwrap();
    (store, file)
}

#[tokio::test]
async fn no_bit_turned_over_gets_an_altered_event_accepted() {
    let dir = tempfile::tempdir().unwrap();
    let (store, good) = backed_up(dir.path()).await;
    let before = store.revision().await.unwrap();
    let bytes = std::fs::read(&good).unwrap();
    let bad = dir.path().join("bad");
    let (mut tried, mut refused, mut recordings) = (0, 0, 0);
    for (n, at) in (0..bytes.len()).step_by(STRIDE).enumerate() {
        let mut hurt = bytes.clone();
        hurt[at] ^= 1 << (n % 8);
        std::fs::write(&bad, hurt).unwrap();
        tried += 1;
        // All of it is here already, so whatever is new or in conflict was altered.
        match store.restore(&bad, Others::Refuse).await {
            Err(_) => refused += 1,
            Ok(done) => {
                assert_eq!(
                    (done.new, done.known, done.conflicts.len()),
                    (0, EVENTS as usize, 0),
                    "byte {at}: {done:?}"
                );
                assert_eq!((done.clips_new, done.clips_known + done.clips_damaged), (0, 2), "byte {at}: {done:?}");
                recordings += done.clips_damaged;
            }
        }
        assert_eq!(store.revision().await.unwrap(), before, "byte {at}");
    }
    println!("{tried} bits turned over: {refused} backups refused, {recordings} recordings left out as damaged");
    assert!(tried > 2_000 && refused > 300 && recordings > 10);
}

#[tokio::test]
async fn a_backup_cut_short_stores_nothing() {
    let dir = tempfile::tempdir().unwrap();
    let (_, good) = backed_up(dir.path()).await;
    let bytes = std::fs::read(&good).unwrap();
    let cut = dir.path().join("cut");
    let empty = Store::open(&dir.path().join("empty")).await.unwrap();
    let pages = (0..bytes.len()).step_by(4_096);
    for length in pages.flat_map(|n| [n, n + 1, n + 4_095]).chain([bytes.len() - 1]) {
        std::fs::write(&cut, &bytes[..length]).unwrap();
        empty.restore(&cut, Others::Refuse).await.unwrap_err();
        assert_eq!(empty.revision().await.unwrap(), Revision(0), "{length} bytes");
        assert!(empty.clips().await.unwrap().is_empty());
    }
    assert_eq!(empty.restore(&good, Others::Refuse).await.unwrap().new, EVENTS as usize);
}

/// Changes a copy of a backup as a stranger could.
async fn changed(good: &Path, statements: &'static str) -> PathBuf {
    let copy = good.with_extension("changed");
    std::fs::copy(good, &copy).unwrap();
    let options = SqliteConnectOptions::new().filename(&copy).journal_mode(SqliteJournalMode::Delete);
    let mut db = options.connect().await.unwrap();
    sqlx::raw_sql(statements).execute(&mut db).await.unwrap();
    db.close().await.unwrap();
    copy
}

const AS_BEFORE_DIGESTS: &str = "DROP TABLE digest; DELETE FROM _sqlx_migrations WHERE version > 2;";

#[tokio::test]
async fn a_backup_of_an_earlier_version_is_read_and_said_to_carry_no_digest() {
    let dir = tempfile::tempdir().unwrap();
    let (_, good) = backed_up(dir.path()).await;
    let empty = Store::open(&dir.path().join("empty")).await.unwrap();
    let old = changed(&good, AS_BEFORE_DIGESTS).await;
    let done = empty.restore(&old, Others::Refuse).await.unwrap();
    assert_eq!((done.new, done.clips_new, done.digest), (EVENTS as usize, 2, false));
    assert!(empty.restore(&good, Others::Refuse).await.unwrap().digest);
}

#[tokio::test]
async fn rows_that_contradict_themselves_or_the_digest_are_refused() {
    let dir = tempfile::tempdir().unwrap();
    let (_, good) = backed_up(dir.path()).await;
    let empty = Store::open(&dir.path().join("empty")).await.unwrap();
    for (statements, part) in [
        ("DROP TABLE digest;", "digest is missing"),
        ("UPDATE digest SET sha256 = 'x';", "digest"),
        ("DELETE FROM digest;", "digest"),
        ("DELETE FROM clip WHERE length(bytes) < 100;", "digest"),
        ("DROP TRIGGER event_is_never_removed; DELETE FROM event WHERE seq = 3;", "digest"),
        (
            "DROP TRIGGER event_is_never_changed; UPDATE event SET content = replace(content, 'animal\"', 'person\"');",
            "digest",
        ),
        (
            "DROP TRIGGER event_is_never_changed; UPDATE event SET kind = 'look' WHERE seq = 3; \
             DROP TABLE digest; DELETE FROM _sqlx_migrations WHERE version > 2;",
            "(row 3): its column kind",
        ),
    ] {
        let refused = empty.restore(&changed(&good, statements).await, Others::Refuse).await.unwrap_err();
        assert!(matches!(refused, StoreError::BadBackup { .. }), "{statements}: {refused}");
        assert!(refused.to_string().contains(part), "{statements}: {refused}");
        assert_eq!(empty.revision().await.unwrap(), Revision(0));
    }
}
