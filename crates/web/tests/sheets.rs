//! Sheets: what is printed, in honest words.

#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

mod at_home;

use at_home::Home;
use sayso_model::{Body, Event, EventId, PressedBy, Sign, SignLevel, Source, When};

#[tokio::test]
async fn the_fridge_sheet_holds_words_rules_and_cautions() {
    let home = Home::new().await;
    home.page("/sheets").await.says("House rules").says("Progress report");
    home.page("/sheets/rules").await.says("No word is on the board yet");
    let to = format!("/l/{}/words/new", home.animal);
    home.post(
        &to,
        &[
            ("says", "ball"),
            ("means", "asks for the ball"),
            ("answer", "Throw it once."),
            ("not_now", "Say \"not now\""),
        ],
    )
    .await
    .kept();
    home.post(&to, &[("says", "bed"), ("closing", "yes")]).await.kept();
    let story = home.story().await;
    let ball = story.words_of(home.animal).iter().find(|w| w.says.as_str() == "ball").unwrap().word.to_string();
    home.post("/people/rule/new", &[("text", "Everyone answers alike.")]).await.kept();
    home.post("/people/rule/new", &[("text", "Not near the road."), ("word", &ball)]).await.kept();
    home.page("/sheets/rules")
        .await
        .says("asks for the ball")
        .says("Throw it once.")
        .says("Say &quot;not now&quot;")
        .says("Everyone answers alike.")
        .says("Not near the road.")
        .says("ends a session")
        .says("battery is an emergency")
        .says("go to the emergency department at once");
    home.page("/sheets/labels").await.says("labels middle").says("<span>ball</span>");
    home.page("/sheets/labels?size=large").await.says("labels large");
}

#[tokio::test]
async fn a_report_of_nothing_says_that_nothing_is_known() {
    let home = Home::new().await;
    home.page(&format!("/sheets/{}/progress", home.animal))
        .await
        .says("Not a diagnosis")
        .says("too early to say (n = 0)")
        .says("no planned check was held")
        .says("no session was noted in this period")
        .says("no likes test was held")
        .says("no weight is known");
    home.page(&format!("/sheets/{}/likes", home.animal)).await.says("Nothing has been tested yet.");
    assert_eq!(home.get("/sheets/0195a0a0-0000-7000-8000-000000000000/progress").await.status, 404);
}

#[tokio::test]
async fn a_report_tells_signs_and_counts_with_their_n() {
    let home = Home::new().await;
    home.post(&format!("/l/{}/words/new", home.animal), &[("says", "ball")]).await.kept();
    let story = home.story().await;
    let first = story.ledger().all().next().unwrap().clone();
    let word = story.words_of(home.animal)[0].word;
    let event = |i: u128, at: &str, body: Body| Event {
        id: EventId(uuid::Uuid::from_u128(0x0195_a0a0_0000_7000_8000_0000_0000_0000 + i)),
        animal: Some(home.animal),
        happened_at: at.parse().unwrap(),
        source: Source::Tap,
        body,
        ..first.clone()
    };
    let press = |by| {
        Body::Press(sayso_model::Press {
            word,
            by,
            certainty: sayso_model::Probability::clamped(1.0),
            accident: sayso_model::Accident::No,
            place: None,
            speed: None,
            session: None,
        })
    };
    let sign = Sign {
        sign: sayso_model::Note::new("turned <away>").unwrap(),
        level: SignLevel::Strong,
        when: When::During,
        session: None,
    };
    let events = vec![
        event(1, "2026-02-20T10:00:00Z", press(PressedBy::Animal)),
        event(2, "2026-02-20T10:05:00Z", press(PressedBy::Animal)),
        event(3, "2026-02-27T10:00:00Z", sign.into()),
    ];
    home.state.store.append(events).await.unwrap();
    home.page(&format!("/sheets/{}/progress", home.animal))
        .await
        .says("Own presses: 2.")
        .says("Strong signs: 1.")
        .says("27 Feb 2026: turned &lt;away&gt;")
        .says("Missed, or no answer noted: too early to say (n = 2)")
        .says("3 Feb 2026 to 2 Mar 2026");
    // The period can be shorter; an unknown one falls back to four weeks.
    home.page(&format!("/sheets/{}/progress?days=14", home.animal)).await.says("17 Feb 2026 to 2 Mar 2026");
    home.page(&format!("/sheets/{}/progress?days=9999", home.animal)).await.says("3 Feb 2026 to 2 Mar 2026");
}
