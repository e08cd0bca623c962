//! Whose notebook it is, several homes in one, and what a later version wrote.

use crate::web::*;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use sayso_model::*;
use sayso_web::store::Store;
use serde_json::json;
use uuid::Uuid;

fn card(home: HomeId, name: &str, n: u128) -> Event {
    Event {
        id: EventId(Uuid::from_u128(n)),
        home,
        animal: None,
        person: None,
        happened_at: noon(),
        zone: Zone::utc(),
        recorded_at: noon(),
        source: Source::Tap,
        body: HomeCard { name: Label::new(name).unwrap(), zone: Zone::utc() }.into(),
    }
}

fn animal(home: HomeId, name: &str, n: u128) -> Event {
    let animal = AnimalCard::new(AnimalId(Uuid::from_u128(n)), Label::new(name).unwrap(), Species::Dog);
    Event { body: animal.into(), ..card(home, name, n) }
}

const HOME: HomeId = HomeId(Uuid::from_u128(0xA0));
const AWAY: HomeId = HomeId(Uuid::from_u128(0xA1));

fn lines(events: &[Event]) -> String {
    events.iter().map(|e| serde_json::to_string(e).unwrap() + "\n").collect()
}

async fn with_home() -> Web {
    let web = Web::this_machine().await;
    let ours = [card(HOME, "Home", 1), animal(HOME, "Tarn", 2)].map(|e| serde_json::to_value(e).unwrap());
    assert_eq!(web.events(&ours).await.json()[1]["result"], "new");
    web
}

#[tokio::test]
async fn another_homes_events_come_in_only_by_choice_and_are_told_apart() {
    let web = with_home().await;
    let theirs = [card(AWAY, "The Lane", 11), animal(AWAY, "Pip", 12)];
    let refused = web.events(&[serde_json::to_value(&theirs[0]).unwrap()]).await;
    assert_eq!(refused.status, StatusCode::OK);
    assert_eq!(refused.json()[0]["result"], "refused");
    assert_eq!(refused.json()[0]["problems"][0]["field"], "home");

    let seen = web.post("/api/import/preview?format=jsonl", lines(&theirs)).await.json();
    assert_eq!(seen["homes"], json!([{ "id": AWAY, "name": "The Lane", "new": 2, "other": true }]));
    let refused = web.post("/api/import/commit?format=jsonl", lines(&theirs)).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(refused.text.contains("The Lane") && refused.text.contains("take_in_other_home"), "{}", refused.text);
    // With one home there is nothing to choose.
    assert!(web.get("/").await.header("location").ends_with("/today"));
    assert!(!web.get("/people").await.text.contains("data-test=\"home\""));

    let done = web.post("/api/import/commit?format=jsonl&take_in_other_home=true", lines(&theirs)).await;
    assert_eq!(done.json()["new"], 2, "{}", done.text);
    assert_eq!(web.get("/").await.header("location"), "/homes");
    let list = web.get("/homes").await.text;
    assert!(list.contains("Home") && list.contains("Tarn") && list.contains("The Lane") && list.contains("Pip"));
    // Nothing chosen: the first one's. The animal in an address decides before any choice.
    let people = web.get("/people").await.text;
    assert!(people.contains("Tarn") && !people.contains("Pip"));
    let pip = web.get(&format!("/a/{}/today", Uuid::from_u128(12))).await;
    assert!(pip.status == StatusCode::OK && pip.text.contains("The Lane") && !pip.text.contains("Tarn"));
    let chosen = web.post("/homes", format!("home={AWAY}")).await;
    let cookie = chosen.header("set-cookie").split(';').next().unwrap().to_owned();
    assert!(chosen.header("location").contains(&Uuid::from_u128(12).to_string()));
    let request = Request::get("/people").header(header::HOST, "localhost:8080").header(header::COOKIE, cookie);
    let people = web.send(request.body(Body::empty()).unwrap()).await.text;
    assert!(people.contains("Pip") && !people.contains("Tarn"));
    let none = web.post("/homes", format!("home={}", Uuid::from_u128(0xA2))).await;
    assert_eq!(none.status, StatusCode::UNPROCESSABLE_ENTITY);
}

#[tokio::test]
async fn an_empty_notebook_begins_with_several_homes_only_by_choice() {
    let web = Web::this_machine().await;
    let both = lines(&[card(HOME, "Home", 1), card(AWAY, "The Lane", 11)]);
    let seen = web.post("/api/import/preview?format=jsonl", both.clone()).await.json();
    assert!(seen["homes"].as_array().unwrap().iter().all(|home| home["other"] == true), "{seen}");
    let refused = web.post("/api/import/commit?format=jsonl", both.clone()).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    for part in ["Home", "The Lane", "take_in_other_home=true"] {
        assert!(refused.text.contains(part), "{part}: {}", refused.text);
    }
    assert_eq!(web.get("/api/export.jsonl").await.text, "", "nothing was stored");
    let done = web.post("/api/import/commit?format=jsonl&take_in_other_home=true", both).await;
    assert_eq!(done.json()["new"], 2, "{}", done.text);
}

#[tokio::test]
async fn every_page_says_that_events_of_a_later_version_are_there() {
    let web = with_home().await;
    assert!(!web.get("/people").await.text.contains("not-understood"));
    let known = serde_json::to_string(&card(HOME, "Home", 21)).unwrap();
    let later = known.replace("home_card", "home_song");
    let refused = web.post("/api/events", format!("[{later}]")).await.json();
    assert_eq!(refused[0]["result"], "refused", "fresh input is held to what is known");
    let seen = web.post("/api/import/preview?format=jsonl", later.clone()).await.json();
    assert_eq!((&seen["new"], &seen["not_understood"]), (&json!(1), &json!({ "home_song": 1 })));
    web.post("/api/import/commit?format=jsonl", later.clone()).await;
    for path in ["/people".to_owned(), format!("/a/{}/today", Uuid::from_u128(2))] {
        let page = web.get(&path).await.text;
        assert!(page.contains("not-understood") && page.contains("home_song"), "{page}");
    }
    assert!(web.get("/api/export.jsonl").await.text.contains(&later));
    let copy = Store::open(web.dir.path()).await.unwrap();
    assert_eq!(copy.not_understood(HOME).await.unwrap()["home_song"], 1);
}

#[tokio::test]
async fn two_homes_of_one_name_are_told_apart() {
    let web = with_home().await;
    let on = |day: &str| format!("{day}T12:00:00Z").parse::<Moment>().unwrap();
    // The newest card is the one that holds.
    let before = [("Home", "2026-01-05", 11), ("The Lane", "2026-01-06", 13)];
    let before = before.map(|(name, day, n)| Event { happened_at: on(day), ..card(AWAY, name, n) });
    let file = lines(&before) + &lines(&[animal(AWAY, "Pip", 12)]);
    let done = web.post("/api/import/commit?format=jsonl&take_in_other_home=true", file).await;
    assert_eq!(done.status, StatusCode::OK, "{}", done.text);
    let list = web.get("/homes").await.text;
    assert!(list.contains("The Lane") && list.contains(">Home<") && !list.contains("since"), "{list}");
    web.post("/api/import/commit?format=jsonl", lines(&[card(AWAY, "Home", 14)])).await;
    let list = web.get("/homes").await.text;
    let ours =
        format!("Home (\u{2026}000000a0, since {})", sayso_wording::Locale::ENGLISH.date(noon().day(&Zone::utc())));
    let away = "Home (\u{2026}000000a1, since 5 Jan 2026)";
    assert!(list.contains(&ours) && list.contains(away), "{list}");
    assert!(web.get("/people").await.text.contains(&ours));
    let pip = web.get(&format!("/a/{}/today", Uuid::from_u128(12))).await.text;
    assert!(pip.contains(away) && !pip.contains(&ours), "{pip}");
}
