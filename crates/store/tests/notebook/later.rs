//! Events of a later version: kept as they are, said to be there, carried on, and in nobody's way.

use crate::common::*;
use sayso_model::{EventId, Press};
use sayso_store::{Format, ImportOptions, Others, Revision, Store, StoreError};
use sqlx::sqlite::SqliteConnectOptions;
use sqlx::{ConnectOptions, Connection};
use std::collections::BTreeMap;
use std::path::Path;

/// What a later version might write: a new kind, a new field, a new word.
fn later() -> Vec<(EventId, &'static str, String)> {
    let known = serde_json::to_string(&event(50, "2026-03-01T10:00:00Z", press(7))).unwrap();
    let with = |n: u128, old: &str, new: &str| {
        let id = event(n, "2026-03-01T10:00:00Z", press(7)).id;
        let json = known.replace(&event(50, "2026-03-01T10:00:00Z", press(7)).id.to_string(), &id.to_string());
        assert!(json.contains(old), "{json}");
        (id, json.replace(old, new))
    };
    let (a, new_kind) = with(51, "\"kind\":\"press\"", "\"kind\":\"hum\",\"pitch_hz\": 1.50e2");
    let (b, new_field) = with(52, "\"kind\":\"press\"", "\"kind\":\"press\",\"loudness\":3");
    let (c, new_word) = with(53, "\"by\":\"animal\"", "\"by\":\"visitor\"");
    vec![(a, "hum", new_kind), (b, "press", new_field), (c, "press", new_word)]
}

async fn connect(dir: &Path) -> sqlx::SqliteConnection {
    SqliteConnectOptions::new().filename(dir.join("sayso.db")).connect().await.unwrap()
}

/// A notebook with two presses and, written by a later version between them, three events.
async fn notebook(dir: &Path) -> Store {
    let store = Store::open(dir).await.unwrap();
    store.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    let mut db = connect(dir).await;
    for (id, kind, json) in later() {
        sqlx::query("INSERT INTO event (id, household, kind, content) VALUES ($1, $2, $3, $4)")
            .bind(id.0)
            .bind(home().0)
            .bind(kind)
            .bind(json)
            .execute(&mut db)
            .await
            .unwrap();
    }
    db.close().await.unwrap();
    store.append(vec![event(2, "2026-03-02T10:00:00Z", press(7))]).await.unwrap();
    store
}

async fn contents(dir: &Path) -> Vec<String> {
    let mut db = connect(dir).await;
    let found = sqlx::query_scalar("SELECT content FROM event ORDER BY seq").fetch_all(&mut db).await.unwrap();
    db.close().await.unwrap();
    found
}

fn kinds() -> BTreeMap<String, usize> {
    BTreeMap::from([("hum".to_owned(), 1), ("press".to_owned(), 2)])
}

#[tokio::test]
async fn they_are_counted_and_everything_else_goes_on() {
    let dir = tempfile::tempdir().unwrap();
    let store = notebook(dir.path()).await;
    let story = store.story(home()).await.unwrap();
    assert_eq!(story.of::<Press>(rex()).count(), 2);
    assert_eq!(store.not_understood(home()).await.unwrap(), kinds());
    assert_eq!(store.events(Revision(0), 9).await.unwrap().len(), 2);
    // One at a time, none is met twice or missed.
    let first = store.events(Revision(0), 1).await.unwrap();
    assert_eq!(store.events(first[0].at, 1).await.unwrap()[0].event.id, event(2, "2026-03-02T10:00:00Z", press(7)).id);
    let found = store.check().await.unwrap();
    assert_eq!((found.events, found.fault_count, found.later), (5, 0, kinds()));
    // A copy opened anew counts them once, however often it is asked.
    let again = Store::open(dir.path()).await.unwrap();
    again.story(home()).await.unwrap();
    again.append(vec![event(3, "2026-03-03T10:00:00Z", press(7))]).await.unwrap();
    assert_eq!(again.not_understood(home()).await.unwrap(), kinds());
}

#[tokio::test]
async fn backups_and_exports_carry_them_letter_for_letter() {
    let dir = tempfile::tempdir().unwrap();
    let store = notebook(&dir.path().join("one")).await;
    let wanted = contents(&dir.path().join("one")).await;
    let file = dir.path().join("copy.sayso-backup");
    assert_eq!(store.backup(&file).await.unwrap().events, 5);
    let two = Store::open(&dir.path().join("two")).await.unwrap();
    assert_eq!(two.restore(&file, Others::Refuse).await.unwrap().new, 5);
    assert_eq!(contents(&dir.path().join("two")).await, wanted);
    assert_eq!(two.restore(&file, Others::Refuse).await.unwrap().known, 5);
    assert_eq!(two.not_understood(home()).await.unwrap(), kinds());
    for (name, format) in [("three", Format::JsonLines), ("four", Format::Csv)] {
        let mut bytes = Vec::new();
        assert_eq!(store.export(format, &mut bytes).await.unwrap(), 5);
        let other = Store::open(&dir.path().join(name)).await.unwrap();
        let options = ImportOptions { format, home: None };
        let preview = other.preview(&bytes, &options).await.unwrap();
        let told: Vec<String> = preview.problems.iter().map(ToString::to_string).collect();
        assert_eq!((told, preview.new), (Vec::new(), 5), "{}", String::from_utf8_lossy(&bytes));
        assert_eq!(preview.later, kinds());
        other.commit(preview, Others::Refuse).await.unwrap();
        assert_eq!(contents(&dir.path().join(name)).await, wanted);
        let again = other.preview(&bytes, &options).await.unwrap();
        assert_eq!((again.new, again.duplicates, again.bad_rows), (0, 5, 0));
    }
}

#[tokio::test]
async fn what_is_written_by_hand_is_still_held_to_what_is_known() {
    let dir = tempfile::tempdir().unwrap();
    let store = notebook(dir.path()).await;
    let options = ImportOptions { format: Format::JsonLines, home: None };
    for (json, part) in [
        // No export leaves these out.
        (r#"{"happened_at":"2026-03-01T10:00:00Z","body":{"kind":"remark","text":"a","txet":"b"}}"#, "no such field"),
        (r#"{"happened_at":"2026-03-01T10:00:00Z","body":{"kind":"rmark","text":"a"}}"#, "one of:"),
    ] {
        let preview = store.preview(json.as_bytes(), &options).await.unwrap();
        assert!(preview.problems.iter().any(|p| p.to_string().contains(part)), "{:?}", preview.problems);
    }
    // A whole event in which everything is known, and something is wrong, is no event of a later version.
    let wrong = serde_json::to_string(&event(60, "2026-03-01T10:00:00Z", press(7))).unwrap();
    let wrong = wrong.replace("\"certainty\":1.0", "\"certainty\":7.0");
    let preview = store.preview(wrong.as_bytes(), &options).await.unwrap();
    assert_eq!((preview.new, preview.bad_rows), (0, 1), "{wrong}");
}

#[tokio::test]
async fn a_row_that_is_no_event_or_contradicts_itself_is_damage_and_named() {
    for (kind, content) in [("hum", "{\"kind\":"), ("look", later()[0].2.as_str())] {
        let dir = tempfile::tempdir().unwrap();
        let store = notebook(dir.path()).await;
        let mut db = connect(dir.path()).await;
        sqlx::query("INSERT INTO event (id, household, kind, content) VALUES ($1, $2, $3, $4)")
            .bind(id(0x99))
            .bind(home().0)
            .bind(kind)
            .bind(content)
            .execute(&mut db)
            .await
            .unwrap();
        let error = store.story(home()).await.unwrap_err();
        assert!(matches!(error, StoreError::Corrupt { .. }), "{error}");
        assert!(error.to_string().contains("(row 6)"), "{error}");
        assert_eq!(store.check().await.unwrap().fault_count, 1);
    }
}
