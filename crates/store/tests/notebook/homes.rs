//! Whose events a notebook holds: another home's never come in unseen.

use crate::common;
use crate::common::*;
use sayso_model::*;
use sayso_store::{Appended, Format, ImportOptions, Others, Store, StoreError};

fn away() -> HomeId {
    HomeId(id(0xA1))
}

fn named(home: HomeId, n: u128, name: &str) -> Event {
    let card = HomeCard { name: Label::new(name).unwrap(), ..home_card("UTC") };
    Event { home, animal: None, ..event(n, "2026-01-01T10:00:00Z", card) }
}

/// Home with one event; a file and a backup of another home with three.
async fn two(dir: &std::path::Path) -> (Store, Vec<u8>, std::path::PathBuf) {
    let other = Store::open(&dir.join("away")).await.unwrap();
    let press = |n| Event { home: away(), ..event(n, "2026-03-01T10:00:00Z", press(7)) };
    other.append(vec![named(away(), 101, "The Lane"), press(102), press(103)]).await.unwrap();
    let mut file = Vec::new();
    other.export(Format::JsonLines, &mut file).await.unwrap();
    let backup = dir.join("away.sayso-backup");
    other.backup(&backup).await.unwrap();
    let home = Store::open(&dir.join("home")).await.unwrap();
    home.append(vec![named(home_id(), 1, "Home")]).await.unwrap();
    (home, file, backup)
}

fn home_id() -> HomeId {
    common::home()
}

const OPTIONS: ImportOptions = ImportOptions { format: Format::JsonLines, home: None };

#[tokio::test]
async fn an_event_of_another_home_is_refused_and_the_others_are_stored() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    // The first event says whose notebook it is, also within one call.
    let foreign = Event { home: away(), ..event(2, "2026-03-01T10:00:00Z", press(7)) };
    let ours = event(1, "2026-03-01T10:00:00Z", press(7));
    let out =
        store.append(vec![ours.clone(), foreign.clone(), event(3, "2026-03-01T10:00:00Z", press(7))]).await.unwrap();
    assert_eq!((&out[0], &out[2]), (&Appended::New, &Appended::New));
    match &out[1] {
        Appended::Refused(problems) => {
            assert_eq!(problems.0[0].field, "home");
            assert!(problems.0[0].fault.to_string().contains(&away().to_string()), "{problems}");
        }
        other => panic!("{other:?}"),
    }
    store.close().await.unwrap();
    // Also by a writer that has not seen the log grow, and never by repetition.
    let store = Store::open(dir.path()).await.unwrap();
    for _ in 0..2 {
        assert!(matches!(store.append(vec![foreign.clone()]).await.unwrap()[0], Appended::Refused(_)));
    }
    assert_eq!(store.append(vec![ours]).await.unwrap(), [Appended::Duplicate]);
    assert_eq!(store.homes().await.unwrap(), [home_id()]);
}

#[tokio::test]
async fn an_import_names_the_homes_and_takes_another_in_only_when_told() {
    let dir = tempfile::tempdir().unwrap();
    let (home, file, _) = two(dir.path()).await;
    let preview = home.preview(&file, &OPTIONS).await.unwrap();
    let share = &preview.homes[&away()];
    assert_eq!((share.name.as_deref(), share.events, share.other), (Some("The Lane"), 3, true));
    let lane: Vec<_> = preview.others().into_values().collect();
    assert_eq!((lane.len(), lane[0].name.as_deref(), lane[0].events), (1, Some("The Lane"), 3));
    let refused = home.commit(preview.clone(), Others::Refuse).await.unwrap_err();
    assert!(matches!(&refused, StoreError::NotImported(why) if why.to_string().contains("The Lane")), "{refused}");
    assert_eq!(home.homes().await.unwrap(), [home_id()]);
    assert_eq!(home.commit(preview, Others::TakeIn).await.unwrap().new, 3);
    assert_eq!(home.homes().await.unwrap(), [home_id(), away()]);
    // Once it is here, its events come in as any others, and its name is known from here.
    let more = Event { home: away(), ..event(104, "2026-03-02T10:00:00Z", press(7)) };
    assert_eq!(home.append(vec![more]).await.unwrap(), [Appended::New]);
    let fifth = Event { home: away(), ..event(105, "2026-03-02T10:00:00Z", press(7)) };
    let line = serde_json::to_vec(&fifth).unwrap();
    let preview = home.preview(&line, &OPTIONS).await.unwrap();
    assert_eq!(preview.homes[&away()].name.as_deref(), Some("The Lane"));
    assert!(preview.others().is_empty());
    assert_eq!(home.commit(preview, Others::Refuse).await.unwrap().new, 1);
}

#[tokio::test]
async fn a_backup_of_another_home_stores_nothing_until_told() {
    let dir = tempfile::tempdir().unwrap();
    let (home, _, backup) = two(dir.path()).await;
    let before = home.revision().await.unwrap();
    let refused = home.restore(&backup, Others::Refuse).await.unwrap_err();
    assert!(matches!(refused, StoreError::OtherHome { .. }), "{refused}");
    assert!(refused.to_string().contains("The Lane") && refused.to_string().contains("3 events"), "{refused}");
    assert_eq!(home.revision().await.unwrap(), before);
    let done = home.restore(&backup, Others::TakeIn).await.unwrap();
    assert_eq!((done.new, done.homes[&away()].events), (3, 3));
}

#[tokio::test]
async fn a_backup_of_another_home_that_brings_nothing_opens_no_door() {
    let dir = tempfile::tempdir().unwrap();
    let (home, _, backup) = two(dir.path()).await;
    // Each id of the backup stands here for another event already.
    home.append((101..104).map(|n| event(n, "2026-02-01T10:00:00Z", press(8))).collect()).await.unwrap();
    let done = home.restore(&backup, Others::TakeIn).await.unwrap();
    assert_eq!((done.new, done.conflicts.len()), (0, 3));
    let foreign = Event { home: away(), ..event(104, "2026-03-02T10:00:00Z", press(7)) };
    assert!(matches!(home.append(vec![foreign]).await.unwrap()[0], Appended::Refused(_)));
    assert_eq!(home.homes().await.unwrap(), [home_id()]);
}

#[tokio::test]
async fn an_empty_notebook_begins_with_several_homes_only_when_told() {
    let dir = tempfile::tempdir().unwrap();
    let (home, _, backup) = two(dir.path()).await;
    home.restore(&backup, Others::TakeIn).await.unwrap();
    let mut file = Vec::new();
    assert_eq!(home.export(Format::JsonLines, &mut file).await.unwrap(), 4);
    let copy = Store::open(&dir.path().join("copy")).await.unwrap();
    let preview = copy.preview(&file, &OPTIONS).await.unwrap();
    assert!(preview.homes.len() == 2 && preview.homes.values().all(|share| share.other), "{:?}", preview.homes);
    let refused = copy.commit(preview.clone(), Others::Refuse).await.unwrap_err();
    let told = |what: &str| ["several homes", "Home", "The Lane"].iter().all(|part| what.contains(part));
    assert!(matches!(&refused, StoreError::NotImported(why) if told(&why.to_string())), "{refused}");
    let both = dir.path().join("both.sayso-backup");
    home.backup(&both).await.unwrap();
    let refused = copy.restore(&both, Others::Refuse).await.unwrap_err();
    assert!(matches!(&refused, StoreError::OtherHome { .. }) && told(&refused.to_string()), "{refused}");
    assert_eq!(copy.home().await.unwrap(), None, "nothing was stored");
    assert_eq!(copy.commit(preview, Others::TakeIn).await.unwrap().new, 4);
    assert_eq!(copy.homes().await.unwrap(), [home_id(), away()]);
    // Now it holds both, so that there is nothing left to say.
    assert_eq!(copy.restore(&both, Others::Refuse).await.unwrap().known, 4);
}

#[tokio::test]
async fn a_file_looked_at_while_the_notebook_was_empty_does_not_come_beside_the_home_that_began_it() {
    let dir = tempfile::tempdir().unwrap();
    let (_, file, _) = two(dir.path()).await;
    let begun = Store::open(&dir.path().join("begun")).await.unwrap();
    let preview = begun.preview(&file, &OPTIONS).await.unwrap();
    assert!(preview.others().is_empty(), "one home may begin it");
    begun.append(vec![named(home_id(), 1, "Home")]).await.unwrap();
    assert!(matches!(begun.commit(preview, Others::Refuse).await, Err(StoreError::NotImported(_))));
    assert_eq!(begun.homes().await.unwrap(), [home_id()]);
}
