//! What append promises: one event once, kept, and the story with it.

use crate::common::*;
use sayso_model::*;
use sayso_store::{Appended, Revision, Store};

#[tokio::test]
async fn an_event_is_stored_once_and_found_again_after_reopening() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    assert_eq!(store.home().await.unwrap(), None);
    let first = event(1, "2026-03-01T10:00:00Z", press(7));
    let other = Event { animal: None, ..first.clone() };
    let out = store.append(vec![first.clone(), first.clone(), other.clone()]).await.unwrap();
    assert_eq!(out, [Appended::New, Appended::Duplicate, Appended::Conflict]);
    assert_eq!(store.append(vec![first.clone()]).await.unwrap(), [Appended::Duplicate]);
    assert_eq!(store.append(vec![other]).await.unwrap(), [Appended::Conflict]);
    store.close().await.unwrap();

    let store = Store::open(dir.path()).await.unwrap();
    assert_eq!(store.home().await.unwrap(), Some(home()));
    let events = store.events(Revision(0), 10).await.unwrap();
    assert_eq!(events.len(), 1);
    assert_eq!(events[0].event, first);
    assert_eq!(store.revision().await.unwrap(), events[0].at);
    let story = store.story(home()).await.unwrap();
    assert_eq!(story.of::<Press>(rex()).count(), 1);
}

#[tokio::test]
async fn an_unsound_event_is_refused_with_its_field_and_the_others_are_stored() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let bad = Event { animal: None, ..event(1, "2026-03-01T10:00:00Z", Leaving { session: SessionId(id(9)) }) };
    let good = event(2, "2026-03-01T10:00:01Z", press(7));
    let out = store.append(vec![bad, good]).await.unwrap();
    assert_eq!(out[1], Appended::New);
    match &out[0] {
        Appended::Refused(problems) => assert_eq!(problems.0[0].field, "animal"),
        other => panic!("{other:?}"),
    }
    assert_eq!(store.events(Revision(0), 10).await.unwrap().len(), 1);
}

#[tokio::test]
async fn a_story_keeps_up_with_corrections_withdrawals_and_other_handles_on_the_file() {
    let dir = tempfile::tempdir().unwrap();
    let (one, two) = (Store::open(dir.path()).await.unwrap(), Store::open(dir.path()).await.unwrap());
    let a = event(1, "2026-03-01T10:00:00Z", press(7));
    let b = event(2, "2026-03-01T11:00:00Z", press(7));
    one.append(vec![a.clone(), b.clone()]).await.unwrap();
    let early = one.story(home()).await.unwrap();
    assert_eq!(early.of::<Press>(rex()).count(), 2);
    // The amendments come by another handle, and before the story is asked for again.
    two.append(vec![
        event(3, "2026-03-02T10:00:00Z", withdrawal(&a)),
        event(4, "2026-03-02T10:00:00Z", correction(&b, press(8))),
    ])
    .await
    .unwrap();
    let late = one.story(home()).await.unwrap();
    let words: Vec<_> = late.of::<Press>(rex()).map(|f| f.part.word).collect();
    assert_eq!(words, [WordId(id(8))]);
    // A reader of the story as it was still has it as it was.
    assert_eq!(early.of::<Press>(rex()).count(), 2);
    assert_eq!(one.check().await.unwrap().fault_count, 0);
}
