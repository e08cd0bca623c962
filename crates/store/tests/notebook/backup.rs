//! Backups: whole, checked, never over another file; restoring adds and never takes away.

use crate::common::*;
use sayso_model::*;
use sayso_store::{Others, Revision, Store, StoreError};

async fn ids(store: &Store) -> Vec<EventId> {
    store.events(Revision(0), usize::MAX).await.unwrap().into_iter().map(|l| l.event.id).collect()
}

#[tokio::test]
async fn a_backup_taken_while_events_arrive_is_whole_and_restores_into_an_empty_store() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(&dir.path().join("live")).await.unwrap();
    store.append((0..500).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    let clip = store.put_clip(b"a recording".to_vec()).await.unwrap();
    let writer = {
        let store = store.clone();
        tokio::spawn(async move {
            for n in 500..800 {
                store.append(vec![event(n, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
            }
        })
    };
    let file = dir.path().join("one.sayso-backup");
    let made = store.backup(&file).await.unwrap();
    writer.await.unwrap();
    assert!((500..=800).contains(&made.events), "{made:?}");
    assert_eq!(made.clips, 1);
    assert!(matches!(store.backup(&file).await, Err(StoreError::Exists(_))));
    let left: Vec<_> = std::fs::read_dir(dir.path()).unwrap().map(|e| e.unwrap().file_name()).collect();
    assert_eq!(left.len(), 2, "no part files: {left:?}");

    let other = Store::open(&dir.path().join("other")).await.unwrap();
    let restored = other.restore(&file, Others::Refuse).await.unwrap();
    assert_eq!((restored.new, restored.known, restored.conflicts.len()), (made.events, 0, 0));
    assert_eq!(other.clip(&clip).await.unwrap().unwrap(), b"a recording");
    let wanted = ids(&store).await;
    assert_eq!(ids(&other).await, wanted[..made.events], "the same events in the same order");
    assert_eq!(other.home().await.unwrap(), Some(home()));
    assert_eq!(other.check().await.unwrap().fault_count, 0);
}

#[tokio::test]
async fn restoring_is_a_union_while_another_handle_has_the_store_open() {
    let dir = tempfile::tempdir().unwrap();
    let (live, file) = (dir.path().join("live"), dir.path().join("old.sayso-backup"));
    let store = Store::open(&live).await.unwrap();
    let shared = event(1, "2026-03-01T10:00:00Z", press(7));
    store.append(vec![shared.clone()]).await.unwrap();
    let elsewhere = Store::open(&dir.path().join("elsewhere")).await.unwrap();
    let clash = event(2, "2026-03-01T10:00:00Z", press(8));
    let missing = event(3, "2026-03-01T10:00:00Z", press(7));
    elsewhere.append(vec![shared, clash, missing.clone()]).await.unwrap();
    elsewhere.backup(&file).await.unwrap();
    let mine = event(2, "2026-03-01T10:00:00Z", press(9));
    let later = event(4, "2026-03-01T10:00:00Z", press(7));
    store.append(vec![mine.clone(), later.clone()]).await.unwrap();
    assert_eq!(store.story(home()).await.unwrap().ledger().len(), 3);

    let second = Store::open(&live).await.unwrap();
    let restored = second.restore(&file, Others::Refuse).await.unwrap();
    assert_eq!((restored.new, restored.known), (1, 1));
    assert_eq!(restored.conflicts, [mine.id]);
    // The first handle sees it at the next question, and its own events are still there.
    let story = store.story(home()).await.unwrap();
    assert_eq!(story.ledger().len(), 4);
    assert_eq!(story.ledger().first(mine.id), Some(&mine));
    assert_eq!(story.ledger().first(missing.id), Some(&missing));
    let again = second.restore(&file, Others::Refuse).await.unwrap();
    assert_eq!((again.new, again.known, again.conflicts.len()), (0, 2, 1));
}

#[tokio::test]
async fn what_is_no_backup_is_refused_and_changes_nothing() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(&dir.path().join("live")).await.unwrap();
    store.append((0..300).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    let good = dir.path().join("good.sayso-backup");
    store.backup(&good).await.unwrap();
    let before = store.revision().await.unwrap();

    let missing = store.restore(&dir.path().join("nothing"), Others::Refuse).await.unwrap_err();
    assert!(matches!(missing, StoreError::BadBackup { .. }), "{missing}");
    let text = dir.path().join("text");
    std::fs::write(&text, "not a database, but long enough to look at it for a while. ".repeat(40)).unwrap();
    let refused = store.restore(&text, Others::Refuse).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotADatabase(_)), "{refused}");
    let itself = store.restore(&store.dir().join("sayso.db"), Others::Refuse).await.unwrap_err();
    assert!(itself.to_string().contains("itself"), "{itself}");
    // Cut short, as by a full stick; and with a page overwritten.
    let bytes = std::fs::read(&good).unwrap();
    let cut = dir.path().join("cut");
    std::fs::write(&cut, &bytes[..bytes.len() / 2]).unwrap();
    let hit = dir.path().join("hit");
    let mut hurt = bytes.clone();
    let middle = hurt.len() / 2 / 4096 * 4096;
    hurt[middle..middle + 4096].fill(0x5a);
    std::fs::write(&hit, hurt).unwrap();
    for bad in [cut, hit] {
        let refused = store.restore(&bad, Others::Refuse).await.unwrap_err();
        assert!(matches!(refused, StoreError::BadBackup { .. } | StoreError::Corrupt { .. }), "{refused}");
    }
    assert_eq!(store.revision().await.unwrap(), before);
    assert!(store.backup(&dir.path().join("no/such/folder/x")).await.is_err());
}

#[tokio::test]
async fn a_clip_is_stored_once_and_a_damaged_one_is_noticed() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    // The published example of SHA-256 (FIPS 180-4, "abc").
    let abc = sayso_store::ClipHash::of(b"abc");
    assert_eq!(abc.as_str(), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    let hash = store.put_clip(b"sound".to_vec()).await.unwrap();
    assert_eq!(store.put_clip(b"sound".to_vec()).await.unwrap(), hash);
    assert_eq!(store.clips().await.unwrap(), std::slice::from_ref(&hash));
    assert_eq!(store.clip(&hash).await.unwrap().unwrap(), b"sound");
    assert!("../../etc/passwd".parse::<sayso_store::ClipHash>().is_err());
    assert!(store.put_clip(Vec::new()).await.is_err());

    std::fs::write(dir.path().join("clips").join(hash.as_str()), b"s0und").unwrap();
    assert!(matches!(store.clip(&hash).await, Err(StoreError::BadClip { .. })));
    let made = store.backup(&dir.path().join("b.sayso-backup")).await.unwrap();
    assert_eq!(made.damaged_clips, std::slice::from_ref(&hash));
    // Storing the recording again heals it.
    store.put_clip(b"sound".to_vec()).await.unwrap();
    assert_eq!(store.clip(&hash).await.unwrap().unwrap(), b"sound");
}
