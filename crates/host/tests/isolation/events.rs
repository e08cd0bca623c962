//! Taps: each is asked for by itself, whatever home it is for.

use crate::house::{Asker, House};
use axum::http::StatusCode;
use sayso_model::*;
use serde_json::Value;

fn tap(home: HomeId, story: &Story, person: Option<PersonId>, body: impl Into<Body>) -> Event {
    let animal = story.animals().into_keys().next();
    let now = sayso_web::state::machine_clock();
    Event {
        id: EventId(uuid::Uuid::now_v7()),
        home,
        animal,
        person,
        happened_at: now,
        zone: story.zone(),
        recorded_at: now,
        source: Source::Tap,
        body: body.into(),
    }
}

/// A remark of now, as a page sends it.
pub fn remark(home: HomeId, story: &Story, person: Option<PersonId>) -> Event {
    tap(home, story, person, Remark { text: Note::new("It slept.").unwrap() })
}

async fn sent(house: &House, asker: &Asker, events: &[Event]) -> (StatusCode, Vec<String>, Value) {
    let body = serde_json::to_string(events).unwrap();
    let (status, told) = house.post(asker, "/api/events", &body, "application/json").await;
    let told: Value = serde_json::from_str(&told).unwrap();
    let results = told.as_array().map(|all| all.iter().map(|o| o["result"].as_str().unwrap().to_owned()).collect());
    (status, results.unwrap_or_default(), told)
}

#[tokio::test]
async fn a_tap_goes_into_homes_one_writes_in_and_no_others() {
    let mut house = House::new().await;
    let people = house.people().await;
    let by = |name: &str| people.iter().find(|p| p.name == name).unwrap().clone();
    let (mine, other) = (house.home, house.other);
    let person = house.story.people().into_values().next_back().unwrap().person;
    let nobody_else = house.story.people().into_values().next().unwrap().person;
    assert_ne!(person, nobody_else);
    let keeper = by("keeper");
    let card = house.story.home().unwrap().clone();
    // Between two of a foreign home, one's own is kept, and each is answered in its place.
    let events = [
        remark(other, &house.other_story, None),
        remark(mine, &house.story, Some(person)),
        remark(HomeId(uuid::Uuid::now_v7()), &house.story, None),
        tap(mine, &house.story, None, card.clone()),
    ];
    let (status, results, told) = sent(&house, &keeper, &events).await;
    assert_eq!((status, results), (StatusCode::OK, ["refused", "new", "refused", "new"].map(str::to_owned).to_vec()));
    // A home that is there and one that is not are told alike.
    let problems = |n: usize| told[n]["problems"].to_string();
    assert_eq!(problems(0), problems(2));
    for (name, event, expected) in [
        ("member", remark(mine, &house.story, Some(nobody_else)), "new"),
        ("member", tap(mine, &house.story, Some(person), card.clone()), "refused"),
        ("sitter", remark(mine, &house.story, Some(person)), "new"),
        ("sitter", remark(mine, &house.story, Some(nobody_else)), "refused"),
        ("sitter", tap(mine, &house.story, Some(person), card.clone()), "refused"),
        ("sitter of other days", remark(mine, &house.story, Some(person)), "refused"),
        ("observer", remark(mine, &house.story, Some(person)), "new"),
        ("observer", remark(mine, &house.story, None), "refused"),
        ("coach", remark(mine, &house.story, None), "refused"),
        ("club keeper", remark(mine, &house.story, None), "refused"),
        ("server keeper", remark(mine, &house.story, None), "refused"),
        ("keeper of another home", remark(mine, &house.story, None), "refused"),
        ("keeper of another home", remark(other, &house.other_story, None), "new"),
    ] {
        let before = house.host.server.home(mine).story(mine).await.unwrap().ledger().len();
        let (status, results, told) = sent(&house, &by(name), std::slice::from_ref(&event)).await;
        assert_eq!((status, results), (StatusCode::OK, vec![expected.to_owned()]), "{name}: {told}");
        let after = house.host.server.home(mine).story(mine).await.unwrap().ledger().len();
        let kept = usize::from(expected == "new" && event.home == mine);
        assert_eq!(after - before, kept, "{name}");
    }
    let body = serde_json::to_string(&events).unwrap();
    let (status, _) = house.post(&by("nobody"), "/api/events", &body, "application/json").await;
    assert_eq!(status, StatusCode::UNAUTHORIZED);
}

#[tokio::test]
async fn a_tap_is_taken_without_reading_the_rest_of_the_home() {
    let mut house = House::new().await;
    let people = house.people().await;
    let keeper = people.iter().find(|p| p.name == "keeper").unwrap();
    house.begins_anew().await;
    let event = remark(house.home, &house.story, None);
    assert_eq!(sent(&house, keeper, std::slice::from_ref(&event)).await.1, ["new"]);
    assert_eq!(house.host.server.story_bytes(), 0, "a home that nobody looks at stays out of memory");
    let undo = tap(house.home, &house.story, None, Withdrawal { of: event.id, because: None });
    assert_eq!(sent(&house, keeper, &[undo]).await.1, ["new"]);
    assert!(house.host.server.story_bytes() > 0, "what is put right is looked up");
}

#[tokio::test]
async fn consent_by_a_tap_of_ones_own_making_opens_nothing() {
    let mut house = House::new().await;
    let people = house.people().await;
    let by = |name: &str| people.iter().find(|p| p.name == name).unwrap().clone();
    let consent = Consent::CoachFigures { to: Coach::Club { club: house.club } };
    let given = ConsentGiven { consent, words_version: Consent::WORDS, holds: None };
    let animal = house.story.animals().into_keys().next().unwrap();
    let figures = format!("/a/{animal}/evidence");
    for name in ["member", "coach", "sitter", "observer"] {
        let event = tap(house.home, &house.story, None, given.clone());
        assert_eq!(sent(&house, &by(name), &[event]).await.1, ["refused"], "{name}");
    }
    // A keeper's own stands in the log, but was not given on the page that says what it means.
    let event = tap(house.home, &house.story, None, given);
    let _ = sent(&house, &by("keeper"), &[event]).await;
    assert_ne!(house.get(&by("coach"), &figures).await.0, StatusCode::OK);
    house.consent(&by("keeper"), consent).await;
    assert_eq!(house.get(&by("coach"), &figures).await.0, StatusCode::OK);
}
