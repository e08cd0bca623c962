//! Who may read what lies on the disk, and what killed processes left there.
#![cfg(unix)]

use crate::common::*;
use sayso_model::EventId;
use sayso_store::{Format, Store};
use std::os::unix::fs::PermissionsExt;
use std::path::{Path, PathBuf};

/// Every file and folder below, with its rights.
fn rights(dir: &Path) -> Vec<(PathBuf, bool, u32)> {
    let mut found = vec![];
    for entry in std::fs::read_dir(dir).unwrap() {
        let path = entry.unwrap().path();
        let about = std::fs::metadata(&path).unwrap();
        found.push((path.clone(), about.is_dir(), about.permissions().mode() & 0o777));
        if about.is_dir() {
            found.extend(rights(&path));
        }
    }
    found
}

fn let_all_read(path: &Path, mode: u32) {
    std::fs::set_permissions(path, std::fs::Permissions::from_mode(mode)).unwrap();
}

#[tokio::test]
async fn only_the_owner_may_read_a_notebook_its_backups_and_exports() {
    let outside = tempfile::tempdir().unwrap();
    let dir = outside.path().join("below").join("notebook");
    let store = Store::open(&dir).await.unwrap();
    store.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    store.put_clip(b"sound".to_vec()).await.unwrap();
    store.put_snippet(EventId(id(1)), vec![1], at("2026-03-01T10:00:00Z")).await.unwrap();
    store.backup(&outside.path().join("copy.sayso-backup")).await.unwrap();
    store.export_to(Format::Csv, &outside.path().join("all.csv")).await.unwrap();
    let found = rights(outside.path());
    assert!(found.len() >= 9, "{found:?}");
    for (path, folder, mode) in found {
        assert_eq!(mode, if folder { 0o700 } else { 0o600 }, "{}", path.display());
    }
}

#[tokio::test]
async fn a_notebook_that_others_could_read_is_closed_to_them_when_opened() {
    let outside = tempfile::tempdir().unwrap();
    let dir = outside.path().join("notebook");
    Store::open(&dir).await.unwrap().close().await.unwrap();
    let_all_read(&dir, 0o755);
    let_all_read(&dir.join("sayso.db"), 0o644);
    let store = Store::open(&dir).await.unwrap();
    store.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    for (path, folder, mode) in rights(outside.path()) {
        assert_eq!(mode, if folder { 0o700 } else { 0o600 }, "{}", path.display());
    }
    // A folder with something else in it that others may read is shared on purpose; only our own files are closed.
    let shared = outside.path().join("shared");
    std::fs::create_dir(&shared).unwrap();
    std::fs::write(shared.join("menu.txt"), "x").unwrap();
    let_all_read(&shared.join("menu.txt"), 0o644);
    let_all_read(&shared, 0o755);
    std::fs::create_dir(shared.join("clips")).unwrap();
    let_all_read(&shared.join("clips"), 0o755);
    for _ in 0..2 {
        Store::open(&shared).await.unwrap().close().await.unwrap();
        assert_eq!(std::fs::metadata(&shared).unwrap().permissions().mode() & 0o777, 0o755);
        assert_eq!(std::fs::metadata(shared.join("sayso.db")).unwrap().permissions().mode() & 0o777, 0o600);
        assert_eq!(std::fs::metadata(shared.join("clips")).unwrap().permissions().mode() & 0o777, 0o700);
    }
}

#[tokio::test]
async fn leftovers_are_cleared_away_at_start_and_beside_a_new_backup() {
    let outside = tempfile::tempdir().unwrap();
    let (dir, shelf) = (outside.path().join("notebook"), outside.path().join("backups"));
    std::fs::create_dir(&shelf).unwrap();
    let store = Store::open(&dir).await.unwrap();
    store.put_clip(b"sound".to_vec()).await.unwrap();
    let id = uuid::Uuid::now_v7();
    let mut leftovers = Vec::new();
    for folder in [&dir, &dir.join("clips"), &shelf] {
        leftovers.push(folder.join(format!(".some.{id}.sayso-part")));
        std::fs::write(leftovers.last().unwrap(), [0; 1_000]).unwrap();
    }
    let stranger = shelf.join("film.part");
    std::fs::write(&stranger, "x").unwrap();
    Store::open(&dir).await.unwrap();
    assert_eq!(leftovers.iter().map(|p| p.exists()).collect::<Vec<_>>(), [false, false, true], "only in our places");
    store.backup(&shelf.join("one.sayso-backup")).await.unwrap();
    assert!(!leftovers[2].exists() && stranger.exists());
}

#[tokio::test]
async fn an_export_is_never_written_over_a_file_and_leaves_nothing_half_done() {
    let outside = tempfile::tempdir().unwrap();
    let store = Store::open(&outside.path().join("notebook")).await.unwrap();
    store.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    let to = outside.path().join("all.jsonl");
    assert_eq!(store.export_to(Format::JsonLines, &to).await.unwrap(), 1);
    let before = std::fs::read(&to).unwrap();
    let refused = store.export_to(Format::JsonLines, &to).await.unwrap_err();
    assert!(matches!(refused, sayso_store::StoreError::Exists(_)), "{refused}");
    assert_eq!(std::fs::read(&to).unwrap(), before);
    assert_eq!(std::fs::read_dir(outside.path()).unwrap().count(), 2);
}
