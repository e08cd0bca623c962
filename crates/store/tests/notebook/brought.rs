//! Files that somebody brings: held for a while, looked at, and taken in as they were looked at.

use crate::common::*;
use sayso_model::*;
use sayso_store::{FileKind, Look, Others, Restored, Store, StoreError, TakenIn};

#[tokio::test]
async fn looking_at_a_backup_says_what_restoring_it_does_and_stores_nothing() {
    let dir = tempfile::tempdir().unwrap();
    let (here, there) =
        (Store::open(&dir.path().join("here")).await.unwrap(), Store::open(&dir.path().join("there")).await.unwrap());
    let press = |n, word| event(n, "2026-03-01T10:00:00Z", press(word));
    here.append(vec![press(1, 7), press(2, 7)]).await.unwrap();
    there.append(vec![press(1, 7), press(2, 8), press(3, 7)]).await.unwrap();
    here.put_clip(b"known".to_vec()).await.unwrap();
    there.put_clip(b"known".to_vec()).await.unwrap();
    there.put_clip(b"new".to_vec()).await.unwrap();
    let backup = there.held_backup().await.unwrap();
    assert_eq!(FileKind::of(backup.path(), "").unwrap(), FileKind::Backup);

    let before = here.revision().await.unwrap();
    let look = here.look_at(backup.path(), FileKind::Backup).await.unwrap();
    let Look::Backup(seen) = &look else { panic!("{look:?}") };
    assert_eq!((seen.new, seen.known, seen.conflicts.len(), seen.clips_new, seen.clips_known), (1, 1, 1, 1, 1));
    assert_eq!((here.revision().await.unwrap(), here.clips().await.unwrap().len()), (before, 1));

    let TakenIn::Backup(done) = here.take_in(backup.path(), look.clone(), Others::Refuse).await.unwrap() else {
        panic!("a backup")
    };
    assert_eq!(done, *seen);
    let again = here.look_at(backup.path(), FileKind::Backup).await.unwrap();
    let Look::Backup(again) = again else { panic!("a backup") };
    assert_eq!((again.new, again.known, again.clips_new, again.clips_known), (0, 2, 0, 2));
}

#[tokio::test]
async fn another_homes_backup_is_looked_at_but_not_restored_unasked() {
    let dir = tempfile::tempdir().unwrap();
    let (here, there) =
        (Store::open(&dir.path().join("here")).await.unwrap(), Store::open(&dir.path().join("there")).await.unwrap());
    here.append(vec![event(1, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    let stranger = Event { home: HomeId(id(0xA1)), ..event(2, "2026-03-01T10:00:00Z", press(7)) };
    there.append(vec![stranger]).await.unwrap();
    let backup = there.held_backup().await.unwrap();
    let look = here.look_at(backup.path(), FileKind::Backup).await.unwrap();
    assert_eq!(look.others().into_values().map(|share| share.events).collect::<Vec<_>>(), [1]);
    let refused = here.take_in(backup.path(), look.clone(), Others::Refuse).await;
    assert!(matches!(refused, Err(StoreError::OtherHome { .. })), "{refused:?}");
    let taken = here.take_in(backup.path(), look, Others::TakeIn).await.unwrap();
    assert!(matches!(taken, TakenIn::Backup(Restored { new: 1, .. })), "{taken:?}");
}

#[tokio::test]
async fn a_held_file_is_gone_once_it_is_let_go_and_what_was_in_it_can_still_be_read() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let mut held = store.hold_file().unwrap();
    held.write(b"kind,").unwrap();
    held.write(b"happened_at\n").unwrap();
    let path = held.path().to_owned();
    assert_eq!(
        FileKind::of(&path, "diary.txt").map_err(|e| e.to_string()).unwrap_err().split(' ').next(),
        Some("diary.txt")
    );
    let mut file = held.into_file().unwrap();
    assert!(!path.exists());
    let mut text = String::new();
    std::io::Read::read_to_string(&mut file, &mut text).unwrap();
    assert_eq!(text, "kind,happened_at\n");
}
