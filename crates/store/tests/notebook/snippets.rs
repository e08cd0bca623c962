//! Pieces of sound around unsure presses: kept, bounded, dropped.

use sayso_model::{EventId, Moment};
use sayso_store::{MOST_SNIPPET_BYTES, MOST_SNIPPETS, SNIPPET_DAYS, Store};
use std::time::{SystemTime, UNIX_EPOCH};
use uuid::Uuid;

fn now() -> Moment {
    Moment::clamped(SystemTime::now().duration_since(UNIX_EPOCH).unwrap().as_millis() as i64)
}

fn press(n: usize) -> EventId {
    EventId(Uuid::from_u128(n as u128 + 1))
}

#[tokio::test]
async fn a_piece_is_kept_until_it_is_dropped_or_old() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    assert_eq!(store.snippet(press(0)).await.unwrap(), None);
    store.drop_snippet(press(0)).await.unwrap();
    store.put_snippet(press(0), vec![1, 2], now()).await.unwrap();
    store.put_snippet(press(1), vec![3], now()).await.unwrap();
    assert_eq!(store.snippet(press(0)).await.unwrap(), Some(vec![1, 2]));
    store.drop_snippet(press(0)).await.unwrap();
    assert_eq!(store.snippets(now()).await.unwrap(), [press(1)]);
    let much_later = now().plus_seconds(SNIPPET_DAYS * 86_400.0 + 60.0);
    assert!(store.snippets(much_later).await.unwrap().is_empty());
    assert_eq!(store.snippet(press(1)).await.unwrap(), None);
}

#[tokio::test]
async fn there_are_never_too_many_or_too_large_ones() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    for n in 0..MOST_SNIPPETS + 5 {
        store.put_snippet(press(n), vec![0], now()).await.unwrap();
    }
    assert_eq!(store.snippets(now()).await.unwrap().len(), MOST_SNIPPETS);
    assert!(store.snippet(press(MOST_SNIPPETS + 4)).await.unwrap().is_some(), "the newest is among them");
    assert!(store.put_snippet(press(0), vec![], now()).await.is_err());
    assert!(store.put_snippet(press(0), vec![0; MOST_SNIPPET_BYTES + 1], now()).await.is_err());
}
