//! On a coach's desk, a word outside the middle nine tenths of comparable homes: with whose figures these are, as context below all
//! else, while the home's consent is open.

use crate::house::{House, asked, event, label};
use axum::http::StatusCode;
use sayso_model::*;
use sayso_norms::Release;
use serde_json::json;
use uuid::Uuid;

const BALL: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0001));
const TUG: WordId = WordId(Uuid::from_u128(0x0189_0000_0000_7000_8000_0000_0000_0002));

/// Sixty days of whole records: one word is pressed from the first day on, the other shown twice a day and not pressed.
async fn lives(house: &House) {
    let mut events = vec![
        event(house.home, WordCard::new(BALL, label("ball"))),
        event(house.home, WordCard::new(TUG, label("tug"))),
    ];
    let mut about = |at: Moment, body: serde_json::Value| {
        let body: sayso_model::Body = serde_json::from_value(body).unwrap();
        let event = Event { animal: Some(house.animal), happened_at: at, recorded_at: at, ..event(house.home, body) };
        events.push(event.clone());
        event.id
    };
    for day in 1..=60 {
        let at = house.host.now().plus_seconds(-86_400.0 * f64::from(day));
        let pressed = [(BALL, "person"), (TUG, "person"), (TUG, "person"), (BALL, "animal")];
        for (nth, (word, by)) in pressed.into_iter().enumerate() {
            let at = at.plus_seconds(60.0 * nth as f64);
            let press = about(at, json!({ "kind": "press", "word": word, "by": by }));
            let given =
                json!({ "kind": "delivery", "answers": press, "word": word, "answer": "given", "then": "took" });
            about(at.plus_seconds(2.0), given);
        }
    }
    house.host.server.home(house.home).append(events).await.unwrap();
}

#[tokio::test(flavor = "multi_thread")]
async fn the_desk_tells_a_word_outside_the_middle_nine_tenths_as_context_with_whose_figures_these_are() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    lives(&house).await;
    let done = house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let release = Release::read(include_str!("../../../../tests/norms/invented.sayso-norms")).unwrap();
    let app = house.with_norms(release).await;
    let desk = async |path: &str| asked(&app, Some(&coach), "GET", path, None).await;
    let outside = desk("/desk?kind=outside").await;
    assert_eq!(outside.marked("row").len(), 1, "{}", outside.body);
    for says in [
        "Outside the middle nine tenths of 90 comparable homes: no press of “tug” yet, after 120 showings.",
        "Beside other homes (1)",
        "words in homes with dogs",
        "could be laid beside others: 2",
        "ask a veterinarian or a qualified behaviour professional",
        "A first press, or a newer release of these figures.",
        "From the release “Invented homes”",
        "Invented homes, made by a simulation",
        &format!("/a/{}/others?home={}", house.animal, house.home),
    ] {
        assert!(outside.holds(says), "{says}: {}", outside.body);
    }
    for never in ["slow", "percentile", "rank"] {
        assert!(!outside.marked("need").iter().any(|need| need.contains(never)), "{never}");
    }
    // The lowest of needs: on the desk as it is opened something else comes first.
    let all = desk("/desk").await;
    let needs = all.marked("need");
    let at = needs.iter().position(|need| need.starts_with("Outside")).unwrap();
    assert!(at == needs.len() - 1 && at > 0, "{needs:?}");
    // Without a release there is nothing of it; and it ends with the consent.
    assert!(house.get(&coach, "/desk").await.marked("need").iter().all(|need| !need.starts_with("Outside")));
    let back = house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    assert_eq!(back.status, StatusCode::SEE_OTHER, "{}", back.body);
    let gone = desk("/desk?kind=outside").await;
    assert!(gone.marked("row").is_empty() && !gone.holds("tug"), "{}", gone.body);
}
