//! What was heard of the buttons themselves stands on the pages where a person sees to them.

use crate::at_home::Home;
use sayso_model::{Body, Event, EventId, Source, WordCard};

const DAY: f64 = 86_400.0;

/// Two words listened for over twenty days: "ball" heard to the end, "walk" for the first ten, both slowing or not.
async fn twenty_days(home: &Home, slowing: f64) {
    for says in ["ball", "walk"] {
        home.post(&format!("/a/{}/words/new", home.animal), &[("says", says)]).await.kept();
    }
    let story = home.story().await;
    let card: Event = story.unassigned::<WordCard>().next().unwrap().event.clone();
    let of = |says: &str| *story.words().iter().find(|(_, c)| c.says.as_str() == says).unwrap().0;
    let mut events = Vec::new();
    let mut add = |day: f64, source: Source, body: serde_json::Value| {
        let at = card.happened_at.plus_seconds((day - 20.0) * DAY);
        let body: Body = serde_json::from_value(body).unwrap();
        let id = EventId(uuid::Uuid::now_v7());
        events.push(Event { id, happened_at: at, recorded_at: at, source, body, ..card.clone() });
    };
    for (i, says) in ["ball", "walk"].into_iter().enumerate() {
        let clip = uuid::Uuid::from_u128(i as u128 + 1);
        let hash = "0".repeat(64);
        add(
            0.0,
            Source::Tap,
            serde_json::json!({"kind": "clip_card", "clip": clip, "word": of(says), "seconds": 0.8, "sha256": hash}),
        );
        for k in 0..if says == "ball" { 39 } else { 20 } {
            let day = 0.2 + 0.5 * f64::from(k);
            let speed = 1.0 - if says == "ball" { slowing * day / 20.0 } else { 0.0 };
            add(
                day,
                Source::Heard,
                serde_json::json!({"kind": "press", "word": of(says), "by": "animal", "certainty": 0.99, "speed": speed}),
            );
        }
    }
    home.state.store.append(events).await.unwrap();
}

#[tokio::test]
async fn what_a_battery_in_a_mouth_calls_for_is_told_where_people_act_and_names_children() {
    let home = Home::new().await;
    let said = "go to the emergency department at once";
    for page in ["board", "listen", "words/board"] {
        home.page(&format!("/a/{}/{page}", home.animal)).await.says(said).says("veterinarian");
    }
    home.page(&format!("/a/{}/board", home.animal))
        .await
        .says("Safe at the board")
        .says("go to the emergency department at once, on suspicion alone");
}

#[tokio::test]
async fn a_silent_word_and_a_tired_battery_are_told_with_why_and_caution() {
    let home = Home::new().await;
    twenty_days(&home, 0.02).await;
    let [walk, ball] = [
        "Check the battery and the button of \u{201c}walk\u{201d}",
        "Check the battery of \u{201c}ball\u{201d}: a replay that slows down",
    ];
    home.page(&format!("/a/{}/heard", home.animal)).await.says(walk).says(ball).says("change our mind if");
    // On Today the step of both is to fill in their cards; what was found of their buttons stands under it as facts.
    home.page(&format!("/a/{}/today", home.animal)).await.does_not_say(walk).does_not_say(ball);
    for page in ["heard", "today"] {
        home.page(&format!("/a/{}/{page}", home.animal))
            .await
            .says("no use for the word just now")
            .says("Other words were heard 19 times")
            .says("plays slower by 1.9% (")
            .says("from 39 records)")
            .says("battery is an emergency");
    }
}
