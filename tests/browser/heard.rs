//! The evening page: unsure presses played and judged with one tap each.

use crate::harness::{Browser, PHONE, Server, story};
use crate::listen::Notebook;
use crate::sounds::{say, wav};
use sayso_model::{Body, Event, EventId, Moment, Press, PressedBy, Source};
use sayso_store::Store;
use std::time::{SystemTime, UNIX_EPOCH};
use uuid::Uuid;

#[tokio::test(flavor = "multi_thread")]
async fn unsure_presses_are_played_and_sorted_with_one_tap_each() {
    let notebook = Notebook::new(2, 2).await;
    let (home, before) = story(notebook.dir.path()).await;
    let store = Store::open(notebook.dir.path()).await.unwrap();
    let now = Moment::clamped(SystemTime::now().duration_since(UNIX_EPOCH).unwrap().as_millis() as i64);
    let mut ids = Vec::new();
    for (i, certainty) in [0.62, 0.71, 0.55, 0.97].into_iter().enumerate() {
        let body: Body = serde_json::from_value(serde_json::json!({
            "kind": "press", "word": notebook.words[i % 2], "by": "unknown", "certainty": certainty
        }))
        .unwrap();
        let event = Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal: Some(notebook.animal),
            person: None,
            happened_at: now.plus_seconds(-600.0 - 60.0 * i as f64),
            zone: before.zone(),
            recorded_at: now,
            source: Source::Heard,
            body,
        };
        ids.push(event.id);
        store.append(vec![event]).await.unwrap();
    }
    for (i, id) in ids.iter().take(3).enumerate() {
        store.put_snippet(*id, wav(&say(i as u64 % 2, 0)), now).await.unwrap();
    }
    store.close().await.unwrap();
    let server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::open_with(PHONE, &["--autoplay-policy=no-user-gesture-required"]).await;
    browser.goto(&server.url(&format!("/a/{}/heard", notebook.animal))).await;
    let card = |i: usize, test: &str| format!("#e{} [data-test={test}]", ids[i]);
    browser.css(&card(0, "heard-play")).await;
    browser.picture("heard").await;
    browser.press(&card(0, "heard-play")).await;
    browser.until("it plays", "return !!document.querySelector('[data-play][aria-pressed=true]')").await;
    browser.until("it has played", "return !document.querySelector('[data-play][aria-pressed=true]')").await;
    for (i, was, left) in [(0, "heard-no", 3), (1, "heard-animal", 2), (2, "heard-person", 1)] {
        browser.press(&card(i, was)).await;
        browser
            .until(
                "the next",
                &format!("return document.querySelectorAll('[data-test=heard-press]').length === {left}"),
            )
            .await;
    }
    assert!(browser.text("heard-said").await.starts_with("Noted: word 0, A person"));
    browser.press(&card(3, "heard-yes")).await;
    browser.until("nothing waits", "return document.body.textContent.includes('Nothing waits here.')").await;
    browser.close().await;
    drop(server);

    let (_, after) = story(notebook.dir.path()).await;
    let by = |id: &EventId| after.everyones::<Press>().find(|f| f.id() == *id).map(|f| f.part.by);
    let judged: Vec<_> = ids.iter().map(by).collect();
    assert_eq!(judged, [None, Some(PressedBy::Animal), Some(PressedBy::Person), Some(PressedBy::Unknown)]);
    let store = Store::open(notebook.dir.path()).await.unwrap();
    assert!(store.snippets(now).await.unwrap().is_empty(), "judged, its sound is dropped");
}
