//! A notebook and an export written before fields and kinds got today's names are still read, and are the same events.

use crate::common;

use sayso_model::{Event, Kind};
use sayso_store::{Appended, Format, ImportOptions, Store};

/// One event of every kind, as an earlier version exported them.
const EXPORT: &str = include_str!("../earlier/export.jsonl");

/// The same events in a notebook of that version.
const NOTEBOOK: &[u8] = include_bytes!("../earlier/sayso.db");

fn earlier_events() -> Vec<Event> {
    EXPORT.lines().map(|line| serde_json::from_str(line).unwrap()).collect()
}

async fn earlier_notebook() -> (tempfile::TempDir, Store) {
    let dir = tempfile::tempdir().unwrap();
    std::fs::write(dir.path().join("sayso.db"), NOTEBOOK).unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    (dir, store)
}

#[test]
fn the_export_has_every_kind_of_its_time_under_the_names_of_its_time() {
    for name in
        ["household_card", "learner_card", "teacher_card", "\"by\":\"learner\"", "\"learners\":", "\"teacher\":"]
    {
        assert!(EXPORT.contains(name), "{name}");
    }
    // Pictures, lessons, consent, what coach and home say, plans of one's own and aims ticked came after it.
    let later = [
        Kind::PictureCard,
        Kind::LessonRead,
        Kind::ConsentGiven,
        Kind::ConsentTakenBack,
        Kind::Proposal,
        Kind::ProposalAnswer,
        Kind::OwnPlan,
        Kind::AimDone,
    ];
    for kind in Kind::ALL.iter().filter(|kind| !later.contains(kind)) {
        let name = kind.earlier_name().unwrap_or(kind.name());
        assert!(EXPORT.contains(&format!("\"kind\":\"{name}\"")), "{name}");
    }
}

#[tokio::test]
async fn an_earlier_notebook_opens_with_all_its_events() {
    let (_dir, store) = earlier_notebook().await;
    let events = earlier_events();
    let story = store.story(events[0].home).await.unwrap();
    assert_eq!(story.ledger().len(), events.len());
    for event in &events {
        assert_eq!(story.ledger().first(event.id), Some(event));
    }
    assert!(story.home().is_some() && !story.animals().is_empty() && !story.people().is_empty());
    assert!(store.check().await.unwrap().faults.is_empty());
}

#[tokio::test]
async fn the_same_event_under_todays_names_is_no_second_one() {
    let (_dir, store) = earlier_notebook().await;
    let events = earlier_events();
    for (event, line) in events.iter().zip(EXPORT.lines()) {
        let today = serde_json::to_string(event).unwrap();
        for name in ["\"household\":", "\"learner\":", "\"teacher\":", "\"learners\":", "_card\",\"learner"] {
            assert!(!today.contains(name), "{today}");
        }
        assert_ne!(today, line, "written anew under today's names");
    }
    let all = store.append(events).await.unwrap();
    assert!(all.iter().all(|a| *a == Appended::Duplicate), "{all:?}");
}

#[tokio::test]
async fn an_earlier_export_is_imported_once_and_a_second_time_not_again() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let options = ImportOptions { format: Format::JsonLines, home: None };
    let preview = store.preview(EXPORT.as_bytes(), &options).await.unwrap();
    assert!(preview.problems.is_empty(), "{:?}", preview.problems);
    assert_eq!(preview.later.len(), 0);
    let done = store.commit(preview, sayso_store::Others::Refuse).await.unwrap();
    assert_eq!((done.new, done.duplicates), (EXPORT.lines().count(), 0));
    let again = store.preview(EXPORT.as_bytes(), &options).await.unwrap();
    let again = store.commit(again, sayso_store::Others::Refuse).await.unwrap();
    assert_eq!((again.new, again.duplicates), (0, EXPORT.lines().count()));
}

#[tokio::test]
async fn a_table_by_hand_means_the_same_events_under_either_names() {
    let earlier = "kind,happened_at,household_card.zone,name,species,role,says,learner,word,by,learners\n\
        household_card,2026-01-01T00:00:00Z,Asia/Tokyo,Home,,,,,,,\n\
        learner_card,2026-01-01T00:00:00Z,,Momo,cat,,,,,,\n\
        teacher_card,2026-01-01T00:00:00Z,,Kim,,household,,,,,\n\
        word_card,2026-01-01T00:00:00Z,,,,,walk,,,,Momo\n\
        press,2026-01-02 18:30,,,,,,Momo,walk,learner,\n\
        press,2026-01-02 18:40,,,,,,Momo,walk,teacher,\n";
    let today = earlier.replace("household", "home").replace("learner", "animal").replace("teacher", "person");
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let options = ImportOptions { format: Format::Csv, home: Some(common::home()) };
    let first = store.preview(earlier.as_bytes(), &options).await.unwrap();
    assert!(first.problems.is_empty(), "{:?}", first.problems);
    assert_eq!(store.commit(first, sayso_store::Others::TakeIn).await.unwrap().new, 6);
    let second = store.preview(today.as_bytes(), &options).await.unwrap();
    assert!(second.problems.is_empty(), "{:?}", second.problems);
    let done = store.commit(second, sayso_store::Others::TakeIn).await.unwrap();
    assert_eq!((done.new, done.duplicates), (0, 6));
}
