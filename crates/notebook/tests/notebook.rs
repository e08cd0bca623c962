//! Opening, keeping and naming, as page and command do it.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

use sayso_model::{Event, HomeCard, Label, Moment, Story, Withdrawal};
use sayso_notebook::{NoNotebook, NotKept, NotNamed, Notebook, animal_named, existing, keep, word_named};
use sayso_store::Store;

fn silent(_: &str) {}

fn now() -> Moment {
    "2026-03-01T18:00:00Z".parse().unwrap()
}

async fn demo() -> (tempfile::TempDir, Notebook) {
    let dir = tempfile::tempdir().unwrap();
    let run = sayso_sim::demo(3, now());
    let store = Store::open(dir.path()).await.unwrap();
    for events in run.events.chunks(2_000) {
        store.append(events.to_vec()).await.unwrap();
    }
    store.close().await.unwrap();
    let notebook = Notebook::open(dir.path(), &silent).await.unwrap();
    (dir, notebook)
}

#[tokio::test]
async fn a_mistyped_folder_is_not_made_and_an_empty_one_is_told() {
    let dir = tempfile::tempdir().unwrap();
    let missing = dir.path().join("nowhere");
    assert!(matches!(existing(&missing, &silent).await, Err(NoNotebook::None(at)) if at == missing));
    assert!(!missing.exists());
    Store::open(dir.path()).await.unwrap().close().await.unwrap();
    let empty = Notebook::open(dir.path(), &silent).await;
    assert!(matches!(empty, Err(NoNotebook::None(_))));
}

#[tokio::test]
async fn what_is_kept_counts_and_what_is_unsound_keeps_nothing() {
    let (_dir, notebook) = demo().await;
    let pen = notebook.pen(now());
    let card = |name: &str| HomeCard { name: Label::new(name).unwrap(), zone: notebook.story.zone() };
    // Written with a clock an hour behind the card it replaces: it counts all the same.
    let early = Event { happened_at: now().plus_seconds(-1e9), ..pen.event(card("By the sea")) };
    notebook.keep(vec![early]).await.unwrap();
    let story = notebook.store.story(notebook.home).await.unwrap();
    assert_eq!(story.home().unwrap().name.as_str(), "By the sea");
    let known = story.ledger().len();
    let unsound = Event {
        animal: None,
        ..pen.event(sayso_model::Joining { session: sayso_model::SessionId(uuid(7)), after_s: None })
    };
    let kept = keep(&notebook.store, &story, vec![pen.event(card("Elsewhere")), unsound]).await;
    assert!(matches!(&kept, Err(NotKept::Refused(p)) if p.0[0].field == "animal"), "{kept:?}");
    assert_eq!(notebook.store.story(notebook.home).await.unwrap().ledger().len(), known);
    let back = pen.event(Withdrawal { of: story.ledger().all().next().unwrap().id, because: None });
    keep(&notebook.store, &story, vec![back.clone()]).await.unwrap();
    keep(&notebook.store, &story, vec![back]).await.expect("known already counts as kept");
}

fn uuid(n: u128) -> uuid::Uuid {
    uuid::Uuid::from_u128(n)
}

fn first_names(story: &Story) -> (String, String) {
    let animal = animal_named(story, None).unwrap().remove(0);
    let word = story.words_of(animal.animal)[0].says.to_string();
    (animal.name.to_string(), word)
}

#[tokio::test]
async fn names_are_found_in_any_case_and_by_id_and_a_wrong_one_is_answered_with_those_there_are() {
    let (_dir, notebook) = demo().await;
    let story = &notebook.story;
    let (animal, word) = first_names(story);
    let found = animal_named(story, Some(&animal.to_uppercase())).unwrap();
    assert_eq!(found.len(), 1);
    let id = found[0].animal;
    assert_eq!(animal_named(story, Some(&id.to_string())).unwrap()[0].animal, id);
    assert!(
        matches!(animal_named(story, Some("Nobody")), Err(NotNamed::Animal { known, .. }) if known.contains(&animal))
    );
    let card = word_named(story, Some(id), &format!(" {} ", word.to_uppercase())).unwrap();
    assert_eq!(word_named(story, None, &card.word.to_string()).unwrap().word, card.word);
    assert!(
        matches!(word_named(story, None, "no such word"), Err(NotNamed::Word { known, .. }) if known.contains(&word))
    );
}
